/** The day is told at its time, and a failure costs a minute, not the day. */
import { describe, expect, test } from 'vitest';
import { instantOf } from '../../src/core/lessons/calendar.ts';
import { makeMorning } from '../../src/delivery/morning.ts';
import { keptLog } from '../app/kettle.ts';
import { fakeClock } from './fake-clock.ts';

const minute = 60_000;
const hour = 60 * minute;
const when = { time: '07:30', zone: 'America/Denver' };
const due = instantOf('2026-12-05T07:30', when.zone);

/** A morning at work, with a store that fails so many times first, and when it was asked. */
function morningFrom(start: number, failures = 0) {
  const asked: (readonly [day: string, minutesLate: number])[] = [];
  const owed: number[] = [];
  const clock = fakeClock(start);
  const log = keptLog();
  const tellMorning = (day: string, letters: boolean, now: number): Promise<boolean> => {
    expect(letters).toBe(false);
    asked.push([day, (now - due) / minute]);
    return asked.length > failures ? Promise.resolve(true) : Promise.reject(new Error('the disk is busy'));
  };
  const morning = makeMorning({
    store: { tellMorning },
    clock,
    letters: false,
    log,
    when,
    owed: (at) => void owed.push(at),
  });
  return { asked, owed, clock, log, morning };
}

describe('the morning', () => {
  test('is told at its time', async () => {
    const { asked, owed, clock, morning } = morningFrom(due - hour);
    morning.start();
    await clock.pass(2 * hour);
    morning.stop();
    expect(asked).toEqual([['2026-12-05', 0]]);
    expect(owed).toEqual([due]);
  });

  test('is told a minute later when the store fails once', async () => {
    const { asked, owed, clock, log, morning } = morningFrom(due - hour, 1);
    morning.start();
    await clock.pass(2 * hour);
    morning.stop();
    expect(asked).toEqual([
      ['2026-12-05', 0],
      ['2026-12-05', 1],
    ]);
    expect(owed).toEqual([due + minute]);
    expect(log.lines).toHaveLength(1);
  });

  test('is tried for as long as it is of use, then again the next day', async () => {
    const { asked, clock, morning } = morningFrom(due, 1_000_000);
    morning.start();
    await clock.pass(24 * hour - 1);
    expect(asked.map(([, late]) => late)).toEqual(Array.from({ length: 6 * 60 + 1 }, (_, n) => n));
    await clock.pass(1);
    morning.stop();
    expect(asked.at(-1)).toEqual(['2026-12-06', 24 * 60]);
  });

  test('is not tried again once stopped', async () => {
    const { asked, clock, morning } = morningFrom(due, 1);
    morning.start();
    morning.stop();
    await clock.pass(2 * hour);
    expect(asked).toHaveLength(1);
    expect(clock.waiting()).toBe(0);
  });
});
