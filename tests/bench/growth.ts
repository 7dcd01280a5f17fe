/** What grows must not slow down: reminders due at once, conversations kept, past events at the start; and what it takes of memory. */
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, mkdirSync, mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Incoming } from '../../src/messages.ts';
import { priorities, type Commit, type Owed, type Store, type Turn } from '../../src/store/contract.ts';
import { listBackups } from '../../src/store/sqlite/backup.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { fillOwed, fillPeople } from './filled.ts';
import type { Figure, Row, Size } from './figure.ts';
import { inTurns, median } from './rounds.ts';

const flat = { atMost: 1.2 };
const channels = ['web'] as const;

async function inFolder<Result>(work: (folder: string) => Promise<Result>): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-bench-'));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** CPU and waiting for the disk are one to whoever waits; milliseconds of each piece of work. */
async function each(count: number, work: (n: number) => Promise<unknown>): Promise<readonly number[]> {
  const times: number[] = [];
  for (let n = 0; n < count; n++) {
    const began = performance.now();
    await work(n);
    times.push(performance.now() - began);
  }
  return times;
}

const claimOf = (now: number) => ({ channels, now, limit: 64, held: new Set<string>(), bulkRoom: new Map() });

/** Takes 64 and settles them, as delivery does. */
async function payOut(store: Store): Promise<number> {
  const now = Date.now();
  const owed = await store.claim(claimOf(now));
  await Promise.all(owed.map(({ id }: Owed) => store.settle(id, { kind: 'sent', ref: id }, now)));
  return owed.length;
}

/** Microseconds a reminder, at the beginning of so many due at once. */
async function reminderCost(file: string, folder: string, batches: number): Promise<number> {
  const copy = join(folder, 'measured.sqlite');
  copyFileSync(file, copy);
  const store = openSqliteStore(copy);
  const times = await each(batches, async () => {
    if ((await payOut(store)) !== 64) throw new Error('fewer reminders were due than thought');
  });
  await store.close();
  return (median(times) * 1000) / 64;
}

async function reminders({ quick }: Size): Promise<readonly Figure[]> {
  const sizes = quick ? [128, 256] : [1_000, 10_000, 100_000];
  return inFolder(async (folder) => {
    const files = sizes.map((count) => {
      const file = join(folder, `due-${count}.sqlite`);
      fillPeople(file, count);
      fillOwed(file, { count, dueFrom: Date.now() - count, everyMs: 0, priority: priorities.indexOf('reminder') });
      return file;
    });
    const costs = await inTurns(
      quick ? 1 : 9,
      Object.fromEntries(files.map((file) => [file, () => reminderCost(file, folder, quick ? 2 : 15)])),
    );
    return growing(
      'a reminder of',
      'due at once',
      sizes,
      files.map((file) => median(costs[file] ?? [])),
    );
  });
}

/** The least against each larger; the first one is what stands beside. */
function growing(
  what: string,
  how: string,
  sizes: readonly number[],
  microseconds: readonly number[],
): readonly Figure[] {
  const first = microseconds[0] ?? Number.NaN;
  return microseconds.map((ours, i) => ({
    what: `${what} ${sizes[i]?.toLocaleString('en')} ${how}`,
    unit: 'µs',
    ours,
    ...(i === 0
      ? {}
      : { beside: { who: `of ${sizes[0]?.toLocaleString('en')}`, value: first }, ratio: ours / first, reach: flat }),
  }));
}

/** One update of anybody, as the house does it: recorded, handled and its answer taken in one transaction, and settled. */
async function update(store: Store, person: number, n: number): Promise<void> {
  const now = Date.now();
  const chat = `p${person}`;
  const what = { kind: 'text', text: 'rather strong' } as const;
  const incoming: Incoming = { channel: 'web', updateId: `measured-${n}`, from: chat, chat, receivedAt: now, what };
  const { taken } = await store.record(incoming, { now, decide: (turn) => answered(turn, now), room: 'any' });
  if (!taken) throw new Error('this person was not answered');
  await store.settle(taken.id, { kind: 'sent', ref: taken.id }, now);
}

const saying = { phrases: [{ key: 'closing', values: {} }], choices: [] };

function answered({ person, version, state, address, event }: Turn, now: number): Commit {
  if (event.kind !== 'text' || !state) throw new Error('this person has no conversation');
  return {
    person,
    version,
    event: { kind: 'incoming', seq: event.seq },
    outcome: 'handled',
    state,
    language: 'en',
    address,
    changes: [{ do: 'say', saying, due: now, priority: 'reply' }],
    now,
  };
}

/** 64 people at a time, picked all over: microseconds an update. */
async function updateCost(file: string, people: number, batches: number): Promise<number> {
  const store = openSqliteStore(file);
  let n = 0;
  const stride = Math.max(1, Math.floor(people / 1.618));
  const times = await each(batches, () =>
    Promise.all(Array.from({ length: 64 }, () => update(store, (n * stride) % people, Date.now() * 1000 + n++))),
  );
  await store.close();
  return (median(times) * 1000) / 64;
}

async function conversations({ quick }: Size): Promise<readonly Figure[]> {
  const sizes = quick ? [128, 256] : [1_000, 100_000, 1_000_000];
  return inFolder(async (folder) => {
    const files = sizes.map((count) => join(folder, `people-${count}.sqlite`));
    files.forEach((file, i) => fillPeople(file, sizes[i] ?? 0));
    const costs = await inTurns(
      quick ? 1 : 9,
      Object.fromEntries(files.map((file, i) => [file, () => updateCost(file, sizes[i] ?? 0, quick ? 1 : 15)])),
    );
    const figures = growing(
      'an update with',
      'conversations kept',
      sizes,
      files.map((file) => median(costs[file] ?? [])),
    );
    const [largest = '', people = 0] = [files.at(-1), sizes.at(-1)];
    const kilobytes = statSync(largest).size / people / 1024;
    return [
      ...figures,
      { what: 'kept on disk, a person and one exchange', unit: 'kB', ours: kilobytes },
      await readyAfter(largest, folder, { events: people, starts: quick ? 1 : 5 }),
      ...(await safeAfter(largest, folder, people)),
    ];
  });
}

/** A few people who have written and been answered so often. */
async function pasts({ quick }: Size): Promise<readonly Figure[]> {
  const [people, sizes] = quick ? [64, [1, 2]] : [256, [10, 100, 2_000]];
  return inFolder(async (folder) => {
    const files = sizes.map((exchanges) => join(folder, `past-${exchanges}.sqlite`));
    files.forEach((file, i) => fillPeople(file, people, sizes[i]));
    const costs = await inTurns(
      quick ? 1 : 9,
      Object.fromEntries(files.map((file) => [file, () => updateCost(file, people, quick ? 1 : 15)])),
    );
    return growing(
      'an update in a chat of',
      'answers',
      sizes,
      files.map((file) => median(costs[file] ?? [])),
    );
  });
}

/** A module of the built program. */
const built = (name: string): string => fileURLToPath(new URL(`../../../${name}.js`, import.meta.url));

/** From starting the built service to its one line, with so many past events in its database. */
async function readyAfter(
  file: string,
  folder: string,
  { events, starts }: { readonly events: number; readonly starts: number },
): Promise<Figure> {
  copyFileSync(file, join(folder, 'ninthpour.sqlite'));
  const env = { PATH: process.env['PATH'], NINTHPOUR_PORT: '0', NINTHPOUR_FOLDER: folder, NINTHPOUR_BACKUP_HOURS: '0' };
  const times: number[] = [];
  for (let n = 0; n < starts; n++) {
    const began = performance.now();
    const child = spawn(process.execPath, [built('main')], { env, stdio: ['ignore', 'pipe', 'ignore'] });
    await once(child.stdout, 'data');
    times.push(performance.now() - began);
    child.kill('SIGTERM');
    await once(child, 'exit');
  }
  return {
    what: `ready after ${events.toLocaleString('en')} past events`,
    unit: 'ms',
    ours: median(times),
    reach: { atMost: 1_500 },
  };
}

/** A backup made and checked, and the newest one brought back, each by its command. */
async function safeAfter(file: string, folder: string, events: number): Promise<readonly Figure[]> {
  const house = join(folder, 'house');
  mkdirSync(house);
  copyFileSync(file, join(house, 'ninthpour.sqlite'));
  const env = { PATH: process.env['PATH'], NINTHPOUR_FOLDER: house };
  const timeOf = async (command: string, ...args: readonly string[]): Promise<number> => {
    const began = performance.now();
    const child = spawn(process.execPath, [built(`commands/${command}`), ...args], { env, stdio: 'ignore' });
    const [code] = (await once(child, 'exit')) as [number];
    if (code !== 0) throw new Error(`${command} ended with ${code}`);
    return performance.now() - began;
  };
  const many = `${events.toLocaleString('en')} past events`;
  const backedUp = await timeOf('backup');
  const [newest] = listBackups(join(house, 'backups'));
  const restored = await timeOf('restore', newest?.file ?? '', '--replace');
  return [
    { what: `backed up and checked, ${many}`, unit: 'ms', ours: backedUp },
    { what: `restored, ${many}`, unit: 'ms', ours: restored },
  ];
}

export const growth: Row = {
  name: 'growth',
  about: 'the same cost however much there is',
  measure: async (size) => [...(await reminders(size)), ...(await pasts(size)), ...(await conversations(size))],
};
