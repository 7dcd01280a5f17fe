/** Intake by webhook: the door, and the way from the stand-in through it. */
import { connect } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { makeWebhookHandler, webhookLimitBytes } from '../../../src/channels/telegram/webhook.ts';
import { incomingOf } from '../../../src/channels/telegram/incoming.ts';
import type { Incoming } from '../../../src/messages.ts';
import type { TelegramMode } from '../../../src/channels/telegram/telegram.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, keepLog, Memory, until } from './harness.ts';

const secret = 'a-secret-of-enough-letters';
const message = (id: number, text = 'hello') => ({
  update_id: id,
  message: { message_id: 1, date: 1, chat: { id: 7, type: 'private' }, from: { id: 7, is_bot: false }, text },
});

function read(update: unknown): Incoming | null {
  return incomingOf(update, { now: 0, says: () => null });
}

function handlerFor(record: Memory['record'], given = secret) {
  return makeWebhookHandler({ secret: given, log: keepLog(), greet: () => undefined, read, record });
}

describe('the handler', () => {
  it.each<[string, string, string | undefined, number]>([
    ['an update', JSON.stringify(message(1)), secret, 200],
    ['no secret', JSON.stringify(message(1)), undefined, 401],
    ['another secret', JSON.stringify(message(1)), `${secret}x`, 401],
    ['an empty secret', JSON.stringify(message(1)), '', 401],
    ['no JSON', '{', secret, 400],
    ['an update it does not serve', '{"update_id":4,"poll":{}}', secret, 200],
    ['no update', 'null', secret, 200],
    ['too much', JSON.stringify(message(1, 'x'.repeat(webhookLimitBytes))), secret, 413],
  ])('%s', async (_case, body, header, status) => {
    const memory = new Memory();
    expect(await handlerFor(memory.record)(body, header)).toBe(status);
    expect(memory.kept).toHaveLength(_case === 'an update' ? 1 : 0);
  });

  it('says 500 while it cannot record', async () => {
    expect(await handlerFor(() => Promise.reject(new Error('busy')))(JSON.stringify(message(1)), secret)).toBe(500);
  });

  it.each(['', 'short', 'with space in the middle'])('does not exist without a proper secret: "%s"', (given) => {
    expect(() => handlerFor(new Memory().record, given)).toThrow('secret');
  });
});

describe('the channel', () => {
  let server: StandIn;
  afterEach(() => server.close());

  it('takes each update once, in order, however often it must be brought', async () => {
    const port = await freePort();
    server = await startStandIn({ route: () => `http://127.0.0.1:${port}/telegram`, firstRetryMs: 5 });
    const memory = new Memory();
    let failures = 4;
    const { channel, log } = channelAt(server, { mode: modeAt(port) });
    await channel.start((incoming) => (failures-- > 0 ? Promise.reject(new Error('busy')) : memory.record(incoming)));
    await until(() => server.record.of('setWebhook').length === 1);
    const sent = [...Array(10).keys()].map((i) => server.people.say(i % 2, `${i}`)!);
    await until(() => memory.kept.length === 10);
    expect(memory.ids).toEqual(sent);
    expect(memory.repeats).toEqual([]);
    expect(log.lines.filter((line) => line.includes('not be recorded'))).toHaveLength(4);
    expect(channel.health()).toMatchObject({ state: 'webhook' });
    expect(channel.health().lastPollAt).not.toBeNull();
    await channel.stop();
  });

  it('opens to its path, its method and its secret only', async () => {
    const port = await freePort();
    server = await startStandIn();
    const { channel } = channelAt(server, { mode: modeAt(port) });
    const memory = new Memory();
    await channel.start(memory.record);
    const at = (path: string, init: RequestInit = {}) =>
      fetch(`http://127.0.0.1:${port}${path}`, init).then(({ status }) => status);
    const body = JSON.stringify(message(1));
    expect(await at('/')).toBe(404);
    expect(await at('/telegram')).toBe(405);
    expect(await at('/telegram', { method: 'POST', body })).toBe(401);
    const headers = { 'x-telegram-bot-api-secret-token': secret };
    expect(await at('/telegram', { method: 'POST', body: 'x'.repeat(webhookLimitBytes + 1), headers })).toBe(413);
    expect(await at('/telegram', { method: 'POST', body, headers })).toBe(200);
    await brokenOff(port);
    expect(await at('/telegram', { method: 'POST', body, headers })).toBe(200);
    expect(memory.kept).toHaveLength(1);
    await channel.stop();
  });

  it('is not made for plain http or without a secret', async () => {
    server = await startStandIn();
    const mode = modeAt(0);
    expect(() => channelAt(server, { mode: { ...mode, url: 'http://tea.example/' } })).toThrow('https');
    expect(() => channelAt(server, { mode: { ...mode, secret: 'short' } })).toThrow('secret');
  });
});

function modeAt(port: number): Extract<TelegramMode, { kind: 'webhook' }> {
  return {
    kind: 'webhook',
    url: 'https://tea.example/telegram',
    secret,
    door: { host: '127.0.0.1', port, path: '/telegram' },
  };
}

/** A caller that leaves in the middle of its body. */
function brokenOff(port: number): Promise<void> {
  return new Promise((resolve) => {
    const socket = connect(port, '127.0.0.1', () => {
      socket.write('POST /telegram HTTP/1.1\r\nhost: x\r\ncontent-length: 100\r\n\r\n{"upd', () => socket.destroy());
    });
    socket.on('close', () => resolve());
  });
}

async function freePort(): Promise<number> {
  const probe = await startStandIn();
  await probe.close();
  return Number(new URL(probe.root).port);
}
