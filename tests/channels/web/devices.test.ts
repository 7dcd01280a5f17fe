/** A sheet that was put away: its old number opens nothing any more, on any way in, and those of other devices go on (ASVS 5.0.0 7.4.1). */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import { marksIn } from '../../../src/store/sheet-marks.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, posted, visit, type Answered } from './knock.ts';

const now = (): number => Date.now();
const wide = { burst: 1_000, perSecond: 1_000 };
const limits = { joinsPerAddress: wide, joins: wide, postsPerAddress: wide, pagesPerAddress: wide };
let house: FakeHouse;
let first: string;
beforeAll(async () => {
  house = await openHouse({
    pageFolder: emptyPage(),
    answer: () => Promise.resolve(),
    limits,
    myData: () => Promise.resolve('{"memory":[]}'),
  });
});
afterAll(() => house.stop());
beforeEach(async () => {
  first = await visit(house.url);
  await write(first);
});

const post = (url: string, path: string, cookie: string, body = ''): Promise<Answered> =>
  knock(url, path, { method: 'POST', headers: aboutPost(url, cookie), body });
const write = (cookie: string, url = house.url) => post(url, '/sheet', cookie, posted({ kind: 'text', text: 'hi' }));
const cookieOf = ({ headers }: Answered): string => (headers['set-cookie']?.[0] ?? '').split(';')[0] ?? '';

async function joined(url: string, of: string, own: string): Promise<string> {
  const { code } = JSON.parse((await post(url, '/pass', of)).body) as { code: string };
  return cookieOf(await post(url, '/join', own, JSON.stringify({ code })));
}

const ways: readonly (readonly [string, (cookie: string) => Promise<Answered>, number])[] = [
  ['write', (cookie) => write(cookie), 401],
  ['offer a code', (cookie) => post(house.url, '/pass', cookie), 401],
  ['take the file of what is kept', (cookie) => knock(house.url, '/my-data', { headers: { cookie } }), 404],
  ['take the file of a message', (cookie) => knock(house.url, '/file/m1', { headers: { cookie } }), 404],
];

describe('a number that was put away', () => {
  it.each(ways)('cannot %s', async (_, way, refused) => {
    const before = house.recorded.length;
    expect((await post(house.url, '/fresh', first)).status).toBe(204);
    expect((await way(first)).status).toBe(refused);
    expect(house.recorded).toHaveLength(before);
  });

  it('is told nothing: its open stream ends, and it may open no other', async () => {
    const stream = await follow(house.url, { cookie: first });
    await stream.until(isCaughtUp);
    await post(house.url, '/fresh', first);
    await stream.ended;
    expect((await follow(house.url, { cookie: first })).status).toBe(401);
  });

  it('is not taken up again by a visit', async () => {
    await post(house.url, '/fresh', first);
    expect(await visit(house.url, { cookie: first })).not.toBe(first);
  });

  it('takes the codes it offered along', async () => {
    const { code } = JSON.parse((await post(house.url, '/pass', first)).body) as { code: string };
    await post(house.url, '/fresh', first);
    expect((await post(house.url, '/join', await visit(house.url), JSON.stringify({ code }))).status).toBe(404);
  });
});

describe('a second device', () => {
  it('goes on with the sheet when the first has put it away, and the other way about', async () => {
    const second = await joined(house.url, first, await visit(house.url));
    const third = await joined(house.url, second, await visit(house.url));
    await post(house.url, '/fresh', first);
    expect((await write(second)).status).toBe(202);
    const chat = house.chat();
    await post(house.url, '/fresh', second);
    expect([(await write(second)).status, (await write(third)).status]).toEqual([401, 202]);
    expect(house.chat()).toBe(chat);
  });

  it('leaves the sheet it had for good', async () => {
    const own = await visit(house.url);
    await write(own);
    await joined(house.url, first, own);
    expect((await write(own)).status).toBe(401);
  });

  it.each([
    ['a number of its own making', (second: string) => `${second.slice(0, -4)}AAAA`],
    ['the sheet’s name alone', (second: string) => second.split('.')[0] ?? ''],
    ['the name and the number changed about', (second: string) => second.replace(/=(.*)\.(.*)/, '=$2.$1')],
    ['one part more', (second: string) => `${second}.${'a'.repeat(43)}`],
  ])('is not let in with %s', async (_, forged) => {
    const second = await joined(house.url, first, await visit(house.url));
    await write(second);
    const chat = house.chat();
    const { status } = await write(forged(second));
    // Refused, or a stranger with a sheet of their own.
    expect(status === 202 && house.chat() === chat).toBe(false);
    expect([202, 401]).toContain(status);
  });
});

describe('what is kept of it', () => {
  it('is still known when the house is closed and opened again', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'ninthpour-devices-'));
    const open = () => openSqliteStore(join(folder, 'ninthpour.sqlite'));
    const before = open();
    await marksIn(before, now).add('away x');
    await marksIn(before, now).add('away x');
    await before.close();
    const again = open();
    const marks = marksIn(again, now);
    expect([await marks.has('away x'), await marks.has('away y'), await marks.has('device x')]).toEqual([
      true,
      false,
      false,
    ]);
    // Nothing is to be answered to it.
    expect(await again.awaiting(['web'], now(), 10)).toEqual([]);
    await again.close();
    rmSync(folder, { recursive: true });
  });
});
