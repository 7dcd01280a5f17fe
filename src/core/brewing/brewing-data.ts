/** What the brewing model must be told: families, leaf forms, vessels and rates, as plain values. It reads no file. */
import type { Celsius, Millilitres, Seconds } from '../units.ts';
import type { Family, Style } from './plan.ts';

export const solutes = ['amino', 'caffeine', 'catechin', 'gallate', 'other'] as const;
export type Solute = (typeof solutes)[number];

export interface BrewingData {
  readonly families: { readonly [family in Family]: FamilyData };
  readonly forms: { readonly [form: string]: FormData };
  readonly vessels: { readonly [vessel: string]: VesselData };
  readonly kinetics: KineticsData;
}

export interface FamilyData {
  /** The usual leaf form, for when only the family is known. */
  readonly form: string;
  /** Dry-leaf content, mg per g, of each solute. */
  readonly content: { readonly [solute in Solute]: number };
  /** Water as the trade heats it, and what no plan of ours goes above. */
  readonly waterC: Celsius;
  readonly highestC: Celsius;
  readonly rinsed: boolean;
  readonly styles: { readonly [style in BrewedStyle]: StyleTarget };
}

/** Styles whose times follow a target; whisked and cupping follow a recipe. */
export type BrewedStyle = Exclude<Style, 'whisked' | 'cupping'>;

export interface StyleTarget {
  readonly strengthMgPerMl: number;
  /** Dose: grams per millilitre of the vessel, before the room in the vessel is looked at. */
  readonly doseGPerMl: number;
  readonly infusions: number;
}

export interface FormData {
  readonly bulkGPerMl: number;
  /** How much of a small pot the dry leaf fills. */
  readonly smallPotFill: number;
  readonly wettingSeconds: Seconds;
  /** Water the soaked leaf keeps, ml per g of dry leaf. */
  readonly holdsMlPerG: number;
  /** Whose fast share it has: a name of kinetics.fastShares. */
  readonly surface: string;
  /** How fast it gives, against broken leaf. */
  readonly pace: number;
  readonly rinseSeconds: Seconds;
}

export interface VesselData {
  /** One word is said of each of a kind. */
  readonly kind: 'cup' | 'pot' | null;
  readonly material: string;
  /** J/(g K) of the wall. */
  readonly wallJPerGK: number;
  /** Wall mass is this times volume^(2/3), so thickness stays and area grows. */
  readonly wallGPerMl23: number;
  /** Convection and radiation from the side, W/(m² K). */
  readonly sideWPerM2K: number;
  /** Share of the free evaporation of its mouth that escapes. */
  readonly openness: number;
  readonly fillLevel: number;
  readonly warmed: boolean;
  /** Filling plus pouring off, for 100 ml; the leaf brews at half pace meanwhile. */
  readonly handlingSeconds: Seconds;
  readonly style: Style;
  /** From this volume on it is used the western way. */
  readonly westernFromMl?: Millilitres;
  readonly volumeMl: { readonly least: Millilitres; readonly most: Millilitres };
  readonly glass: boolean;
}

export interface KineticsData {
  readonly solutes: { readonly [solute in Solute]: SoluteRates };
  readonly fastShares: { readonly [surface: string]: number };
  /** ml per g: what the leaf keeps back against the liquor it lies in. */
  readonly partitionMlPerG: number;
  readonly wettingKJPerMol: number;
}

export interface SoluteRates {
  /** Broken leaf at 80 °C. */
  readonly fastPerMinute: number;
  readonly slowPerMinute: number;
  readonly activationKJPerMol: number;
  /** Fast share of this solute is 1 − (1 − share of the surface)^bend. */
  readonly bend: number;
}

/** A leaf as the model needs it: a tea's own differences over its family and form. */
export interface LeafProfile {
  readonly form: string;
  readonly family: Family;
  /** Whose content, dose, strength and water it has, where that is not its family: a scented tea is brewed as the tea under it. */
  readonly brewedAs?: Family;
  /** Dose and strength, times those of its family. */
  readonly dose?: number;
  readonly strength?: number;
  readonly waterC?: Celsius;
  readonly caffeineMgPerG?: number;
  readonly aminoMgPerG?: number;
  readonly catechinMgPerG?: number;
  readonly gallateMgPerG?: number;
  readonly bulkGPerMl?: number;
}
