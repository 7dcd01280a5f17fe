import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { readLessons } from '../../src/content/lesson-data.ts';
import { readTeas } from '../../src/content/tea-data.ts';
import { instantOf } from '../../src/core/lessons/calendar.ts';
import { lessonsOfSeries } from '../../src/core/lessons/series.ts';

const teas = new Set(readTeas('data').map((tea) => tea.id));

describe('the lessons of the demo shop', () => {
  const { lessons, series } = readLessons('data/shop', teas);

  it('are single lessons and series of every level', () => {
    expect([lessons.length, series.length]).toEqual([1, 4]);
    const levels = new Set([...lessons, ...series.map((one) => one.draft)].map((one) => one.level));
    expect(levels).toEqual(new Set(['beginner', 'intermediate', 'advanced']));
  });

  it('go on for ever, at the same hour in winter and summer', () => {
    const today = { now: instantOf('2031-06-01T00:00', 'America/Denver'), tzVersion: 'any' };
    const coming = series.flatMap((one) => lessonsOfSeries(one, '2031-08-31', today).lessons);
    expect(coming.length).toBeGreaterThan(20);
    expect(coming.filter((one) => one.series === 'first-cup').every((one) => one.starts.endsWith('T10:30'))).toBe(true);
    expect(coming.every((one) => /^[A-Za-z0-9._-]{1,40}$/.test(one.id))).toBe(true);
  });
});

describe('a file with mistakes', () => {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-lessons-'));
  afterAll(() => rmSync(folder, { recursive: true }));
  const good = readFileSync('data/shop/lessons.yaml', 'utf8');

  it.each([
    ['teas: [longjing,', 'teas: [longjin,', /lessons\.yaml:\d+:\d+ teas: "longjin" is not known/],
    ['buildsOn: [first-cup]', 'buildsOn: [last-cup]', /lessons\.yaml:\d+:\d+ buildsOn: "last-cup" is not known/],
    ['id: gaiwan-evening', 'id: first-cup', /lessons\.yaml:\d+:\d+ id: "first-cup" is there twice/],
    ['starts: 2026-12-05T10:30', 'starts: 2026-12-05', /lessons\.yaml:\d+:11 starts: time unreadable/],
    ['starts: 2026-12-05T10:30', 'starts: 2027-03-14T02:30', /lessons\.yaml:\d+:11 starts: hour never/],
    ['zone: America/Denver', 'zone: Mars/Base', /lessons\.yaml:\d+:9 zone: zone unknown \(Mars\/Base\)/],
    ['seats: 8', 'seats: 0', /lessons\.yaml:\d+:10 first-cup\.seats: expected at least 1, not 0/],
    [
      'every: week }',
      'every: weak }',
      /lessons\.yaml:\d+:\d+ first-cup\.repeats\.every: expected one of day, week, month, not "weak"/,
    ],
    [
      'every: week }',
      'every: week, step: 0 }',
      /lessons\.yaml:\d+:\d+ first-cup\.repeats\.step: expected at least 1, not 0/,
    ],
    ['teacher: Odalys', 'teecher: Odalys', /lessons\.yaml:\d+:\d+ first-cup: expected one of .*, not "teecher"/],
    ['seats: 8', 'saets: 8', /lessons\.yaml:\d+:\d+ first-cup\.seats: expected a number, but it is missing/],
    [
      'title: { en: The first cup,',
      'title: { en: "",',
      /lessons\.yaml:\d+:\d+ first-cup\.title\.en: expected text, not ""/,
    ],
  ])('%s → %s', (from, to, expected) => {
    expect(good).toContain(from);
    writeFileSync(join(folder, 'lessons.yaml'), good.replace(from, to));
    expect(() => readLessons(folder, teas)).toThrow(expected);
  });
});
