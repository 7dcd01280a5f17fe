/** From plain facts to what the brewing model is asked, for whichever function plans a brew. */
import type { LeafProfile } from '../../brewing/brewing-data.ts';
import { isFamily, leafOfFamily, leafOfTea } from '../../brewing/leaf-profile.ts';
import type { BrewRequest, Family, Plan } from '../../brewing/plan.ts';
import { isMistake, planBrew } from '../../brewing/schedule.ts';
import { withTaste, type Complaint, type Taste } from '../../brewing/taste.ts';
import type { Around } from '../../flow/book.ts';
import type { Facts } from '../../flow/flow.ts';
import type { Mistake } from '../../units.ts';
import type { CoreContent } from '../core-content.ts';
import { numberOf, textOf } from '../values.ts';

export function leafFor({ teas, brewing }: CoreContent, given: Facts): LeafProfile {
  const found = teas.find(({ id }) => id === given['tea']);
  if (found) return asBagged(leafOfTea(brewing, found), given);
  const family = textOf(given['family']);
  if (isFamily(family)) return asBagged(leafOfFamily(brewing, family), given);
  throw new Error(`neither a tea nor a family: ${JSON.stringify({ tea: given['tea'], family })}`);
}

/** What a bag holds, the leaf that is in it, and for how much water it is meant: common practice, no source. */
const bag = { leafG: 2, form: 'granule', waterMl: 250 } as const;

const isBagged = ({ family }: Pick<LeafProfile, 'family'>, given: Facts): boolean =>
  numberOf(given['bags']) !== null && family !== 'matcha';

function asBagged(leaf: LeafProfile, given: Facts): LeafProfile {
  const { bulkGPerMl: _, ...rest } = leaf;
  return isBagged(leaf, given) ? { ...rest, form: bag.form } : leaf;
}

/** As many as were told, or as the vessel wants. */
const bagsOf = (given: Facts): number =>
  numberOf(given['bags']) || Math.max(1, Math.round((numberOf(given['volumeMl']) ?? 0) / bag.waterMl));

export interface Brew {
  readonly leaf: LeafProfile;
  readonly request: BrewRequest;
  readonly plan: Plan;
}

export function brewOf(content: CoreContent, given: Facts, around: Around): Brew | Mistake {
  const leaf = leafFor(content, given);
  const asked = requestOf(given, leaf.family, around.memory);
  const taste = tastesOf(around.memory)[leaf.family];
  const firstPlan = planBrew(content.brewing, leaf, asked);
  if (isMistake(firstPlan) || !taste)
    return isMistake(firstPlan) ? firstPlan : { leaf, request: asked, plan: firstPlan };
  const request = withTaste({ data: content.brewing, leaf, request: asked }, taste);
  const plan = planBrew(content.brewing, leaf, request);
  return isMistake(plan) ? plan : { leaf, request, plan };
}

function requestOf(given: Facts, family: Family, memory: Facts): BrewRequest {
  const bags = isBagged({ family }, given) ? bagsOf(given) : null;
  const optional = {
    bags,
    leafG: given['leafG'] ?? (bags === null ? null : bags * bag.leafG),
    waterC: given['tempC'],
    elevationM: given['elevationM'] ?? memory['elevationM'],
    style: given['style'],
    guests: given['guests'],
    warmed: given['warmed'],
    rinsed: given['rinsed'],
    strength: given['strength'],
  };
  const known = Object.entries(optional).filter(([, value]) => value !== null && value !== undefined);
  return {
    tea: textOf(given['tea']) || null,
    family,
    vessel: textOf(given['vessel']),
    volumeMl: numberOf(given['volumeMl']) ?? 0,
    ...(Object.fromEntries(known) as Partial<BrewRequest>),
  };
}

export type Tastes = { readonly [family in Family]?: Taste };
export const tastesOf = (memory: Facts): Tastes => (memory['taste'] ?? {}) as unknown as Tastes;

const complaints: { readonly [taste: string]: Complaint } = {
  dry: 'bitter',
  'lost-scent': 'flat',
  right: 'just-right',
};

/** What the reader calls a taste, as the model calls it. Cold water made no colder helps no cup: bitter, a cold infusion is too strong. */
export function complaintOf(said: string, isCold = false): Complaint {
  const complaint = complaints[said] ?? (said as Complaint);
  return isCold && complaint === 'bitter' ? 'strong' : complaint;
}
