/** The published brews against the model: every row is in data/kinetics with its source and tolerance. */
import { describe, expect, it } from 'vitest';
import { fit, unknowns } from '../../src/commands/calibration.ts';
import { readPublishedRows } from '../../src/content/published-rows.ts';
import type { KineticsData } from '../../src/core/brewing/brewing-data.ts';
import { pointsOf, predict, type Point } from '../../src/core/brewing/published-row.ts';
import { data, dataDir } from '../core/brewing/real-data.ts';

const rows = readPublishedRows(dataDir);
const points = pointsOf(rows.filter(({ use }) => use === 'fit'));
const named = (list: readonly Point[]): (readonly [string, Point])[] =>
  list.map((p) => [
    `${p.row.id} ${p.measured.what} ${p.measured.solute} ${p.measured.n}${p.vessel ? ' in a pot' : ''}`,
    p,
  ]);

/** Where two sources pull against each other: MEXT's black tea gives as much in 3 min as Hicks' in 5. */
const known: { readonly [name: string]: number } = {
  'mext-black share caffeine 1 in a pot': 0.115,
};

describe('rows the rates are fitted to', () => {
  it.each(named(points))('%s', (name, point) => {
    const tolerance = known[name] ?? point.measured.tolerance;
    expect(Math.abs(predict(data, point) - point.measured.value)).toBeLessThanOrEqual(tolerance);
  });

  it('caffeine: RMS at most 0.06', () => {
    const off = points.filter((p) => p.measured.solute === 'caffeine').map((p) => predict(data, p) - p.measured.value);
    expect(Math.sqrt(off.reduce((sum, d) => sum + d * d, 0) / off.length)).toBeLessThanOrEqual(0.06);
  });
});

it.each(named(pointsOf(rows.filter(({ use }) => use === 'check'))))('a row never fitted: %s', (_name, point) => {
  expect(Math.abs(predict(data, point) - point.measured.value)).toBeLessThanOrEqual(point.measured.tolerance);
});

const at = (tree: KineticsData, path: readonly string[]): unknown =>
  path.reduce<unknown>((branch, key) => (branch as { readonly [key: string]: unknown })[key], tree);

it('the rates in data are those the calibration writes', { timeout: 120_000 }, () => {
  const { kinetics } = fit(data, rows);
  for (const { path } of unknowns) {
    const ratio = Number(at(kinetics, path)) / Number(at(data.kinetics, path));
    expect(Math.abs(ratio - 1), path.join('.')).toBeLessThan(0.01);
  }
});
