/** F7: another program keeps the database locked while people write. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { commitOf, incoming, loaded, say } from '../store/samples.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

const heldMs = [100, 400, 1_200, 5_100] as const;
/** One try waits 40 ms; what is beyond is the machine's. */
const longestBlockMs = 250;

export const foreignLocks: Fault = {
  id: 'F7',
  title: 'a lock held by another program',
  unit: 'locks',
  counts: { few: 2, usual: 24, long: 400 },
  seconds: 45,
  untried: 'locks beyond a minute: what waits is then refused, and comes again from its channel',
  async run(trial) {
    const tally = new Tally();
    const blocks: number[] = [];
    for (let i = 0; i < trial.count; i++) blocks.push(await underLock(heldMs[i % heldMs.length]!, i, trial, tally));
    return tally.found({ 'longest block of the event loop, ms': Math.round(Math.max(...blocks)) });
  },
};

const holder = `
  import Database from 'better-sqlite3';
  const db = new Database(process.argv[1]);
  db.exec('BEGIN IMMEDIATE');
  process.stdout.write('held');
  setTimeout(() => db.exec('COMMIT'), Number(process.argv[2]));`;

async function underLock(ms: number, n: number, { folder, slack }: Trial, tally: Tally): Promise<number> {
  const file = join(folder, `${n}.sqlite`);
  const store = openSqliteStore(file);
  const { person } = await store.record(incoming('ann', 'before'));
  const turn = await loaded(store, person ?? 0);
  const other = spawn(process.execPath, ['--input-type=module', '-e', holder, file, String(ms)], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await new Promise((resolve) => other.stdout.once('data', resolve));
  const pulse = watchLoop();
  const outcomes = await Promise.all([
    ...Array.from({ length: 10 }, (_, i) =>
      store.record(incoming(`p${i}`, 'under lock')).then(({ outcome }) => outcome),
    ),
    store.commit(commitOf(turn, [say('answer')])),
  ]);
  const longest = pulse.end();
  const wanted = [...Array.from({ length: 10 }, () => 'new'), 'done'];
  const blocked = longest > longestBlockMs * slack && `the event loop stood still for ${Math.round(longest)} ms`;
  tally.add(unlike('outcomes', outcomes, wanted), blocked);
  await store.close();
  other.kill();
  return longest;
}

function watchLoop(): { readonly end: () => number } {
  let longest = 0;
  let last = performance.now();
  const pulse = setInterval(() => {
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }, 5);
  return {
    end() {
      clearInterval(pulse);
      return longest;
    },
  };
}
