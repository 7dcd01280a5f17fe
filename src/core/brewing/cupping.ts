/** Judging tea by the standards' own recipes: nothing is solved, the brew is what the standard says. */
import type { Grams, Millilitres, Seconds } from '../units.ts';
import { dryBrew, infuse, rest } from './infusion.ts';
import type { BrewRequest, PlannedInfusion } from './plan.ts';
import type { Recipe } from './recipe.ts';
import { roundedGrams, roundedMl } from './rounding.ts';
import { planned, setupOf, type Series } from './series.ts';

interface Standard {
  readonly leafG: Grams;
  readonly waterMl: Millilitres;
  readonly seconds: readonly Seconds[];
}

export function cuppingPlan(request: BrewRequest, recipe: Recipe): Series {
  const standard = standardFor(request, recipe);
  const setup = { ...setupOf(recipe), leafG: standard.leafG };
  let state = dryBrew(setup, setup.pot.ambientC);
  let cupC = 0;
  const infusions = standard.seconds.map((seconds, i): PlannedInfusion => {
    const done = infuse(setup, state, { waterMl: standard.waterMl, waterC: recipe.waterC, seconds });
    state = rest(setup, done.state, 30);
    cupC = Math.max(cupC, done.cup.endC);
    return planned(setup, { n: i + 1, seconds }, done.cup);
  });
  const { leafG, waterMl } = standard;
  return { infusions, waterInAllMl: waterMl * infusions.length, cupC, leafG, waterMl };
}

function standardFor(request: BrewRequest, recipe: Recipe): Standard {
  const { family } = recipe.leaf.profile;
  const isoPot = request.vessel === 'porcelain-pot' && (family === 'black' || family === 'green');
  const bowl = request.vessel === 'gaiwan' && family === 'oolong';
  const made = isoPot ? isoCup(recipe) : bowl ? coveredBowl(recipe) : ratioCup(recipe);
  return request.leafG === undefined ? made : { ...made, leafG: request.leafG };
}

/** ISO 3103:2019: 310 ml pot filled with 285 and 5.6 g, 150 ml pot with 140 and 2.8 g; black 6, leafy green 5, fannings 3 min. */
function isoCup({ leaf, volumeMl }: Recipe): Standard {
  const waterMl = roundedMl(volumeMl * (volumeMl < 200 ? 140 / 150 : 285 / 310));
  const fine = leaf.form.surface === 'cut' || leaf.form.surface === 'granule';
  const minutes = leaf.profile.family === 'black' ? 6 : fine ? 3 : 5;
  return { leafG: roundedGrams(waterMl * 0.0197), waterMl, seconds: [minutes * 60] };
}

/** GB/T 23776-2018, covered bowl of 110 ml for oolong: 2, 3, 5 min (quoted); its 5 g of leaf from memory. */
function coveredBowl({ volumeMl }: Recipe): Standard {
  return { leafG: roundedGrams((volumeMl * 5) / 110), waterMl: roundedMl(volumeMl), seconds: [120, 180, 300] };
}

/** GB/T 23776-2018: 1:50; ball oolong 6, other oolong 5 min (quoted); green 4, the others 5 min (from memory). */
function ratioCup({ leaf, volumeMl }: Recipe): Standard {
  const { family, form } = leaf.profile;
  const minutes = family === 'green' ? 4 : family === 'oolong' && form === 'ball-rolled' ? 6 : 5;
  return { leafG: roundedGrams(volumeMl / 50), waterMl: roundedMl(volumeMl), seconds: [minutes * 60] };
}
