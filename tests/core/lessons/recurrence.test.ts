import { describe, expect, it } from 'vitest';
import { occurrences, type Recurrence } from '../../../src/core/lessons/recurrence.ts';
import { lessonsOfSeries } from '../../../src/core/lessons/series.ts';
import { denverAt, draft } from './lesson-drafts.ts';

const days = (first: string, rule: Recurrence, horizon: string) =>
  occurrences(`${first}T19:00`, rule, horizon).map((wall) => wall.replace('T19:00', ''));

describe('what repeats', () => {
  it.each<[string, string, Recurrence, string, string[]]>([
    [
      'weekly',
      '2026-12-05',
      { every: 'week', step: 1, times: 3 },
      '2027-12-31',
      ['2026-12-05', '2026-12-12', '2026-12-19'],
    ],
    [
      'every other week',
      '2026-12-26',
      { every: 'week', step: 2, times: 2 },
      '2027-12-31',
      ['2026-12-26', '2027-01-09'],
    ],
    ['daily', '2026-12-30', { every: 'day', step: 1 }, '2027-01-01', ['2026-12-30', '2026-12-31', '2027-01-01']],
    [
      'up to the horizon',
      '2026-12-05',
      { every: 'week', step: 1 },
      '2026-12-19',
      ['2026-12-05', '2026-12-12', '2026-12-19'],
    ],
    [
      'until a day',
      '2026-12-05',
      { every: 'week', step: 1, until: '2026-12-18' },
      '2027-12-31',
      ['2026-12-05', '2026-12-12'],
    ],
    [
      'but for a holiday, which still counts',
      '2026-12-19',
      { every: 'week', step: 1, times: 3, except: ['2026-12-26'] },
      '2027-12-31',
      ['2026-12-19', '2027-01-02'],
    ],
    [
      'the second Saturday',
      '2026-12-12',
      { every: 'month', step: 1, times: 3 },
      '2027-12-31',
      ['2026-12-12', '2027-01-09', '2027-02-13'],
    ],
    [
      'the fifth Saturday, or the last',
      '2027-01-30',
      { every: 'month', step: 1, times: 4 },
      '2027-12-31',
      ['2027-01-30', '2027-02-27', '2027-03-27', '2027-04-24'],
    ],
    [
      'the 31st, or the last day',
      '2027-01-31',
      { every: 'month', step: 1, times: 4, keep: 'date' },
      '2027-12-31',
      ['2027-01-31', '2027-02-28', '2027-03-31', '2027-04-30'],
    ],
    [
      'every third month',
      '2026-12-12',
      { every: 'month', step: 3, times: 2, keep: 'date' },
      '2027-12-31',
      ['2026-12-12', '2027-03-12'],
    ],
    ['not before it begins', '2026-12-05', { every: 'week', step: 1 }, '2026-12-04', []],
  ])('%s', (_, first, rule, horizon, expected) => {
    expect(days(first, rule, horizon)).toEqual(expected);
  });

  it('refuses a step that never ends', () => {
    expect(() => days('2026-12-05', { every: 'week', step: 0 }, '2026-12-19')).toThrow(RangeError);
  });
});

const from = (wall: string) => ({ now: denverAt(wall), tzVersion: '2025c' });

describe('a series', () => {
  const weekly = { every: 'week', step: 1 } as const;

  it('keeps its wall time across daylight saving', () => {
    const series = { draft: { ...draft, starts: '2027-03-06T19:00' }, repeats: { ...weekly, times: 3 } };
    const { lessons, notes } = lessonsOfSeries(series, '2027-12-31', from('2027-03-01T10:00'));
    expect(lessons.map((one) => [one.id, one.series, new Date(one.startsAt).toISOString().slice(0, 16)])).toEqual([
      ['white-evening-2027-03-06', 'white-evening', '2027-03-07T02:00'],
      ['white-evening-2027-03-13', 'white-evening', '2027-03-14T02:00'],
      ['white-evening-2027-03-20', 'white-evening', '2027-03-21T01:00'],
    ]);
    expect(notes).toEqual([]);
  });

  it.each([
    ['2027-03-07T02:30', '2027-03-14', '2027-03-14T09:30', 'lesson-series-hour-never', '2027-03-14 03:30'],
    ['2027-10-31T01:30', '2027-11-07', '2027-11-07T07:30', 'lesson-series-hour-twice', '2027-11-07 01:30'],
  ])('never skips a day and never has one twice: %s', (starts, day, utc, code, begins) => {
    const series = { draft: { ...draft, starts }, repeats: { ...weekly, times: 3 } };
    const { lessons, notes } = lessonsOfSeries(series, '2027-12-31', from('2027-03-01T10:00'));
    expect(lessons).toHaveLength(3);
    const that = lessons.filter((one) => one.id.endsWith(day));
    expect(that.map((one) => new Date(one.startsAt).toISOString().slice(0, 16))).toEqual([utc]);
    expect(notes.map((one) => [one.code, one.values['begins']])).toEqual([[code, begins]]);
  });

  it('has only lessons to come, and the same ids whenever it is asked', () => {
    const series = { draft, repeats: weekly };
    const early = lessonsOfSeries(series, '2026-12-31', from('2026-12-01T10:00')).lessons;
    const late = lessonsOfSeries(series, '2026-12-31', from('2026-12-12T19:00')).lessons;
    expect(early.map((one) => one.starts.slice(8, 10))).toEqual(['05', '12', '19', '26']);
    expect(late).toEqual(early.slice(2));
  });
});
