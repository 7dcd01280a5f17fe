/** Copies of the whole database, made while the house works: a copy counts once it is checked, and the old ones stay till then. */
import {
  closeSync,
  existsSync,
  fdatasyncSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
} from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import { StoreMistake } from '../contract.ts';
import { explained } from './database.ts';

export interface Backup {
  readonly file: string;
  /** When it was begun: it holds what was committed before, and nothing after. */
  readonly at: Instant;
}

export interface BackupOrder {
  readonly database: string;
  /** Where the copies lie. */
  readonly folder: string;
  readonly now: Instant;
}

const dayMs = 24 * 60 * 60_000;
/** What is half made and so old was left by a process that died. */
const abandonedAfterMs = 60 * 60_000;
/** Off the service's event loop, so it may wait for a lock longer than the service does. */
const patienceMs = 5_000;
const pagesAtOnce = 100;

/** Throws StoreMistake; then nothing has changed but a half-made file that is cleared away. */
export async function makeBackup({ database, folder, now }: BackupOrder): Promise<Backup> {
  const backup = { file: join(folder, nameOf(now)), at: now };
  const partial = `${backup.file}.part-${process.pid}`;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    dropAbandoned(folder, now);
    await copyDatabase(database, partial);
    renameSync(partial, backup.file);
    syncFolder(folder);
    return backup;
  } catch (error) {
    if (existsSync(partial)) rmSync(partial);
    throw explained(folder, error);
  }
}

/** Writes a checked, synced, self-contained copy; `to` must not be there yet. Throws StoreMistake. */
export async function copyDatabase(from: string, to: string): Promise<void> {
  const source = openToRead(from);
  try {
    // Held until all is copied: without it each commit of the service would make the copy begin anew.
    source.exec('BEGIN');
    const made = stampOf(source);
    // Created first, so that nobody else may read it at any time.
    closeSync(openSync(to, 'wx', 0o600));
    await copyGently(source, to);
    makeSelfContained(to);
    checkCopy(to, made);
    syncFile(to);
  } finally {
    source.close();
  }
}

/** Synced bit by bit: at once, the disk would hold up a commit of the service for a tenth of a second and more. */
async function copyGently(source: Database.Database, to: string): Promise<void> {
  const handle = openSync(to, 'r+');
  try {
    const progress = (): number => {
      fdatasyncSync(handle);
      return pagesAtOnce;
    };
    await source.backup(to, { progress });
  } finally {
    closeSync(handle);
  }
}

function openToRead(file: string): Database.Database {
  if (!existsSync(file)) throw new StoreMistake(`${file} is missing: there is nothing to copy`);
  try {
    return new Database(file, { readonly: true, fileMustExist: true, timeout: patienceMs });
  } catch (error) {
    throw explained(file, error);
  }
}

interface Stamp {
  readonly owner: unknown;
  readonly version: unknown;
}

function stampOf(db: Database.Database): Stamp {
  try {
    return {
      owner: db.pragma('application_id', { simple: true }),
      version: db.pragma('user_version', { simple: true }),
    };
  } catch (error) {
    throw explained(db.name, error);
  }
}

/** A copy says of itself that it has a write-ahead log, but none comes with it. */
function makeSelfContained(file: string): void {
  const db = new Database(file);
  try {
    db.pragma('journal_mode = delete');
  } finally {
    db.close();
  }
}

function checkCopy(file: string, made: Stamp): void {
  const db = new Database(file, { readonly: true, fileMustExist: true });
  try {
    const found = stampOf(db);
    const verdict = db.pragma('integrity_check(1)', { simple: true });
    if (verdict === 'ok' && found.owner === made.owner && found.version === made.version) return;
  } finally {
    db.close();
  }
  throw new StoreMistake(`the copy did not pass its check, so it is thrown away; the database itself may be damaged`);
}

/** The newest first. What is half made is not among them. */
export function listBackups(folder: string): readonly Backup[] {
  if (!existsSync(folder)) return [];
  const found = readdirSync(folder).flatMap((name): readonly Backup[] => {
    const at = timeOf(name);
    return at === null ? [] : [{ file: join(folder, name), at }];
  });
  return found.toSorted((a, b) => b.at - a.at);
}

/** Drops those made before the last `keepDays` days; the newest stays however old. Returns how many went. */
export function dropOldBackups(folder: string, keepDays: number, now: Instant): number {
  const old = listBackups(folder)
    .slice(1)
    .filter(({ at }) => at < now - keepDays * dayMs);
  for (const { file } of old) rmSync(file, { force: true });
  return old.length;
}

function dropAbandoned(folder: string, now: Instant): void {
  for (const name of readdirSync(folder).filter((one) => /\.sqlite\.part-\d+/.test(one))) {
    const path = join(folder, name);
    if (statSync(path).mtimeMs < now - abandonedAfterMs) rmSync(path, { force: true });
  }
}

/** "20261125T085913Z", the basic form of ISO 8601: it sorts by time and suits every file system. */
export function compactTime(at: Instant): string {
  return new Date(at).toISOString().replace(/[-:]|\.\d+/g, '');
}

const nameOf = (at: Instant): string => `ninthpour-${compactTime(at)}.sqlite`;

function timeOf(name: string): Instant | null {
  const parts = /^ninthpour-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z\.sqlite$/.exec(name);
  if (!parts) return null;
  const [year = 0, month = 0, ...rest] = parts.slice(1).map(Number);
  return Date.UTC(year, month - 1, ...rest);
}

/** What was written is on the disk when this returns. */
export function syncFile(file: string): void {
  sync(file, 'r+');
}

/** The names in it are on the disk when this returns; Windows cannot be asked for that. */
export function syncFolder(folder: string): void {
  if (process.platform !== 'win32') sync(folder, 'r');
}

function sync(path: string, flags: string): void {
  const handle = openSync(path, flags);
  try {
    fsyncSync(handle);
  } finally {
    closeSync(handle);
  }
}
