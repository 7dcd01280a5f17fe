/** The house as a whole, with a tiny conversation, a real store, a fake channel and a clock that obeys. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { array, assert, asyncProperty, constantFrom, integer, tuple } from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { makeApp, type App } from '../../src/app.ts';
import { makeHistory } from '../../src/delivery/history.ts';
import type { Step } from '../../src/conversation/answer.ts';
import type { Outgoing } from '../../src/messages.ts';
import type { Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { fakeChannel, wordsOf, type FakeChannel } from '../delivery/fake-channel.ts';
import { fakeClock, rest, type FakeClock } from '../delivery/fake-clock.ts';
import { incoming, noon } from '../store/samples.ts';
import { keptLog, kettle, plainSay, type KeptLog } from './kettle.ts';

let folder: string;
let clock: FakeClock;
let log: KeptLog;
let web: FakeChannel;
let telegram: FakeChannel;
let store: Store;
let app: App;
const step = vi.fn<Step>();

async function open(): Promise<void> {
  store = openSqliteStore(join(folder, 'shop.sqlite'));
  web = fakeChannel();
  telegram = fakeChannel('telegram');
  app = makeApp({ store, step, say: plainSay, channels: [web, telegram], clock, log, keepDays: 30 });
  await app.start();
}

const alphabetical = (a = '', b = ''): number => a.localeCompare(b);

const tap = async (key: string, from: string): Promise<readonly string[]> => {
  await web.take(incoming(from, { kind: 'tap', key }));
  await app.settled();
  return wordsOf(web.sent.slice(-1));
};

const write = (text: string, from = 'ann'): Promise<'new' | 'seen'> =>
  web.take(incoming(from, text, { receivedAt: clock.now() }));

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'tea-house-'));
  clock = fakeClock(noon);
  log = keptLog();
  step.mockReset().mockImplementation(kettle);
  await open();
});
afterEach(async () => {
  await app.stop();
  rmSync(folder, { recursive: true });
});

describe('one message', () => {
  test('is answered once, however often it comes', async () => {
    const once = incoming('ann', 'hi', { deviceLanguage: 'zh-TW' });
    expect(await Promise.all([web.take(once), web.take(once)])).toEqual(['new', 'seen']);
    await app.settled();
    expect(wordsOf(web.sent)).toEqual(['zh-Hant echo count=1 text=hi']);
  });

  test('of many of one person is handled in order, each seeing the last', async () => {
    await Promise.all(Array.from({ length: 30 }, (_, i) => write(`n${i}`)));
    await app.settled();
    const answers = Array.from({ length: 30 }, (_, i) => `en echo count=${i + 1} text=n${i}`);
    expect(wordsOf(web.sent)).toEqual(answers);
  });

  test('of many people is handled side by side, and nobody is mixed up', async () => {
    const people = Array.from({ length: 40 }, (_, i) => `person-${i}`);
    await Promise.all(people.flatMap((from) => [write(`${from} a`, from), write(`${from} b`, from)]));
    await app.settled();
    for (const from of people) {
      const mine = web.sent.filter(({ chat }) => chat === `chat-of-${from}`);
      expect(wordsOf(mine)).toEqual([`en echo count=1 text=${from} a`, `en echo count=2 text=${from} b`]);
    }
  });

  test('that opens a label comes with its payload', async () => {
    await web.take(incoming('ann', { kind: 'open', payload: 'tea-longjing' }));
    await app.settled();
    expect(wordsOf(web.sent)).toEqual(['en opened payload=tea-longjing']);
  });
});

describe('a choice', () => {
  test('tapped by whom it was shown to gives what it stands for; anyone else gets one sentence', async () => {
    await write('ask');
    await app.settled();
    const [choice] = web.sent[0]?.choices ?? [];
    expect(choice?.label).toBe('en yes');
    expect(await tap(choice?.key ?? '', 'ben')).toEqual(['en house-unknown-tap']);
    expect(await tap('9-forged.0', 'ann')).toEqual(['en house-unknown-tap']);
    expect(await tap(choice?.key ?? '', 'ann')).toEqual(['en chosen choice=yes cups=2']);
    expect(step).toHaveBeenCalledTimes(2);
  });
});

/** As if the process had died over it so many times. */
const livedThrough = async (deaths: number): Promise<void> => {
  await app.stop();
  const before = openSqliteStore(join(folder, 'shop.sqlite'));
  await before.record(incoming('ann', 'hi', { receivedAt: clock.now() }));
  const { person, event } = (await before.load(1, clock.now()))!;
  if (event.kind === 'wake') throw new Error('expected what was just recorded');
  for (let i = 0; i < deaths; i++) await before.tried(person, { kind: 'incoming', seq: event.seq });
  await before.close();
  await open();
  await app.settled();
};

describe('a step that fails', () => {
  test('is tried three times, then put aside; the person is told once and goes on', async () => {
    await write('hi');
    await write('burst');
    await write('still there?');
    await app.settled();
    expect(wordsOf(web.sent)).toEqual([
      'en echo count=1 text=hi',
      'en house-stumbled',
      'en echo count=2 text=still there?',
    ]);
    expect(step.mock.calls.filter(([, event]) => event.kind === 'text' && event.text === 'burst')).toHaveLength(3);
    const told = log.lines.filter((line) => line.startsWith('a step failed'));
    expect(told).toHaveLength(3);
    expect(told[0]).toContain('TypeError');
    expect(told.join()).not.toMatch(/lid|burst/);
  });

  test('is not taken for one when the process died over it again and again', async () => {
    await livedThrough(18);
    expect(wordsOf(web.sent)).toEqual(['en echo count=1 text=hi']);
  });

  test('is put aside when the process has died over it twenty times', async () => {
    await livedThrough(20);
    expect(wordsOf(web.sent)).toEqual(['en house-stumbled']);
  });

  test('keeps nobody else waiting', async () => {
    await Promise.all([write('burst'), write('hi', 'ben')]);
    await app.settled();
    expect(wordsOf(web.sent)).toContain('en echo count=1 text=hi');
  });
});

describe('timers', () => {
  test('wake the conversation at their instant, and say how late they are', async () => {
    await write('wake 6000');
    await clock.pass(5_999);
    expect(web.sent).toEqual([]);
    await clock.pass(1);
    expect(wordsOf(web.sent)).toEqual(['en woken lateMs=0']);
  });

  test('of a saying for later send it then, unless withdrawn', async () => {
    await write('later 5000');
    await write('later 9000', 'ben');
    await clock.pass(4_000);
    await write('never');
    await clock.pass(5_000);
    expect(wordsOf(web.sent)).toEqual(['en later']);
    expect(web.sent[0]?.chat).toBe('chat-of-ben');
  });

  test('that fell due while the house was closed come at once, knowing how late', async () => {
    await write('later 5000');
    await write('wake 6000', 'ben');
    await app.settled();
    await app.stop();
    await clock.pass(3_600_000);
    await open();
    await rest();
    expect(wordsOf(web.sent).toSorted(alphabetical)).toEqual(['en later lateS=3595', 'en woken lateMs=3594000']);
  });

  test('are found by the backstop when nobody told of them', async () => {
    await write('hi');
    await app.settled();
    const person = (await store.find('web', 'ann')) ?? 0;
    await store.record(incoming('ann', 'unheard'));
    expect(await store.awaiting(['web'], clock.now(), 1)).toEqual([person]);
    await clock.pass(60_000);
    expect(wordsOf(web.sent)).toContain('en echo count=2 text=unheard');
  });
});

describe('sending', () => {
  test('is tried again with growing waits until it succeeds', async () => {
    web.outcomes.push(...Array.from({ length: 3 }, () => ({ outcome: 'retry', why: 'busy' }) as const));
    await write('hi');
    await clock.pass(999);
    expect(web.sent).toHaveLength(1);
    await clock.pass(1);
    expect(web.sent).toHaveLength(2);
    await clock.pass(2_000 + 4_000);
    expect(web.sent).toHaveLength(4);
    await clock.pass(600_000);
    expect(web.sent).toHaveLength(4);
    expect(new Set(web.sent.map(({ id }) => id)).size).toBe(1);
  });

  test('waits as long as the other side asks, and so does the whole chat', async () => {
    web.outcomes.push({ outcome: 'retry', notBefore: noon + 30_000, why: 'slow down' });
    await write('one');
    await rest();
    await write('two');
    await clock.pass(29_999);
    expect(web.sent).toHaveLength(1);
    await clock.pass(1);
    expect(wordsOf(web.sent).slice(1)).toEqual([
      'en echo lateS=30 count=1 text=one',
      'en echo lateS=30 count=2 text=two',
    ]);
  });

  test.each([
    ['never answers', () => new Promise<never>(() => {})],
    ['throws', () => Promise.reject(new Error('socket hang up'))],
    ['cannot tell', () => Promise.resolve({ outcome: 'unknown', why: 'reset' } as const)],
  ])('that %s is repeated once and no more, and where that does no harm until it succeeds', async (_, outcome) => {
    telegram.outcomes.push(outcome, outcome);
    web.outcomes.push(outcome, outcome);
    await telegram.take(incoming('ann', 'hi', { channel: 'telegram' }));
    await write('hi', 'ben');
    await clock.pass(10 * 60_000);
    expect(telegram.sent).toHaveLength(2);
    const told = await store.exportOf((await store.find('telegram', 'ann')) ?? 0);
    expect(told).toMatchObject({ task: [{ task: 'undelivered' }] });
    expect(web.sent).toHaveLength(3);
  });

  test('to someone who is gone stops, and starts anew when they are back', async () => {
    web.outcomes.push({ outcome: 'unreachable', why: 'blocked' });
    await write('later 1000');
    await write('hi');
    await clock.pass(100_000);
    expect(wordsOf(web.sent)).toEqual(['en echo count=2 text=hi']);
    await write('back again');
    await app.settled();
    expect(wordsOf(web.sent).slice(1)).toEqual(['en echo count=3 text=back again']);
  });

  test('replaces what stands in its slot', async () => {
    await write('board');
    await app.settled();
    await write('board');
    await app.settled();
    expect(web.sent.map(({ replaces }) => replaces)).toEqual([undefined, web.sent[0]?.id]);
  });

  test('of a message without words says so in its place, and the chat goes on', async () => {
    step.mockImplementationOnce((_state, event, around) => ({
      ...kettle(null, event, around),
      effects: [{ do: 'say', saying: { phrases: [{ key: 'unsayable', values: {} }], choices: [] } }],
    }));
    await write('hi');
    await write('go on');
    await app.settled();
    expect(wordsOf(web.sent)).toEqual(['en house-wordless', 'en echo count=2 text=go on']);
    expect(log.lines.some((line) => line.startsWith('message has no words'))).toBe(true);
  });

  test('speaks the language the person chose, from the next message on', async () => {
    await write('speak zh-Hans');
    await write('hi');
    await app.settled();
    expect(wordsOf(web.sent)).toEqual(['zh-Hans language language=en', 'zh-Hans echo count=2 text=hi']);
  });
});

test('an orderly stop loses nothing and doubles nothing', async () => {
  const texts = Array.from({ length: 200 }, (_, i) => `n${i}`);
  const writing = Promise.allSettled(texts.map((text, i) => write(text, `p${i % 20}`)));
  await app.stop();
  await writing;
  const before = web.sent;
  await open();
  await app.settled();
  await rest();
  const said = wordsOf([...before, ...web.sent]).map((words) => words.split('text=')[1]);
  expect(said.toSorted(alphabetical)).toEqual(texts.toSorted(alphabetical));
});

test('both sides of a chat are told again, in order and in the same words, also after a restart', async () => {
  // As on the page: who writes is known by the chat's own name.
  const say = (text: string) => web.take(incoming('ann', text, { chat: 'ann', receivedAt: clock.now() }));
  await say('hi');
  await app.settled();
  await clock.pass(1_000);
  await say('ask');
  await app.settled();
  const sent = web.sent;
  await app.stop();
  await clock.pass(1_000);
  await open();
  const history = makeHistory({ store, say: plainSay, log });
  const address = { channel: 'web', chat: 'ann' } as const;
  const told = async (after: string | null) =>
    (await history(address, after)).map((one) => ('said' in one ? one.said : one.heard.what));
  const [first, ...others] = sent;
  const texts = ['hi', 'ask'].map((text) => ({ kind: 'text', text }));
  expect(await told(null)).toEqual([texts[0], first, texts[1], ...others]);
  // What came in the very instant of that message is told once more: the page knows it by its name.
  expect(await told(first?.id ?? '')).toEqual([...texts, ...others]);
});

test('whatever comes in, in whatever order and however often, is answered as if it came once in order', async () => {
  const words = constantFrom(
    'hi',
    'ask',
    'board',
    'speak zh-Hant',
    'speak en',
    'like 3',
    'wake 10',
    'burst',
    '',
    '\u200b',
  );
  let round = 0;
  await assert(
    asyncProperty(array(tuple(words, integer({ min: 1, max: 3 })), { maxLength: 12 }), async (texts) => {
      round += 1;
      const from = `round-${round}`;
      const sentBefore = web.sent.length;
      for (const [text, times] of texts) {
        const one = incoming(from, text);
        await Promise.all(Array.from({ length: times }, () => web.take(one)));
        await app.settled();
      }
      await clock.pass(100);
      const mine = web.sent.slice(sentBefore).filter(({ chat }) => chat === `chat-of-${from}`);
      const silent = texts.filter(([text]) => text.startsWith('wake')).length;
      expect(mine.filter((message) => !isWoken(message))).toHaveLength(texts.length - silent);
      expect(new Set(mine.map(({ id }) => id)).size).toBe(mine.length);
    }),
    { numRuns: 25 },
  );
});

const isWoken = ({ paragraphs }: Outgoing): boolean => paragraphs[0]?.includes('woken') ?? false;
