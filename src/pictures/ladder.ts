/** The infusion ladder: one rung an infusion, its length the time, its ink the strength. Drawn in text and as SVG. */
import type { PlannedInfusion } from '../core/brewing/plan.ts';

export interface DrawnLadder {
  readonly title: string;
  readonly rungs: readonly DrawnRung[];
}

export interface DrawnRung {
  readonly n: number;
  readonly seconds: number;
  readonly label: string;
  /** 0…1 of the longest. */
  readonly length: number;
  /** 0…1 of the strongest. */
  readonly ink: number;
}

export function ladderOf(
  title: string,
  infusions: readonly PlannedInfusion[],
  label: (seconds: number) => string,
): DrawnLadder {
  const longest = Math.max(...infusions.map((i) => i.seconds), 1);
  const strongest = Math.max(...infusions.map((i) => i.strengthMgPerMl), 1e-6);
  const rungs = infusions.map(({ n, seconds, strengthMgPerMl }) => ({
    n,
    seconds,
    label: label(seconds),
    length: seconds / longest,
    ink: strengthMgPerMl / strongest,
  }));
  return { title, rungs };
}

const textWidth = 36;
/** From thin to strong, and the least ink each stands for. */
const inks = [
  [0.92, '█'],
  [0.78, '▓'],
  [0.6, '▒'],
] as const;

/** Lines of at most 60 columns. */
export function ladderText({ rungs }: DrawnLadder): string {
  return rungs.map((rung) => `${String(rung.n).padStart(3)} ▏${barText(rung)} ${rung.label}`).join('\n');
}

function barText({ length, ink }: DrawnRung): string {
  const mark = inks.find(([least]) => ink >= least)?.[1] ?? '░';
  return mark.repeat(Math.max(Math.round(length * textWidth), 1));
}

const paper = { width: 360, left: 34, right: 96, rung: 22, gap: 8, top: 44 } as const;

/** Ink is how much of the rung's height is filled, so it reads without any colour. */
export function ladderSvg(ladder: DrawnLadder): string {
  const height = paper.top + ladder.rungs.length * (paper.rung + paper.gap) + 12;
  const head = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${paper.width} ${height}" role="img" font-family="serif">`;
  const title = `<title>${escaped(ladder.title)}</title><text x="14" y="24" font-size="14">${escaped(ladder.title)}</text>`;
  return `${head}<rect width="100%" height="100%" fill="#fbf8f1"/>${title}${rungsSvg(ladder, paper.top)}</svg>`;
}

/** The rungs alone, from this height on, for a larger picture. */
export function rungsSvg({ rungs }: DrawnLadder, top: number): string {
  const room = paper.width - paper.left - paper.right;
  const rail = top + rungs.length * (paper.rung + paper.gap) - paper.gap;
  const drawn = rungs.map((rung, i) => rungSvg(rung, top + i * (paper.rung + paper.gap), room));
  return `<path d="M${paper.left} ${top - 4}V${rail + 4}" stroke="#2b2620" stroke-width="1.5"/>${drawn.join('')}`;
}

function rungSvg({ n, label, length, ink }: DrawnRung, y: number, room: number): string {
  const width = Math.max(length * room, 3).toFixed(1);
  const middle = y + paper.rung / 2;
  const filled = Math.max(ink * paper.rung, 2);
  const box = `<rect x="${paper.left}" y="${y}" width="${width}" height="${paper.rung}" fill="none" stroke="#2b2620" stroke-width="0.8"/>`;
  const bar = `<rect x="${paper.left}" y="${(y + paper.rung - filled).toFixed(1)}" width="${width}" height="${filled.toFixed(1)}" fill="#5a3d24"/>`;
  const count = `<text x="${paper.left - 10}" y="${middle + 4}" font-size="12" text-anchor="end">${n}</text>`;
  const time = `<text x="${(paper.left + Number(width) + 8).toFixed(1)}" y="${middle + 4}" font-size="12">${escaped(label)}</text>`;
  return `<g>${box}${bar}${count}${time}</g>`;
}

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (c) => `&#${c.codePointAt(0)};`);
}
