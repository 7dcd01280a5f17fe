/**
 * The way in: what arrived is kept first, out of reach of a process that dies of handling it, then handled; and acknowledged
 * once it is on the disk, for which handling it mostly needs a sync anyway.
 */
import type { Incoming } from '../messages.ts';
import type { PersonId, Store } from '../store/contract.ts';

export interface RecordParts {
  readonly store: Store;
  readonly take: (person: PersonId) => Promise<void>;
  /** Handling could not go on; what was kept is taken up again later. */
  readonly troubled: (error: unknown) => void;
}

export function makeRecord({ store, take, troubled }: RecordParts): (incoming: Incoming) => Promise<'new' | 'seen'> {
  return async (incoming) => {
    const { outcome, person } = await store.record(incoming);
    if (outcome === 'new' && person !== null) take(person).catch(troubled);
    await store.synced();
    return outcome;
  };
}
