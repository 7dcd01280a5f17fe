/** Days that people call by a feast. */
import { expect, test } from 'vitest';
import { feastDay } from '../../../../src/core/lessons/spoken/feasts.ts';

test.each([
  ['christmas', '2026-12-02', '2026-12-25'],
  ['Christmas Eve', '2026-12-25', '2027-12-24'],
  ["new year's eve", '2026-12-02', '2026-12-31'],
  ['new year', '2026-12-02', '2027-01-01'],
  // The moon is new four minutes before, and seven after midnight in China.
  ['過年', '2026-12-02', '2027-02-06'],
  ['春节', '2029-06-01', '2030-02-03'],
  ['除夕', '2026-12-02', '2027-02-05'],
  ['chinese new year', '2027-02-07', '2028-01-26'],
  ['元宵', '2026-12-02', '2027-02-20'],
  // As published: 15 September 2027 and 9 June 2027.
  ['中秋', '2026-12-02', '2027-09-15'],
  ['端午', '2026-12-02', '2027-06-09'],
  // As published: 31 March 2024, 20 April 2025, 28 March 2027, 25 April 2038, the latest there can be.
  ['easter', '2024-01-01', '2024-03-31'],
  ['easter', '2025-01-01', '2025-04-20'],
  ['復活', '2026-12-02', '2027-03-28'],
  ['easter', '2038-01-01', '2038-04-25'],
])('%s after %s', (words, from, expected) => {
  expect(feastDay(words, from)).toBe(expected);
});

test('none that is not known', () => {
  expect(feastDay('founding day', '2026-12-02')).toBeUndefined();
});
