// How exactly a hold is called while another tab lies over the page: seconds hidden, as given (600 when left out).
// The browser is driven over a pipe of our own, because drivers for tests make every tab believe that it is looked at.
// It needs a Chromium that has windows, at /usr/bin/chromium or where CHROMIUM_PATH says. Usage: node tests/bench/hidden-tab.mjs [seconds]
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { contentOf } from '../../dist/own-content.js';
import { makeWebChannel } from '../../dist/channels/web/web-channel.js';
import { readConfig } from '../../dist/config.js';
import { makeLog } from '../../dist/log.js';

const hiddenS = Number(process.argv[2] ?? 600);
const { words } = contentOf(readConfig({}));
const said = [];
let chat = '';
const web = makeWebChannel({
  host: '127.0.0.1',
  port: 0,
  clock: { now: () => Date.now() },
  log: makeLog('silent'),
  passed: () => Promise.resolve(said.map((message) => ({ said: message }))),
  lineOf: (updateId) => updateId.slice(-20),
  label: () => Promise.resolve(null),
  pageWords: (language) =>
    Object.fromEntries(
      words
        .keys()
        .filter((key) => key.startsWith('page-'))
        .map((key) => [key, words.say(language, { key, values: {} })]),
    ),
  marks: { add: async () => {}, has: async () => false },
  secureCookies: false,
  publicOrigin: null,
});
await web.start((incoming) => {
  chat = incoming.chat;
  return Promise.resolve('new');
});

const profile = mkdtempSync(join(tmpdir(), 'ninthpour-hidden-'));
const flags = ['--headless=new', '--no-sandbox', '--disable-gpu', '--no-first-run', '--remote-debugging-pipe'];
const browser = spawn(
  process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  [...flags, `--user-data-dir=${profile}`, 'about:blank'],
  { stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'] },
);
const answers = new Map();
let rest = '';
browser.stdio[4].setEncoding('utf8').on('data', (chunk) => {
  const whole = (rest + chunk).split('\0');
  rest = whole.pop();
  for (const text of whole) {
    const { id, result, error } = JSON.parse(text);
    answers.get(id)?.(error ? { error } : result);
  }
});
let asked = 0;
const ask = (method, params = {}, sessionId) =>
  new Promise((done) => {
    const id = ++asked;
    answers.set(id, done);
    browser.stdio[3].write(`${JSON.stringify({ id, method, params, sessionId })}\0`);
  });

const { targetId } = await ask('Target.createTarget', { url: web.address() });
const { sessionId } = await ask('Target.attachToTarget', { targetId, flatten: true });
const evaluate = async (expression) => {
  const { result } = await ask('Runtime.evaluate', { expression, awaitPromise: true, returnByValue: true }, sessionId);
  return result.value;
};
const isOpen = () => chat !== '';
while (!isOpen() || (await evaluate('document.querySelector("#next-line") !== null')) !== true) await pause(200);
const startedAt = Date.now();
const endsAt = startedAt + hiddenS * 1000;
const message = { id: 'm1', channel: 'web', chat, language: 'en', paragraphs: ['Hold.'], choices: [] };
said.push({ ...message, countdown: { startedAt, endsAt, label: 'Hold' } });
await web.send(said[0]);
await evaluate(`(() => {
  window.calls = [];
  const region = document.querySelector('[role=alert]');
  new MutationObserver(() => region.textContent !== '' && calls.push(Date.now()))
    .observe(region, { childList: true, characterData: true, subtree: true });
})()`);
await ask('Target.createTarget', { url: 'about:blank' });
await pause(500);
const seen = await evaluate('document.visibilityState');
await pause(endsAt - Date.now() - 1_000);
const digits = await evaluate('[document.querySelector(".digits").textContent, Date.now()]');
console.log(
  `hidden for ${hiddenS} s: the page says "${seen}"; a second before the end it shows "${digits[0]}" with ${endsAt - digits[1]} ms left`,
);
await pause(75_000);
const calls = await evaluate('calls');
console.log(`called ${calls.length} time(s), ${calls.map((at) => at - endsAt).join(', ')} ms after the end`);

await ask('Browser.close');
rmSync(profile, { recursive: true, force: true, maxRetries: 10 });
await web.stop();
