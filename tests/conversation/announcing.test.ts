/** When the house is to look again after a turn. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeHandling } from '../../src/conversation/handle.ts';
import type { Facts } from '../../src/core/flow/flow.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { fakeClock } from '../delivery/fake-clock.ts';
import { enrols, lessonOf, starts, withLesson } from '../store/lesson-samples.ts';
import { incoming, stateAt } from '../store/samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-announcing-'));
let store: Store;
let booking: string;
beforeAll(async () => {
  store = openSqliteStore(join(folder, 'shop.sqlite'));
  await store.appoint([{ channel: 'web', from: 'mei' }], starts);
  await withLesson(store);
  booking = await enrols(store, 'ann');
});
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true });
});

/** The shopkeeper's flow tells this, at the door. */
async function announced(task: string, values: Facts): Promise<readonly Instant[]> {
  const dues: Instant[] = [];
  const { person } = await store.record(incoming('mei', task, { receivedAt: starts }));
  const handling = makeHandling({
    store,
    step: () => ({ state: stateAt('desk'), effects: [{ do: 'task', task, values }] }),
    clock: fakeClock(starts),
    means: { mail: false, freshCode: () => '' },
    deliveryMs: () => 0,
    reserve: () => ({ room: 'none', use: () => {} }),
    owed: (due) => dues.push(due),
    later: (due) => dues.push(due),
    stumbled(error) {
      throw error;
    },
    troubled(error) {
      throw error;
    },
  });
  await handling.take(person ?? 0);
  return dues;
}

test.each<readonly [string, () => Facts]>([
  ['count', () => ({ what: 'tea-asked', item: 'longjing' })],
  ['tick-off', () => ({ booking, came: true })],
  ['add-lessons', () => ({ drafts: [{ ...lessonOf({ id: 'next', starts: '2026-12-12T19:00' }) }] })],
  ['offer-code', () => ({ code: 'QRST-2345' })],
  ['seen-undelivered', () => ({ upTo: 0 })],
])('%s tells nobody anything: there is nothing to look for', async (task, values) => {
  expect(await announced(task, values())).toEqual([]);
});

test('a guest put on the list, and seats asked for anew, are looked for at once and for what follows', async () => {
  const lesson = 'late-evening';
  await withLesson(store, { id: lesson, starts: '2026-12-07T19:00' });
  const guest = { lesson, seats: 1, to: 'seated', name: 'Ah Keong', mail: 'keong@example.org' };
  expect(await announced('enrol-guest', guest)).toEqual([starts, starts + 1]);
  const own = await enrols(store, 'mei', { lesson, now: starts });
  expect(await announced('reseat', { booking: own, seats: 2 })).toEqual([starts, starts + 1]);
});

test('a lesson written to is looked for at once, and one cancelled for what follows as well', async () => {
  const lesson = 'white-evening';
  expect(await announced('write-to-lesson', { lesson, text: 'Bring a towel.' })).toEqual([starts]);
  expect(await announced('write-to-lessons', { lessons: [lesson], text: 'Bring a towel.' })).toEqual([starts]);
  expect(await announced('cancel-lesson', { lesson, seen: 0 })).toEqual([starts, starts + 1]);
});
