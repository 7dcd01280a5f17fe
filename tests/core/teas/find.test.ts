import { describe, expect, test } from 'vitest';
import { plainText } from '../../../src/core/teas/plain-text.ts';
import { finder, names, teas } from '../../reading/content.ts';

/** An l for an Al: Lishan is a tea as well as Alishan, and must be taken for itself. */
const isName = (slip: string): boolean =>
  teas.some(({ names: { en }, aliases }) => [en.toLowerCase(), ...aliases].some((name) => slip.trim().endsWith(name)));

const best = (text: string): string | null => finder.find(text).best?.id ?? null;

describe('a name in any writing', () => {
  test.each([
    ['tie guan yin', 'tieguanyin'],
    ['TIĚGUĀNYĪN', 'tieguanyin'],
    ['Tieh-Kuan-Yin', 'tieguanyin'],
    ['ti kwan yin', 'tieguanyin'],
    ['铁观音', 'tieguanyin'],
    ['鐵官音', 'tieguanyin'],
    ['Dà Hóng Páo', 'da-hong-pao'],
    ['da hong pau', 'da-hong-pao'],
    ['ＬＯＮＧＪＩＮＧ', 'longjing'],
    ['drageon well', 'longjing'],
    ['lung ching', 'longjing'],
    ['bai hao yin zhen', 'silver-needle'],
    ['bai hao oolong', 'oriental-beauty'],
    ['junshan silver needles', 'junshan-yinzhen'],
    ['安吉白茶', 'anji-baicha'],
    ['ripe pu-erh', 'shou-puer'],
    ['puer, the raw kind', 'sheng-puer'],
    ['普洱(熟)', null],
    ['熟普洱', 'shou-puer'],
    ['鸭屎香', 'dancong'],
    ['chrysanthamum', 'chrysanthemum'],
    ['mao xie', 'maoxie'],
    ['huang jin gui', 'huangjingui'],
    ['jin jun mei', 'jinjunmei'],
    ['四季春', 'sijichun'],
    ['奶香金萱', 'jinxuan'],
    ['milk oolong', 'jinxuan'],
    ['恩施玉露', 'enshi-yulu'],
    ['玉露', 'gyokuro'],
    ['jasmine silver needle', 'jasmine-silver-needle'],
    ['桂花红茶', 'osmanthus-black'],
  ])('%s', (text, id) => {
    expect(best(text)).toBe(id);
  });

  test('every name and alias of the catalogue finds its tea', () => {
    const missed = teas.flatMap((tea) =>
      [tea.id, ...Object.values(tea.names), ...tea.aliases].filter((name) => best(name) !== tea.id),
    );
    expect(missed).toEqual([]);
  });
});

describe('a name that is none of ours is never taken for one', () => {
  test.each([
    ['tie guan hua', null],
    ['huang guan yin', 'oolong'],
    ['黃觀音', 'oolong'],
    ['jiu qu hong mei', 'black'],
    ['日照綠茶', 'green'],
    ['gardenia oolong', 'scented'],
    ['longjing black tea', 'black'],
    ['puer', 'dark'],
    ['rock oolong', 'oolong'],
    ['wulong', 'oolong'],
    ['white tea', 'white'],
    ['longjing or biluochun', 'green'],
    ['longjing or keemun', null],
    ['show me', null],
    ['which cup would match a gaiwan', null],
    ['a holiday in taiwan', null],
    ['薄荷糖', null],
  ])('%s tells at most the family %s', (text, family) => {
    expect(finder.find(text)).toMatchObject({ best: null, family });
  });

  test('no tea of the family words is found as ours', () => {
    const taken = names.families.flatMap((row) => row.teas.filter((tea) => best(tea) !== null));
    expect(taken).toEqual([]);
  });

  test('a letter left out of a long name finds the same tea or none', () => {
    const wrong = teas.flatMap((tea) =>
      tea.aliases
        .filter((alias) => /^[a-z ]{9,}$/.test(alias))
        .flatMap((alias) => alias.split('').map((_, i) => alias.slice(0, i) + alias.slice(i + 1)))
        .filter((slip) => ![tea.id, null].includes(best(slip)) && !isName(slip))
        .map((slip) => `${slip}: ${best(slip) ?? ''}`),
    );
    expect(wrong).toEqual([]);
  });
});

test('a plain text stands character for character beside what was written', () => {
  const { shown, plain } = plainText('Té\u200B 鐵觀音\u202E ½ １００ｍｌ');
  expect(plain).toHaveLength(shown.length);
  expect(plain).toContain('te 铁观音');
  expect(plain).toContain('100ml');
});

describe('what is brewed together with a tea', () => {
  test.each([
    'chrysanthemum with goji and puer in a 500 ml pot',
    'puer with chrysanthemum, 150 ml gaiwan',
    'green tea with mint leaves in a mug',
  ])('%s names no single tea', (text) => {
    expect(finder.find(text)).toMatchObject({ best: null, family: null });
  });

  test('and a puer that is named with it is one of those to choose from', () => {
    const { candidates } = finder.find('chrysanthemum with goji and puer');
    expect(candidates.map(({ id }) => id)).toEqual(['chrysanthemum', 'shou-puer', 'sheng-puer']);
  });

  test('a colour behind "with" is none', () => expect(best('tieguanyin with green balls')).toBe('tieguanyin'));
});
