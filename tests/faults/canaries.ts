/** F22: a token, a cookie and words that must not be told, on every path where the whole program has something to complain of. */
import { spawn } from 'node:child_process';
import { mkdirSync, readFileSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import Database from 'better-sqlite3';
import { projectRoot } from '../../src/project-root.ts';
import { startService } from '../app/service.ts';
import { ask } from '../channels/telegram/bot-api/control.ts';
import type { Trouble } from '../channels/telegram/bot-api/fault-plan.ts';
import { aboutPost, knock, posted, visit } from '../channels/web/knock.ts';
import { commandOf } from '../ops/homes.ts';
import { Tally, type Fault, type Trial } from './fault.ts';

const words = 'canary-words-4711';
const standIn = join(projectRoot, 'tests/channels/telegram/bot-api/serve.mjs');

/** What the program had to do with, and what it said of it. */
interface Path {
  readonly name: string;
  readonly go: () => Promise<unknown>;
}

export const canaries: Fault = {
  id: 'F22',
  title: 'a token, a cookie and people’s words on every path of error',
  unit: 'paths',
  counts: { few: 40, usual: 200, long: 1_000 },
  seconds: 30,
  untried: 'the ways inside Telegram’s channel one by one: those are in tests/channels/telegram/secrets.test.ts',
  async run(trial) {
    const tally = new Tally();
    const helper = spawn(process.execPath, [standIn], { stdio: ['ignore', 'pipe', 'inherit'] });
    const line = await new Promise<string>((resolve) => helper.stdout.once('data', (chunk) => resolve(String(chunk))));
    try {
      await through(JSON.parse(line) as StandIn, trial, tally);
    } finally {
      helper.kill('SIGTERM');
    }
    return tally.found();
  },
};

interface StandIn {
  readonly root: string;
  readonly token: string;
}

async function through({ root, token }: StandIn, { count, dice, folder }: Trial, tally: Tally): Promise<void> {
  const telegram = { TELEGRAM_TOKEN: token, TELEGRAM_API_ROOT: root };
  const home = join(folder, 'home');
  const service = startService({ env: { ...telegram, NINTHPOUR_FOLDER: home, NINTHPOUR_LOG: 'debug' } });
  const address = await service.ready;
  const cookie = await visit(address);
  const paths = [...telegramPaths(root), ...pagePaths(address, cookie), ...storePaths(home)];
  const shuffled = paths.toSorted(() => dice.roll() - 0.5);
  for (let i = 0; i < count; i++) await shuffled[i % shuffled.length]!.go();
  await pause(2_000);
  const exported = (await knock(address, '/my-data', { headers: { cookie, 'sec-fetch-site': 'none' } })).body;
  service.child.kill('SIGTERM');
  const { out, told } = await service.ended;
  const secrets = { token, cookie: cookie.split('=')[1] ?? cookie, words };
  const found = (where: string, text: string, names: readonly (keyof typeof secrets)[]): (string | false)[] =>
    names.map((name) => text.includes(secrets[name]) && `the ${name} is in ${where}`);
  for (let i = 0; i < count; i++) tally.add();
  tally.wrong(
    told.split('\n').length < 6 && `only ${told.split('\n').length} lines were logged: nothing is proved`,
    ...found('the log', told, ['token', 'cookie', 'words']),
    ...found('what is printed', out, ['token', 'cookie', 'words']),
    ...found('the database', bytesIn(home), ['token', 'cookie']),
    ...found('the export', exported, ['token', 'cookie']),
    !exported.includes(words) && 'the export does not hold the words either: nothing is proved',
  );
  for (const start of wrongStarts(folder, { token, root })) {
    const ended = await startService(start).ended;
    tally.add(
      ended.code === 0 && 'it started all the same',
      ...found('a failed start', ended.told + ended.out, ['token', 'words']),
    );
  }
}

const bytesIn = (home: string): string =>
  readdirSync(home)
    .map((name) => join(home, name))
    .filter((path) => statSync(path).isFile())
    .map((path) => readFileSync(path, 'latin1'))
    .join('');

const troubles: readonly Trouble[] = [
  ...[400, 401, 403, 404, 409, 413, 429, 500, 502, 504].map((code): Trouble => ({
    kind: 'refuse',
    code,
    description: `Bad Request: can't read "${words}"`,
    parameters: { retry_after: 1 },
  })),
  ...[true, false].flatMap((processed): readonly Trouble[] => [
    { kind: 'page', code: 502, processed },
    { kind: 'drop', processed },
    { kind: 'reset', processed },
  ]),
  { kind: 'truncate' },
];

function telegramPaths(root: string): readonly Path[] {
  return ['sendMessage', 'answerCallbackQuery', 'getUpdates'].flatMap((method, m) =>
    troubles.map((trouble, t) => ({
      name: `${method} ${trouble.kind}`,
      async go() {
        const person = 10_000 + m * 100 + t;
        // A poll is nobody's chat; one in so many, lest it only waits.
        if (method === 'getUpdates' && t % 5 !== 0) return;
        await ask(root, 'fault', { method, ...(method === 'sendMessage' ? { chat: person } : {}), trouble });
        await ask(root, 'say', person, `${words} tieguanyin`, 'en');
        if (method === 'answerCallbackQuery') await ask(root, 'forge', person, words);
      },
    })),
  );
}

const named = (name: string, go: () => Promise<unknown>): Path => ({ name, go });

/** Requests that are wrong in every part, each carrying what must not be told. */
function pagePaths(address: string, cookie: string): readonly Path[] {
  const good = aboutPost(address.replace(/\/$/, ''), cookie);
  const body = posted({ kind: 'text', text: words });
  const post =
    (headers: Record<string, string>, text = body, path = '/sheet'): (() => Promise<unknown>) =>
    () =>
      knock(address, path, { method: 'POST', headers, body: text }).catch(() => null);
  const get =
    (path: string, headers: Record<string, string> = {}): (() => Promise<unknown>) =>
    () =>
      // A stream stays open.
      Promise.race([knock(address, path, { headers: { cookie, ...headers } }).catch(() => null), pause(2_000)]);
  const paths = [
    '/',
    '/tea/',
    '/lesson/',
    '/words/',
    '/assets/',
    '/stream?after=',
    '/',
    '/my-data?',
    '/healthz?',
    '/no/',
  ];
  return [
    named('what is right', post(good)),
    ...['', '{', '[]', 'null', `"${words}"`, `{"updateId":"${words}"}`, body.slice(0, 40), words.repeat(10_000)].map(
      (text) => named('a wrong body', post(good, text)),
    ),
    ...['text/plain', 'multipart/form-data', words].map((type) =>
      named('a wrong type', post({ ...good, 'content-type': type })),
    ),
    ...['null', 'https://evil.example', `https://${words}`].map((origin) =>
      named('a wrong origin', post({ ...good, origin })),
    ),
    ...[`sheet=${words}`, `${cookie}; ${cookie}`, words, `${cookie}${words}`].map((wrong) =>
      named('a wrong cookie', post({ ...good, cookie: wrong })),
    ),
    ...paths.map((path) => named('a wrong path', get(`${path}${words}`))),
    ...paths.map((path) => named('a wrong host', get(path, { host: words }))),
    ...['PUT', 'DELETE', 'PATCH'].map((method) =>
      named('a wrong method', () => knock(address, '/sheet', { method, headers: good, body }).catch(() => null)),
    ),
    named('too long a header', get('/', { 'x-long': words.repeat(2_000) })),
    // From another device: what this one is asked for at the end must still be there.
    named('a fresh sheet', post({ ...good, cookie: `sheet=${'f'.repeat(43)}` }, words, '/fresh')),
  ];
}

/** The database is another's for a moment, or read by another all the while. */
function storePaths(home: string): readonly Path[] {
  const held = async (sql: string): Promise<void> => {
    const other = new Database(join(home, 'ninthpour.sqlite'));
    other.exec(sql);
    await pause(150);
    other.exec('COMMIT');
    other.close();
  };
  const backUp = (args: readonly string[]): Promise<unknown> =>
    startService({ script: commandOf('backup'), args, env: { NINTHPOUR_FOLDER: home, TELEGRAM_TOKEN: '1:canary' } })
      .ended;
  return [
    { name: 'locked for a moment', go: () => held('BEGIN IMMEDIATE') },
    { name: 'a backup', go: () => backUp([]) },
    { name: 'a backup told nonsense', go: () => backUp([words]) },
  ];
}

function wrongStarts(folder: string, { token, root }: StandIn) {
  const env = { NINTHPOUR_FOLDER: join(folder, 'other'), TELEGRAM_API_ROOT: root };
  mkdirSync(join(folder, 'other'));
  return [
    { env: { ...env, TELEGRAM_TOKEN: `${token} ${words}` } },
    { env: { ...env, TELEGRAM_TOKEN: token, TELEGRAM_WEBHOOK_SECRET: words } },
    { env: { ...env, TELEGRAM_TOKEN: token, NINTHPOUR_PORT: 'tea' } },
    { env: { ...env, TELEGRAM_TOKEN: token, NINTHPOUR_HOST: '203.0.113.1' } },
    { env: { ...env, TELEGRAM_TOKEN: token, NINTHPOUR_SHOP: '/nowhere' } },
    { env: { ...env, TELEGRAM_TOKEN: token.replace(/.$/, 'x') } },
  ];
}
