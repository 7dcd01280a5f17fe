/** The numbers that decided a plan, as three sentences' keys and values: leaf, water, times. The words are elsewhere. */
import type { Plan } from './plan.ts';
import { makeRecipe } from './recipe.ts';
import type { Brewing } from './request.ts';
import { rounded } from './rounding.ts';
import { setupOf } from './series.ts';
import { contactC, warmedC } from './vessel.ts';

export interface Reason {
  readonly key: string;
  readonly values: { readonly [name: string]: number };
}

export function reasonsFor(brewing: Brewing, plan: Plan): readonly [Reason, Reason, Reason] {
  return [leafReason(plan), waterReason(brewing, plan), timeReason(plan)];
}

function leafReason({ leafG, waterMl, fillFraction }: Plan): Reason {
  return { key: 'why-leaf', values: { leafG, waterMl, mlPerG: rounded(waterMl / leafG, 0), fill: fillFraction } };
}

/** First contact with the vessel, and what warming saves. */
function waterReason(brewing: Brewing, plan: Plan): Reason {
  const { waterC, boilsAtC, waterMl } = plan;
  if (plan.style === 'cold') return { key: 'why-water-cold', values: { waterC } };
  const recipe = makeRecipe(brewing);
  const { pot } = setupOf(recipe);
  const met = (wallC: number): number =>
    contactC({ waterMl, waterC, wallJPerK: pot.wallJPerK, leafG: plan.leafG, heldMl: 0, bodyC: wallC });
  const coldC = met(pot.ambientC);
  const warmC = met(warmedC(pot, recipe.volumeMl, waterC));
  const values = {
    waterC,
    boilsAtC,
    coldC: rounded(coldC, 0),
    warmC: rounded(warmC, 0),
    costC: rounded(warmC - coldC, 0),
  };
  return { key: plan.warm ? 'why-water-warmed' : 'why-water-unwarmed', values };
}

function timeReason({ infusions }: Plan): Reason {
  const first = infusions[0];
  const last = infusions.at(-1);
  if (!first || !last) throw new Error('a plan has at least one infusion');
  const values = { count: infusions.length, firstS: first.seconds, strength: rounded(first.strengthMgPerMl, 1) };
  if (first === last) return { key: 'why-time', values };
  return {
    key: 'why-times',
    values: { ...values, lastS: last.seconds, lastStrength: rounded(last.strengthMgPerMl, 1) },
  };
}
