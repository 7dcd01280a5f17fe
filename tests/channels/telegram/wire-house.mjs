// The house, built, behind the real Telegram channel, with a conversation that echoes; for tests that kill it between two steps.
// In: {"dieAt"} a line: of watched-sqlite.mjs, or { call, when: "before" | "written" | "answered" | "read" }.
import http from 'node:http';
import { createInterface } from 'node:readline';
import { makeApp } from '../../../dist/app.js';
import { makeTelegramChannel } from '../../../dist/channels/telegram/telegram.js';
import { systemClock } from '../../../dist/clock.js';
import { makeLog } from '../../../dist/log.js';
import { openSqliteStore } from '../../../dist/store/sqlite/store.js';

const [, , file = '', token = '', apiRoot = ''] = process.argv;
const die = () => process.kill(process.pid, 'SIGKILL');

/** Whether this is the moment of the call it is to die at. */
function reach(path, when) {
  const at = globalThis.dieAt;
  if (at?.when === when && path.endsWith(`/${at.call}`)) die();
}

const { request } = http;
http.request = (options, ...rest) => {
  const path = options.path ?? '';
  reach(path, 'before');
  const asking = request(options, ...rest);
  asking.once('finish', () => reach(path, 'written'));
  asking.once('response', (answer) => {
    reach(path, 'answered');
    answer.once('end', () => reach(path, 'read'));
  });
  return asking;
};

/** A text is echoed, "edit …" in the place of the one before; a tap is told. */
function echo(_state, event) {
  const text = event.kind === 'text' ? event.text : event.kind;
  const from = { flow: 'echo', place: 'p' };
  const choices = [{ id: 'again', label: { key: 'button', values: {} }, gives: {}, from }];
  const slot = text.startsWith('edit') ? { slot: 'board' } : {};
  const saying = { phrases: [{ key: 'echo', values: { text } }], choices, ...slot };
  const next = { flow: 'echo', hash: 'h', place: 'p', facts: {}, trail: [], parked: [] };
  return { state: next, effects: [{ do: 'say', saying }] };
}

const words = { name: 'x', description: 'x', about: 'x', commands: [] };
const log = makeLog('silent');
const channel = makeTelegramChannel({
  token,
  apiRoot,
  mode: { kind: 'polling' },
  log,
  now: () => Date.now(),
  profiles: { en: words, 'zh-Hant': words, 'zh-Hans': words },
  pollSeconds: 5,
});
const app = makeApp({
  store: openSqliteStore(file),
  step: echo,
  say: (_, { key, values }) => (key === 'echo' ? `said ${values.text}` : 'again'),
  channels: [channel],
  clock: systemClock,
  log,
  keepDays: 90,
});
await app.start();
process.once('SIGTERM', () => void app.stop().then(() => process.exit(0)));
process.stdout.write('ready\n');
for await (const line of createInterface({ input: process.stdin })) {
  globalThis.dieAt = JSON.parse(line).dieAt;
  process.stdout.write('armed\n');
}
