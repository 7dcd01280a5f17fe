/** Who has been gone for long: found a few at a time, so that nobody who is here waits for it. */
import type { Instant } from '../core/units.ts';
import type { PersonId } from './contract.ts';

/** Part of the store. */
export interface Idle {
  /** Of the next so many people after this one. */
  idle(walk: IdleWalk): Promise<IdleFound>;
}

export interface IdleWalk {
  readonly after: PersonId;
  readonly limit: number;
  readonly before: Instant;
}

export interface IdleFound {
  /**
   * Those who have done nothing since `before`, and whom nothing binds to the house: no message to come, no question that
   * waits, no lesson since, no standing answer in their words, and not the shop itself.
   */
  readonly people: readonly PersonId[];
  /** Where to go on; null at the end. */
  readonly last: PersonId | null;
}
