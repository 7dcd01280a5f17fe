/** What customers write first, from the counter of a shop: kinds and facts, so that what was mended stays mended. */
import { expect, test } from 'vitest';
import { accuracyOf, readSentences, report } from './accuracy.ts';
import { finder, read } from './content.ts';

const people = readSentences('front-counter.txt');
const accuracy = accuracyOf(people, read, finder);

test.each([
  ['kind', 0.94],
  ['tea', 0.98],
  ['vessel', 0.98],
  ['volumeMl', 0.98],
  ['leafG', 0.98],
  ['guests', 0.99],
  ['tempC', 0.98],
  ['style', 0.97],
])('people at the counter: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(accuracy, people, true));
  expect(people.length).toBeGreaterThan(200);
  expect(accuracy.of(field)).toBeGreaterThanOrEqual(floor);
});
