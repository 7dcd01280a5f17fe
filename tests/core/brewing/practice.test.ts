/** The trade's common practice (no source), as checks: temperatures, fill, the shape of a series. */
import { describe, expect, it } from 'vitest';
import { fillOf } from '../../../src/core/brewing/spoons.ts';
import { data, plan, teas } from './real-data.ts';

const seconds = (id: string, vessel = 'gaiwan', ml = 110, more = {}): readonly number[] =>
  plan(id, vessel, ml, more).infusions.map((i) => i.seconds);

describe('a twisted oolong at 95 °C in a small pot, rinsed', () => {
  it.each([
    ['da-hong-pao', 'gaiwan', 110],
    ['rou-gui', 'clay-pot', 120],
    ['baozhong', 'gaiwan', 100],
  ])('%s in a %s: near 6 s, near 5 s, longer from the third or fourth, seven to twelve', (id, vessel, ml) => {
    const made = plan(id, vessel, ml, { waterC: 95 });
    const [first, second, third, fourth] = made.infusions.map((i) => i.seconds);
    expect(made.rinse).not.toBeNull();
    expect(Math.abs(first! - 6)).toBeLessThanOrEqual(1);
    expect(Math.abs(second! - 5)).toBeLessThanOrEqual(1);
    expect(second).toBeLessThanOrEqual(first!);
    expect(Math.max(third!, fourth!)).toBeGreaterThan(second!);
    expect(made.infusions.length).toBeGreaterThanOrEqual(7);
    expect(made.infusions.length).toBeLessThanOrEqual(12);
  });

  it('lengthens steadily after the third', () => {
    const times = seconds('rou-gui').slice(2);
    expect(times).toEqual(times.toSorted((a, b) => a - b));
  });
});

it.each([
  ['tieguanyin', 'gaiwan', 110],
  ['alishan', 'gaiwan', 150],
  ['dong-ding', 'clay-pot', 150],
  ['guifei', 'porcelain-pot', 200],
])('tightly rolled leaf, %s in a %s of %i ml: 15 to 30 s, then shorter, then ever longer', (id, vessel, ml) => {
  const [first, second, ...later] = seconds(id, vessel, ml);
  expect(first).toBeGreaterThanOrEqual(15);
  expect(first).toBeLessThanOrEqual(30);
  expect(second).toBeLessThan(first!);
  expect(second).toBeGreaterThanOrEqual(8);
  expect([second, ...later]).toEqual([second!, ...later].toSorted((a, b) => a - b));
  expect(later.length + 2).toBeGreaterThanOrEqual(7);
  expect(later.length + 2).toBeLessThanOrEqual(12);
});

it('leaf without room for its whole dose is aimed at a cup as much lighter', () => {
  const [ball, strip] = [plan('tieguanyin', 'gaiwan', 110), plan('baozhong', 'gaiwan', 110)];
  expect(ball.leafG).toBeGreaterThan(strip.leafG);
  const lighter = strip.infusions[0]!.strengthMgPerMl / ball.infusions[0]!.strengthMgPerMl;
  expect(lighter).toBeCloseTo(strip.leafG / ball.leafG, 1);
});

describe('a scented tea is brewed as the tea under the flowers', () => {
  it.each([
    ['jasmine-green', 'lushan-yunwu'],
    ['osmanthus-oolong', 'gaba-oolong'],
    ['rose-black', 'yingde'],
  ])('%s as %s', (scented, plain) => {
    const { infusions, leafG, rinse, cautions } = plan(scented, 'gaiwan', 110);
    const under = plan(plain, 'gaiwan', 110);
    expect([leafG, rinse, infusions]).toEqual([under.leafG, under.rinse, under.infusions]);
    expect(cautions).toContain('flower-allergy');
  });
});

it('gyokuro: more leaf than sencha, and a far stronger cup', () => {
  const [shaded, usual] = [plan('gyokuro', 'kyusu', 150), plan('sencha', 'kyusu', 150)];
  expect(shaded.leafG).toBeGreaterThan(usual.leafG * 1.2);
  expect(shaded.infusions[0]!.strengthMgPerMl).toBeGreaterThan(usual.infusions[0]!.strengthMgPerMl * 1.3);
});

it.each(teas.filter(({ family }) => family === 'green').map(({ id }) => [id]))(
  '%s is never brewed above 85 °C',
  (id) => {
    expect(plan(id, 'gaiwan', 110).waterC).toBeLessThanOrEqual(85);
    expect(plan(id, 'mug', 300, { style: 'western' }).waterC).toBeLessThanOrEqual(85);
  },
);

it.each([
  'longjing',
  'biluochun',
  'huangshan-maofeng',
  'anji-baicha',
  'taiping-houkui',
  'liuan-guapian',
  'gunpowder',
  'sencha',
])('%s at 75–80 °C', (id) => {
  const { waterC } = plan(id, 'gaiwan', 110);
  expect(waterC).toBeGreaterThanOrEqual(75);
  expect(waterC).toBeLessThanOrEqual(80);
});

it.each(teas.filter(({ family }) => family === 'oolong').map(({ id }) => [id]))('%s at 90 °C to boiling', (id) => {
  expect(plan(id, 'gaiwan', 110).waterC).toBeGreaterThanOrEqual(90);
});

describe('dry leaf in a small pot', () => {
  it.each(['tieguanyin', 'dong-ding', 'alishan', 'da-hong-pao', 'rou-gui', 'baozhong', 'oriental-beauty', 'shou-puer'])(
    '%s: one fifth to one third',
    (id) => {
      const { fillFraction } = plan(id, 'gaiwan', 110);
      expect(fillFraction).toBeGreaterThan(0.19);
      expect(fillFraction).toBeLessThan(0.34);
    },
  );

  it.each(['dancong', 'shui-xian'])('%s, large twisted leaf: about half', (id) => {
    expect(Math.abs(plan(id, 'gaiwan', 110).fillFraction - 0.5)).toBeLessThan(0.05);
  });
});

const bulk = (form: string): number => data.forms[form]!.bulkGPerMl;

it('the forms keep the order of one and the same spoonful (E. Smith: 3.15 between densest and lightest)', () => {
  expect(bulk('pellet') / bulk('twisted-strip')).toBeGreaterThan(2.5);
  expect(bulk('pellet') / bulk('twisted-strip')).toBeLessThan(3.5);
});

describe('what is given is kept to', () => {
  it('a fixed dose', () => {
    expect(plan('rou-gui', 'gaiwan', 110, { leafG: 4 }).leafG).toBe(4);
  });

  it('less leaf: longer, and not more infusions', () => {
    const usual = plan('rou-gui', 'gaiwan', 110);
    const less = plan('rou-gui', 'gaiwan', 110, { leafG: 4 });
    expect(less.infusions[0]!.seconds).toBeGreaterThan(usual.infusions[0]!.seconds);
    expect(less.infusions.length).toBeLessThanOrEqual(usual.infusions.length);
  });

  it('far too little leaf: the vessel is filled less', () => {
    expect(plan('rou-gui', 'gaiwan', 110, { leafG: 1 }).waterMl).toBeLessThan(
      plan('rou-gui', 'gaiwan', 110).waterMl * 0.7,
    );
  });

  it('the height of the place: clamped, and made up for with time', () => {
    const low = plan('dianhong', 'porcelain-pot', 500, { waterC: 100 });
    const high = plan('dianhong', 'porcelain-pot', 500, { waterC: 100, elevationM: 4000 });
    expect(high.waterC).toBe(high.boilsAtC);
    expect(high.infusions[0]!.seconds).toBeGreaterThan(low.infusions[0]!.seconds);
  });

  it('a pot not warmed: longer', () => {
    const warm = plan('dianhong', 'porcelain-pot', 500).infusions[0]!.seconds;
    expect(plan('dianhong', 'porcelain-pot', 500, { warmed: false }).infusions[0]!.seconds).toBeGreaterThan(warm);
  });

  it('a stronger wish: never less leaf, never a weaker first cup', () => {
    for (const id of ['longjing', 'tieguanyin', 'assam', 'shou-puer']) {
      const cups = [0.6, 0.8, 1, 1.2, 1.5].map((strength) => plan(id, 'porcelain-pot', 400, { strength }));
      const doses = cups.map((p) => p.leafG);
      const firsts = cups.map((p) => p.infusions[0]!.strengthMgPerMl);
      expect(doses).toEqual(doses.toSorted((a, b) => a - b));
      expect(firsts).toEqual(firsts.toSorted((a, b) => a - b));
    }
  });

  it('more guests: more water to heat, the same leaf', () => {
    const one = plan('tieguanyin', 'gaiwan', 110);
    const four = plan('tieguanyin', 'gaiwan', 110, { guests: 4 });
    expect(four.kettleMl).toBeGreaterThan(one.kettleMl);
    expect(four.leafG).toBe(one.leafG);
  });

  it('the kettle holds every filling, the rinse and the warming', () => {
    const made = plan('tieguanyin', 'gaiwan', 110);
    expect(made.kettleMl).toBeGreaterThanOrEqual(made.waterMl * (made.infusions.length + 1) + 110);
  });
});

it('herbs without caffeine give none', () => {
  for (const id of ['chrysanthemum', 'rooibos', 'peppermint']) {
    expect(plan(id, 'porcelain-pot', 500).infusions.every((i) => i.caffeineMg === 0)).toBe(true);
  }
});

it('matcha is whisked whatever is asked, and drunk whole', () => {
  const made = plan('matcha', 'mug', 300, { style: 'western' });
  expect(made.style).toBe('whisked');
  expect(made.infusions).toHaveLength(1);
  expect(made.infusions[0]!.caffeineMg).toBeCloseTo(made.leafG * data.families.matcha.content.caffeine, 1);
});

it.each([95, 70, undefined])(
  'a jar in the refrigerator stays cold, whatever was said of water before: %s °C',
  (waterC) => {
    const made = plan('sencha', 'cold-jar', 700, waterC === undefined ? {} : { waterC });
    expect(made).toMatchObject({ style: 'cold', waterC: 4 });
  },
);

it.each([
  [0.03, 'bottom'],
  [1 / 10, 'tenth'],
  [5 / 0.36 / 110, 'tenth'],
  [1 / 5, 'fifth'],
  [1 / 4, 'quarter'],
  [1 / 3, 'third'],
  [1 / 2, 'half'],
  [0.7, 'more'],
])('a vessel %d full of dry leaf is called: %s', (fraction, word) => {
  expect(fillOf(fraction)).toBe(word);
});
