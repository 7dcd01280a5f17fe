/** The index of questions beside an independent one: the same questions, with the same weight, for what customers write. */
import MiniSearch from 'minisearch';
import { expect, test } from 'vitest';
import { cueText } from '../../../../src/core/reading/cues/cues.ts';
import { makeQuestionIndex } from '../../../../src/core/reading/answers/question-index.ts';
import { termsOf } from '../../../../src/core/reading/answers/terms.ts';
import { plainText } from '../../../../src/core/teas/plain-text.ts';
import { readSentences } from '../../../reading/accuracy.ts';
import { answers } from '../../../reading/content.ts';

const termsIn = (text: string): string[] => termsOf(cueText(plainText(text).plain));
const questions = answers.flatMap((answer) => Object.values(answer.questions).flat().map(termsIn));
const search = makeQuestionIndex(questions);

const beside = new MiniSearch({
  fields: ['question'],
  tokenize: (text) => text.split(' '),
  processTerm: (term) => term,
});
beside.addAll(questions.map((terms, id) => ({ id, question: terms.join(' ') })));
const fuzzy = (term: string): number => (/^[a-z]{5,}$/.test(term) ? 1 : 0);

const row = (at: number, score: number, terms: Iterable<string>): string =>
  `${at} ${score.toFixed(6)} ${[...terms].toSorted().join(' ')}`;

test('finds what an independent index finds, and weighs it alike', () => {
  const asked = readSentences('customers.txt').map(({ text }) => termsIn(text));
  const found = asked.map((terms) => search(terms, () => true).map((hit) => row(hit.at, hit.score, hit.held)));
  const theirs = asked.map((terms) =>
    beside.search(terms.join(' '), { fuzzy }).map((hit) => row(Number(hit.id), hit.score, hit.terms)),
  );
  expect(found.flat().length).toBeGreaterThan(1000);
  expect(found.map((rows) => rows.toSorted())).toEqual(theirs.map((rows) => rows.toSorted()));
});

test('finds only what fits', () => {
  const asked = termsIn('how do I store white tea');
  const all = search(asked, () => true).map(({ at }) => at);
  expect(search(asked, (at) => at % 2 === 0).map(({ at }) => at)).toEqual(all.filter((at) => at % 2 === 0));
});
