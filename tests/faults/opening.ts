/** F5 and F18: what durability stands on is asserted at every open; a migration killed at any statement is whole or not at all. */
import { cpSync, mkdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { projectRoot } from '../../src/project-root.ts';
import { StoreMistake } from '../../src/store/contract.ts';
import { assertPragmas, openDatabase } from '../../src/store/sqlite/database.ts';
import { migrate } from '../../src/store/sqlite/migrate.ts';
import { startService } from '../app/service.ts';
import { sideBySide, Tally, unlike, type Fault } from './fault.ts';
import { opener, watch } from './programs.ts';

const wrongPragmas = ['synchronous = 1', 'secure_delete = 0', 'foreign_keys = 0', 'busy_timeout = 5000'];

export const wrongSettings: Fault = {
  id: 'F5',
  title: 'a database set otherwise than durability asks',
  unit: 'openings',
  counts: { few: 8, usual: 8, long: 8 },
  run({ folder }) {
    const tally = new Tally();
    const file = join(folder, 'shop.sqlite');
    for (const pragma of wrongPragmas) {
      const db = openDatabase(file);
      db.pragma(pragma);
      tally.add(refuses(() => assertPragmas(db)) ? null : `${pragma} is not refused`);
      db.close();
    }
    // Left so by another program, it is put right by the next open.
    for (const journal of ['delete', 'truncate', 'persist', 'wal']) {
      const other = new Database(file);
      other.pragma(`journal_mode = ${journal}`);
      other.close();
      const db = openDatabase(file);
      const found = ['journal_mode', 'synchronous'].map((name) => db.pragma(name, { simple: true }));
      tally.add(unlike('settings', found, ['wal', 2]));
      db.close();
    }
    return Promise.resolve(tally.found());
  },
};

function refuses(open: () => void): boolean {
  try {
    open();
    return false;
  } catch (error) {
    return error instanceof StoreMistake;
  }
}

export const killedMigrations: Fault = {
  id: 'F18',
  title: 'a migration killed before each of its statements, and a start after a downgrade',
  unit: 'deaths and starts',
  // Both from nothing and from the first schema with rows in it; `few` and `long` are statements from each.
  counts: { few: 6, usual: 1_000, long: 1_000 },
  async run({ count, folder }) {
    const tally = new Tally();
    const wanted = schemaOf(fresh(folder, 'wanted'));
    const starts = [fresh(folder, 'nothing', false), firstSchema(folder)];
    for (const [start, file] of starts.entries()) {
      let last = count;
      const deaths = await sideBySide(count, 2, async (n) => {
        if (n >= last) return pastTheLast;
        const wrong = await dieAt(file, { n, folder, every: count < 100 ? 9 : 1, start, wanted });
        if (wrong === pastTheLast) last = Math.min(last, n);
        return wrong;
      });
      for (const wrong of deaths) if (wrong !== pastTheLast) tally.add(wrong);
    }
    tally.add(await newerIsRefused(fresh(folder, 'newer')));
    return tally.found();
  },
};

const pastTheLast = 'past the last';

function fresh(folder: string, name: string, made = true): string {
  const file = join(folder, name, 'shop.sqlite');
  mkdirSync(join(folder, name), { recursive: true });
  if (made) openDatabase(file).close();
  return file;
}

/** A database as the first version left it, with a message of each kind under way. */
function firstSchema(folder: string): string {
  const file = fresh(folder, 'first', false);
  const only = join(folder, 'only-first');
  mkdirSync(only);
  cpSync(join(projectRoot, 'src/store/sqlite/migrations/001-ground.sql'), join(only, '001-ground.sql'));
  const db = new Database(file);
  db.pragma('journal_mode = wal');
  migrate(db, new URL(`file://${only}/`));
  for (let i = 1; i <= 20; i++) {
    db.prepare('INSERT INTO person (created_at) VALUES (?)').run(i);
    db.prepare(
      `INSERT INTO outbox (tag, person, channel, chat, saying, priority, due, next_at, status)
       VALUES (?, ?, 'web', 'c', '{}', 0, 1, 1, ?)`,
    ).run(`t${i}`, i, ['waiting', 'sent', 'gave-up'][i % 3]);
  }
  db.close();
  return file;
}

interface Death {
  readonly n: number;
  readonly every: number;
  readonly folder: string;
  readonly start: number;
  readonly wanted: unknown;
}

/** What is wrong after a death before the n-th statement of opening, and a whole opening after it. */
async function dieAt(from: string, { n, every, folder, start, wanted }: Death): Promise<string | null> {
  const file = join(folder, `${start}-${n}`, 'shop.sqlite');
  cpSync(join(from, '..'), join(file, '..'), { recursive: true });
  const { signal, code } = await startService({
    script: opener,
    node: ['--import', watch],
    args: [file, String(n * every)],
  }).ended;
  if (signal !== 'SIGKILL') return code === 0 ? pastTheLast : `ended with ${code}`;
  const between = new Database(file);
  const version = between.pragma('user_version', { simple: true }) as number;
  const whole = between.pragma('integrity_check', { simple: true });
  const tables = between
    .prepare(`SELECT count(*) FROM sqlite_schema WHERE name IN ('inbox', 'question')`)
    .pluck()
    .get();
  between.close();
  const db = openDatabase(file);
  const rows = db.prepare(`SELECT count(*) FROM outbox`).pluck().get();
  db.close();
  const wrong = [
    unlike('integrity', whole, 'ok'),
    unlike('tables of its version', tables, Math.min(version, 2)),
    unlike('schema', schemaOf(file), wanted),
    unlike('rows', rows, start === 0 ? 0 : 20),
  ].filter((one) => one !== null);
  return wrong.length === 0 ? null : `before statement ${n * every}: ${wrong.join('; ')}`;
}

function schemaOf(file: string): unknown {
  const db = new Database(file, { readonly: true });
  const found = db.prepare('SELECT type, name FROM sqlite_schema ORDER BY type, name').all();
  const version = db.pragma('user_version', { simple: true });
  db.close();
  return { found, version };
}

async function newerIsRefused(file: string): Promise<string | null> {
  const db = openDatabase(file);
  db.pragma('user_version = 999');
  db.close();
  const before = readFileSync(file);
  const { code, told } = await startService({
    env: { NINTHPOUR_FOLDER: join(file, '..') },
    script: opener,
    args: [file],
  }).ended;
  const same = readFileSync(file).equals(before);
  return code === 1 && /newer version of Ninthpour/.test(told) && same
    ? null
    : 'a newer database is not refused, or changed';
}
