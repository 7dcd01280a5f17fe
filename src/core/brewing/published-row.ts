/** A published brew and what was measured in it, and what the model says to the same. It fits nothing. */
import type { BrewedInfusion, BrewedShares } from './as-brewed.ts';
import { solutes, type BrewingData, type LeafProfile, type Solute } from './brewing-data.ts';
import { brewedShares } from './as-brewed.ts';

export const measures = ['share', 'upTo', 'ofSeries', 'against'] as const;
/** What is measured: one solute, all of them, or both kinds of catechins. */
export const measuredSolutes = [...solutes, 'solids', 'polyphenols'] as const;

export interface PublishedRow {
  readonly id: string;
  readonly source: string;
  /** Rows of one experiment, which are left out together. */
  readonly study?: string;
  readonly assumed?: string;
  readonly flag: 'P' | 'Q' | 'M';
  readonly use: 'fit' | 'check' | 'apart';
  readonly leaf: LeafProfile;
  readonly leafG: number;
  /** Brewed in a pot that cooled by an amount the source doesn't give. */
  readonly pot?: boolean;
  readonly infusions: readonly BrewedInfusion[];
  /** The same leaf and dose brewed once, to compare with. */
  readonly against?: BrewedInfusion;
  readonly measured: readonly Measured[];
}

export interface Measured {
  readonly what: (typeof measures)[number];
  readonly solute: (typeof measuredSolutes)[number];
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
  const series = shares(data, { row, measured, vessel }, row.infusions);
  const total = (until: number): number => series.slice(0, until).reduce((sum, share) => sum + share, 0);
  const one = series[measured.n - 1] ?? 0;
  const least = 1e-9;
  if (measured.what === 'upTo') return total(measured.n);
  if (measured.what === 'ofSeries') return one / Math.max(total(series.length), least);
  if (measured.what === 'share' || !row.against) return one;
  return one / Math.max(shares(data, { row, measured, vessel }, [row.against])[0] ?? 0, least);
}

function shares(data: BrewingData, point: Point, infusions: readonly BrewedInfusion[]): readonly number[] {
  const { row, vessel } = point;
  const request = { leafG: row.leafG, infusions, ...(vessel === null ? {} : { vessel }) };
  return brewedShares(data, row.leaf, request).map((one) => shareOf(data, point, one));
}

function shareOf(data: BrewingData, { row, measured: { solute } }: Point, one: BrewedShares): number {
  if (solute === 'solids') return one.solids;
  const at = (name: Solute): number => one.released[solutes.indexOf(name)] ?? 0;
  if (solute !== 'polyphenols') return at(solute);
  const { catechin, gallate } = data.families[row.leaf.family].content;
  return (at('catechin') * catechin + at('gallate') * gallate) / (catechin + gallate);
}
