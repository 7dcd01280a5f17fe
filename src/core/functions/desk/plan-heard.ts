/** What a shopkeeper's words add to a lesson that is told piece by piece. Asks nothing, and checks nothing but what was read. */
import type { Around } from '../../flow/book.ts';
import type { Json } from '../../flow/flow.ts';
import { mistake, type Level } from '../../lessons/lesson.ts';
import { readDuration, readSeats } from '../../lessons/spoken/amounts.ts';
import { inHalfOfDay } from '../../lessons/spoken/correction.ts';
import { plain } from '../../lessons/spoken/cut.ts';
import { readLevel } from '../../lessons/spoken/level.ts';
import { readNumber } from '../../lessons/spoken/numeral.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { hearLesson, type Heard, type SpokenLesson } from '../../lessons/spoken/spoken.ts';
import type { Mistake } from '../../units.ts';

/** What is told of it in words of the shop's own. */
const worded = ['place', 'teacher', 'price', 'bring'] as const;
export type Worded = (typeof worded)[number];

export interface Said extends SpokenLesson {
  readonly place?: string;
  readonly teacher?: string;
  readonly price?: string;
  readonly bring?: string;
  readonly level?: Level;
  readonly tea?: string;
  /** Half of a time: a day without an hour, or an hour without a day. */
  readonly half?: string;
}

export interface Understood {
  readonly said: Said;
  readonly problem: Mistake | null;
}

interface Telling {
  readonly sentence: Sentence;
  readonly field: Json;
  readonly around: Around;
  readonly zone: string;
}

/** Longer than any reason or place, shorter than a message Telegram takes. */
export const mostWritten = 1_000;

/** A time said in two halves is asked for once more: "Saturday" and then "7 pm". */
export function hear(said: Said, { sentence, field, around, zone }: Telling): Understood {
  const words = sentence.text;
  const wordField = ['title', ...worded].find((name) => name === field);
  if (wordField !== undefined && words.length > mostWritten)
    return { said, problem: mistake('words-too-long', wordField, { most: mostWritten }) };
  const seats = wordField === 'title' ? seatsAlone(words) : null;
  if (seats !== null) return { said: { ...said, seats }, problem: null };
  if (wordField !== undefined) return { said: { ...said, [wordField]: words }, problem: null };
  if (field === 'level') return withLevel(said, sentence);
  if (field === 'seats' || field === 'minutes') return { said: withAmount(said, field, words), problem: null };
  const { half, ...rest } = said;
  // "Saturday afternoon", and then "at three".
  const hour = half === undefined ? words : inHalfOfDay(sentence, half, around.nowMs, said.zone ?? zone);
  const sentences =
    half === undefined || field !== 'starts'
      ? [words]
      : [
          words,
          inHalfOfDay(sentence.part(half), words, around.nowMs, said.zone ?? zone),
          `${hour}, ${half}`,
          `${half}, ${hour}`,
        ];
  const heard = sentences.map((one) => hearLesson(sentence.part(one), around.nowMs, said.zone ?? zone));
  const told = heard[0]!;
  // What tells nothing of the time leaves the half that is known.
  const kept = half !== undefined && namesNoTime(told) ? heard.at(-1)! : told;
  const found = heard.find((one) => one.mistakes.length === 0) ?? kept;
  return merged(rest, found, { words: kept === told ? words : half!, field });
}

/** "Actually make that 5 people", 改成5個人. */
const insteadOf =
  /^(?:(?:no|actually|sorry|oh)[, ]+)*(?:make (?:it|that)|change (?:it|that) to|let'?s say) |^(?:不是?[，,]?)?(?:還是|还是|不如)?(?:改|換|换)(?:成|為|为|到)/iu;

/** "8 seats" is no name of a lesson; a bare number may be. */
function seatsAlone(words: string): number | null {
  const { amount, rest } = readSeats(plain(words).replace(insteadOf, ''));
  return amount === undefined || /[\p{L}\p{N}]/u.test(rest) ? null : amount;
}

function withLevel(said: Said, words: Sentence): Understood {
  const level = readLevel(words);
  return level === undefined
    ? { said, problem: mistake('level-unclear', 'level') }
    : { said: { ...said, level }, problem: null };
}

function withAmount(said: Said, field: 'seats' | 'minutes', words: string): Said {
  const found = amountIn(field, plain(words));
  return found === undefined ? said : { ...said, [field]: found };
}

function amountIn(field: 'seats' | 'minutes', text: string): number | undefined {
  const { amount } = field === 'seats' ? readSeats(text) : readDuration(text);
  return amount ?? readNumber(field === 'seats' ? text.replace(/[個个吧就好了。]+$/u, '') : text);
}

function merged(
  said: Said,
  { said: told, mistakes }: Heard,
  { words, field }: { words: string; field: Json },
): Understood {
  const [problem = null] = mistakes;
  // Asked for a time, what else stands there is no new name of the lesson.
  const { title: _, ...rest } = told;
  const news = field === 'starts' ? rest : told;
  const isHalf = halves.has(problem?.code ?? '');
  const nothingSaid = namesNoTime({ said: told, mistakes });
  // "I want to plan a lesson": what it is called comes first.
  if (nothingSaid && (said.title ?? told.title) === undefined && said.half === undefined)
    return { said: { ...said, ...news }, problem: null };
  return {
    said: { ...said, ...news, ...(isHalf && !nothingSaid ? { half: words } : {}) },
    problem: problem?.code === 'lesson-ends-before-start' ? { ...problem, field: 'starts' } : problem,
  };
}

/** Neither a day nor an hour. */
const namesNoTime = ({ mistakes }: Heard): boolean =>
  ['lesson-day-missing', 'lesson-time-missing'].every((code) => mistakes.some((one) => one.code === code));

/** A day without an hour, an hour without a day, and an hour of either half of a day. */
const halves: ReadonlySet<string> = new Set(['lesson-time-missing', 'lesson-day-missing', 'lesson-hour-unclear']);

/** Asked for a piece, and nothing of the kind was told. */
export function tellsNothing(
  sentence: Sentence,
  field: Json,
  { around, zone }: Pick<Telling, 'around' | 'zone'>,
): boolean {
  if (field === 'starts') return namesNoTime(hearLesson(sentence, around.nowMs, zone));
  const text = plain(sentence.text);
  return (field === 'seats' || field === 'minutes') && !/\d/.test(text) && amountIn(field, text) === undefined;
}

/** "Bring: an old shirt", "place: upstairs", 要帶：圍裙. */
const pieces: readonly (readonly [Worded, RegExp])[] = [
  [
    'bring',
    /^(?:and |also )?(?:what )?(?:(?:they|people|everyone) (?:should|must|need to|have to) |to |please )?bring(?: along| with them| is)?(?: ?[:：]| (?=an?\b|your\b|their\b|something\b|the\b)) ?(?<words>.+)$/isu,
  ],
  ['bring', /^(?:请|請|要|需要|记得|記得)?(?:自备|自備|携带|攜帶|带|帶)(?:来|來|上)?[:：]?\s*(?<words>.+)$/su],
  ['place', /^(?:and )?(?:the )?(?:place|room|where|location)(?: is)? ?[:：]? (?<words>.+)$/isu],
  ['place', /^(?:地[点點]|[场場]地)(?:是|在|[:：])\s*(?<words>.+)$/su],
  ['teacher', /^(?:and )?(?:the )?teacher(?: is| will be)? ?[:：]? (?<words>.+)$/isu],
  ['teacher', /^(?:老[师師]|[讲講][师師])(?:是|[:：])\s*(?<words>.+)$/su],
];

/** Null where no piece of the lesson is named with its words. */
export function withPiece(said: Said, text: string): Said | null {
  for (const [name, pattern] of pieces) {
    const words = pattern.exec(text.trim())?.groups?.['words']?.trim();
    if (words !== undefined && words.length <= mostWritten) return { ...said, [name]: words };
  }
  return null;
}
