/** `npm run brew` from argument list to answer: the JSON shapes to the key, and one clear sentence for each mistake. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { brew } from '../../src/commands/brew.ts';

const base = ['--tea', 'tieguanyin', '--vessel', 'gaiwan', '--volume', '110'];

function json(...args: string[]): Record<string, unknown> {
  const { out, code, error } = brew(args);
  expect([code, error]).toEqual([0, '']);
  return JSON.parse(out) as Record<string, unknown>;
}

describe('the plan as JSON', () => {
  const keys =
    'tea family vessel style leafG waterMl fillFraction waterC boilsAtC warm rinse infusions kettleMl cautions'.split(
      ' ',
    );

  it('has exactly the keys it should', () => {
    const plan = json(...base, '--json');
    expect(Object.keys(plan)).toEqual(keys);
    expect(Object.keys((plan['infusions'] as object[])[0]!)).toEqual([
      'n',
      'seconds',
      'strengthMgPerMl',
      'caffeineMg',
      'pouredMl',
    ]);
    expect(plan['rinse']).toEqual({ seconds: 5 });
  });

  it('is the same from flags and from a request', () => {
    const flags = [...base, '--leaf', '6', '--water', '93', '--elevation', '1640', '--guests', '3', '--no-warm'];
    const request = {
      tea: 'tieguanyin',
      vessel: 'gaiwan',
      volumeMl: 110,
      leafG: 6,
      waterC: 93,
      elevationM: 1640,
      guests: 3,
      warmed: false,
    };
    expect(json('--json', JSON.stringify(request))).toEqual(json(...flags, '--json'));
  });

  it('takes a family alone, and any name of a tea', () => {
    expect(json('--family', 'green', '--vessel', 'mug', '--volume', '300', '--json')['tea']).toBeNull();
    for (const name of ['鐵觀音', '铁观音', 'Tie Guan Yin', 'tieguanyin']) {
      expect(json('--tea', name, '--vessel', 'gaiwan', '--volume', '110', '--json')['tea']).toBe('tieguanyin');
    }
  });

  it('clamps a wish above the boil of the place', () => {
    const plan = json(...base, '--water', '100', '--elevation', '1640', '--json');
    expect(plan['waterC']).toBe(plan['boilsAtC']);
  });
});

const brewed = (more: object = {}): string =>
  JSON.stringify({ tea: 'sencha', leafG: 10, infusions: [{ waterMl: 430, waterC: 90, seconds: 60 }], ...more });

const share = (answer: Record<string, unknown>): number =>
  (answer['infusions'] as Record<string, number>[])[0]!['caffeineFraction']!;

describe('as brewed', () => {
  it('gives exactly the shares it should', () => {
    const answer = json('--as-brewed', brewed());
    const [first] = answer['infusions'] as Record<string, number>[];
    expect(Object.keys(answer)).toEqual(['infusions']);
    expect(Object.keys(first!)).toEqual([
      'caffeineFraction',
      'caffeineMgPerG',
      'caffeineMgPerL',
      'solidsFraction',
      'aminoFraction',
      'catechinFraction',
      'gallateFraction',
    ]);
    expect(first!['caffeineMgPerL']! * 0.43).toBeCloseTo(first!['caffeineMgPerG']! * 10, 1);
  });

  it('a cold vessel gives less than water that holds its temperature', () => {
    expect(share(json('--as-brewed', brewed({ vessel: 'mug' })))).toBeLessThan(share(json('--as-brewed', brewed())));
  });

  it('herbs give no caffeine, nothing brewed gives nothing', () => {
    const none = json('--as-brewed', brewed({ tea: 'rooibos' }));
    expect((none['infusions'] as Record<string, number>[])[0]).toMatchObject({
      caffeineFraction: 0,
      caffeineMgPerL: 0,
    });
    const still = json('--as-brewed', brewed({ infusions: [{ waterMl: 400, waterC: 90, seconds: 0 }] }));
    expect((still['infusions'] as Record<string, number>[])[0]).toMatchObject({ solidsFraction: 0 });
  });
});

const asked = (more: object): string[] => [
  '--json',
  JSON.stringify({ tea: 'tieguanyin', vessel: 'gaiwan', volumeMl: 110, ...more }),
];

describe('mistakes', () => {
  it.each([
    [asked({ tea: 'moonwort' }), 'tea-unknown', 'tea'],
    [asked({ tea: '' }), 'tea-unknown', 'tea'],
    [asked({ tea: '\u200b' }), 'tea-unknown', 'tea'],
    [asked({ tea: 'longjing or biluochun' }), 'tea-ambiguous', 'tea'],
    [asked({ tea: 5 }), 'text-expected', 'tea'],
    [asked({ family: 'green' }), 'family-differs', 'family'],
    [['--json', '{"family":"beer","vessel":"mug","volumeMl":300}'], 'family-unknown', 'family'],
    [['--json', '{"vessel":"mug","volumeMl":300}'], 'tea-missing', 'tea'],
    [asked({ vessel: 'bucket' }), 'vessel-unknown', 'vessel'],
    [asked({ vessel: 'constructor' }), 'vessel-unknown', 'vessel'],
    [['--json', '{"tea":"sencha","volumeMl":300}'], 'vessel-missing', 'vessel'],
    [['--json', '{"tea":"sencha","vessel":"mug"}'], 'volume-missing', 'volumeMl'],
    [asked({ volumeMl: 0 }), 'volume-out-of-range', 'volumeMl'],
    [asked({ volumeMl: -5 }), 'volume-out-of-range', 'volumeMl'],
    [asked({ volumeMl: 9000 }), 'volume-out-of-range', 'volumeMl'],
    [asked({ volumeMl: 'big' }), 'number-expected', 'volumeMl'],
    [asked({ volumeMl: null }), 'volume-missing', 'volumeMl'],
    [asked({ waterC: 110 }), 'water-out-of-range', 'waterC'],
    [asked({ waterC: 20, style: 'gongfu' }), 'water-out-of-range', 'waterC'],
    [asked({ waterC: 90, style: 'cold' }), 'water-out-of-range', 'waterC'],
    [asked({ leafG: 50, volumeMl: 100 }), 'leaf-out-of-range', 'leafG'],
    [asked({ leafG: -1 }), 'leaf-out-of-range', 'leafG'],
    [asked({ elevationM: 20000 }), 'elevation-out-of-range', 'elevationM'],
    [asked({ guests: 2.5 }), 'guests-out-of-range', 'guests'],
    [asked({ strength: 3 }), 'strength-out-of-range', 'strength'],
    [asked({ style: 'boiled' }), 'style-unknown', 'style'],
    [asked({ style: 'whisked' }), 'style-needs-powder', 'style'],
    [asked({ warmed: 'yes' }), 'flag-expected', 'warmed'],
    [asked({ milk: true }), 'field-unknown', 'milk'],
    [['--json', '{"tea":'], 'json-expected', 'json'],
    [['--json', '[]'], 'json-expected', 'json'],
    [[...base, '--volume', 'big', '--json'], 'number-expected', 'volumeMl'],
    [[...base, '--volume', '-5', '--json'], 'volume-out-of-range', 'volumeMl'],
    [[...base, '--chart', '/nowhere/at/all.svg', '--json'], 'chart-unwritable', 'chart'],
    [[...base, '--sugar', '2', '--json'], 'flag-unknown', '--sugar'],
    [[...base, '--lang', 'fr', '--json'], 'language-unknown', 'lang'],
    [['--as-brewed', '{"tea":"sencha","leafG":3}'], 'field-missing', 'infusions'],
    [['--as-brewed', '{"tea":"sencha","leafG":3,"infusions":[]}'], 'as-brewed-out-of-range', 'infusions'],
    [
      ['--as-brewed', '{"tea":"sencha","leafG":3,"infusions":[{"waterMl":100,"waterC":110,"seconds":60}]}'],
      'as-brewed-out-of-range',
      'infusions.0.waterC',
    ],
    [
      ['--as-brewed', '{"tea":"sencha","leafG":3,"infusions":[{"waterMl":100,"waterC":90}]}'],
      'field-missing',
      'infusions.0.seconds',
    ],
  ])('%j: %s', (args, code, field) => {
    const answer = brew(args);
    expect([answer.code, answer.out]).toEqual([2, '']);
    expect(answer.error).not.toContain('\n');
    const { error } = JSON.parse(answer.error) as { error: { code: string; field: string; message: string } };
    expect(error).toMatchObject({ code, field });
    expect(error.message.length).toBeGreaterThan(8);
  });

  it('in plain words without --json, in the language asked for', () => {
    const answer = brew(['--tea', 'tieguanyin', '--vessel', 'gaiwan', '--volume', '9000', '--lang', 'zh-Hant']);
    expect(answer.error).toMatch(/^volumeMl: .*20.*5,000/u);
    expect(answer.error).toContain('毫升');
  });
});

describe('to read', () => {
  it.each(['en', 'zh-Hant', 'zh-Hans'])('%s: a sheet no wider than a terminal, with reasons', (lang) => {
    const { out, code } = brew([...base, '--lang', lang, '--why']);
    expect(code).toBe(0);
    expect(out.split('\n').length).toBeGreaterThan(15);
    const rungs = out.split('\n').filter((line) => line.includes('▏'));
    expect(rungs.length).toBeGreaterThanOrEqual(7);
    expect(rungs.every((line) => line.length <= 60)).toBe(true);
    expect(out).not.toMatch(/undefined|NaN|\{|\}/u);
  });

  it('writes the chart', () => {
    const folder = mkdtempSync(join(tmpdir(), 'ninthpour-'));
    const file = join(folder, 'chart.svg');
    brew([...base, '--chart', file]);
    expect(readFileSync(file, 'utf8')).toMatch(/^<svg [\s\S]*<\/svg>$/u);
    rmSync(folder, { recursive: true });
  });
});
