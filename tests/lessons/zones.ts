/** Every zone, every transition 2024–2034, the day before, the day and the day after: two implementations compared. */
import { Temporal } from 'temporal-polyfill';
import { instantOf, shownIn } from '../../src/core/lessons/calendar.ts';
import { offsetMs, secondOpinion, transitionsOf } from './second-opinion.ts';

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
const from = Date.UTC(2024, 0, 1);
const until = Date.UTC(2035, 0, 1);

/** Spread evenly over all quarter-hours of those days, or over all minutes when more are asked for. */
export function compareZones(wanted: number): ZonesReport {
  const zones = Intl.supportedValuesOf('timeZone');
  const differences: string[] = [];
  const differ = (what: string) => differences.length < 100 && differences.push(what);
  const all = zones.flatMap((zone) => transitionsIn(zone, wanted, differ).map((at) => ({ zone, at })));
  const stepMinutes = wanted <= all.length * 96 * 3 ? 15 : 1;
  const perDay = 1440 / stepMinutes;
  const share = Math.min(1, wanted / (all.length * perDay * 3));
  const shown = { never: 0, twice: 0, pastMidnight: 0 };
  let cases = 0;
  all.forEach(({ zone, at }, n) => {
    const midnight = Math.floor((at + offsetMs(at - 1000, zone)) / dayMs) * dayMs;
    for (let step = 0; step < perDay; step++) {
      const index = n * perDay + step;
      if (Math.floor((index + 1) * share) === Math.floor(index * share)) continue;
      cases += 3;
      compareDays(zone, midnight + step * stepMinutes * 60_000, { shown, differ });
    }
  });
  return { tz: process.versions['tz'], zones: zones.length, transitions: all.length, cases, shown, differences };
}

interface Tally {
  readonly shown: { never: number; twice: number; pastMidnight: number };
  readonly differ: (what: string) => void;
}

function compareDays(zone: string, wallMs: number, { shown, differ }: Tally): void {
  let previous: number | undefined;
  for (const day of [-1, 0, 1]) {
    const wall = new Date(wallMs + day * dayMs).toISOString().slice(0, 16);
    const ours = instantOf(wall, zone);
    const theirs = secondOpinion(wallMs + day * dayMs, zone);
    if (ours !== theirs.at) differ(`${zone} ${wall}: ${ours} or ${theirs.at}`);
    if (theirs.shown !== 'once') shown[theirs.shown]++;
    if (day === 0 && shownIn(wall, zone) !== theirs.shown) differ(`${zone} ${wall}: not ${theirs.shown}`);
    // Exactly once a local day: it falls on its own date, and a day's time after the one before.
    const date = new Date(ours + offsetMs(ours, zone)).toISOString().slice(0, 10);
    // Greenland skips the last hour of a day: its 23:30 is half past midnight, and still there exactly once.
    const beyond = theirs.shown === 'never' && wall.slice(11) >= '23:00';
    if (beyond && date !== wall.slice(0, 10)) shown.pastMidnight++;
    else if (date !== wall.slice(0, 10)) differ(`${zone} ${wall}: falls on ${date}`);
    if (previous !== undefined && Math.abs(ours - previous - dayMs) > 3 * 3_600_000)
      differ(`${zone} ${wall}: no day after`);
    previous = ours;
  }
}

/** The two must agree on when clocks change, before they are asked about hours. */
function transitionsIn(zone: string, wanted: number, differ: (what: string) => void): number[] {
  const ours: number[] = [];
  let at = Temporal.Instant.fromEpochMilliseconds(from).toZonedDateTimeISO(zone);
  for (;;) {
    const next = at.getTimeZoneTransition('next');
    if (next === null || next.epochMilliseconds >= until) break;
    ours.push(next.epochMilliseconds);
    at = next;
  }
  // Ten million cases look for transitions every six hours; fewer look once a week.
  const theirs = transitionsOf(zone, from, until, wanted > 1_000_000 ? dayMs / 4 : 7 * dayMs);
  if (ours.join() !== theirs.join()) differ(`${zone}: clocks change at ${ours.join()} or ${theirs.join()}`);
  return ours;
}
