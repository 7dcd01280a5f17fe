/** The model of extraction handed to a general solver of differential equations (odex): all solutes, the wetting and the cooling at once. */
import { Solver } from 'odex';
import type { Moment } from '../../src/core/brewing/course.ts';
import { soluteCount, type Bath, type LeafState } from '../../src/core/brewing/extraction.ts';
import type { Leaf } from '../../src/core/brewing/leaf.ts';

const referenceK = 353.15;

/** Temperature, wetness, then fast, slow and dissolved of every solute. */
function rates(leaf: Leaf, bath: Bath) {
  const kept = (leaf.partitionMlPerG * bath.leafG) / bath.liquorMl;
  return (_seconds: number, y: number[]): number[] => {
    const [c = 0, wet = 0] = y;
    const inverse = 1 / referenceK - 1 / (c + 273.15);
    const change = [
      -(bath.cooling.steady + bath.cooling.rising * c) * (c - bath.ambientC),
      leaf.wettingPace * Math.exp(leaf.wettingK * inverse) * (1 - wet),
    ];
    for (let i = 0; i < soluteCount; i++) {
      const [fast = 0, slow = 0, out = 0] = [y[2 + i], y[2 + soluteCount + i], y[2 + 2 * soluteCount + i]];
      const share = leaf.fastShare[i] ?? 0;
      const pace = wet * Math.exp((leaf.activationK[i] ?? 0) * inverse);
      const fromFast = (leaf.fastPace[i] ?? 0) * pace * (fast - share * kept * out);
      const fromSlow = (leaf.slowPace[i] ?? 0) * pace * (slow - (1 - share) * kept * out);
      change[2 + i] = -fromFast;
      change[2 + soluteCount + i] = -fromSlow;
      change[2 + 2 * soluteCount + i] = fromFast + fromSlow;
    }
    return change;
  };
}

export interface Steeped {
  readonly leaf: Leaf;
  readonly bath: Bath;
  readonly from: LeafState;
  readonly seconds: number;
}

type Begun = Omit<Steeped, 'seconds'>;

function solverOf(tolerance: number): Solver {
  const solver = new Solver(2 + 3 * soluteCount);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  return solver;
}

const startOf = ({ bath, from }: Begun): number[] => [
  bath.startC,
  from.wetness,
  ...from.fast,
  ...from.slow,
  ...from.dissolved,
];

function momentOf(
  { leaf, bath }: Pick<Steeped, 'leaf' | 'bath'>,
  [tempC = 0, wetness = 0, ...shares]: readonly number[],
): Moment {
  const part = (n: number): readonly number[] => shares.slice(n * soluteCount, (n + 1) * soluteCount);
  const dissolved = part(2);
  const mgPerG = dissolved.reduce((sum, share, i) => sum + share * (leaf.contentMgPerG[i] ?? 0), 0);
  return {
    leaf: { wetness, fast: part(0), slow: part(1), dissolved },
    tempC,
    strengthMgPerMl: (mgPerG * bath.leafG) / bath.liquorMl,
  };
}

/** The steeping at its end. */
export function solvedSteeping({ leaf, bath, from, seconds }: Steeped, tolerance: number): Moment {
  const { y } = solverOf(tolerance).solve(rates(leaf, bath), 0, startOf({ leaf, bath, from }), seconds);
  return momentOf({ leaf, bath }, y);
}

/** Dissolved share of every solute after the steeping. */
export function solve(steeped: Steeped, tolerance: number): readonly number[] {
  return solvedSteeping(steeped, tolerance).leaf.dissolved;
}

/** Seconds until the liquor is this strong: solved once, no farther than that; within the last step its own interpolation is halved. */
export function solvedTime({ leaf, bath, from, seconds }: Steeped, strengthMgPerMl: number, tolerance: number): number {
  const solver = solverOf(tolerance);
  solver.denseOutput = true;
  let reached = seconds;
  solver.solve(rates(leaf, bath), 0, startOf({ leaf, bath, from }), seconds, (_, xOld, x, y, within) => {
    if (momentOf({ leaf, bath }, y).strengthMgPerMl < strengthMgPerMl) return true;
    if (x === xOld) reached = x;
    else
      reached = halved(xOld, x, (at) => {
        const values = Array.from(y, (__, i) => within(i, at));
        return momentOf({ leaf, bath }, values).strengthMgPerMl >= strengthMgPerMl;
      });
    return false;
  });
  return reached;
}

/** To a hundredth of a second. */
function halved(from: number, to: number, isReached: (at: number) => boolean): number {
  let [low, high] = [from, to];
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (isReached(middle)) high = middle;
    else low = middle;
  }
  return high;
}
