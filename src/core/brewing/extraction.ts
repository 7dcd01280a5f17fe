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
  readonly cells: number[];
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
  const { fast, slow, dissolved } = state;
  const cells = fast.concat(slow, dissolved);
  return { cells, wetness: state.wetness, tempC: bath.startC, elapsedS: 0 };
}

export function leafStateOf(steeping: Steeping): LeafState {
  const { cells, wetness } = steeping;
  const part = (n: number): readonly number[] => cells.slice(n * soluteCount, (n + 1) * soluteCount);
  return { wetness, fast: part(0), slow: part(1), dissolved: part(2) };
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
    const fastKept = keptBack * (leaf.fastShare[i] as number);
    const slowKept = keptBack * (1 - (leaf.fastShare[i] as number));
    const fastLeft = Math.exp(-(leaf.fastPace[i] as number) * dose * (1 + fastKept));
    const slowLeft = Math.exp((-(leaf.slowPace[i] as number) * dose * (1 + slowKept)) / 2);
    trade(steeping.cells, soluteCount + i, slowKept, slowLeft);
    trade(steeping.cells, i, fastKept, fastLeft);
    trade(steeping.cells, soluteCount + i, slowKept, slowLeft);
  }
  steeping.wetness = 1 - dry * dryAfter;
  steeping.tempC = cooled(bath, middleC, h / 2);
  steeping.elapsedS += h;
}

/** One part and the liquor go towards their balance, until so much of the way is left; nothing is lost and neither can pass it. */
function trade(cells: number[], part: number, keptBack: number, left: number): void {
  const liquor = 2 * soluteCount + (part % soluteCount);
  const inPart = cells[part] as number;
  const both = inPart + (cells[liquor] as number);
  const balance = (both * keptBack) / (1 + keptBack);
  const now = balance + (inPart - balance) * left;
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
