/** "No thanks, I have to pick up the kids": no, and why not. Nothing else is wanted instead. */
import type { Sentence } from './sentence.ts';

/** Longer than that, more is told. */
const longest = 100;

export function declines(sentence: Sentence): boolean {
  if (sentence.text.trim().length > longest || !sentence.says('declines')) return false;
  const why = sentence.without('declines');
  return !/[?？]/.test(why.text) && !why.says('wants-else');
}
