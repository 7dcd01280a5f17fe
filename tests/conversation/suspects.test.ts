/** Whom a death of the process is put down to. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeHandling } from '../../src/conversation/handle.ts';
import type { PersonId, Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { fakeClock } from '../delivery/fake-clock.ts';
import { incoming, noon, stateAt } from '../store/samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-suspects-'));
let store: Store;
beforeAll(() => void (store = openSqliteStore(join(folder, 'shop.sqlite'))));
afterAll(async () => {
  await store.close();
  rmSync(folder, { recursive: true });
});

test('to the one message that was begun, not to all that waited with it', async () => {
  const people: PersonId[] = [];
  for (let i = 0; i < 12; i++) people.push((await store.record(incoming(`p${i}`, 'hello'))).person ?? 0);
  await store.recover(['web'], [], noon);
  let begun = 0;
  const handling = makeHandling({
    // Nothing is ever committed again: as far as the file knows, this process is dead.
    store: { ...store, commit: () => new Promise(() => {}) },
    step: () => {
      begun += 1;
      return { state: stateAt('hello'), effects: [] };
    },
    clock: fakeClock(noon),
    means: { mail: false, freshCode: () => '' },
    deliveryMs: () => 0,
    owed: () => {},
    stumbled(error) {
      throw error;
    },
  });
  for (const person of people) void handling.take(person);
  await expect.poll(() => begun, { timeout: 20_000 }).toBe(1);
  await store.synced();
  const tries = await Promise.all(people.map(async (person) => (await store.load(person, noon))?.tries));
  expect(tries.toSorted((a = 0, b = 0) => a - b)).toEqual([...Array.from({ length: 11 }, () => 1), 2]);
});
