/** Numbers with their units, in base units. Says what kind of quantity each is, not what it is of. */
import { findNumbers } from './numbers.ts';

export type Dimension =
  | 'volume' // millilitres
  | 'mass' // grams
  | 'ounce' // of water or of leaf: the neighbours tell
  | 'spoon' // level teaspoons
  | 'temperature' // °C
  | 'degree' // °C or °F: the size tells
  | 'length' // metres
  | 'other' // seconds, infusions, money: a unit that concerns nobody here
  | 'bare';

export interface Measure {
  readonly dimension: Dimension;
  readonly value: number;
  readonly start: number;
  readonly end: number;
  readonly digits: boolean;
}

interface Unit {
  readonly dimension: Dimension;
  readonly pattern: string;
  readonly factor: number;
}

/** US fluid ounce, recipe cup and avoirdupois ounce as design/units has them; 斤 and 兩 are stock only, so their local sizes don't matter. */
export const flOzMl = 29.5735;
export const ounceG = 28.3495;
export const cupMl = 240;

const units: readonly Unit[] = [
  {
    dimension: 'volume',
    factor: 1,
    pattern: 'ml|mls|milliliters?|millilitres?|mililiters?|mililitres?|mils?|cc|c\\.c\\.?|毫升|西西',
  },
  { dimension: 'volume', factor: 10, pattern: 'cls?|centiliters?|centilitres?|厘升' },
  { dimension: 'volume', factor: 100, pattern: 'dl|deciliters?|decilitres?' },
  { dimension: 'volume', factor: 1000, pattern: 'l|lt|ltrs?|liters?|litres?|litters?|公升|立升|升' },
  { dimension: 'volume', factor: flOzMl, pattern: '(?:us )?fl\\.? ?ozs?\\.?|(?:us )?fluid (?:ounces?|ozs?)|floz' },
  {
    dimension: 'volume',
    factor: cupMl,
    pattern:
      'cups?(?= (?:of water|teapot|tea pot|pot|french|press|cafetiere|glass|porcelain|clay|worth of water|size|capacity))',
  },
  { dimension: 'volume', factor: 473.176, pattern: 'pints?' },
  { dimension: 'volume', factor: 946.353, pattern: 'quarts?|qts?' },
  { dimension: 'ounce', factor: 1, pattern: 'ozs?\\.?|ounces?|onces?|安士|盎司|安司' },
  { dimension: 'mass', factor: 1, pattern: 'g|gs|gr|grs|gms?|grams?|grammes?|gramms?|garms?|grms?|克|公克' },
  { dimension: 'mass', factor: 1000, pattern: 'kgs?|kilos?|kilograms?|公斤|千克' },
  { dimension: 'mass', factor: 453.592, pattern: 'lbs?|pounds?|磅' },
  { dimension: 'mass', factor: 500, pattern: '斤' },
  { dimension: 'mass', factor: 37.5, pattern: '两' },
  { dimension: 'mass', factor: 3.75, pattern: '钱(?!包|买|卖|一|左右|以)' },
  {
    dimension: 'spoon',
    factor: 1,
    pattern:
      '(?:heap(?:ed|ing) |level |rounded |big |small )?(?:tsps?\\.?|teaspoons?|tea spoons?|teaspoonfuls?|spoons?|spoonfuls?)|茶匙|小匙|匙羹|茶匙羹|勺|匙|茶则',
  },
  { dimension: 'spoon', factor: 3, pattern: 'tbsps?\\.?|tablespoons?|table spoons?|汤匙|大匙' },
  {
    dimension: 'temperature',
    factor: 1,
    pattern: '(?:°|degrees?|deg|degs|度) ?c(?:elsius|entigrade)?|c|celsius|celcius|centigrade|摄氏度?',
  },
  { dimension: 'degree', factor: 1, pattern: '°|degrees?|degress?|degs?|grades?|度' },
  { dimension: 'length', factor: 1, pattern: 'm|metres?|meters?|mtrs?|masl|米|公尺' },
  { dimension: 'length', factor: 1000, pattern: 'km|kilomet(?:er|re)s?|公里|千米' },
  { dimension: 'length', factor: 0.3048, pattern: "ft|feet|foot|'|英尺|呎|尺" },
  {
    dimension: 'other',
    factor: 1,
    pattern:
      's|secs?|seconds?|mins?|minutes?|hours?|hrs?|h|days?|weeks?|months?|years?|yrs?|am|pm|times|x|infusions?|steeps?|steepings?|rounds?|brews?|cm|mm|inch(?:es)?|watts?|w|kw|mg|%|usd|dollars?|bucks|hkd|cakes?|bags?|tins?|packs?|kinds?|types?|teas|pots?|cups?|mugs?|pieces?|秒|分钟|分|小时|钟|日|天|年|岁|月|号|点|泡|次|道|冲|元|蚊|块|文|杯|壶|款|种|包|罐|饼|盒|件|毫克|cm|厘米|只|把|支|间',
  },
];

const fahrenheit = '(?:°|degrees?|deg|degs|度) ?f(?:ahrenheit|arenheit)?|f|fahrenheit|farenheit|farenheight|华氏度?';
const matchers = units.map((unit) => ({ ...unit, at: sticky(unit.pattern) }));
const fahrenheitAt = sticky(fahrenheit);

/** A Latin unit ends where letters end: "5 m" but not "5 mugs". */
function sticky(pattern: string): RegExp {
  return new RegExp(`[ -]?(?:${pattern})(?![a-z])`, 'y');
}

export function findMeasures(plain: string): Measure[] {
  return findNumbers(plain).map((number) => {
    const { start, digits } = number;
    const before = plain.slice(Math.max(0, start - 4), start);
    fahrenheitAt.lastIndex = number.end;
    const f = fahrenheitAt.exec(plain);
    const toldF = /华氏\s?$/.test(before) ? unitEnd(plain, number.end, 'degree') : null;
    if (f ?? toldF)
      return {
        dimension: 'temperature',
        value: celsius(number.value),
        start,
        end: f ? fahrenheitAt.lastIndex : (toldF ?? 0),
        digits,
      };
    if (/[$€£]\s?$/.test(before)) return { dimension: 'other', value: number.value, start, end: number.end, digits };
    for (const unit of matchers) {
      const end = endOf(unit.at, plain, number.end);
      if (end === null) continue;
      const half = plain.startsWith('半', end) && Number.isInteger(number.value) ? 0.5 : 0;
      const dimension = unit.dimension === 'degree' && /摄氏\s?$/.test(before) ? 'temperature' : unit.dimension;
      return { dimension, value: tidy((number.value + half) * unit.factor), start, end: end + (half ? 1 : 0), digits };
    }
    return { dimension: 'bare', value: number.value, start, end: number.end, digits };
  });
}

export function celsius(degreesF: number): number {
  return Math.round(((degreesF - 32) / 1.8) * 10) / 10;
}

/** Ends the noise of floating point; a hundredth is finer than anyone measures. */
function tidy(value: number): number {
  return Math.round(value * 100) / 100;
}

function endOf(at: RegExp, plain: string, from: number): number | null {
  at.lastIndex = from;
  return at.test(plain) ? at.lastIndex : null;
}

function unitEnd(plain: string, from: number, dimension: Dimension): number {
  const unit = matchers.find((m) => m.dimension === dimension);
  return (unit && endOf(unit.at, plain, from)) ?? from;
}
