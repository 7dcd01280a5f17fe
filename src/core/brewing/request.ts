/** What may be asked: every field's range, and the first mistake when a field is outside it. It plans nothing. */
import type { Mistake } from '../units.ts';
import type { BrewingData, LeafProfile } from './brewing-data.ts';
import { styles, type BrewRequest } from './plan.ts';

/** What a brew is about: the data it stands on, the leaf, and what was asked. */
export interface Brewing {
  readonly data: BrewingData;
  readonly leaf: LeafProfile;
  readonly request: BrewRequest;
}

export interface Range {
  readonly least: number;
  readonly most: number;
}

/** People live from the Dead Sea shore to La Rinconada; the formula holds to 11,000 m. */
export const ranges = {
  waterC: { least: 1, most: 100 },
  hotWaterC: { least: 40, most: 100 },
  coldWaterC: { least: 1, most: 30 },
  elevationM: { least: -450, most: 9000 },
  guests: { least: 1, most: 20 },
  strength: { least: 0.6, most: 1.5 },
} as const satisfies { readonly [field: string]: Range };

/** Dry leaf needs room to open: at most this much of the vessel, and never more than 0.2 g/ml. */
const fullestFill = 0.8;
const densestGPerMl = 0.2;

export function leafRange(data: BrewingData, leaf: LeafProfile, volumeMl: number): Range {
  const bulk = leaf.bulkGPerMl ?? data.forms[leaf.form]?.bulkGPerMl ?? 0.2;
  const most = volumeMl * Math.min(densestGPerMl, bulk * fullestFill);
  return { least: 0.1, most: Math.max(Math.floor(most * 10) / 10, 0.2) };
}

export function isMistake(value: object): value is Mistake {
  return 'code' in value && 'field' in value && 'values' in value;
}

/** The first thing wrong with a request, or null. */
export function mistakeIn({ data, leaf, request }: Brewing): Mistake | null {
  const vessel = Object.hasOwn(data.vessels, request.vessel) ? data.vessels[request.vessel] : undefined;
  if (!vessel)
    return { code: 'vessel-unknown', field: 'vessel', values: { allowed: Object.keys(data.vessels).join(', ') } };
  return (
    outside('volumeMl', request.volumeMl, vessel.volumeMl) ??
    styleMistake(request, leaf) ??
    outside('waterC', request.waterC, waterRange(request)) ??
    outside('elevationM', request.elevationM, ranges.elevationM) ??
    outside('guests', request.guests, ranges.guests) ??
    outside('strength', request.strength, ranges.strength) ??
    outside('leafG', request.leafG, leafRange(data, leaf, request.volumeMl))
  );
}

function waterRange(request: BrewRequest): Range {
  if (request.style === undefined) return ranges.waterC;
  return request.style === 'cold' ? ranges.coldWaterC : ranges.hotWaterC;
}

function styleMistake(request: BrewRequest, leaf: LeafProfile): Mistake | null {
  const { style } = request;
  if (style === undefined) return null;
  if (!styles.includes(style)) return { code: 'style-unknown', field: 'style', values: { allowed: styles.join(', ') } };
  if (style === 'whisked' && leaf.family !== 'matcha')
    return { code: 'style-needs-powder', field: 'style', values: {} };
  return null;
}

const codes: { readonly [field: string]: string } = {
  volumeMl: 'volume-out-of-range',
  waterC: 'water-out-of-range',
  elevationM: 'elevation-out-of-range',
  guests: 'guests-out-of-range',
  strength: 'strength-out-of-range',
  leafG: 'leaf-out-of-range',
};

function outside(field: string, value: number | undefined, range: Range): Mistake | null {
  const fits = field === 'guests' ? Number.isInteger : Number.isFinite;
  if (value === undefined || (fits(value) && value >= range.least && value <= range.most)) return null;
  return { code: codes[field] ?? 'number-expected', field, values: { least: range.least, most: range.most } };
}
