/** Powdered tea: whisked into the water and drunk whole, so nothing is infused and nothing left. */
import { solutes } from './brewing-data.ts';
import { contactC } from './vessel.ts';
import type { Recipe } from './recipe.ts';
import { rounded, roundedMl } from './rounding.ts';
import { caffeineIndex, setupOf, type Series } from './series.ts';

/** Common practice, no source. */
const whiskSeconds = 20;

export function whiskedPlan(recipe: Recipe): Series {
  const holdsMgPerG = solutes.reduce((sum, _, i) => sum + (recipe.leaf.contentMgPerG[i] ?? 0), 0);
  const { pot } = setupOf(recipe);
  const { leafG, waterMl, waterC } = recipe;
  const cupC = contactC({ waterMl, waterC, wallJPerK: pot.wallJPerK, leafG, heldMl: 0, bodyC: pot.ambientC });
  return {
    infusions: [
      {
        n: 1,
        seconds: whiskSeconds,
        strengthMgPerMl: rounded((holdsMgPerG * leafG) / waterMl, 3),
        caffeineMg: rounded((recipe.leaf.contentMgPerG[caffeineIndex] ?? 0) * leafG, 1),
        pouredMl: roundedMl(waterMl),
      },
    ],
    waterInAllMl: waterMl,
    cupC,
  };
}
