/** Water as physics knows it: pressure at a height, boiling, density, heat. It knows nothing of tea. */
import type { Celsius, Metres, Pascals } from '../units.ts';

const zeroCelsiusK = 273.15;

/** IAPWS-IF97 region 4 (R7-97(2012), table 34); the index is the paper's, so [0] is unused. */
const n = [
  0, 0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/** Saturation pressure in MPa at 273.15…647.096 K (IF97 eq. 30). */
export function saturationPressureMPa(kelvin: number): number {
  const t = kelvin + n[9] / (kelvin - n[10]);
  const a = t * t + n[1] * t + n[2];
  const b = n[3] * t * t + n[4] * t + n[5];
  const c = n[6] * t * t + n[7] * t + n[8];
  return ((2 * c) / (-b + Math.sqrt(b * b - 4 * a * c))) ** 4;
}

/** Saturation temperature in K at 0.000611213…22.064 MPa (IF97 eq. 31). */
export function saturationTemperatureK(megapascals: number): number {
  const b = megapascals ** 0.25;
  const e = b * b + n[3] * b + n[6];
  const f = n[1] * b * b + n[4] * b + n[7];
  const g = n[2] * b * b + n[5] * b + n[8];
  const d = (2 * g) / (-f - Math.sqrt(f * f - 4 * e * g));
  return (n[10] + d - Math.sqrt((n[10] + d) ** 2 - 4 * (n[9] + n[10] * d))) / 2;
}

/** Mean air pressure, ISO 2533 troposphere, −2,000…11,000 m. Weather moves it ± 3 %, the boiling point ± 0.8 °C. */
export function airPressurePa(elevationM: Metres): Pascals {
  return 101325 * (1 - (0.0065 * elevationM) / 288.15) ** (9.80665 / (287.05287 * 0.0065));
}

/** Where water boils at this height on a day of mean weather. */
export function boilingPointC(elevationM: Metres): Celsius {
  return saturationTemperatureK(airPressurePa(elevationM) / 1e6) - zeroCelsiusK;
}

/** kg/m³ at 0…100 °C and 101,325 Pa. Kell 1975, J Chem Eng Data 20:97; good to 0.001 kg/m³. */
export function densityKgPerM3(c: Celsius): number {
  const above =
    999.83952 + c * (16.945176 + c * (-7.9870401e-3 + c * (-46.170461e-6 + c * (105.56302e-9 - 280.54253e-12 * c))));
  return above / (1 + 16.87985e-3 * c);
}

/** J/(g K) every 20 °C from 0 to 100, CRC Handbook (from memory, ± 0.1 %). */
const heatCapacities = [4.219, 4.184, 4.18, 4.185, 4.197, 4.216] as const;

/** Heat capacity of water in J/(g K), between the table's points by straight lines. */
export function heatCapacityJPerGK(c: Celsius): number {
  const place = Math.min(Math.max(c, 0), 100) / 20;
  const low = Math.min(Math.floor(place), 4);
  const from = heatCapacities[low] ?? 4.2;
  return from + (place - low) * ((heatCapacities[low + 1] ?? from) - from);
}

/** J/K of so many millilitres, measured at the temperature they are poured at. */
export function waterJPerK(ml: number, c: Celsius): number {
  return (ml * densityKgPerM3(c) * heatCapacityJPerGK(c)) / 1000;
}

/** Latent heat in J/g: the line through 2308 (80 °C), 2283 (90), 2257 (100), from memory, ± 0.3 % from 40 to 100 °C. */
export function latentHeatJPerG(c: Celsius): number {
  return 2512 - 2.55 * c;
}
