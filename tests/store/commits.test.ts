/** Which transactions wait for the disk, and who shares them. A database watched for what it commits stands for the disk. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Database } from 'better-sqlite3';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { makeCommits, type Commits } from '../../src/store/sqlite/commits.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';

let folder: string;
let db: Database;
let commits: Commits;
/** Of every transaction that changed something: how it was committed, and how many rows stood there then. */
let committed: { readonly synced: boolean; readonly rows: number }[];

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'ninthpour-commits-'));
  db = openDatabase(join(folder, 'watched.sqlite'));
  db.exec('CREATE TABLE line (text TEXT)');
  committed = [];
  commits = makeCommits(watched(db));
});
afterEach(async () => {
  await commits.drained();
  db.close();
  rmSync(folder, { recursive: true });
});

/** Sees, just before a transaction ends, whether its commit will be synced; and leaves out those that change nothing. */
function watched(real: Database): Database {
  const changes = real.prepare<[], number>('SELECT total_changes()').pluck();
  const rows = real.prepare<[], number>('SELECT count(*) FROM line').pluck();
  const begin = real.transaction.bind(real);
  let touched = false;
  const watch = (work: (...args: unknown[]) => unknown) =>
    begin((...args: unknown[]) => {
      const before = changes.get();
      touched = false;
      const result = work(...args);
      const level = real.pragma('synchronous', { simple: true });
      if (touched || changes.get() !== before) committed.push({ synced: level === 2, rows: rows.get() ?? 0 });
      return result;
    });
  return new Proxy(real, {
    get(target, name) {
      if (name === 'transaction') return watch;
      if (name === 'pragma') {
        return (text: string, how: object) => {
          if (text.startsWith('user_version =')) touched = true;
          return target.pragma(text, how);
        };
      }
      const value: unknown = Reflect.get(target, name);
      return typeof value === 'function' ? (value as (...args: unknown[]) => unknown).bind(target) : value;
    },
  });
}

const put = (text: string) => () => void db.prepare('INSERT INTO line VALUES (?)').run(text);
const count = () => db.prepare('SELECT count(*) FROM line').pluck().get() as number;

describe('what is committed', () => {
  test('by note waits for no disk, and survives without it in the log', async () => {
    await commits.note(put('a'));
    expect(committed).toEqual([{ synced: false, rows: 1 }]);
    expect(db.pragma('synchronous', { simple: true })).toBe(2);
  });

  test('of one tick shares one sync, as soon as one of them needs it', async () => {
    await Promise.all([commits.note(put('a')), commits.write(put('b')), commits.note(put('c'))]);
    expect(committed).toEqual([{ synced: true, rows: 3 }]);
  });

  test('last sees all that was asked for in the same tick, however much it is', async () => {
    const seen = commits.writeLast(count);
    const others = Array.from({ length: 150 }, (_, i) => commits.write(put(`${i}`)));
    const later = commits.writeLast(count);
    await Promise.all(others);
    expect([await seen, await later]).toEqual([64, 150]);
  });

  test('beside something that goes wrong is committed nevertheless, and that is not', async () => {
    const wrong = (): never => {
      put('half')();
      throw new Error('no');
    };
    const results = await Promise.allSettled([commits.write(put('a')), commits.write(wrong), commits.note(put('b'))]);
    expect(results.map(({ status }) => status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
    expect(db.prepare('SELECT text FROM line').pluck().all()).toEqual(['a', 'b']);
    expect(committed.at(-1)).toEqual({ synced: true, rows: 2 });
  });
});

test('while another program holds the lock, it is not quiet', async () => {
  const other = openDatabase(join(folder, 'watched.sqlite'));
  other.exec('BEGIN IMMEDIATE');
  const writing = commits.write(put('a'));
  await new Promise((resolve) => setTimeout(resolve, 100));
  expect(commits.isQuiet()).toBe(false);
  other.exec('ROLLBACK');
  other.close();
  await writing;
  expect(commits.isQuiet()).toBe(true);
});

describe('to be told that all is on the disk', () => {
  test('takes a sync of its own when nothing else is written', async () => {
    await commits.note(put('a'));
    await commits.synced();
    expect(committed).toEqual([
      { synced: false, rows: 1 },
      { synced: true, rows: 1 },
    ]);
  });

  test('shares the sync of what is written next', async () => {
    await commits.note(put('a'));
    const synced = commits.synced();
    await commits.write(put('b'));
    await synced;
    expect(committed).toEqual([
      { synced: false, rows: 1 },
      { synced: true, rows: 2 },
    ]);
  });

  test('is not fooled by a commit that changes nothing', async () => {
    await commits.note(put('a'));
    await Promise.all([commits.write(count), commits.synced()]);
    expect(committed.at(-1)).toEqual({ synced: true, rows: 1 });
  });

  test('is not fooled by further notes', async () => {
    await commits.note(put('a'));
    const synced = commits.synced();
    for (let i = 0; i < 5; i++) await commits.note(put('more'));
    await synced;
    expect(committed.some((one) => one.synced)).toBe(true);
  });

  test('takes nothing when all is', async () => {
    await commits.write(put('a'));
    await commits.synced();
    expect(committed).toHaveLength(1);
  });

  test('fails when the disk does', async () => {
    await commits.note(put('a'));
    db.pragma(`max_page_count = ${String(db.pragma('page_count', { simple: true }))}`);
    const writing = commits.write(put('x'.repeat(100_000)));
    await expect(Promise.all([commits.synced(), writing])).rejects.toThrow('full');
  });
});

test('what was noted and followed by nothing is on the disk a second later', async () => {
  await commits.note(put('a'));
  await commits.note(put('b'));
  await expect.poll(() => committed.some((one) => one.synced), { timeout: 20_000 }).toBe(true);
});
