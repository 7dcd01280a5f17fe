/** Questions that what is told of a lesson answers: when, where, who, how long, how much, what to bring. Chooses no lesson. */
import type { Sentence } from './sentence.ts';

/** Longer than any such question needs; it bounds the reading's time. */
const longest = 120;

const beginningOf = (sentence: Sentence): Sentence =>
  sentence.text.length > longest ? sentence.part(sentence.text.slice(0, longest)) : sentence;

export const asksForRoom = (sentence: Sentence): boolean => beginningOf(sentence).says('room');

export function asksDetail(sentence: Sentence): boolean {
  const beginning = beginningOf(sentence);
  return beginning.says('room') || beginning.says('detail');
}

/** "How much is it?" and no more: it can only be of what was spoken of. */
export function asksDetailAlone(sentence: Sentence): boolean {
  const bare = sentence.part(sentence.text.slice(0, longest).replace(/[\s?？!.。！呢嗎吗]+$/u, ''));
  return bare.says('bare-detail') && asksDetail(bare);
}
