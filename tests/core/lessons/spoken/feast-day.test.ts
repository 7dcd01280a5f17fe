/** A day told by a feast, seen from a Wednesday in December; Christmas is a Friday then. */
import { expect, it } from 'vitest';
import { readFeastDay } from '../../../../src/core/lessons/spoken/feast-day.ts';

it.each([
  ['the saturday before christmas', '2026-12-19'],
  ['the last Thursday before new year', '2026-12-31'],
  ['the friday after christmas', '2027-01-01'],
  ['on christmas eve', '2026-12-24'],
  ['on boxing day', '2026-12-26'],
  ['cancel the christmas eve one', '2026-12-24'],
  ['聖誕前的週六', '2026-12-19'],
  ['平安夜那堂', '2026-12-24'],
])('%s is %s', (text, date) => {
  expect(readFeastDay(text, '2026-12-02')?.date).toBe(date);
});

it.each(['any lessons at christmas', 'a christmas tea', '聖誕節後星期六的課都不開了', 'saturday before noon'])(
  '%s names no such day',
  (text) => {
    expect(readFeastDay(text, '2026-12-02')).toBeUndefined();
  },
);
