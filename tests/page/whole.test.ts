/** Where a line may not break: between a number and what it counts. */
import { describe, expect, it } from 'vitest';
import { breadth, isPlanName, itemOf, wholes } from '../../src/channels/web/page/whole.ts';

describe('a number stays with what it counts', () => {
  it.each([
    ['Leaf: 6.5 g, about 7½ level tsp', ['6.5 g']],
    ['1 min 40 s, then 12 s', ['1 min 40 s', '12 s']],
    ['97 °C; 33 % of it', ['97 °C', '33 %']],
    ['with its lid off (± 1 °C).', ['± 1 °C']],
    ['掀蓋放 1 分 40 秒（± 1 °C）。', ['1 分 40 秒', '± 1 °C']],
    ['8 seats free at 10:30 am', ['10:30 am']],
    ['12月5日（星期六）10:30', ['12月5日（星期六）']],
    ['12月5日 10:30', ['12月5日']],
    ['Saturday, December 5, 10:30 am – 8 seats free', ['December 5', '10:30 am –', '8 seats free']],
    ['upstairs, the long table – 8 seats free', ['table –', '8 seats free']],
    ['the first cup to 3.7 mg/ml; the last', ['3.7 mg/ml']],
    ['有 2.5 毫克/毫升。', ['2.5 毫克/毫升']],
    ['長桌：還有 8 個座位', ['還有 8 個座位']],
    ['Infusion 3: 10 s from your tap', ['Infusion 3', '10 s']],
    ['Open at 9:30, not at 10.5', []],
    ['第 3 泡：1 分 10 秒', ['第 3 泡', '1 分 10 秒']],
    ['94 毫升，茶葉 6.5 克', ['94 毫升', '6.5 克']],
    ['第 1 泡，4 分鐘；1 小时 30 分', ['第 1 泡', '4 分鐘', '1 小时 30 分']],
    ['小心：熱水會燙傷，遠離小孩，慢慢倒。', ['慢慢倒。']],
    ['先用熱水溫器具，再把水倒掉。', []],
    ['Sencha · Porcelain pot · 300 ml', ['Sencha ·', 'pot ·', '300 ml']],
    ['1.2 l · 煎茶', ['1.2 l ·']],
    ['nothing counted', []],
    ['', []],
  ])('%j', (text, expected) => {
    const parts = wholes(text);
    expect(parts.filter((_, n) => n % 2 === 1)).toEqual(expected);
    expect(parts.join('')).toBe(text);
  });

  it.each([
    ['Change something', 16],
    ['出湯了，下一泡也注好水', 22],
    ['', 0],
  ])('%j is as broad as %i letters', (text, letters) => expect(breadth(text)).toBe(letters));
});

it.each([
  ['Oolong · Gaiwan · 120 ml (as this family usually is)', true],
  ['肉桂 · 蓋碗 · 110 毫升', true],
  ['That was 3 infusions.', false],
  ['一共 3 泡。喝完把葉底倒出來看看：葉片舒展就是泡開了。', false],
])('%j over a ladder: the name of a plan? %s', (first, isName) => {
  expect(isPlanName({ ladder: { title: '', rungs: [] }, paragraphs: [first] }, 0)).toBe(isName);
});

it('the name of a plan may stand below a remark', () => {
  const paragraphs = ['Iron takes much heat from the water.', 'Sencha · Iron pot · 300 ml', 'Leaf: 3 g.'];
  const names = paragraphs.filter((_, n) => isPlanName({ ladder: { title: '', rungs: [] }, paragraphs }, n));
  expect(names).toEqual(['Sencha · Iron pot · 300 ml']);
});

it.each([
  ['1. “The first cup”, Saturday', '1.', '“The first cup”, Saturday'],
  ['12. 「第一杯」，\n星期六', '12.', '「第一杯」，\n星期六'],
  ['1.5 g of leaf', null, null],
  ['Infusion 3. Fill.', null, null],
  ['3. ', null, null],
])('%j as one of a list', (text, count, rest) => {
  expect(itemOf(text)).toEqual(count === null ? null : { count, text: rest });
});
