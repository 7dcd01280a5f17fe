/** The first cup after another time than the plan's: how strong it is against the planned one. */
import type { Seconds } from '../units.ts';
import { fill, pourOff } from './infusion.ts';
import type { Plan } from './plan.ts';
import { brewedStyle, makeRecipe } from './recipe.ts';
import type { Brewing } from './request.ts';
import { fillingFor, firstState, handlingS, rhythms, setupOf } from './series.ts';

/** Against the planned first cup, 1 for the same; null where the leaf is drunk, or judged, by another rule. */
export function shareIfDrawn(brewing: Brewing, plan: Plan, seconds: Seconds): number | null {
  const [first] = plan.infusions;
  if (!first || plan.style === 'whisked' || plan.style === 'cupping') return null;
  const recipe = makeRecipe(brewing);
  const setup = setupOf(recipe);
  const state = firstState(recipe, setup);
  const filled = fill(setup, state, fillingFor(recipe, rhythms[brewedStyle(recipe.style)], state));
  return pourOff(filled, seconds + handlingS(recipe)).cup.strengthMgPerMl / first.strengthMgPerMl;
}
