/** Which kind a sentence is most like, by the words it shares with example sentences. Naive Bayes with equal priors. */
import { termsOf } from './terms.ts';

export interface Example<K extends string> {
  readonly kind: K;
  /** cueText of the example. */
  readonly text: string;
}

export interface Likely<K extends string> {
  readonly kind: K;
  /** How much likelier than the next kind, as a natural logarithm. */
  readonly lead: number;
}

/** Smoothing of words a kind has not shown. Chosen on the tuning half of tests/reading/sentences.txt. */
const unseen = 0.2;

export function makeLikeness<K extends string>(examples: readonly Example<K>[]): (text: string) => Likely<K> | null {
  const counts = new Map<K, Map<string, number>>();
  const known = new Set<string>();
  for (const { kind, text } of examples) {
    const words = counts.get(kind) ?? new Map<string, number>();
    counts.set(kind, words);
    for (const term of termsOf(text)) {
      words.set(term, (words.get(term) ?? 0) + 1);
      known.add(term);
    }
  }
  const totals = new Map([...counts].map(([kind, words]) => [kind, [...words.values()].reduce((a, b) => a + b, 0)]));
  const logShare = (kind: K, words: ReadonlyMap<string, number>, term: string): number =>
    Math.log(((words.get(term) ?? 0) + unseen) / ((totals.get(kind) ?? 0) + unseen * known.size));

  return (text) => {
    const terms = termsOf(text).filter((term) => known.has(term));
    if (terms.length === 0) return null;
    const scored = [...counts].map(([kind, words]) => ({
      kind,
      score: terms.reduce((sum, term) => sum + logShare(kind, words, term), 0),
    }));
    const [first, second] = scored.toSorted((a, b) => b.score - a.score);
    return first && second ? { kind: first.kind, lead: first.score - second.score } : null;
  };
}
