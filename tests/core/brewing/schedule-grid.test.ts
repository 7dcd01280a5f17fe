/** Every tea × vessel × style × height × taste: nothing absurd comes out, and what should rise rises. */
import { describe, expect, it } from 'vitest';
import { styles, type Plan } from '../../../src/core/brewing/plan.ts';
import { makeRecipe } from '../../../src/core/brewing/recipe.ts';
import { easing, rhythms, solvedSeries } from '../../../src/core/brewing/series.ts';
import { data, leafOf, plan, request, teas } from './real-data.ts';

const sizes: { readonly [vessel: string]: number } = {
  gaiwan: 110,
  'clay-pot': 150,
  'porcelain-pot': 310,
  'glass-pot': 600,
  'metal-pot': 600,
  'iron-pot': 800,
  saucepan: 1500,
  kyusu: 250,
  mug: 300,
  'infuser-mug': 350,
  'french-press': 800,
  thermos: 500,
  tumbler: 350,
  jar: 400,
  'cold-jar': 1000,
};
const heights = [0, 1640, 4000];
const wishes = [0.6, 1, 1.5];

function figuresOf({ leafG, waterMl, fillFraction, waterC, kettleMl, infusions }: Plan): readonly number[] {
  const cups = infusions.flatMap((i) => [i.seconds, i.strengthMgPerMl, i.caffeineMg, i.pouredMl]);
  return [leafG, waterMl, fillFraction, waterC, kettleMl, ...cups];
}

function wrongIn(made: Plan): string[] {
  const wrong: string[] = [];
  if (figuresOf(made).some((figure) => !Number.isFinite(figure))) wrong.push('a figure is missing');
  if (made.infusions.length === 0) wrong.push('no infusion');
  if (!(made.fillFraction > 0 && made.fillFraction <= 0.8)) wrong.push(`fill ${made.fillFraction}`);
  if (made.waterC > made.boilsAtC) wrong.push('hotter than the boil');
  const whole = made.style === 'whisked' || made.style === 'cupping';
  const rhythm = whole ? null : rhythms[made.style as keyof typeof rhythms];
  for (const { n, seconds, strengthMgPerMl, pouredMl, caffeineMg } of made.infusions) {
    if (rhythm && (seconds < rhythm.leastS || seconds > rhythm.longestS)) wrong.push(`${n}: ${seconds} s`);
    if (!(pouredMl > 0 && caffeineMg >= 0 && strengthMgPerMl > 0)) wrong.push(`${n}: an empty cup`);
  }
  return wrong;
}

describe('the whole grid', () => {
  it.each(Object.entries(sizes))('%s: no plan is absurd', (vessel, volumeMl) => {
    const wrong: string[] = [];
    let made = 0;
    for (const { id } of teas) {
      for (const style of styles) {
        if (style === 'whisked' && leafOf(id).family !== 'matcha') continue;
        for (const elevationM of heights) {
          for (const strength of wishes) {
            made++;
            const one = plan(id, vessel, volumeMl, { style, elevationM, strength });
            wrong.push(...wrongIn(one).map((what) => `${id} ${style} ${elevationM} m ×${strength}: ${what}`));
          }
        }
      }
    }
    expect(made).toBe(teas.length * 5 * 9 + 9);
    expect(wrong).toEqual([]);
  });

  it.each(Object.entries(sizes))('%s: every cup is within 12 %% of its target', (vessel, volumeMl) => {
    const off: string[] = [];
    for (const { id } of teas.filter(({ family }) => family !== 'matcha')) {
      for (const style of ['gongfu', 'western', 'grandpa', 'cold'] as const) {
        for (const strength of wishes) {
          const recipe = makeRecipe({
            data,
            leaf: leafOf(id),
            request: request(id, vessel, volumeMl, { style, strength }),
          });
          const { aim = 0, infusions } = solvedSeries(recipe);
          for (const { n, strengthMgPerMl } of infusions) {
            const ratio = strengthMgPerMl / (aim * easing(rhythms[style], n));
            if (Math.abs(ratio - 1) > 0.12) off.push(`${id} ${style} ×${strength} ${n}: ${ratio.toFixed(3)}`);
          }
        }
      }
    }
    expect(off).toEqual([]);
  });

  it('gives every vessel of the data a size here', () => {
    expect(Object.keys(sizes).toSorted()).toEqual(Object.keys(data.vessels).toSorted());
  });
});
