/** What is too large, too misshapen, too often or too slow; ids of OWASP ASVS 5.0.0 beside each. */
import { createConnection } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import { aboutPost, emptyPage, follow, knock, posted, visit } from './knock.ts';

const pageFolder = emptyPage();
let house: FakeHouse;
beforeAll(async () => {
  house = await openHouse({ pageFolder, answer: () => Promise.resolve() });
});
afterAll(() => house.stop());

const statusOf = async (body: string, how: Record<string, string> = {}): Promise<number> => {
  const headers = { ...aboutPost(house.url, await visit(house.url)), ...how };
  return (await knock(house.url, '/sheet', { method: 'POST', headers, body })).status;
};

describe('sizes and shapes (2.4.1, 15.2.2)', () => {
  it.each([
    ['nothing', ''],
    ['no JSON', '{"updateId":'],
    ['a list', '[]'],
    ['null', 'null'],
    ['a short id', posted({ kind: 'text', text: 'x' }, 'short')],
    ['an id with a line break', posted({ kind: 'text', text: 'x' }, 'aaaaaaaaaaaaaaaa\n')],
    ['a number for text', posted({ kind: 'text', text: 5 })],
    ['a text too long', posted({ kind: 'text', text: 'x'.repeat(10_001) })],
    ['an unknown kind', posted({ kind: 'reach', reachable: true })],
    ['a key with markup', posted({ kind: 'tap', key: '<b>' })],
    ['a key too long', posted({ kind: 'tap', key: 'x'.repeat(41) })],
    ['a payload that climbs', posted({ kind: 'open', payload: 'tea-../../x' })],
    [
      'an unknown language',
      JSON.stringify({ updateId: 'a'.repeat(20), language: 'fr', what: { kind: 'text', text: '' } }),
    ],
    [
      'an inherited language',
      JSON.stringify({ updateId: 'a'.repeat(20), language: 'toString', what: { kind: 'text', text: '' } }),
    ],
  ])('%s is refused whole', async (_, body) => {
    const before = house.recorded.length;
    expect(await statusOf(body)).toBe(400);
    expect(house.recorded).toHaveLength(before);
  });

  it.each([
    ['5,000 characters outside the basic plane', '🍵'.repeat(5_000)],
    ['right-to-left and stacked marks', '\u202Eشاي\u202C t̴̛̝e̷a'.repeat(100)],
    ['markup', '<script>alert(1)</script>'],
    ['nothing', ''],
  ])('%s is taken as the text it is', async (_, written) => {
    expect(await statusOf(posted({ kind: 'text', text: written }))).toBe(202);
    expect(house.recorded.at(-1)?.what).toEqual({ kind: 'text', text: written });
  });

  it.each([
    ['told', {}],
    ['found out in pieces', { 'transfer-encoding': 'chunked' }],
  ])('a megabyte is refused, its length %s; what fits is taken', async (_, how) => {
    expect(await statusOf('x'.repeat(1024 * 1024), how)).toBe(413);
    expect(await statusOf(posted({ kind: 'text', text: '泡'.repeat(900) }), how)).toBe(202);
  });

  it('a header of 20,000 bytes is refused', async () => {
    expect((await knock(house.url, '/', { headers: { cookie: 'x'.repeat(20_000) } })).status).toBe(431);
  });
});

describe('too much (2.4.1, 15.2.2)', () => {
  const slow = { burst: 3, perSecond: 0.001 };

  it('one sheet may post a burst, then waits; another still may', async () => {
    const strict = await openHouse({ pageFolder, limits: { postsPerSheet: slow } });
    const [one, other] = [await visit(strict.url), await visit(strict.url)];
    const flood = (as: string) => () =>
      knock(strict.url, '/sheet', {
        method: 'POST',
        headers: aboutPost(strict.url, as),
        body: posted({ kind: 'text', text: 'x' }),
      });
    const statuses = [];
    for (let n = 0; n < 6; n++) statuses.push((await flood(one)()).status);
    expect(statuses).toEqual([202, 202, 202, 429, 429, 429]);
    expect((await flood(other)()).status).toBe(202);
    await strict.stop();
  });

  it('one address may not open page after page, whatever it says it was forwarded for', async () => {
    const strict = await openHouse({ pageFolder, limits: { pagesPerAddress: slow } });
    const statuses = [];
    for (let n = 0; n < 5; n++) {
      const headers = { 'x-forwarded-for': `203.0.113.${n}` };
      statuses.push((await knock(strict.url, '/', { headers })).status);
    }
    expect(statuses).toEqual([200, 200, 200, 429, 429]);
    await strict.stop();
  });

  it('behind a proxy the address it adds counts, not the ones a client invents (15.3.4)', async () => {
    const strict = await openHouse({
      pageFolder,
      publicOrigin: 'https://tea.example',
      limits: { pagesPerAddress: slow },
    });
    const from = async (forwarded: string) =>
      (await knock(strict.address, '/', { headers: { host: 'tea.example', 'x-forwarded-for': forwarded } })).status;
    for (let n = 0; n < 3; n++) expect(await from(`10.0.0.${n}, 203.0.113.7`)).toBe(200);
    expect(await from('10.0.0.9, 203.0.113.7')).toBe(429);
    expect(await from('203.0.113.8')).toBe(200);
    await strict.stop();
  });

  it.each([
    ['of one sheet', { streamsPerSheet: 2 }, true],
    ['of one address', { streamsPerAddress: 2 }, false],
    ['of everybody', { streams: 2 }, false],
  ])('streams %s are capped', async (_, limits, same) => {
    const strict = await openHouse({ pageFolder, limits });
    const first = await visit(strict.url);
    const open = async () => follow(strict.url, { cookie: same ? first : await visit(strict.url) });
    const streams = [await open(), await open()];
    expect(streams.map((stream) => stream.status)).toEqual([200, 200]);
    expect((await open()).status).toBe(429);
    streams[0]?.close();
    await expect.poll(async () => (await open()).status, { timeout: 20_000 }).toBe(200);
    await strict.stop();
  });

  it('a client that sends its headers drop by drop is cut off', async () => {
    const strict = await openHouse({ pageFolder, limits: { headersMs: 300, requestMs: 300 } });
    const socket = createConnection(Number(new URL(strict.url).port), '127.0.0.1');
    socket.on('error', () => {});
    socket.write('GET / HTTP/1.1\r\nHost: 127.0.0.1\r\n');
    const drip = setInterval(() => socket.write('X-Slow: 1\r\n'), 50);
    const begun = Date.now();
    await new Promise((closed) => socket.once('close', closed));
    clearInterval(drip);
    expect(Date.now() - begun).toBeLessThan(10_000);
    await strict.stop();
  });

  it('a body that never ends is cut off', async () => {
    const strict = await openHouse({ pageFolder, limits: { headersMs: 300, requestMs: 400 } });
    const fresh = await visit(strict.url);
    const socket = createConnection(Number(new URL(strict.url).port), '127.0.0.1');
    socket.on('error', () => {}).resume();
    const headers = Object.entries(aboutPost(strict.url, fresh)).map(([name, value]) => `${name}: ${value}\r\n`);
    socket.write(
      `POST /sheet HTTP/1.1\r\nHost: ${new URL(strict.url).host}\r\n${headers.join('')}Content-Length: 500\r\n\r\n{`,
    );
    const begun = Date.now();
    await new Promise((closed) => socket.once('close', closed));
    expect(Date.now() - begun).toBeLessThan(10_000);
    expect(strict.recorded).toEqual([]);
    await strict.stop();
  });

  it('a reader too slow for what is said is dropped, and memory stays bounded', async () => {
    const strict = await openHouse({
      pageFolder,
      limits: { backlogBytes: 64 * 1024 },
      answer: () => Promise.resolve(),
    });
    const fresh = await visit(strict.url);
    await knock(strict.url, '/sheet', {
      method: 'POST',
      headers: aboutPost(strict.url, fresh),
      body: posted({ kind: 'text', text: 'x' }),
    });
    const socket = createConnection(Number(new URL(strict.url).port), '127.0.0.1');
    socket.on('error', () => {});
    socket.write(`GET /stream HTTP/1.1\r\nHost: ${new URL(strict.url).host}\r\nCookie: ${fresh}\r\n\r\n`);
    await new Promise((first) => socket.once('data', first));
    socket.pause();
    // Far more than the kernel's own buffers hold.
    for (let n = 0; n < 400; n++) await strict.say({ paragraphs: ['x'.repeat(64 * 1024)] });
    const dropped = new Promise((closed) => socket.once('close', closed));
    socket.resume();
    await dropped;
    await strict.stop();
  });
});
