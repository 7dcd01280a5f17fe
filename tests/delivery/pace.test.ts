import { array, assert, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import { freeAt, levelAt, makePace, spend, type Bucket, type Pace } from '../../src/delivery/pace.ts';
import type { Owed, Priority } from '../../src/store/contract.ts';
import { noon, saying } from '../store/samples.ts';

const rate = { burst: 3, perSecond: 1 };

test('in any window no more goes than the burst and what the window brings', () => {
  assert(
    property(array(integer({ min: 0, max: 3_000 }), { maxLength: 60 }), (gaps) => {
      let bucket: Bucket | undefined;
      let now = noon;
      const sent: number[] = [];
      for (const gap of gaps) {
        now += gap;
        if (bucket && freeAt(bucket, rate, now) > now) continue;
        bucket = spend(bucket, rate, now);
        sent.push(now);
      }
      for (const [i, from] of sent.entries()) {
        for (const [j, to] of sent.slice(i).entries()) {
          expect(j + 1).toBeLessThanOrEqual(rate.burst + ((to - from) / 1000) * rate.perSecond + 1e-9);
        }
      }
    }),
  );
});

test('a clock set back neither fills nor empties a bucket', () => {
  const bucket = spend(undefined, rate, noon);
  expect(levelAt(bucket, rate, noon - 3_600_000)).toBe(2);
});

const owed = (chat: string, priority: Priority): Owed => ({
  id: '1-a',
  person: 1,
  address: { channel: 'telegram', chat },
  language: 'en',
  saying: saying('hi'),
  priority,
  due: noon,
  claimedAt: noon,
  attempts: 0,
  replaces: null,
});

const roomOf = (pace: Pace, now: number): number | undefined => pace.held(now).bulkRoom.get('telegram');

describe('a channel', () => {
  test('holds a chat after its burst, until the next token, and no other chat', () => {
    const pace = makePace();
    for (let i = 0; i < 3; i++) {
      expect(pace.held(noon).chats.size).toBe(0);
      pace.spent(owed('a', 'reply'), noon);
    }
    expect(pace.held(noon)).toMatchObject({ chats: new Set(['telegram a']), until: noon + 1_000 });
    expect(pace.held(noon + 1_000).chats.size).toBe(0);
  });

  test('holds reminders and edits of all when they are many, never replies', () => {
    const pace = makePace();
    for (let i = 0; i < 25; i++) pace.spent(owed(`r${i}`, 'reply'), noon);
    expect(roomOf(pace, noon)).toBe(5);
    for (let i = 0; i < 5; i++) pace.spent(owed(`b${i}`, 'reminder'), noon);
    expect(roomOf(pace, noon)).toBe(0);
    expect(pace.held(noon).until).toBe(noon + 40);
    expect(roomOf(pace, noon + 40)).toBe(1);
  });

  test('takes no more at once than its bucket holds', () => {
    const pace = makePace(['web', 'telegram']);
    expect(roomOf(pace, noon)).toBe(5);
    for (let i = 0; i < 3; i++) pace.spent(owed(`b${i}`, 'reminder'), noon);
    expect(roomOf(pace, noon)).toBe(2);
    expect(roomOf(pace, noon + 80)).toBe(4);
  });

  test('of the page and the terminal is never held', () => {
    const pace = makePace(['web', 'terminal']);
    for (let i = 0; i < 1_000; i++) {
      pace.spent({ ...owed('a', 'edit'), address: { channel: 'web', chat: 'a' } }, noon);
    }
    expect(pace.held(noon)).toEqual({ chats: new Set(), until: null, bulkRoom: new Map() });
  });

  test('waits when asked to', () => {
    const pace = makePace();
    pace.pause({ channel: 'telegram', chat: 'a' }, noon + 30_000);
    expect(pace.held(noon + 29_999).chats).toEqual(new Set(['telegram a']));
    expect(pace.held(noon + 30_000).chats.size).toBe(0);
  });
});
