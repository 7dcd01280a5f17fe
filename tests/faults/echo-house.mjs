// The house, built, with a conversation that counts and echoes; driven by lines on stdin, for tests that kill it.
// In:  one incoming a line, as JSON.   Out: {"kept": update id} once durable, {"id", "chat", "text"} for what is sent.
import { createInterface } from 'node:readline';
import { makeApp } from '../../dist/app.js';
import { systemClock } from '../../dist/clock.js';
import { makeLog } from '../../dist/log.js';
import { openSqliteStore } from '../../dist/store/sqlite/store.js';

const [, , file = '', name = 'web'] = process.argv;
const tell = (line) => process.stdout.write(`${JSON.stringify(line)}\n`);

function echo(state, event, { nowMs }) {
  const count = Number(state?.facts.count ?? 0) + 1;
  const text = event.kind === 'text' ? event.text : event.kind;
  const said = { phrases: [{ key: 'echo', values: { count, text } }], choices: [] };
  const effects = [{ do: 'say', saying: said }];
  // Every third message also sets a timer, every fifth is said a little later.
  if (event.kind === 'text' && count % 3 === 0) effects.push({ do: 'wake', name: `w${count}`, atMs: nowMs + 50 });
  if (event.kind === 'text' && count % 5 === 0) said.later = { name: `l${count}`, atMs: nowMs + 30 };
  const next = { flow: 'echo', hash: 'h', place: 'p', facts: { count }, trail: [], parked: [] };
  return { state: next, effects };
}

let record;
const channel = {
  name,
  start: async (given) => void (record = given),
  send: async ({ id, chat, paragraphs: [text] }) => {
    tell({ id, chat, text });
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
await app.start();
tell({ ready: true });
process.once('SIGTERM', () => void app.stop().then(() => process.exit(0)));
for await (const line of createInterface({ input: process.stdin })) {
  const incoming = JSON.parse(line);
  void record(incoming).then(() => tell({ kept: incoming.updateId }));
}
