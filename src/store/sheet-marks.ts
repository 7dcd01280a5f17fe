/** Names that need only be there or not, kept by what the store has already. */
import type { Store } from './contract.ts';

/**
 * Kept as handles of the page that nobody writes from. As whoever is not heard of for long is forgotten, so are they:
 * which devices may open a sheet is known as long as an idle sheet is kept.
 */
export function marksIn({ record, synced, find }: Pick<Store, 'record' | 'synced' | 'find'>, now: () => number) {
  return {
    async add(mark: string): Promise<void> {
      const name = `mark ${mark}`;
      const what = { kind: 'reach', reachable: false } as const;
      await record({ channel: 'web', updateId: name, from: name, chat: name, receivedAt: now(), what });
      // A number that was put away must not come back with the power.
      await synced();
    },
    has: async (mark: string): Promise<boolean> => (await find('web', `mark ${mark}`)) !== null,
  };
}
