/** The cues of data/reading/cues.yaml, and words put right that are a letter away from one of theirs. */
import { contracted, makeCueSet, type CueSet } from './cue-set.ts';
import { editDistance, withOneLeftOut } from '../../teas/spelling.ts';
import { notMendedBy, type CueName } from './cue-names.ts';
import type { ReadingWords } from '../reading-words.ts';
import type { Sieve } from './sieve.ts';

export interface Cues extends CueSet<CueName> {
  /** The text with the words that are a letter away from a cue's word put right. */
  mended(text: string): string;
}

/** Shorter words are too near to others to be mended. */
const shortestMended = 6;

/** Plain text as cues are written: no apostrophes, a space for a hyphen, single spaces, "doesnt" for "does not". */
export function cueText(plain: string): string {
  const spaced = plain
    .replace(/'/g, '')
    .replace(/([a-z])\1{2,}/g, '$1$1')
    .replace(/[-_/]+/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return contracted(spaced);
}

/** `known` are words that stay as they are. */
export function makeCues(cues: ReadingWords['cues'], known: ReadonlySet<string>, sieve: Sieve): Cues {
  const stems = stemsOf(cues);
  const near = new Map<string, string>();
  for (const stem of stems) for (const form of withOneLeftOut(stem)) if (!near.has(form)) near.set(form, stem);
  const isKnown = (word: string): boolean =>
    known.has(word) || stems.has(word) || beginnings(word).some((b) => stems.has(b));
  const mend = (word: string): string => {
    if (isKnown(word)) return word;
    for (const form of withOneLeftOut(word)) {
      const stem = near.get(form);
      if (stem?.charAt(0) === word.charAt(0) && editDistance(word, stem, 1) <= 1) return stem;
    }
    return word;
  };
  return { ...makeCueSet(cues, sieve), mended: (text) => text.replace(/[a-z]{6,14}/g, mend) };
}

function stemsOf(cues: ReadingWords['cues']): Set<string> {
  const words = Object.entries(cues)
    .flatMap(([cue, patterns]) => (notMendedBy.has(cue) ? [] : patterns))
    .flatMap((pattern) => pattern.match(/[a-z]+/g) ?? []);
  return new Set(words.filter((word) => word.length >= shortestMended));
}

/** "storing" begins with "stor": a word that goes on from a cue's word is known. */
function beginnings(word: string): string[] {
  return Array.from({ length: Math.max(0, word.length - shortestMended) }, (_, i) => word.slice(0, shortestMended + i));
}
