/** Opens the file, asserts what durability stands on, and says in plain words why it cannot be used. */
import { mkdirSync, statSync } from 'node:fs';
import { dirname } from 'node:path';
import Database from 'better-sqlite3';
import { StoreMistake } from '../contract.ts';
import { migrate } from './migrate.ts';

/**
 * How long one statement may wait for another process, and with it the event loop and everybody on it; longer waits are
 * left to the caller, who tries again.
 */
const busyTimeoutMs = 40;
/** Nobody waits for us yet while the file is opened; who shares it with a busy house may need some tries. */
const openingTimeoutMs = 2_000;

/** What must hold on every open. A later open of a WAL file shows synchronous 1 unless told otherwise. */
const asserted = {
  journal_mode: 'wal',
  synchronous: 2,
  secure_delete: 1,
  foreign_keys: 1,
  busy_timeout: busyTimeoutMs,
} as const;

/** Of a new file. A commit copies each page it touches to the log whole, and a turn's rows are shorter than this. */
export const pageBytes = 2048;

export function openDatabase(file: string): Database.Database {
  let db: Database.Database | undefined;
  try {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    db = new Database(file, { timeout: openingTimeoutMs });
    db.pragma(`page_size = ${pageBytes}`);
    for (const [name, value] of Object.entries(asserted)) db.pragma(`${name} = ${value}`);
    assertPragmas(db);
    db.pragma(`busy_timeout = ${openingTimeoutMs}`);
    migrate(db);
    assertWritable(db);
    db.pragma(`busy_timeout = ${busyTimeoutMs}`);
    return db;
  } catch (error) {
    db?.close();
    throw explained(file, error);
  }
}

/** A log is left behind by who did not close the file; the last to close it takes it away. */
export function wasLeftOpen(file: string): boolean {
  try {
    return statSync(`${file}-wal`).size > 0;
  } catch {
    // None there; or the file cannot be opened either, which is told by who opens it.
    return false;
  }
}

/** Throws StoreMistake when a setting that durability stands on does not hold. */
export function assertPragmas(db: Database.Database): void {
  for (const [name, value] of Object.entries(asserted)) {
    const found = db.pragma(name, { simple: true });
    if (found !== value) throw new StoreMistake(`${db.name}: ${name} is ${String(found)}, but must be ${value}`);
  }
}

/** What `work` commits is written to the log and not waited for: it goes to the disk with the next commit that is. */
export function unsynced<T>(db: Database.Database, work: () => T): T {
  db.exec('PRAGMA synchronous = 1');
  try {
    return work();
  } finally {
    db.exec(`PRAGMA synchronous = ${asserted.synchronous}`);
  }
}

/** A lock or a read-only file shows only when something is written. */
function assertWritable(db: Database.Database): void {
  db.exec('BEGIN IMMEDIATE');
  const version = db.pragma('user_version', { simple: true }) as number;
  db.pragma(`user_version = ${version}`);
  db.exec('COMMIT');
}

export function isBusy(error: unknown): boolean {
  return error instanceof Database.SqliteError && error.code.startsWith('SQLITE_BUSY');
}

const reasons: readonly (readonly [code: RegExp, reason: string])[] = [
  [/^SQLITE_BUSY|^SQLITE_LOCKED/, 'is locked by another program; close it and start again'],
  [
    /^SQLITE_READONLY|^EACCES|^EPERM|^EROFS/,
    'cannot be written: check its owner and permissions, and those of its folder',
  ],
  [/^SQLITE_CANTOPEN|^ENOTDIR|^EEXIST|^EISDIR/, 'cannot be opened: check that the folder exists and may be written'],
  [/^SQLITE_NOTADB|^SQLITE_CORRUPT/, 'is damaged or not a database; restore the last backup'],
  [/^SQLITE_FULL|^ENOSPC/, 'cannot grow: the disk is full'],
  [/^SQLITE_IOERR/, 'cannot be read or written: the disk reports an error'],
];

/** The same error in words for whoever runs the shop; anything unknown stays as it is. */
export function explained(file: string, error: unknown): unknown {
  const { code } = error as { code?: string };
  if (code === undefined) return error;
  const reason = reasons.find(([pattern]) => pattern.test(code))?.[1];
  return reason === undefined ? error : new StoreMistake(`${file} ${reason} (${code})`, { cause: error });
}
