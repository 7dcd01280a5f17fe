/** What is worked out of a vessel rather than of a brew: how long it stays warm, and which size so much leaf wants. */
import type { VesselData } from '../../brewing/brewing-data.ts';
import { keepsWarm } from '../../brewing/keeps-warm.ts';
import { isMistake, planBrew } from '../../brewing/schedule.ts';
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts } from '../../flow/flow.ts';
import { brewOf, leafFor } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { numberOf, phrase, refused, textOf } from '../values.ts';

export const vesselCallNames = ['staysWarm', 'sizeForLeaf'] as const;

export const vesselCalls = (
  content: CoreContent,
): { readonly [name in (typeof vesselCallNames)[number]]: (given: Facts, around: Around) => Outcome } => ({
  staysWarm: (given, around) => staysWarm(content, given, around),
  sizeForLeaf: (given) => ({ gives: sizeForLeaf(content, given) }),
});

/** Counting finer than this would promise more than the model knows of a draught or a thick wall: judgement. */
const toThe = (step: number, seconds: number): number => Math.max(Math.round(seconds / step), 1) * step;
const minute = 60;
const coarse = (seconds: number): number =>
  toThe(seconds < 10 * minute ? minute : seconds < 120 * minute ? 5 * minute : 30 * minute, seconds);

/** Walls that lose so little hold a vacuum: judgement. */
const vacuumWPerM2K = 2;

function closed(vessel: VesselData | undefined): 'open' | 'lidded' | 'insulated' {
  if (!vessel || vessel.openness >= 1) return 'open';
  return vessel.sideWPerM2K < vacuumWPerM2K ? 'insulated' : 'lidded';
}

function staysWarm(content: CoreContent, given: Facts, around: Around): Outcome {
  const brew = brewOf(content, given, around);
  if (isMistake(brew)) return refused(brew);
  const { leaf, request, plan } = brew;
  const warm = keepsWarm({ data: content.brewing, leaf, request }, plan);
  if (!warm) return { gives: null };
  const values = {
    drunkFromC: warm.drunkFromC,
    drunkAfterS: coarse(warm.drunkAfterS),
    lukewarmC: warm.lukewarmC,
    lukewarmAfterS: coarse(warm.lukewarmAfterS),
    unit: around.memory['unit'] ?? null,
  };
  return { gives: phrase(`brew-stays-warm-${closed(content.brewing.vessels[plan.vessel])}`, values) };
}

/** Halved so often, any range is down to a few millilitres. */
const halvings = 12;

/** What a vessel of the kind should hold, so that this much leaf is the usual dose; null where none of its sizes is. */
function sizeForLeaf(content: CoreContent, given: Facts): number | null {
  const leaf = leafFor(content, given);
  const vessel = textOf(given['vessel']);
  const leafG = numberOf(given['leafG']) ?? 0;
  const range = content.brewing.vessels[vessel]?.volumeMl;
  if (!range || leaf.family === 'matcha') return null;
  const usualG = (volumeMl: number): number => {
    const plan = planBrew(content.brewing, leaf, { tea: null, family: leaf.family, vessel, volumeMl });
    return isMistake(plan) ? Infinity : plan.leafG;
  };
  // A pot above some size is brewed with less leaf: the small one that fits is meant.
  let [small, large] = [range.least, range.least];
  while (usualG(large) < leafG && large < range.most) large = Math.min(large * 1.25, range.most);
  if (usualG(large) < leafG) return null;
  for (let n = 0; n < halvings; n++) {
    const middle = (small + large) / 2;
    if (usualG(middle) < leafG) small = middle;
    else large = middle;
  }
  const step = large < 300 ? 10 : 50;
  return Math.max(Math.round(large / step) * step, step);
}
