/** How long tea stays warm in the vessel it was brewed in. */
import type { Celsius, Seconds } from '../units.ts';
import { bathOf } from './infusion.ts';
import type { Plan } from './plan.ts';
import { makeRecipe } from './recipe.ts';
import type { Brewing } from './request.ts';
import { firstState, setupOf } from './series.ts';
import type { Bath } from './extraction.ts';

/** Very hot drinks begin here (IARC 2016), so this is when it may be drunk; below the other it is lukewarm: judgement. */
const drunkFromC: Celsius = 65;
const lukewarmC: Celsius = 45;

export interface KeepsWarm {
  readonly drunkFromC: Celsius;
  readonly drunkAfterS: Seconds;
  readonly lukewarmC: Celsius;
  readonly lukewarmAfterS: Seconds;
}

/** Counted from when it is filled, in a room of 20 °C; null where it is brewed cold or in a bowl. */
export function keepsWarm(brewing: Brewing, plan: Plan): KeepsWarm | null {
  if (plan.style === 'cold' || plan.style === 'whisked') return null;
  const recipe = makeRecipe(brewing);
  const setup = setupOf(recipe);
  const bath = bathOf(setup, firstState(recipe, setup), { waterMl: plan.waterMl, waterC: plan.waterC });
  return {
    drunkFromC,
    drunkAfterS: secondsDownTo(bath, drunkFromC),
    lukewarmC,
    lukewarmAfterS: secondsDownTo(bath, lukewarmC),
  };
}

/** Loss is (steady + rising · T) times the difference to the surroundings: its integral, in a closed form. */
export function secondsDownTo({ startC, ambientC, cooling }: Omit<Bath, 'leafG' | 'liquorMl'>, endC: Celsius): Seconds {
  if (startC <= endC) return 0;
  const { steady, rising } = cooling;
  const logAt = (c: Celsius): number => Math.log((c - ambientC) / (steady + rising * c));
  return (logAt(startC) - logAt(endC)) / (steady + rising * ambientC);
}
