/** The laws once more where the dice fall far out, in real vessels that cool: thimbles and cauldrons, ice and boil, seconds and days. */
import * as fc from 'fast-check';
import { Solver } from 'odex';
import { describe, expect, it } from 'vitest';
import { brewedShares, type BrewedInfusion } from '../../../src/core/brewing/as-brewed.ts';
import type { LeafProfile } from '../../../src/core/brewing/brewing-data.ts';
import { Course } from '../../../src/core/brewing/course.ts';
import { dryLeaf, type Bath } from '../../../src/core/brewing/extraction.ts';
import { makeLeaf } from '../../../src/core/brewing/leaf.ts';
import { families } from '../../../src/core/brewing/plan.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';
import { contactC, potOf, warmedC } from '../../../src/core/brewing/vessel.ts';
import { boilingPointC } from '../../../src/core/brewing/water.ts';
import { data, teas } from './real-data.ts';

const runs = process.env['CI'] === undefined ? 500 : 5000;
const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
/** As many from each power of ten. */
const spread = (min: number, max: number): fc.Arbitrary<number> => between(Math.log(min), Math.log(max)).map(Math.exp);

const profile: fc.Arbitrary<LeafProfile> = fc.record({
  family: fc.constantFrom(...families),
  form: fc.constantFrom(...Object.keys(data.forms)),
});
const vessel = fc.constantFrom(...Object.keys(data.vessels));
const leafG = spread(0.3, 60);
const one = fc.record({ waterMl: spread(30, 3000), waterC: between(0, 100), seconds: spread(1, 86_400) });

/** mg dissolved by the first infusion. */
function dissolvedMg(leaf: LeafProfile, grams: number, infusion: BrewedInfusion, id: string | null): number {
  const { cup } = brewedShares(data, leaf, {
    leafG: grams,
    infusions: [infusion],
    ...(id === null ? {} : { vessel: id }),
  })[0]!;
  return cup.strengthMgPerMl * cup.liquorMl;
}

const noLess = (more: number, less: number): boolean => more >= less * (1 - 2e-3) - 1e-9;

describe('in any vessel', () => {
  it('longer, hotter and more leaf never dissolve less, and more water never makes it stronger', () => {
    fc.assert(
      fc.property(profile, vessel, leafG, one, between(1, 3), (leaf, id, grams, infusion, times) => {
        const mg = dissolvedMg(leaf, grams, infusion, id);
        const hotter = Math.min(infusion.waterC * times, 100);
        // Water colder than the room is kept cold, warmer water cools in the room: another vessel's worth of difference.
        const bothSides = infusion.waterC < 20 && hotter > 20;
        const wide = { ...infusion, waterMl: infusion.waterMl * times };
        expect(noLess(dissolvedMg(leaf, grams, { ...infusion, seconds: infusion.seconds * times }, id), mg)).toBe(true);
        if (!bothSides) expect(noLess(dissolvedMg(leaf, grams, { ...infusion, waterC: hotter }, id), mg)).toBe(true);
        expect(noLess(dissolvedMg(leaf, grams * times, infusion, null), dissolvedMg(leaf, grams, infusion, null))).toBe(
          true,
        );
        expect(
          noLess(
            dissolvedMg(leaf, grams, infusion, null) / infusion.waterMl,
            dissolvedMg(leaf, grams, wide, null) / wide.waterMl,
          ),
        ).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('a cup is never stronger than all its leaf dissolved in its water, nor warmer than what went in', () => {
    fc.assert(
      fc.property(
        profile,
        vessel,
        leafG,
        fc.array(one, { minLength: 1, maxLength: 6 }),
        (leaf, id, grams, infusions) => {
          const holdsMg = makeLeaf(data, leaf).contentMgPerG.reduce((sum, mg) => sum + mg, 0) * grams;
          const warmest = Math.max(20, ...infusions.map(({ waterC }) => waterC));
          for (const { cup } of brewedShares(data, leaf, { leafG: grams, infusions, vessel: id })) {
            expect(cup.strengthMgPerMl * cup.liquorMl).toBeLessThanOrEqual(holdsMg * (1 + 1e-9));
            expect(cup.pouredMl).toBeGreaterThanOrEqual(0);
            expect(cup.pouredMl).toBeLessThanOrEqual(cup.liquorMl + 1e-9);
            expect(cup.startC).toBeLessThanOrEqual(warmest + 1e-9);
            expect(cup.endC).toBeLessThanOrEqual(warmest + 1e-9);
            expect(Object.values(cup).flat().every(Number.isFinite)).toBe(true);
          }
        },
      ),
      { numRuns: runs },
    );
  });
});

describe('in closed form', () => {
  it('twice the leaf in twice the water that holds its temperature is as strong', () => {
    fc.assert(
      fc.property(profile, leafG, one, spread(0.1, 10), (leaf, grams, infusion, times) => {
        const much = { ...infusion, waterMl: infusion.waterMl * times };
        const strength = dissolvedMg(leaf, grams, infusion, null) / infusion.waterMl;
        expect(dissolvedMg(leaf, grams * times, much, null) / much.waterMl).toBeCloseTo(strength, 9);
      }),
      { numRuns: runs },
    );
  });

  it('in the end the leaf keeps what the partition keeps: 1 / (1 + K · g / ml) is out', () => {
    fc.assert(
      fc.property(profile, spread(0.3, 60), spread(100, 3000), (leaf, grams, waterMl) => {
        const [{ released } = { released: [] }] = brewedShares(data, leaf, {
          leafG: grams,
          infusions: [{ waterMl, waterC: 100, seconds: 172_800 }],
        });
        const out = 1 / (1 + (data.kinetics.partitionMlPerG * grams) / waterMl);
        expect(released.every((share) => Math.abs(share - out) < 1e-3)).toBe(true);
      }),
      { numRuns: runs / 5 },
    );
  });

  it('a vessel that loses by Newton’s law alone cools as e^(−kt), and one that steams as a general solver says', () => {
    const leaf = makeLeaf(data, { family: 'oolong', form: 'twisted-strip' });
    const coolness = fc.record({ startC: between(25, 100), steady: spread(1e-6, 1e-2), rising: between(0, 1e-4) });
    fc.assert(
      fc.property(coolness, spread(1, 86_400), ({ startC, steady, rising }, seconds) => {
        const bath = (more: number): Bath => ({
          leafG: 5,
          liquorMl: 100,
          startC,
          ambientC: 20,
          cooling: { steady, rising: more },
        });
        const after = (more: number): number => new Course(leaf, bath(more), dryLeaf(leaf)).at(seconds).tempC;
        expect(after(0)).toBeCloseTo(20 + (startC - 20) * Math.exp(-steady * seconds), 6);
        const solver = new Solver(1);
        solver.absoluteTolerance = 1e-8;
        solver.relativeTolerance = 1e-8;
        const { y } = solver.solve((_t, [c]) => [-(steady + rising * c!) * (c! - 20)], 0, [startC], seconds);
        expect(Math.abs(after(rising) - y[0]!)).toBeLessThan(1e-3);
      }),
      { numRuns: runs / 5 },
    );
  });
});

// Found by the dice above: e^(kt) grew past all numbers, and nothing times that is no number.
it('what has long cooled by Newton’s law alone is as cool as the room', () => {
  const leaf = makeLeaf(data, { family: 'oolong', form: 'twisted-strip' });
  const cooling = { steady: 0.01, rising: 0 };
  const bath: Bath = { leafG: 5, liquorMl: 100, startC: 95, ambientC: 20, cooling };
  expect(new Course(leaf, bath, dryLeaf(leaf)).at(86_400).tempC).toBeCloseTo(20, 9);
});

describe('heat', () => {
  it('what meets ends between the coldest and the hottest, and a warmed vessel never costs more degrees', () => {
    fc.assert(
      fc.property(vessel, spread(30, 3000), between(20, 100), leafG, (id, waterMl, waterC, grams) => {
        const pot = potOf(data.vessels[id]!, waterMl, waterC);
        const meet = (bodyC: number): number =>
          contactC({ waterMl, waterC, wallJPerK: pot.wallJPerK, leafG: grams, heldMl: 0, bodyC });
        expect(meet(20)).toBeGreaterThanOrEqual(20 - 1e-9);
        expect(meet(20)).toBeLessThanOrEqual(waterC + 1e-9);
        expect(meet(warmedC(pot, waterMl, waterC))).toBeGreaterThanOrEqual(meet(20) - 1e-9);
      }),
      { numRuns: runs },
    );
  });

  it('higher up water boils cooler, and no plan asks for water hotter than it boils there', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...teas),
        vessel,
        spread(30, 3000),
        between(0, 5000),
        (tea, id, volumeMl, elevationM) => {
          expect(boilingPointC(elevationM + 1)).toBeLessThan(boilingPointC(elevationM));
          const leaf = { family: tea.family, form: tea.form, ...tea.leaf } as LeafProfile;
          const made = planBrew(data, leaf, { tea: tea.id, family: leaf.family, vessel: id, volumeMl, elevationM });
          if (isMistake(made)) return;
          expect(made.waterC).toBeLessThanOrEqual(made.boilsAtC);
          expect(Math.abs(made.boilsAtC - boilingPointC(elevationM))).toBeLessThan(0.51);
        },
      ),
      { numRuns: runs / 5 },
    );
  });
});
