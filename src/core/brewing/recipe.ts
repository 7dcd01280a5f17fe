/** From a request to what goes into the vessel: style, leaf, water. It knows no times. */
import type { Celsius, Grams, Millilitres } from '../units.ts';
import type { BrewedStyle, BrewingData, LeafProfile, StyleTarget, VesselData } from './brewing-data.ts';
import { makeLeaf, type Leaf } from './leaf.ts';
import { brewedAs, usualHotC } from './leaf-profile.ts';
import type { BrewRequest, Style } from './plan.ts';
import { ranges, type Brewing } from './request.ts';
import { rounded, roundedGrams, roundedMl } from './rounding.ts';
import { boilingPointC } from './water.ts';

export interface Recipe {
  readonly leaf: Leaf;
  readonly vessel: VesselData;
  readonly style: Style;
  readonly target: StyleTarget;
  readonly volumeMl: Millilitres;
  readonly leafG: Grams;
  readonly waterMl: Millilitres;
  readonly fillFraction: number;
  readonly waterC: Celsius;
  readonly boilsAtC: Celsius;
  readonly warm: boolean;
  readonly rinseSeconds: number | null;
  readonly guests: number;
  readonly strength: number;
  /** Nothing of the leaf is kept for a second infusion. */
  readonly isOnce: boolean;
}

/** Density of the leaf's own matter, g/ml: judgement. */
const leafMatterGPerMl = 1.3;
const refrigeratorC = 4;

export function makeRecipe({ data, leaf: profile, request }: Brewing): Recipe {
  const vessel = data.vessels[request.vessel];
  if (!vessel) throw new Error(`no such vessel: ${request.vessel}`);
  const leaf = makeLeaf(data, profile);
  const style = styleOf(vessel, profile, request);
  const target = targetOf(data, leaf, request, style);
  const boilsAtC = rounded(boilingPointC(request.elevationM ?? 0), 2);
  const asked = askedWaterC(request.waterC, style) ?? usualWaterC(data, profile, { style, boilsAtC });
  const strength = request.strength ?? 1;
  const dose = doseG({ target, style, volumeMl: request.volumeMl, strength });
  const leafG = request.leafG ?? dose.leafG;
  return {
    leaf,
    vessel,
    style,
    target,
    volumeMl: request.volumeMl,
    leafG,
    waterMl: fillingMl({ vessel, style, volumeMl: request.volumeMl, leafG, usualG: dose.leafG }),
    fillFraction: rounded(leafG / leaf.bulkGPerMl / request.volumeMl, 3),
    waterC: Math.min(asked, boilsAtC),
    boilsAtC,
    warm: (request.warmed ?? vessel.warmed) && style !== 'cold' && style !== 'cupping',
    rinseSeconds:
      brewedAs(data, profile).rinsed && style === 'gongfu' && request.rinsed !== false ? leaf.form.rinseSeconds : null,
    guests: request.guests ?? 1,
    strength,
    isOnce: request.bags !== undefined,
  };
}

/** Bulky leaf has no room in a small pot for its whole dose, and its cup is aimed at that much lighter. */
function targetOf(data: BrewingData, leaf: Leaf, request: BrewRequest, style: Style): StyleTarget {
  const usual = brewedAs(data, leaf.profile).styles[brewedStyle(style)];
  const doseGPerMl = usual.doseGPerMl * (leaf.profile.dose ?? 1);
  const fits = style === 'gongfu' ? Math.min(roomGPerMl(leaf), doseGPerMl) : doseGPerMl;
  return {
    strengthMgPerMl: (usual.strengthMgPerMl * (leaf.profile.strength ?? 1) * fits) / doseGPerMl,
    doseGPerMl: fits,
    infusions: request.bags === undefined ? usual.infusions : 1,
  };
}

/** Dry leaf in a small pot, g per ml of it. */
function roomGPerMl({ form, bulkGPerMl }: Leaf): number {
  return form.smallPotFill * bulkGPerMl;
}

export function brewedStyle(style: Style): BrewedStyle {
  return style === 'whisked' || style === 'cupping' ? 'western' : style;
}

function styleOf(vessel: VesselData, profile: LeafProfile, request: BrewRequest): Style {
  if (profile.family === 'matcha') return 'whisked';
  if (request.style !== undefined) return request.style;
  if (request.waterC !== undefined && request.waterC <= ranges.coldWaterC.most) return 'cold';
  const isBagged = request.bags !== undefined && vessel.style === 'gongfu';
  const tooLarge = vessel.westernFromMl !== undefined && request.volumeMl >= vessel.westernFromMl;
  return isBagged || tooLarge || (vessel.style === 'gongfu' && profile.family === 'herbal') ? 'western' : vessel.style;
}

/** What was said of hot water for another vessel is none for a jar in the refrigerator. */
function askedWaterC(waterC: Celsius | undefined, style: Style): Celsius | undefined {
  return style === 'cold' && waterC !== undefined && waterC > ranges.coldWaterC.most ? undefined : waterC;
}

function usualWaterC(
  data: BrewingData,
  profile: LeafProfile,
  { style, boilsAtC }: Pick<Recipe, 'style' | 'boilsAtC'>,
): Celsius {
  if (style === 'cold') return refrigeratorC;
  if (style === 'cupping') return boilsAtC;
  return usualHotC(data, profile);
}

interface DoseAsk {
  readonly target: StyleTarget;
  readonly style: Style;
  readonly volumeMl: Millilitres;
  readonly strength: number;
}

/** Taste moves the times first: the dose follows only with the root of the wish. */
function doseG({ target, style, volumeMl, strength }: DoseAsk): { readonly leafG: Grams } {
  if (style === 'whisked') return { leafG: roundedGrams(target.doseGPerMl * bowlMl(volumeMl)) };
  const wish = Math.sqrt(strength);
  const large = style === 'gongfu' ? Math.min(1, Math.sqrt(200 / volumeMl)) : 1;
  return { leafG: Math.max(roundedGrams(target.doseGPerMl * volumeMl * wish * large), 0.2) };
}

interface FillAsk {
  readonly vessel: VesselData;
  readonly style: Style;
  readonly volumeMl: Millilitres;
  readonly leafG: Grams;
  readonly usualG: Grams;
}

/** With much too little leaf the vessel is filled less, down to half. */
function fillingMl({ vessel, style, volumeMl, leafG, usualG }: FillAsk): Millilitres {
  if (style === 'whisked') return roundedMl(bowlMl(volumeMl));
  const room = volumeMl * vessel.fillLevel - leafG / leafMatterGPerMl;
  const scarce = Math.min(Math.max((3 * leafG) / usualG, 0.5), 1);
  return Math.max(roundedMl(room * scarce), 5);
}

/** A bowl of whisked tea is small whatever it is whisked in. */
function bowlMl(volumeMl: Millilitres): Millilitres {
  return Math.min(70, volumeMl * 0.6);
}
