/** A small turn at what is planned already: hotter, less leaf, longer, hot again; by data/reading/plan-cues.yaml. Says by which way, never by how much. */
import type { Cues } from './cues/cues.ts';
import { cueOfTurn, turnsByCue } from './cues/plan-cue-names.ts';
import { isFaint, namesNothing } from './named.ts';
import type { Observation } from './observation.ts';
import { likesDiffer } from './wishes.ts';

/** Those told by a cue each come first; what is left of them is told by the wishes for strength. */
export const turns = [...turnsByCue, 'stronger', 'lighter'] as const;
export type Turn = (typeof turns)[number];

/** Longer texts say more than that. */
const longestTurn = 46;

/** 濃少少, 熱d: a little, as it is said and typed in Hong Kong. */
const littleMore = /(?<=[热烫凉冻浓淡久耐长短快多少高低大细])(?:少少|小小|d)(?![a-z])/g;

export function readTurn(cues: Cues, written: string): Turn | null {
  if (written.length > longestTurn || likesDiffer(cues, written)) return null;
  const words = written.replace(littleMore, '啲');
  const told = turnsByCue.find((turn) => cues.has(cueOfTurn(turn), words));
  if (told) return told;
  if (/(?:^|\b(?:bit|little|touch) )less(?: please| then)?$/.test(words) || cues.has('light', words)) return 'lighter';
  return /(?:^|\b(?:bit|little|touch) )more(?: please| then)?$/.test(words) || cues.has('strong', words)
    ? 'stronger'
    : null;
}

/** 半壺就夠了 我一個人: who drinks may be told with it. */
export const halvesForSome = (seen: Observation): boolean =>
  seen.quantities.guests.value !== null &&
  namesNothing(seen, isFaint, 'guests') &&
  readTurn(seen.cues, seen.words) === 'half-pot';
