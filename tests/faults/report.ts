/** What came of the faults, as text and as data. */
import type { Findings } from './fault.ts';

export interface Outcome extends Findings {
  readonly id: string;
  readonly title: string;
  readonly unit: string;
  readonly seed: number;
  readonly seconds: number;
  readonly held: boolean;
  /** What of it is not tried, and why. */
  readonly untried?: string;
}

export interface Report {
  readonly at: string;
  readonly node: string;
  readonly seed: number;
  readonly scale: string;
  readonly seconds: number;
  readonly faults: readonly Outcome[];
}

const mostShown = 5;

export function asText({
  id,
  title,
  unit,
  seed,
  seconds,
  held,
  tried,
  broken,
  figures = {},
  untried,
}: Outcome): string {
  const shown = Object.entries(figures).map(([name, value]) => `${name} ${value}`);
  const wrong = broken.slice(0, mostShown).map((one) => `      ${one}\n`);
  const more = broken.length > mostShown ? `      and ${broken.length - mostShown} more\n` : '';
  return [
    `${id.padEnd(3)} ${held ? 'held  ' : 'BROKEN'} ${title}: ${tried} ${unit}, ${Math.max(0, tried - broken.length)} held, ${seconds} s\n`,
    shown.length > 0 ? `      ${shown.join(', ')}\n` : '',
    untried === undefined ? '' : `      not tried: ${untried}\n`,
    ...wrong,
    more,
    held ? '' : `      again: npm run faults -- --only ${id} --seed ${seed}\n`,
  ].join('');
}

export function closingLine({ faults, seconds, seed }: Report): string {
  const held = faults.filter((one) => one.held).length;
  const tried = faults.reduce((sum, one) => sum + one.tried, 0);
  return `${held} of ${faults.length} faults held, ${tried} tries, ${seconds} s, seed ${seed}`;
}
