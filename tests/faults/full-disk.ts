/** F6: the disk is full, page by page; and where a small disk can be had, a real one. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { makeSqliteStore, openSqliteStore } from '../../src/store/sqlite/store.ts';
import type { Commit, Store } from '../../src/store/contract.ts';
import { commitOf, incoming, loaded, say } from '../store/samples.ts';
import type { Dice } from './counts.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

export const fullDisk: Fault = {
  id: 'F6',
  title: 'a full disk',
  unit: 'writes without room',
  counts: { few: 20, usual: 200, long: 2_000 },
  async run(trial) {
    const tally = new Tally();
    const refusals = await pageByPage(trial, tally);
    const how = process.platform === 'linux' && process.getuid?.() === 0 ? await onSmallDisk(trial, tally) : 'no';
    return tally.found({ 'refused for want of a page': refusals, 'a real disk filled': how });
  },
};

/** SQLite's own limit of pages, raised one by one; every write is refused or whole. */
async function pageByPage({ count, dice, folder }: Trial, tally: Tally): Promise<number> {
  const db = openDatabase(join(folder, 'pages.sqlite'));
  const store = makeSqliteStore(db);
  const pages = (): number => db.pragma('page_count', { simple: true }) as number;
  let refusals = 0;
  let limit = pages();
  for (let i = 0; i < count; i++) {
    db.pragma(`max_page_count = ${limit}`);
    const { outcome, wrong } = await exchangeWithin(store, i, dice);
    if (outcome === 'refused') {
      refusals += 1;
      limit += 1;
    }
    tally.add(wrong, i % 20 === 0 && unlike('integrity', db.pragma('integrity_check', { simple: true }), 'ok'));
  }
  db.pragma('max_page_count = 1000000');
  const { outcome } = await exchangeWithin(store, count, dice);
  tally.wrong(unlike('once there is room', outcome, 'done'));
  await store.close();
  return refusals;
}

interface Exchange {
  readonly outcome: 'done' | 'refused';
  readonly wrong: string | null;
}

/** A message is kept or refused; then it is handled or refused, and waits as it was. */
async function exchangeWithin(store: Store, i: number, { below }: Dice): Promise<Exchange> {
  const arrival = incoming(`p${i}`, `text ${i} ${'x'.repeat(below(2_000))}`);
  try {
    await store.record(arrival);
  } catch (error) {
    return { outcome: 'refused', wrong: notFull(error) };
  }
  const person = (await store.find('web', `p${i}`)) ?? 0;
  const turn = await loaded(store, person);
  const answers = Array.from({ length: 1 + below(3) }, () => say('x'.repeat(below(4_000))));
  const commit: Commit = commitOf(turn, answers);
  try {
    await store.commit(commit);
    return { outcome: 'done', wrong: null };
  } catch (error) {
    const after = await store.load(person, turn.receivedAt ?? 0);
    return { outcome: 'refused', wrong: notFull(error) ?? unlike('what waits', after, turn) };
  }
}

function notFull(error: unknown): string | null {
  const { code = 'no code' } = error as { code?: string };
  return ['SQLITE_FULL', 'SQLITE_IOERR_WRITE', 'SQLITE_IOERR_SHMSIZE', 'SQLITE_IOERR_FSYNC'].includes(code)
    ? null
    : `refused with ${code}`;
}

/** A disk in memory of 12 MB beside which something else takes the room, and gives it back. */
async function onSmallDisk({ folder, dice }: Trial, tally: Tally): Promise<string> {
  const disk = join(folder, 'disk');
  mkdirSync(disk);
  if (spawnSync('mount', ['-t', 'tmpfs', '-o', 'size=12m', 'tmpfs', disk]).status !== 0)
    return 'no, none can be mounted here';
  try {
    const store = openSqliteStore(join(disk, 'shop.sqlite'));
    let refusals = 0;
    for (let i = 0; i < 60; i++) {
      if (i % 20 === 10) fill(disk);
      if (i % 20 === 0) makeRoom(disk);
      const { outcome, wrong } = await exchangeWithin(store, i, dice);
      if (outcome === 'refused') refusals += 1;
      tally.add(wrong, i % 20 < 10 && unlike('with room', outcome, 'done'));
    }
    await store.close();
    makeRoom(disk);
    const db = openDatabase(join(disk, 'shop.sqlite'));
    tally.wrong(unlike('integrity', db.pragma('integrity_check', { simple: true }), 'ok'));
    tally.wrong(refusals === 0 && 'the disk was never full');
    db.close();
    return `yes, ${refusals} of 60 writes refused`;
  } finally {
    spawnSync('umount', [disk]);
  }
}

function makeRoom(disk: string): void {
  for (const name of readdirSync(disk)) if (name.startsWith('other')) rmSync(join(disk, name));
}

function fill(disk: string): void {
  for (let size = 1 << 20; size >= 512; size /= 2) {
    try {
      for (let n = 0; n < 64; n++) writeFileSync(join(disk, `other-${size}-${n}`), Buffer.alloc(size));
    } catch {
      // As full as this size can make it.
    }
  }
}
