import { mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, test } from 'vitest';
import { StoreMistake } from '../../src/store/contract.ts';
import { dropOldBackups, listBackups, makeBackup } from '../../src/store/sqlite/backup.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { noon } from './samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-backup-'));
afterAll(() => rmSync(folder, { recursive: true }));
let made = 0;

/** A house with a database and a place for its copies. */
function house(): { readonly database: string; readonly folder: string } {
  const home = join(folder, `${(made += 1)}`);
  return { database: join(home, 'ninthpour.sqlite'), folder: join(home, 'backups') };
}

/** Writes numbered rows of some size: so many in one commit. */
function writer(db: Database.Database): (rows: number) => void {
  const add = db.prepare('INSERT INTO person (created_at) VALUES (?)');
  const fill = db.prepare(`INSERT INTO memory (person, name, value) VALUES (?, 'leaf', ?)`);
  const some = db.transaction((rows: number) => {
    for (let i = 0; i < rows; i++) {
      fill.run(add.run(noon).lastInsertRowid, JSON.stringify('x'.repeat(2_000)));
    }
  });
  return (rows) => some.immediate(rows);
}

const peopleIn = (file: string): readonly number[] => {
  const db = new Database(file, { readonly: true });
  const ids = db.prepare<[], number>('SELECT id FROM person ORDER BY id').pluck().all();
  const fills = db.prepare('SELECT count(*) FROM memory').pluck().get();
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  expect(fills).toBe(ids.length);
  db.close();
  return ids;
};

describe('a backup', () => {
  test('made while others write is what was committed when it began', async () => {
    const place = house();
    const db = openDatabase(place.database);
    const write = writer(db);
    write(2_000);
    let writing = true;
    let written = 0;
    const goOn = (): void => {
      if (!writing) return;
      write(1);
      written += 1;
      setImmediate(goOn);
    };
    const before = peopleIn(place.database).length;
    const copying = makeBackup({ ...place, now: noon });
    setImmediate(goOn);
    const { file, at } = await copying;
    writing = false;
    expect(written).toBeGreaterThan(10);
    expect(at).toBe(noon);
    expect(peopleIn(file)).toEqual(Array.from({ length: before }, (_, i) => i + 1));
    db.close();
  });

  test('is one file that only its owner may read, and nothing half made stays beside it', async () => {
    const place = house();
    openDatabase(place.database).close();
    const { file } = await makeBackup({ ...place, now: noon });
    expect(readdirSync(place.folder)).toEqual(['ninthpour-20260601T120000Z.sqlite']);
    expect(statSync(file).mode & 0o077).toBe(0);
    expect(listBackups(place.folder)).toEqual([{ file, at: noon }]);
  });

  test('of a damaged database is thrown away, and the one before it stays', async () => {
    const place = house();
    const db = openDatabase(place.database);
    writer(db)(500);
    db.close();
    const good = await makeBackup({ ...place, now: noon });
    const bytes = readFileSync(place.database);
    bytes.fill(0x5a, Math.floor(bytes.length / 2), Math.floor(bytes.length / 2) + 20_000);
    writeFileSync(place.database, bytes);
    await expect(makeBackup({ ...place, now: noon + 60_000 })).rejects.toThrow(StoreMistake);
    expect(listBackups(place.folder)).toEqual([good]);
    expect(readdirSync(place.folder)).toHaveLength(1);
    expect(peopleIn(good.file)).toHaveLength(500);
  });

  test('of nothing, or to where none can be written, is refused in words', async () => {
    const place = house();
    await expect(makeBackup({ ...house(), now: noon })).rejects.toThrow(/ninthpour\.sqlite is missing/);
    openDatabase(place.database).close();
    writeFileSync(place.folder, 'a file where a folder should be');
    await expect(makeBackup({ ...place, now: noon })).rejects.toThrow(/cannot be opened/);
  });
});

const filled = (names: readonly string[]): string => {
  const { folder: place } = house();
  mkdirSync(place, { recursive: true });
  for (const name of names) writeFileSync(join(place, name), '');
  return place;
};

const names = (place: string): readonly string[] => readdirSync(place).toSorted();

describe('the kept backups', () => {
  const day = 24 * 60 * 60_000;

  test('are told from other files, and the newest is told first', () => {
    const place = filled([
      'ninthpour-20260530T235959Z.sqlite',
      'ninthpour-20260601T000000Z.sqlite',
      'ninthpour-20260602T000000Z.sqlite.part-7',
      'ninthpour.sqlite',
      'notes.txt',
    ]);
    expect(listBackups(place).map(({ at }) => new Date(at).toISOString())).toEqual([
      '2026-06-01T00:00:00.000Z',
      '2026-05-30T23:59:59.000Z',
    ]);
    expect(listBackups(join(place, 'nowhere'))).toEqual([]);
  });

  test('go after their days, but never the last', () => {
    const place = filled(['ninthpour-20260501T120000Z.sqlite', 'ninthpour-20260520T120000Z.sqlite', 'notes.txt']);
    expect(dropOldBackups(place, 14, noon)).toBe(1);
    expect(names(place)).toEqual(['ninthpour-20260520T120000Z.sqlite', 'notes.txt']);
    expect(dropOldBackups(place, 14, noon + 400 * day)).toBe(0);
  });

  test('are rid of what a killed process left half made', async () => {
    const place = house();
    openDatabase(place.database).close();
    mkdirSync(place.folder);
    writeFileSync(join(place.folder, 'ninthpour-20260531T120000Z.sqlite.part-7'), '');
    await makeBackup({ ...place, now: Date.now() });
    expect(names(place.folder)).toHaveLength(2);
    await makeBackup({ ...place, now: Date.now() + 2 * 60 * 60_000 });
    expect(names(place.folder).filter((name) => name.includes('part'))).toEqual([]);
  });
});
