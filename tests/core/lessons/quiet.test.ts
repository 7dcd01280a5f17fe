import { describe, expect, it } from 'vitest';
import { afterQuiet, afterWakingMinutes, beforeQuiet, tellableAt } from '../../../src/core/lessons/quiet.ts';
import { denver, denverAt } from './lesson-drafts.ts';

describe('quiet hours', () => {
  it.each([
    ['2026-12-05T19:00', '2026-12-05T19:00', '2026-12-05T19:00'],
    ['2026-12-05T20:59', '2026-12-05T20:59', '2026-12-05T20:59'],
    ['2026-12-05T21:00', '2026-12-05T20:45', '2026-12-06T08:00'],
    ['2026-12-05T23:59', '2026-12-05T20:45', '2026-12-06T08:00'],
    ['2026-12-06T00:00', '2026-12-05T20:45', '2026-12-06T08:00'],
    ['2026-12-06T07:59', '2026-12-05T20:45', '2026-12-06T08:00'],
    ['2026-12-06T08:00', '2026-12-06T08:00', '2026-12-06T08:00'],
    ['2027-03-14T03:30', '2027-03-13T20:45', '2027-03-14T08:00'],
  ])('%s goes back to %s, on to %s', (wall, before, after) => {
    expect(beforeQuiet(denverAt(wall), denver)).toBe(denverAt(before));
    expect(afterQuiet(denverAt(wall), denver)).toBe(denverAt(after));
  });

  it.each([
    ['2026-12-05T20:59', '2026-12-06T19:00', '2026-12-05T20:59'],
    ['2026-12-05T21:00', '2026-12-06T19:00', '2026-12-06T08:00'],
    ['2026-12-06T03:00', '2026-12-06T08:01', '2026-12-06T08:00'],
    ['2026-12-06T03:00', '2026-12-06T08:00', '2026-12-06T03:00'],
    ['2026-12-06T03:00', '2026-12-06T07:00', '2026-12-06T03:00'],
  ])('what comes about at %s before a start at %s is told at %s', (now, start, told) => {
    expect(tellableAt(denverAt(start), denverAt(now), denver)).toBe(denverAt(told));
  });

  it.each([
    ['2026-12-05T10:00', 120, '2026-12-05T12:00'],
    ['2026-12-05T19:00', 120, '2026-12-05T21:00'],
    ['2026-12-05T20:00', 120, '2026-12-06T09:00'],
    ['2026-12-05T23:00', 120, '2026-12-06T10:00'],
    ['2026-12-06T03:00', 120, '2026-12-06T10:00'],
    ['2026-12-05T20:00', 60 + 13 * 60 + 30, '2026-12-07T08:30'],
    ['2027-03-13T20:30', 60, '2027-03-14T08:30'],
  ])('from %s %d waking minutes last until %s', (from, minutes, until) => {
    expect(afterWakingMinutes(denverAt(from), minutes, denver)).toBe(denverAt(until));
  });
});
