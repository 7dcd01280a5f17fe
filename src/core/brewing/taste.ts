/** A person's own targets for a family of tea: moved by what they say of a cup, smallest change first, bounded. */
import type { Celsius } from '../units.ts';
import { brewedAs } from './leaf-profile.ts';
import type { BrewRequest, Family } from './plan.ts';
import { makeRecipe } from './recipe.ts';
import { leafRange, ranges, type Brewing } from './request.ts';
import { rounded, roundedGrams } from './rounding.ts';

/** Survives a JSON round trip. Against what the trade does: 0 °C, 1 and 1. */
export interface Taste {
  readonly waterC: Celsius;
  /** Factor on the strength aimed at: times follow. */
  readonly strength: number;
  readonly leaf: number;
}

export const usualTaste: Taste = { waterC: 0, strength: 1, leaf: 1 };

export const complaints = ['bitter', 'strong', 'weak', 'flat', 'sour', 'just-right'] as const;
export type Complaint = (typeof complaints)[number];

export type TasteField = keyof Taste;

/** What moved, or null when it was just right or every bound is reached. */
export interface TasteChange {
  readonly field: TasteField;
  readonly from: number;
  readonly to: number;
}

/** Judgement: a step a tongue can tell, and bounds nobody's taste has to pass. */
const bounds: {
  readonly [field in TasteField]: { readonly least: number; readonly most: number; readonly step: number };
} = {
  waterC: { least: -9, most: 6, step: 3 },
  strength: { least: 0.7, most: 1.4, step: 0.1 },
  leaf: { least: 0.7, most: 1.3, step: 0.1 },
};

type Move = readonly [TasteField, -1 | 1];

/** Tender leaf turns bitter by heat first; fired and dark leaf by time. */
export const tender: ReadonlySet<Family> = new Set<Family>(['green', 'yellow', 'white', 'scented', 'matcha']);

const cooler: Move = ['waterC', -1];
const hotter: Move = ['waterC', 1];
const shorter: Move = ['strength', -1];
const longer: Move = ['strength', 1];
const lessLeaf: Move = ['leaf', -1];
const moreLeaf: Move = ['leaf', 1];

const moves: { readonly [complaint in Complaint]: readonly Move[] } = {
  bitter: [shorter, cooler, lessLeaf],
  sour: [shorter, cooler, lessLeaf],
  strong: [shorter, lessLeaf],
  weak: [longer, moreLeaf],
  flat: [hotter, longer],
  'just-right': [],
};

function movesFor(complaint: Complaint, family: Family): readonly Move[] {
  return complaint === 'bitter' && tender.has(family) ? [cooler, shorter, lessLeaf] : moves[complaint];
}

/** Room above the usual water: none for leaf that is brewed at the boil already. */
export interface TasteContext {
  readonly family: Family;
  readonly waterC: Celsius;
  readonly boilsAtC: Celsius;
}

/** Water below this was not heated. */
const coldC = 30;

export function adjust(
  taste: Taste,
  complaint: Complaint,
  context: TasteContext,
): { readonly taste: Taste; readonly change: TasteChange | null } {
  for (const [field, direction] of movesFor(complaint, context.family)) {
    const { least, most, step } = bounds[field];
    const to = rounded(Math.min(Math.max(taste[field] + direction * step, least), most), 2);
    const pastBoil = field === 'waterC' && direction > 0 && context.waterC >= context.boilsAtC - 1;
    // What stands in the refrigerator is as cold as that is.
    const isCold = field === 'waterC' && context.waterC < coldC;
    if (to === taste[field] || pastBoil || isCold) continue;
    return { taste: { ...taste, [field]: to }, change: { field, from: taste[field], to } };
  }
  return { taste, change: null };
}

/** The request as this person likes it; what they asked for outright stays as asked. */
export function withTaste(brewing: Brewing, taste: Taste): BrewRequest {
  const { data, leaf, request } = brewing;
  const usual = makeRecipe(brewing);
  const cold = usual.style === 'cold' || usual.style === 'cupping';
  const most = brewedAs(data, leaf).highestC;
  const waterC = Math.min(Math.max(usual.waterC + taste.waterC, ranges.hotWaterC.least), most);
  const leafG = Math.min(roundedGrams(usual.leafG * taste.leaf), leafRange(data, leaf, request.volumeMl).most);
  const strength = (request.strength ?? 1) * taste.strength;
  const { least, most: strongest } = ranges.strength;
  return {
    ...request,
    strength: rounded(Math.min(Math.max(strength, least), strongest), 2),
    ...(request.waterC !== undefined || cold || taste.waterC === 0 ? {} : { waterC }),
    ...(request.leafG !== undefined || taste.leaf === 1 ? {} : { leafG }),
  };
}
