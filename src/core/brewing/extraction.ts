/**
 * What hot water takes out of a leaf. Every solute sits in a fast and a slow part; each part trades with the liquor
 * by first order (Song & Mao 2005: two such parts fit black tea), at a pace that rises with temperature (Arrhenius)
 * and with how wet the leaf is. How much has moved depends on the dose alone: the time it would have taken in a soaked
 * leaf at 80 °C (exchange.ts). Here the doses are added up. It knows no vessel, no target and no clock.
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

/** A steeping under way. */
export interface Steeping {
  /** Of every solute, in the order of `solutes`. */
  readonly doses: Seconds[];
  /** 1 − wetness. */
  readonly dry: number;
  readonly tempC: Celsius;
  readonly elapsedS: Seconds;
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

export function beginSteeping({ wetness }: LeafState, { startC }: Bath): Steeping {
  return { doses: solutes.map(() => 0), dry: 1 - wetness, tempC: startC, elapsedS: 0 };
}

/** A step lasts until the water is so much cooler or warmer … */
const stepK = 6;
/** … and at most so long, so that the wait for a strength is looked for within a short stretch. */
const longestStepS = (elapsedS: Seconds): Seconds => 20 + elapsedS;

/** Within 0.2 % of a general solver from seconds to a day (a test holds it). */
export function stepSeconds({ ambientC, cooling }: Bath, { tempC, elapsedS }: Steeping): Seconds {
  const paceKPerS = Math.abs((cooling.steady + cooling.rising * tempC) * (tempC - ambientC));
  return Math.min(stepK / paceKPerS, longestStepS(elapsedS));
}

/**
 * One step. Cooling is exact, wetting exact at the step's middle temperature; the dose is exact but for the rate, which is taken
 * once: as it is when half of the step's wet time has gone by.
 */
export function advance(leaf: Leaf, bath: Bath, from: Steeping, h: Seconds): Steeping {
  const { elapsedS } = from;
  const { wetS, centreS, dry } = from.dry > soaked ? wetted(leaf, bath, from, h) : { wetS: h, centreS: h / 2, dry: 0 };
  const inverse = inverseOf(cooledC(bath, elapsedS + centreS));
  const doses = from.doses.slice();
  for (let i = 0; i < soluteCount; i++) {
    doses[i] = (doses[i] as number) + wetS * Math.exp((leaf.activationK[i] as number) * inverse);
  }
  return { doses, dry, tempC: cooledC(bath, elapsedS + h), elapsedS: elapsedS + h };
}

/** What is still dry then makes no difference to any figure. */
const soaked = 1e-6;

/** How long the leaf is wet in a step, counted as if it were soaked; where the middle of that time lies; and what stays dry. */
function wetted(leaf: Leaf, bath: Bath, { dry, elapsedS }: Steeping, h: Seconds) {
  const pace = leaf.wettingPace * Math.exp(leaf.wettingK * inverseOf(cooledC(bath, elapsedS + h / 2)));
  const left = Math.exp(-pace * h);
  const wetS = Math.max(h - (dry * (1 - left)) / pace, 0);
  const moment = (h * h) / 2 - (dry * (1 - left * (1 + pace * h))) / (pace * pace);
  return { wetS, centreS: wetS > 1e-6 * h ? moment / wetS : h / 2, dry: dry * left };
}

const inverseOf = (c: Celsius): number => 1 / referenceK - 1 / (c + 273.15);

/** Newton's law of cooling with a loss that rises with the temperature has a closed form. */
function cooledC({ startC, ambientC, cooling: { steady, rising } }: Bath, seconds: Seconds): Celsius {
  // The line of losses ends at nothing: it does not go on to warm.
  if (steady + rising * startC <= 0) return startC;
  const above = startC - ambientC;
  const pace = steady + rising * ambientC;
  // Either way round the exponential only falls: one that rises would end in Infinity, and 0 times that in no number.
  const left = Math.exp(-Math.abs(pace) * seconds);
  const lost = Math.abs(pace) > 1e-9 ? (1 - left) / Math.abs(pace) : seconds;
  const grown = rising * above * lost;
  return ambientC + (pace > 0 ? (above * left) / (1 + grown) : above / (left + grown));
}
