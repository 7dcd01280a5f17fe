/** Puts a backup in the database's place, so that nothing is said again that may have been said since it was made. */
import { copyFileSync, existsSync, linkSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import Database from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import { StoreMistake } from '../contract.ts';
import { compactTime, copyDatabase, syncFile, syncFolder } from './backup.ts';
import { explained, isBusy, openDatabase } from './database.ts';
import { makePrivacy } from './privacy.ts';

export interface RestoreOrder {
  readonly backup: string;
  readonly database: string;
  readonly now: Instant;
  /** Told to take the place of newer data, or of a damaged file. */
  readonly replace: boolean;
  /** All but the last step; the database stays as it is, and may be in use. */
  readonly rehearse: boolean;
}

export interface Restored extends Settled {
  /** When the backup was last written to; null when it is empty. */
  readonly lastChange: Instant | null;
  /** Where the former database is kept; null when there was none. */
  readonly kept: string | null;
}

/** What was under way when the backup was made. */
interface Settled {
  /** Messages that were due by now: perhaps sent since, so never sent. */
  readonly unsent: number;
  /** What people wrote and no answer was found for yet. */
  readonly unanswered: number;
  /** People who were forgotten since, and are again. */
  readonly forgotten: number;
}

type Present =
  | { readonly kind: 'none' | 'damaged' }
  | { readonly kind: 'whole'; readonly db: Database.Database; readonly lastChange: Instant | null };

/** Throws StoreMistake; then the database is as it was. */
export async function restore(order: RestoreOrder): Promise<Restored> {
  const { backup, database, now, rehearse } = order;
  const fresh = `${database}.restoring-${process.pid}`;
  mkdirSync(dirname(database), { recursive: true, mode: 0o700 });
  const present = openPresent(database, rehearse);
  try {
    if (!rehearse) dropAbandoned(database);
    await copyDatabase(backup, fresh);
    const { lastChange, ...settled } = settle(fresh, present, now);
    if (rehearse) return { lastChange, ...settled, kept: null };
    refuseUntold(order, present, lastChange);
    return { lastChange, ...settled, kept: putInPlace(fresh, database, { present, now }) };
  } catch (error) {
    throw explained(backup, error);
  } finally {
    if (present.kind === 'whole') present.db.close();
    for (const ending of ['', '-wal', '-shm', '-journal']) rmSync(`${fresh}${ending}`, { force: true });
  }
}

function openPresent(file: string, rehearse: boolean): Present {
  if (!existsSync(file)) return { kind: 'none' };
  const db = new Database(file, { readonly: rehearse });
  try {
    if (!rehearse) takeForOurselves(db);
    return { kind: 'whole', db, lastChange: lastChangeOf(db) };
  } catch (error) {
    db.close();
    if (isBusy(error)) throw new StoreMistake(`${file} is in use: stop the service first`, { cause: error });
    const { code = '' } = error as { code?: string };
    if (/^SQLITE_(NOTADB|CORRUPT)/.test(code)) return { kind: 'damaged' };
    throw explained(file, error);
  }
}

/**
 * Whoever has a file with a write-ahead log open, however idle, keeps others from ending that log: so this succeeds only
 * when we are alone, and nobody else comes in until we close. It also leaves the file whole in itself.
 */
function takeForOurselves(db: Database.Database): void {
  db.pragma('busy_timeout = 250');
  db.pragma('locking_mode = exclusive');
  db.pragma('journal_mode = delete');
  db.exec('BEGIN EXCLUSIVE; COMMIT');
}

/** These columns are in every schema. */
function lastChangeOf(db: Database.Database): Instant | null {
  if (!hasInbox(db)) return null;
  const latest = `SELECT max(at) FROM (SELECT max(received_at) AS at FROM inbox
    UNION ALL SELECT max(updated_at) FROM conversation
    UNION ALL SELECT max(claimed_at) FROM outbox UNION ALL SELECT max(settled_at) FROM outbox)`;
  return db.prepare(latest).pluck().get() as Instant | null;
}

const hasInbox = (db: Database.Database): boolean =>
  db.prepare(`SELECT 1 FROM sqlite_schema WHERE name = 'inbox'`).get() !== undefined;

/** We are alone here: what a killed restore left is nobody's. */
function dropAbandoned(database: string): void {
  const [folder, start] = [dirname(database), `${basename(database)}.restoring-`];
  for (const name of readdirSync(folder)) if (name.startsWith(start)) rmSync(join(folder, name));
}

function refuseUntold({ database, replace }: RestoreOrder, present: Present, lastChange: Instant | null): void {
  if (replace || present.kind === 'none') return;
  const how = 'stop the service and add --replace; the present file is kept beside it';
  if (present.kind !== 'whole')
    throw new StoreMistake(`${database} is damaged. To put the backup in its place, ${how}`);
  if ((present.lastChange ?? 0) <= (lastChange ?? 0)) return;
  const ages = `last written ${shown(present.lastChange)}, the backup ${shown(lastChange)}`;
  throw new StoreMistake(`${database} holds newer data (${ages}). To go back nevertheless, ${how}`);
}

const shown = (at: Instant | null): string => (at === null ? 'never' : new Date(at).toISOString());

/** Brings the copy to this version's schema, and closes what was open in it. */
function settle(fresh: string, present: Present, now: Instant): Settled & { readonly lastChange: Instant | null } {
  const db = openDatabase(fresh);
  try {
    const lastChange = lastChangeOf(db);
    const settled = db.transaction(() => ({ forgotten: forgetAgain(db, present), ...closeOld(db, now) })).immediate();
    db.pragma('journal_mode = delete');
    return { lastChange, ...settled };
  } finally {
    db.close();
    syncFile(fresh);
  }
}

/** What waits for a later instant was not due, so not sent; it stays. */
function closeOld(db: Database.Database, now: Instant): Omit<Settled, 'forgotten'> {
  const old = `status IN ('waiting', 'held', 'sending') AND due <= @now`;
  db.prepare(`DELETE FROM outbox WHERE person IS NULL AND ${old}`).run({ now });
  db.prepare(
    `INSERT INTO task (person, task, facts, created_at)
     SELECT DISTINCT person, 'undelivered', json_object('why', 'restored'), @now FROM outbox WHERE ${old}`,
  ).run({ now });
  const unsent = db.prepare(`UPDATE outbox SET status = 'gave-up', why = 'restored', settled_at = @now WHERE ${old}`);
  const unanswered = db.prepare(`UPDATE inbox SET status = 'failed' WHERE status = 'waiting'`);
  db.prepare('DELETE FROM wake WHERE at <= ?').run(now);
  // Until an offer is told its seat is kept for nobody else.
  db.prepare(
    `UPDATE reminder SET state = 'withdrawn' WHERE state = 'planned' AND due_at <= ? AND purpose <> 'offer'`,
  ).run(now);
  return { unsent: unsent.run({ now }).changes, unanswered: unanswered.run().changes };
}

/** An update that the present database keeps without its person was that person's, who was then forgotten. */
function forgetAgain(db: Database.Database, present: Present): number {
  if (present.kind !== 'whole' || !hasInbox(present.db)) return 0;
  const kept = present.db.prepare<[], Buffer>('SELECT update_key FROM inbox WHERE person IS NULL').pluck().iterate();
  const keys = new Set(Array.from(kept, (key) => key.toString('hex')));
  const all = db.prepare<[], { person: number; key: Buffer }>(
    'SELECT person, update_key AS key FROM inbox WHERE person IS NOT NULL',
  );
  const people = new Set<number>();
  for (const { person, key } of keys.size > 0 ? all.iterate() : [])
    if (keys.has(key.toString('hex'))) people.add(person);
  const privacy = makePrivacy(db);
  for (const person of people) privacy.forget(person);
  return people.size;
}

/** At every instant the name holds the former database or the new one, whole. Returns where the former is kept. */
function putInPlace(
  fresh: string,
  database: string,
  { present, now }: { readonly present: Present; readonly now: Instant },
): string | null {
  const kept = present.kind === 'none' ? null : freeName(`${database}.before-restore-${compactTime(now)}`);
  if (kept !== null) linkSync(database, kept);
  // A log left by a former life would be played into the new file.
  if (kept !== null && existsSync(`${database}-wal`)) copyFileSync(`${database}-wal`, `${kept}-wal`);
  for (const ending of ['-wal', '-shm']) rmSync(`${database}${ending}`, { force: true });
  renameSync(fresh, database);
  syncFolder(dirname(database));
  return kept;
}

/** One that was killed within the same second may have taken the name already. */
function freeName(name: string): string {
  let free = name;
  for (let n = 2; existsSync(free); n++) free = `${name}-${n}`;
  return free;
}
