/** What a store must do with reminders that were handed over by day and not sent by nightfall. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Owed, Settlement, Store } from '../../src/store/contract.ts';
import { day, denverAt, does, enrols, sent, tendAll, told, withLesson } from './lesson-samples.ts';
import { claimAt, exchange } from './samples.ts';

const evening = denverAt('2026-12-04T18:00');
const lastCall = denverAt('2026-12-04T20:59');
const night = denverAt('2026-12-04T21:00');
const morning = denverAt('2026-12-05T08:00');

export function nightContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} lets a reminder wait for the morning that was not sent by nightfall`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
      await withLesson(store);
      await enrols(store, 'ann');
      await tendAll(store, evening);
    });
    afterEach(() => store.close());

    const taken = async (now: number): Promise<readonly Owed[]> => {
      await tendAll(store, now);
      return store.claim(claimAt(now));
    };
    const settled = async (owed: readonly Owed[], settlement: Settlement, now: number): Promise<void> => {
      for (const { id } of owed) await store.settle(id, settlement, now);
    };

    test('whoever asks first, and only then', async () => {
      expect(await store.claim(claimAt(night))).toEqual([]);
      await tendAll(store, night);
      expect(await store.nextDue(['web'], night)).toBe(morning);
      expect(await taken(morning - 1)).toEqual([]);
      expect(told(await taken(morning))).toEqual(['ann evening-before']);
    });

    test.each<[string, Settlement, boolean]>([
      ['failed', { kind: 'retry', at: night + 1, why: 'busy' }, false],
      ['may have arrived', { kind: 'doubt', at: night + 1, why: 'cut off' }, true],
    ])('that %s: in the morning it goes on where it ended', async (_, before, isDoubtful) => {
      await settled(await taken(lastCall), before, night);
      expect(await taken(night + 1)).toEqual([]);
      const again = await taken(morning);
      expect(again).toMatchObject([{ due: evening, attempts: 1 }]);
      await settled(again, { kind: 'doubt', at: morning + 1, why: 'cut off' }, morning);
      // No third copy of what may have come twice.
      expect(told(await sent(store, morning + 1))).toEqual(isDoubtful ? [] : ['ann evening-before']);
    });

    test('for another time of the lesson it begins anew', async () => {
      await store.appoint([{ channel: 'web', from: 'mei' }], day);
      await exchange(store, 'mei', []);
      await settled(await taken(lastCall), { kind: 'doubt', at: night + 1, why: 'cut off' }, night);
      await tendAll(store, night);
      const [roster] = await store.rosters(night);
      const moved = { do: 'move-lesson', lesson: 'white-evening', seen: roster?.lesson.revision ?? 0 } as const;
      await does(store, 'mei', () => ({ ...moved, starts: '2026-12-12T19:00', minutes: null }), night);
      expect(told(await sent(store, night))).toEqual(['ann moved']);
      const anew = denverAt('2026-12-11T18:00');
      expect(await taken(anew)).toMatchObject([{ due: anew, attempts: 0, priority: 'reminder' }]);
    });
  });
}
