/** Water against the published values. Each row names its source. */
import { describe, expect, it } from 'vitest';
import {
  airPressurePa,
  boilingPointC,
  densityKgPerM3,
  heatCapacityJPerGK,
  latentHeatJPerG,
  saturationPressureMPa,
  saturationTemperatureK,
} from '../../../src/core/brewing/water.ts';

describe('saturation, IAPWS R7-97(2012)', () => {
  // Table 35, to its nine digits.
  it.each([
    [300, 0.353658941e-2],
    [500, 0.263889776e1],
    [600, 0.123443146e2],
  ])('%d K', (kelvin, megapascals) => {
    expect(Math.abs(saturationPressureMPa(kelvin) / megapascals - 1)).toBeLessThan(2e-9);
  });

  // Table 36, to its nine digits.
  it.each([
    [0.1, 372.755919],
    [1, 453.035632],
    [10, 584.149488],
  ])('%d MPa', (megapascals, kelvin) => {
    expect(Math.abs(saturationTemperatureK(megapascals) - kelvin)).toBeLessThan(1e-6);
  });

  it('goes there and back over the whole range', () => {
    for (let kelvin = 273.15; kelvin <= 647; kelvin += 1.7) {
      expect(saturationTemperatureK(saturationPressureMPa(kelvin))).toBeCloseTo(kelvin, 6);
    }
  });
});

// ISO 2533, and what IF97 makes of its pressures.
it.each([
  [0, 101325, 99.974],
  [500, 95460.8, 98.312],
  [1000, 89874.6, 96.649],
  [1500, 84556.0, 94.983],
  [2000, 79495.2, 93.315],
  [3000, 70108.5, 89.972],
  [4000, 61640.2, 86.619],
])('at %d m: %d Pa, water boils at %d °C', (metres, pascals, celsius) => {
  expect(Math.abs(airPressurePa(metres) - pascals)).toBeLessThan(0.3);
  expect(Math.abs(boilingPointC(metres) - celsius)).toBeLessThan(0.001);
});

// Kell 1975, J Chem Eng Data 20:97.
it.each([
  [4, 999.972],
  [20, 998.204],
  [60, 983.199],
  [80, 971.798],
  [100, 958.364],
])('density at %d °C is %d kg/m³', (celsius, density) => {
  expect(Math.abs(densityKgPerM3(celsius) - density)).toBeLessThan(0.0021);
});

// CRC Handbook (from memory), the table's own points; between them a straight line.
it.each([
  [0, 4.219],
  [10, 4.2015],
  [20, 4.184],
  [40, 4.18],
  [60, 4.185],
  [80, 4.197],
  [90, 4.2065],
  [100, 4.216],
])('heat capacity at %d °C is %d J/(g K)', (celsius, capacity) => {
  expect(heatCapacityJPerGK(celsius)).toBeCloseTo(capacity, 6);
});

// From memory, so no tighter than its own scatter.
it.each([
  [80, 2308],
  [90, 2283],
  [100, 2257],
])('latent heat at %d °C is near %d J/g', (celsius, heat) => {
  expect(Math.abs(latentHeatJPerG(celsius) / heat - 1)).toBeLessThan(0.003);
});
