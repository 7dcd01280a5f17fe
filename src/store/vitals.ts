/** How the house fares, as its memory tells it: what waits, and since when. */
import type { Instant } from '../core/units.ts';

export interface Vitals {
  /** Incomings not handled yet. */
  readonly unhandled: number;
  /** Messages due by now and not sent; who cannot be reached is not waited for. */
  readonly undelivered: number;
  /** When the longest overdue of them was due; null when there is none. */
  readonly oldestUndelivered: Instant | null;
  /** Questions that wait for the shop. */
  readonly questions: number;
  /** Open tasks of the shop. */
  readonly tasks: number;
}
