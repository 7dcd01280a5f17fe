import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { systemClock } from '../src/clock.ts';

beforeEach(() => void vi.useFakeTimers({ now: 1_000_000 }));
afterEach(() => void vi.useRealTimers());

test.each([0, 1, 59_999, 60_000, 60_001, 86_400_000])('a call in %i ms comes then, once', (wait) => {
  const call = vi.fn<() => void>();
  systemClock.wakeAt(Date.now() + wait, call);
  vi.advanceTimersByTime(Math.max(0, wait - 1));
  expect(call).toHaveBeenCalledTimes(wait === 0 ? 1 : 0);
  vi.advanceTimersByTime(wait === 0 ? 0 : 1);
  expect(call).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(120_000);
  expect(call).toHaveBeenCalledTimes(1);
});

test('a call further off than setTimeout can count is asked for in steps', () => {
  const call = vi.fn<() => void>();
  const set = vi.spyOn(globalThis, 'setTimeout');
  systemClock.wakeAt(Date.now() + 2 ** 31 + 86_400_000, call);
  vi.advanceTimersByTime(600_000);
  expect(Math.max(...set.mock.calls.map(([, wait]) => wait ?? 0))).toBeLessThanOrEqual(1_000);
  vi.setSystemTime(Date.now() + 2 ** 31 + 86_400_000);
  vi.advanceTimersByTime(1_001);
  expect(call).toHaveBeenCalledTimes(1);
  set.mockRestore();
});

test('a call whose instant has passed comes at once', () => {
  const call = vi.fn<() => void>();
  systemClock.wakeAt(Date.now() - 5_000, call);
  vi.advanceTimersByTime(0);
  expect(call).toHaveBeenCalledTimes(1);
});

test('a call that is cancelled never comes, however far it had got', () => {
  const call = vi.fn<() => void>();
  const cancel = systemClock.wakeAt(Date.now() + 150_000, call);
  vi.advanceTimersByTime(130_000);
  cancel();
  vi.advanceTimersByTime(1_000_000);
  expect(call).not.toHaveBeenCalled();
});

test('a clock set forward is noticed within a second, one set back brings nothing early', () => {
  const [early, late] = [vi.fn<() => void>(), vi.fn<() => void>()];
  systemClock.wakeAt(Date.now() + 600_000, early);
  vi.setSystemTime(Date.now() + 600_000);
  vi.advanceTimersByTime(1_001);
  expect(early).toHaveBeenCalledTimes(1);
  systemClock.wakeAt(Date.now() + 10_000, late);
  vi.setSystemTime(Date.now() - 3_600_000);
  vi.advanceTimersByTime(10_000);
  expect(late).not.toHaveBeenCalled();
});
