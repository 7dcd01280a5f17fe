/** A series of infusions, each solved so that its cup comes near the target. The target itself is data. */
import type { Seconds } from '../units.ts';
import type { BrewedStyle } from './brewing-data.ts';
import {
  dryBrew,
  fill,
  infuse,
  pouredMg,
  pourOff,
  rest,
  type BrewState,
  type Cup,
  type Filling,
  type Setup,
} from './infusion.ts';
import type { PlannedInfusion } from './plan.ts';
import { brewedStyle, type Recipe } from './recipe.ts';
import { rounded, roundedMl, roundedSeconds, countedStep } from './rounding.ts';
import { potOf, warmedC } from './vessel.ts';

export const caffeineIndex = 1;

/** Judgement of practice: bounds of a shown time, the pause between infusions, and how the target eases. */
export interface Rhythm {
  readonly leastS: Seconds;
  readonly longestS: Seconds;
  readonly restS: Seconds;
  /** Infusions at the full target. */
  readonly even: number;
  /** What each later one keeps of the one before, and the least of all. */
  readonly ease: number;
  readonly thinnest: number;
  /** At most this share of all the leaf holds in the first cup, so that little leaf gives a lighter brew. */
  readonly firstShare: number;
  /** Share of the liquor left over the leaf when the next water comes. */
  readonly kept: number;
}

export const rhythms: { readonly [style in BrewedStyle]: Rhythm } = {
  gongfu: { leastS: 3, longestS: 240, restS: 45, even: 3, ease: 0.93, thinnest: 0.55, firstShare: 0.16, kept: 0 },
  western: { leastS: 30, longestS: 600, restS: 600, even: 1, ease: 0.8, thinnest: 0.5, firstShare: 0.5, kept: 0 },
  grandpa: { leastS: 30, longestS: 900, restS: 300, even: 2, ease: 0.8, thinnest: 0.4, firstShare: 0.45, kept: 1 / 3 },
  cold: { leastS: 3600, longestS: 43200, restS: 1800, even: 1, ease: 0.7, thinnest: 0.5, firstShare: 0.75, kept: 0 },
};

/** Of what is drawn but once; a lighter cup takes less of it. Judgement: a bag comes near the minutes of common practice. */
const onceShare = 0.55;

/** What a way of brewing settles beyond the recipe. */
export interface Series {
  readonly infusions: readonly PlannedInfusion[];
  readonly waterInAllMl: number;
  readonly cupC: number;
  readonly leafG?: number;
  readonly waterMl?: number;
  /** Strength the first cup was aimed at. */
  readonly aim?: number;
}

export function setupOf(recipe: Recipe): Setup {
  return { leaf: recipe.leaf, leafG: recipe.leafG, pot: potOf(recipe.vessel, recipe.volumeMl, recipe.waterC) };
}

/** Seconds of full contact that filling and pouring off add to the time shown. */
export function handlingS(recipe: Recipe): Seconds {
  return (recipe.vessel.handlingSeconds * Math.sqrt(recipe.volumeMl / 100)) / 2;
}

export function firstState(recipe: Recipe, setup: Setup): BrewState {
  const wallC = recipe.warm ? warmedC(setup.pot, recipe.volumeMl, recipe.waterC) : setup.pot.ambientC;
  const dry = dryBrew(setup, wallC);
  if (recipe.rinseSeconds === null) return dry;
  const filling = { waterMl: recipe.waterMl, waterC: recipe.waterC };
  const rinsed = infuse(setup, dry, { ...filling, seconds: recipe.rinseSeconds + handlingS(recipe) });
  return rest(setup, rinsed.state, 15);
}

/** Strength aimed at in the n-th cup, for a brew whose first aims at 1. */
export function easing(rhythm: Rhythm, n: number): number {
  return n <= rhythm.even ? 1 : Math.max(rhythm.ease ** (n - rhythm.even), rhythm.thinnest);
}

export function fillingFor(recipe: Recipe, rhythm: Rhythm, state: BrewState): Filling {
  const keepMl = recipe.waterMl * rhythm.kept;
  const inTheWay = rhythm.kept > 0 ? Math.min(state.heldMl, recipe.waterMl * 0.9) : 0;
  return { waterMl: recipe.waterMl - inTheWay, waterC: recipe.waterC, keepMl };
}

/** A recipe and the physics of its vessel. */
export interface Vesselful {
  readonly recipe: Recipe;
  readonly setup: Setup;
}

export function vesselfulOf(recipe: Recipe): Vesselful {
  return { recipe, setup: setupOf(recipe) };
}

interface Solved {
  readonly seconds: Seconds;
  readonly cup: Cup;
  readonly state: BrewState;
}

/** One infusion whose cup comes as near to the target as the rhythm and people's counting allow. */
export function solveInfusion({ recipe, setup }: Vesselful, state: BrewState, strengthMgPerMl: number): Solved {
  const rhythm = rhythms[brewedStyle(recipe.style)];
  const filled = fill(setup, state, fillingFor(recipe, rhythm, state));
  const handling = handlingS(recipe);
  const poured = (seconds: Seconds): Solved => {
    const counted = roundedSeconds(Math.min(Math.max(seconds, rhythm.leastS), rhythm.longestS));
    return { seconds: counted, ...pourOff(filled, counted + handling) };
  };
  const goal = { strengthMgPerMl, longestS: rhythm.longestS + handling };
  const solved = poured(filled.course.secondsToReach(goal) - handling);
  const off = (one: Solved): number => one.cup.strengthMgPerMl / strengthMgPerMl - 1;
  if (Math.abs(off(solved)) <= 0.06) return solved;
  const step = countedStep(solved.seconds);
  const other = poured(solved.seconds + (off(solved) < 0 ? step : -step));
  return Math.abs(off(other)) < Math.abs(off(solved)) ? other : solved;
}

/** The aim of the first cup: the style's, the person's wish, and what so much leaf can give. */
export function firstAim(recipe: Recipe): number {
  const rhythm = rhythms[brewedStyle(recipe.style)];
  const holdsMgPerG = recipe.leaf.contentMgPerG.reduce((sum, mg) => sum + mg, 0);
  const once = Math.max(onceShare, rhythm.firstShare) * Math.min(1, recipe.strength);
  const share = recipe.isOnce ? once : rhythm.firstShare;
  const most = (holdsMgPerG * recipe.leafG * share) / recipe.waterMl;
  return Math.min(recipe.target.strengthMgPerMl * recipe.strength, most);
}

export function solvedSeries(recipe: Recipe): Series {
  const vesselful = vesselfulOf(recipe);
  const begun = firstState(recipe, vesselful.setup);
  let aim = firstAim(recipe);
  let best = { ...seriesFor(vesselful, begun, aim), aim };
  let nearest = missed(best);
  // Too much leaf for the shortest hold: the brew is stronger, evenly, rather than strong at first. And where counting
  // in fives misses the first cup, the whole brew meets it half way.
  for (let turn = 0, last = best; turn < 8 && missed(last) > 1; turn++) {
    aim *= Math.sqrt(last.excess > allowed.over ? last.excess : firstShareOf(last));
    last = { ...seriesFor(vesselful, begun, aim), aim };
    if (missed(last) < nearest) [best, nearest] = [last, missed(last)];
  }
  return best;
}

/** Of its aim: any cup at most, the first at least. */
const allowed = { over: 1.1, first: 0.9 };

type Tried = Series & { readonly excess: number; readonly aim: number };

const firstShareOf = ({ infusions, aim }: Tried): number => (infusions[0]?.strengthMgPerMl ?? aim) / aim;

/** 1 when as far off as is allowed. */
const missed = (tried: Tried): number => Math.max(tried.excess / allowed.over, allowed.first / firstShareOf(tried));

function seriesFor(vesselful: Vesselful, begun: BrewState, aim: number): Series & { readonly excess: number } {
  const { recipe, setup } = vesselful;
  const rhythm = rhythms[brewedStyle(recipe.style)];
  const infusions: PlannedInfusion[] = [];
  let state = begun;
  let waterInAllMl = recipe.rinseSeconds === null ? 0 : recipe.waterMl;
  let excess = 0;
  let cupC = 0;
  for (let n = 1; n <= recipe.target.infusions; n++) {
    const goal = aim * easing(rhythm, n);
    const solved = solveInfusion(vesselful, state, goal);
    if (n > 1 && solved.cup.strengthMgPerMl < goal * 0.9) break;
    waterInAllMl += fillingFor(recipe, rhythm, state).waterMl;
    excess = Math.max(excess, solved.cup.strengthMgPerMl / goal);
    cupC = Math.max(cupC, solved.cup.endC);
    infusions.push(planned(setup, { n, seconds: solved.seconds }, solved.cup));
    state = rest(setup, solved.state, rhythm.restS);
  }
  return { infusions, waterInAllMl, cupC, excess };
}

export function planned(
  setup: Setup,
  { n, seconds }: Pick<PlannedInfusion, 'n' | 'seconds'>,
  cup: Cup,
): PlannedInfusion {
  return {
    n,
    seconds,
    strengthMgPerMl: rounded(cup.strengthMgPerMl, 3),
    caffeineMg: rounded(pouredMg(setup, cup, caffeineIndex), 1),
    pouredMl: roundedMl(cup.pouredMl),
  };
}
