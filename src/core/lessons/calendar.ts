/** Wall time and instants: what the clock on the shop's wall says, and when that is. Asks no clock, words nothing. */
import { Temporal } from 'temporal-polyfill';
import type { Instant } from '../units.ts';

/** What the clock on the wall says, to the minute: "2026-12-05T19:00". Sorts as text. */
export type WallTime = string;
/** "2026-12-05". */
export type WallDate = string;

/** How often the clocks of a zone show a wall time: they skip an hour in spring and repeat one in autumn. */
export type Shown = 'once' | 'never' | 'twice';

const wallPattern = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}$/;

export function isWallTime(text: string): text is WallTime {
  return wallPattern.test(text) && reads(() => Temporal.PlainDateTime.from(text, { overflow: 'reject' }));
}

export function isWallDate(text: string): text is WallDate {
  return isWallTime(`${text}T00:00`);
}

/** The zone's own spelling, or undefined when no zone is called so. A bare offset is no zone: it knows no summer. */
export function zoneNamed(text: string): string | undefined {
  if (!/^[A-Za-z]/.test(text)) return undefined;
  try {
    return Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(text).timeZoneId;
  } catch {
    return undefined;
  }
}

/**
 * A skipped hour counts on from before the gap (02:30 is 03:30), a repeated one is its first pass: RFC 5545 §3.3.5,
 * Temporal's "compatible". So every local day has each wall time exactly once.
 */
export function instantOf(wall: WallTime, zone: string): Instant {
  return Temporal.PlainDateTime.from(wall).toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds;
}

/** While a message is read, its own moment is asked for a dozen times. */
let lastAsked = { at: Number.NaN, zone: '', wall: '' };

/** Rounded down to the minute. */
export function wallAt(at: Instant, zone: string): WallTime {
  if (lastAsked.at === at && lastAsked.zone === zone) return lastAsked.wall;
  const local = Temporal.Instant.fromEpochMilliseconds(at).toZonedDateTimeISO(zone).toPlainDateTime();
  lastAsked = { at, zone, wall: local.toString({ smallestUnit: 'minute' }) };
  return lastAsked.wall;
}

export function shownIn(wall: WallTime, zone: string): Shown {
  const local = Temporal.PlainDateTime.from(wall);
  const earlier = local.toZonedDateTime(zone, { disambiguation: 'earlier' });
  const later = local.toZonedDateTime(zone, { disambiguation: 'later' });
  if (earlier.epochMilliseconds === later.epochMilliseconds) return 'once';
  return earlier.toPlainDateTime().equals(local) ? 'twice' : 'never';
}

export function dateOf(wall: WallTime): WallDate {
  return wall.slice(0, 10);
}

/** "19:00". */
export function timeOf(wall: WallTime): string {
  return wall.slice(11);
}

/** On the wall: a change of the clocks in between is not counted. */
export function plusMinutes(wall: WallTime, minutes: number): WallTime {
  return new Date(Date.parse(`${wall}:00Z`) + minutes * 60_000).toISOString().slice(0, 16);
}

export function addDays(date: WallDate, days: number): WallDate {
  return Temporal.PlainDate.from(date).add({ days }).toString();
}

/** 1 Monday … 7 Sunday, as ISO 8601. */
export function weekdayOf(date: WallDate): number {
  return Temporal.PlainDate.from(date).dayOfWeek;
}

/** As a sentence can carry it in any language: "2026-12-05 19:00". */
export function saidWall(wall: WallTime): string {
  return wall.replace('T', ' ');
}

function reads(attempt: () => unknown): boolean {
  try {
    attempt();
    return true;
  } catch {
    return false;
  }
}
