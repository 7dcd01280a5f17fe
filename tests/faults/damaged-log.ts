/** F4: a write-ahead log damaged by a power cut, and a database whose checkpoint was cut off half-way. */
import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase, pageBytes } from '../../src/store/sqlite/database.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { commitOf, incoming, loaded, say } from '../store/samples.ts';
import type { Dice } from './counts.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

const frameHeader = 24;
const walHeader = 32;
const exchanges = 40;

/** A database as a power cut finds it: nothing folded back, all of it in the log. */
interface Written {
  readonly database: Buffer;
  readonly log: Buffer;
  /** The database with all of the log folded back. */
  readonly folded: Buffer;
  /** The log's length when the n-th transaction was promised; a message is two: kept, then handled. */
  readonly promised: readonly number[];
}

export const damagedLog: Fault = {
  id: 'F4',
  title: 'damaged write-ahead logs and half checkpoints',
  unit: 'databases',
  counts: { few: 120, usual: 3_000, long: 40_000 },
  seconds: 60,
  untried:
    'a page of the database itself gone bad at rest: no start looks for it, the check of the daily backup finds it',
  async run(trial) {
    const written = await write(trial.folder);
    const tally = new Tally();
    const found = new Set<number>();
    for (let i = 0; i < trial.count; i++) {
      if (i % 6 === 5) halfCheckpoint(written, trial, tally);
      else found.add(damage(written, { ...trial, n: i }, tally));
    }
    // Were the damage without effect, all would always be found.
    if (trial.count > 100) tally.wrong(found.size <= 10 && `only ${found.size} different beginnings were found`);
    return tally.found({ 'different beginnings found': found.size });
  },
};

async function write(folder: string): Promise<Written> {
  const whole = join(folder, 'whole.sqlite');
  const store = openSqliteStore(whole);
  const promised: number[] = [];
  const promise = (): void => void promised.push(statSync(`${whole}-wal`).size);
  for (let i = 0; i < exchanges; i++) {
    const { person } = await store.record(incoming(`p${i}`, `text ${i}`));
    promise();
    await store.commit(commitOf(await loaded(store, person ?? 0), [say(`answer ${i}`)]));
    promise();
  }
  const [database, log] = [readFileSync(whole), readFileSync(`${whole}-wal`)];
  await store.close();
  if (promised.at(-1) !== log.length) throw new Error('the log is not as long as this trial supposes');
  return { database, log, folded: readFileSync(whole), promised };
}

/** Damages the copy from `from` on; nothing before it is touched. */
const damages: readonly ((log: Buffer, from: number, dice: Dice) => Buffer)[] = [
  (log, from) => log.subarray(0, from),
  (log, from, { below }) => log.subarray(0, from + below(log.length - from)),
  (log, from, { below }) => {
    log[from + below(log.length - from)]! ^= 1 << below(8);
    return log;
  },
  (log, from, { below }) => {
    const sector = from + Math.floor(below(log.length - from) / 512) * 512;
    log.fill(0, sector, Math.min(log.length, sector + 512));
    return log;
  },
  (log, from, { below }) => {
    const start = from + below(log.length - from);
    const end = Math.min(log.length, start + below(3 * pageBytes));
    for (let i = start; i < end; i++) log[i] = below(256);
    return log;
  },
];

/** Half the cases at the start of a frame, half anywhere behind the header. */
function placeOf(log: Buffer, { below }: Dice, n: number): number {
  const frames = (log.length - walHeader) / (pageBytes + frameHeader);
  return n % 2 === 0
    ? walHeader + below(frames) * (pageBytes + frameHeader)
    : walHeader + below(log.length - walHeader - 1);
}

/** How many transactions are found again. */
function damage(
  { database, log, promised }: Written,
  { folder, dice, n }: Trial & { n: number },
  tally: Tally,
): number {
  const from = placeOf(log, dice, n);
  const damaged = damages[n % damages.length]!(Buffer.from(log), from, dice);
  const { kept, wrong } = transactionsIn(folder, database, damaged);
  const lost = promised.filter((size) => size <= from).length - kept;
  tally.add(lost > 0 && `${lost} promised transactions before the damage are lost`, wrong);
  return kept;
}

/** Any of the pages are folded back already, one of them only in part; the log is whole. */
function halfCheckpoint({ database, log, folded, promised }: Written, { folder, dice }: Trial, tally: Tally): void {
  const half = Buffer.alloc(folded.length);
  database.copy(half);
  const pages = folded.length / pageBytes;
  const share = dice.roll();
  for (let page = 0; page < pages; page++) {
    if (dice.roll() < share) folded.copy(half, page * pageBytes, page * pageBytes, (page + 1) * pageBytes);
  }
  const torn = dice.below(pages) * pageBytes;
  folded.copy(half, torn, torn, torn + 512 * (1 + dice.below(pageBytes / 512 - 1)));
  // A file that was to grow may have grown or not.
  const length = dice.roll() < 0.5 ? half.length : Math.max(database.length, torn + pageBytes);
  const { kept, wrong } = transactionsIn(folder, half.subarray(0, length), log);
  tally.add(unlike('transactions', kept, promised.length), wrong);
}

/** How many transactions are found again, and what shows that they are not exactly the first ones, whole. */
function transactionsIn(
  folder: string,
  database: Buffer,
  log: Buffer,
): { readonly kept: number; readonly wrong: string | null } {
  const damaged = join(folder, 'damaged.sqlite');
  writeFileSync(damaged, database);
  writeFileSync(`${damaged}-wal`, log);
  rmSync(`${damaged}-shm`, { force: true });
  const db = openDatabase(damaged);
  const count = (sql: string): number => db.prepare<[], number>(sql).pluck().get() ?? 0;
  const kept = count('SELECT count(*) FROM inbox');
  const handled = count(`SELECT count(*) FROM inbox WHERE status = 'handled'`);
  const found = {
    integrity: db.pragma('integrity_check', { simple: true }) as string,
    unhandled: kept - handled === 0 || kept - handled === 1,
    last: count('SELECT coalesce(max(seq), 0) FROM inbox'),
    people: count('SELECT count(*) FROM person'),
    conversations: count('SELECT count(*) FROM conversation'),
    owed: count('SELECT count(*) FROM outbox'),
  };
  db.close();
  const wanted = { integrity: 'ok', unhandled: true, last: kept, people: kept, conversations: handled, owed: handled };
  return { kept: kept + handled, wrong: unlike('what is found', found, wanted) };
}
