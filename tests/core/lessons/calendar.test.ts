import { describe, expect, it } from 'vitest';
import {
  addDays,
  instantOf,
  isWallDate,
  isWallTime,
  shownIn,
  wallAt,
  weekdayOf,
  zoneNamed,
} from '../../../src/core/lessons/calendar.ts';

describe('wall time', () => {
  it.each([
    ['2026-12-05T19:00', true],
    ['2028-02-29T00:00', true],
    ['2026-02-29T00:00', false],
    ['2026-12-05T24:00', false],
    ['2026-12-05 19:00', false],
    ['2026-12-05T19:00:00', false],
    ['2026-12-05', false],
    ['', false],
  ])('%j is one: %s', (text, expected) => {
    expect(isWallTime(text)).toBe(expected);
  });

  it.each([
    ['2026-12-05', true],
    ['2026-13-05', false],
    ['2026-12-05T19:00', false],
  ])('%j is a date: %s', (text, expected) => {
    expect(isWallDate(text)).toBe(expected);
  });

  it.each([
    ['America/Denver', 'America/Denver'],
    ['asia/taipei', 'Asia/Taipei'],
    ['UTC', 'UTC'],
    ['Mars/Base', undefined],
    ['+08:00', undefined],
    ['', undefined],
  ])('%j names the zone %s', (text, expected) => {
    expect(zoneNamed(text)).toBe(expected);
  });

  it.each([
    // The rules of these zones in these years are those of the tz database, release 2025c.
    ['America/Denver', '2026-12-05T19:00', '2026-12-06T02:00Z', 'once'],
    ['America/Denver', '2026-03-08T01:59', '2026-03-08T08:59Z', 'once'],
    ['America/Denver', '2026-03-08T02:00', '2026-03-08T09:00Z', 'never'],
    ['America/Denver', '2026-03-08T02:30', '2026-03-08T09:30Z', 'never'],
    ['America/Denver', '2026-03-08T03:00', '2026-03-08T09:00Z', 'once'],
    ['America/Denver', '2026-11-01T01:30', '2026-11-01T07:30Z', 'twice'],
    ['America/Denver', '2026-11-01T02:00', '2026-11-01T09:00Z', 'once'],
    ['Australia/Lord_Howe', '2026-10-04T02:15', '2026-10-03T15:45Z', 'never'],
    ['Australia/Lord_Howe', '2026-04-05T01:45', '2026-04-04T14:45Z', 'twice'],
    ['Africa/Cairo', '2026-04-24T00:30', '2026-04-23T22:30Z', 'never'],
    ['Asia/Kathmandu', '2026-06-01T12:00', '2026-06-01T06:15Z', 'once'],
    ['Asia/Taipei', '2026-06-01T12:00', '2026-06-01T04:00Z', 'once'],
  ] as const)('in %s %s is %s, shown %s', (zone, wall, utc, shown) => {
    expect(new Date(instantOf(wall, zone)).toISOString()).toBe(utc.replace('Z', ':00.000Z'));
    expect(shownIn(wall, zone)).toBe(shown);
    if (shown !== 'never') expect(wallAt(instantOf(wall, zone), zone)).toBe(wall);
  });

  it('counts days and weekdays without a zone', () => {
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2026-01-01', -1)).toBe('2025-12-31');
    expect(weekdayOf('2026-12-05')).toBe(6);
    expect(weekdayOf('2026-12-07')).toBe(1);
  });
});
