import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, test } from 'vitest';
import { makeBackup } from '../../src/store/sqlite/backup.ts';
import { restore, type RestoreOrder } from '../../src/store/sqlite/restore.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { act, denverAt, does, enrols, sent, tendAll, told, withLesson } from './lesson-samples.ts';
import { claimAt, exchange, incoming, keysOf, noon, say } from './samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-restore-'));
afterAll(() => rmSync(folder, { recursive: true }));
let made = 0;

const hour = 60 * 60_000;
const later = noon + 5 * hour;
const untold: Omit<RestoreOrder, 'backup' | 'database'> = { now: later, replace: false, rehearse: false };

interface Shop {
  readonly database: string;
  readonly backup: string;
}

/** Backed up at noon with all kinds of work under way, all of which was done since. */
async function workedOn(): Promise<Shop> {
  const database = join(folder, `${(made += 1)}`, 'ninthpour.sqlite');
  const store = openSqliteStore(database);
  await exchange(store, 'ann', [say('sent-later')]);
  await exchange(store, 'ben', [say('cut-off')]);
  await store.claim(claimAt(noon, { limit: 1 }));
  await exchange(store, 'cem', [say('still-to-come', {}, later + hour)]);
  await exchange(store, 'dan', [{ do: 'wake', name: 'pour', at: noon + hour }]);
  await store.record(incoming('eve', 'unanswered'));
  const gone = await exchange(store, 'fay', [{ do: 'remember', name: 'tea', value: 'canary' }]);
  const { file: backup } = await makeBackup({ database, folder: join(database, '..', 'backups'), now: noon });
  await store.forget(gone, noon);
  await exchange(store, 'gil', [say('new-since')]);
  for (const { id } of await store.claim(claimAt(noon + hour))) {
    await store.settle(id, { kind: 'sent', ref: 'r' }, noon + hour);
  }
  await store.close();
  return { database, backup };
}

const bytesAround = (database: string): string =>
  readdirSync(join(database, '..'))
    .filter((name) => name.startsWith('ninthpour.sqlite') && !name.includes('before-restore'))
    .map((name) => readFileSync(join(database, '..', name), 'latin1'))
    .join('');

describe('after a restore', () => {
  test('nothing old is sent or answered again, and what was still to come comes', async () => {
    const shop = await workedOn();
    const restored = await restore({ ...shop, ...untold, replace: true });
    expect(restored).toMatchObject({ unsent: 2, unanswered: 1, forgotten: 1, lastChange: noon });
    const store = openSqliteStore(shop.database);
    await store.recover(['web'], ['web'], later);
    expect(await store.awaiting(['web'], later, 10)).toEqual([]);
    expect(await store.claim(claimAt(later))).toEqual([]);
    expect(keysOf(await store.claim(claimAt(later + hour)))).toEqual(['still-to-come']);
    expect(await store.find('web', 'gil')).toBeNull();
    await store.close();
  });

  test('an offer of the night is told all the same: its seat is kept for nobody else', async () => {
    const database = join(folder, `${(made += 1)}`, 'ninthpour.sqlite');
    const [night, back] = [denverAt('2026-12-01T22:00'), denverAt('2026-12-02T14:00')];
    const store = openSqliteStore(database);
    await withLesson(store, { seats: 1 });
    const ann = await enrols(store, 'ann');
    await enrols(store, 'ben', { to: 'waiting' });
    await does(store, 'ann', () => act(ann, 'leave', night), night);
    const { file: backup } = await makeBackup({ database, folder: join(database, '..', 'backups'), now: night });
    await store.close();
    await restore({ database, backup, ...untold, now: back, replace: true });
    const restored = openSqliteStore(database);
    await tendAll(restored, back);
    expect(told(await sent(restored, back))).toEqual(['ben offer']);
    await restored.close();
  });

  test('another in the same second keeps both former databases', async () => {
    const shop = await workedOn();
    const kept: (string | null)[] = [];
    for (let i = 0; i < 3; i++) kept.push((await restore({ ...shop, ...untold, replace: true })).kept);
    expect(new Set(kept).size).toBe(3);
    for (const file of kept) expect(existsSync(file ?? '')).toBe(true);
  });

  test('the shop is told whom something may not have reached', async () => {
    const shop = await workedOn();
    await restore({ ...shop, ...untold, replace: true });
    const db = new Database(shop.database, { readonly: true });
    expect(db.prepare('SELECT task, facts FROM task').all()).toEqual([
      { task: 'undelivered', facts: '{"why":"restored"}' },
      { task: 'undelivered', facts: '{"why":"restored"}' },
    ]);
    db.close();
  });

  test('who was forgotten since the backup is not back, to the byte', async () => {
    const shop = await workedOn();
    expect(readFileSync(shop.backup, 'latin1')).toContain('canary');
    await restore({ ...shop, ...untold, replace: true });
    const store = openSqliteStore(shop.database);
    expect(await store.find('web', 'fay')).toBeNull();
    expect(await store.find('web', 'ann')).not.toBeNull();
    await store.close();
    expect(bytesAround(shop.database)).not.toContain('canary');
  });

  test('whose words were tidied away since is not taken for someone forgotten', async () => {
    const database = join(folder, `${(made += 1)}`, 'ninthpour.sqlite');
    const store = openSqliteStore(database);
    for (const from of ['ann', 'ben']) await exchange(store, from, []);
    const { file: backup } = await makeBackup({ database, folder: join(database, '..', 'backups'), now: noon });
    await store.prune(noon + 1);
    await store.close();
    expect(await restore({ database, backup, ...untold, replace: true })).toMatchObject({ forgotten: 0 });
  });

  test('the former database is kept, whole', async () => {
    const shop = await workedOn();
    const { kept } = await restore({ ...shop, ...untold, replace: true });
    const former = openSqliteStore(kept ?? '');
    expect(await former.find('web', 'gil')).not.toBeNull();
    await former.close();
  });

  test('of an empty place there is nothing kept', async () => {
    const shop = await workedOn();
    for (const ending of ['', '-wal', '-shm']) rmSync(`${shop.database}${ending}`, { force: true });
    expect(await restore({ ...shop, ...untold })).toMatchObject({ kept: null, forgotten: 0, unsent: 2 });
    expect(existsSync(shop.database)).toBe(true);
  });
});

const refused = async (shop: Shop, words: RegExp, more: Partial<RestoreOrder> = {}): Promise<void> => {
  const before = existsSync(shop.database) ? bytesAround(shop.database) : null;
  await expect(restore({ ...shop, ...untold, ...more })).rejects.toThrow(words);
  expect(existsSync(shop.database) ? bytesAround(shop.database) : null).toEqual(before);
  expect(readdirSync(join(shop.database, '..')).filter((name) => name.includes('restor'))).toEqual([]);
};

const settled = async (): Promise<Shop> => {
  const shop = await workedOn();
  const db = new Database(shop.database);
  db.pragma('journal_mode = delete');
  db.close();
  return shop;
};

describe('a restore is refused, and changes nothing,', () => {
  test('over newer data', async () => {
    await refused(
      await settled(),
      /holds newer data \(last written 2026-06-01T13:00:00.000Z, the backup 2026-06-01T12/,
    );
  });

  test('while a service has the database open, even an idle one', async () => {
    const shop = await workedOn();
    const store = openSqliteStore(shop.database);
    await expect(restore({ ...shop, ...untold, replace: true })).rejects.toThrow(/is in use: stop the service first$/);
    expect(await store.find('web', 'gil')).not.toBeNull();
    await store.close();
  });

  test('from no file, or another program’s, or a damaged one, or a newer version’s', async () => {
    const shop = await settled();
    const replace = true;
    await refused({ ...shop, backup: join(folder, 'nowhere') }, /is missing/, { replace });
    const other = join(folder, 'other.sqlite');
    new Database(other).exec('CREATE TABLE coffee (x)').close();
    await refused({ ...shop, backup: other }, /another program/, { replace });
    const half = join(folder, 'half.sqlite');
    writeFileSync(half, readFileSync(shop.backup).subarray(0, 40_000));
    await refused({ ...shop, backup: half }, /damaged/, { replace });
    const db = new Database(shop.backup);
    db.pragma('user_version = 999');
    db.close();
    await refused(shop, /newer version of Ninthpour/, { replace });
  });

  test('over a damaged database unless told, and then the damaged one is kept too', async () => {
    const shop = await settled();
    writeFileSync(shop.database, 'no database at all'.repeat(100));
    await refused(shop, /is damaged\. To put the backup in its place/);
    const { kept } = await restore({ ...shop, ...untold, replace: true });
    expect(readFileSync(kept ?? '', 'utf8')).toMatch(/^no database at all/);
    const store = openSqliteStore(shop.database);
    expect(await store.find('web', 'ann')).not.toBeNull();
    await store.close();
  });
});

test('a rehearsal does it all beside a running service, and leaves no trace', async () => {
  const shop = await workedOn();
  const store = openSqliteStore(shop.database);
  const before = readdirSync(join(shop.database, '..'));
  const rehearsed = await restore({ ...shop, ...untold, rehearse: true });
  expect(rehearsed).toEqual({ unsent: 2, unanswered: 1, forgotten: 1, lastChange: noon, kept: null });
  expect(readdirSync(join(shop.database, '..'))).toEqual(before);
  expect(await store.find('web', 'gil')).not.toBeNull();
  await store.close();
});
