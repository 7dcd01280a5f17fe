import { describe, expect, it } from 'vitest';
import { shareIfDrawn } from '../../../src/core/brewing/drawn.ts';
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
