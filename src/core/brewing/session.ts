/**
 * A brew under way: what was really poured moves the leaf's state, and what is still to come is solved again.
 * Plain values in and out, so a session can be kept, resumed and replayed. It holds no clock.
 */
import type { Celsius, Millilitres, Mistake, Seconds } from '../units.ts';
import { infuse, rest, type BrewState, type Cup } from './infusion.ts';
import type { PlannedInfusion } from './plan.ts';
import { brewedStyle, makeRecipe, type Recipe } from './recipe.ts';
import { mistakeIn, type Brewing } from './request.ts';
import {
  easing,
  fillingFor,
  firstState,
  handlingS,
  planned,
  rhythms,
  setupOf,
  solveInfusion,
  solvedSeries,
  vesselfulOf,
} from './series.ts';

/** Survives a JSON round trip. */
export interface Session {
  /** Strength the first cup aims at, mg/ml. */
  readonly aim: number;
  /** The infusion that comes next. */
  readonly next: number;
  readonly state: BrewState;
  readonly poured: readonly PlannedInfusion[];
}

/** What really happened; what is left out went as planned. */
export interface Pour {
  readonly seconds: Seconds;
  readonly waterMl?: Millilitres;
  readonly waterC?: Celsius;
  /** How long the leaf has waited since the last pour. */
  readonly restedS?: Seconds;
}

/** The style's usual pause is taken for the wait before the next infusion until the real one is told. */
export function beginBrew(brewing: Brewing): Session | Mistake {
  const mistake = mistakeIn(brewing);
  if (mistake) return mistake;
  const recipe = recipeOf(brewing);
  const aim = solvedSeries(recipe).aim ?? 0;
  return { aim, next: 1, state: firstState(recipe, setupOf(recipe)), poured: [] };
}

/** After one infusion. */
export function pour(brewing: Brewing, session: Session, done: Pour): Session {
  const recipe = recipeOf(brewing);
  const setup = setupOf(recipe);
  const from = rested(recipe, session, done.restedS);
  const filling = fillingFor(recipe, rhythms[brewedStyle(recipe.style)], from);
  const { state, cup } = infuse(setup, from, {
    ...filling,
    waterMl: done.waterMl ?? filling.waterMl,
    waterC: Math.min(done.waterC ?? filling.waterC, recipe.boilsAtC),
    seconds: Math.max(done.seconds, 0) + handlingS(recipe),
  });
  const infusion = planned(setup, { n: session.next, seconds: done.seconds }, cup);
  return { ...session, state, next: session.next + 1, poured: [...session.poured, infusion] };
}

/** One infusion is left out: the leaf keeps what it would have given. */
export function skip(session: Session): Session {
  return { ...session, next: session.next + 1 };
}

/** From now on stronger or lighter by this factor. */
export function aimedAnew(session: Session, factor: number): Session {
  return { ...session, aim: session.aim * factor };
}

/** The infusions still to come, each solved from where the leaf is now. */
export function replan(brewing: Brewing, session: Session): readonly PlannedInfusion[] {
  const vesselful = vesselfulOf(recipeOf(brewing));
  const { recipe, setup } = vesselful;
  const rhythm = rhythms[brewedStyle(recipe.style)];
  const coming: PlannedInfusion[] = [];
  let state = rested(recipe, session, undefined);
  for (let n = session.next; n <= recipe.target.infusions; n++) {
    const goal = session.aim * easing(rhythm, n);
    const solved = solveInfusion(vesselful, state, goal);
    if (tooThin(solved.cup, goal)) break;
    coming.push(planned(setup, { n, seconds: solved.seconds }, solved.cup));
    state = rest(setup, solved.state, rhythm.restS);
  }
  return coming;
}

/** Share of all soluble solids that is still in the leaf. */
export function leftInLeaf(brewing: Brewing, session: Session): number {
  const { contentMgPerG } = setupOf(recipeOf(brewing)).leaf;
  const { fast, slow } = session.state.leaf;
  const left = contentMgPerG.reduce((sum, mg, i) => sum + mg * ((fast[i] ?? 0) + (slow[i] ?? 0)), 0);
  return left / contentMgPerG.reduce((sum, mg) => sum + mg, 0);
}

function tooThin(cup: Cup, goalMgPerMl: number): boolean {
  return cup.strengthMgPerMl < goalMgPerMl * 0.9;
}

function rested(recipe: Recipe, session: Session, restedS: Seconds | undefined): BrewState {
  if (session.next === 1) return session.state;
  const usual = rhythms[brewedStyle(recipe.style)].restS;
  return rest(setupOf(recipe), session.state, Math.min(restedS ?? usual, 86_400));
}

function recipeOf(brewing: Brewing): Recipe {
  return makeRecipe(brewing);
}
