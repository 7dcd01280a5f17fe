/**
 * Questions that share words with the one asked, the rarer the word the more it counts: BM25+ (Lv & Zhai 2011, from
 * memory). A longer word finds those one letter away as well. Knows no answers.
 */
import { withOneLeftOut } from '../../teas/spelling.ts';

export interface Hit {
  /** The question's place in the list. */
  readonly at: number;
  /** Of every word it shares, times how many were asked. */
  readonly score: number;
  /** The question's own words that were asked, each once. */
  readonly held: readonly string[];
  /** The words asked that it holds, each once. */
  readonly asked: readonly string[];
}

/** The words asked are each there once. */
export type QuestionIndex = (asked: readonly string[], fits: (at: number) => boolean) => readonly Hit[];

/** The usual values: how soon a word said again counts less, how much a long question is held against it, what any word earns. */
const [saturation, lengthMatters, floor] = [1.2, 0.7, 0.5];
/** What a word one letter away counts, against the word itself: the more, the longer it is. */
const nearCounts = (word: string): number => (0.45 * word.length) / (word.length + 1);
/** Shorter words, and those of digits or Han, are looked up as they are. */
const mayBeSlip = /^[a-z]{5,}$/;

interface Term {
  readonly questions: number[];
  rarity: number;
}

/** Each question is its words, each once. */
export function makeQuestionIndex(questions: readonly (readonly string[])[]): QuestionIndex {
  const terms = termsOf(questions);
  const spellings = spellingsOf(terms.keys());
  const usualLength = questions.reduce((sum, words) => sum + words.length, 0) / questions.length;
  const earns = questions.map(({ length }) => {
    const long = 1 - lengthMatters + (lengthMatters * length) / usualLength;
    return floor + (saturation + 1) / (1 + saturation * long);
  });

  return (asked, fits) => {
    const hits = new Map<number, Growing>();
    const count = (word: string, held: string, weight: number): void => {
      const term = terms.get(held);
      for (const at of term?.questions ?? []) {
        if (!fits(at)) continue;
        let hit = hits.get(at);
        if (!hit) hits.set(at, (hit = { at, score: 0, held: [], asked: [] }));
        hit.score += weight * (term?.rarity ?? 0) * (earns[at] ?? 0);
        if (!hit.held.includes(held)) hit.held.push(held);
        if (hit.asked.at(-1) !== word) hit.asked.push(word);
      }
    };
    for (const word of asked) {
      count(word, word, 1);
      if (mayBeSlip.test(word)) for (const near of spellings(word)) count(word, near, nearCounts(near));
    }
    for (const hit of hits.values()) hit.score *= hit.asked.length;
    return [...hits.values()];
  };
}

interface Growing extends Hit {
  score: number;
  readonly held: string[];
  readonly asked: string[];
}

function termsOf(questions: readonly (readonly string[])[]): ReadonlyMap<string, Term> {
  const terms = new Map<string, Term>();
  for (const [at, words] of questions.entries()) {
    for (const word of words) {
      const term = terms.get(word) ?? { questions: [], rarity: 0 };
      term.questions.push(at);
      terms.set(word, term);
    }
  }
  for (const term of terms.values()) {
    const holders = term.questions.length;
    term.rarity = Math.log(1 + (questions.length - holders + 0.5) / (holders + 0.5));
  }
  return terms;
}

/** The known words that differ from one by a letter more, less or other. */
function spellingsOf(known: Iterable<string>): (word: string) => readonly string[] {
  const near = new Map<string, string[]>();
  for (const word of known) {
    for (const form of withOneLeftOut(word)) {
      const those = near.get(form);
      if (those) those.push(word);
      else near.set(form, [word]);
    }
  }
  return (word) => {
    const those = withOneLeftOut(word).flatMap((form) => near.get(form) ?? []);
    return [...new Set(those)].filter((other) => isOneLetterAway(word, other));
  };
}

function isOneLetterAway(a: string, b: string): boolean {
  if (a === b) return false;
  let same = 0;
  while (a[same] === b[same]) same++;
  const [restA, restB] = [a.slice(same), b.slice(same)];
  return restA.slice(1) === restB.slice(1) || restA === restB.slice(1) || restA.slice(1) === restB;
}
