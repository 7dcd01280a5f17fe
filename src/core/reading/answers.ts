/** Which standing answer of the shop fits a question, if one clearly does. */
import MiniSearch, { type SearchResult } from 'minisearch';
import type { Language } from '../units.ts';
import { plainText } from '../teas/plain-text.ts';
import { cueText } from './cues.ts';
import { termsOf } from './terms.ts';

export interface StandingAnswer {
  readonly id: string;
  readonly kind: 'care' | 'safety' | 'shop';
  /** Questions it answers, as people put them. */
  readonly questions: { readonly [language in Language]: readonly string[] };
  readonly text: { readonly [language in Language]: string };
  readonly sources: readonly string[];
}

export interface FoundAnswer {
  readonly id: string;
  readonly kind: StandingAnswer['kind'];
  /** How much of the question's words are in the answer's own question, 0…1, and the other way round. */
  readonly likeness: number;
}

/** So alike must they be; Han pairs overlap less than words do. Tuned on the tuning half of tests/reading/sentences.txt. */
const leastLikeness = 0.2;
export interface AnswerFinder {
  /** The answer that fits best, of this kind or of any, or null. */
  (words: string, kind: StandingAnswer['kind'] | null): FoundAnswer | null;
}

interface Row {
  readonly id: number;
  readonly answer: string;
  readonly kind: StandingAnswer['kind'];
  readonly question: string;
}

export function makeAnswerFinder(answers: readonly StandingAnswer[]): AnswerFinder {
  const search = new MiniSearch<Row>({ fields: ['question'], tokenize: termsOf, processTerm: (term) => term });
  const rows = answers.flatMap(({ id, kind, questions }) =>
    Object.values(questions)
      .flat()
      .map((question) => ({ answer: id, kind, question: cueText(plainText(question).plain) })),
  );
  const numbered = rows.map((row, id) => ({ id, ...row }));
  search.addAll(numbered);
  return (words, kind) => {
    const asked = words.slice(0, longestQuestion);
    const terms = termsOf(asked);
    if (terms.length === 0) return null;
    const hits = search.search(asked, {
      filter: (hit) => kind === null || numbered[Number(hit.id)]?.kind === kind,
      fuzzy: (term) => (/[a-z]{5}/.test(term) ? 1 : 0),
    });
    const best = favourite(hits, (id) => numbered[id]?.answer ?? '');
    const row = numbered[Number(best?.id)];
    if (!best || !row) return null;
    const likeness = Math.min(best.queryTerms.length / terms.length, best.terms.length / termsOf(row.question).length);
    return likeness >= leastLikeness ? { id: row.answer, kind: row.kind, likeness } : null;
  };
}

/** Longer texts hold more than one question. */
const longestQuestion = 300;

/** The best hit of the answer whose questions, taken together, hold most of what was asked. */
function favourite(hits: readonly SearchResult[], answerOf: (id: number) => string): SearchResult | undefined {
  const weights = new Map<string, Map<string, number>>();
  for (const hit of hits) {
    const answer = answerOf(Number(hit.id));
    const terms = weights.get(answer) ?? new Map<string, number>();
    weights.set(answer, terms);
    const share = hit.score / hit.terms.length;
    for (const term of hit.queryTerms) terms.set(term, Math.max(terms.get(term) ?? 0, share));
  }
  const weightOf = (hit: SearchResult): number =>
    hit.score +
    [...(weights.get(answerOf(Number(hit.id))) ?? new Map<string, number>()).values()].reduce((a, b) => a + b, 0);
  return hits.toSorted((a, b) => weightOf(b) - weightOf(a))[0];
}
