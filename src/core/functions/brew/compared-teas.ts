/** Teas side by side: leaf, water, dose and first time in one and the same vessel. How they taste it cannot tell. Keeps no state. */
import type { Plan } from '../../brewing/plan.ts';
import { isMistake } from '../../brewing/schedule.ts';
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import type { Tea } from '../../teas/tea.ts';
import { brewOf } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { figuresOf } from './told-ahead.ts';
import { numberOf, phrase } from '../values.ts';

export const comparedCallNames = ['compareTeas', 'brewEach'] as const;

/** More side by side nobody takes in. Judgement. */
const mostCompared = 4;
/** Where nobody told their own. */
const usualVessel = { vessel: 'mug', volumeMl: 300 } as const;

export const comparedCalls = (
  content: CoreContent,
): { readonly [name in (typeof comparedCallNames)[number]]: Calls[string] } => ({
  /** Null where there are not two to compare. */
  compareTeas: ({ teas = null, tea = null, planned = null, vessel = null, volumeMl = null }, around) => {
    const ids = new Set([...((teas ?? []) as readonly string[]), tea, planned]);
    const meant = content.teas.filter(({ id }) => ids.has(id)).slice(0, mostCompared);
    const isOwn = vessel !== null && numberOf(volumeMl) !== null;
    const ware: Facts = isOwn ? { vessel, volumeMl } : usualVessel;
    const rows = meant.flatMap((one) => rowOf(content, one, ware, around));
    if (rows.length < 2) return { gives: null };
    const [first, ...others] = rows.map(({ figures }) => figures);
    const told: Json[] = [phrase('brew-compared', { ...ware, isOwn: isOwn ? 'yes' : 'no' })];
    told.push(...rows.map((row) => row.told));
    if (others.every((one) => one === first)) told.push(phrase('brew-compared-alike'));
    return { gives: [...told, phrase('brew-compared-taste')] };
  },
  /** Of several teas asked about at once how each is brewed in this vessel, or the one they used last; null where there are not two. */
  brewEach: ({ teas = null, vessel = null, volumeMl = null, ...given }, around) => {
    const ids = (teas ?? []) as readonly string[];
    const ware = wareFor({ vessel, volumeMl }, around.memory);
    const rows = ids.slice(0, mostCompared).flatMap((tea) => eachOf(content, { ...given, ...ware.of, tea }, around));
    if (rows.length < 2) return { gives: null };
    return { gives: [phrase('brew-compared', { ...ware.of, isOwn: ware.isOwn ? 'yes' : 'no' }), ...rows] };
  },
});

interface Ware {
  readonly of: Facts;
  readonly isOwn: boolean;
}

function wareFor({ vessel = null, volumeMl = null }: Facts, memory: Facts): Ware {
  if (vessel !== null && volumeMl !== null) return { of: { vessel, volumeMl }, isOwn: true };
  const own = { vessel: memory['vessel'] ?? null, volumeMl: memory['volumeMl'] ?? null };
  const isOwn = vessel === null && own.vessel !== null && own.volumeMl !== null;
  return { of: isOwn ? own : usualVessel, isOwn };
}

function eachOf(content: CoreContent, given: Facts, around: Around): readonly Json[] {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return [];
  return [
    phrase('brew-each', {
      ...figuresOf(content, brew),
      tea: given['tea'] ?? null,
      unit: around.memory['unit'] ?? null,
    }),
  ];
}

interface Row {
  readonly told: Json;
  /** What two must share to be brewed alike. */
  readonly figures: string;
}

function rowOf(content: CoreContent, tea: Tea, ware: Facts, around: Around): readonly Row[] {
  const brew = brewOf(content, { tea: tea.id, ...ware }, around);
  if (isMistake(brew)) return [];
  const { leafG, waterC, infusions }: Plan = brew.plan;
  const figures = { leafG, waterC, firstS: infusions[0]?.seconds ?? 0, count: infusions.length };
  const values = { ...figures, tea: tea.id, family: tea.family, form: tea.form, unit: around.memory['unit'] ?? null };
  return [{ told: phrase('brew-compared-one', values), figures: JSON.stringify(figures) }];
}
