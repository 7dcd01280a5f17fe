// From a text coming in to its answer committed, with a sync at every commit and the real flows: n people, one after
// another, then as many side by side as given. Times are of the store's clock on the wall, in milliseconds.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contentOf, makeApp, sayIn, stepIn } from '../../dist/app.js';
import { systemClock } from '../../dist/clock.js';
import { readConfig } from '../../dist/config.js';
import { makeLog } from '../../dist/log.js';
import { openSqliteStore } from '../../dist/store/sqlite/store.js';

const people = Number(process.argv[2] ?? 1_000);
const sideBySide = Number(process.argv[3] ?? 64);
const texts = [
  'tieguanyin in a 110 ml gaiwan',
  '碧螺春，250毫升玻璃壺',
  'green tea, mug',
  'why?',
  'actually 200 ml',
  '蓋碗 120 ml 東方美人',
];
const content = contentOf(readConfig({}));

async function measure(atOnce) {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-turnaround-'));
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const committed = new Map();
  const watched = {
    ...store,
    async commit(commit) {
      const outcome = await store.commit(commit);
      if (outcome === 'done') committed.get(commit.address.chat)?.();
      return outcome;
    },
  };
  let record;
  const channel = {
    name: 'web',
    start: async (given) => void (record = given),
    send: async ({ id }) => ({ outcome: 'sent', ref: id }),
    stop: async () => {},
  };
  const parts = { store: watched, step: stepIn(content), say: sayIn(content), channels: [channel] };
  const app = makeApp({ ...parts, clock: systemClock, log: makeLog('warn'), keepDays: 90 });
  await app.start();

  const times = [];
  const talk = async (i) => {
    const chat = `p${i}`;
    const answered = new Promise((resolve) => committed.set(chat, resolve));
    const what = { kind: 'text', text: texts[i % texts.length] };
    const began = performance.now();
    await record({ channel: 'web', updateId: `u${i}`, from: chat, chat, receivedAt: Date.now(), what });
    await answered;
    times.push(performance.now() - began);
    committed.delete(chat);
  };
  const began = performance.now();
  let next = 0;
  const worker = async () => {
    while (next < people) await talk(next++);
  };
  await Promise.all(Array.from({ length: atOnce }, worker));
  const seconds = (performance.now() - began) / 1000;
  await app.settled();
  await app.stop();
  rmSync(folder, { recursive: true });
  times.sort((a, b) => a - b);
  const at = (share) => Number(times[Math.min(times.length - 1, Math.floor(times.length * share))].toFixed(2));
  return {
    people,
    atOnce,
    perSecond: Math.round(people / seconds),
    medianMs: at(0.5),
    p99Ms: at(0.99),
    worstMs: at(1),
  };
}

await measure(16);
for (const atOnce of [1, sideBySide]) process.stdout.write(`${JSON.stringify(await measure(atOnce))}\n`);
