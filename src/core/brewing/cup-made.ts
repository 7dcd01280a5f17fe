/** A cup made otherwise than planned: how strong it is against the planned one, and what of leaf, heat and time made it so. */
import type { Celsius, Grams, Seconds } from '../units.ts';
import { fill, infuse, pourOff, rest } from './infusion.ts';
import type { Plan } from './plan.ts';
import { brewedStyle, makeRecipe } from './recipe.ts';
import type { Brewing } from './request.ts';
import { fillingFor, firstState, handlingS, rhythms, setupOf } from './series.ts';
import { tender } from './taste.ts';

/** What is known of how it was made; all else as planned. */
export interface CupMade {
  /** 1 for the first; those before it as planned. */
  readonly infusion?: number;
  readonly leafG?: Grams;
  readonly waterC?: Celsius;
  readonly seconds?: Seconds;
}

/** Against the same cup of the plan, 1 for as strong; null where there is no such cup, or it is whisked or judged by another rule. */
export function shareOfCup(
  brewing: Brewing,
  plan: Plan,
  { infusion = 1, leafG, waterC, seconds }: CupMade,
): number | null {
  const cup = plan.infusions[infusion - 1];
  if (!cup || plan.style === 'whisked' || plan.style === 'cupping') return null;
  const usual = makeRecipe(brewing);
  const recipe = {
    ...usual,
    leafG: leafG ?? usual.leafG,
    waterC: Math.min(waterC ?? usual.waterC, usual.boilsAtC),
  };
  const setup = setupOf(recipe);
  const rhythm = rhythms[brewedStyle(recipe.style)];
  let state = firstState(recipe, setup);
  for (const before of plan.infusions.slice(0, infusion - 1)) {
    const filling = fillingFor(recipe, rhythm, state);
    const drawn = infuse(setup, state, { ...filling, seconds: before.seconds + handlingS(recipe) });
    state = rest(setup, drawn.state, rhythm.restS);
  }
  const filled = fill(setup, state, fillingFor(recipe, rhythm, state));
  return pourOff(filled, (seconds ?? cup.seconds) + handlingS(recipe)).cup.strengthMgPerMl / cup.strengthMgPerMl;
}

/** The first cup after so many seconds. */
export const shareIfDrawn = (brewing: Brewing, plan: Plan, seconds: Seconds): number | null =>
  shareOfCup(brewing, plan, { seconds });

export type Cause = 'heat' | 'time' | 'leaf';

/** What was otherwise, and how strong that alone made the cup. */
export interface CupCause {
  readonly of: Cause;
  readonly made: number;
  readonly usual: number;
  readonly share: number;
}

/** Judgement: further off than this anyone tastes it. A little more leaf is rather left as it is, and the time goes by it. */
const noticed = { stronger: 1.2, weaker: 0.8 };
const ofLeaf = { stronger: 1.3, weaker: 0.75 };
/** So many degrees tell on the bitter part before they do on the strength. Judgement. */
const farOffC = 4;
/** Leaf that stood so many times as long is bitter or sour, though the cup be hardly stronger. Judgement. */
const stewed = 1.4;

export type Amiss = 'strong' | 'thin';

/**
 * What of it explains a cup too strong, or too thin; nothing where it was made about as planned. The likeliest first: tender
 * leaf is bitter by heat soonest.
 */
export function causesOf(brewing: Brewing, plan: Plan, made: CupMade, amiss: Amiss): readonly CupCause[] {
  const isSoonest = ({ of }: CupCause): boolean => of === 'heat' && amiss === 'strong' && tender.has(plan.family);
  return unlikePlan(brewing, plan, made)
    .filter((one) => (amiss === 'strong' ? isOver(one) : isUnder(one)))
    .toSorted((a, b) => Number(isSoonest(b)) - Number(isSoonest(a)) || weight(b) - weight(a));
}

/** All that was told, each as if the rest had been as planned. */
function unlikePlan(
  brewing: Brewing,
  plan: Plan,
  { infusion = 1, waterC, seconds, leafG }: CupMade,
): readonly CupCause[] {
  const usualS = plan.infusions[infusion - 1]?.seconds ?? 0;
  const alone = (of: Cause, value: number | undefined, usual: number, made: CupMade): readonly CupCause[] => {
    if (value === undefined) return [];
    // Powder is in the cup itself.
    const share = shareOfCup(brewing, plan, { infusion, ...made }) ?? (of === 'leaf' ? value / usual : 1);
    return [{ of, made: value, usual, share }];
  };
  return [
    ...alone('time', seconds, usualS, { seconds: seconds ?? usualS }),
    ...alone('leaf', leafG, plan.leafG, { leafG: leafG ?? plan.leafG }),
    ...alone('heat', waterC, plan.waterC, { waterC: waterC ?? plan.waterC }),
  ];
}

function isOver({ of, made, usual, share }: CupCause): boolean {
  if (of === 'heat') return made - usual > farOffC;
  if (of === 'leaf') return share > ofLeaf.stronger;
  return share > noticed.stronger || made >= usual * stewed;
}

function isUnder({ of, made, usual, share }: CupCause): boolean {
  if (of === 'heat') return usual - made > farOffC;
  return share < (of === 'leaf' ? ofLeaf : noticed).weaker;
}

const weight = ({ share }: CupCause): number => Math.abs(Math.log(share));

/** Whether, all told, it came out about as strong as planned. */
export function isNearPlan(brewing: Brewing, plan: Plan, made: CupMade): boolean {
  const share = shareOfCup(brewing, plan, made);
  return share !== null && share > noticed.weaker && share < noticed.stronger;
}
