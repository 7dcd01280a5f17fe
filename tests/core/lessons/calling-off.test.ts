/** A series without some days: it ends where nothing of it is left, and else leaves them out. */
import { describe, expect, test } from 'vitest';
import { withoutDays, type OffDays } from '../../../src/core/lessons/calling-off.ts';
import type { Recurrence } from '../../../src/core/lessons/recurrence.ts';
import type { Series } from '../../../src/core/lessons/series.ts';
import { lessonsOfSeries } from '../../../src/core/lessons/series.ts';
import { denverAt, draft } from './lesson-drafts.ts';

const seriesOf = (repeats: Recurrence): Series => ({ draft: { ...draft, starts: '2026-12-05T19:00' }, repeats });
const off = (from: string, more: Partial<OffDays> = {}): OffDays => ({
  from,
  to: null,
  weekday: null,
  only: null,
  ...more,
});
const today = { now: denverAt('2026-12-02T10:00'), tzVersion: '1' };
const weekly: Recurrence = { every: 'week', step: 1 };

function daysOf(series: Series): readonly string[] {
  return lessonsOfSeries(series, '2027-01-31', today).lessons.map(({ starts }) => starts.slice(5, 10));
}

describe('a series on Saturdays from December 5', () => {
  test.each<[string, Recurrence, OffDays, Recurrence, readonly string[]]>([
    [
      'ends after Christmas',
      weekly,
      off('2026-12-26'),
      { ...weekly, until: '2026-12-25' },
      ['12-05', '12-12', '12-19'],
    ],
    ['ends at once', weekly, off('2026-12-02'), { ...weekly, until: '2026-12-01' }, []],
    [
      'ends with all Saturday lessons',
      weekly,
      off('2026-12-13', { weekday: 6 }),
      { ...weekly, until: '2026-12-12' },
      ['12-05', '12-12'],
    ],
    [
      'leaves out a week',
      weekly,
      off('2026-12-21', { to: '2027-01-10' }),
      { ...weekly, except: ['2026-12-26', '2027-01-02', '2027-01-09'] },
      ['12-05', '12-12', '12-19', '01-16', '01-23', '01-30'],
    ],
    [
      'leaves out one day more',
      { ...weekly, except: ['2026-12-12'] },
      off('2026-12-19', { to: '2026-12-26', only: ['2026-12-19', '2026-12-26'] }),
      { ...weekly, except: ['2026-12-12', '2026-12-19', '2026-12-26'] },
      ['12-05', '01-02', '01-09', '01-16', '01-23', '01-30'],
    ],
  ])('%s', (_, repeats, days, expected, left) => {
    const changed = withoutDays(seriesOf(repeats), days);
    expect(changed.repeats).toEqual(expected);
    expect(daysOf(changed)).toEqual(left);
    // Once more changes nothing.
    expect(withoutDays(changed, days)).toBe(changed);
  });

  test('stays as it is where it is on none of them', () => {
    const series = seriesOf({ ...weekly, times: 3 });
    expect(withoutDays(series, off('2027-03-01'))).toBe(series);
    expect(withoutDays(series, off('2026-12-02', { weekday: 4 }))).toBe(series);
    expect(withoutDays(series, off('2026-12-07', { to: '2026-12-11' }))).toBe(series);
  });

  test('of every day, only the Saturdays go', () => {
    const changed = withoutDays(seriesOf({ every: 'day', step: 1, times: 9 }), off('2026-12-02', { weekday: 6 }));
    expect(changed.repeats.except).toEqual(['2026-12-05', '2026-12-12']);
    expect(daysOf(changed)).toHaveLength(7);
  });
});
