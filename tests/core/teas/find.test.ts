import { describe, expect, test } from 'vitest';
import { plainText } from '../../../src/core/teas/plain-text.ts';
import { finder, names, teas } from '../../reading/content.ts';

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
    ['mao xie', 'oolong'],
    ['huang jin gui', 'oolong'],
    ['huang guan yin', 'oolong'],
    ['黃觀音', 'oolong'],
    ['jin jun mei', 'black'],
    ['恩施玉露', 'green'],
    ['jasmine silver needle', 'scented'],
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
        .filter((slip) => ![tea.id, null].includes(best(slip)))
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
