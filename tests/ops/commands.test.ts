/** The commands as they are typed, in processes of their own, killed too. */
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { projectRoot } from '../../src/config.ts';
import { listBackups } from '../../src/store/sqlite/backup.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService, type Ended } from '../app/service.ts';
import { countOf, dice } from '../faults/counts.ts';

const root = mkdtempSync(join(tmpdir(), 'tea-ops-'));
afterAll(() => rmSync(root, { recursive: true }));
let made = 0;

const script = (name: string): string => join(projectRoot, 'dist', 'commands', `${name}.js`);

function run(name: string, home: string, args: readonly string[] = []): Promise<Ended> {
  return startService({ script: script(name), args, env: { NINTHPOUR_FOLDER: home } }).ended;
}

const peopleIn = (file: string): unknown => {
  const db = new Database(file);
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  const count = db.prepare('SELECT count(*) FROM person').pluck().get();
  db.close();
  return count;
};

function addPeople(home: string, people: number): void {
  const db = openDatabase(join(home, 'ninthpour.sqlite'));
  const add = db.prepare('INSERT INTO person (created_at) VALUES (?)');
  const fill = db.prepare(`INSERT INTO memory (person, name, value) VALUES (?, 'leaf', ?)`);
  db.transaction(() => {
    for (let i = 0; i < people; i++) fill.run(add.run(0).lastInsertRowid, `"${'x'.repeat(8_000)}"`);
  })();
  db.close();
}

/** A home with a database of so many people, 8 kB each. */
function homeOf(people: number): string {
  const home = join(root, `${(made += 1)}`);
  mkdirSync(home);
  addPeople(home, people);
  return home;
}

interface Cut {
  readonly args?: readonly string[];
  /** Part of the name of the half-made file. */
  readonly partial: string;
  readonly folder: string;
  readonly afterMs: number;
}

/** Kills the command so long after it began to write, if it is not done by then. */
async function cutOff(name: string, home: string, { args = [], partial, folder, afterMs }: Cut): Promise<void> {
  const { PATH = '' } = process.env;
  const before = new Set(readdirSync(folder));
  const child = spawn(process.execPath, [script(name), ...args], { env: { PATH, NINTHPOUR_FOLDER: home } });
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  const begun = (): boolean => readdirSync(folder).some((one) => one.includes(partial) && !before.has(one));
  while (child.exitCode === null && !begun()) await pause(2);
  await Promise.race([pause(afterMs), ended]);
  child.kill('SIGKILL');
  await ended;
}

test('a backup is made, listed, rehearsed, and put back once the service is stopped', async () => {
  const home = join(root, `${(made += 1)}`);
  const service = startService({ env: { NINTHPOUR_FOLDER: home } });
  await service.ready;
  const backup = await run('backup', home);
  expect(backup).toMatchObject({ code: 0, told: '' });
  const file = backup.out.trim();
  expect((await run('restore', home)).out).toContain(file);
  expect(await run('restore', home, [file, '--rehearse'])).toMatchObject({ code: 0, told: '' });
  expect(await run('restore', home, [file])).toMatchObject({
    code: 1,
    told: expect.stringMatching(/stop the service/),
  });
  service.child.kill('SIGTERM');
  await service.ended;
  expect(await run('restore', home, [file])).toMatchObject({ code: 0, told: '' });
  const again = startService({ env: { NINTHPOUR_FOLDER: home } });
  await again.ready;
  again.child.kill('SIGTERM');
  expect((await again.ended).code).toBe(0);
});

test('a backup killed at any instant leaves the one before it, and no false one', async () => {
  const home = homeOf(1_000);
  const backups = join(home, 'backups');
  expect((await run('backup', home)).code).toBe(0);
  const [first] = listBackups(backups);
  const { roll } = dice();
  for (let kill = 0; kill < countOf('BACKUP_KILLS', 4); kill++) {
    await cutOff('backup', home, { partial: '.part-', folder: backups, afterMs: roll() * 150 });
    const found = listBackups(backups);
    expect(found.at(-1)).toEqual(first);
    for (const { file } of found) expect(peopleIn(file)).toBe(1_000);
  }
});

test('a restore killed at any instant leaves the former database or the restored one', async () => {
  const home = homeOf(1_000);
  const database = join(home, 'ninthpour.sqlite');
  const file = (await run('backup', home)).out.trim();
  const { roll } = dice();
  for (let kill = 0; kill < countOf('RESTORE_KILLS', 4); kill++) {
    addPeople(home, 1_500 - Number(peopleIn(database)));
    await cutOff('restore', home, {
      args: [file, '--replace'],
      partial: '.restoring-',
      folder: home,
      afterMs: roll() * 250,
    });
    expect([1_000, 1_500]).toContain(peopleIn(database));
    openDatabase(database).close();
  }
  expect(await run('restore', home, [file, '--replace'])).toMatchObject({ code: 0 });
  expect(peopleIn(database)).toBe(1_000);
  expect(readdirSync(home).filter((name) => name.includes('.restoring-'))).toEqual([]);
});
