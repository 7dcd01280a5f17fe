/** When a cold infusion is called, by the clock of a shop in Denver. */
import { describe, expect, it } from 'vitest';
import { instantOf, wallAt } from '../../../../src/core/lessons/calendar.ts';
import { kindHour } from '../../../../src/core/functions/brew/kind-hour.ts';

const zone = 'America/Denver';

describe('a cold infusion is called', () => {
  it.each([
    ['at its end by day', '2026-01-15T09:00', 7, '2026-01-15T16:00'],
    ['at its end, just before the night', '2026-01-15T13:59', 7, '2026-01-15T20:59'],
    ['a little early rather than a night late', '2026-01-15T14:00', 7, '2026-01-15T20:45'],
    ['in the evening as long as three quarters of the time are over', '2026-01-15T15:30', 7, '2026-01-15T20:45'],
    ['else in the morning', '2026-01-15T15:31', 7, '2026-01-16T08:00'],
    ['in the morning after midnight, too', '2026-01-15T23:30', 7, '2026-01-16T08:00'],
    ['at its end in the morning', '2026-01-16T01:00', 7, '2026-01-16T08:00'],
    ['in the morning of the day the clocks are changed', '2026-03-07T18:00', 7, '2026-03-08T08:00'],
  ])('%s', (_, filled, hours, called) => {
    const filledAt = instantOf(filled, zone);
    const at = kindHour({ filledAt, endsAt: filledAt + hours * 3_600_000 }, zone);
    expect(wallAt(at, zone)).toMatch(called);
  });
});
