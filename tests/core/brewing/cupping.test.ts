/** The sensory standards as a style: ISO 3103:2019 and GB/T 23776-2018. */
import { describe, expect, it } from 'vitest';
import { plan } from './real-data.ts';

describe('ISO 3103:2019', () => {
  it.each([
    [310, 285, 5.6, 0.1],
    [150, 140, 2.8, 0.05],
  ])('a pot of %d ml: %d ml on %d ± %d g, boiling, black 6 min', (volumeMl, waterMl, leafG, within) => {
    const made = plan('ceylon', 'porcelain-pot', volumeMl, { style: 'cupping' });
    expect(made.waterMl).toBe(waterMl);
    expect(Math.abs(made.leafG - leafG)).toBeLessThanOrEqual(within);
    expect(made.waterC).toBe(made.boilsAtC);
    expect(made.infusions.map((i) => i.seconds)).toEqual([360]);
    expect(made.rinse).toBeNull();
    expect(made.warm).toBe(false);
  });

  it.each([
    ['longjing', 300],
    ['hojicha', 180],
  ])('green: %s %d s', (id, seconds) => {
    expect(plan(id, 'porcelain-pot', 310, { style: 'cupping' }).infusions.map((i) => i.seconds)).toEqual([seconds]);
  });

  it('says the boiling point of the place', () => {
    const made = plan('ceylon', 'porcelain-pot', 310, { style: 'cupping', elevationM: 2000 });
    expect(made.waterC).toBeCloseTo(93.315, 1);
  });
});

describe('GB/T 23776-2018', () => {
  it('covered bowl of 110 ml, oolong: 5 g (from memory), 2, 3 and 5 min (quoted)', () => {
    const made = plan('tieguanyin', 'gaiwan', 110, { style: 'cupping' });
    expect([made.leafG, made.waterMl]).toEqual([5, 110]);
    expect(made.infusions.map((i) => i.seconds)).toEqual([120, 180, 300]);
  });

  // Ball and other oolong quoted, the others from memory.
  it.each([
    ['tieguanyin', 360],
    ['da-hong-pao', 300],
    ['longjing', 240],
    ['keemun', 300],
    ['silver-needle', 300],
    ['huoshan-huangya', 300],
  ])('cup of 150 ml with 3 g: %s %d s', (id, seconds) => {
    const made = plan(id, 'mug', 150, { style: 'cupping' });
    expect([made.leafG, made.waterMl]).toEqual([3, 150]);
    expect(made.infusions.map((i) => i.seconds)).toEqual([seconds]);
  });
});
