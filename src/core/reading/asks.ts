/** What a few words ask of a plan at hand: how hot, how long, how often, what a word means; by data/reading/plan-cues.yaml. It answers nothing. */
import { unnamed, without } from './answers/beside-name.ts';
import type { CueName } from './cues/cue-names.ts';
import type { Cues } from './cues/cues.ts';
import type { Observation } from './observation.ts';
import { cueOfLine, linesOfPlan, type LineOfPlan } from './cues/plan-cue-names.ts';
import type { PlanQuestion } from './answers/plan-questions.ts';

/** Those that can be told of a plan still to come. */
const linesAhead = ['heat', 'time', 'leaf', 'count'] as const satisfies readonly LineOfPlan[];
export type AskedLine = (typeof linesAhead)[number];

export type Asks =
  LineOfPlan | 'enough' | 'guide' | 'what-tea' | 'whole' | 'meaning' | 'unclear' | 'size' | 'lasts' | PlanQuestion;

/** "What's the difference between sheng and shou?" */
export const asksApart = /\bdiff(?:er\w*|s)?\b|差在|差别|分别|区别|不同|唔同|不一样/;

/** Longer texts say more than that; and some are heard in twice as long ones. */
const longestAsked = 40;
const longestNamed = 64;

interface AsksScene {
  readonly seen: Observation;
  /** A tea, a vessel or an amount is told with it, which no line of the plan at hand answers. */
  readonly named: boolean;
  /** So much leaf, and in no size of vessel. */
  readonly dosed: boolean;
  /** The answer that tells what a word of the text means. */
  readonly explain: (words: string) => string | null;
  readonly danger: string | null;
  /** Asked only where it may be one. */
  readonly planQuestion: () => PlanQuestion | null;
}

export interface ReadAsks {
  readonly asks: Asks | null;
  readonly explained: string | null;
}

export function readAsks(scene: AsksScene): ReadAsks {
  const { seen, named, explain, danger, planQuestion, dosed } = scene;
  const { words, cues } = seen;
  const isOfOneTea = seen.tea.best !== null && seen.vessels.length === 0;
  const isShort = words.length <= longestAsked;
  if (danger === null && asksHowFar(seen)) return { asks: 'lasts', explained: null };
  if (dosed && danger === null && words.length <= longestAsked * 2 && cues.has('asks-size', words))
    return { asks: 'size', explained: null };
  if (teasAlone(seen)) return { asks: 'whole', explained: null };
  if (isOfOneTea && danger === null && isShort && cues.has('asks-what-tea', words))
    return { asks: 'what-tea', explained: null };
  if (isOfOneTea && danger === null && words.length <= longestAsked * 2 && cues.has('plan-about', unnamed(seen)))
    return { asks: 'about', explained: null };
  const mayAsk = danger === null && (!named || cues.has('asks-dry', words));
  const question = mayAsk ? planQuestion() : null;
  if (question !== null && asksMore(seen)) return { asks: 'whole', explained: null };
  const isWord = question !== null && cues.has('asks-meaning', words) && explain(words) !== null;
  const asks = (isWord ? null : question) ?? asksIn(scene);
  if (asks !== 'meaning') return { asks, explained: null };
  const explained = danger === null ? explain(words) : null;
  return { asks: explained === null ? (cues.has('asks-unclear', words) ? 'unclear' : null) : asks, explained };
}

/** 龍井跟碧螺春: two or more of ours, and no other word. */
export const teasAlone = ({ plain, teas }: Observation): boolean =>
  teas.length > 1 && teas.every(({ meaning }) => meaning.is === 'tea') && joins.test(without(plain, teas));
const joins = /^(?:[\s,、，+&/]|(?:和|跟|与|同|及|还有|以及|加)|\b(?:and|plus)\b)+$/;

/** "50 g, how many pots is that?": so much leaf is told, and how often it is enough. */
const asksHowFar = ({ words, cues, measures }: Observation): boolean =>
  words.length <= longestAsked * 3 &&
  measures.some(({ dimension }) => dimension === 'mass' || dimension === 'ounce') &&
  cues.has('asks-lasts', words);

/** 要洗茶嗎 然後可以泡幾次: another line of the plan, asked apart from the first. */
function asksMore({ words, cues }: Observation): boolean {
  const parts = words.split(apart).filter((part) => part !== '');
  return parts.length > 1 && linesOfPlanAhead(parts.at(-1) ?? '', cues).length > 0;
}
const apart = /[?？,，、。;；]\s*|(?<=\p{Script=Han})\s+(?=\p{Script=Han})|(?:还有|另外|同埋)|\b(?:and|also)\b/u;

function asksIn({ seen: { words, cues }, named, explain }: AsksScene): Asks | null {
  const isShort = words.length <= longestAsked;
  if (asksOfWord.test(words) && words.length <= longestAsked * 2 && explain(words) !== null) return 'meaning';
  if (words.length <= longestAsked * 2 && cues.has('asks-spoons', words)) return 'leaf';
  if (named && cues.has('asks-guide', words)) return 'guide';
  if (cues.has('asks-whole', words)) return 'whole';
  if (words.length > longestAsked * 2) return null;
  if (asksApart.test(words)) return 'meaning';
  if (cues.has('asks-doubted', words)) return 'too-much';
  if (cues.has('asks-of-kettle', words)) return 'heat';
  if (!named && cues.has('asks-unclear', words)) return 'meaning';
  if (!named && cues.has('asks-bitter-ahead', words)) return 'bitter-ahead';
  if (!named && cues.has('asks-take-out', words)) return 'leaf-out';
  if (named && words.length <= longestNamed && isOfHeatAlone(words, cues)) return 'heat';
  if (!isShort) return null;
  if (cues.has('asks-enough', words)) return 'enough';
  const asked = cues.has('not-of-the-plan', words) ? [] : linesAsked(words, cues);
  if (named) return meaningIn(words, cues);
  if (asked.length === 2 && asked.includes('time') && asked.includes('leaf-out')) return 'time';
  if (asked.length > 1) return 'whole';
  return asked[0] ?? meaningIn(words, cues);
}

/** How hot the water is for a tea is known before all else is. */
function isOfHeatAlone(words: string, cues: Cues): boolean {
  const asked = cues.has('not-of-the-plan', words) ? [] : linesAsked(words, cues);
  return asked.length === 1 && asked[0] === 'heat';
}

/** "What does flush mean on the darjeeling bag": of a word, whatever tea is named with it. */
const asksOfWord = /\b(?:what|why)\b.{0,24}\b(?:means?|meant|stands? for|says?)\b/;

const meaningIn = (words: string, cues: Cues): 'meaning' | null =>
  cues.has('asks-meaning', words) || cues.has('asks-unclear', words) ? 'meaning' : null;

/** Which lines of a plan that is still to come are asked, in a text of any length; `ofIt`: with the tea unnamed, "how much tea for two cups". */
export function linesOfPlanAhead(words: string, cues: Cues, ofIt = words): readonly AskedLine[] {
  const asked = [...linesAsked(words, cues), ...linesAsked(ofIt, cues)];
  return linesAhead.filter((line) => asked.includes(line));
}

function linesAsked(words: string, cues: Cues): readonly LineOfPlan[] {
  const all = linesOfPlan.filter((line) => cues.has(cueOfLine(line), words));
  // How long it cools is how it comes to be so hot.
  return all.includes('heat') && cues.has('cools-down', words) ? ['heat'] : all;
}

/** What is asked of the plan to come beside all that it is made of, and the plan alone does not tell. */
const besides = [
  'rinse',
  'leaf-out',
  'boiling',
  'fill',
  'strength',
  'bitter-ahead',
  'too-long',
  'once',
  'in-all',
] as const;
export type AskedBeside = (typeof besides)[number];
const cueOfBeside: { readonly [asked in AskedBeside]: CueName } = {
  rinse: 'plan-rinse',
  'leaf-out': 'asks-leaf-out',
  boiling: 'asks-boiling',
  fill: 'plan-fill',
  strength: 'plan-strength',
  'bitter-ahead': 'asks-bitter-ahead',
  'too-long': 'plan-too-long',
  once: 'plan-once',
  'in-all': 'plan-in-all',
};
/** Wished for as well as asked. */
const mayBeWished: ReadonlySet<AskedBeside> = new Set(['bitter-ahead', 'once', 'in-all']);
/** Longer texts tell a story. */
const longestBeside = 200;
const isQuestion =
  /[?？吗嘛咩]|\b(?:do|does|should|can|could|must|shall|is|are|will|would|how|or)\b|要不要|可以|会不会|会怎|会点|使唔使/;

/** "Can I leave the peppermint in or take it out? It's a 1.2 litre pot." */
export function askedBeside(seen: Observation): readonly AskedBeside[] {
  const { words, cues, teas, vessels, quantities } = seen;
  const isWhole = teas.length > 0 && vessels.length > 0 && quantities.volumeMl.value !== null;
  if (!isWhole || words.length > longestBeside) return [];
  // "Will longjing get bitter" as "will it get bitter".
  const ofIt = unnamed(seen).replaceAll('this tea', 'it');
  const may = isQuestion.test(words) ? besides : besides.filter((one) => mayBeWished.has(one));
  const asked = may.filter((one) => cues.has(cueOfBeside[one], words) || cues.has(cueOfBeside[one], ofIt));
  return asked.includes('strength') ? asked.filter((one) => one !== 'bitter-ahead') : asked;
}

/** 東方美人水溫太高會怎樣: of boiling water, where no vessel is told. */
export const asksOfBoiling = ({ words, cues }: Observation): boolean =>
  cues.has('asks-boiling', words) && isQuestion.test(words);
