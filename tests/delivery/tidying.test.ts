/** What is old goes by itself: settled rows after their days, and people whom nobody has heard of for long. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeTidying } from '../../src/delivery/tidying.ts';
import type { Change, Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog } from '../app/kettle.ts';
import { claimAt, exchange, incoming, noon, say } from '../store/samples.ts';
import { fakeClock } from './fake-clock.ts';

const day = 24 * 60 * 60_000;
const canary = 'Canary-4713';

let folder: string;
let store: Store;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'tea-tidying-'));
  store = openSqliteStore(join(folder, 'shop.sqlite'));
});
afterEach(async () => {
  await store.close();
  rmSync(folder, { recursive: true });
});

/** So many days pass, with the tidying at work. */
async function pass(days: number, forgetDays = 100): Promise<void> {
  const clock = fakeClock(noon + days * day);
  const log = keptLog();
  const tidying = makeTidying({ store, clock, log, keepDays: 30, forgetDays });
  tidying.start();
  await clock.pass(7 * 60 * 60_000);
  while (log.lines.length === 0) await new Promise(setImmediate);
  tidying.stop();
}

const tea: Change = { do: 'remember', name: 'tea', value: canary };
const isKnown = async (from: string): Promise<boolean> => (await store.find('web', from)) !== null;

/** Answered, and the answer sent. */
async function visit(from: string, changes: readonly Change[] = [tea]): Promise<number> {
  const person = await exchange(store, from, changes);
  for (const { id } of await store.claim(claimAt(noon))) await store.settle(id, { kind: 'sent', ref: 'r' }, noon);
  return person;
}

describe('someone who has not written for long', () => {
  test('is forgotten with all that is theirs, to the byte', async () => {
    await visit('ann', [tea, say(canary)]);
    await visit('ben');
    await store.record(incoming('ben', 'still here', { receivedAt: noon + 60 * day }));
    await pass(101);
    expect([await isKnown('ann'), await isKnown('ben')]).toEqual([false, true]);
    await pass(161 + 1);
    await store.close();
    expect(readFileSync(join(folder, 'shop.sqlite'), 'latin1')).not.toContain(canary);
    store = openSqliteStore(join(folder, 'shop.sqlite'));
  });

  test('stays a day less, and for ever when the shop has set so', async () => {
    await visit('ann');
    await pass(99);
    await pass(5_000, 0);
    expect(await isKnown('ann')).toBe(true);
  });

  test.each<[why: string, bound: Change]>([
    ['a message of theirs is to come', say('reminder', {}, noon + 200 * day)],
    ['a timer of theirs is set', { do: 'wake', name: 'pour', at: noon + 200 * day }],
    ['a question of theirs waits for the shop', { do: 'ask', id: 900, text: 'dogs?', language: 'en' }],
  ])('stays while %s', async (_, bound) => {
    await visit('ann', [tea, bound]);
    await pass(150);
    expect(await isKnown('ann')).toBe(true);
  });

  test('stays as a shopkeeper', async () => {
    await store.appoint([{ channel: 'web', from: 'mei' }], noon);
    await visit('mei');
    await pass(150);
    expect(await isKnown('mei')).toBe(true);
  });

  test('is found however many there are', async () => {
    for (let i = 0; i < 450; i++) await store.record(incoming(`p${i}`, { kind: 'reach', reachable: true }));
    await visit('ann');
    await pass(101);
    const left = await Promise.all(Array.from({ length: 450 }, (_, i) => isKnown(`p${i}`)));
    expect(left.filter(Boolean)).toEqual([]);
  });
});

test('settled rows go after their days, and what a person has told stays', async () => {
  const person = await visit('ann', [tea, say('an old answer')]);
  await pass(31);
  expect(await store.exportOf(person)).toMatchObject({ inbox: [], outbox: [], memory: [{ name: 'tea' }] });
});
