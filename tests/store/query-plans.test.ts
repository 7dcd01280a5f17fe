/** What a statement looks through stays as small as what it is about, however much is kept: told by SQLite's own query plans. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Database, Statement } from 'better-sqlite3';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { makeSqliteStore } from '../../src/store/sqlite/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-plans-'));
let db: Database;
const statements: string[] = [];
beforeAll(() => {
  db = openDatabase(join(folder, 'shop.sqlite'));
  const prepare = db.prepare.bind(db) as (sql: string) => Statement;
  db.prepare = ((sql: string) => {
    statements.push(sql);
    return prepare(sql);
  }) as typeof db.prepare;
  makeSqliteStore(db);
  db.prepare = prepare as typeof db.prepare;
});
afterAll(() => {
  db.close();
  rmSync(folder, { recursive: true });
});

/** These grow with every customer, message or booking. */
const growing = ['person', 'handle', 'inbox', 'conversation', 'memory', 'wake', 'outbox', 'booking', 'reminder'];
/** Indexes that hold only what is not done yet. */
const small = /^(inbox_waiting|outbox_(waiting|retry|sending|held|until)|booking_offered|reminder_due)$/;

function planOf(sql: string): readonly string[] {
  const rows = db.prepare(`EXPLAIN QUERY PLAN ${sql}`);
  const names = [...sql.matchAll(/@(\w+)/g)].map(([, name]) => [name, null]);
  const given = names.length > 0 ? [Object.fromEntries(names)] : Array.from(sql.matchAll(/\?/g), () => null);
  return (rows.all(...given) as { detail: string }[]).map(({ detail }) => detail);
}

/** The tables an alias stands for, in this statement. */
const tableOf = (sql: string, alias: string): string =>
  new RegExp(`(?:FROM|JOIN) (\\w+) (?:AS )?${alias}\\b`).exec(sql)?.[1] ?? alias;

/** The whole of a growing table, or of a chat's past. */
function isWide(sql: string, detail: string): boolean {
  const [, walked = '', index = ''] = /^SCAN (\w+)(?: USING (?:COVERING )?INDEX (\w+))?/.exec(detail) ?? [];
  const names = walked === '' ? [] : [walked, tableOf(sql, walked)];
  if (names.some((name) => growing.includes(name)) && !small.test(index)) return true;
  return /USING INDEX outbox_turn \(channel=\? AND chat=\?\)/.test(detail);
}

/** Where the first young row ends the walk, or someone is lost to us: neither happens at every message. */
const seldom = [/^DELETE FROM (inbox|outbox)/, /SET status = 'held'/, /^DELETE FROM question/];

describe('a statement of the store', () => {
  test('never looks through all that was ever kept', () => {
    const wide = statements.filter((sql) => planOf(sql).some((detail) => isWide(sql, detail)));
    expect(wide.filter((sql) => !seldom.some((one) => one.test(sql.trim())))).toEqual([]);
    expect(statements.length).toBeGreaterThan(100);
  });

  test.each([
    'SELECT * FROM inbox WHERE what = ?',
    `SELECT 1 FROM outbox WHERE channel = 'c' AND chat = 'c' AND ref = 'r'`,
  ])('that would is found: %s', (sql) => {
    expect(planOf(sql).some((detail) => isWide(sql, detail))).toBe(true);
  });
});
