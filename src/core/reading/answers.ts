/** Which standing answer of the shop fits a question, if one clearly does. */
import MiniSearch from 'minisearch';
import type { Language } from '../units.ts';
import { plainText } from '../teas/plain-text.ts';
import { cueText } from './cues.ts';

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
const stopWords = new Set(
  'the a an i my me is are do does did how what which when where can could should would will to of in on for with and or it its this that be have has you your at if so as not no any there from by we our im ive'.split(
    ' ',
  ),
);

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
    const [best] = hits;
    const row = numbered[Number(best?.id)];
    if (!best || !row) return null;
    const likeness = Math.min(best.queryTerms.length / terms.length, best.terms.length / termsOf(row.question).length);
    return likeness >= leastLikeness ? { id: row.answer, kind: row.kind, likeness } : null;
  };
}

/** Longer texts hold more than one question. */
const longestQuestion = 300;

/** Words of Latin script, less the small ones; single Han characters and pairs, so that parts of a word are found. */
function termsOf(text: string): string[] {
  const terms = (text.match(/[a-z0-9]{2,}/g) ?? []).filter((word) => !stopWords.has(word)).map(stem);
  for (const run of text.match(/\p{Script=Han}+/gu) ?? []) {
    for (let i = 0; i + 1 < run.length; i++) terms.push(run.slice(i, i + 2));
    if (run.length === 1) terms.push(run);
  }
  return [...new Set(terms)];
}

function stem(word: string): string {
  return word.length > 4 ? word.replace(/(?:ing|ies|es|s|ed)$/, '') : word;
}
