/** Tells shopkeepers each morning what the day brings, at the time the shop has set. */
import type { Clock } from '../clock.ts';
import { addDays, dateOf, instantOf, wallAt } from '../core/lessons/calendar.ts';
import type { Instant } from '../core/units.ts';
import { errorFields, type Log } from '../log.ts';
import type { Store } from '../store/contract.ts';

export interface MorningTime {
  /** "07:30", by the clock of the shop. */
  readonly time: string;
  readonly zone: string;
}

export interface MorningParts {
  readonly store: Pick<Store, 'tellMorning'>;
  readonly clock: Clock;
  /** Whether letters go out; without them, who left only an address is not reached. */
  readonly letters: boolean;
  readonly log: Log;
  /** Null when the shop wants none. */
  readonly when: MorningTime | null;
  /** Something is to be sent now. */
  readonly owed: (due: Instant) => void;
}

/** Judgement: a list of the day is of use until the early afternoon. */
const lateForMs = 6 * 60 * 60_000;
const longestWaitMs = 6 * 60 * 60_000;
const afterFailureMs = 60_000;

export function makeMorning({ store, clock, letters, log, when, owed }: MorningParts) {
  /** Null when stopped. */
  let cancel: (() => void) | null = null;
  const lookAt = (at: Instant): void => {
    cancel?.();
    cancel = clock.wakeAt(at, look);
  };
  const failed = (error: unknown): void => {
    log.error('the morning could not be told', errorFields(error));
    if (cancel !== null) lookAt(clock.now() + afterFailureMs);
  };
  const look = (): void => {
    if (when === null) return;
    const now = clock.now();
    const today = dateOf(wallAt(now, when.zone));
    const due = instantOf(`${today}T${when.time}`, when.zone);
    const next = now < due ? due : instantOf(`${addDays(today, 1)}T${when.time}`, when.zone);
    lookAt(Math.min(next, now + longestWaitMs));
    if (now < due || now > due + lateForMs) return;
    // The store knows whether this day was told.
    store
      .tellMorning(today, letters, now)
      .then((isTold) => isTold && owed(now))
      .catch(failed);
  };
  return {
    start: look,
    stop() {
      cancel?.();
      cancel = null;
    },
  };
}
