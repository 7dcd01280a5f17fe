/** Which step of a brew hands have done, and which went late, told in other words than a button's. It moves no brew. */
import type { Facts } from '../flow/flow.ts';
import { celsius } from '../reading/amounts/measures.ts';
import { boilingC } from '../reading/amounts/warmth.ts';
import { secondsSaid, shortTimes } from './count.ts';
import type { TalkCues } from './talk-cues.ts';

/** `drunk` is told where nothing is poured off. Of two that fit the first is meant: water poured in is no tea poured off. */
const steps = ['filled', 'leaf-in', 'rinsed', 'warmed', 'poured', 'drunk'] as const;
export type Step = (typeof steps)[number];

/** Longer texts tell more than that. */
const longest = 60;

/** `words` as talkWords has them. */
export function stepDone(words: string, cues: TalkCues): Step | null {
  const told = withoutNext(words, cues);
  if (told.length > longest || told.includes('?')) return null;
  const [first = told] = told.split(endOfSentence);
  const step = steps.find((one) => cues.says(one, told)) ?? steps.find((one) => cues.says(one, first));
  return step === undefined || cues.says('not-done', told) || cues.says('not-so', told) ? null : step;
}

/** "Out. Much better!" */
const endOfSentence = /[.!,]+ /;

/** Asked at the end, "and what next?" is no question about the step. */
function withoutNext(words: string, cues: TalkCues): string {
  if (!cues.says('what-next', words)) return words;
  const next = cues.spans('what-next', words).at(-1);
  if (next === undefined || !/^[\s?.。]*$/.test(words.slice(next.end))) return words;
  return words.slice(0, next.start).replace(/[\s,、.。]+$/, '');
}

/** Longer texts tell more than that. */
const longestLate = 90;

/** By how many seconds the last or the present infusion went late; `unsaid` where only that is told. */
export function lateBy(words: string, { says }: TalkCues): number | 'unsaid' | null {
  if (words.length > longestLate || words.includes('?')) return null;
  if (!says('late', words) || says('of-what-comes', words)) return null;
  return secondsSaid(words, shortTimes) ?? 'unsaid';
}

/** How long the last or the present infusion stood, counted aloud or told; null where nobody says how long. */
export function countedTo(words: string, cues: TalkCues): number | null {
  const { says, numberIn } = cues;
  if (words.length > longestLate || words.includes('?')) return null;
  if (
    says('stood-in-all', words) &&
    (stepDone(words, cues) === 'poured' || says('poured', words) || says('late', words))
  )
    return secondsSaid(words, shortTimes);
  if (says('of-what-comes', words)) return null;
  if (says('counted-to', words)) return numberIn('counted-to', words);
  return says('stood-for', words) ? secondsSaid(words, shortTimes) : null;
}

/** Seconds since it was poured off, 0 where nothing is said of that; null where nothing was. */
export function pouredAgoS(words: string, { says }: TalkCues): number | null {
  if (words.length > longest || words.includes('?') || !says('poured-off', words)) return null;
  return says('ago', words) ? (secondsSaid(words, shortTimes) ?? 0) : 0;
}

/** Seconds a kettle has stood since it boiled, told or asked of; null where nobody says how long. */
export const boiledAgoS = (words: string, { says }: TalkCues): number | null =>
  words.length <= longestLate && says('boiled-ago', words) ? secondsSaid(words, shortTimes) : null;

/**
 * How cool a boiled kettle shall get, asked how long that takes, and what is in it; nothing where more than that is told.
 * `asksStand`: as cool as the tea wants it.
 */
export function coolingAsked(heard: Facts, words: string, { says }: TalkCues): Facts {
  const { tempC = null, volumeMl = null, kind = null } = heard;
  if (kind === 'safety' || words.length > longestLate || !says('asks-cooling', words)) return {};
  const ofABrew = ['tea', 'teas', 'family', 'leafG', 'guests'].some((name) => (heard[name] ?? null) !== null);
  const ofAVessel = (heard['vessel'] ?? null) !== null && heard['vesselFaint'] !== true;
  if (tempC === null) return { asksStand: true };
  return ofABrew || ofAVessel ? {} : { coolsToC: tempC, inKettleMl: volumeMl };
}

/** To which heats, in °C, a kettle can be set; null where not two are told. */
export function kettleC(words: string, { says }: TalkCues): readonly number[] | null {
  if (words.length > longestLate || !says('kettle-goes-to', words)) return null;
  const told = [...words.matchAll(/\d{2,3}/g)].map(([digits]) => Number(digits));
  const heats = told.map((c) => (c > boilingC ? celsius(c) : c)).filter((c) => c >= leastHotC && c <= boilingC);
  return heats.length > 1 && heats.length === told.length ? [...new Set(heats)] : null;
}
/** Cooler no kettle is set; hotter than it boils can only be Fahrenheit. */
const leastHotC = 40;
