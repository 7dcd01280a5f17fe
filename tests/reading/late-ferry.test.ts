/** People on a late ferry: kinds, facts and standing answers of Chinese sentences never learnt from, nor mended with a look at them. */
import { expect, test } from 'vitest';
import { accuracyOf, answered, readSentences, report } from './accuracy.ts';
import { finder, read } from './content.ts';

const people = readSentences('late-ferry.txt');
const accuracy = accuracyOf(people, read, finder);

// When they were new: kind 55 of 59.
test.each([
  ['kind', 0.9],
  ['tea', 0.95],
  ['vessel', 0.93],
  ['volumeMl', 0.93],
  ['leafG', 0.95],
  ['guests', 0.95],
  ['tempC', 0.95],
])('people on a late ferry: %s is right in at least %f', (field, floor) => {
  if (process.env['REPORT'] !== undefined && field === 'kind') console.log(report(accuracy, people, true));
  expect(people.length).toBe(59);
  expect(accuracy.of(field)).toBeGreaterThanOrEqual(floor);
});

// When they were new: 14 of 19.
test('people on a late ferry: most get the standing answer that fits', () => {
  const { of, right } = answered(people, read, 'near');
  expect(of).toBeGreaterThanOrEqual(19);
  expect(right).toBeGreaterThanOrEqual(13);
});
