/** Whether a message asks two things of different kinds, or tells a step and asks, and where the one ends. It reads neither, and answers nothing. */
import type { Facts, Json } from '../flow/flow.ts';
import { partsOf } from './parts.ts';
import { steered } from './steering.ts';
import { stepDone } from './steps.ts';
import { talkWords, type TalkCues } from './talk-cues.ts';

/** Longer texts tell a story. */
const longestText = 240;

interface Heard {
  readonly words: string;
  readonly facts: Facts;
}

type Hearing = (text: string) => Facts;

export interface TwoParts {
  readonly first: string;
  readonly second: string;
  /** A step is done before what is asked beside it. */
  readonly inOrder: boolean;
}

/** The two parts, or null where it is one thing, or may be. */
export function twoAsked(text: string, hear: Hearing, cues: TalkCues, flow: Json): TwoParts | null {
  if (text.length > longestText) return null;
  const whole = text.trim();
  const told =
    flow === 'guide' ? stepAndAsked(whole, hear, cues) : flow === 'brew' ? changeAndAsked(whole, hear, cues) : null;
  if (told !== null) return told;
  for (const [first, second] of partsOf(whole, cues, (words) => isAsked(words, cues))) {
    const heard = [first, second].map((part) => ({ words: part.words, facts: hear(part.text) }));
    if (areTwo(heard, () => hear(whole), cues)) return { first: first.text, second: second.text, inOrder: false };
  }
  return null;
}

/** "Done, and how hot should it be?": in the midst of a brew, where a question or a word on the taste would hide the step. */
function stepAndAsked(whole: string, hear: Hearing, cues: TalkCues): TwoParts | null {
  const isStep = (words: string): boolean =>
    !words.includes('?') && (cues.says('tells-step', words) || stepDone(words, cues) !== null);
  const said = talkWords(whole);
  if (steered(said, cues) !== null) return null;
  for (const [first, second] of partsOf(whole, cues, () => true)) {
    if (!isStep(first.words) || isStep(second.words)) continue;
    const tastes = (hear(second.text)['taste'] ?? null) !== null;
    if (!tastes && !isAsked(second.words, cues)) continue;
    const heard = hear(whole);
    // Heard in one already.
    if (stepDone(said, cues) !== null && (!tastes || (heard['taste'] ?? null) !== null)) return null;
    if (!isApart(heard)) return { first: first.text, second: second.text, inOrder: true };
  }
  return null;
}

/** 那就85 時間要變嗎, "100 then, start": a change of the plan, and what is asked of the plan with it, or that it begins. */
function changeAndAsked(whole: string, hear: Hearing, cues: TalkCues): TwoParts | null {
  for (const [first, second] of partsOf(whole, cues, () => true)) {
    const asked = hear(second.text);
    const begins = asked['steers'] === 'begin' && (asked['tea'] ?? null) === null;
    if (!begins && !ofTheChanged.has(asked['asks'] ?? null) && asked['asksYield'] !== true) continue;
    const told = hear(first.text);
    const isChange = told['kind'] === 'brew' && changes.some((name) => (told[name] ?? null) !== null);
    if (isChange && told['isAsking'] !== true && !isApart(hear(whole)))
      return { first: first.text, second: second.text, inOrder: true };
  }
  return null;
}
const ofTheChanged: ReadonlySet<Json> = new Set(['follows', 'exact']);
const changes = ['turn', 'leafG', 'leafBy', 'leafSpoons', 'tempC', 'volumeMl', 'bare', 'strength', 'packets'];

/** Somebody may be hurt, or it is no brew that is spoken of. */
const isApart = ({ kind = null, errand = null }: Facts): boolean =>
  kind === 'safety' || kind === 'lesson' || errand !== null;

/** "It's too bitter. Do you …": told, and meant as a question; so is "sencha in a 300 ml pot". */
function isAsked(words: string, { says }: TalkCues): boolean {
  const isLongEnough = /\p{Script=Han}/u.test(words) ? words.length >= 4 : /\S\s+\S/.test(words);
  if (!isLongEnough) return false;
  return words.endsWith('?') || (['asks', 'complains', 'tells-size'] as const).some((cue) => says(cue, words));
}

/** Two of the same kind are one thing more often than two; and a word on safety is not cut in two. */
function areTwo(parts: readonly Heard[], hearWhole: () => Facts, cues: TalkCues): boolean {
  const [a, b] = parts.map(({ facts }) => facts);
  if (!a || !b || !parts.every((part) => isPlain(part, cues)) || !differ(a, b) || isBackground(parts, cues))
    return false;
  const whole = hearWhole();
  // What the shop has answered as it stands, or a shopkeeper wants done, is one thing.
  if (whole['kept'] || whole['errand'] || whole['plans'] === true || isOfTheJar(whole['coldAsk'])) return false;
  // "5 g, what size gaiwan?"
  if (whole['asks'] === 'size' || whole['asks'] === 'lasts' || isPriceOfLesson(parts, cues)) return false;
  // "7 g of shou and a 100 ml gaiwan, too much?"
  if (whole['asksDose'] === true && whole['kind'] === 'brew') return false;
  // 金駿眉 5g 蓋碗 100ml 這樣對嗎: the plan answers it. How long a cold infusion keeps is told with it.
  if (isWholeBrew(whole) && ![a, b].every(hasAnswer)) return false;
  if (isOfOneCup(whole, parts, cues)) return false;
  if (whole['style'] === 'cold' && [a, b].some(({ answer }) => ofLeafKept.has(answer ?? null))) return false;
  if (whole['kind'] !== 'safety') return [a, b].every(({ answer }) => answer !== 'safety-general');
  return [a, b].some(({ answer }) => answer === whole['answer']);
}

/** All that a plan needs is told. */
const isWholeBrew = ({ kind = null, tea = null, family = null, vessel = null, volumeMl = null }: Facts): boolean =>
  kind === 'brew' && (tea ?? family) !== null && vessel !== null && volumeMl !== null;
const ofLeafKept: ReadonlySet<Json> = new Set(['store-green-fridge', 'shelf-life', 'store-leaves']);

/** "When should I start, the picnic is tomorrow", "how long can it stay in, all night?" */
const isOfTheJar = (asks: Json = null): boolean => asks === 'begin-for' || asks === 'stands';

const answered: ReadonlySet<Json> = new Set(['care', 'shop', 'safety']);

/** "It's sour, what did I do wrong?": what nobody has an answer to belongs to what is beside it. */
function differ(a: Facts, b: Facts): boolean {
  const [one, other] = [a, b].map(({ kind = null }) => kind);
  const needAnswers = [one, other].includes('taste') || [a, b].every(({ kind = null }) => answered.has(kind));
  if (one === other)
    return one !== 'safety' && answered.has(one ?? null) && a['answer'] !== b['answer'] && [a, b].every(hasAnswer);
  // "Any tips for white tea? 6 g, 120 ml gaiwan": the plan is the answer.
  if (isBesideABrew(a, b) || isBesideABrew(b, a)) return false;
  return !needAnswers || [a, b].every(hasAnswer);
}

const isBesideABrew = ({ kind = null, answer = null }: Facts, other: Facts): boolean =>
  kind === 'care' && answer === null && other['kind'] === 'brew';

/** "Is there a class on Sunday, and how much is it?" */
const isPriceOfLesson = ([a, b]: readonly Heard[], { says }: TalkCues): boolean =>
  a?.facts['kind'] === 'lesson' && says('what-it-costs', b?.words ?? '');

/** "6 g in 110 ml, sour": how it was made. */
const isBackground = (parts: readonly Heard[], { says }: TalkCues): boolean =>
  parts.some(({ facts }) => facts['kind'] === 'taste') &&
  parts.some(
    ({ words, facts }) => facts['kind'] === 'brew' && (!says('asks-for-numbers', words) || tellsOnly(words, facts)),
  );

/** "Used 3 g keemun, 8 minutes, sour", and nothing asked beside it. */
const isOfOneCup = (
  { kind = null, taste = null, leafG = null, drawnS = null }: Facts,
  parts: readonly Heard[],
  { says }: TalkCues,
): boolean =>
  kind === 'taste' &&
  taste !== null &&
  (leafG ?? drawnS) !== null &&
  !parts.some(({ words }) => words.endsWith('?') || says('asks', words));

/** 水溫85 玻璃杯300 3克: numbers that are told, and none that is asked. */
const tellsOnly = (
  words: string,
  { asks = null, isAsking = null, volumeMl = null, leafG = null, tempC = null }: Facts,
): boolean => !words.includes('?') && asks === null && isAsking !== true && (volumeMl ?? leafG ?? tempC) !== null;

const hasAnswer = ({ kind = null, answer = null }: Facts): boolean => !answered.has(kind) || answer !== null;

/** Of its kind by itself, and not only beside the other. */
function isPlain({ words, facts }: Heard, { says }: TalkCues): boolean {
  const { kind = null, taste = null } = facts;
  if (kind === 'taste') return taste !== null;
  if (kind === 'brew')
    return !says('takes-how-long', words) && (says('asks-for-numbers', words) || says('tells-size', words));
  return kind === 'lesson' ? says('asks-for-lesson', words) : answered.has(kind);
}
