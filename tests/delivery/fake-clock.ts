/** A clock that stands still until told to go on. */
import type { Clock } from '../../src/clock.ts';

export interface FakeClock extends Clock {
  /** Goes on, ringing whatever is due on the way, and lets what was rung run to rest. */
  pass(ms: number): Promise<void>;
  /** How many calls are set. */
  waiting(): number;
}

export function fakeClock(start: number): FakeClock {
  let now = start;
  const calls = new Set<{ at: number; call: () => void }>();
  const earliest = (): { at: number; call: () => void } | undefined => [...calls].toSorted((a, b) => a.at - b.at)[0];
  return {
    now: () => now,
    wakeAt(at, call) {
      const entry = { at, call };
      calls.add(entry);
      return () => calls.delete(entry);
    },
    async pass(ms) {
      const end = now + ms;
      await rest();
      for (let next = earliest(); next && next.at <= end; next = earliest()) {
        calls.delete(next);
        now = Math.max(now, next.at);
        next.call();
        await rest();
      }
      now = end;
    },
    waiting: () => calls.size,
  };
}

/** Lets promises and group commits run; each commit waits for one turn of the event loop. */
export async function rest(): Promise<void> {
  for (let i = 0; i < 40; i++) await new Promise(setImmediate);
}
