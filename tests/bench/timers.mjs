// How late calls to pour are: N brews under way on one chat each, their calls spread over a span of seconds, with so many
// commits a second of other people beside. Late by the house's own clock when the message is handed to the channel, and as
// a client on the other side of a loopback socket sees it. Usage: node tests/bench/timers.mjs [brews] [seconds] [commits a second]
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp } from '../../dist/app.js';
import { systemClock } from '../../dist/clock.js';
import { makeLog } from '../../dist/log.js';
import { openSqliteStore } from '../../dist/store/sqlite/store.js';

const brews = Number(process.argv[2] ?? 1_000);
const spanMs = Number(process.argv[3] ?? 30) * 1_000;
const perSecond = Number(process.argv[4] ?? 300);

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-timers-'));
const store = openSqliteStore(join(folder, 'shop.sqlite'));
let commits = 0;
const counted = {
  ...store,
  async commit(commit) {
    commits++;
    return store.commit(commit);
  },
};

// The far end: notes when each call arrives.
const own = [];
const seen = [];
let far = '';
const server = createServer((socket) =>
  socket.setNoDelay(true).on('data', (chunk) => {
    const now = Date.now();
    far += chunk;
    const lines = far.split('\n');
    far = lines.pop();
    for (const due of lines) seen.push(now - Number(due));
  }),
);
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const near = connect(server.address().port, '127.0.0.1').setNoDelay(true);

// A brew's hold as the flow sets it: a later saying at its end. Everybody else's words are plain commits.
const said = (more) => ({ do: 'say', saying: { phrases: [{ key: 'k', values: {} }], choices: [], ...more } });
const state = { flow: 'f', hash: 'h', place: 'p', facts: {}, trail: [], parked: [] };
const step = (_, event) => {
  const at = event.kind === 'text' && event.text.startsWith('hold') ? Number(event.text.slice(5)) : null;
  return { state, effects: at === null ? [] : [said({ later: { name: 'f/pour', atMs: at }, slot: `f/${at}` })] };
};
const dues = new Map();
let record;
const channel = {
  name: 'web',
  start: async (given) => void (record = given),
  async send({ id, chat }) {
    const due = dues.get(chat);
    own.push(Date.now() - due);
    near.write(`${due}\n`);
    return { outcome: 'sent', ref: id };
  },
  stop: async () => {},
};
const app = makeApp({
  store: counted,
  step,
  say: () => 'Pour off now.',
  channels: [channel],
  clock: systemClock,
  log: makeLog('warn'),
  keepDays: 90,
});
await app.start();

let updates = 0;
const tell = (chat, text) =>
  record({
    channel: 'web',
    updateId: `u${updates++}`,
    from: chat,
    chat,
    receivedAt: Date.now(),
    what: { kind: 'text', text },
  });

// Every hold is begun and durable before the first is due.
const settingUpMs = 3_000 + brews * 4;
const first = Date.now() + settingUpMs;
for (let from = 0; from < brews; from += 256) {
  await Promise.all(
    Array.from({ length: Math.min(256, brews - from) }, (_, i) => {
      const n = from + i;
      const due = Math.round(first + (spanMs * n) / brews);
      dues.set(`b${n}`, due);
      return tell(`b${n}`, `hold ${due}`);
    }),
  );
}
await app.settled();
if (Date.now() > first) throw new Error('setting up took longer than was allowed for');
await new Promise((resolve) => setTimeout(resolve, first - Date.now() - 1_000));

const beside = { begun: Date.now(), commits };
const neighbours = setInterval(() => {
  const owed = Math.floor(((Date.now() - beside.begun) / 1000) * perSecond) - beside.told;
  for (let n = 0; n < owed; n++) void tell(`n${(beside.told + n) % 500}`, 'x');
  beside.told += Math.max(0, owed);
}, 20);
beside.told = 0;
await new Promise((resolve) => setTimeout(resolve, first + spanMs + 1_000 - Date.now()));
clearInterval(neighbours);
await app.settled();
const seconds = (Date.now() - beside.begun) / 1000;
const rate = Math.round((commits - beside.commits) / seconds);
await new Promise((resolve) => setTimeout(resolve, 200));
await app.stop();
near.destroy();
server.close();
rmSync(folder, { recursive: true });

function told(lateness) {
  lateness.sort((a, b) => a - b);
  const at = (share) => lateness[Math.min(lateness.length - 1, Math.floor(lateness.length * share))];
  return { calls: lateness.length, earliestMs: lateness[0], medianMs: at(0.5), p99Ms: at(0.99), worstMs: at(1) };
}
const line = { brews, overSeconds: spanMs / 1000, commitsPerSecondBeside: rate, own: told(own), client: told(seen) };
process.stdout.write(`${JSON.stringify(line)}\n`);
if (own.length !== brews || seen.length !== brews) process.exitCode = 1;
