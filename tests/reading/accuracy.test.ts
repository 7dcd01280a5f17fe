import { expect, test } from 'vitest';
import { accuracyOf, readSentences, report } from './accuracy.ts';
import { finder, read } from './content.ts';

const sentences = readSentences();
const heldOut = sentences.filter((sentence) => sentence.heldOut);
const accuracy = accuracyOf(heldOut, read, finder);

test('there are enough sentences, in three languages, with slips among them', () => {
  expect(sentences.length).toBeGreaterThanOrEqual(400);
  for (const language of ['en', 'zh-Hant', 'zh-Hans']) {
    expect(sentences.filter((sentence) => sentence.language === language).length).toBeGreaterThan(100);
  }
  expect(sentences.filter((sentence) => sentence.slip).length / sentences.length).toBeGreaterThan(0.08);
});

// Floors a little under what was measured, so that a change that makes the reader worse is seen.
test.each([
  ['kind', 0.92],
  ['language', 0.97],
  ['tea', 0.98],
  ['family', 0.97],
  ['vessel', 0.95],
  ['volumeMl', 0.98],
  ['leafG', 0.98],
  ['guests', 0.97],
  ['tempC', 0.98],
  ['elevationM', 0.99],
  ['style', 0.97],
])('held-out sentences: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(accuracy, heldOut, false));
  expect(accuracy.of(field)).toBeGreaterThanOrEqual(floor);
});

test('no tea is taken for another, tuned or not', () => {
  const all = accuracyOf(sentences, read, finder);
  expect(all.wrongTeas.map((miss) => [miss.sentence.text, miss.read])).toEqual([]);
});
