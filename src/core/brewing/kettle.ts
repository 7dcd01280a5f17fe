/** Ways to water of a temperature without a thermometer, each from a heat balance, with how far it may be off. */
import type { Celsius, Millilitres, Seconds } from '../units.ts';
import { contactC, evaporationW, roomC } from './vessel.ts';
import { waterJPerK } from './water.ts';

export type KettleWay =
  | { readonly way: 'boil'; readonly uncertaintyC: Celsius }
  | {
      readonly way: 'mix';
      readonly boilingMl: Millilitres;
      readonly coolMl: Millilitres;
      readonly uncertaintyC: Celsius;
    }
  | { readonly way: 'wait'; readonly seconds: Seconds; readonly uncertaintyC: Celsius }
  | { readonly way: 'pitcher'; readonly pours: number; readonly reachesC: Celsius; readonly uncertaintyC: Celsius };

export interface KettleAsk {
  readonly waterC: Celsius;
  /** Water wanted at that temperature. */
  readonly waterMl: Millilitres;
  /** What is in the kettle while it waits; as much as is wanted when it isn't told. */
  readonly kettleMl?: Millilitres;
  readonly boilsAtC: Celsius;
  readonly coolC?: Celsius;
}

/** Judgement: so near the boil, a spoonful of cool water is harder to measure than half a minute. */
const hardlyCooler: Celsius = 6;

/** The two easiest ways, the surest first. Nothing to do within a degree of the boil. */
export function kettleWays(ask: KettleAsk): readonly KettleWay[] {
  if (ask.waterC >= ask.boilsAtC - 1) return [{ way: 'boil', uncertaintyC: 1 }];
  if (ask.waterC >= ask.boilsAtC - hardlyCooler) return [waitWay(ask), mixWay(ask)];
  const pitcher = pitcherWay(ask);
  const close = pitcher !== null && Math.abs(pitcher.reachesC - ask.waterC) <= 3;
  return close ? [mixWay(ask), pitcher] : [mixWay(ask), waitWay(ask)];
}

/** Exact but for the measuring: a tenth more or less of cool water, and 3 °C in what "cool" is. */
export function mixWay({ waterC, waterMl, boilsAtC, coolC = roomC }: KettleAsk): KettleWay & { readonly way: 'mix' } {
  const perMl = { hot: waterJPerK(1, boilsAtC) * (boilsAtC - waterC), cool: waterJPerK(1, coolC) * (waterC - coolC) };
  const coolShare = perMl.hot / (perMl.hot + perMl.cool);
  const coolMl = Math.round(waterMl * coolShare);
  const uncertaintyC = 0.1 * coolShare * (boilsAtC - coolC) + 3 * coolShare;
  return { way: 'mix', boilingMl: Math.round(waterMl) - coolMl, coolMl, uncertaintyC: Math.max(uncertaintyC, 1) };
}

/** A kettle's shape, judgement: an open mouth as wide as its water is deep, bare steel walls. */
const wallWPerM2K = 11;

/** What a kettle with its lid off loses at a temperature: by evaporation and through its walls. */
function lossOf(heldMl: Millilitres): (c: Celsius) => number {
  const diameterM = Math.cbrt((4 * heldMl * 1e-6) / Math.PI);
  const mouthM2 = (Math.PI * diameterM ** 2) / 4;
  return (c) => Math.max(0.1, evaporationW(mouthM2, c) + wallWPerM2K * mouthM2 * 5 * (c - roomC));
}

/** Draughts and the kettle's shape: off by half the way, at most 4 °C (judgement). */
const uncertaintyAfter = (fallenC: Celsius): Celsius => Math.min(4, Math.max(1, fallenC / 2));

/** Less is hardly ever boiled. */
const leastHeldMl: Millilitres = 200;

/** What stands in a kettle that was filled for so much. */
export const heldInKettle = (wantedMl: Millilitres): Millilitres => Math.max(wantedMl, leastHeldMl);

/** Lid off, kettle standing, in steps of half a degree. */
export function waitWay({
  waterC,
  waterMl,
  kettleMl = waterMl,
  boilsAtC,
}: KettleAsk): KettleWay & { readonly way: 'wait' } {
  const heldMl = heldInKettle(kettleMl);
  const lossW = lossOf(heldMl);
  let seconds = 0;
  for (let c = boilsAtC; c > waterC; c -= 0.5) {
    const step = Math.min(0.5, c - waterC);
    seconds += (waterJPerK(heldMl, c) * step) / lossW(c);
  }
  const uncertaintyC = uncertaintyAfter(boilsAtC - waterC);
  return { way: 'wait', seconds: Math.max(10, Math.round(seconds / 10) * 10), uncertaintyC };
}

export interface StoodAsk {
  readonly seconds: Seconds;
  /** What is in the kettle. */
  readonly kettleMl: Millilitres;
  readonly boilsAtC: Celsius;
}

/** How hot a boiled kettle is that has stood so long with its lid off: the same loss, in steps of ten seconds. */
export function afterStanding({ seconds, kettleMl, boilsAtC }: StoodAsk): { waterC: Celsius; uncertaintyC: Celsius } {
  const heldMl = heldInKettle(kettleMl);
  const lossW = lossOf(heldMl);
  let c = boilsAtC;
  for (let left = seconds; left > 0 && c > roomC + 1; left -= 10) {
    c -= (lossW(c) * Math.min(10, left)) / waterJPerK(heldMl, c);
  }
  return { waterC: c, uncertaintyC: uncertaintyAfter(boilsAtC - c) };
}

/** A porcelain pitcher of 250 g at room temperature takes the heat; each fall through the air costs a further 2 °C (judgement). */
const pitcherJPerK = 250 * 0.85;
const fallC = 2;

export function pitcherWay({ waterC, waterMl, boilsAtC }: KettleAsk): (KettleWay & { readonly way: 'pitcher' }) | null {
  let c = boilsAtC;
  let best: (KettleWay & { readonly way: 'pitcher' }) | null = null;
  for (let pours = 1; pours <= 3; pours++) {
    const balance = { waterMl, waterC: c, wallJPerK: pitcherJPerK, leafG: 0, heldMl: 0, bodyC: roomC };
    c = contactC(balance) - fallC;
    const off = Math.abs(c - waterC);
    if (best === null || off < Math.abs(best.reachesC - waterC)) {
      best = { way: 'pitcher', pours, reachesC: Math.round(c), uncertaintyC: 2 + pours };
    }
  }
  return best;
}
