/** Allowances that refill with time, one a key, in memory of a constant size. */
import type { Allowance } from './limits.ts';

interface Left {
  readonly amount: number;
  readonly at: number;
}

export interface Rate {
  /** Takes one; false when nothing is left. */
  take(key: string): boolean;
}

export function makeRate(allowance: Allowance, remembered: number, now: () => number): Rate {
  const left = new Map<string, Left>();
  return {
    take(key) {
      const at = now();
      const before = left.get(key) ?? { amount: allowance.burst, at };
      // A clock set back must not take anything away.
      const refill = (Math.max(0, at - before.at) / 1000) * allowance.perSecond;
      const amount = Math.min(allowance.burst, before.amount + refill);
      // Deleted and set again: a Map keeps insertion order, so the first key is the longest unseen.
      left.delete(key);
      left.set(key, { amount: amount >= 1 ? amount - 1 : amount, at });
      if (left.size > remembered) left.delete(left.keys().next().value ?? key);
      return amount >= 1;
    },
  };
}
