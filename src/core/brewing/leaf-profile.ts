/** From a tea of the catalogue, or from a family alone, to the leaf the model brews. */
import type { Celsius } from '../units.ts';
import type { BrewingData, FamilyData, LeafProfile } from './brewing-data.ts';
import { families, type Family } from './plan.ts';

/** A catalogue's tea, as far as brewing is concerned. */
export interface TeaLeaf {
  readonly family: string;
  readonly form: string;
  readonly leaf?: Omit<LeafProfile, 'family' | 'form' | 'brewedAs'> & { readonly brewedAs?: string };
}

export function isFamily(text: string): text is Family {
  return families.some((family) => family === text);
}

/** Throws for a family or form the data doesn't know: content checks that once, at the start. */
export function leafOfTea(data: BrewingData, tea: TeaLeaf): LeafProfile {
  if (!isFamily(tea.family)) throw new Error(`no such family: ${tea.family}`);
  if (!Object.hasOwn(data.forms, tea.form)) throw new Error(`no such leaf form: ${tea.form}`);
  const { brewedAs: base, ...leaf } = tea.leaf ?? {};
  if (base === undefined) return { ...leaf, family: tea.family, form: tea.form };
  if (!isFamily(base)) throw new Error(`no such family: ${base}`);
  return { ...leaf, brewedAs: base, family: tea.family, form: tea.form };
}

/** Whose content, dose, strength and water a leaf has: its family, or the tea under the flowers. */
export function brewedAs(data: BrewingData, { family, brewedAs: base = family }: LeafProfile): FamilyData {
  return data.families[base];
}

/** How hot the trade heats the water for a leaf. */
export function usualHotC(data: BrewingData, profile: LeafProfile): Celsius {
  const { waterC, highestC } = brewedAs(data, profile);
  return Math.min(profile.waterC ?? waterC, highestC);
}

export function leafOfFamily(data: BrewingData, family: Family): LeafProfile {
  return { family, form: data.families[family].form };
}
