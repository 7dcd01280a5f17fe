/** A sending that may repeat what was heard tells that it begins, and waits for it, before a byte of it goes out. */
import { setTimeout as pause } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { makeMailChannel } from '../../src/channels/mail/mail-channel.ts';
import type { Channel, Outgoing } from '../../src/messages.ts';
import { openPostOffice } from './mail/post-office.ts';
import { startStandIn } from './telegram/bot-api/server.ts';
import { channelAt, keepLog, outgoing } from './telegram/harness.ts';

interface Side {
  readonly channel: Channel;
  readonly message: Outgoing;
  /** How many the other side has taken in, or begun to. */
  heard(): number;
  end(): Promise<unknown>;
}

const drawPicture = () => Promise.resolve(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));

async function telegram(more: Partial<Outgoing> = {}): Promise<Side> {
  const server = await startStandIn({});
  server.people.say(1, 'hello');
  const { channel } = channelAt(server, { drawPicture });
  const heard = (): number => server.record.of('sendMessage').length + server.record.of('sendPhoto').length;
  return { channel, message: outgoing(1, more), heard, end: () => server.close() };
}

async function mail(): Promise<Side> {
  const office = await openPostOffice();
  const head = { from: 'tea@quillfern.example', nameIn: () => 'Quillfern', footIn: () => 'foot' };
  const server = { host: '127.0.0.1', port: office.port, secure: false, login: null };
  const channel = makeMailChannel({ server, head, log: keepLog(), now: () => Date.now() });
  const message: Outgoing = { ...outgoing(1), channel: 'mail', chat: 'mei@student.example' };
  const end = (): Promise<unknown> => channel.stop().then(() => office.close());
  return { channel, message, heard: () => office.kept.length, end };
}

const ladder = { title: 'plan', rungs: [{ n: 1, seconds: 9, label: '9 s', length: 1, ink: 1 }] };

test.each([
  ['a message', () => telegram()],
  ['a picture', () => telegram({ ladder })],
  ['a letter', mail],
])('%s', async (_, open) => {
  const side = await open();
  let begin!: () => void;
  const begun = new Promise<void>((resolve) => (begin = resolve));
  let asked = 0;
  const sending = side.channel.send(side.message, () => {
    asked += 1;
    return begun;
  });
  await expect.poll(() => asked, { timeout: 20_000 }).toBe(1);
  await pause(150);
  expect(side.heard()).toBe(0);
  begin();
  expect(await sending).toMatchObject({ outcome: 'sent' });
  expect(side.heard()).toBe(1);
  await side.end();
});
