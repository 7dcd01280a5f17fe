/** Which standing answer of the shop fits a question, if one clearly does. */
import MiniSearch, { type SearchResult } from 'minisearch';
import type { Language } from '../units.ts';
import { plainText } from '../teas/plain-text.ts';
import { cueText } from './cues.ts';
import { oneChinese } from './one-chinese.ts';
import type { SubjectFinder } from './subjects.ts';
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
  /** How much of what was asked the answer's own questions hold, and of the best of those what was asked, 0…1; the smaller. */
  readonly likeness: number;
}

export interface AnswerFinder {
  /** The answer that fits best, of this kind or of any, or null. */
  (words: string, kind: StandingAnswer['kind'] | null): FoundAnswer | null;
}

/** What no other answer on safety fits gets this one: careful, and no more. */
export const generalSafety = 'safety-general';

/** So alike must they be. A wrong answer on safety does more harm than the general one. Chosen on the examples. */
const leastLikeness = { care: 0.25, shop: 0.25, safety: 0.4 } as const;
/** Longer texts hold more than one question. */
const longestQuestion = 300;

interface Row {
  readonly id: number;
  readonly answer: string;
  readonly kind: StandingAnswer['kind'];
  readonly terms: readonly string[];
}

export function makeAnswerFinder(answers: readonly StandingAnswer[], subjectsOf: SubjectFinder): AnswerFinder {
  const termsIn = (words: string): string[] => {
    const text = oneChinese(words);
    return [...termsOf(text), ...subjectsOf(text).map((subject) => `about-${subject}`)];
  };
  const rows: readonly Row[] = answers
    .flatMap(({ id, kind, questions }) =>
      Object.values(questions)
        .flat()
        .map((text) => ({ answer: id, kind, terms: termsIn(cueText(plainText(text).plain)) })),
    )
    .map((row, id) => ({ id, ...row }));
  const search = new MiniSearch<Row & { question: string }>({
    fields: ['question'],
    tokenize: (text) => text.split(' '),
    processTerm: (term) => term,
  });
  search.addAll(rows.map((row) => ({ ...row, question: row.terms.join(' ') })));
  const weightOf = rarity(rows);

  return (words, kind) => {
    const asked = termsIn(words.slice(0, longestQuestion));
    if (asked.length === 0) return null;
    const hits = search.search(asked.join(' '), {
      filter: (hit) => kind === null || rows[Number(hit.id)]?.kind === kind,
      fuzzy: (term) => (/^[a-z]{5,}$/.test(term) ? 1 : 0),
    });
    const best = favourite(hits, (id) => rows[id]?.answer ?? '');
    const row = best && rows[Number(best.hit.id)];
    if (!row) return null;
    const likeness = Math.min(
      shareOf(best.terms, asked, weightOf),
      shareOf(new Set(best.hit.terms), row.terms, weightOf),
    );
    return likeness >= leastLikeness[row.kind] ? { id: row.answer, kind: row.kind, likeness } : null;
  };
}

/** How much of the weight of all these terms is in those held. */
function shareOf(held: ReadonlySet<string>, all: readonly string[], weightOf: (term: string) => number): number {
  const sum = (terms: readonly string[]): number => terms.reduce((total, term) => total + weightOf(term), 0);
  return sum(all.filter((term) => held.has(term))) / sum(all);
}

/** As if a word that no answer's questions hold were in so many: often it is only talk. */
const strangerIn = 6;

/** Words that many answers' questions hold say little. */
function rarity(rows: readonly Row[]): (term: string) => number {
  const holders = new Map<string, Set<string>>();
  for (const { answer, terms } of rows)
    for (const term of terms) holders.set(term, (holders.get(term) ?? new Set()).add(answer));
  const all = new Set(rows.map(({ answer }) => answer)).size;
  return (term) => Math.log(1 + all / (holders.get(term)?.size ?? strangerIn)) - Math.LN2;
}

interface Favourite {
  readonly hit: SearchResult;
  /** What of the question any of the answer's questions holds. */
  readonly terms: ReadonlySet<string>;
}

/** The best hit of the answer whose questions, taken together, hold most of what was asked. */
function favourite(hits: readonly SearchResult[], answerOf: (id: number) => string): Favourite | null {
  const weights = new Map<string, Map<string, number>>();
  for (const hit of hits) {
    const answer = answerOf(Number(hit.id));
    const terms = weights.get(answer) ?? new Map<string, number>();
    weights.set(answer, terms);
    const share = hit.score / hit.terms.length;
    for (const term of hit.queryTerms) terms.set(term, Math.max(terms.get(term) ?? 0, share));
  }
  const termsOfAnswer = (hit: SearchResult): ReadonlyMap<string, number> =>
    weights.get(answerOf(Number(hit.id))) ?? new Map<string, number>();
  const weight = (hit: SearchResult): number => hit.score + [...termsOfAnswer(hit).values()].reduce((a, b) => a + b, 0);
  const [hit] = hits.toSorted((a, b) => weight(b) - weight(a));
  return hit ? { hit, terms: new Set(termsOfAnswer(hit).keys()) } : null;
}
