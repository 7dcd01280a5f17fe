/** Leaf without a scale: level teaspoons. */
import type { Grams, Millilitres } from '../units.ts';
import type { BrewingData, LeafProfile } from './brewing-data.ts';

/** A US teaspoon, a sixth of a fluid ounce of 29.5735 ml. Long leaf can't be levelled: ± 30 %. */
export const teaspoonMl: Millilitres = 4.93;

export function spoonsOf(data: BrewingData, leaf: LeafProfile, leafG: Grams): number {
  return leafG / spoonfulG(data, leaf);
}

/** What a level teaspoon of it weighs. */
export function spoonfulG(data: BrewingData, leaf: LeafProfile): Grams {
  const bulk = leaf.bulkGPerMl ?? data.forms[leaf.form]?.bulkGPerMl;
  if (bulk === undefined) throw new Error(`no such leaf form: ${leaf.form}`);
  return bulk * teaspoonMl;
}

export const fills = ['bottom', 'tenth', 'fifth', 'quarter', 'third', 'half', 'more'] as const;
export type Fill = (typeof fills)[number];

/** How full the dry vessel looks, in words a person measures by eye with. */
export function fillOf(fraction: number): Fill {
  if (fraction < 0.07) return 'bottom';
  if (fraction < 0.15) return 'tenth';
  if (fraction < 0.225) return 'fifth';
  if (fraction < 0.29) return 'quarter';
  if (fraction < 0.42) return 'third';
  return fraction < 0.6 ? 'half' : 'more';
}
