/** What a chat was sent, told again to who comes back. */
import { errorFields, type Log } from '../log.ts';
import type { Outgoing } from '../messages.ts';
import type { Address, Store } from '../store/contract.ts';
import { render, type Say } from './render.ts';

/** What a chat was sent after a message, in the words it was sent in. */
export function makeHistory(store: Store, say: Say, log: Log) {
  return async (address: Address, after: string | null): Promise<readonly Outgoing[]> => {
    const owed = await store.history(address, after);
    return owed.flatMap((one) => {
      try {
        return [render(say, one)];
      } catch (error) {
        // Its sentence left the words since: better a gap than no history.
        log.warn('an old message has no words any more', errorFields(error));
        return [];
      }
    });
  };
}
