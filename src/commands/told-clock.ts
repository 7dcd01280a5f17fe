/** A clock for transcripts: it stands still while people talk, and goes on when the transcript says so. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';

export interface ToldClock extends Clock {
  /** Goes on, ringing whatever is due on the way; `settled` lets what was rung run to rest. */
  pass(ms: number, settled: () => Promise<void>): Promise<void>;
  /** It is then at once: what fell due on the way is rung only now. Never back. */
  leap(to: Instant, settled: () => Promise<void>): Promise<void>;
}

export function makeToldClock(start: Instant): ToldClock {
  let now = start;
  const set = new Set<{ readonly at: Instant; readonly call: () => void }>();
  const nextUntil = (end: Instant): { at: Instant; call: () => void } | undefined =>
    [...set].filter(({ at }) => at <= end).toSorted((a, b) => a.at - b.at)[0];
  const ringDue = async (end: Instant, settled: () => Promise<void>): Promise<void> => {
    for (let next = nextUntil(end); next; next = nextUntil(end)) {
      set.delete(next);
      now = Math.max(now, next.at);
      next.call();
      await settled();
    }
  };
  return {
    now: () => now,
    wakeAt(at, call) {
      const entry = { at, call };
      set.add(entry);
      return () => set.delete(entry);
    },
    async pass(ms, settled) {
      const end = now + ms;
      await ringDue(end, settled);
      now = end;
    },
    leap(to, settled) {
      now = Math.max(now, to);
      return ringDue(now, settled);
    },
  };
}
