/** Whether a message asks two things of different kinds, and where the one ends. It reads neither, and answers nothing. */
import type { Facts, Json } from '../flow/flow.ts';

/** Longer texts tell a story. */
const longestText = 240;
const mostBoundaries = 8;

/** Where one thing may end and another begin; "1.5" and "3.30 pm" hold no end. */
const boundary =
  /[?？!！。;；\n]+[\s"”」]*|\.\s+|,?\s+(?:and|also|plus|oh and|but also)\s+|[,，、]\s*|(?=還有|还有|另外|順便|顺便|對了|对了|以及)/giu;
const opening =
  /^(?:[\s,，、]|and\b|also\b|but\b|so\b|then\b|plus\b|oh\b|hi\b|hello\b|please\b|btw\b|by the way\b|another thing\b|one more thing\b|tell me\b|i(?:'d| would) (?:also )?like to know\b|還有|还有|另外|順便|顺便|對了|对了|以及|請問|请问|想問|想问|我也?想問|我也?想问|再問|再问|那|你好)*/iu;
const asksInEnglish =
  /^(?:how|what|what's|whats|when|where|which|who|why|do|does|did|is|are|can|could|should|shall|may|will|would|any)\b|[,;:] how (?:much|many|hot|long)\b|\?$/iu;
const asksInChinese =
  /[嗎吗呢咩？]|什麼|什么|怎|多少|多久|[幾几]|哪|[為为]何|有[沒没冇]有|能不能|可不可以|要不要|是不是|會不會|会不会|有冇|點[樣样解]|邊/u;

/** "Sencha in a 300 ml pot": the plan is asked for. */
const tellsSize = /\d ?(?:ml|cl|oz|g)\b|毫升|\d克/iu;

interface Heard {
  readonly text: string;
  readonly facts: Facts;
}

type Hearing = (text: string) => Facts;

/** The two parts, or null where it is one thing, or may be. */
export function twoAsked(text: string, hear: Hearing): readonly [string, string] | null {
  if (text.length > longestText) return null;
  const whole = text.trim();
  for (const { index, 0: mark } of boundariesOf(whole)) {
    const end = /[?？]/.test(mark) ? index + 1 : index;
    const [first, second] = [whole.slice(0, end).replace(/[\s,，、]+$/, ''), pared(whole.slice(index + mark.length))];
    if (!isAsked(first) || !isAsked(second)) continue;
    const parts = [first, second].map((part) => ({ text: part, facts: hear(part) }));
    if (areTwo(parts, () => hear(whole))) return [first, second];
  }
  return null;
}

/** The plainest first: the end of a sentence, then "and", then a comma. */
const boundariesOf = (text: string): readonly RegExpExecArray[] =>
  [...text.matchAll(boundary)].slice(0, mostBoundaries).toSorted((a, b) => plainness(b[0]) - plainness(a[0]));

const plainness = (mark: string): number => (/[?？!！。.;；\n]/.test(mark) ? 2 : /^[,，、]\s*$/.test(mark) ? 0 : 1);

const pared = (part: string): string => part.replace(opening, '').trim();

function isAsked(part: string): boolean {
  const said = pared(part);
  const isLongEnough = /\p{Script=Han}/u.test(said) ? said.length >= 4 : /\S+\s+\S+/.test(said);
  return isLongEnough && [asksInEnglish, asksInChinese, tellsOfTaste, tellsSize].some((asks) => asks.test(said));
}

/** "It's too bitter. Do you …": told, and meant as a question. */
const tellsOfTaste = /\b(?:bitter|weak|sour|flat|watery|harsh)\b|苦|澀|涩|太淡|酸/iu;

/** Two of the same kind are one thing more often than two; and a word on safety is not cut in two. */
function areTwo(parts: readonly Heard[], hearWhole: () => Facts): boolean {
  const [a, b] = parts.map(({ facts }) => facts);
  if (!a || !b || !parts.every(isPlain) || !differ(a, b) || isBackground(parts)) return false;
  const whole = hearWhole();
  // What the shop has answered as it stands, or a shopkeeper wants done, is one thing.
  if (whole['kept'] || whole['errand'] || whole['plans'] === true || isOfTheJar(whole['coldAsk'])) return false;
  if (whole['kind'] !== 'safety') return [a, b].every(({ answer }) => answer !== 'safety-general');
  return [a, b].some(({ answer }) => answer === whole['answer']);
}

/** "When should I start, the picnic is tomorrow", "how long can it stay in, all night?" */
const isOfTheJar = (asks: Json = null): boolean => asks === 'begin-for' || asks === 'stands';

const answered: ReadonlySet<Json> = new Set(['care', 'shop', 'safety']);

/** "It's sour, what did I do wrong?": what nobody has an answer to belongs to what is beside it. */
function differ(a: Facts, b: Facts): boolean {
  const [one, other] = [a, b].map(({ kind = null }) => kind);
  const needAnswers = [one, other].includes('taste') || [a, b].every(({ kind = null }) => answered.has(kind));
  if (one === other)
    return one !== 'safety' && answered.has(one ?? null) && a['answer'] !== b['answer'] && [a, b].every(hasAnswer);
  return !needAnswers || [a, b].every(hasAnswer);
}

/** "6 g in 110 ml, sour": how it was made. */
const isBackground = (parts: readonly Heard[]): boolean =>
  parts.some(({ facts }) => facts['kind'] === 'taste') &&
  parts.some(({ text, facts }) => facts['kind'] === 'brew' && !asksForNumbers.test(text));

const hasAnswer = ({ kind = null, answer = null }: Facts): boolean => !answered.has(kind) || answer !== null;

const asksForNumbers =
  /\bhow (?:much|many|hot|long|warm)\b|\btemp\w*|\bdegrees\b|\bbrew\b|\bsteep\b|\bgrams?\b|多少|[幾几]克|[幾几]度|水溫|水温|多久|怎麼[泡沖]|怎么[泡冲]|點[沖冲]/iu;
const asksForLesson =
  /\b(?:lessons?|class(?:es)?|courses?|workshops?|book(?:ed|ing)?|seats?|(?:mon|tues|wednes|thurs|fri|satur|sun)days?|tomorrow|tonight)\b|[課课位]|報名|报名|[星禮礼]期|[週周][一二三四五六日末]|明[天晚]/iu;

/** "Do you deliver there, and how long does it take?" */
const takesHowLong =
  /^how long (?:does|do|will|would) (?:it|that|this|they|delivery)(?: usually| normally)? take\b|^(?:要|會|会)?(?:多久|幾耐|几耐)(?:才?到|會到|会到)/iu;

/** Of its kind by itself, and not only beside the other. */
function isPlain({ text, facts }: Heard): boolean {
  const { kind = null, taste = null } = facts;
  if (kind === 'taste') return taste !== null;
  if (kind === 'brew') return !takesHowLong.test(text) && (asksForNumbers.test(text) || tellsSize.test(text));
  return kind === 'lesson' ? asksForLesson.test(text) : answered.has(kind);
}
