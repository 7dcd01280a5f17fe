/** Numbers with their units, in base units. Says what kind of quantity each is, not what it is of. */
import type { FoundNumber } from './numbers.ts';

export type Dimension =
  | 'volume' // millilitres
  | 'mass' // grams
  | 'ounce' // of water or of leaf: the neighbours tell
  | 'spoon' // level teaspoons
  | 'temperature' // °C
  | 'degree' // °C or °F: the size tells
  | 'length' // metres
  | 'time' // seconds
  | 'other' // infusions, money: a unit that concerns nobody here
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
  /** Where the mainland's unit of that name is another. */
  readonly mainland?: number;
}

/**
 * US fluid ounce and avoirdupois ounce by their definitions, the cup that recipes mean (240 ml, from memory). A 斤 of water is
 * the mainland's 500 g: nobody in Taiwan measures water in 斤, and who means theirs says 台斤, 600 g. Of leaf it is stock and no
 * dose. A 斤, a 兩 and a 錢 of leaf are the mainland's, 500, 50 and 5 g, where simplified characters are written. A pot is told by
 * the 兩 of water in it (common practice, no source).
 */
export const flOzMl = 29.5735;
export const ounceG = 28.3495;
export const cupMl = 240;
/** By which French presses are sold: of three cups, of eight. Common practice, no source. */
const pressCupMl = 120;
/** A heaped spoon in level ones. Common practice, no source. */
const heapedSpoon = 1.7;
/** A mug as most are. Common practice, no source. */
export const mugMl = 300;

const units: readonly Unit[] = [
  {
    dimension: 'volume',
    factor: 1,
    pattern: 'ml|mls|milliliters?|millilitres?|mililiters?|mililitres?|mils?|cc|c\\.c\\.?|毫升|西西',
  },
  { dimension: 'volume', factor: 10, pattern: 'cls?|centiliters?|centilitres?|厘升' },
  { dimension: 'volume', factor: 100, pattern: 'dl|deciliters?|decilitres?' },
  { dimension: 'volume', factor: 1000, pattern: 'l|lt|ltrs?|liters?|litres?|litters?|litrs?|lites?|公升|立升|升' },
  { dimension: 'volume', factor: flOzMl, pattern: '(?:us )?fl\\.? ?ozs?\\.?|(?:us )?fluid (?:ounces?|ozs?)|floz' },
  {
    dimension: 'volume',
    factor: pressCupMl,
    pattern:
      'cups?(?= (?:bodum |glass |small |big )?(?:french press|cafeti[eè]re|press)| ?(?:one|size|version)\\)?(?<=(?:french press|cafeti[eè]re)\\b.{0,24}))',
  },
  {
    dimension: 'volume',
    factor: cupMl,
    pattern:
      'cups?(?= (?:worth|of water|teapot|tea pot|pot|french|press|cafetiere|glass|porcelain|clay|worth of water|size|capacity))',
  },
  // "What size it is I don't know, maybe 3 mugs"
  {
    dimension: 'volume',
    factor: mugMl,
    pattern:
      '(?:full |big |normal |coffee )?mugs?(?! of)(?<=\\b(?:size|big|holds?|fits?|takes?|capacity|makes?|fills?|does)\\b.{0,30}\\b(?:\\d{1,2}|two|three|four|five|six) ?(?:full |big |normal |coffee )?mugs?)',
  },
  // The kingdom's own, where that is said.
  {
    dimension: 'volume',
    factor: 568.261,
    pattern: '(?:uk|imperial|british|english) pints?|pints? ?(?:,|\\()? ?(?:uk|imperial|british)\\b\\)?',
  },
  { dimension: 'volume', factor: 473.176, pattern: '(?:us |american )?pints?' },
  { dimension: 'volume', factor: 3785.41, pattern: 'gallons?|gals?' },
  { dimension: 'volume', factor: 946.353, pattern: 'quarts?|qts?' },
  // "holds four cups", 三杯水: the kitchen's cup too. Eight cups drunk are none to brew.
  {
    dimension: 'volume',
    factor: cupMl,
    pattern:
      "(?<=\\b(?:holds?|takes?|fits?|does|makes?|(?:(?:tea)?pot|press|jug|flask|thermos|gaiwan)(?: is| for)?|(?:it|that|which) is|it's|capacity(?: of| is)?),? (?:i (?:think|guess|reckon),? )?(?:about |around |roughly |maybe |up to |like |just |only |probably |perhaps |more than |over |nearly |almost |a good )*(?:\\d{1,2}(?:[.,]\\d)?|an?|one|two|three|four|five|six|eight|ten|half a)(?: and a half)? ?)(?:(?:tea|coffee) ?)?cups?(?! (?:a|per|each|every|in a) | daily)",
  },
  {
    dimension: 'volume',
    factor: cupMl,
    pattern: '(?<!(?:喝|饮)[了咗过足够]?[一二两三四五六七八九十\\d]{1,3})杯(?=(?:的|热|滚|开|清|冷|凉|冻)?水)',
  },
  { dimension: 'volume', factor: 1000, pattern: '(?:公斤|千克)(?=(?:的|热|滚|开|清)?水)' },
  { dimension: 'volume', factor: 600, pattern: '台斤(?=(?:的|热|滚|开|清)?水)' },
  { dimension: 'volume', factor: 500, pattern: '斤(?=(?:的|热|滚|开|清)?水)' },
  { dimension: 'volume', factor: 50, pattern: '两(?=(?:的|热|滚|开|清)?水|的?(?:小|紫砂|朱泥|紫泥|陶)?壶)' },
  { dimension: 'ounce', factor: 1, pattern: 'ozs?\\.?|ounces?|onces?|安士|盎司|安司' },
  { dimension: 'mass', factor: 1, pattern: 'g|gs|gr|grs|gms?|grams?|grammes?|gramms?|garms?|grms?|克|公克' },
  { dimension: 'mass', factor: 1000, pattern: 'kgs?|kilos?|kilograms?|公斤|千克' },
  { dimension: 'mass', factor: 453.592, pattern: 'lbs?|pounds?|磅' },
  { dimension: 'mass', factor: 600, pattern: '台斤' },
  { dimension: 'mass', factor: 600, mainland: 500, pattern: '斤' },
  { dimension: 'mass', factor: 37.5, mainland: 50, pattern: '两(?![个位人口名杯泡次])' },
  { dimension: 'mass', factor: 3.75, mainland: 5, pattern: '钱(?!包|买|卖|一|左右|以)' },
  {
    dimension: 'spoon',
    factor: heapedSpoon,
    pattern:
      '(?:heap(?:ed|ing)|rounded|big) (?:tsps?\\.?|teaspoons?|tea spoons?|spoons?|spoonfuls?)|尖(?:茶匙|匙|勺|茶勺)',
  },
  {
    dimension: 'spoon',
    factor: 1,
    pattern:
      '(?:level |small )?(?:tsps?\\.?|teaspoons?|tea spoons?|teaspoonfuls?|spoons?|spoonfuls?)|平?(?:茶匙|小匙|匙羹|茶匙羹|茶勺|勺|匙|茶则)',
  },
  { dimension: 'spoon', factor: 3 * heapedSpoon, pattern: 'heap(?:ed|ing) (?:tbsps?\\.?|tablespoons?|table spoons?)' },
  { dimension: 'spoon', factor: 3, pattern: '(?:level )?(?:tbsps?\\.?|tablespoons?|table spoons?)|平?(?:汤匙|大匙)' },
  {
    dimension: 'temperature',
    factor: 1,
    pattern: '(?:°|degrees?|deg|degs|度) ?c(?:elsius|entigrade)?|c|celsius|celcius|centigrade|摄氏度?',
  },
  { dimension: 'degree', factor: 1, pattern: '°|degrees?|degress?|degs?|grades?|度' },
  { dimension: 'length', factor: 1, pattern: 'm|metres?|meters?|mtrs?|masl|米|公尺' },
  { dimension: 'length', factor: 1000, pattern: 'km|kilomet(?:er|re)s?|公里|千米' },
  { dimension: 'length', factor: 0.3048, pattern: "ft|feet|foot|'|英尺|呎|尺" },
  { dimension: 'time', factor: 1, pattern: 's|secs?|seconds?|秒钟?' },
  { dimension: 'time', factor: 60, pattern: 'mins?|minutes?|分钟|分' },
  { dimension: 'time', factor: 3600, pattern: 'hours?|hrs?|h|(?:个)?(?:小时|钟头)' },
  {
    dimension: 'other',
    factor: 1,
    pattern:
      'days?|weeks?|months?|years?|yrs?|am|pm|times|x|infusions?|steeps?|steepings?|rounds?|brews?|cm|mm|inch(?:es)?|watts?|w|kw|mg|%|usd|dollars?|bucks|hkd|cakes?|bags?|tins?|packs?|kinds?|types?|teas|pots?|cups?|mugs?|pieces?|settings?|levels?|floors?|stor(?:ies|eys)|pages?|buttons?|quid|yuan|钟|日|天|年|岁|月|号|点|泡|次|道|冲|元|蚊|块|文|杯|壶|款|种|包|罐|饼|盒|件|毫克|cm|厘米|只(?![装倒泡注盛能有放喝用要])|把|支|间|楼|层|页|档|路|美元|美金|欧元',
  },
];

/** What a measure is said with. */
export const unitWords: readonly string[] = [
  ...new Set(
    units.flatMap(({ pattern }) => {
      const said = pattern.replace(/\(\?<?[=!].*/g, '');
      return [said.replace(/\?/g, ''), said.replace(/[a-z]\?/g, '')].flatMap((one) => one.match(/[a-z]{3,}/g) ?? []);
    }),
  ),
];

const fahrenheit = '(?:°|degrees?|deg|degs|度) ?f(?:ahrenheit|arenheit)?|f|fahrenheit|farenheit|farenheight|华氏度?';
/** All units at once, each a group of its own: the first of the table that fits. */
const unitAt = sticky(units.map(({ pattern }) => `(${pattern})`).join('|'));
const degreeAt = sticky(units.find(({ dimension }) => dimension === 'degree')?.pattern ?? '');
const fahrenheitAt = sticky(fahrenheit);

/** A Latin unit ends where letters end: "5 m" but not "5 mugs"; 5克DHP. 90来度 is about so much. */
function sticky(pattern: string): RegExp {
  return new RegExp(`[ -]?[来多]?(?:${pattern})(?!(?<=[a-z.])[a-z])`, 'y');
}

/** `mainland`: simplified characters are written. */
export function findMeasures(plain: string, numbers: readonly FoundNumber[], mainland: boolean): Measure[] {
  return numbers.map((number) => {
    const { start, digits } = number;
    const before = plain.slice(Math.max(0, start - 4), start);
    const toldF = /华氏\s?$/.test(before) ? (endOf(degreeAt, plain, number.end) ?? number.end) : null;
    const endF = endOf(fahrenheitAt, plain, number.end) ?? toldF;
    if (endF !== null) return { dimension: 'temperature', value: celsius(number.value), start, end: endF, digits };
    if (/[$€£]\s?$/.test(before)) return { dimension: 'other', value: number.value, start, end: number.end, digits };
    const unit = unitAfter(plain, number.end);
    if (!unit && isLabel(plain, number))
      return { dimension: 'other', value: number.value, start, end: number.end, digits };
    if (!unit || isNamed(plain, number, unit.end))
      return { dimension: 'bare', value: number.value, start, end: number.end, digits };
    const half = plain.startsWith('半', unit.end) && Number.isInteger(number.value) ? 0.5 : 0;
    const dimension = unit.dimension === 'degree' && /摄氏\s?$/.test(before) ? 'temperature' : unit.dimension;
    const factor = mainland ? (unit.mainland ?? unit.factor) : unit.factor;
    const value = tidy((number.value + half) * factor);
    return { dimension, value, start, end: unit.end + (half ? 1 : 0), digits };
  });
}

/** "Setting 4", "paid 250", "in 2019", 花了250: a number that measures nothing here. */
function isLabel(plain: string, { value, start }: FoundNumber): boolean {
  const ahead = plain.slice(Math.max(0, start - 16), start);
  const isYear = Number.isInteger(value) && value >= 1900 && value <= 2100;
  return labelled.test(ahead) || (isYear && /\b(?:in|from|since|of|year)\s$/.test(ahead));
}

const labelled =
  /\b(?:setting|level|floor|flat|apartment|apt|room|route|bus|model|page|step|option|paid|paying|costs?|cost me)[ #:]{1,2}$|[花付][了咗]$|第$/;

/** So many of one vessel are none: "350 mug" is a mug of 350. */
const leastSize = 30;
const isNamed = (plain: string, { value, end }: FoundNumber, unitEnd: number): boolean =>
  value >= leastSize && /^[ -]?(?:pot|cup|mug|times|壶|杯)$/.test(plain.slice(end, unitEnd));

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

function unitAfter(plain: string, from: number): (Unit & { readonly end: number }) | null {
  unitAt.lastIndex = from;
  const found = unitAt.exec(plain);
  const unit = found && units.find((_, i) => found[i + 1] !== undefined);
  return unit ? { ...unit, end: unitAt.lastIndex } : null;
}
