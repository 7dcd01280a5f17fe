/** The hours in which nobody is disturbed, by the clock of the lesson's place. Decides nothing about who is told what. */
import type { Instant } from '../units.ts';
import { addDays, dateOf, instantOf, timeOf, wallAt } from './calendar.ts';

/** Quiet from this time of the evening … */
export const quietFrom = '21:00';
/** … until this time of the morning, which is no longer quiet. */
export const quietUntil = '08:00';
/** Where a reminder goes that would fall into the night: early enough that a slow send is out before quiet begins. */
const lastCall = '20:45';

export function isQuiet(at: Instant, zone: string): boolean {
  const time = timeOf(wallAt(at, zone));
  return time >= quietFrom || time < quietUntil;
}

/** The same instant by day; by night the last call of the evening before it. Never later. */
export function beforeQuiet(at: Instant, zone: string): Instant {
  if (!isQuiet(at, zone)) return at;
  const wall = wallAt(at, zone);
  const evening = timeOf(wall) >= quietFrom ? dateOf(wall) : addDays(dateOf(wall), -1);
  return instantOf(`${evening}T${lastCall}`, zone);
}

/** The same instant by day; by night the morning after it. Never earlier. */
export function afterQuiet(at: Instant, zone: string): Instant {
  if (!isQuiet(at, zone)) return at;
  const wall = wallAt(at, zone);
  const morning = timeOf(wall) >= quietFrom ? addDays(dateOf(wall), 1) : dateOf(wall);
  return instantOf(`${morning}T${quietUntil}`, zone);
}

/**
 * When someone is told of what came about by itself before this start: at once by day, in the morning at night; at once
 * at night as well when the start comes before the morning.
 */
export function tellableAt(startsAt: Instant, now: Instant, zone: string): Instant {
  const morning = afterQuiet(now, zone);
  return morning < startsAt ? morning : now;
}

/** When quiet begins on the day of this instant. */
export function nightfallOf(at: Instant, zone: string): Instant {
  return instantOf(`${dateOf(wallAt(at, zone))}T${quietFrom}`, zone);
}

/** So many minutes of day from here: the count stands still through quiet hours. */
export function afterWakingMinutes(from: Instant, minutes: number, zone: string): Instant {
  const start = afterQuiet(from, zone);
  const nightfall = nightfallOf(start, zone);
  const today = (nightfall - start) / 60_000;
  return minutes <= today ? start + minutes * 60_000 : afterWakingMinutes(nightfall, minutes - today, zone);
}
