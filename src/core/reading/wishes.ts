/** How a person likes it brewed: in which style, how strong, in a warmed vessel or not. */
import type { Cues } from './cues.ts';

export type ReadStyle = 'gongfu' | 'western' | 'grandpa' | 'cold';

export function readStyle(cues: Cues, words: string): ReadStyle | null {
  const told = (['cold', 'gongfu', 'western', 'grandpa'] as const).filter((style) => cues.has(style, words));
  return told[0] ?? null;
}

/** Common practice, no source: what "strong" and "light" ask of the model's own wish of 0.6 … 1.5. */
const strongWish = 1.25;
const lightWish = 0.8;

export function readStrength(cues: Cues, words: string): number | null {
  if (cues.has('light', words) || cues.has('likes-light', words)) return lightWish;
  return cues.has('strong', words) || cues.has('likes-strong', words) ? strongWish : null;
}

/** How somebody likes it, and no word on a cup that was not so. */
export const tellsLiking = (cues: Cues, words: string): boolean =>
  (cues.has('likes-strong', words) || cues.has('likes-light', words)) && !wasNotSo.test(words);

const wasNotSo = /\b(?:too|came|turned|tast\w+|was|but)\b|太|[泡冲]出|但|可是/;

export function readWarmed(cues: Cues, words: string): boolean | null {
  if (cues.has('not-warmed', words)) return false;
  return cues.has('warmed', words) ? true : null;
}
