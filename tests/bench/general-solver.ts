/** The model of extraction handed to a general solver of differential equations (odex): all solutes, the wetting and the cooling at once. */
import { Solver } from 'odex';
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

/** Dissolved share of every solute after the steeping. */
export function solve({ leaf, bath, from, seconds }: Steeped, tolerance: number): readonly number[] {
  const solver = new Solver(2 + 3 * soluteCount);
  solver.absoluteTolerance = tolerance;
  solver.relativeTolerance = tolerance;
  const start = [bath.startC, from.wetness, ...from.fast, ...from.slow, ...from.dissolved];
  return solver.solve(rates(leaf, bath), 0, start, seconds).y.slice(2 + 2 * soluteCount);
}
