/** What evidence weighs, learnt from data/reading/examples.yaml, the questions of data/answers and labelled sentences. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readAnswers } from '../content/answers.ts';
import { readExamples, readReadingWords } from '../content/reading-words.ts';
import { readTeaNames, readTeas } from '../content/tea-data.ts';
import type { StandingAnswer } from '../core/reading/answers.ts';
import { cueText } from '../core/reading/cues/cues.ts';
import { isTalk, makeEvidenceFinder } from '../core/reading/kinds/evidence.ts';
import { kinds, type Kind } from '../core/reading/kinds/kind.ts';
import { learn, type Lesson } from '../core/reading/kinds/learn.ts';
import { makeObserver } from '../core/reading/observation.ts';
import { slipCost, swapped } from '../core/reading/typed/slip-cost.ts';
import { makeSubjectFinder } from '../core/reading/kinds/subjects.ts';
import { writeWeights } from '../core/reading/kinds/weights.ts';
import { makeSieve } from '../core/reading/cues/sieve.ts';
import { makeTeaFinder } from '../core/teas/find.ts';
import { plainText } from '../core/teas/plain-text.ts';

/** The labelled sentences that are learnt from; the others are kept apart. */
export const learntSentences = [
  'sentences.txt',
  'customers.txt',
  'customers-later.txt',
  'passers-by.txt',
  'market-day.txt',
  'rainy-morning.txt',
  'at-the-stove.txt',
  'at-the-sink.txt',
  'tram-stop.txt',
  'ferry-in.txt',
];
const nothingAsked = { language: null, asked: null };

interface Example {
  readonly kind: Kind;
  readonly text: string;
}

/** A word in fewer of the sentences isn't common enough that a slip is put right to it. */
const commonFrom = 5;

/** The words customers often write, the commonest first, as data/reading/common-words.txt has them. */
export function commonWords(texts: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const word of texts.flatMap((text) => cueText(plainText(text).plain).match(/[a-z]{3,}/g) ?? []))
    counts.set(word, (counts.get(word) ?? 0) + 1);
  const common = [...counts]
    .filter(([, count]) => count >= commonFrom)
    .toSorted((a, b) => b[1] - a[1] || a[0].localeCompare(b[0], 'en'));
  const isSlip = ([word, count]: readonly [string, number]): boolean =>
    common.some(([other, often]) => often >= slipFrom * count && isSlipOf(word, other));
  return common.filter((one) => !isSlip(one)).map(([word]) => word);
}

/** "Hwo" is often written, and "how" so many times as often. */
const slipFrom = 10;
const surelySlip = 1.5;
const isSlipOf = (word: string, other: string): boolean => {
  const swaps = word.length === 3 && [0, 1].some((at) => swapped(word, at) === other);
  return swaps || (word.length > 3 && other.length > 3 && (slipCost(word, other) ?? Infinity) <= surelySlip);
};

/** What data/reading/weights.txt, common-words.txt and shop-talk.txt hold. */
export function learnt(
  dataDir: string,
  sentencesFiles: readonly string[],
): { examples: number; weights: string; common: string[]; shopTalk: string[] } {
  const examples = allExamples(dataDir, sentencesFiles);
  const common = commonWords(examples.map(({ text }) => text));
  const words = { ...readReadingWords(dataDir), common };
  const names = readTeaNames(dataDir);
  const finder = makeTeaFinder(readTeas(dataDir), names);
  const ordinary = new Set(names.ordinary);
  const observe = makeObserver({ finder, words, ordinary, answers: ownAnswers(dataDir), sieve: makeSieve() });
  const subjectsOf = makeSubjectFinder(words.subjects);
  const seen = examples.map(({ kind, text }) => ({ kind, observed: observe(text, nothingAsked) }));
  const lessonsIn = (heard: readonly string[]): Lesson[] => {
    const shopTalk = new Set(heard);
    const evidenceIn = makeEvidenceFinder(subjectsOf, { ...words.worlds, shopTalk: () => shopTalk });
    return seen.map(({ kind, observed }) => ({ kind, evidence: evidenceIn(observed) }));
  };
  const shopTalk = shopTalkIn(lessonsIn([]));
  return { examples: examples.length, weights: writeWeights(learn(lessonsIn(shopTalk))), common, shopTalk };
}

/** A word in fewer of the sentences about the shop's own matters is none of its talk. Of 1, 2 and 3 the best on sentences not learnt from. */
const heardFrom = 2;

function shopTalkIn(lessons: readonly Lesson[]): string[] {
  const counts = new Map<string, number>();
  const pieces = lessons.flatMap(({ kind, evidence }) => (kind === 'offtopic' ? [] : evidence.filter(isTalk)));
  for (const piece of pieces) counts.set(piece, (counts.get(piece) ?? 0) + 1);
  return [...counts]
    .filter(([, count]) => count >= heardFrom)
    .map(([piece]) => piece)
    .toSorted();
}

/** The shop's own answers change without the weights being learnt anew. */
const ownAnswers = (dataDir: string): readonly StandingAnswer[] => readAnswers(dataDir, join(dataDir, 'no-shop'));

function allExamples(dataDir: string, sentencesFiles: readonly string[]): Example[] {
  const examples = readExamples(dataDir);
  const own = kinds.flatMap((kind) => examples[kind].map((text) => ({ kind, text })));
  const asked = ownAnswers(dataDir).flatMap(({ kind, ofBrewing, questions }) =>
    Object.values(questions).flatMap((all) =>
      all.map((text) => ({ kind: ofBrewing ? ('brew' as const) : kind, text })),
    ),
  );
  return [...own, ...asked, ...sentencesFiles.flatMap((file) => labelled(readFileSync(file, 'utf8')))];
}

/** Lines "language kind | text | facts" (tests/reading/sentences.txt). */
function labelled(text: string): Example[] {
  return text.split('\n').flatMap((line) => {
    if (line.startsWith('#') || line.trim() === '') return [];
    const [head = '', said = ''] = line.split('|').map((part) => part.trim());
    const kind = kinds.find((one) => one === head.split(' ')[1]?.replace('~', ''));
    return kind ? [{ kind, text: said }] : [];
  });
}
