/** Wall time to instant once more, made by hand over Intl alone: what core/lessons/calendar.ts is checked against. */

const dayMs = 86_400_000;
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(zone: string): Intl.DateTimeFormat {
  const known = formats.get(zone);
  if (known) return known;
  const made = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  formats.set(zone, made);
  return made;
}

/** The wall clock's reading, as if it were UTC, less the instant. */
function offsetMs(at: number, zone: string): number {
  const read = /(\d+)\/(\d+)\/(\d+), (\d+):(\d+):(\d+)/.exec(formatOf(zone).format(at));
  if (!read) throw new Error(`${zone} is not readable`);
  const [month = 0, day = 0, year = 0, hour = 0, minute = 0, second = 0] = read.slice(1).map(Number);
  return Date.UTC(year, month - 1, day, hour, minute, second) - at;
}

/** A zone's offsets between two instants: `offsets[n]` holds until `changes[n]`. */
export interface Clocks {
  readonly changes: readonly number[];
  readonly offsets: readonly number[];
}

/** Every change of offset, found by looking every `stepMs` and halving. */
export function clocksOf(
  zone: string,
  span: { readonly from: number; readonly until: number },
  stepMs: number,
): Clocks {
  const changes: number[] = [];
  for (let at = span.from; at < span.until; at += stepMs) {
    const [low, high] = [at, Math.min(at + stepMs, span.until)];
    if (offsetMs(low, zone) !== offsetMs(high, zone)) changes.push(changeBetween(low, high, zone));
  }
  return { changes, offsets: [span.from, ...changes].map((at) => offsetMs(at, zone)) };
}

function changeBetween(low: number, high: number, zone: string): number {
  const after = offsetMs(high, zone);
  let [other, same] = [low, high];
  while (same - other > 1000) {
    const middle = Math.floor((same + other) / 2000) * 1000;
    if (offsetMs(middle, zone) === after) same = middle;
    else other = middle;
  }
  return same;
}

export function offsetAt(at: number, { changes, offsets }: Clocks): number {
  // None to come is -1, and the last offset stands there.
  const next = changes.findIndex((change) => at < change);
  return offsets.at(next) ?? 0;
}

export interface Opinion {
  readonly at: number;
  readonly shown: 'once' | 'never' | 'twice';
}

/** `wallMs` is the wall time as if it were UTC. The earlier of two passes; in a gap, the offset before it. */
export function secondOpinion(wallMs: number, clocks: Clocks): Opinion {
  const before = offsetAt(wallMs - dayMs, clocks);
  const after = offsetAt(wallMs + dayMs, clocks);
  const passes = [...new Set([before, after])]
    .map((offset) => wallMs - offset)
    .filter((at) => at + offsetAt(at, clocks) === wallMs);
  if (passes.length === 0) return { at: wallMs - before, shown: 'never' };
  return { at: Math.min(...passes), shown: passes.length === 2 ? 'twice' : 'once' };
}
