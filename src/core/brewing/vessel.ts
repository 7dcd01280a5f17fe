/** A vessel as a body that takes up heat and loses it. What is brewed in it is not its business. */
import type { Celsius, Grams, Millilitres } from '../units.ts';
import type { VesselData } from './brewing-data.ts';
import { latentHeatJPerG, saturationPressureMPa, waterJPerK } from './water.ts';

export const roomC = 20;

/** Dry and soaked plant matter, J/(g K): from memory, ± 20 %; a 1 g error in 100 ml is 0.05 °C. */
const leafJPerGK = 1.6;

export interface Pot {
  readonly wallJPerK: number;
  readonly ambientC: Celsius;
  /** Loss is (steady + rising · T) W/K times the difference to the surroundings. */
  readonly lossWPerK: { readonly steady: number; readonly rising: number };
}

export function wallMassG(vessel: VesselData, volumeMl: Millilitres): Grams {
  return vessel.wallGPerMl23 * volumeMl ** (2 / 3);
}

/** Water colder than the room is kept where it is cold, so its surroundings are as cold as it. */
export function potOf(vessel: VesselData, volumeMl: Millilitres, waterC: Celsius): Pot {
  const ambientC = Math.min(roomC, waterC);
  const diameterM = Math.cbrt((4 * volumeMl * 1e-6) / Math.PI);
  const mouthM2 = (Math.PI * diameterM ** 2) / 4;
  const side = vessel.sideWPerM2K * mouthM2 * 5;
  const at = (c: Celsius): number =>
    side + (vessel.openness * evaporationW(mouthM2, c)) / Math.max(c - Math.min(ambientC, c - 1), 1);
  const rising = (at(90) - at(50)) / 40;
  return {
    wallJPerK: wallMassG(vessel, volumeMl) * vessel.wallJPerGK,
    ambientC,
    lossWPerK: { steady: at(50) - 50 * rising, rising },
  };
}

/** A bath that holds its temperature: a laboratory's flask, for brews whose vessel is not told. */
export function heldBath(waterC: Celsius): Pot {
  return { wallJPerK: 0, ambientC: waterC, lossWPerK: { steady: 0, rising: 0 } };
}

/** Free evaporation from an open surface into 20 °C air at half humidity: ASHRAE's pool form, 4e-5 kg/(s m² kPa), from memory. */
export function evaporationW(areaM2: number, c: Celsius): number {
  const airKPa = 1.17;
  const vapourKPa = saturationPressureMPa(c + 273.15) * 1000;
  return 4e-5 * areaM2 * Math.max(vapourKPa - airKPa, 0) * latentHeatJPerG(c) * 1000;
}

export interface Contact {
  readonly waterMl: Millilitres;
  readonly waterC: Celsius;
  readonly wallJPerK: number;
  readonly leafG: Grams;
  /** Liquor still with the leaf. */
  readonly heldMl: Millilitres;
  /** Temperature of wall, leaf and what it holds. */
  readonly bodyC: Celsius;
}

/** Temperature after first contact: the heat balance of water with wall, leaf and what the leaf holds. */
export function contactC(c: Contact): Celsius {
  const water = waterJPerK(c.waterMl, c.waterC);
  const body = c.wallJPerK + c.leafG * leafJPerGK + waterJPerK(c.heldMl, c.bodyC);
  return water + body > 0 ? (water * c.waterC + body * c.bodyC) / (water + body) : c.waterC;
}

/** Wall temperature after one filling of hot water was poured in and out again. */
export function warmedC(pot: Pot, volumeMl: Millilitres, waterC: Celsius): Celsius {
  return contactC({ waterMl: volumeMl, waterC, wallJPerK: pot.wallJPerK, leafG: 0, heldMl: 0, bodyC: pot.ambientC });
}

/** J/K of everything that cools together. */
export function bodyJPerK(pot: Pot, leafG: Grams, liquidMl: Millilitres, c: Celsius): number {
  return pot.wallJPerK + leafG * leafJPerGK + waterJPerK(liquidMl, c);
}
