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

/** So much of the words of a question must be in the answer's own questions, by weight. */
const leastShare = 0.34;
const stopWords = new Set(
  'the a an i my me is are do does did how what which when where can could should would will to of in on for with and or it its this that be have has you your at if so as not no any there from by we our im ive'.split(
    ' ',
  ),
);

export function makeAnswerFinder(
  answers: readonly StandingAnswer[],
): (words: string, kind: StandingAnswer['kind']) => string | null {
  const search = new MiniSearch<{ id: number; answer: string; kind: string; question: string }>({
    fields: ['question'],
    storeFields: ['answer', 'kind'],
    tokenize: termsOf,
    processTerm: (term) => term,
  });
  let next = 0;
  for (const { id, kind, questions } of answers) {
    for (const question of Object.values(questions).flat()) {
      search.add({ id: next++, answer: id, kind, question: cueText(plainText(question).plain) });
    }
  }
  return (words, kind) => {
    const terms = termsOf(words.slice(0, 300));
    if (terms.length === 0) return null;
    const [best] = search.search(words.slice(0, 300), {
      filter: (hit) => hit['kind'] === kind,
      fuzzy: (term) => (/[a-z]{5}/.test(term) ? 1 : 0),
      prefix: (term) => /[a-z]{5}/.test(term),
    });
    if (!best) return null;
    return best.queryTerms.length / terms.length >= leastShare ? String(best['answer']) : null;
  };
}

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
