/** First contact and cooling against the balances and anecdotes of the reference values. */
import { describe, expect, it } from 'vitest';
import { contactC, evaporationW, potOf, wallMassG, warmedC } from '../../../src/core/brewing/vessel.ts';
import { waterJPerK } from '../../../src/core/brewing/water.ts';
import { data } from './real-data.ts';

const cold = { leafG: 0, heldMl: 0, bodyC: 20 };

describe('first contact', () => {
  // Computed in the reference values with one heat capacity for all; ours follows the tables, hence ± 0.5 °C.
  it.each([
    [110, 120, 85.0],
    [285, 200, 89.6],
  ])('%d ml boiling into %d g of cold porcelain', (waterMl, wallG, celsius) => {
    const met = contactC({ ...cold, waterMl, waterC: 99.974, wallJPerK: wallG * 0.85 });
    expect(Math.abs(met - celsius)).toBeLessThan(0.5);
  });

  it('of 350 g boiling with a 482 g mug at 18 °C is a bit over 180 °F (82.3 °C by balance)', () => {
    const met = contactC({ ...cold, bodyC: 18, waterMl: 350 / 0.958, waterC: 100, wallJPerK: 482 * 0.84 });
    expect(Math.abs(met - 82.3)).toBeLessThan(0.5);
  });

  it('keeps the energy: what the water loses the wall gains', () => {
    const met = contactC({ ...cold, waterMl: 110, waterC: 95, wallJPerK: 102 });
    expect(waterJPerK(110, 95) * (95 - met)).toBeCloseTo(102 * (met - 20), 6);
  });
});

// ISO 3103: 200 ± 10 g at 310 ml; the gaiwan's and mug's are the rows above.
it.each([
  ['porcelain-pot', 310, 200],
  ['gaiwan', 110, 120],
  ['mug', 350, 482],
])('a %s of %d ml weighs near %d g', (id, volumeMl, grams) => {
  expect(Math.abs(wallMassG(data.vessels[id]!, volumeMl) - grams)).toBeLessThan(10);
});

it('evaporates about 31 W from 50 cm² at 90 °C (ASHRAE pool form, from memory)', () => {
  expect(Math.abs(evaporationW(50e-4, 90) - 31)).toBeLessThan(2);
});

function minutesTo(vesselId: string, volumeMl: number, toC: number): number {
  const vessel = data.vessels[vesselId]!;
  const pot = potOf(vessel, volumeMl, 95);
  const heat = pot.wallJPerK + waterJPerK(volumeMl, 90);
  // Where boiling water lands in a cold mug, by the balance above.
  let c = 82;
  let seconds = 0;
  while (c > toC && seconds < 100_000) {
    c -= ((pot.lossWPerK.steady + pot.lossWPerK.rising * c) * (c - pot.ambientC)) / heat;
    seconds++;
  }
  return seconds / 60;
}

it('an open mug falls below 53 °C in 15–30 min (Warner et al. 2012: most drinks do)', () => {
  expect(minutesTo('mug', 150, 53)).toBeGreaterThan(15);
  expect(minutesTo('mug', 200, 53)).toBeLessThan(32);
});

it('a closed vacuum flask keeps heat at least 7.5 times as long as an open mug (de Podesta, lid off against on)', () => {
  expect(minutesTo('thermos', 350, 70) / minutesTo('mug', 350, 70)).toBeGreaterThan(7.5);
});

it('warming the vessel pays: the unwarmed gaiwan costs about a dozen degrees', () => {
  const pot = potOf(data.vessels['gaiwan']!, 110, 95);
  const fill = { leafG: 0, heldMl: 0, waterMl: 94, waterC: 95, wallJPerK: pot.wallJPerK };
  const won = contactC({ ...fill, bodyC: warmedC(pot, 110, 95) }) - contactC({ ...fill, bodyC: 20 });
  expect(won).toBeGreaterThan(9);
  expect(won).toBeLessThan(16);
});

it('water colder than the room is kept cold', () => {
  expect(potOf(data.vessels['cold-jar']!, 1000, 4).ambientC).toBe(4);
});
