/**
 * What hot water takes out of a leaf. Every solute sits in a fast and a slow part; each part trades with the liquor
 * by first order (Song & Mao 2005: two such parts fit black tea), at a pace that rises with temperature (Arrhenius)
 * and with how wet the leaf is. It knows no vessel, no target and no clock.
 */
import type { Celsius, Grams, Millilitres, Seconds } from '../units.ts';
import { solutes } from './brewing-data.ts';
import type { Leaf } from './leaf.ts';

export const soluteCount = solutes.length;

/** How far a leaf has come: shares of its content, in the order of `solutes`. Survives a JSON round trip. */
export interface LeafState {
  /** 0 dry … 1 soaked through. */
  readonly wetness: number;
  readonly fast: readonly number[];
  readonly slow: readonly number[];
  /** Already dissolved, in the liquor that lies with the leaf. */
  readonly dissolved: readonly number[];
}

export interface Bath {
  readonly leafG: Grams;
  /** All liquor that touches the leaf, what the leaf holds included. */
  readonly liquorMl: Millilitres;
  readonly startC: Celsius;
  readonly ambientC: Celsius;
  /** Cooling per second and K is steady + rising · T. */
  readonly cooling: { readonly steady: number; readonly rising: number };
}

/** A steeping under way, advanced in place for speed; `cells` holds fast, slow, dissolved. */
export interface Steeping {
  readonly cells: Float64Array;
  wetness: number;
  tempC: Celsius;
  elapsedS: Seconds;
}

const referenceK = 353.15;

export function dryLeaf(leaf: Leaf): LeafState {
  return {
    wetness: 0,
    fast: [...leaf.fastShare],
    slow: leaf.fastShare.map((share) => 1 - share),
    dissolved: leaf.fastShare.map(() => 0),
  };
}

export function beginSteeping(state: LeafState, bath: Bath): Steeping {
  const cells = new Float64Array(3 * soluteCount);
  // By hand, here and below: set() and Array.from() of a few numbers took a third of a plan.
  for (let i = 0; i < soluteCount; i++) {
    cells[i] = state.fast[i] as number;
    cells[soluteCount + i] = state.slow[i] as number;
    cells[2 * soluteCount + i] = state.dissolved[i] as number;
  }
  return { cells, wetness: state.wetness, tempC: bath.startC, elapsedS: 0 };
}

export function leafStateOf(steeping: Steeping): LeafState {
  const [fast, slow, dissolved]: [number[], number[], number[]] = [[], [], []];
  for (let i = 0; i < soluteCount; i++) {
    fast.push(steeping.cells[i] as number);
    slow.push(steeping.cells[soluteCount + i] as number);
    dissolved.push(steeping.cells[2 * soluteCount + i] as number);
  }
  return { wetness: steeping.wetness, fast, slow, dissolved };
}

/** Steps grow with the time elapsed: within 0.5 % of a general solver from seconds to a day (a test holds it). */
export function stepSeconds(elapsedS: Seconds): Seconds {
  return 3 + 0.4 * elapsedS;
}

export function steep(leaf: Leaf, bath: Bath, steeping: Steeping, seconds: Seconds): void {
  let left = seconds;
  while (left > 0) {
    const h = Math.min(left, stepSeconds(steeping.elapsedS));
    advance(leaf, bath, steeping, h);
    left -= h;
  }
}

/** One step. Cooling and wetting are exact at the step's middle temperature, the parts trade one after the other. */
export function advance(leaf: Leaf, bath: Bath, steeping: Steeping, h: Seconds): void {
  const middleC = cooled(bath, steeping.tempC, h / 2);
  const inverse = 1 / referenceK - 1 / (middleC + 273.15);
  const wetting = leaf.wettingPace * Math.exp(leaf.wettingK * inverse);
  const dryAfter = Math.exp(-wetting * h);
  const dry = 1 - steeping.wetness;
  const wetSeconds = h - (dry * (1 - dryAfter)) / wetting;
  const keptBack = (leaf.partitionMlPerG * bath.leafG) / bath.liquorMl;
  for (let i = 0; i < soluteCount; i++) {
    const dose = wetSeconds * Math.exp((leaf.activationK[i] as number) * inverse);
    const share = leaf.fastShare[i] as number;
    const slow = (leaf.slowPace[i] as number) * dose;
    trade(steeping.cells, soluteCount + i, keptBack * (1 - share), slow / 2);
    trade(steeping.cells, i, keptBack * share, (leaf.fastPace[i] as number) * dose);
    trade(steeping.cells, soluteCount + i, keptBack * (1 - share), slow / 2);
  }
  steeping.wetness = 1 - dry * dryAfter;
  steeping.tempC = cooled(bath, middleC, h / 2);
  steeping.elapsedS += h;
}

/** One part and the liquor go towards their balance, exactly; nothing is lost and neither can pass it. */
function trade(cells: Float64Array, part: number, keptBack: number, dose: number): void {
  const liquor = 2 * soluteCount + (part % soluteCount);
  const inPart = cells[part] as number;
  const both = inPart + (cells[liquor] as number);
  const balance = (both * keptBack) / (1 + keptBack);
  const now = balance + (inPart - balance) * Math.exp(-dose * (1 + keptBack));
  cells[part] = now;
  cells[liquor] = both - now;
}

function cooled(bath: Bath, c: Celsius, h: Seconds): Celsius {
  const pace = bath.cooling.steady + bath.cooling.rising * c;
  return bath.ambientC + (c - bath.ambientC) * Math.exp(-Math.max(pace, 0) * h);
}

/** mg/ml of everything dissolved. */
export function strengthOf(leaf: Leaf, bath: Bath, steeping: Steeping): number {
  let mgPerG = 0;
  for (let i = 0; i < soluteCount; i++) {
    mgPerG += (steeping.cells[2 * soluteCount + i] as number) * (leaf.contentMgPerG[i] as number);
  }
  return (mgPerG * bath.leafG) / bath.liquorMl;
}
