/** The infusion ladder: one rung an infusion, its length the time, its ink the strength. Drawn in text and as SVG. */
import type { PlannedInfusion } from '../core/brewing/plan.ts';
import { inkOf, inks, strokeOutline } from './brush.ts';

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
const shades = [
  [0.92, '█'],
  [0.78, '▓'],
  [0.6, '▒'],
] as const;

/** Lines of at most 60 columns. */
export function ladderText({ rungs }: DrawnLadder): string {
  return rungs.map((rung) => `${String(rung.n).padStart(3)} ▏${barText(rung)} ${rung.label}`).join('\n');
}

function barText({ length, ink }: DrawnRung): string {
  const mark = shades.find(([least]) => ink >= least)?.[1] ?? '░';
  return mark.repeat(Math.max(Math.round(length * textWidth), 1));
}

/** User units. */
const place = { width: 360, rail: 34, right: 96, pitch: 30, thick: 14 } as const;

/** The rungs in SVG, from this height on, and how high they are together. */
export function rungsSvg({ rungs }: DrawnLadder, top: number): { readonly svg: string; readonly height: number } {
  const height = rungs.length * place.pitch;
  const drawn = rungs.map((rung, i) => rungSvg(rung, top + (i + 0.5) * place.pitch));
  const rail = `<path d="M${place.rail} ${top}V${top + height}" stroke="${inks.edge}" stroke-width="1.5"/>`;
  return { svg: `${rail}${drawn.join('')}`, height };
}

/** Weak ink is pale, so it reads without any colour. */
function rungSvg({ n, label, length, ink }: DrawnRung, y: number): string {
  const room = place.width - place.rail - place.right;
  const long = Math.max(length * room, place.thick / 2);
  const outline = strokeOutline({ x: place.rail, y, length: long, thick: place.thick }, room);
  const stroke = `<path d="${outline}" fill="${inks.liquor}" fill-opacity="${inkOf(ink).toFixed(3)}" stroke="${inks.liquor}" stroke-linejoin="round"/>`;
  const count = `<text x="${place.rail - 10}" y="${y + 4}" font-size="12" text-anchor="end" fill="${inks.pencil}">${n}</text>`;
  const time = `<text x="${(place.rail + long + 8).toFixed(1)}" y="${y + 4}" font-size="12" fill="${inks.ink}">${escaped(label)}</text>`;
  return `<g>${stroke}${count}${time}</g>`;
}

export function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (c) => `&#${c.codePointAt(0)};`);
}
