/** How long it stays warm: the closed form against small steps, and what must hold of vessels. */
import { describe, expect, it, test } from 'vitest';
import { keepsWarm, secondsDownTo } from '../../../src/core/brewing/keeps-warm.ts';
import { data, leafOf, plan, request } from './real-data.ts';

function inSmallSteps(startC: number, endC: number, loss: { steady: number; rising: number }): number {
  let [c, seconds] = [startC, 0];
  while (c > endC) {
    c -= (loss.steady + loss.rising * c) * (c - 20) * 0.1;
    seconds += 0.1;
  }
  return seconds;
}

test.each([
  [{ steady: 2e-4, rising: 0 }, 92, 65],
  [{ steady: 1e-4, rising: 6e-6 }, 95, 45],
  [{ steady: 8e-6, rising: 1e-7 }, 96, 65],
])('%j from %d to %d °C', (cooling, startC, endC) => {
  const exact = secondsDownTo({ startC, ambientC: 20, cooling }, endC);
  expect(exact / inSmallSteps(startC, endC, cooling)).toBeCloseTo(1, 2);
});

test('what is as cold already is there at once', () => {
  expect(secondsDownTo({ startC: 60, ambientC: 20, cooling: { steady: 2e-4, rising: 0 } }, 65)).toBe(0);
});

function lukewarmAfter(vessel: string, volumeMl: number): number {
  const asked = request('assam', vessel, volumeMl);
  const warm = keepsWarm({ data, leaf: leafOf('assam'), request: asked }, plan('assam', vessel, volumeMl));
  expect(warm?.drunkAfterS).toBeLessThan(warm?.lukewarmAfterS ?? 0);
  return warm?.lukewarmAfterS ?? 0;
}

describe('of vessels', () => {
  it('stays warm longer, the more there is of it', () => {
    expect(lukewarmAfter('porcelain-pot', 1000)).toBeGreaterThan(lukewarmAfter('porcelain-pot', 500));
  });
  it('stays warm longer with a lid on, and by far longest in a flask', () => {
    expect(lukewarmAfter('porcelain-pot', 400)).toBeGreaterThan(lukewarmAfter('mug', 400));
    expect(lukewarmAfter('thermos', 400)).toBeGreaterThan(5 * lukewarmAfter('porcelain-pot', 400));
  });
  it('tells nothing of what is cold, or whisked', () => {
    const cold = request('sencha', 'cold-jar', 700);
    expect(keepsWarm({ data, leaf: leafOf('sencha'), request: cold }, plan('sencha', 'cold-jar', 700))).toBeNull();
  });
});
