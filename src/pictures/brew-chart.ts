/** The chart of a plan: the ladder above, below it strength cup by cup and what is left in the leaf. */
import type { PlannedInfusion } from '../core/brewing/plan.ts';
import { inks } from './brush.ts';
import { escaped, rungsSvg, type DrawnLadder } from './ladder.ts';

export interface BrewChart {
  readonly ladder: DrawnLadder;
  readonly infusions: readonly PlannedInfusion[];
  /** Share of the solubles still in the leaf after each infusion, 0…1. */
  readonly left: readonly number[];
  readonly labels: { readonly strength: string; readonly left: string };
}

const width = 360;
const side = 40;
const panel = 110;

export function brewChartSvg({ ladder, infusions, left, labels }: BrewChart): string {
  const top = 48;
  const rungs = rungsSvg(ladder, top);
  const below = top + rungs.height + 34;
  const height = below + panel + 44;
  const parts = [
    `<title>${escaped(ladder.title)}</title><text x="14" y="26" font-size="15">${escaped(ladder.title)}</text>`,
    rungs.svg,
    frame(below),
    strengthLine(infusions, below),
    leftLine(left, below),
    caption(labels, below),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}" role="img" font-family="serif" fill="${inks.ink}"><rect width="100%" height="100%" fill="${inks.paper}"/>${parts.join('')}</svg>`;
}

const placeX = (i: number, count: number): number =>
  count < 2 ? width / 2 : side + (i * (width - 2 * side)) / (count - 1);

function frame(y: number): string {
  return `<path d="M${side - 12} ${y}V${y + panel}H${width - side + 12}" fill="none" stroke="${inks.edge}"/>`;
}

/** A full line with a round mark and its figure at each cup. */
function strengthLine(infusions: readonly PlannedInfusion[], y: number): string {
  const most = Math.max(...infusions.map((i) => i.strengthMgPerMl), 1e-6);
  const at = infusions.map(
    ({ strengthMgPerMl }, i) =>
      [placeX(i, infusions.length), y + panel - (strengthMgPerMl / most) * (panel - 24)] as const,
  );
  const marks = at.map(([x, v], i) => {
    const figure = (infusions[i]?.strengthMgPerMl ?? 0).toFixed(1);
    const count = `<text x="${x.toFixed(1)}" y="${y + panel + 14}" font-size="10" text-anchor="middle">${i + 1}</text>`;
    return `<circle cx="${x.toFixed(1)}" cy="${v.toFixed(1)}" r="3.4" fill="${inks.liquor}"/><text x="${x.toFixed(1)}" y="${(v - 7).toFixed(1)}" font-size="10" text-anchor="middle">${figure}</text>${count}`;
  });
  return `${line(at, inks.liquor)}${marks.join('')}`;
}

/** A dashed line with open squares, from full to empty. */
function leftLine(left: readonly number[], y: number): string {
  const at = left.map((share, i) => [placeX(i, left.length), y + panel - share * (panel - 24)] as const);
  const marks = at.map(
    ([x, v]) =>
      `<rect x="${(x - 3).toFixed(1)}" y="${(v - 3).toFixed(1)}" width="6" height="6" fill="${inks.paper}" stroke="${inks.ink}"/>`,
  );
  return `${line(at, inks.ink, ' stroke-dasharray="5 4"')}${marks.join('')}`;
}

function line(at: readonly (readonly [number, number])[], ink: string, dash = ''): string {
  const points = at.map(([x, y]) => `${x.toFixed(1)},${y.toFixed(1)}`).join(' ');
  return `<polyline points="${points}" fill="none" stroke="${ink}" stroke-width="1.4"${dash}/>`;
}

function caption(labels: BrewChart['labels'], y: number): string {
  const base = y + panel + 32;
  const strength = `<circle cx="${side}" cy="${base - 4}" r="3.4" fill="${inks.liquor}"/><text x="${side + 8}" y="${base}" font-size="11">${escaped(labels.strength)}</text>`;
  const left = `<rect x="${width / 2 + 10}" y="${base - 7}" width="6" height="6" fill="none" stroke="${inks.ink}"/><text x="${width / 2 + 22}" y="${base}" font-size="11">${escaped(labels.left)}</text>`;
  return strength + left;
}
