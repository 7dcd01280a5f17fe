/** No token and no word of a message in any log line, outcome or output, on any path where something goes wrong. */
import { inspect } from 'node:util';
import { afterEach, beforeEach, expect, it, vi } from 'vitest';
import type { Outgoing } from '../../../src/messages.ts';
import type { TelegramChannel, TelegramDeps } from '../../../src/channels/telegram/telegram.ts';
import type { Trouble } from './bot-api/fault-plan.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, outgoing, until, type KeptLog } from './harness.ts';

const token = '7000000001:AAcanary-token-of-thirty-five-letters';
const canary = /canary|7000000001|teapot-secret/;
const text = 'teapot-secret';
const ladder = { title: text, rungs: [{ n: 1, seconds: 9, label: text, length: 1, ink: 1 }] };
const png = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

let server: StandIn;
let written: string[];
beforeEach(async () => {
  server = await startStandIn({ token });
  for (const id of [1, 2]) server.people.say(id, text);
  written = [];
  for (const stream of [process.stdout, process.stderr]) {
    vi.spyOn(stream, 'write').mockImplementation((chunk) => written.push(String(chunk)) > 0);
  }
});
afterEach(async () => {
  vi.restoreAllMocks();
  await server.close();
});

const quoting = (code: number): Trouble => ({
  kind: 'refuse',
  code,
  description: `Bad Request: can't read "${text}" of bot${token}`,
  parameters: { retry_after: 1 },
});

const troubles: readonly Trouble[] = [
  ...[400, 401, 403, 404, 409, 413, 429, 500, 502, 504].map(quoting),
  { kind: 'refuse', code: 400, description: `Bad Request: ${text}` },
  ...[true, false].flatMap((processed): readonly Trouble[] => [
    { kind: 'page', code: 502, processed },
    { kind: 'drop', processed },
    { kind: 'reset', processed },
    { kind: 'hang', processed },
  ]),
  { kind: 'truncate' },
];

/** Waiting for an answer that never comes takes longer here than a test should. */
const inTroubles = troubles.filter(({ kind }) => kind !== 'hang');

/** One way through the channel, with the method the trouble meets. */
interface Way {
  readonly method: string;
  go(channel: TelegramChannel): Promise<unknown>;
}

const message = (more: Partial<Outgoing> = {}): Outgoing => outgoing(1, { paragraphs: [text], ...more });

const ways: readonly Way[] = [
  { method: 'sendMessage', go: (channel) => channel.send(message()) },
  { method: 'sendPhoto', go: (channel) => channel.send(message({ ladder })) },
  { method: 'editMessageText', go: (channel) => channel.send(message({ replaces: 't1' })) },
  { method: 'editMessageCaption', go: (channel) => channel.send(message({ replaces: 'p1' })) },
  { method: 'deleteMessage', go: (channel) => channel.send(message({ replaces: 't1.t2' })) },
];

const intakeMethods = [
  'getMe',
  'getUpdates',
  'getWebhookInfo',
  'answerCallbackQuery',
  'setMyName',
  'getMyCommands',
  'setChatMenuButton',
];

function made(more: Partial<TelegramDeps> = {}): { channel: TelegramChannel; log: KeptLog } {
  return channelAt(
    { root: server.root, token },
    { sendTimeoutMs: 250, drawPicture: () => Promise.resolve(png), ...more },
  );
}

it(`keeps them on ${troubles.length * ways.length} ways out`, { timeout: 60_000 }, async () => {
  let paths = 0;
  for (const way of ways) {
    for (const trouble of troubles) {
      const { channel, log } = made();
      server.faults.clear();
      server.faults.add({ method: way.method, trouble });
      const came = await way.go(channel);
      expect(JSON.stringify([came, log.lines, channel.health()])).not.toMatch(canary);
      paths++;
    }
  }
  expect(paths).toBe(troubles.length * ways.length);
  expect(written.join('')).not.toMatch(canary);
});

it(`keeps them on ${inTroubles.length * intakeMethods.length} ways in`, { timeout: 60_000 }, async () => {
  const paths = intakeMethods.flatMap((method) => inTroubles.map((trouble) => [method, trouble] as const));
  await Promise.all(paths.map(([method, trouble]) => wayIn(method, trouble)));
  expect(written.join('')).not.toMatch(canary);
});

async function wayIn(method: string, trouble: Trouble): Promise<void> {
  const own = await startStandIn({ token });
  const { channel, log } = channelAt({ root: own.root, token });
  own.people.say(1, text);
  own.people.forge(1, 'k');
  own.faults.add({ method, times: 2, trouble });
  let records = 0;
  await channel.start(() => (records++ === 0 ? Promise.reject(new Error(`${text} ${token}`)) : Promise.resolve('new')));
  await until(() => own.queue.pending.length === 0, 30_000);
  await channel.stop();
  await own.close();
  expect(log.lines.length).toBeGreaterThan(0);
  expect(JSON.stringify([log.lines, channel.health()])).not.toMatch(canary);
}

it('keeps them when nobody answers, when a picture fails, and in what it is made of', async () => {
  const gone = await startStandIn();
  await gone.close();
  const { channel, log } = channelAt({ root: gone.root, token });
  expect(JSON.stringify([await channel.check(), await channel.send(message())])).not.toMatch(canary);
  const clumsy = made({ drawPicture: () => Promise.reject(new Error(`${text} ${token}`)) });
  await clumsy.channel.send(message({ ladder }));
  expect(clumsy.log.lines).toHaveLength(1);
  expect(JSON.stringify([log.lines, clumsy.log.lines])).not.toMatch(canary);
  for (const shown of [inspect(channel, { depth: 9 }), JSON.stringify(channel)]) expect(shown).not.toMatch(canary);
});
