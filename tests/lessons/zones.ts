/** Every zone, every transition 2024–2034, the day before, the day and the day after: two implementations compared. */
import { Temporal } from 'temporal-polyfill';
import { instantOf, shownIn } from '../../src/core/lessons/calendar.ts';
import { clocksOf, offsetAt, secondOpinion, type Clocks } from './second-opinion.ts';

export interface ZonesReport {
  readonly tz: string | undefined;
  readonly zones: number;
  readonly transitions: number;
  readonly cases: number;
  readonly shown: Readonly<Tally['shown']>;
  /** The first hundred, in words. */
  readonly differences: readonly string[];
}

const dayMs = 86_400_000;
const span = { from: Date.UTC(2024, 0, 1), until: Date.UTC(2035, 0, 1) };

interface Change {
  readonly zone: string;
  readonly clocks: Clocks;
  readonly at: number;
}

/** Spread evenly over all quarter-hours of those days, or over all minutes when more are asked for. */
export function compareZones(wanted: number): ZonesReport {
  const zones = Intl.supportedValuesOf('timeZone');
  const tally: Tally = { shown: { never: 0, twice: 0, pastMidnight: 0 }, differences: [] };
  const all = zones.flatMap((zone) => changesIn(zone, wanted, tally));
  const stepMinutes = wanted <= all.length * 96 * 3 ? 15 : 1;
  const perDay = 1440 / stepMinutes;
  const share = Math.min(1, wanted / (all.length * perDay * 3));
  let cases = 0;
  all.forEach((change, n) => {
    const midnight = Math.floor((change.at + offsetAt(change.at - 1000, change.clocks)) / dayMs) * dayMs;
    for (let step = 0; step < perDay; step++) {
      const index = n * perDay + step;
      if (Math.floor((index + 1) * share) === Math.floor(index * share)) continue;
      cases += 3;
      compareDays(change, midnight + step * stepMinutes * 60_000, tally);
    }
  });
  return { tz: process.versions['tz'], zones: zones.length, transitions: all.length, cases, ...tally };
}

interface Tally {
  readonly shown: { never: number; twice: number; pastMidnight: number };
  readonly differences: string[];
}

function compareDays({ zone, clocks }: Change, wallMs: number, tally: Tally): void {
  let previous: number | undefined;
  for (const day of [-1, 0, 1]) {
    const wall = new Date(wallMs + day * dayMs).toISOString().slice(0, 16);
    const ours = instantOf(wall, zone);
    const theirs = secondOpinion(wallMs + day * dayMs, clocks);
    if (ours !== theirs.at) differ(tally, `${zone} ${wall}: ${ours} or ${theirs.at}`);
    if (theirs.shown !== 'once') tally.shown[theirs.shown]++;
    if (day === 0 && shownIn(wall, zone) !== theirs.shown) differ(tally, `${zone} ${wall}: not ${theirs.shown}`);
    // Exactly once a local day: it falls on its own date, and a day's time after the one before.
    const date = new Date(ours + offsetAt(ours, clocks)).toISOString().slice(0, 10);
    // Greenland skips the last hour of a day: its 23:30 is half past midnight, and still there exactly once.
    const beyond = theirs.shown === 'never' && wall.slice(11) >= '23:00';
    if (beyond && date !== wall.slice(0, 10)) tally.shown.pastMidnight++;
    else if (date !== wall.slice(0, 10)) differ(tally, `${zone} ${wall}: falls on ${date}`);
    const apart = previous === undefined ? dayMs : ours - previous;
    if (Math.abs(apart - dayMs) > 3 * 3_600_000) differ(tally, `${zone} ${wall}: no day after the one before`);
    previous = ours;
  }
}

/** The two must agree on when clocks change, before they are asked about hours. */
function changesIn(zone: string, wanted: number, tally: Tally): Change[] {
  const ours: number[] = [];
  let at = Temporal.Instant.fromEpochMilliseconds(span.from).toZonedDateTimeISO(zone);
  for (;;) {
    const next = at.getTimeZoneTransition('next');
    if (next === null || next.epochMilliseconds >= span.until) break;
    ours.push(next.epochMilliseconds);
    at = next;
  }
  // More than a million cases look for changes every six hours; fewer look once a week.
  const clocks = clocksOf(zone, span, wanted > 1_000_000 ? dayMs / 4 : 7 * dayMs);
  const theirs = clocks.changes.join();
  if (ours.join() !== theirs) differ(tally, `${zone}: clocks change at ${ours.join()} or ${theirs}`);
  return ours.map((one) => ({ zone, clocks, at: one }));
}

function differ({ differences }: Tally, what: string): void {
  if (differences.length < 100) differences.push(what);
}
