/** `npm run calibrate`: fits the rates to the published rows, prints every row, writes data/kinetics/parameters.yaml. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseDocument } from 'yaml';
import { readBrewingData } from '../content/brewing-data.ts';
import { readPublishedRows } from '../content/published-rows.ts';
import type { BrewingData, KineticsData } from '../core/brewing/brewing-data.ts';
import { pointsOf, predict, type Point, type PublishedRow } from '../core/brewing/published-row.ts';
import { projectRoot } from '../project-root.ts';
import { fit, unknowns } from './calibration.ts';

const dataDir = join(projectRoot, 'data');

function main(args: readonly string[]): void {
  const data = readBrewingData(dataDir);
  const rows = readPublishedRows(dataDir);
  const { kinetics } = fit(data, rows);
  const fitted = { ...data, kinetics };
  printRows(fitted, rows);
  if (!args.includes('--quick')) printLeaveOneOut(data, rows);
  if (!args.includes('--dry')) writeParameters(kinetics);
}

function printRows(data: BrewingData, rows: readonly PublishedRow[]): void {
  for (const use of ['fit', 'check', 'apart'] as const) {
    const points = pointsOf(rows.filter((row) => row.use === use));
    if (points.length === 0) continue;
    console.log(`\n${use}\n${points.map((point) => line(data, point)).join('\n')}`);
    const of = [...new Set(points.map(({ measured }) => measured.solute))];
    const each = of.map(
      (solute) =>
        `${solute} ${rms(
          data,
          points.filter((p) => p.measured.solute === solute),
        ).toFixed(3)}`,
    );
    console.log(`RMS ${rms(data, points).toFixed(3)}: ${each.join(', ')}`);
  }
}

function line(data: BrewingData, point: Point): string {
  const { row, measured, vessel } = point;
  const said = predict(data, point);
  const what = `${measured.what} ${measured.solute} ${measured.n}${vessel === null ? '' : ' (cooling pot)'}`;
  const off = said - measured.value;
  const figures = [said, measured.value, off].map((v) => v.toFixed(3).padStart(7)).join(' ');
  return `${row.id.padEnd(20)} ${what.padEnd(36)} ${figures}${Math.abs(off) > measured.tolerance ? '  outside' : ''}`;
}

function rms(data: BrewingData, points: readonly Point[]): number {
  const squares = points.map((point) => (predict(data, point) - point.measured.value) ** 2);
  return Math.sqrt(squares.reduce((sum, s) => sum + s, 0) / Math.max(points.length, 1));
}

/** Each study predicted by rates that were fitted without it. */
function printLeaveOneOut(data: BrewingData, rows: readonly PublishedRow[]): void {
  const fitted = rows.filter((row) => row.use === 'fit');
  const studies = [...new Set(fitted.map(studyOf))];
  const left = studies.map((name) => {
    const others = rows.filter((row) => studyOf(row) !== name);
    const without = { ...data, kinetics: fit(data, others, 25).kinetics };
    const points = pointsOf(fitted.filter((row) => studyOf(row) === name));
    console.log(`left out ${name.padEnd(18)} RMS ${rms(without, points).toFixed(3)}`);
    return { points, square: rms(without, points) ** 2 * points.length };
  });
  const count = left.reduce((sum, l) => sum + l.points.length, 0);
  console.log(`leave-one-out RMS ${Math.sqrt(left.reduce((sum, l) => sum + l.square, 0) / count).toFixed(3)}`);
}

const studyOf = ({ id, study }: PublishedRow): string => study ?? id;

const heading = `# Rates of extraction, written by npm run calibrate from published-rows.yaml: don't edit by hand.
# Pace is that of broken leaf at 80 °C. A fitted number is held near its start by a factor; where that start is from is
# beside it. What no row tells apart stays at its start.
`;

/** The fitted numbers change, each with where it came from; the others keep their place and comment. */
function writeParameters(kinetics: KineticsData): void {
  const file = join(dataDir, 'kinetics', 'parameters.yaml');
  const document = parseDocument(readFileSync(file, 'utf8'));
  for (const unknown of unknowns) {
    const scalar = document.createNode(valueAt(kinetics, unknown.path));
    scalar.comment = ` fitted; start ${unknown.start}, factor ${unknown.factor}: ${unknown.why}`;
    document.setIn(unknown.path, scalar);
  }
  document.commentBefore = null;
  writeFileSync(file, heading + document.toString({ lineWidth: 0 }).replace(/^#.*\n/gm, ''));
}

function valueAt(kinetics: KineticsData, path: readonly string[]): unknown {
  return path.reduce<unknown>((tree, key) => (tree as { readonly [key: string]: unknown })[key], kinetics);
}

main(process.argv.slice(2));
