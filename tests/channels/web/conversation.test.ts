/** What goes in once and comes out once: posts, the event stream, coming back after a lost line. */
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Outgoing } from '../../../src/messages.ts';
import { lineOf, openHouse, plan, type FakeHouse } from '../../page/fake-house.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, newId, posted, visit, type Event } from './knock.ts';

const pageFolder = emptyPage();
const usual = {
  postsPerAddress: { burst: 1_000, perSecond: 1_000 },
  postsPerSheet: { burst: 1_000, perSecond: 1_000 },
};
let house: FakeHouse;
let cookie: string;
beforeAll(async () => {
  house = await openHouse({ pageFolder, answer: () => Promise.resolve(), limits: usual });
});
afterAll(() => house.stop());
beforeEach(async () => {
  cookie = await visit(house.url);
});

const write = (text: string, updateId = newId()) =>
  knock(house.url, '/sheet', {
    method: 'POST',
    headers: { ...aboutPost(house.url, cookie), 'accept-language': 'zh-TW,zh;q=0.9,en;q=0.8' },
    body: posted({ kind: 'text', text }, updateId),
  });
const ids = (events: readonly Event[]): readonly (string | null)[] =>
  events.filter((one) => one.event === 'said').map((one) => one.id);
const wrote = (events: readonly Event[]): readonly unknown[] =>
  events.filter((one) => one.event === 'wrote').map(({ data, id }) => [JSON.parse(data) as unknown, id]);

describe('taking in', () => {
  it('answers 202 once it is recorded, with all the house needs to know', async () => {
    const updateId = newId();
    const answer = await write('鐵觀音', updateId);
    const { chat, receivedAt, ...rest } = house.recorded.at(-1) ?? { chat: '', receivedAt: 0 };
    const line = lineOf(`${chat}:${updateId}`);
    expect([answer.status, JSON.parse(answer.body)]).toEqual([202, { updateId, line }]);
    expect(rest).toEqual({
      channel: 'web',
      updateId: `${chat}:${updateId}`,
      from: chat,
      deviceLanguage: 'zh-TW',
      what: { kind: 'text', text: '鐵觀音' },
    });
    expect(Math.abs(receivedAt - Date.now())).toBeLessThan(2_000);
  });

  it('a repeat is answered alike and recorded once', async () => {
    const updateId = newId();
    const before = house.recorded.length;
    const answers = await Promise.all(Array.from({ length: 20 }, () => write('again', updateId)));
    expect(new Set(answers.map((answer) => answer.status))).toEqual(new Set([202]));
    expect(house.recorded.length - before).toBe(1);
  });

  it('the same id from another sheet is another thing', async () => {
    const updateId = newId();
    const before = house.recorded.length;
    await write('mine', updateId);
    cookie = await visit(house.url);
    await write('theirs', updateId);
    expect(house.recorded.slice(before).map((one) => one.what)).toEqual([
      { kind: 'text', text: 'mine' },
      { kind: 'text', text: 'theirs' },
    ]);
  });

  it('what could not be recorded is not acknowledged, and may come again', async () => {
    const updateId = newId();
    house.willing = false;
    expect((await write('once', updateId)).status).toBe(500);
    house.willing = true;
    expect((await write('once', updateId)).status).toBe(202);
  });
});

describe('the event stream', () => {
  it('tells the past, then what is said, each once and in order', async () => {
    await write('hello');
    const first = await house.say({ paragraphs: ['one'] });
    const stream = await follow(house.url, { cookie });
    await stream.until(isCaughtUp);
    const second = await house.say({ paragraphs: ['two'], ...plan['zh-Hant'] });
    await stream.until((events) => ids(events).length === 2);
    expect(stream.events.map((one) => one.event)).toEqual(['wrote', 'said', 'caught-up', 'said']);
    expect(ids(stream.events)).toEqual([first, second]);
    stream.close();
  });

  it('carries the whole message but who it is for', async () => {
    await write('hello');
    const whole: Partial<Outgoing> = {
      ...plan.en,
      countdown: { startedAt: 1, endsAt: 2, label: 'x' },
      replaces: 'm0',
      paragraphs: ['two\nlines', 'and \u2028 more'],
    };
    const id = await house.say(whole);
    const stream = await follow(house.url, { cookie });
    const said = (await stream.until(isCaughtUp)).find((one) => one.event === 'said');
    expect(JSON.parse(said?.data ?? '')).toEqual({ id, language: 'en', ...whole });
    stream.close();
  });

  it.each([
    ['the header', (id: string) => [{ 'last-event-id': id }, '/stream'] as const],
    ['the address', (id: string) => [{}, `/stream?after=${id}`] as const],
  ])('goes on after the last one seen, told in %s', async (_, ask) => {
    await write('hello');
    const seen = await house.say({ paragraphs: ['seen'] });
    const missed = [await house.say({ paragraphs: ['missed'] }), await house.say({ paragraphs: ['missed too'] })];
    const [headers, path] = ask(seen);
    const stream = await follow(house.url, { cookie, ...headers }, path);
    await stream.until(isCaughtUp);
    expect(ids(stream.events)).toEqual(missed);
    stream.close();
  });

  it('tells nobody else', async () => {
    await write('hello');
    const other = await follow(house.url, { cookie: await visit(house.url) });
    await other.until(isCaughtUp);
    const mine = await follow(house.url, { cookie });
    await house.say({ paragraphs: ['private'] });
    await mine.until((events) => ids(events).length > 0);
    expect(ids(other.events)).toEqual([]);
    mine.close();
    other.close();
  });

  it('tells what is written on one device to every device of the sheet, once, and again to who comes back', async () => {
    const others = await follow(house.url, { cookie: await visit(house.url) });
    const devices = [await follow(house.url, { cookie }), await follow(house.url, { cookie })];
    await Promise.all([others, ...devices].map((one) => one.until(isCaughtUp)));
    const updateId = newId();
    const what = { kind: 'text', text: '水仙' };
    await Promise.all([write('水仙', updateId), write('水仙', updateId)]);
    const line = lineOf(`${house.chat()}:${updateId}`);
    const late = await follow(house.url, { cookie });
    for (const device of devices) {
      // No id of its own: a line that breaks goes on after a message.
      expect(wrote(await device.until((events) => wrote(events).length > 0))).toEqual([
        [{ line, what, updateId }, null],
      ]);
    }
    expect(wrote(await late.until(isCaughtUp))).toEqual([[{ line, what }, null]]);
    expect(wrote(others.events)).toEqual([]);
    for (const one of [others, late, ...devices]) one.close();
  });

  it('tells every device of one sheet', async () => {
    await write('hello');
    const devices = [await follow(house.url, { cookie }), await follow(house.url, { cookie })];
    await Promise.all(devices.map((device) => device.until(isCaughtUp)));
    const id = await house.say({ paragraphs: ['both'] });
    for (const device of devices) {
      await device.until((events) => ids(events).includes(id));
      device.close();
    }
  });

  it('loses and doubles nothing when the line breaks again and again while the house talks', async () => {
    await write('hello');
    const got: string[] = [];
    const said: string[] = [];
    const talking = (async () => {
      for (let n = 0; n < 150; n++) {
        said.push(await house.say({ paragraphs: [String(n)] }));
        await new Promise((later) => setTimeout(later, 2));
      }
    })();
    let whole = false;
    while (!whole) {
      whole = said.length === 150;
      const after = got.at(-1) ?? '';
      const stream = await follow(house.url, { cookie }, `/stream?after=${after}`);
      await stream.until(isCaughtUp);
      await new Promise((later) => setTimeout(later, 7));
      stream.close();
      // As the page does: what is known is not taken twice.
      for (const id of ids(stream.events)) if (id !== null && !got.includes(id)) got.push(id);
    }
    await talking;
    expect(got).toEqual(said);
  });

  it('a message pushed just before the stream opened is told, though the house does not yet hold it as sent', async () => {
    const waiting: (() => void)[] = [];
    const slow = await openHouse({
      pageFolder,
      answer: () => Promise.resolve(),
      passed: () => new Promise((done) => void waiting.push(() => done([]))),
    });
    const own = await visit(slow.url);
    await knock(slow.url, '/sheet', {
      method: 'POST',
      headers: aboutPost(slow.url, own),
      body: posted({ kind: 'text', text: 'x' }),
    });
    const before = await slow.say({ paragraphs: ['before'] });
    const stream = await follow(slow.url, { cookie: own });
    const during = await slow.say({ paragraphs: ['during'] });
    waiting[0]?.();
    await stream.until(isCaughtUp);
    expect(ids(stream.events)).toEqual([before, during]);
    stream.close();
    await slow.stop();
  });

  it('beats, so that a dead line is noticed', async () => {
    const quick = await openHouse({ pageFolder, limits: { beatMs: 30 } });
    const stream = await follow(quick.url, { cookie: await visit(quick.url) });
    await stream.until((events) => events.filter((one) => one.event === 'beat').length >= 2);
    stream.close();
    await quick.stop();
  });

  it('ends when the house closes, and soon', async () => {
    const brief = await openHouse({ pageFolder });
    const stream = await follow(brief.url, { cookie: await visit(brief.url) });
    const begun = Date.now();
    await brief.stop();
    await stream.ended;
    expect(Date.now() - begun).toBeLessThan(10_000);
  });
});
