/** A published brew and what was measured in it, and what the model says to the same. It fits nothing. */
import type { BrewedInfusion } from './as-brewed.ts';
import { solutes, type BrewingData, type LeafProfile, type Solute } from './brewing-data.ts';
import { brewedShares } from './as-brewed.ts';

export const measures = ['share', 'upTo', 'ofSeries'] as const;

export interface PublishedRow {
  readonly id: string;
  readonly source: string;
  readonly assumed?: string;
  readonly flag: 'P' | 'Q' | 'M';
  readonly use: 'fit' | 'check' | 'apart';
  readonly leaf: LeafProfile;
  readonly leafG: number;
  /** Brewed in a pot that cooled by an amount the source doesn't give. */
  readonly pot?: boolean;
  readonly infusions: readonly BrewedInfusion[];
  readonly measured: readonly Measured[];
}

export interface Measured {
  readonly what: (typeof measures)[number];
  readonly solute: Solute | 'solids';
  readonly n: number;
  readonly value: number;
  readonly tolerance: number;
  /** Counts so many times in the fit. */
  readonly weight?: number;
}

/** One value to compare: a row's measure in one of its vessels. */
export interface Point {
  readonly row: PublishedRow;
  readonly measured: Measured;
  readonly vessel: string | null;
}

export function pointsOf(rows: readonly PublishedRow[]): readonly Point[] {
  return rows.flatMap((row) =>
    (row.pot === true ? [null, 'porcelain-pot'] : [null]).flatMap((vessel) =>
      row.measured.map((measured) => ({ row, measured, vessel })),
    ),
  );
}

export function predict(data: BrewingData, { row, measured, vessel }: Point): number {
  const series = brewedShares(data, row.leaf, {
    leafG: row.leafG,
    infusions: row.infusions,
    ...(vessel === null ? {} : { vessel }),
  }).map((one) => (measured.solute === 'solids' ? one.solids : (one.released[solutes.indexOf(measured.solute)] ?? 0)));
  const total = (until: number): number => series.slice(0, until).reduce((sum, share) => sum + share, 0);
  const one = series[measured.n - 1] ?? 0;
  if (measured.what === 'share') return one;
  return measured.what === 'upTo' ? total(measured.n) : one / Math.max(total(series.length), 1e-9);
}
