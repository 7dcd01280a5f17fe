/** Everything kept of a person, and the files of their messages: to whoever holds the sheet's cookie, and to nobody else (ASVS 5.0.0 8.2.2, 14.3.2). */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makeWebChannel } from '../../../src/channels/web/web-channel.ts';
import { pageWordKeys } from '../../../src/channels/web/page/wire.ts';
import { makeLog } from '../../../src/log.ts';
import type { Outgoing } from '../../../src/messages.ts';
import { makeMarks } from '../../page/fake-house.ts';
import { emptyPage, knock, visit } from './knock.ts';

const kept = new Map<string, string>();
const message: Outgoing = {
  id: '7-tag',
  channel: 'web',
  chat: '',
  language: 'en',
  paragraphs: ['You are coming.'],
  choices: [],
  file: {
    name: 'a "b".ics',
    mediaType: 'text/calendar; method=PUBLISH',
    text: 'memory of 茶',
    label: 'For your calendar',
  },
};
const web = makeWebChannel({
  host: '127.0.0.1',
  port: 0,
  clock: { now: () => Date.now() },
  log: makeLog('silent'),
  passed: (chat) => Promise.resolve(kept.has(chat) ? [{ said: message }] : []),
  lineOf: (updateId) => updateId,
  label: () => Promise.resolve(null),
  myData: (chat) => Promise.resolve(kept.get(chat) ?? null),
  pageWords: () => Object.fromEntries(pageWordKeys.map((key) => [key, key])),
  marks: makeMarks(),
  secureCookies: false,
  publicOrigin: null,
  pageFolder: emptyPage(),
  limits: { pagesPerAddress: { burst: 24, perSecond: 0.001 } },
});

let mine: string;
let others: string;
const ask = (headers: Record<string, string>, path = '/my-data') => knock(web.address(), path, { headers });
const filePath = '/file/7-tag';

beforeAll(async () => {
  const chats: string[] = [];
  await web.start((incoming) => {
    chats.push(incoming.chat);
    return Promise.resolve('new');
  });
  [mine, others] = [await visit(web.address()), await visit(web.address())];
  await knock(web.address(), '/sheet', {
    method: 'POST',
    headers: { cookie: mine, origin: web.address().replace(/\/$/, ''), 'content-type': 'application/json' },
    body: JSON.stringify({ updateId: 'a'.repeat(32), language: 'en', what: { kind: 'text', text: 'hi' } }),
  });
  kept.set(chats[0] ?? '', '{"memory":[]}');
});
afterAll(() => web.stop());

describe('my data and files', () => {
  it.each(['same-origin', 'none'])('comes as a file that is kept nowhere on the way, asked from %s', async (site) => {
    const { status, headers, body } = await ask({ cookie: mine, 'sec-fetch-site': site });
    expect({ status, body }).toEqual({ status: 200, body: '{"memory":[]}' });
    expect(headers).toMatchObject({
      'content-type': 'application/json; charset=utf-8',
      'content-disposition': 'attachment; filename="ninthpour-my-data.json"',
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
    });
  });

  it.each([
    ['another site’s page', (): Record<string, string> => ({ cookie: mine, 'sec-fetch-site': 'cross-site' }), 403],
    ['a neighbouring host', (): Record<string, string> => ({ cookie: mine, 'sec-fetch-site': 'same-site' }), 403],
    ['a foreign origin', (): Record<string, string> => ({ cookie: mine, origin: 'https://evil.example' }), 403],
    ['someone without a cookie', (): Record<string, string> => ({}), 404],
    ['someone with another cookie', (): Record<string, string> => ({ cookie: others }), 404],
    ['a guessed cookie', (): Record<string, string> => ({ cookie: `sheet=${'A'.repeat(43)}` }), 404],
    ['two cookies at once', (): Record<string, string> => ({ cookie: `${mine}; ${others}` }), 404],
  ])('does not come to %s', async (_, headers, expected) => {
    for (const path of ['/my-data', filePath]) {
      const { status, body } = await ask(headers(), path);
      expect(status).toBe(expected);
      expect(body).not.toContain('memory');
    }
  });

  it('a file of a message comes under its own name, which cannot break out of its line', async () => {
    const { status, headers, body } = await ask({ cookie: mine, 'sec-fetch-site': 'same-origin' }, filePath);
    expect({ status, body }).toEqual({ status: 200, body: 'memory of 茶' });
    expect(headers).toMatchObject({
      'content-type': 'text/calendar; method=PUBLISH; charset=utf-8',
      'content-disposition': 'attachment; filename="a--b-.ics"',
      'cache-control': 'no-store',
    });
    expect(await ask({ cookie: mine }, '/file/8-tag')).toMatchObject({ status: 404 });
  });

  it('is not given out as fast as one likes', async () => {
    const statuses = await Promise.all(Array.from({ length: 24 }, () => ask({ cookie: mine })));
    expect(statuses.map(({ status }) => status)).toContain(429);
  });
});
