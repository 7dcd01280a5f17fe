import { describe, expect, it } from 'vitest';
import {
  degrees,
  duration,
  durations,
  grams,
  listed,
  millilitres,
  spoons,
} from '../../../src/core/words/quantities.ts';

describe('quantities as people say them', () => {
  it.each([
    [6, '6 g', '6 克'],
    [6.25, '6.3 g', '6.3 克'],
    [25.4, '25 g', '25 克'],
  ])('%d grams', (g, en, zh) => {
    expect([grams(g, 'en'), grams(g, 'zh-Hant')]).toEqual([en, zh]);
  });

  it.each([
    [95, 'C', '95 °C'],
    [94.6, 'C', '95 °C'],
    [95, 'F', '203 °F'],
    [95, 'none', '95 °C'],
  ])('%d degrees in %s', (c, unit, said) => {
    expect(degrees(c, unit)).toBe(said);
  });

  it.each([
    [110, '110 ml', '110 毫升'],
    [999.4, '999 ml', '999 毫升'],
    [999.6, '1 l', '1 升'],
    [1250, '1.25 l', '1.25 升'],
  ])('%d millilitres', (ml, en, zh) => {
    expect([millilitres(ml, 'en'), millilitres(ml, 'zh-Hans')]).toEqual([en, zh]);
  });

  it.each([
    [0, '0 s', '0 秒'],
    [6, '6 s', '6 秒'],
    [60, '1 min', '1 分鐘'],
    [150, '2 min 30 s', '2 分 30 秒'],
    [905, '15 min', '15 分鐘'],
    [3600, '1 h', '1 小時'],
    [5400, '1 h 30 min', '1 小時 30 分'],
    [28_700, '8 h', '8 小時'],
    [43_000, '12 h', '12 小時'],
    [-3, '0 s', '0 秒'],
  ])('%d seconds', (s, en, zh) => {
    expect([duration(s, 'en'), duration(s, 'zh-Hant')]).toEqual([en, zh]);
  });

  it.each([
    [[6, 5, 8], '6, 5, 8 s', '6、5、8 秒'],
    [[40, 55, 70], '40, 55 s, 1 min 10 s', '40、55 秒、1 分 10 秒'],
    [[90, 120], '1 min 30 s, 2 min', '1 分 30 秒、2 分钟'],
    [[], '', ''],
  ])('times %j', (list, en, zh) => {
    expect([durations(list, 'en'), durations(list, 'zh-Hans')]).toEqual([en, zh]);
  });

  it.each([
    [0.02, '¼'],
    [0.5, '½'],
    [0.8, '¾'],
    [1.4, '1½'],
    [2.1, '2'],
    [3.3, '3½'],
  ])('%d teaspoons', (n, said) => {
    expect(spoons(n)).toBe(said);
  });

  it('lists', () => {
    expect([listed(['a', 'b', 'c'], 'en'), listed(['甲', '乙', '丙'], 'zh-Hant')]).toEqual([
      'a, b and c',
      '甲、乙和丙',
    ]);
  });
});
