/** Whom a death of the process is put down to. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeHandling, type Handling } from '../../src/conversation/handle.ts';
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

interface Trial {
  readonly people: readonly PersonId[];
  readonly handling: Handling;
  readonly begun: () => number;
}

interface Given {
  readonly warm?: Promise<void>;
  readonly isWary?: boolean;
}

/** Twelve people's messages, in a process that began none of them, over a file in which nothing is committed again. */
async function trial(names: string, { warm, isWary = false }: Given = {}): Promise<Trial> {
  const people: PersonId[] = [];
  for (let i = 0; i < 12; i++) people.push((await store.record(incoming(`${names}${i}`, 'hello'))).person ?? 0);
  await store.recover(['web'], [], noon);
  let begun = 0;
  const handling = makeHandling({
    store: { ...store, isWary, commit: () => new Promise(() => {}) },
    step: () => {
      begun += 1;
      return { state: stateAt('hello'), effects: [] };
    },
    clock: fakeClock(noon),
    means: { mail: false, freshCode: () => '' },
    deliveryMs: () => 0,
    reserve: () => ({ room: 'none', use: () => {} }),
    owed: () => {},
    later: () => {},
    stumbled(error) {
      throw error;
    },
    troubled(error) {
      throw error;
    },
    ...(warm && { warm }),
  });
  for (const person of people) void handling.take(person);
  return { people, handling, begun: () => begun };
}

const triesOf = async (people: readonly PersonId[]): Promise<readonly number[]> => {
  await store.synced();
  const tries = await Promise.all(people.map(async (person) => (await store.load(person, noon))?.tries ?? 0));
  return tries.toSorted((a, b) => a - b);
};

const eleven = Array.from({ length: 11 }, () => 1);

test('to the one message that was begun, not to all that waited with it', async () => {
  const { people, begun } = await trial('p');
  await expect.poll(begun, { timeout: 20_000 }).toBe(1);
  expect(await triesOf(people)).toEqual([...eleven, 2]);
});

test('to none before the house is warm, for the first answer takes longer than many a life', async () => {
  let warm: (() => void) | undefined;
  const { people, begun } = await trial('q', { warm: new Promise((resolve) => (warm = resolve)) });
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(await triesOf(people)).toEqual([...eleven, 1]);
  warm?.();
  await expect.poll(begun, { timeout: 20_000 }).toBe(1);
  expect(await triesOf(people)).toEqual([...eleven, 2]);
});

test('to what arrives after it: it is kept before it is handled', async () => {
  const { handling } = await trial('r', { isWary: true, warm: new Promise(() => {}) });
  const { person, handled } = await handling.receive(incoming('late', 'hello'));
  expect(handled).toBeNull();
  expect(await store.load(person ?? 0, noon)).toMatchObject({ tries: 0, event: { text: 'hello' } });
});

test('and without a death it is handled as it is kept', async () => {
  const { handling } = await trial('s', { warm: new Promise(() => {}) });
  const { person, handled } = await handling.receive(incoming('soon', 'hello'));
  expect(handled?.outcome).toBe('handled');
  expect(await store.load(person ?? 0, noon)).toBeNull();
});
