/** How the leaf a person has compares with what is usual: how much weaker or stronger the cup, and in what it would be right. */
import type { Grams, Millilitres, Seconds } from '../units.ts';
import type { BrewRequest, Plan } from './plan.ts';
import type { Brewing } from './request.ts';
import { rounded } from './rounding.ts';
import { isMistake, planBrew } from './schedule.ts';

export interface LeafAmount {
  readonly is: 'little' | 'much';
  readonly usualG: Grams;
  /** The first cups' strength against the usual, 1 for the same. */
  readonly strength: number;
  /** What a vessel of the kind should hold for so much leaf; null where there is none. */
  readonly fitsMl: Millilitres | null;
  /** Little leaf in a small pot, brewed like a big one, and how strong against this; null where that makes no stronger cup. */
  readonly longer: { readonly times: readonly Seconds[]; readonly strength: number } | null;
}

/** Judgement: further off than this, anyone tastes it; nearer than this, it is as usual. */
const noticed = { weaker: 0.75, stronger: 1.25 };
const asUsual = { weaker: 0.9, stronger: 1.1 };

/** Null where the leaf is about what is usual, or is whisked or cupped by another rule. */
export function leafAmount(brewing: Brewing, plan: Plan): LeafAmount | null {
  if (plan.style === 'whisked' || plan.style === 'cupping') return null;
  const { volumeMl } = brewing.request;
  const against = strengthIn(brewing, plan, volumeMl);
  if (!against || (against.share >= noticed.weaker && against.share <= noticed.stronger)) return null;
  const is = against.share < 1 ? 'little' : 'much';
  return {
    is,
    usualG: against.usualG,
    strength: rounded(against.share, 2),
    fitsMl: fitting(brewing, plan, is),
    longer: is === 'little' && plan.style === 'gongfu' ? drawnLonger(brewing, plan) : null,
  };
}

interface Against {
  readonly share: number;
  readonly usualG: Grams;
}

/** The first cups against those of the usual leaf, in a vessel that holds so much. */
function strengthIn(brewing: Brewing, { style, leafG }: Plan, volumeMl: Millilitres): Against | null {
  const { leafG: _, ...request } = { ...brewing.request, style, volumeMl };
  const [own, usual] = [planned(brewing, { ...request, leafG }), planned(brewing, request)];
  return own && usual ? { share: firstCups(own) / firstCups(usual), usualG: usual.leafG } : null;
}

function planned({ data, leaf }: Brewing, request: BrewRequest): Plan | null {
  const plan = planBrew(data, leaf, request);
  return isMistake(plan) ? null : plan;
}

/** The mean of the first three: counting in fives alone may move one of them by a quarter. */
function firstCups({ infusions }: Plan): number {
  const first = infusions.slice(0, 3);
  return first.reduce((sum, { strengthMgPerMl }) => sum + strengthMgPerMl, 0) / first.length;
}

/** Halved so often, any range is down to a few millilitres. */
const halvings = 8;

/** The size nearest to theirs that is right, by halving: the more room, the weaker the cup. */
function fitting(brewing: Brewing, plan: Plan, is: LeafAmount['is']): Millilitres | null {
  const range = brewing.data.vessels[plan.vessel]?.volumeMl;
  if (!range) return null;
  // Where the leaf has no room it is too much.
  const share = (volumeMl: Millilitres): number => strengthIn(brewing, plan, volumeMl)?.share ?? Infinity;
  const isRight = (volumeMl: Millilitres): boolean =>
    is === 'little' ? share(volumeMl) >= asUsual.weaker : share(volumeMl) <= asUsual.stronger;
  let right = is === 'little' ? range.least : range.most;
  let wrong = brewing.request.volumeMl;
  if (!isRight(right)) return null;
  for (let n = 0; n < halvings; n++) {
    const middle = (right + wrong) / 2;
    if (isRight(middle)) right = middle;
    else wrong = middle;
  }
  const step = right < 300 ? 10 : 50;
  const fitsMl = is === 'little' ? Math.floor(right / step) * step : Math.ceil(right / step) * step;
  return fitsMl < smallestMl ? null : fitsMl;
}

/** Nobody brews tea in less: judgement. */
const smallestMl = 50;

function drawnLonger(brewing: Brewing, plan: Plan): LeafAmount['longer'] {
  const other = planned(brewing, { ...brewing.request, leafG: plan.leafG, style: 'western' });
  const strength = other ? firstCups(other) / firstCups(plan) : 0;
  if (!other || strength < asUsual.stronger) return null;
  return { times: other.infusions.map(({ seconds }) => seconds), strength: rounded(strength, 2) };
}
