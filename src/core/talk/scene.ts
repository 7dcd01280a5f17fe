/** A message in its talk: what was heard of it, in which words, and what is being talked of. */
import type { Facts, Json } from '../flow/flow.ts';
import type { TalkCues } from './talk-cues.ts';
import type { TalkCueName } from './talk-cue-names.ts';

export interface Talk {
  readonly house: Facts | undefined;
  readonly flow: Json;
  /** What the place asks for, if it asks. */
  readonly asked?: Json;
}

/** A message in its talk: what was heard of it, and its words as talkWords has them. */
export interface Scene extends Talk {
  readonly heard: Facts;
  readonly words: string;
  readonly cues: TalkCues;
}

export const says =
  (cue: TalkCueName) =>
  ({ words, cues }: Scene): boolean =>
    cues.says(cue, words);

/** Whether the message told this. */
export const isTold = (heard: Facts, name: string): boolean => (heard[name] ?? null) !== null;
