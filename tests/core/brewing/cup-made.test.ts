import { describe, expect, it } from 'vitest';
import {
  causesOf,
  isNearPlan,
  shareIfDrawn,
  shareOfCup,
  type Amiss,
  type CupMade,
} from '../../../src/core/brewing/cup-made.ts';
import { solutes, type Solute } from '../../../src/core/brewing/brewing-data.ts';
import { infuse } from '../../../src/core/brewing/infusion.ts';
import { makeRecipe } from '../../../src/core/brewing/recipe.ts';
import { firstState, setupOf } from '../../../src/core/brewing/series.ts';
import { leafOfTea } from '../../../src/core/brewing/leaf-profile.ts';
import type { BrewRequest, Plan } from '../../../src/core/brewing/plan.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';
import { content } from '../../the-content.ts';

const { brewing: data, teas } = content;

function brewed(tea: string, request: Omit<BrewRequest, 'tea' | 'family'>) {
  const found = teas.find(({ id }) => id === tea)!;
  const leaf = leafOfTea(data, found);
  const asked = { tea, family: leaf.family, ...request };
  const plan = planBrew(data, leaf, asked);
  if (isMistake(plan)) throw new Error(plan.code);
  return { brewing: { data, leaf, request: asked }, plan };
}

const first = ({ infusions }: Plan): number => infusions[0]!.seconds;

describe('the first cup after another time', () => {
  const gaiwan = brewed('da-hong-pao', { vessel: 'gaiwan', volumeMl: 110 });

  it('is the planned one after the planned time', () => {
    expect(shareIfDrawn(gaiwan.brewing, gaiwan.plan, first(gaiwan.plan))).toBeCloseTo(1, 2);
  });

  it('is the stronger the longer it draws, and never more than the leaf holds', () => {
    const shares = [5, 15, 60, 300, 3600].map((s) => shareIfDrawn(gaiwan.brewing, gaiwan.plan, s)!);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(new Set(shares).size).toBe(shares.length);
    expect(shares.at(-1)! / shares.at(-2)!).toBeLessThan(1.5);
  });

  it('follows the plan as it was wished', () => {
    const strong = brewed('da-hong-pao', { vessel: 'gaiwan', volumeMl: 110, strength: 1.25, rinsed: false });
    expect(shareIfDrawn(strong.brewing, strong.plan, first(strong.plan))).toBeCloseTo(1, 2);
  });

  it('is told of no powder', () => {
    const whisked = brewed('matcha', { vessel: 'mug', volumeMl: 350 });
    expect(shareIfDrawn(whisked.brewing, whisked.plan, 60)).toBeNull();
  });
});

describe('a leaf that is not to be rinsed', () => {
  it('is not rinsed, and its first infusion draws longer', () => {
    const usual = brewed('da-hong-pao', { vessel: 'gaiwan', volumeMl: 110 }).plan;
    const unrinsed = brewed('da-hong-pao', { vessel: 'gaiwan', volumeMl: 110, rinsed: false }).plan;
    expect(usual.rinse).not.toBeNull();
    expect(unrinsed.rinse).toBeNull();
    expect(first(unrinsed)).toBeGreaterThan(first(usual));
    expect(unrinsed.kettleMl).toBeLessThan(usual.kettleMl);
  });
});

describe('a cup made otherwise', () => {
  const { brewing, plan } = brewed('longjing', { vessel: 'gaiwan', volumeMl: 110 });
  const causes = (made: CupMade, amiss: Amiss) => causesOf(brewing, plan, made, amiss).map(({ of }) => of);

  it('as it was planned is the planned one, whichever of its infusions', () => {
    for (const { n, seconds } of plan.infusions) {
      const made = { infusion: n, leafG: plan.leafG, waterC: plan.waterC, seconds };
      expect(shareOfCup(brewing, plan, made)).toBeCloseTo(1, 2);
      expect([causes(made, 'strong'), causes(made, 'thin')]).toEqual([[], []]);
    }
  });

  it('is the stronger for more leaf, more heat, more time', () => {
    for (const more of [{ leafG: plan.leafG * 1.5 }, { waterC: 90 }, { seconds: first(plan) * 2 }]) {
      expect(shareOfCup(brewing, plan, more)).toBeGreaterThan(1);
    }
    expect(shareOfCup(brewing, plan, { waterC: 100 })).toBeCloseTo(shareOfCup(brewing, plan, { waterC: 120 })!, 5);
  });

  it.each<[string, CupMade, Amiss, readonly string[]]>([
    ['hot and long', { waterC: 95, seconds: 180 }, 'strong', ['heat', 'time']],
    ['much leaf', { leafG: 9 }, 'strong', ['leaf']],
    ['a little more leaf', { leafG: 5.8 }, 'strong', []],
    ['cool and short', { waterC: 60, seconds: 10 }, 'thin', ['time', 'heat']],
    ['little leaf', { leafG: 2 }, 'thin', ['leaf']],
    ['hot and long, and thin all the same', { waterC: 95, seconds: 180 }, 'thin', []],
    ['the second as long as the first', { infusion: 2, seconds: first(plan) }, 'strong', ['time']],
    ['an infusion there is not', { infusion: 30, seconds: 60 }, 'thin', []],
  ])('%s', (_, made, amiss, found) => {
    expect(causes(made, amiss)).toEqual(found);
  });

  it('of powder is told by heat and powder alone', () => {
    const whisked = brewed('matcha', { vessel: 'mug', volumeMl: 350 });
    const found = causesOf(whisked.brewing, whisked.plan, { leafG: whisked.plan.leafG * 2, waterC: 100 }, 'strong');
    expect(found).toMatchObject([{ of: 'heat' }, { of: 'leaf', share: 2 }]);
    expect(isNearPlan(whisked.brewing, whisked.plan, { seconds: 20 })).toBe(false);
  });

  const dissolved = (waterC: number): Record<string, number> => {
    const recipe = makeRecipe({ ...brewing, request: { ...brewing.request, waterC } });
    const filling = { waterMl: recipe.waterMl, waterC, seconds: 60 };
    const { cup } = infuse(setupOf(recipe), firstState(recipe, setupOf(recipe)), filling);
    return Object.fromEntries(solutes.map((solute, i) => [solute, cup.dissolved[i]!]));
  };
  it('hotter draws more of all, and of what is bitter most', () => {
    const [usual, hot] = [dissolved(78), dissolved(95)];
    const rises = (solute: Solute): number => hot[solute]! / usual[solute]!;
    expect(rises('amino')).toBeGreaterThan(1);
    for (const mild of ['amino', 'catechin', 'other'] as const) expect(rises('gallate')).toBeGreaterThan(rises(mild));
  });
});
