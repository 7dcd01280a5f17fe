import {
  copyFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, test } from 'vitest';
import { StoreMistake } from '../../src/store/contract.ts';
import { assertPragmas, explained, openDatabase } from '../../src/store/sqlite/database.ts';
import { migrate, migrationsFolder } from '../../src/store/sqlite/migrate.ts';
import { makeSqliteStore, openSqliteStore } from '../../src/store/sqlite/store.ts';
import { storeContract } from './contract.ts';
import { atOnceContract } from './at-once-contract.ts';
import { bookingContract } from './booking-contract.ts';
import { deskContract } from './desk-contract.ts';
import { lessonContract } from './lesson-contract.ts';
import { nightContract } from './night-contract.ts';
import { commitOf, exchange, incoming, loaded, noon, say } from './samples.ts';
import { shopContract } from './shop-contract.ts';
import { resumedContract } from './resumed-contract.ts';
import { unheardContract } from './unheard-contract.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-store-'));
afterAll(() => rmSync(folder, { recursive: true }));
let made = 0;
const fresh = (): string => join(folder, `${(made += 1)}`, 'shop.sqlite');

storeContract('SQLite', async () => openSqliteStore(fresh()));
atOnceContract('SQLite', async () => openSqliteStore(fresh()));
shopContract('SQLite', async () => openSqliteStore(fresh()));
lessonContract('SQLite', async () => openSqliteStore(fresh()));
nightContract('SQLite', async () => openSqliteStore(fresh()));
resumedContract('SQLite', async () => openSqliteStore(fresh()));
unheardContract('SQLite', async () => openSqliteStore(fresh()));
deskContract('SQLite', async () => openSqliteStore(fresh()));
bookingContract('SQLite', async () => openSqliteStore(fresh()));

async function waryAt(file: string): Promise<boolean> {
  const store = openSqliteStore(file);
  await store.close();
  return store.isWary;
}

describe('the database file', () => {
  test('is opened with a sync at every commit, also the second time', () => {
    const file = fresh();
    openDatabase(file).close();
    const db = openDatabase(file);
    expect(db.pragma('synchronous', { simple: true })).toBe(2);
    expect(db.pragma('journal_mode', { simple: true })).toBe('wal');
    db.close();
  });

  test.each(['synchronous = 1', 'secure_delete = 0', 'foreign_keys = 0', 'busy_timeout = 5000'])(
    'is refused with %s',
    (pragma) => {
      const db = openDatabase(fresh());
      db.pragma(pragma);
      expect(() => assertPragmas(db)).toThrow(StoreMistake);
      db.close();
    },
  );

  test('makes the store wary when a process that died left it open, until it is closed once', async () => {
    const file = fresh();
    const store = openSqliteStore(file);
    expect(store.isWary).toBe(false);
    await store.record(incoming('ann', 'hello'));
    const left = fresh();
    mkdirSync(dirname(left));
    for (const part of ['', '-wal']) copyFileSync(`${file}${part}`, `${left}${part}`);
    await store.close();
    expect(await waryAt(file)).toBe(false);
    expect(await waryAt(left)).toBe(true);
    expect(await waryAt(left)).toBe(false);
  });

  test('of a newer version is refused in a clear sentence', () => {
    const file = fresh();
    const db = openDatabase(file);
    db.pragma('user_version = 999');
    db.close();
    expect(() => openDatabase(file)).toThrow(/newer version of Ninthpour \(schema 999/);
  });

  test('of another program is left alone', () => {
    const file = fresh();
    openDatabase(file).close();
    rmSync(file);
    const other = new Database(file);
    other.exec('CREATE TABLE theirs (x)');
    other.close();
    expect(() => openDatabase(file)).toThrow(/database of another program/);
  });

  test('that is no database is told so', () => {
    const file = fresh();
    openDatabase(file).close();
    writeFileSync(file, 'this is a shopping list, not a database'.repeat(100));
    expect(() => openDatabase(file)).toThrow(/damaged or not a database/);
  });

  test('that another program locks is told so, and soon', () => {
    const file = fresh();
    const holder = openDatabase(file);
    holder.exec('BEGIN IMMEDIATE');
    const began = performance.now();
    expect(() => openDatabase(file)).toThrow(/locked by another program/);
    expect(performance.now() - began).toBeLessThan(10_000);
    holder.close();
  });

  test('in a folder that cannot be made is told so', () => {
    const file = fresh();
    openDatabase(file).close();
    expect(() => openDatabase(join(file, 'deeper', 'shop.sqlite'))).toThrow(/cannot be opened: check that the folder/);
  });

  test.each([
    ['SQLITE_READONLY_DBMOVED', /cannot be written/],
    ['EACCES', /cannot be written/],
    ['SQLITE_BUSY_RECOVERY', /locked by another program/],
    ['SQLITE_CORRUPT_VTAB', /damaged/],
    ['SQLITE_FULL', /the disk is full/],
    ['SQLITE_IOERR_WRITE', /the disk reports an error/],
  ])('and %s has its sentence', (code, sentence) => {
    const told = explained('shop.sqlite', Object.assign(new Error('raw'), { code }));
    expect(told).toBeInstanceOf(StoreMistake);
    expect((told as Error).message).toMatch(sentence);
  });

  test('whose migration fails half-way stays as it was', () => {
    const steps = mkdtempSync(join(folder, 'steps-'));
    writeFileSync(join(steps, '001-first.sql'), 'CREATE TABLE a (x)');
    writeFileSync(join(steps, '002-second.sql'), 'CREATE TABLE b (x); INSERT INTO nowhere VALUES (1)');
    const db = new Database(join(steps, 'x.sqlite'));
    expect(() => migrate(db, pathToFileURL(`${steps}/`))).toThrow(/nowhere/);
    expect(db.pragma('user_version', { simple: true })).toBe(1);
    expect(db.prepare('SELECT name FROM sqlite_schema').pluck().all()).toEqual(['a']);
    db.close();
  });

  test('of an older version keeps its rows and goes on counting', async () => {
    const steps = mkdtempSync(join(folder, 'older-'));
    for (const name of readdirSync(migrationsFolder).filter((one) => one < '007'))
      copyFileSync(new URL(name, migrationsFolder), join(steps, name));
    const file = join(steps, 'shop.sqlite');
    const older = new Database(file);
    older.pragma('journal_mode = wal');
    migrate(older, pathToFileURL(`${steps}/`));
    older.exec(`INSERT INTO person VALUES (1, 1);
      INSERT INTO inbox (seq, channel, update_key, received_at, status) VALUES (41, 'web', x'41', 1, 'handled'), (99, 'web', x'99', 1, 'handled');
      DELETE FROM inbox WHERE seq = 99;
      INSERT INTO outbox (seq, tag, person, channel, chat, saying, priority, due, next_at, status, lasting, until, begun)
        VALUES (7, 'tag', 1, 'web', 'c', '{}', 1, 2, 3, 'sending', 1, 5, 1)`);
    const owed = older.prepare('SELECT * FROM outbox').get();
    older.close();
    const db = openDatabase(file);
    expect(db.prepare('SELECT * FROM outbox').get()).toEqual(owed);
    expect(db.prepare('SELECT seq FROM inbox ORDER BY seq').pluck().all()).toEqual([41, 99]);
    db.close();
    const store = openSqliteStore(file);
    const { person } = await store.record(incoming('ann', 'hello'));
    expect((await store.load(person ?? 0, noon))?.event).toMatchObject({ seq: 100 });
    await store.close();
  });

  test('has the schema the migrations say', () => {
    const db = openDatabase(fresh());
    const tables = db.prepare(
      `SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' ORDER BY name`,
    );
    expect(tables.pluck().all()).toEqual([
      'booking',
      'conversation',
      'handle',
      'inbox',
      'lesson',
      'memory',
      'morning',
      'outbox',
      'person',
      'question',
      'reminder',
      'series',
      'shop_code',
      'shopkeeper',
      'standing_answer',
      'tally',
      'task',
      'wake',
    ]);
    expect(readFileSync(new URL('001-ground.sql', migrationsFolder), 'utf8')).toContain('CREATE TABLE inbox');
    db.close();
  });
});

describe('a lock held by another program', () => {
  test.each([100, 400, 1_200])('for %i ms loses nothing and keeps no one else waiting long', async (heldMs) => {
    const file = fresh();
    const store = openSqliteStore(file);
    const holder = new Database(file);
    holder.exec('BEGIN IMMEDIATE');
    setTimeout(() => holder.exec('COMMIT'), heldMs);
    let turns = 0;
    const pulse = setInterval(() => void turns++, 5);
    expect((await store.record(incoming('ann', 'hello'))).outcome).toBe('new');
    clearInterval(pulse);
    // A try blocks 40 ms, then everyone else has a turn: about one in 65 ms, and on a busy machine one in 200.
    expect(turns).toBeGreaterThanOrEqual(Math.floor(heldMs / 200));
    holder.close();
    await store.close();
  });
});

test('a full disk is told to whoever writes, leaves nothing half, and passes', async () => {
  const db = openDatabase(fresh());
  const store = makeSqliteStore(db);
  const person = await exchange(store, 'ann', [say('kept')]);
  const pages = db.pragma('page_count', { simple: true }) as number;
  db.pragma(`max_page_count = ${pages + 2}`);
  await store.record(incoming('ann', 'small'));
  const turn = await loaded(store, person);
  const tooMuch = commitOf(turn, [say('small too'), say('x'.repeat(50_000))]);
  await expect(store.commit(tooMuch)).rejects.toMatchObject({ code: 'SQLITE_FULL' });
  expect(await loaded(store, person)).toEqual(turn);
  db.pragma('max_page_count = 100000');
  expect(await store.commit(tooMuch)).toBe('done');
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  await store.close();
});

test('after forgetting, no byte of the person is in database or log file', async () => {
  const file = fresh();
  const store = openSqliteStore(file);
  const canary = 'Canary-4711-鐵觀音';
  const others = Array.from({ length: 20 }, (_, i) => exchange(store, `other-${i}`, [say('x')]));
  await Promise.all(others);
  await store.record(incoming(canary, canary, { chat: canary, updateId: canary }));
  const person = (await store.find('web', canary)) ?? 0;
  const turn = await store.load(person, noon);
  await store.commit({
    person,
    version: 0,
    event: { kind: 'incoming', seq: turn?.event.kind === 'text' ? turn.event.seq : 0 },
    outcome: 'handled',
    state: { flow: 'f', hash: 'h', place: 'p', facts: { canary }, trail: [], parked: [] },
    language: 'en',
    address: { channel: 'web', chat: canary },
    changes: [
      say(canary),
      { do: 'remember', name: canary, value: canary },
      { do: 'task', task: 't', values: { canary } },
    ],
    now: noon,
  });
  const files = [file, `${file}-wal`];
  const bytes = (): string => files.map((f) => (existsSync(f) ? readFileSync(f, 'latin1') : '')).join('');
  const needle = Buffer.from(canary).toString('latin1');
  expect(bytes()).toContain(needle);
  await store.forget(person, noon);
  expect(bytes()).not.toContain(needle);
  await store.close();
  expect(bytes()).not.toContain(needle);
});

test('forgetting waits for another program that still reads the log', async () => {
  const file = fresh();
  const store = openSqliteStore(file);
  const person = await exchange(store, 'ann', [say('Canary-4712')]);
  const reader = new Database(file, { readonly: true });
  reader.exec('BEGIN');
  reader.prepare('SELECT count(*) FROM inbox').get();
  const forgetting = store.forget(person, noon);
  await new Promise((resolve) => setTimeout(resolve, 300));
  expect(readFileSync(`${file}-wal`, 'latin1')).toContain('Canary-4712');
  reader.close();
  await forgetting;
  expect(readFileSync(file, 'latin1') + readFileSync(`${file}-wal`, 'latin1')).not.toContain('Canary-4712');
  await store.close();
});
