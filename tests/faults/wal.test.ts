/** A write-ahead log damaged by a power cut: what is found again is a committed beginning, and all that was promised before. */
import { copyFileSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { commitOf, incoming, loaded, say } from '../store/samples.ts';
import { countOf, dice, type Dice } from './counts.ts';

const frameHeader = 24;
const pageSize = 4096;
const walHeader = 32;
const exchanges = 40;

const folder = mkdtempSync(join(tmpdir(), 'tea-wal-'));
const whole = join(folder, 'whole.sqlite');
const damaged = join(folder, 'damaged.sqlite');
/** The log's length when the n-th transaction was promised; a message is two: kept, then handled. */
const promised: number[] = [];
let wal: Buffer;

beforeAll(async () => {
  const store = openSqliteStore(whole);
  const promise = (): void => void promised.push(statSync(`${whole}-wal`).size);
  for (let i = 0; i < exchanges; i++) {
    const { person } = await store.record(incoming(`p${i}`, `text ${i}`));
    promise();
    await store.commit(commitOf(await loaded(store, person ?? 0), [say(`answer ${i}`)]));
    promise();
  }
  copyFileSync(whole, `${whole}.kept`);
  wal = readFileSync(`${whole}-wal`);
  await store.close();
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Damages the copy from `from` on; nothing before it is touched. */
const damages: readonly ((log: Buffer, from: number, dice: Dice) => Buffer)[] = [
  (log, from) => log.subarray(0, from),
  (log, from, { below }) => log.subarray(0, from + below(log.length - from)),
  (log, from, { below }) => {
    log[from + below(log.length - from)]! ^= 1 << below(8);
    return log;
  },
  (log, from, { below }) => {
    const sector = from + Math.floor(below(log.length - from) / 512) * 512;
    log.fill(0, sector, sector + 512);
    return log;
  },
  (log, from, { below }) => {
    const start = from + below(log.length - from);
    const end = Math.min(log.length, start + below(3 * pageSize));
    for (let i = start; i < end; i++) log[i] = below(256);
    return log;
  },
];

test('the log is as long as the test supposes', () => {
  expect((wal.length - walHeader) % (pageSize + frameHeader)).toBe(0);
  expect(promised.at(-1)).toBe(wal.length);
});

test('is cut, flipped, zeroed or overwritten anywhere', { timeout: 3_600_000 }, () => {
  const thrown = dice();
  let lost = 0;
  const found = new Set<number>();
  for (let i = 0; i < countOf('WAL_CASES', 120); i++) {
    const from = placeOf(thrown, i);
    const damage = damages[i % damages.length]!;
    const kept = transactionsAfter(damage(Buffer.from(wal), from, thrown), `seed ${thrown.seed}, case ${i}`);
    found.add(kept);
    lost += Math.max(0, promised.filter((size) => size <= from).length - kept);
  }
  expect(lost, `seed ${thrown.seed}`).toBe(0);
  // Were the damage without effect, all would always be found.
  expect(found.size).toBeGreaterThan(10);
});

/** Half the cases at the start of a frame, half anywhere behind the header. */
function placeOf({ below }: Dice, i: number): number {
  const frames = (wal.length - walHeader) / (pageSize + frameHeader);
  return i % 2 === 0
    ? walHeader + below(frames) * (pageSize + frameHeader)
    : walHeader + below(wal.length - walHeader - 1);
}

/** How many transactions are found again; fails unless they are exactly the first ones, whole. */
function transactionsAfter(log: Buffer, when: string): number {
  copyFileSync(`${whole}.kept`, damaged);
  writeFileSync(`${damaged}-wal`, log);
  rmSync(`${damaged}-shm`, { force: true });
  const db = openDatabase(damaged);
  const count = (sql: string): number => db.prepare<[], number>(sql).pluck().get() ?? 0;
  const kept = count('SELECT count(*) FROM inbox');
  const handled = count(`SELECT count(*) FROM inbox WHERE status = 'handled'`);
  const found = {
    integrity: db.pragma('integrity_check', { simple: true }) as string,
    unhandled: kept - handled === 0 || kept - handled === 1,
    last: count('SELECT coalesce(max(seq), 0) FROM inbox'),
    people: count('SELECT count(*) FROM person'),
    conversations: count('SELECT count(*) FROM conversation'),
    owed: count('SELECT count(*) FROM outbox'),
  };
  db.close();
  const wanted = { integrity: 'ok', unhandled: true, last: kept, people: kept, conversations: handled, owed: handled };
  expect(found, when).toEqual(wanted);
  return kept + handled;
}
