/** What must hold for every brew: shares between 0 and 1, mass kept, more never giving less, no figure missing. */
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { brewedShares } from '../../../src/core/brewing/as-brewed.ts';
import { solutes, type LeafProfile } from '../../../src/core/brewing/brewing-data.ts';
import { Course } from '../../../src/core/brewing/course.ts';
import { dryLeaf, type Bath, type LeafState } from '../../../src/core/brewing/extraction.ts';
import { dryBrew, infuse, rest } from '../../../src/core/brewing/infusion.ts';
import { makeLeaf } from '../../../src/core/brewing/leaf.ts';
import { families } from '../../../src/core/brewing/plan.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';
import { potOf } from '../../../src/core/brewing/vessel.ts';
import { data, teas } from './real-data.ts';

/** Ten thousand where the machine has the time. */
const runs = process.env['CI'] === undefined ? 1000 : 10_000;
const forms = Object.keys(data.forms);
const vessels = Object.keys(data.vessels);

const profile: fc.Arbitrary<LeafProfile> = fc.record({
  family: fc.constantFrom(...families),
  form: fc.constantFrom(...forms),
});
const hold = fc.double({ min: 0, max: 86_400, noNaN: true }).map((s) => s ** 2 / 86_400);
const bath: fc.Arbitrary<Bath> = fc.record({
  leafG: fc.double({ min: 0.1, max: 20, noNaN: true }),
  liquorMl: fc.double({ min: 50, max: 1000, noNaN: true }),
  startC: fc.double({ min: 0, max: 100, noNaN: true }),
  ambientC: fc.constant(20),
  cooling: fc.constant({ steady: 0.0003, rising: 0.000003 }),
});
const still = { steady: 0, rising: 0 };

function soaked(leafProfile: LeafProfile, one: Bath, seconds: number, from?: LeafState): LeafState {
  const leaf = makeLeaf(data, leafProfile);
  return new Course(leaf, one, from ?? dryLeaf(leaf)).at(seconds).leaf;
}

/** mg of everything dissolved. */
function dissolvedMg(leafProfile: LeafProfile, state: LeafState, leafG: number): number {
  const { contentMgPerG } = makeLeaf(data, leafProfile);
  return state.dissolved.reduce((sum, share, i) => sum + share * (contentMgPerG[i] ?? 0), 0) * leafG;
}

const noLess = (more: number, less: number): boolean => more >= less * (1 - 1e-3) - 1e-9;

describe('laws of extraction', () => {
  it('shares stay between 0 and 1 and add up to all there is', () => {
    fc.assert(
      fc.property(profile, bath, hold, (leaf, one, seconds) => {
        const { fast, slow, dissolved, wetness } = soaked(leaf, one, seconds);
        expect(wetness >= 0 && wetness <= 1).toBe(true);
        const parts = solutes.map((_, i) => [fast[i]!, slow[i]!, dissolved[i]!]);
        expect(parts.flat().every((part) => part >= -1e-12 && part <= 1 + 1e-12)).toBe(true);
        expect(parts.every((part) => Math.abs(part.reduce((a, b) => a + b) - 1) < 1e-9)).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('more time never gives less', () => {
    fc.assert(
      fc.property(profile, bath, hold, hold, (leaf, one, seconds, more) => {
        const short = dissolvedMg(leaf, soaked(leaf, one, seconds), one.leafG);
        expect(noLess(dissolvedMg(leaf, soaked(leaf, one, seconds + more), one.leafG), short)).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('more heat never gives less', () => {
    fc.assert(
      fc.property(profile, bath, hold, fc.double({ min: 0, max: 50, noNaN: true }), (leaf, one, seconds, hotter) => {
        const cool = dissolvedMg(leaf, soaked(leaf, one, seconds), one.leafG);
        const warm = { ...one, startC: Math.min(one.startC + hotter, 100) };
        expect(noLess(dissolvedMg(leaf, soaked(leaf, warm, seconds), one.leafG), cool)).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('more leaf never gives less', () => {
    fc.assert(
      fc.property(profile, bath, hold, fc.double({ min: 0, max: 20, noNaN: true }), (leaf, one, seconds, more) => {
        const leafG = one.leafG + more;
        const little = dissolvedMg(leaf, soaked(leaf, one, seconds), one.leafG);
        expect(noLess(dissolvedMg(leaf, soaked(leaf, { ...one, leafG }, seconds), leafG), little)).toBe(true);
      }),
      { numRuns: runs },
    );
  });

  it('splitting an infusion in two equals the whole', () => {
    fc.assert(
      fc.property(profile, bath, hold, fc.double({ min: 0.05, max: 0.95, noNaN: true }), (leaf, one, seconds, at) => {
        const held = { ...one, cooling: still };
        const whole = soaked(leaf, held, seconds);
        const parts = soaked(leaf, held, seconds * (1 - at), soaked(leaf, held, seconds * at));
        expect(parts.dissolved.every((share, i) => Math.abs(share - whole.dissolved[i]!) < 0.005)).toBe(true);
      }),
      { numRuns: runs },
    );
  });
});

describe('laws of a series', () => {
  const series = fc.array(
    fc.record({
      waterMl: fc.double({ min: 20, max: 600, noNaN: true }),
      waterC: fc.double({ min: 0, max: 100, noNaN: true }),
      seconds: hold,
    }),
    { minLength: 1, maxLength: 8 },
  );

  it('never gives more than the leaf holds, with or without a vessel', () => {
    const vessel = fc.constantFrom(...vessels, null);
    fc.assert(
      fc.property(profile, series, vessel, (leaf, infusions, id) => {
        const shares = brewedShares(data, leaf, { leafG: 3, infusions, ...(id === null ? {} : { vessel: id }) });
        for (let i = 0; i < solutes.length; i++) {
          const each = shares.map(({ released }) => released[i]!);
          if (each.some((share) => !(share >= 0)) || each.reduce((a, b) => a + b) > 1 + 1e-6) return false;
        }
        return true;
      }),
      { numRuns: runs / 2 },
    );
  });

  // Found by dice, once in some hundred thousand: poured off before a drop clung to the leaf.
  it('never gives more than the leaf holds after an infusion of no time at all', () => {
    const infusions = [
      { waterMl: 78.04316166839935, waterC: 0, seconds: 0 },
      { waterMl: 577.5820946836727, waterC: 99.88303125487077, seconds: 2.5216649024743525e-16 },
      { waterMl: 33.65486542043154, waterC: 0, seconds: 309.4993843730783 },
    ];
    const leaf: LeafProfile = { family: 'green', form: 'granule' };
    const shares = brewedShares(data, leaf, { leafG: 3, infusions, vessel: 'porcelain-pot' });
    const ofEach = solutes.map((_, i) => shares.reduce((sum, { released }) => sum + released[i]!, 0));
    expect(Math.max(...ofEach)).toBeLessThan(0.9);
  });

  it('keeps mass: what is poured, held and left is all there was; and water too', () => {
    fc.assert(
      fc.property(profile, series, fc.constantFrom(...vessels), (leafProfile, infusions, id) => {
        const setup = { leaf: makeLeaf(data, leafProfile), leafG: 4, pot: potOf(data.vessels[id]!, 250, 95) };
        let state = dryBrew(setup, 20);
        let poured = 0;
        let water = 0;
        for (const infusion of infusions) {
          const done = infuse(setup, state, infusion);
          poured += ((done.cup.dissolved[1] ?? 0) * done.cup.pouredMl) / done.cup.liquorMl;
          water += infusion.waterMl - done.cup.pouredMl;
          state = rest(setup, done.state, 30);
        }
        const { fast, slow, dissolved } = state.leaf;
        expect(Math.abs(poured + fast[1]! + slow[1]! + dissolved[1]! - 1)).toBeLessThan(1e-6);
        expect(Math.abs(water - state.heldMl - state.insideMl)).toBeLessThan(1e-6);
      }),
      { numRuns: runs / 2 },
    );
  });
});

it('a plan has no figure missing, whatever is asked within the ranges', () => {
  const asked = fc.record(
    {
      vessel: fc.constantFrom(...vessels),
      volumeMl: fc.double({ min: 20, max: 5000, noNaN: true }),
      leafG: fc.double({ min: 0.1, max: 3, noNaN: true }),
      waterC: fc.double({ min: 1, max: 100, noNaN: true }),
      elevationM: fc.double({ min: -450, max: 9000, noNaN: true }),
      guests: fc.integer({ min: 1, max: 20 }),
      warmed: fc.boolean(),
      strength: fc.double({ min: 0.6, max: 1.5, noNaN: true }),
    },
    { requiredKeys: ['vessel', 'volumeMl'] },
  );
  fc.assert(
    fc.property(fc.constantFrom(...teas), asked, (tea, rest_) => {
      const leaf = { family: tea.family, form: tea.form, ...tea.leaf } as LeafProfile;
      const made = planBrew(data, leaf, { tea: tea.id, family: leaf.family, ...rest_ });
      if (isMistake(made)) {
        expect(made.code).toMatch(/out-of-range$/);
        return;
      }
      expect(made.infusions.length).toBeGreaterThan(0);
      const figures = made.infusions.flatMap((i) => [i.seconds, i.strengthMgPerMl, i.caffeineMg, i.pouredMl]);
      const all = [...figures, made.leafG, made.waterMl, made.fillFraction, made.waterC, made.boilsAtC, made.kettleMl];
      expect(all.every((figure) => Number.isFinite(figure) && figure >= 0)).toBe(true);
    }),
    { numRuns: runs / 2 },
  );
});
