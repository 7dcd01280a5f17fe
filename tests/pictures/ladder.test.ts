/** The ladder: length is time, ink is strength, and markup in a title stays text. */
import { describe, expect, it } from 'vitest';
import { brewChartSvg } from '../../src/pictures/brew-chart.ts';
import { ladderOf, ladderText, rungsSvg } from '../../src/pictures/ladder.ts';

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

  it('as SVG: a stroke each, longer for longer, paler for weaker', () => {
    const { svg, height } = rungsSvg(ladder, 0);
    const strokes = [...svg.matchAll(/d="M34\S* \S+L([\d.]+) [^"]*Z" fill="#8a4312" fill-opacity="([\d.]+)"/g)];
    const [ends, inks] = [1, 2].map((part) => strokes.map((stroke) => Number(stroke[part])));
    expect(strokes).toHaveLength(3);
    expect(ends).toEqual(ends?.toSorted((a, b) => a - b));
    expect(new Set(ends).size).toBe(3);
    expect(inks).toEqual([1, 0.83, 0.575]);
    expect(height).toBe(90);
  });

  it('lets no markup through', () => {
    const told = ladderOf('', [cup(1, 6, 4)], () => '<b>6 s</b>');
    expect(rungsSvg(told, 0).svg).not.toContain('<b>');
    const labels = { strength: '<b>', left: '<b>' };
    expect(brewChartSvg({ ladder, infusions: [], left: [], labels })).not.toContain('<b>');
  });
});
