/** Drops what was settled long ago, and forgets who has been gone for long, a few times a day. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import { errorFields, type Log } from '../log.ts';
import type { PersonId, Store } from '../store/contract.ts';
import type { IdleFound } from '../store/idle-contract.ts';

const everyMs = 6 * 60 * 60_000;
const dayMs = 24 * 60 * 60_000;
const peopleAtOnce = 200;

export interface TidyingParts {
  readonly store: Pick<Store, 'prune' | 'idle' | 'forget'>;
  readonly clock: Clock;
  readonly log: Log;
  readonly keepDays: number;
  /** 0: nobody is forgotten unasked. */
  readonly forgetDays: number;
}

export function makeTidying({ store, clock, log, keepDays, forgetDays }: TidyingParts) {
  let cancel: (() => void) | null = null;
  const stopping = new AbortController();
  const tidy = async (): Promise<void> => {
    const rows = await store.prune(clock.now() - keepDays * dayMs);
    const people = forgetDays === 0 ? 0 : await forgetIdle(clock.now() - forgetDays * dayMs);
    log.info('what is old is gone', { rows, people });
  };
  const forgetIdle = async (before: Instant): Promise<number> => {
    let forgotten = 0;
    for (let after: PersonId | null = 0; after !== null && !stopping.signal.aborted;) {
      const found: IdleFound = await store.idle({ after, limit: peopleAtOnce, before });
      for (const person of found.people) {
        if (stopping.signal.aborted) return forgotten;
        await store.forget(person, clock.now());
        forgotten += 1;
      }
      after = found.last;
      // Whoever is here comes between.
      await new Promise(setImmediate);
    }
    return forgotten;
  };
  const arm = (): void => {
    cancel = clock.wakeAt(clock.now() + everyMs, () => {
      arm();
      tidy().catch((error: unknown) => log.error('what is old could not be dropped', errorFields(error)));
    });
  };
  return {
    start: arm,
    stop() {
      stopping.abort();
      cancel?.();
    },
  };
}
