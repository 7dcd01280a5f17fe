/** The numbers in a plain text that are written in Chinese numerals. Knows no units, but for a point that needs one. */
import type { FoundNumber } from './numbers.ts';

const hanDigits: { readonly [character: string]: number } = {
  零: 0,
  〇: 0,
  一: 1,
  二: 2,
  两: 2,
  三: 3,
  四: 4,
  五: 5,
  六: 6,
  七: 7,
  八: 8,
  九: 9,
  半: 0.5,
};
const hanScales: { readonly [character: string]: number } = { 十: 10, 百: 100, 千: 1000, 万: 10_000 };

/** 一點二升, but not 一點半 nor the hour: a unit must follow. */
const hanPoint =
  /(?<![零〇一二两三四五六七八九十百])[零〇一二两三四五六七八九]点[零〇一二三四五六七八九]{1,2}(?=\s?(?:公?升|立升|克|公克|g|l|斤|两|安士|盎司|茶?匙))/g;

/** Two or three people in one character: 俩人, 仨客人. */
const pairOf = /[俩仨](?=个?(?:人|客|朋友|同事|大人|孩|娃))/g;

/** 四分之三 */
const hanFraction = /([二三四五六八])分之([一二两三四五])/g;

export function hanNumbers(plain: string): FoundNumber[] {
  return [...parts(plain), ...pairs(plain), ...pointed(plain), ...countedInHan(plain)];
}

const inWords = ({ 0: text, index }: RegExpExecArray, value: number): FoundNumber => ({
  value,
  start: index,
  end: index + text.length,
  digits: false,
});

const parts = (plain: string): FoundNumber[] =>
  [...plain.matchAll(hanFraction)].map((m) => inWords(m, (hanValue(m[2] ?? '') ?? 0) / (hanValue(m[1] ?? '') ?? 1)));

const pairs = (plain: string): FoundNumber[] =>
  [...plain.matchAll(pairOf)].map((m) => inWords(m, m[0] === '俩' ? 2 : 3));

const pointed = (plain: string): FoundNumber[] =>
  [...plain.matchAll(hanPoint)].map((m) =>
    inWords(m, Number(m[0].replace(/./g, (c) => (c === '点' ? '.' : String(hanDigits[c] ?? 0))))),
  );

/** The six of 星期六 is no number; 一周一次 is no Monday. */
const weekdayOrNumerals = /(?:星期|礼拜|(?<![一二两三几])周)[一二三四五六]|[零〇一二两三四五六七八九十百千万半]+/g;

function countedInHan(plain: string): FoundNumber[] {
  return [...plain.matchAll(weekdayOrNumerals)].flatMap((m) => {
    if (/^[星礼周]/.test(m[0])) return [];
    // 三兩: the last 兩 is a weight.
    const text = m[0].length > 1 && m[0].endsWith('两') ? m[0].slice(0, -1) : m[0];
    const value = hanValue(text);
    return value === null ? [] : [{ value, start: m.index, end: m.index + text.length, digits: false }];
  });
}

function hanValue(text: string): number | null {
  if (text === '一半') return 0.5;
  const between = betweenTwo(text);
  if (between !== null) return between;
  const half = text.length > 1 && text.endsWith('半') ? 0.5 : 0;
  const body = half ? text.slice(0, -1) : text;
  if (!/[十百千万]/.test(body)) {
    const digits = body.split('').map((c) => hanDigits[c] ?? 0);
    return digits.some((d) => d === 0.5) && digits.length > 1
      ? null
      : digits.reduce((sum, d) => sum * 10 + d, 0) + half;
  }
  let sum = 0;
  let digit = 0;
  let lastScale = 0;
  for (const character of body) {
    const scale = hanScales[character];
    if (scale === undefined) {
      digit = hanDigits[character] ?? 0;
      if (digit === 0) lastScale = 10;
    } else {
      sum += (digit || (sum === 0 || scale === 10 ? 1 : 0)) * scale;
      [digit, lastScale] = [0, scale];
    }
  }
  // 一百二 is 120, 两千三 is 2300; 一百零二 is 102.
  return sum + (digit > 0 && lastScale >= 100 ? (digit * lastScale) / 10 : digit) + half;
}

/** 五六, 兩三百: one number or the next, read as the middle. */
function betweenTwo(text: string): number | null {
  const [, low = '', high = '', scale = ''] =
    /^([一二两三四五六七八])([二三四五六七八九])([十百千]?)$/.exec(text) ?? [];
  const [least, most] = [hanDigits[low] ?? 0, hanDigits[high] ?? 0];
  return least > 0 && most === least + 1 ? (least + 0.5) * (hanScales[scale] ?? 1) : null;
}
