/** A plan as a person reads it in a terminal, its reasons, and its chart: keys and numbers into words. */
import type { BrewingData, LeafProfile } from '../core/brewing/brewing-data.ts';
import { caffeineSpread } from '../core/brewing/cautions.ts';
import { kettleWays } from '../core/brewing/kettle.ts';
import type { BrewRequest, Plan } from '../core/brewing/plan.ts';
import { isMistake } from '../core/brewing/schedule.ts';
import { beginBrew, leftInLeaf, pour } from '../core/brewing/session.ts';
import { spoonsOf } from '../core/brewing/spoons.ts';
import { reasonsFor } from '../core/brewing/why.ts';
import type { Json } from '../core/units.ts';
import { brewChartSvg } from '../pictures/brew-chart.ts';
import { ladderOf, ladderText, type DrawnLadder } from '../pictures/ladder.ts';

export interface PlannedBrew {
  readonly data: BrewingData;
  readonly leaf: LeafProfile;
  readonly request: BrewRequest;
  readonly plan: Plan;
}

export type Tell = (key: string, values: { readonly [name: string]: Json }) => string;

export function sheetOf(brew: PlannedBrew, tell: Tell): string {
  return [
    titleOf(brew, tell),
    '',
    ...recipeLines(brew, tell),
    '',
    ladderText(drawn(brew, tell)),
    '',
    ...afterLines(brew, tell),
  ].join('\n');
}

export function reasonsOf(brew: PlannedBrew, tell: Tell): string {
  return reasonsFor(brew, brew.plan)
    .map(({ key, values }) => tell(key, values))
    .join('\n');
}

export function chartOf(brew: PlannedBrew, tell: Tell): string {
  return brewChartSvg({
    ladder: drawn(brew, tell),
    infusions: brew.plan.infusions,
    left: leftAfterEach(brew),
    labels: { strength: tell('plan-chart-strength', {}), left: tell('plan-chart-left', {}) },
  });
}

function titleOf({ request: { volumeMl }, plan: { tea, family, vessel } }: PlannedBrew, tell: Tell): string {
  return tea === null
    ? tell('plan-title-family', { family, vessel, volumeMl })
    : tell('plan-title', { tea, vessel, volumeMl });
}

function drawn(brew: PlannedBrew, tell: Tell): DrawnLadder {
  return ladderOf(titleOf(brew, tell), brew.plan.infusions, (seconds) => tell('plan-rung', { seconds }));
}

function recipeLines({ data, leaf, plan }: PlannedBrew, tell: Tell): readonly string[] {
  const { leafG, fillFraction, waterC, waterMl, kettleMl, boilsAtC, rinse } = plan;
  const cold = plan.style === 'cold';
  return [
    tell('plan-leaf', { leafG, spoons: spoonsOf(data, leaf, leafG), fill: fillFraction }),
    cold ? tell('plan-water-cold', { waterC, waterMl }) : tell('plan-water', { waterC, waterMl, kettleMl }),
    ...(boilsAtC < 99 && waterC > boilsAtC - 1 ? [tell('plan-clamped', { boilsAtC, style: plan.style })] : []),
    ...(cold
      ? []
      : kettleWays({ waterC, waterMl: kettleMl, boilsAtC }).map(({ way, ...values }, i) =>
          tell(`plan-way-${way}`, { ...values, unit: 'C', nth: i + 1 }),
        )),
    ...(plan.warm ? [tell('plan-warm', {})] : []),
    ...(rinse ? [tell('plan-rinse', { seconds: rinse.seconds })] : []),
  ];
}

function afterLines({ request, plan }: PlannedBrew, tell: Tell): readonly string[] {
  const usualMg = plan.infusions.reduce((sum, i) => sum + i.caffeineMg, 0);
  const { least, most } = caffeineSpread;
  const guests = request.guests ?? 1;
  return [
    ...(guests > 1 ? [tell('plan-cup', { guests, cupMl: (plan.infusions[0]?.pouredMl ?? 0) / guests })] : []),
    ...(usualMg > 0 ? [tell('plan-caffeine', { usualMg, leastMg: usualMg * least, mostMg: usualMg * most })] : []),
    ...plan.cautions.map((id) => tell(`caution-${id}`, {})),
  ];
}

/** The plan poured exactly as planned. */
function leftAfterEach(brew: PlannedBrew): readonly number[] {
  const begun = beginBrew(brew);
  if (isMistake(begun)) return [];
  let session = begun;
  return brew.plan.infusions.map(({ seconds }) => {
    session = pour(brew, session, { seconds });
    return leftInLeaf(brew, session);
  });
}
