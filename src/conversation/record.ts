/**
 * The way in. What arrives is kept and handled in one transaction, and acknowledged once that is on the disk. After a death
 * it is kept first, out of reach of a process that dies of handling it, so that its tries are counted.
 */
import type { Incoming } from '../messages.ts';
import type { Store } from '../store/contract.ts';
import type { Handling } from './handle.ts';

export interface RecordParts {
  readonly store: Store;
  readonly handling: Handling;
  /** Handling could not go on; what was kept is taken up again later. */
  readonly troubled: (error: unknown) => void;
}

export function makeRecord({
  store,
  handling,
  troubled,
}: RecordParts): (incoming: Incoming) => Promise<'new' | 'seen'> {
  return async (incoming) => {
    const { outcome, person, handled, stumbles } = await handling.receive(incoming);
    if (handled) return outcome;
    if (outcome === 'new' && person !== null) handling.take(person, stumbles).catch(troubled);
    await store.synced();
    return outcome;
  };
}
