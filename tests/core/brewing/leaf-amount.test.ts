/** Little and much leaf: told where a tongue would tell it, by the model's own strengths, with what to do about it. */
import { describe, expect, it } from 'vitest';
import { leafAmount, type LeafAmount } from '../../../src/core/brewing/leaf-amount.ts';
import { data, leafOf, plan, request } from './real-data.ts';

function amountOf(tea: string, vessel: string, volumeMl: number, leafG: number): LeafAmount | null {
  const asked = request(tea, vessel, volumeMl, { leafG });
  return leafAmount({ data, leaf: leafOf(tea), request: asked }, plan(tea, vessel, volumeMl, { leafG }));
}

const firstCups = (tea: string, vessel: string, volumeMl: number, leafG?: number): number => {
  const first = plan(tea, vessel, volumeMl, leafG === undefined ? {} : { leafG }).infusions.slice(0, 3);
  return first.reduce((sum, { strengthMgPerMl }) => sum + strengthMgPerMl, 0) / first.length;
};

describe('the leaf a person has', () => {
  it.each([
    ['rou-gui', 'gaiwan', 120, 1.3, 'little'],
    ['rou-gui', 'gaiwan', 120, 4, 'little'],
    ['longjing', 'gaiwan', 100, 8, 'much'],
    ['assam', 'mug', 350, 0.5, 'little'],
    ['assam', 'mug', 350, 12, 'much'],
    ['sencha', 'thermos', 500, 10, 'much'],
    ['longjing', 'cold-jar', 500, 1, 'little'],
    ['rou-gui', 'gaiwan', 120, 7.1, null],
    ['rou-gui', 'gaiwan', 120, 6, null],
    ['longjing', 'gaiwan', 100, 5.5, null],
    ['assam', 'mug', 350, 3, null],
    // Whisked tea has its own measure.
    ['matcha', 'mug', 300, 4, null],
  ] as const)('%s in a %s of %d ml, %d g: %s', (tea, vessel, volumeMl, leafG, is) => {
    expect(amountOf(tea, vessel, volumeMl, leafG)?.is ?? null).toBe(is);
  });

  it.each([
    ['rou-gui', 'gaiwan', 120, 4],
    ['assam', 'mug', 350, 1],
    ['longjing', 'gaiwan', 100, 8],
    ['sencha', 'thermos', 500, 10],
    ['tieguanyin', 'clay-pot', 110, 15],
  ] as const)('%s in a %s of %d ml, %d g: as usual in what is told', (tea, vessel, volumeMl, leafG) => {
    const { strength, fitsMl, usualG } = amountOf(tea, vessel, volumeMl, leafG)!;
    expect(strength).toBeCloseTo(firstCups(tea, vessel, volumeMl, leafG) / firstCups(tea, vessel, volumeMl), 2);
    expect(usualG).toBe(plan(tea, vessel, volumeMl).leafG);
    const inThat = firstCups(tea, vessel, fitsMl!, leafG) / firstCups(tea, vessel, fitsMl!);
    expect(inThat).toBeGreaterThan(0.85);
    expect(inThat).toBeLessThan(1.2);
  });

  it('a pinch fits no vessel there is, but draws longer', () => {
    const { fitsMl, longer } = amountOf('rou-gui', 'gaiwan', 120, 1.3)!;
    expect(fitsMl).toBeNull();
    const drawn = plan('rou-gui', 'gaiwan', 120, { leafG: 1.3, style: 'western' });
    expect(longer?.times).toEqual(drawn.infusions.map(({ seconds }) => seconds));
    expect(longer?.strength).toBeGreaterThan(1.3);
  });

  it('where it draws long already, nothing longer is told', () => {
    expect(amountOf('assam', 'mug', 350, 1)?.longer).toBeNull();
  });
});
