/** Many people at once whose lines break while the house talks, and some who never read: everybody hears their own, once, in order. */
import { randomBytes } from 'node:crypto';
import { createConnection, type Socket } from 'node:net';
import { describe, expect, it } from 'vitest';
import { readSession } from '../../../src/channels/web/session.ts';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import { emptyPage, follow, type OpenStream } from './knock.ts';

/** A house takes 2,500; as many as that take ten seconds. */
const people = Number(process.env['NINTHPOUR_TEST_LISTENERS'] ?? 600);
const deaf = 50;
const rounds = 4;

interface Person {
  readonly cookie: string;
  readonly chat: string;
  readonly heard: (string | null)[];
  stream: OpenStream;
}

const saidIn = ({ events }: OpenStream): (string | null)[] =>
  events.filter(({ event }) => event === 'said').map(({ id }) => id);

const heardBy = ({ heard, stream }: Person): (string | null)[] => [...heard, ...saidIn(stream)];

function newcomer(): Pick<Person, 'cookie' | 'chat'> {
  const cookie = `__Host-sheet=${randomBytes(32).toString('base64url')}`;
  return { cookie, chat: readSession(cookie, true)?.chat ?? '' };
}

async function arrive(house: FakeHouse): Promise<Person> {
  const { cookie, chat } = newcomer();
  return { cookie, chat, heard: [], stream: await follow(house.url, { cookie }) };
}

/** As a page does whose line broke: on from the last message it has. Nothing is sorted out here. */
async function comeBack(house: FakeHouse, person: Person): Promise<void> {
  person.stream.close();
  await person.stream.ended;
  person.heard.push(...saidIn(person.stream));
  person.stream = await follow(house.url, { cookie: person.cookie }, `/stream?after=${person.heard.at(-1) ?? ''}`);
}

/** Asks for the stream and reads nothing of it, ever. */
function neverRead(house: FakeHouse): Socket & { readonly chat?: string } {
  const { cookie, chat } = newcomer();
  const { port, host } = new URL(house.url);
  const socket = createConnection(Number(port), '127.0.0.1').on('error', () => {});
  socket.pause().write(`GET /stream HTTP/1.1\r\nHost: ${host}\r\nCookie: ${cookie}\r\n\r\n`);
  return Object.assign(socket, { chat });
}

describe('a crowd', () => {
  it(`of ${people}, one in three of whom comes back in each round, loses and doubles nothing`, async () => {
    const limits = { streamsPerAddress: 10_000, streams: 10_000, connections: 10_000, backlogBytes: 64 * 1024 };
    // Long enough that the house talks on while the past is looked up.
    const house = await openHouse({
      pageFolder: emptyPage(),
      limits,
      answer: () => Promise.resolve(),
      pastTakesMs: 30,
    });
    const all = await Promise.all(Array.from({ length: people }, () => arrive(house)));
    expect(all.filter(({ stream }) => stream.status !== 200)).toEqual([]);
    const mute = Array.from({ length: deaf }, () => neverRead(house));

    const said = new Map<string, string[]>(all.map(({ chat }) => [chat, []]));
    const long = 'x'.repeat(64 * 1024);
    for (let round = 0; round < rounds; round++) {
      const back = all.filter((_, n) => n % 3 === round % 3).map((person) => comeBack(house, person));
      for (const { chat } of all) said.get(chat)?.push(await house.say({ chat, paragraphs: [`round ${round}`] }));
      for (const { chat = '' } of mute) for (let n = 0; n < 8; n++) await house.say({ chat, paragraphs: [long] });
      await Promise.all(back);
    }
    const lacking = (): number => all.filter((person) => heardBy(person).length < rounds).length;
    await expect.poll(lacking, { timeout: 60_000, interval: 100 }).toBe(0);
    expect(all.filter((person) => heardBy(person).join() !== said.get(person.chat)?.join())).toEqual([]);

    for (const { stream } of all) stream.close();
    for (const socket of mute) socket.destroy();
    await house.stop();
  });
});
