/** What sources say in words or wide ranges: order, direction, bounds. */
import { describe, expect, it } from 'vitest';
import { asBrewed, type AsBrewedInfusion, type BrewedInfusion } from '../../src/core/brewing/as-brewed.ts';
import { isMistake } from '../../src/core/brewing/schedule.ts';
import { data, leafOf, plan } from '../core/brewing/real-data.ts';

function brewed(tea: string, leafG: number, infusions: readonly BrewedInfusion[]): readonly AsBrewedInfusion[] {
  const made = asBrewed(data, leafOf(tea), { leafG, infusions });
  if (isMistake(made)) throw new Error(made.code);
  return made.infusions;
}

const cup = (waterC: number, seconds: number, waterMl = 150): BrewedInfusion => ({ waterMl, waterC, seconds });
const one = (tea: string, waterC: number, seconds: number): AsBrewedInfusion =>
  brewed(tea, 3, [cup(waterC, seconds)])[0]!;

describe('one cup', () => {
  it('caffeine comes faster than gallated catechins (Price and Spitzer 1994)', () => {
    for (const tea of ['da-hong-pao', 'longjing', 'assam']) {
      const { caffeineFraction, gallateFraction } = one(tea, 95, 300);
      expect(caffeineFraction).toBeGreaterThan(gallateFraction);
    }
  });

  it('free catechins come faster than gallated ones, amino acids fastest when cool (the same; sencha, J-Stage)', () => {
    const { aminoFraction, catechinFraction, gallateFraction } = one('sencha', 60, 60);
    expect(catechinFraction).toBeGreaterThan(gallateFraction);
    expect(aminoFraction).toBeGreaterThan(gallateFraction * 2);
  });

  it('cooler water keeps more of the bite back than of the sweet', () => {
    const hot = one('longjing', 95, 120);
    const cool = one('longjing', 70, 120);
    expect(cool.aminoFraction / hot.aminoFraction).toBeGreaterThan(cool.gallateFraction / hot.gallateFraction);
  });

  it('smaller leaf gives faster (Price and Spiro 1985; Farakte et al. 2016)', () => {
    expect(one('assam', 80, 60).caffeineFraction).toBeGreaterThan(one('dianhong', 80, 60).caffeineFraction);
  });

  it('cold for hours gives less caffeine than hot for minutes (Taiwan TRES: 100, 180, 390 mg/L)', () => {
    const [cold, warm, hot] = [one('biluochun', 4, 14_400), one('biluochun', 80, 300), one('biluochun', 100, 300)];
    expect(cold.caffeineMgPerL).toBeLessThan(warm.caffeineMgPerL);
    expect(warm.caffeineMgPerL).toBeLessThan(hot.caffeineMgPerL);
  });

  it('black 3–5 min dissolves about 40 % of the leaf at most (McGee, upper range), at least ISO 3720 can be reached', () => {
    const soluble = Object.values(data.families.black.content).reduce((a, b) => a + b) / 1000;
    expect(soluble).toBeGreaterThan(0.32);
    expect(one('assam', 100, 240).solidsFraction * soluble).toBeLessThan(0.4);
    expect(one('assam', 100, 240).solidsFraction * soluble).toBeGreaterThan(0.2);
  });

  it('green holds at least 32 % of solubles and 7 % of catechins (ISO 11287)', () => {
    const { content } = data.families.green;
    expect(Object.values(content).reduce((a, b) => a + b)).toBeGreaterThan(320);
    expect(content.catechin + content.gallate).toBeGreaterThan(70);
  });
});

const ratio = (waterC: number): number => {
  const [first, second] = brewed('da-hong-pao', 3, [cup(waterC, 30), cup(waterC, 30)]);
  return second!.solidsFraction / first!.solidsFraction;
};

/** Caffeine and catechins of three infusions, a minute each, at 85 °C. */
function ofThree(tea: string): readonly [number, number] {
  const cups = brewed(tea, 5, [cup(85, 60, 200), cup(85, 60, 200), cup(85, 60, 200)]);
  const caffeine = cups.reduce((sum, { caffeineFraction }) => sum + caffeineFraction, 0);
  const { catechin, gallate } = data.families.green.content;
  const catechins = cups.reduce((sum, c) => sum + c.catechinFraction * catechin + c.gallateFraction * gallate, 0);
  return [caffeine, catechins];
}

describe('one after the other', () => {
  it('three times 5 min at the boil take nearly all caffeine (Hicks et al. 1996)', () => {
    for (const tea of ['assam', 'longjing', 'da-hong-pao']) {
      const shares = brewed(tea, 3, [cup(100, 300), cup(100, 300), cup(100, 300)]).map((i) => i.caffeineFraction);
      expect(shares[0]).toBeGreaterThan(shares[1]! * 1.8);
      expect(shares[1]).toBeGreaterThan(shares[2]!);
      expect(shares.reduce((a, b) => a + b)).toBeGreaterThan(0.85);
    }
  });

  it('of three infusions less rolled leaf gives about 20 % less caffeine, 30 % less catechins (Taniguchi et al. 2012)', () => {
    // The abstract gives no times.
    const [panFired, steamed] = [ofThree('biluochun'), ofThree('sencha')];
    expect(Math.abs(panFired[0] / steamed[0] - 0.8)).toBeLessThan(0.08);
    expect(Math.abs(panFired[1] / steamed[1] - 0.7)).toBeLessThan(0.08);
  });

  it('of short pours, at 70 °C the second cup keeps up better with the first than at 95 °C', () => {
    expect(ratio(70)).toBeGreaterThan(ratio(95));
  });

  it('a long series runs out, and never gives more than there is', () => {
    const shares = brewed(
      'tieguanyin',
      7,
      Array.from({ length: 15 }, () => cup(95, 60, 100)),
    ).map((i) => i.solidsFraction);
    expect(shares.at(-1)).toBeLessThan(shares[1]! / 4);
    expect(shares.reduce((a, b) => a + b)).toBeLessThanOrEqual(1);
  });
});

it('a usual serving holds 14 to 61 mg of caffeine (Chin et al. 2008: 20 teas of 6–8 oz)', () => {
  for (const tea of ['longjing', 'keemun', 'ceylon', 'da-hong-pao']) {
    const { caffeineMg } = plan(tea, 'mug', 240).infusions[0]!;
    expect(caffeineMg).toBeGreaterThan(14);
    expect(caffeineMg).toBeLessThan(61);
  }
});
