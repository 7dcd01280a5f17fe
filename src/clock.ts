/** The only asker of time. Everything else is told. */
import type { Instant } from './core/units.ts';

export interface Clock {
  /** Wall time. */
  now(): Instant;
  /** Calls back once, not before `at` by the wall clock; returns what cancels it. */
  wakeAt(at: Instant, call: () => void): () => void;
}

/**
 * Longest wait handed to setTimeout, which fires at once beyond 2^31-1 ms and counts by a clock of its own: so late a jump
 * of the wall clock is noticed.
 */
const longestWaitMs = 1_000;

export const systemClock: Clock = {
  now: () => Date.now(),
  wakeAt(at, call) {
    let handle: NodeJS.Timeout;
    const arm = (): void => {
      const wait = at - Date.now();
      if (wait <= 0) handle = setTimeout(call, 0);
      else handle = setTimeout(wait > longestWaitMs ? arm : check, Math.min(wait, longestWaitMs));
    };
    // A timer may fire up to a millisecond early: look again before calling.
    const check = (): void => (Date.now() >= at ? call() : arm());
    arm();
    return () => clearTimeout(handle);
  },
};
