/** Drops what was settled long ago, a few times a day. */
import type { Clock } from '../clock.ts';
import { errorFields, type Log } from '../log.ts';
import type { Store } from '../store/contract.ts';

const everyMs = 6 * 60 * 60_000;
const dayMs = 24 * 60 * 60_000;

export interface TidyingParts {
  readonly store: Store;
  readonly clock: Clock;
  readonly log: Log;
  readonly keepDays: number;
}

export function makeTidying({ store, clock, log, keepDays }: TidyingParts) {
  let cancel: (() => void) | null = null;
  const tidy = (): void => {
    arm();
    store
      .prune(clock.now() - keepDays * dayMs)
      .then((rows) => log.info('old rows are gone', { rows }))
      .catch((error: unknown) => log.error('old rows could not be dropped', errorFields(error)));
  };
  const arm = (): void => {
    cancel = clock.wakeAt(clock.now() + everyMs, tidy);
  };
  return { start: arm, stop: () => cancel?.() };
}
