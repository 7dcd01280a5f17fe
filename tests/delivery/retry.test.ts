import { assert, integer, property } from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Sent } from '../../src/messages.ts';
import type { Owed, Priority } from '../../src/store/contract.ts';
import { backoffMs, settlementOf } from '../../src/delivery/retry.ts';
import { noon, saying } from '../store/samples.ts';

const owed = (more: Partial<Owed> = {}): Owed => ({
  id: '1-a',
  person: 1,
  address: { channel: 'telegram', chat: 'c' },
  language: 'en',
  saying: saying('hi'),
  priority: 'reply',
  due: noon,
  claimedAt: noon,
  attempts: 0,
  replaces: null,
  ...more,
});
const hours = 60 * 60_000;

describe('one sending', () => {
  test.each<[Sent, Partial<Owed>, object]>([
    [{ outcome: 'sent', ref: 'r' }, {}, { kind: 'sent', ref: 'r' }],
    [{ outcome: 'retry', why: 'busy' }, {}, { kind: 'retry', at: noon + 1_000 }],
    [{ outcome: 'retry', why: 'busy' }, { attempts: 4 }, { kind: 'retry', at: noon + 16_000 }],
    [{ outcome: 'retry', why: 'slow down', notBefore: noon + 35_000 }, {}, { kind: 'retry', at: noon + 35_000 }],
    [{ outcome: 'unknown', why: 'reset' }, {}, { kind: 'doubt', at: noon + 2_000 }],
    [{ outcome: 'unreachable', why: 'blocked' }, {}, { kind: 'unreachable' }],
    [{ outcome: 'refused', why: 'too long' }, {}, { kind: 'give-up', why: 'too long' }],
  ])('that ends %j is settled', (sent, more, settlement) => {
    expect(settlementOf(owed(more), sent, noon)).toMatchObject(settlement);
  });

  test.each<[Priority, number, string]>([
    ['timer', 0.9, 'retry'],
    ['timer', 1.1, 'give-up'],
    ['reply', 23, 'retry'],
    ['reply', 25, 'give-up'],
    ['reminder', 25, 'give-up'],
    ['edit', 2, 'give-up'],
  ])('of a %s %d hours late is a %s', (priority, late, kind) => {
    const settled = settlementOf(owed({ priority, due: noon - late * hours }), { outcome: 'retry', why: 'x' }, noon);
    expect(settled.kind).toBe(kind);
  });
});

test('waits grow, and never beyond a quarter of an hour', () => {
  assert(
    property(integer({ min: 0, max: 2_000 }), (attempts) => {
      expect(backoffMs(attempts)).toBeLessThanOrEqual(900_000);
      expect(backoffMs(attempts + 1)).toBeGreaterThanOrEqual(backoffMs(attempts));
    }),
  );
  expect(backoffMs(0)).toBe(1_000);
});
