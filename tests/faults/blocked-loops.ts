/** F16: something keeps the event loop for itself; it is seen, and nothing is lost by it. */
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { makeApp } from '../../src/app.ts';
import { systemClock } from '../../src/clock.ts';
import { makeMeasures } from '../../src/operation/measures.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog, kettle, plainSay } from '../app/kettle.ts';
import { fakeChannel } from '../delivery/fake-channel.ts';
import { incoming } from '../store/samples.ts';
import { comesTrue, Tally, unlike, type Fault, type Trial } from './fault.ts';

const blocksMs = [50, 200, 1_000, 3_000] as const;
const timers = 20;

export const blockedLoops: Fault = {
  id: 'F16',
  title: 'an event loop that stands still',
  unit: 'blocks',
  counts: { few: 2, usual: 40, long: 400 },
  seconds: 60,
  async run(trial) {
    const tally = new Tally();
    let latest = 0;
    for (let i = 0; i < trial.count; i++)
      latest = Math.max(latest, await block(blocksMs[i % blocksMs.length]!, i, trial, tally));
    return tally.found({ 'latest after the block, ms': Math.round(latest) });
  },
};

async function block(ms: number, n: number, { folder, dice, slack }: Trial, tally: Tally): Promise<number> {
  const file = join(folder, `${n}.sqlite`);
  const measures = makeMeasures(file, Date.now());
  const channel = fakeChannel();
  const rung: number[] = [];
  const noting = {
    ...channel,
    send: (...given: Parameters<typeof channel.send>) => (rung.push(Date.now()), channel.send(...given)),
  };
  const store = measures.counted(openSqliteStore(file));
  const app = makeApp({
    store,
    step: kettle,
    say: plainSay,
    channels: [noting],
    clock: systemClock,
    log: keptLog(),
    keepDays: 90,
  });
  await app.start();
  const now = Date.now();
  for (let i = 0; i < timers; i++) {
    await channel.take(incoming(`p${i}`, `later ${100 + dice.below(ms)}`, { receivedAt: now }));
  }
  await pause(100);
  Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, ms);
  const freeAt = Date.now();
  await comesTrue(() => rung.length >= timers, 5_000 * slack, 5);
  await pause(20);
  const text = measures.text({ ready: true, vitals: null, lastPollAgeS: {}, oldestUndeliveredS: 0, backupAgeS: null });
  const seenS = Number(/ninthpour_event_loop_delay_seconds\{share="1"\} ([\d.e-]+)/.exec(text)?.[1] ?? 0);
  await app.stop();
  measures.stop();
  const late = Math.max(0, ...rung.map((at) => at - Math.max(freeAt, now + 100 + ms)));
  tally.add(
    unlike('said', rung.length, timers),
    // The recorder itself looks every 10 ms.
    seenS * 1000 < ms - 15 && `a block of ${ms} ms was measured as ${seenS * 1000}`,
    late > 1_000 * slack && `the last was ${late} ms late`,
  );
  return late;
}
