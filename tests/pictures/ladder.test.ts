/** The ladder: length is time, ink is strength, and markup in a title stays text. */
import { describe, expect, it } from 'vitest';
import { ladderOf, ladderSvg, ladderText } from '../../src/pictures/ladder.ts';

const cup = (n: number, seconds: number, strengthMgPerMl: number): Parameters<typeof ladderOf>[1][number] => ({
  n,
  seconds,
  strengthMgPerMl,
  caffeineMg: 10,
  pouredMl: 90,
});
const ladder = ladderOf('A <b>"tea"</b> & more', [cup(1, 6, 4), cup(2, 60, 3.2), cup(3, 120, 2)], (s) => `${s} s`);

describe('the ladder', () => {
  it('measures against the longest and the strongest', () => {
    expect(ladder.rungs.map(({ length }) => length)).toEqual([0.05, 0.5, 1]);
    expect(ladder.rungs.map(({ ink }) => ink)).toEqual([1, 0.8, 0.5]);
  });

  it('as text: a rung a line, thinner ink for thinner cups', () => {
    expect(ladderText(ladder).split('\n')).toEqual([
      '  1 ▏██ 6 s',
      `  2 ▏${'▓'.repeat(18)} 60 s`,
      `  3 ▏${'░'.repeat(36)} 120 s`,
    ]);
  });

  it('as SVG: a rung each, wider for longer, fuller for stronger', () => {
    const svg = ladderSvg(ladder);
    const bars = [...svg.matchAll(/width="([\d.]+)" height="([\d.]+)" fill="#5a3d24"/g)];
    const widths = bars.map(([, width]) => Number(width));
    const inks = bars.map(([, , height]) => Number(height));
    expect(bars).toHaveLength(3);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
    expect(inks).toEqual(inks.toSorted((a, b) => b - a));
  });

  it('lets no markup through', () => {
    expect(ladderSvg(ladder)).not.toContain('<b>');
  });
});
