/** What a number may be at all. Whether it suits a tea and a vessel is for the brewing model to say. */
import type { Mistake } from '../../units.ts';
import type { Measure } from './measures.ts';

interface Range {
  readonly code: string;
  readonly least: number;
  readonly most: number;
}

// Codes as the brewing model has them, so that one sentence serves both.
const ranges = {
  volumeMl: { code: 'volume-out-of-range', least: 20, most: 5000 },
  leafG: { code: 'leaf-out-of-range', least: 0.1, most: 500 },
  tempC: { code: 'water-out-of-range', least: 1, most: 100 },
  elevationM: { code: 'elevation-out-of-range', least: -450, most: 9000 },
  guests: { code: 'guests-out-of-range', least: 1, most: 20 },
} as const satisfies { readonly [field: string]: Range };

export interface Checked {
  readonly value: number | null;
  readonly mistake: Mistake | null;
}

/** A number out of range is no value, and is told. */
export function within(field: keyof typeof ranges, measure: Measure | null): Checked {
  if (measure === null) return { value: null, mistake: null };
  const { code, least, most } = ranges[field];
  if (measure.value >= least && measure.value <= most) return { value: measure.value, mistake: null };
  return { value: null, mistake: { code, field, values: { value: measure.value, least, most } } };
}
