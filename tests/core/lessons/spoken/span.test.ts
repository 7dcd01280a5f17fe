/** Days named together, from a Friday and from a Sunday. */
import { expect, it } from 'vitest';
import { readSpan } from '../../../../src/core/lessons/spoken/span.ts';

it.each([
  ['anything this week', '2026-12-04', '2026-12-04', '2026-12-06'],
  ['lessons next week', '2026-12-04', '2026-12-07', '2026-12-13'],
  ['something at the weekend', '2026-12-04', '2026-12-05', '2026-12-06'],
  ['something at the weekend', '2026-12-06', '2026-12-06', '2026-12-06'],
  ['next weekend', '2026-12-04', '2026-12-12', '2026-12-13'],
  ['this month', '2026-12-04', '2026-12-04', '2026-12-31'],
  ['next month', '2026-12-04', '2027-01-01', '2027-01-31'],
  ['next month', '2027-01-31', '2027-02-01', '2027-02-28'],
  ["what's on in december", '2026-12-04', '2026-12-01', '2026-12-31'],
  ['the january ones', '2026-12-04', '2027-01-01', '2027-01-31'],
  ["february's classes", '2026-12-04', '2027-02-01', '2027-02-28'],
  ['一月有什麼課', '2026-12-04', '2027-01-01', '2027-01-31'],
  ['2月的课', '2026-12-04', '2027-02-01', '2027-02-28'],
  ['這週有課嗎', '2026-12-04', '2026-12-04', '2026-12-06'],
  ['下個禮拜有什麼課', '2026-12-06', '2026-12-07', '2026-12-13'],
  ['下个月的课', '2026-12-04', '2027-01-01', '2027-01-31'],
  ['周末有课吗', '2026-12-04', '2026-12-05', '2026-12-06'],
])('%s, on %s', (text, today, from, to) => {
  expect(readSpan(text, today)).toEqual({ from, to });
});

it.each(['12月5號', 'on December 5', '三個月', '下星期三', '下禮拜天', 'on Saturday', 'any lessons', '星期六'])(
  '%s is no such span',
  (text) => {
    expect(readSpan(text, '2026-12-04')).toBeUndefined();
  },
);
