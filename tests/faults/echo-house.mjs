// The house, built, with a conversation that counts and echoes; driven by lines on stdin, for tests that kill it.
// In:  one incoming a line, as JSON; or {"dieAt"}: see watched-sqlite.mjs, and "said": as soon as a message is out;
//      {"stepMs"}: the clock of the process jumps; {"tell": "memory"}.
// Out: {"kept": update id} once durable, {"id", "chat", "text", "at"} for what is sent, {"memory"}.
import { createInterface } from 'node:readline';
import { makeApp } from '../../dist/app.js';
import { systemClock } from '../../dist/clock.js';
import { makeLog } from '../../dist/log.js';
import { openSqliteStore } from '../../dist/store/sqlite/store.js';

const [, , file = '', name = 'web'] = process.argv;
const tell = (line) => process.stdout.write(`${JSON.stringify(line)}\n`);
const trueNow = Date.now;

function echo(state, event, { nowMs }) {
  const count = Number(state?.facts.count ?? 0) + 1;
  const text = event.kind === 'text' ? event.text : event.kind;
  const said = { phrases: [{ key: 'echo', values: { count, text } }], choices: [] };
  const effects = [{ do: 'say', saying: said }];
  // "at 1790000000000" is said then; "wake 1790000000000" rings then. Else every third message also sets a timer, and
  // every fifth is said a little later.
  const [verb, at] = text.split(' ');
  if (verb === 'at') said.later = { name: `l${count}`, atMs: Number(at) };
  else if (verb === 'wake') effects.push({ do: 'wake', name: `w${count}`, atMs: Number(at) });
  else if (event.kind === 'text' && count % 3 === 0) effects.push({ do: 'wake', name: `w${count}`, atMs: nowMs + 50 });
  else if (event.kind === 'text' && count % 5 === 0) said.later = { name: `l${count}`, atMs: nowMs + 30 };
  const next = { flow: 'echo', hash: 'h', place: 'p', facts: { count }, trail: [], parked: [] };
  return { state: next, effects };
}

let record;
const channel = {
  name,
  start: async (given) => void (record = given),
  send: async ({ id, chat, paragraphs: [text] }, begins) => {
    // Where a repeat would be seen, it is on the disk first that it may have gone.
    if (name === 'telegram') await begins?.();
    tell({ id, chat, text, at: Date.now() });
    if (globalThis.dieAt?.said) process.kill(process.pid, 'SIGKILL');
    return { outcome: 'sent', ref: id };
  },
  stop: async () => {},
};
const app = makeApp({
  store: openSqliteStore(file),
  step: echo,
  say: (_, { values }) => `${values.count} ${values.text}`,
  channels: [channel],
  clock: systemClock,
  log: makeLog('error'),
  keepDays: 90,
});

const memory = () => {
  globalThis.gc?.();
  const { rss, heapUsed } = process.memoryUsage();
  return { rss, heapUsed };
};

function obey(line) {
  if (line.dieAt) globalThis.dieAt = line.dieAt;
  else if (line.stepMs !== undefined) Date.now = () => trueNow() + line.stepMs;
  else if (line.tell === 'memory') tell({ memory: memory() });
  else void record(line).then(() => tell({ kept: line.updateId }));
}

await app.start();
tell({ ready: true });
process.once('SIGTERM', () => void app.stop().then(() => process.exit(0)));
for await (const line of createInterface({ input: process.stdin })) obey(JSON.parse(line));
