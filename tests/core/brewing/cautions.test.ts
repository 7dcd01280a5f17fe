/** Which cautions go with a brew, and which would only be noise. */
import { expect, it } from 'vitest';
import { leafOfFamily } from '../../../src/core/brewing/leaf-profile.ts';
import { isMistake, planBrew } from '../../../src/core/brewing/schedule.ts';
import { data, plan } from './real-data.ts';

const cautionsOf = (tea: string, vessel: string, volumeMl: number, more: object = {}): readonly string[] =>
  plan(tea, vessel, volumeMl, more).cautions;

it('of caffeine only where the plant has some', () => {
  const flowers = cautionsOf('chrysanthemum', 'porcelain-pot', 500);
  expect(flowers).not.toContain('children');
  expect(flowers).not.toContain('caffeine-adult');
  expect(flowers).toEqual(expect.arrayContaining(['flower-allergy', 'hot-water', 'pregnancy', 'medicines']));
  expect(cautionsOf('tieguanyin', 'gaiwan', 110)).toContain('children');
});

it('of scalds where water is hot, of keeping cold where it is cold', () => {
  expect(cautionsOf('longjing', 'gaiwan', 110)).toContain('hot-water');
  const cold = cautionsOf('longjing', 'cold-jar', 1000, { style: 'cold' });
  expect(cold[0]).toBe('keep-cold');
  expect(cold).not.toContain('hot-water');
});

it('of much caffeine at once where the leaf may hold it (EFSA 2015: 200 mg)', () => {
  expect(cautionsOf('tieguanyin', 'gaiwan', 200)).toContain('caffeine-adult');
  expect(cautionsOf('sencha', 'mug', 200)).not.toContain('caffeine-adult');
});

it('of any allergy where only the family of a herb is known, and of its own kin where the tea is', () => {
  const request = { tea: null, family: 'herbal' as const, vessel: 'porcelain-pot', volumeMl: 400 };
  const some = planBrew(data, leafOfFamily(data, 'herbal'), request);
  const [first] = isMistake(some) ? [] : some.cautions;
  expect(first).toBe('herb-allergy');
  expect(cautionsOf('chrysanthemum', 'porcelain-pot', 500)[0]).toBe('flower-allergy');
});
