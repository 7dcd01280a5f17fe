/**
 * A plan's own search for its times, with every steeping solved by a general solver: one to the target, one for each trial of
 * a counted time, one for each pause. The leaf, the fillings and the rounding are the plan's.
 */
import { bathOf, pourOff, type BrewState, type Poured } from '../../src/core/brewing/infusion.ts';
import type { Recipe } from '../../src/core/brewing/recipe.ts';
import { countedStep, roundedSeconds } from '../../src/core/brewing/rounding.ts';
import {
  easing,
  fillingFor,
  firstAim,
  firstState,
  handlingS,
  rhythms,
  setupOf,
} from '../../src/core/brewing/series.ts';
import { solvedSteeping, solvedTime } from './general-solver.ts';

const rhythm = rhythms.gongfu;

interface Trial extends Poured {
  readonly seconds: number;
}

export interface Searched {
  readonly seconds: readonly number[];
  /** How often a steeping was solved. */
  readonly solved: number;
}

/** Where the brew stands, which infusion comes next, and the strength its first cup aims at. */
export interface Begun {
  readonly state: BrewState;
  readonly next: number;
  readonly aim: number;
}

/** For gongfu, where the first aim holds: the search whose aim must be moved goes through all this again. */
export function searchBySolver(recipe: Recipe, tolerance: number, begun = beginning(recipe)): Searched {
  let state = begun.next === 1 ? begun.state : restedBySolver(recipe, begun.state, tolerance);
  const seconds: number[] = [];
  let solved = begun.next === 1 ? 0 : 1;
  for (let n = begun.next; n <= recipe.target.infusions; n++) {
    const goal = begun.aim * easing(rhythm, n);
    const search = searchOne(recipe, state, { goal, tolerance });
    if (n > 1 && search.best.cup.strengthMgPerMl < goal * 0.9) break;
    seconds.push(search.best.seconds);
    state = restedBySolver(recipe, search.best.state, tolerance);
    solved += search.solved + 1;
  }
  return { seconds, solved };
}

function beginning(recipe: Recipe): Begun {
  return { state: firstState(recipe, setupOf(recipe)), next: 1, aim: firstAim(recipe) };
}

function searchOne(
  recipe: Recipe,
  state: BrewState,
  { goal, tolerance }: { readonly goal: number; readonly tolerance: number },
): { readonly best: Trial; readonly solved: number } {
  const setup = setupOf(recipe);
  const filling = fillingFor(recipe, rhythm, state);
  const steeped = { leaf: setup.leaf, bath: bathOf(setup, state, filling), from: state.leaf };
  const handling = handlingS(recipe);
  const at = (seconds: number) => solvedSteeping({ ...steeped, seconds }, tolerance);
  const reached = solvedTime({ ...steeped, seconds: rhythm.longestS + handling }, goal, tolerance);
  const course = { ...steeped, at, secondsToReach: () => reached };
  const poured = (wished: number): Trial => {
    const seconds = roundedSeconds(Math.min(Math.max(wished, rhythm.leastS), rhythm.longestS));
    return { seconds, ...pourOff({ setup, before: state, keepMl: filling.keepMl ?? 0, course }, seconds + handling) };
  };
  const first = poured(reached - handling);
  const off = ({ cup }: Trial): number => cup.strengthMgPerMl / goal - 1;
  if (Math.abs(off(first)) <= 0.06) return { best: first, solved: 2 };
  const step = countedStep(first.seconds);
  const other = poured(first.seconds + (off(first) < 0 ? step : -step));
  return { best: Math.abs(off(other)) < Math.abs(off(first)) ? other : first, solved: 3 };
}

function restedBySolver(recipe: Recipe, state: BrewState, tolerance: number): BrewState {
  const setup = setupOf(recipe);
  if (state.heldMl <= 0) return state;
  const bath = bathOf(setup, state, { waterMl: 0, waterC: state.bodyC });
  const { tempC, leaf } = solvedSteeping(
    { leaf: setup.leaf, bath, from: state.leaf, seconds: rhythm.restS },
    tolerance,
  );
  return { ...state, bodyC: tempC, leaf };
}
