/**
 * The way in. What arrives is kept and handled in one transaction, and acknowledged once that is on the disk. After a death
 * it is kept first, out of reach of a process that dies of handling it, so that its tries are counted.
 */
import type { Incoming } from '../messages.ts';
import type { Store } from '../store/contract.ts';
import type { Handling } from './handle.ts';

export function makeRecord(store: Store, handling: Handling): (incoming: Incoming) => Promise<'new' | 'seen'> {
  return async (incoming) => {
    const { outcome, handled } = await handling.receive(incoming);
    // What was handled with it is on the disk.
    if (handled === null) await store.synced();
    return outcome;
  };
}
