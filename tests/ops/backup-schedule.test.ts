import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { inOwnProcess, makeBackupSchedule, type BackupSchedule } from '../../src/operation/backup-schedule.ts';
import type { Instant } from '../../src/core/units.ts';
import type { Log } from '../../src/log.ts';
import { fakeClock, type FakeClock } from '../delivery/fake-clock.ts';

const start = Date.UTC(2026, 9, 25);
const hour = 60 * 60_000;
const quiet: Log = { debug() {}, info() {}, warn() {}, error() {} };

interface Bench {
  readonly clock: FakeClock;
  /** When each was made. */
  readonly made: Instant[];
  readonly schedule: BackupSchedule;
  readonly tick: () => void;
}

function bench({ newest = null as Instant | null, fails = 0, ticking = false } = {}): Bench {
  const clock = fakeClock(start);
  const made: Instant[] = [];
  let left = fails;
  let tick: (() => void) | null = null;
  const schedule = makeBackupSchedule({
    everyHours: 24,
    clock,
    log: quiet,
    newest: () => made.at(-1) ?? newest,
    make() {
      if (left-- > 0) return Promise.reject(new Error('the disk is full'));
      made.push(clock.now());
      return Promise.resolve();
    },
    tick: (call) => {
      if (ticking) tick = call;
      return () => {};
    },
  });
  schedule.start();
  return { clock, made, schedule, tick: () => tick?.() };
}

describe('a backup is made', () => {
  test('within a minute where there is none, then once a day, by the backstop alone', async () => {
    const { clock, made } = bench();
    await clock.pass(3 * 24 * hour + hour);
    expect(made).toHaveLength(4);
    expect(made[0]).toBe(start + 60_000);
    for (const [i, at] of made.entries()) expect(at - start).toBeLessThanOrEqual(i * 24 * hour + (i + 1) * 60_000);
  });

  test('when the newest grows old, whenever the service was started', async () => {
    const { clock, made } = bench({ newest: start - 23 * hour });
    await clock.pass(hour - 60_000);
    expect(made).toEqual([]);
    await clock.pass(60_000);
    expect(made).toHaveLength(1);
  });

  test('by the tick, without waiting for the backstop, and never two at once', async () => {
    const { made, tick } = bench({ ticking: true });
    tick();
    tick();
    await pause(0);
    expect(made).toEqual([start]);
  });

  test('although one of the future lies there', async () => {
    const { clock, made } = bench({ newest: start + 400 * 24 * hour });
    await clock.pass(60_000);
    expect(made).toHaveLength(1);
  });

  test('again a quarter of an hour after it failed, not each minute', async () => {
    const { clock, made } = bench({ fails: 1 });
    await clock.pass(15 * 60_000);
    expect(made).toEqual([]);
    await clock.pass(60_000);
    expect(made).toHaveLength(1);
  });

  test('no more after the stop', async () => {
    const { clock, made, schedule } = bench();
    await schedule.stop();
    await clock.pass(48 * hour);
    expect({ made, waiting: clock.waiting() }).toEqual({ made: [], waiting: 0 });
  });
});

describe('the process that makes it', () => {
  const untold = new AbortController().signal;

  test('is heard when it fails', async () => {
    await expect(inOwnProcess('/nowhere/backup.js')(untold)).rejects.toThrow('ended');
  });

  test('is ended by a stop', async () => {
    const stopping = new AbortController();
    const script = new URL('endless.mjs', import.meta.url).pathname;
    const running = inOwnProcess(script)(stopping.signal);
    stopping.abort();
    await expect(running).rejects.toThrow('ended');
  });
});
