/**
 * A whole plan, and one worked out again after the first infusion, beside a general solver at equal accuracy. Where the solver is
 * given the times, it only goes once through the steepings of the finished plan; where it searches, it solves the steepings that
 * the same search needs, and must find the same times, give or take one count.
 */
import { join } from 'node:path';
import { readBrewingData } from '../../src/content/brewing-data.ts';
import { Course } from '../../src/core/brewing/course.ts';
import { bathOf, infuse, rest } from '../../src/core/brewing/infusion.ts';
import type { PlannedInfusion } from '../../src/core/brewing/plan.ts';
import { makeRecipe } from '../../src/core/brewing/recipe.ts';
import type { Brewing } from '../../src/core/brewing/request.ts';
import { isMistake, planBrew } from '../../src/core/brewing/schedule.ts';
import { countedStep } from '../../src/core/brewing/rounding.ts';
import { fillingFor, firstState, handlingS, rhythms, setupOf } from '../../src/core/brewing/series.ts';
import { beginBrew, pour, replan } from '../../src/core/brewing/session.ts';
import { less, type Figure, type Row, type Size } from './figure.ts';
import { solve, type Steeped } from './general-solver.ts';
import { inTurns, median, microseconds } from './rounds.ts';
import { searchBySolver, type Searched } from './search-by-solver.ts';

const data = readBrewingData(join(import.meta.dirname, '..', '..', 'data'));
const brewing: Brewing = {
  data,
  leaf: { family: 'oolong', form: 'ball-rolled' },
  request: { tea: null, family: 'oolong', vessel: 'gaiwan', volumeMl: 110, style: 'gongfu' },
};

/** The steepings of the finished plan: each infusion, and the pause after it. */
function steepingsOf(): readonly Steeped[] {
  const plan = planBrew(brewing.data, brewing.leaf, brewing.request);
  if (isMistake(plan)) throw new Error(plan.code);
  const recipe = makeRecipe(brewing);
  const setup = setupOf(recipe);
  const rhythm = rhythms.gongfu;
  let state = firstState(recipe, setup);
  return plan.infusions.flatMap((infusion) => {
    const filling = fillingFor(recipe, rhythm, state);
    const seconds = infusion.seconds + handlingS(recipe);
    const poured = infuse(setup, state, { ...filling, seconds });
    const hold = { leaf: setup.leaf, bath: bathOf(setup, state, filling), from: state.leaf, seconds };
    const waiting = { waterMl: 0, waterC: poured.state.bodyC };
    const pause = {
      ...hold,
      bath: bathOf(setup, poured.state, waiting),
      from: poured.state.leaf,
      seconds: rhythm.restS,
    };
    state = rest(setup, poured.state, rhythm.restS);
    return [hold, pause];
  });
}

function bySteps({ leaf, bath, from, seconds }: Steeped): readonly number[] {
  return new Course(leaf, bath, from).at(seconds).leaf.dissolved;
}

/** The largest difference of any solute in any steeping from a solver told to be exact. */
function errorOf(steepings: readonly Steeped[], found: (steeped: Steeped) => readonly number[]): number {
  const off = steepings.flatMap((steeped) => {
    const exact = solve(steeped, 1e-11);
    return found(steeped).map((share, i) => Math.abs(share - (exact[i] ?? 0)));
  });
  return Math.max(...off);
}

/** The loosest tolerance with which the solver errs no more than our steps do. */
function equalTolerance(steepings: readonly Steeped[]): number {
  const allowed = errorOf(steepings, bySteps);
  const tolerances = Array.from({ length: 23 }, (_, i) => 10 ** (-0.5 * i));
  const equal = tolerances.find((tolerance) => errorOf(steepings, (steeped) => solve(steeped, tolerance)) <= allowed);
  if (equal === undefined) throw new Error('no tolerance is as exact as our steps');
  return equal;
}

/** Throws when the solver's search comes to times that are not these, give or take one count; tells how many steepings it solves. */
function solvedIn(infusions: readonly PlannedInfusion[], { seconds, solved }: Searched): number {
  const planned = infusions.map((infusion) => infusion.seconds);
  const isSame = planned.every((time, i) => Math.abs(time - (seconds[i] ?? 0)) <= countedStep(time));
  if (seconds.length !== planned.length || !isSame) throw new Error(`${seconds.join(' ')} is not ${planned.join(' ')}`);
  return solved;
}

const searching = (count: number): string => `odex, searching (${count} steepings solved)`;

async function measure({ quick }: Size): Promise<readonly Figure[]> {
  const steepings = steepingsOf();
  const tolerance = equalTolerance(steepings);
  const begun = beginBrew(brewing);
  if (isMistake(begun)) throw new Error(begun.code);
  const poured = pour(brewing, begun, { seconds: (steepings[0]?.seconds ?? 0) + 5 });
  const later = steepings.slice(2);
  const recipe = makeRecipe(brewing);
  const plan = planBrew(brewing.data, brewing.leaf, brewing.request);
  const solved = solvedIn(isMistake(plan) ? [] : plan.infusions, searchBySolver(recipe, tolerance));
  const solvedAgain = solvedIn(replan(brewing, poured), searchBySolver(recipe, tolerance, poured));
  // As in the dialogue: what has run for so long is compiled, ours and theirs, and counts from then on.
  const [rounds, batches, batch, warmUp] = quick ? [1, 2, 2, 1] : [7, 20, 20, 6];
  const time = (call: () => unknown): number => microseconds(call, batches, batch) / 1000;
  const contestants = {
    plan: () => time(() => planBrew(brewing.data, brewing.leaf, brewing.request)),
    replan: () => time(() => replan(brewing, poured)),
    steps: () => time(() => steepings.map(bySteps)),
    solver: () => time(() => steepings.map((steeped) => solve(steeped, tolerance))),
    search: () => time(() => searchBySolver(makeRecipe(brewing), tolerance)),
    searchAgain: () => time(() => searchBySolver(makeRecipe(brewing), tolerance, poured)),
    solverAgain: () => time(() => later.map((steeped) => solve(steeped, tolerance))),
  };
  const times = await inTurns(rounds, contestants, warmUp);
  const who = `odex, given the times (tolerance ${tolerance.toExponential(0)})`;
  const theirs = median(times.solver);
  const whole = { what: 'a plan', unit: 'ms', ours: median(times.plan), atLeast: 50 };
  const again = { what: 'a re-plan', unit: 'ms', ours: median(times.replan), atLeast: 50 };
  return [
    less({ ...whole, who: searching(solved), theirs: median(times.search) }),
    less({ ...whole, who, theirs }),
    less({ ...again, who: searching(solvedAgain), theirs: median(times.searchAgain) }),
    less({ ...again, who, theirs: median(times.solverAgain) }),
    less({
      what: 'the steepings of a plan, once each',
      unit: 'ms',
      ours: median(times.steps),
      who,
      theirs,
      atLeast: 50,
    }),
  ];
}

export const planning: Row = { name: 'plan', about: 'a plan and a re-plan at equal accuracy', measure };
