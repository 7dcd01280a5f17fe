/** From plain facts to what the brewing model is asked, and back: shared by the functions flow files may call. */
import type { BrewingData, LeafProfile } from '../brewing/brewing-data.ts';
import { isFamily, leafOfFamily, leafOfTea } from '../brewing/leaf-profile.ts';
import type { BrewRequest, Family, Plan } from '../brewing/plan.ts';
import { isMistake, planBrew } from '../brewing/schedule.ts';
import { withTaste, type Complaint, type Taste } from '../brewing/taste.ts';
import type { Around, Outcome } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Listen } from '../lessons/spoken/sentence.ts';
import type { SeatChangeReader } from '../lessons/spoken/seat-change.ts';
import type { Reader } from '../reading/reading.ts';
import type { TalkCues } from '../talk/talk-cues.ts';
import type { Tea } from '../teas/tea.ts';
import type { Mistake } from '../units.ts';

export interface CoreContent {
  readonly teas: readonly Tea[];
  readonly brewing: BrewingData;
  readonly read: Reader;
  readonly seatChange: SeatChangeReader;
  /** What people here say of lessons, heard in their sentences. */
  readonly listen: Listen;
  readonly talkCues: TalkCues;
  /** The shop's time zone. */
  readonly zone: string;
}

export const textOf = (value: Json | undefined): string => (typeof value === 'string' ? value : '');
export const numberOf = (value: Json | undefined): number | null => (typeof value === 'number' ? value : null);
export const phrase = (key: string, values: Facts = {}): { readonly key: string; readonly values: Facts } => ({
  key,
  values,
});
/** What the core gives is plain data, though its types don't say so. */
export const asFacts = (value: object): Facts => value as Facts;

export function leafFor({ teas, brewing }: CoreContent, given: Facts): LeafProfile {
  const found = teas.find(({ id }) => id === given['tea']);
  if (found) return leafOfTea(brewing, found);
  const family = textOf(given['family']);
  if (isFamily(family)) return leafOfFamily(brewing, family);
  throw new Error(`neither a tea nor a family: ${JSON.stringify({ tea: given['tea'], family })}`);
}

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
  const optional = {
    leafG: given['leafG'],
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

/** The model calls the water waterC; in flow files it is tempC. */
export const refused = ({ code, field, values }: Mistake): Outcome => ({
  wrong: code,
  field: field === 'waterC' ? 'tempC' : field,
  values,
});

/** Of several mistakes the first is told. */
export function refusedBy([first]: readonly Mistake[]): Outcome {
  if (!first) throw new Error('the core refuses with a reason');
  return refused(first);
}

export type Tastes = { readonly [family in Family]?: Taste };
export const tastesOf = (memory: Facts): Tastes => (memory['taste'] ?? {}) as unknown as Tastes;

const complaints: { readonly [taste: string]: Complaint } = { 'lost-scent': 'flat', right: 'just-right' };

/** What the reader calls a taste, as the model calls it. */
export const complaintOf = (said: string): Complaint => complaints[said] ?? (said as Complaint);
