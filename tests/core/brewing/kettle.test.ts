/** Water of a temperature without a thermometer. */
import { describe, expect, it } from 'vitest';
import { afterStanding, kettleWays, mixWay, pitcherWay, waitWay } from '../../../src/core/brewing/kettle.ts';
import { waterJPerK } from '../../../src/core/brewing/water.ts';

const ask = { waterC: 80, waterMl: 500, boilsAtC: 99.97 };

describe('mixing', () => {
  it.each([60, 70, 80, 90])('to %d °C: the heats balance', (waterC) => {
    const { boilingMl, coolMl } = mixWay({ ...ask, waterC });
    const hot = waterJPerK(boilingMl, ask.boilsAtC);
    const cool = waterJPerK(coolMl, 20);
    expect(Math.abs((hot * ask.boilsAtC + cool * 20) / (hot + cool) - waterC)).toBeLessThan(0.3);
    expect(boilingMl + coolMl).toBe(500);
  });

  it('80 °C is about three parts boiling to one part cool', () => {
    const { boilingMl, coolMl } = mixWay(ask);
    expect(Math.abs(boilingMl / coolMl - 3)).toBeLessThan(0.25);
  });
});

const at = (waterC: number, waterMl: number): number => waitWay({ ...ask, waterC, waterMl }).seconds;

it('waiting takes longer for cooler water and for more of it', () => {
  expect(at(80, 500)).toBeGreaterThan(at(90, 500));
  expect(at(80, 1500)).toBeGreaterThan(at(80, 500));
  expect(at(80, 500)).toBeGreaterThan(240);
  expect(at(80, 500)).toBeLessThan(1800);
});

it('a full kettle waits longer than a cup, and so near the boil waiting comes first, off by little', () => {
  const near = { ...ask, waterC: 96, waterMl: 100 };
  expect(waitWay({ ...near, kettleMl: 1000 }).seconds).toBeGreaterThan(waitWay(near).seconds);
  expect(kettleWays(near).map(({ way }) => way)).toEqual(['wait', 'mix']);
  expect(waitWay(near).uncertaintyC).toBeCloseTo((99.97 - 96) / 2, 6);
  expect(kettleWays({ ...near, waterC: 90 }).map(({ way }) => way)[0]).toBe('mix');
});

it('each pour through a cool pitcher takes a good step down', () => {
  const one = pitcherWay({ ...ask, waterC: 88, waterMl: 400 });
  const more = pitcherWay({ ...ask, waterC: 70, waterMl: 400 });
  expect(one?.pours).toBe(1);
  expect(more?.pours).toBeGreaterThan(1);
});

it('offers the two easiest, each with how far it may be off; near the boil only the boil', () => {
  const ways = kettleWays(ask);
  expect(ways).toHaveLength(2);
  expect(ways.every((way) => way.uncertaintyC >= 1 && way.uncertaintyC < 8)).toBe(true);
  expect(kettleWays({ ...ask, waterC: 99.5 }).map(({ way }) => way)).toEqual(['boil']);
});

it.each([200, 500, 1000])('%d ml that stood as long as a temperature takes is at that temperature', (kettleMl) => {
  for (const waterC of [95, 90, 80, 70]) {
    const { seconds } = waitWay({ ...ask, waterC, waterMl: kettleMl });
    expect(Math.abs(afterStanding({ seconds, kettleMl, boilsAtC: ask.boilsAtC }).waterC - waterC)).toBeLessThan(0.5);
  }
});

it('what stands for a day is as cool as the room, and what has just boiled is as hot as that', () => {
  const stood = (seconds: number): number => afterStanding({ seconds, kettleMl: 500, boilsAtC: ask.boilsAtC }).waterC;
  expect(stood(0)).toBe(ask.boilsAtC);
  expect(stood(86_400)).toBeGreaterThan(19);
  expect(stood(86_400)).toBeLessThan(22);
});
