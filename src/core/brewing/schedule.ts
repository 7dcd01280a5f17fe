/** The plan: what to take, how hot, how long and how often. It reads no files and no clock. */
import type { Mistake } from '../units.ts';
import type { BrewingData, LeafProfile } from './brewing-data.ts';
import { cautionsFor } from './cautions.ts';
import { cuppingPlan } from './cupping.ts';
import type { BrewRequest, Plan } from './plan.ts';
import { makeRecipe, type Recipe } from './recipe.ts';
import { isMistake, mistakeIn } from './request.ts';
import { rounded } from './rounding.ts';
import { solvedSeries, type Series } from './series.ts';
import { whiskedPlan } from './whisked.ts';

export { isMistake };

/** A plan, or what is wrong with the request. */
export function planBrew(data: BrewingData, profile: LeafProfile, request: BrewRequest): Plan | Mistake {
  const mistake = mistakeIn({ data, leaf: profile, request });
  if (mistake) return mistake;
  const recipe = makeRecipe({ data, leaf: profile, request });
  if (recipe.style === 'whisked') return planOf(request, recipe, whiskedPlan(recipe));
  if (recipe.style === 'cupping') return planOf(request, recipe, cuppingPlan(request, recipe));
  return planOf(request, recipe, solvedSeries(recipe));
}

function planOf(request: BrewRequest, recipe: Recipe, series: Series): Plan {
  const caffeineMg = series.infusions.reduce((sum, i) => sum + i.caffeineMg, 0);
  const cups = recipe.style === 'gongfu' ? recipe.guests * 40 : 0;
  const kettle = series.waterInAllMl + (recipe.warm ? recipe.volumeMl + cups : 0);
  return {
    tea: request.tea,
    family: recipe.leaf.profile.family,
    vessel: request.vessel,
    style: recipe.style,
    leafG: series.leafG ?? recipe.leafG,
    waterMl: series.waterMl ?? recipe.waterMl,
    fillFraction: rounded((series.leafG ?? recipe.leafG) / recipe.leaf.bulkGPerMl / recipe.volumeMl, 3),
    waterC: recipe.waterC,
    boilsAtC: recipe.boilsAtC,
    warm: recipe.warm,
    rinse: recipe.rinseSeconds === null ? null : { seconds: recipe.rinseSeconds },
    infusions: series.infusions,
    kettleMl: Math.ceil(kettle / 10) * 10,
    cautions: cautionsFor(recipe, { caffeineMg, cupC: series.cupC, isTeaKnown: request.tea !== null }),
  };
}
