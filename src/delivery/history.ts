/** What passed in a chat, told again to who comes back. */
import { errorFields, type Log } from '../log.ts';
import type { Outgoing } from '../messages.ts';
import type { Address, Heard, Owed, Store } from '../store/contract.ts';
import type { Sign } from './calendar.ts';
import { render, type Say } from './render.ts';

export interface HistoryParts {
  readonly store: Store;
  readonly say: Say;
  readonly log: Log;
  readonly sign?: Sign | null;
}

/** One thing of a conversation: said to the person, or heard from them. */
export type Passed = { readonly said: Outgoing } | { readonly heard: Heard };

/** Both sides in the order of time, of a chat where the one who writes is known by the chat's own name. */
export function makeHistory({ store, say, log, sign = null }: HistoryParts) {
  const inWords = (owed: Owed): readonly Outgoing[] => {
    try {
      return [render(say, owed, sign)];
    } catch (error) {
      // Its sentence left the words since: better a gap than no history.
      log.warn('an old message has no words any more', errorFields(error));
      return [];
    }
  };
  return async (address: Address, after: string | null): Promise<readonly Passed[]> => {
    const { channel, chat } = address;
    const [owed, heard] = await Promise.all([store.history(address, after), store.heard(channel, chat, after)]);
    const waiting = [...heard];
    // Each side keeps its own order even when the clock was set back; a question comes before its answer.
    const before = (at: number): readonly Heard[] =>
      waiting.splice(0, waiting.findLastIndex(({ receivedAt }) => receivedAt <= at) + 1);
    const both = owed.flatMap((one) => [
      ...before(one.claimedAt).map((line) => ({ heard: line })),
      ...inWords(one).map((message) => ({ said: message })),
    ]);
    return [...both, ...waiting.map((line) => ({ heard: line }))];
  };
}
