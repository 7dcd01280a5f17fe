/** What is asked of the brewing model and what it answers, as plain values. */
import type { Celsius, Grams, Metres, Millilitres, Seconds } from '../units.ts';

export const families = ['green', 'yellow', 'white', 'oolong', 'black', 'dark', 'scented', 'herbal', 'matcha'] as const;
export type Family = (typeof families)[number];

export const styles = ['gongfu', 'western', 'grandpa', 'cold', 'whisked', 'cupping'] as const;
export type Style = (typeof styles)[number];

export interface BrewRequest {
  /** A tea's id, or null when only the family is known. */
  readonly tea: string | null;
  readonly family: Family;
  readonly vessel: string;
  /** What the vessel holds when full. */
  readonly volumeMl: Millilitres;
  readonly leafG?: Grams;
  readonly waterC?: Celsius;
  readonly elevationM?: Metres;
  readonly style?: Style;
  readonly guests?: number;
  /** Whether the vessel is warmed with hot water first. */
  readonly warmed?: boolean;
  /** False where the leaf is not to be rinsed first, though it would be. */
  readonly rinsed?: boolean;
  /** So many tea bags instead of loose leaf: they are drawn once. */
  readonly bags?: number;
  /** The person's wish, 1 as the trade brews it; 0.6 (light) … 1.5 (strong). */
  readonly strength?: number;
}

export interface Plan {
  readonly tea: string | null;
  readonly family: Family;
  readonly vessel: string;
  readonly style: Style;
  readonly leafG: Grams;
  /** Water of one filling. */
  readonly waterMl: Millilitres;
  /** Dry leaf's bulk volume over the vessel's volume, 0…1. */
  readonly fillFraction: number;
  readonly waterC: Celsius;
  readonly boilsAtC: Celsius;
  /** Whether to warm the vessel first. */
  readonly warm: boolean;
  readonly rinse: { readonly seconds: Seconds } | null;
  readonly infusions: readonly PlannedInfusion[];
  /** Water to heat in all: warming, rinse and every infusion. */
  readonly kettleMl: Millilitres;
  readonly cautions: readonly string[];
}

export interface PlannedInfusion {
  readonly n: number;
  readonly seconds: Seconds;
  readonly strengthMgPerMl: number;
  readonly caffeineMg: number;
  readonly pouredMl: Millilitres;
}
