/** The model's steps and closed form against a general solver of differential equations (odex), over random brews. */
import * as fc from 'fast-check';
import { Solver } from 'odex';
import { expect, it } from 'vitest';
import { families } from '../../src/core/brewing/plan.ts';
import { Course } from '../../src/core/brewing/course.ts';
import { dryLeaf, type Bath } from '../../src/core/brewing/extraction.ts';
import { makeLeaf, type Leaf } from '../../src/core/brewing/leaf.ts';
import { data } from '../core/brewing/real-data.ts';

/** Temperature, wetness, then fast, slow and dissolved of one solute. */
function solved(leaf: Leaf, bath: Bath, seconds: number, solute: number): number {
  const share = leaf.fastShare[solute]!;
  const kept = (leaf.partitionMlPerG * bath.leafG) / bath.liquorMl;
  const rates = (_t: number, [c, wet, fast, slow, out]: number[]): number[] => {
    const inverse = 1 / 353.15 - 1 / (c! + 273.15);
    const pace = wet! * Math.exp(leaf.activationK[solute]! * inverse);
    const fromFast = leaf.fastPace[solute]! * pace * (fast! - share * kept * out!);
    const fromSlow = leaf.slowPace[solute]! * pace * (slow! - (1 - share) * kept * out!);
    const cooling = (bath.cooling.steady + bath.cooling.rising * c!) * (c! - bath.ambientC);
    const wetting = leaf.wettingPace * Math.exp(leaf.wettingK * inverse) * (1 - wet!);
    return [-cooling, wetting, -fromFast, -fromSlow, fromFast + fromSlow];
  };
  const solver = new Solver(5);
  solver.absoluteTolerance = 1e-9;
  solver.relativeTolerance = 1e-9;
  return solver.solve(rates, 0, [bath.startC, 0, share, 1 - share, 0], seconds).y[4]!;
}

it('agrees within 0.2 % of what the leaf holds', { timeout: 60_000 }, () => {
  const brew = fc.record({
    family: fc.constantFrom(...families),
    form: fc.constantFrom(...Object.keys(data.forms)),
    leafG: fc.double({ min: 1, max: 12, noNaN: true }),
    liquorMl: fc.double({ min: 80, max: 800, noNaN: true }),
    startC: fc.double({ min: 4, max: 99, noNaN: true }),
    cooling: fc.double({ min: 0, max: 8e-4, noNaN: true }),
    seconds: fc.double({ min: 0, max: 1, noNaN: true }).map((u) => 4 * 20_000 ** u),
    solute: fc.integer({ min: 0, max: 4 }),
  });
  let worst = 0;
  fc.assert(
    fc.property(brew, ({ family, form, leafG, liquorMl, startC, cooling, seconds, solute }) => {
      const leaf = makeLeaf(data, { family, form });
      const ambientC = Math.min(20, startC);
      const bath: Bath = { leafG, liquorMl, startC, ambientC, cooling: { steady: cooling / 2, rising: cooling / 150 } };
      const { dissolved } = new Course(leaf, bath, dryLeaf(leaf)).at(seconds).leaf;
      const off = Math.abs(dissolved[solute]! - solved(leaf, bath, seconds, solute));
      worst = Math.max(worst, off);
      expect(off).toBeLessThan(0.002);
    }),
    { numRuns: 400 },
  );
  expect(worst).toBeGreaterThan(0);
});
