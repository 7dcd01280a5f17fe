/** Homes with a database of some size, and commands run in them, to their end or cut off. */
import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { projectRoot } from '../../src/project-root.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService, type Ended } from '../app/service.ts';

export const commandOf = (name: string): string => join(projectRoot, 'dist', 'commands', `${name}.js`);

export function runIn(name: string, home: string, args: readonly string[] = []): Promise<Ended> {
  return startService({ script: commandOf(name), args, env: { NINTHPOUR_FOLDER: home } }).ended;
}

/** Of 8 kB each. */
export function addPeople(home: string, people: number): void {
  const db = openDatabase(join(home, 'ninthpour.sqlite'));
  const add = db.prepare('INSERT INTO person (created_at) VALUES (?)');
  const fill = db.prepare(`INSERT INTO memory (person, name, value) VALUES (?, 'leaf', ?)`);
  db.transaction(() => {
    for (let i = 0; i < people; i++) fill.run(add.run(0).lastInsertRowid, `"${'x'.repeat(8_000)}"`);
  })();
  db.close();
}

/** A home with a database of so many people. */
export function makeHome(home: string, people: number): string {
  mkdirSync(home, { recursive: true });
  addPeople(home, people);
  return home;
}

export interface PeopleFound {
  readonly integrity: unknown;
  readonly people: number;
}

export function peopleIn(file: string): PeopleFound {
  const db = openDatabase(file);
  const people = db.prepare<[], number>('SELECT count(*) FROM person').pluck().get() ?? 0;
  const found = { integrity: db.pragma('integrity_check', { simple: true }), people };
  db.close();
  return found;
}

export interface Cut {
  readonly args?: readonly string[];
  /** Part of the name of the half-made file. */
  readonly partial: string;
  readonly folder: string;
  readonly afterMs: number;
}

/** Kills the command so long after it began to write, if it is not done by then. */
export async function cutOff(name: string, home: string, { args = [], partial, folder, afterMs }: Cut): Promise<void> {
  const { PATH = '' } = process.env;
  const before = new Set(readdirSync(folder));
  const child = spawn(process.execPath, [commandOf(name), ...args], { env: { PATH, NINTHPOUR_FOLDER: home } });
  const ended = new Promise<void>((resolve) => child.once('close', () => resolve()));
  const begun = (): boolean => readdirSync(folder).some((one) => one.includes(partial) && !before.has(one));
  while (child.exitCode === null && !begun()) await pause(2);
  await Promise.race([pause(afterMs), ended]);
  child.kill('SIGKILL');
  await ended;
}
