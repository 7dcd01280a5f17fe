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
export function offsetMs(at: number, zone: string): number {
  const read = /(\d+)\/(\d+)\/(\d+), (\d+):(\d+):(\d+)/.exec(formatOf(zone).format(at));
  if (!read) throw new Error(`${zone} is not readable`);
  const [month = 0, day = 0, year = 0, hour = 0, minute = 0, second = 0] = read.slice(1).map(Number);
  return Date.UTC(year, month - 1, day, hour, minute, second) - at;
}

export interface Opinion {
  readonly at: number;
  readonly shown: 'once' | 'never' | 'twice';
}

/** `wallMs` is the wall time as if it were UTC. The earlier of two passes; in a gap, the offset before it. */
export function secondOpinion(wallMs: number, zone: string): Opinion {
  const before = offsetMs(wallMs - dayMs, zone);
  const after = offsetMs(wallMs + dayMs, zone);
  const passes = [...new Set([before, after])]
    .map((offset) => wallMs - offset)
    .filter((at) => at + offsetMs(at, zone) === wallMs);
  if (passes.length === 0) return { at: wallMs - before, shown: 'never' };
  return { at: Math.min(...passes), shown: passes.length === 2 ? 'twice' : 'once' };
}

/** Every change of offset between two instants, found by looking every `stepMs` and halving. */
export function transitionsOf(zone: string, from: number, until: number, stepMs: number): number[] {
  const found: number[] = [];
  for (let at = from; at < until; at += stepMs) {
    const [low, high] = [at, Math.min(at + stepMs, until)];
    if (offsetMs(low, zone) !== offsetMs(high, zone)) found.push(firstWithOffsetOf(high, low, zone));
  }
  return found;
}

function firstWithOffsetOf(high: number, low: number, zone: string): number {
  let [same, other] = [high, low];
  while (same - other > 1000) {
    const middle = Math.floor((same + other) / 2000) * 1000;
    if (offsetMs(middle, zone) === offsetMs(high, zone)) same = middle;
    else other = middle;
  }
  return same;
}
