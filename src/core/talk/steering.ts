/** Where somebody wants a brew to go, and what they ask of how it stands. It takes it nowhere. */
import type { TalkCues } from './talk-cues.ts';

/** Of two that fit the first is meant. */
const steers = ['remind', 'over-night', 'begin', 'pause', 'end', 'skip', 'return'] as const;
export type Steer = (typeof steers)[number];

/** Longer texts tell more than that. */
const longest = 80;
const longestQuestion = 60;

/** `words` as talkWords has them. */
export function steered(words: string, { says }: TalkCues): Steer | null {
  if (words.length > longest) return null;
  const waits = says('pause-in-pieces', words) && says('pause-piece', words);
  const steer =
    steers.find((one) => says(one, words) || (one === 'pause' && waits)) ??
    (says('asks-to-pause', words) ? 'pause' : null);
  // Of a seat, the house reminds by itself.
  return steer === 'remind' && says('of-lessons', words) ? null : steer;
}

/** Up to which infusion, if that is said. */
export const skippedTo = (words: string, cues: TalkCues): number | null => cues.numberIn('skip-to', words);

const asked = [
  'where-it-stands',
  'asks-refill',
  'asks-drink',
  'asks-own-brews',
  'asks-own-taste',
  'asks-left',
] as const;

/** How far it is, how hot, what next; when a glass is refilled; what was brewed the last time. */
export const asks = (what: (typeof asked)[number], words: string, { says }: TalkCues): boolean =>
  words.length <= longestQuestion && says(what, words);
