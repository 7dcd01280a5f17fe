/** Fits the rates of data/kinetics to the published rows. Reads and prints nothing. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import type { BrewingData, KineticsData, Solute } from '../core/brewing/brewing-data.ts';
import { pointsOf, predict, type Point, type PublishedRow } from '../core/brewing/published-row.ts';

/** One number that is fitted: where it starts, and how far (as a factor, e.g. 1.5) it may reasonably be from there. */
export interface Unknown {
  readonly path: readonly string[];
  readonly start: number;
  readonly factor: number;
  readonly why: string;
  /** A share stays between 0 and 1. */
  readonly share?: boolean;
}

const judgement = 'judgement';
const swift: readonly (readonly [Solute, number, string])[] = [
  ['amino', 30, judgement],
  ['caffeine', 40.3, 'Jaganyi and Price 1999: 40.3 kJ/mol'],
  ['catechin', 40, 'Price and Spitzer 1994: 30–50 kJ/mol'],
  ['gallate', 50, 'Price and Spitzer 1994: 30–50 kJ/mol, slower than the free ones'],
  ['other', 45, judgement],
];

/** Of two that diffuse, the pace goes as one over the root of the molecule's mass (Price and Spitzer 1994): 194 to 298 and 458. */
const fastStart: { readonly [solute in Solute]: Pick<Unknown, 'start' | 'factor' | 'why'> } = {
  amino: { start: 3, factor: 3, why: judgement },
  caffeine: { start: 0.99, factor: 2, why: 'Jaganyi and Price 1999: 0.99 per minute, stirred' },
  catechin: { start: 0.8, factor: 2, why: 'caffeine by the mass of the molecule, Price and Spitzer 1994' },
  gallate: { start: 0.64, factor: 2, why: 'caffeine by the mass of the molecule, Price and Spitzer 1994' },
  other: { start: 2, factor: 3, why: judgement },
};

/** Gallated catechins must stay behind caffeine (Price and Spitzer 1994), and no row here would hold them there. */
const slowStart: { readonly [solute in Solute]: Pick<Unknown, 'start' | 'factor' | 'why'> } = {
  amino: { start: 0.12, factor: 3, why: judgement },
  caffeine: { start: 0.12, factor: 3, why: judgement },
  catechin: { start: 0.12, factor: 3, why: judgement },
  gallate: { start: 0.05, factor: 1.2, why: 'Price and Spitzer 1994: slower than caffeine' },
  other: { start: 0.15, factor: 3, why: judgement },
};

export const unknowns: readonly Unknown[] = [
  ...swift.flatMap(([solute, activation, why]): Unknown[] => [
    { path: ['solutes', solute, 'fastPerMinute'], ...fastStart[solute] },
    { path: ['solutes', solute, 'slowPerMinute'], ...slowStart[solute] },
    { path: ['solutes', solute, 'activationKJPerMol'], start: activation, factor: 1.3, why },
  ]),
  { path: ['solutes', 'amino', 'bend'], start: 6, factor: 1.5, why: judgement },
  { path: ['solutes', 'catechin', 'bend'], start: 3.5, factor: 1.5, why: judgement },
  { path: ['solutes', 'gallate', 'bend'], start: 1.3, factor: 1.3, why: judgement },
  { path: ['solutes', 'other', 'bend'], start: 0.3, factor: 1.5, why: judgement },
  { path: ['fastShares', 'whole'], start: 0.18, factor: 2, share: true, why: judgement },
  { path: ['fastShares', 'twisted'], start: 0.3, factor: 2, share: true, why: judgement },
  { path: ['fastShares', 'rubbed'], start: 0.4, factor: 2, share: true, why: judgement },
  { path: ['fastShares', 'cut'], start: 0.55, factor: 2, share: true, why: judgement },
  {
    path: ['fastShares', 'granule'],
    start: 0.6,
    factor: 2,
    share: true,
    why: 'judgement; more than cut leaf’s, as Song and Mao 2005 found of smaller particles',
  },
  {
    path: ['partitionMlPerG'],
    start: 3.4,
    factor: 1.15,
    why: 'Long 1977: 35 % at 1:10 against 47 % at infinite dilution',
  },
];

export interface Fit {
  readonly kinetics: KineticsData;
  readonly rmsOverTolerance: number;
}

/** Least squares of (published − predicted)/tolerance, each unknown held near its start by its factor. */
export function fit(data: BrewingData, rows: readonly PublishedRow[], iterations = 60): Fit {
  const points = pointsOf(rows.filter((row) => row.use === 'fit'));
  const x = Array.from({ length: points.length + unknowns.length }, (_, i) => i);
  const y = x.map((i) => (points[i] ? points[i].measured.value * scaleOf(points[i]) : 0));
  const model = (parameters: readonly number[]): ((i: number) => number) => {
    const values = residualBase(withParameters(data, parameters), points);
    return (i) => (i < points.length ? (values[i] ?? 0) : (parameters[i - points.length] ?? 0));
  };
  const result = levenbergMarquardt({ x, y }, model, {
    initialValues: unknowns.map(() => 0),
    minValues: unknowns.map(() => -4),
    maxValues: unknowns.map(() => 4),
    damping: 0.1,
    gradientDifference: 1e-3,
    centralDifference: true,
    maxIterations: iterations,
    errorTolerance: 1e-9,
  });
  const { kinetics } = withParameters(data, result.parameterValues);
  return { kinetics, rmsOverTolerance: Math.sqrt(result.parameterError / points.length) };
}

function residualBase(data: BrewingData, points: readonly Point[]): readonly number[] {
  return points.map((point) => predict(data, point) * scaleOf(point));
}

function scaleOf({ measured }: Point): number {
  return Math.sqrt(measured.weight ?? 1) / measured.tolerance;
}

/** Each parameter counts spreads from its start: 0 is the start, 1 its factor away. */
function withParameters(data: BrewingData, parameters: readonly number[]): BrewingData {
  const kinetics = structuredClone(data.kinetics) as unknown as Tree;
  unknowns.forEach((unknown, i) => setAt(kinetics, unknown.path, moved(unknown, parameters[i] ?? 0)));
  return { ...data, kinetics: kinetics as unknown as KineticsData };
}

function moved({ start, factor, share }: Unknown, spreads: number): number {
  const grown = (share === true ? start / (1 - start) : start) * factor ** spreads;
  const value = share === true ? grown / (1 + grown) : grown;
  return Number(value.toPrecision(6));
}

interface Tree {
  [key: string]: number | Tree;
}

function setAt(tree: Tree, path: readonly string[], value: number): void {
  const [key, ...rest] = path;
  if (key === undefined) return;
  const branch = tree[key];
  if (rest.length === 0) tree[key] = value;
  else if (typeof branch === 'object') setAt(branch, rest, value);
}
