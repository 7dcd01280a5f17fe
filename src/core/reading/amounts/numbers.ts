/** Finds the numbers in a plain text: digits, fractions, English number words, Chinese numerals. Knows no units. */
import { hanNumbers } from './han-numbers.ts';

export interface FoundNumber {
  readonly value: number;
  readonly start: number;
  readonly end: number;
  /** Written with digits; a word such as "one" or 一 means less often a quantity. */
  readonly digits: boolean;
}

export function findNumbers(plain: string): FoundNumber[] {
  const numbers = [...digitNumbers(plain), ...englishNumbers(plain), ...hanNumbers(plain)].toSorted(
    (a, b) => a.start - b.start || b.end - a.end,
  );
  return joinRanges(plain, withoutOverlaps(numbers));
}

// The 60 of "v60" is no number. A minus counts only where a number may begin. 1,600 is one thousand six hundred; 2,5 is two and a half; .5 is a half.
const digitPattern =
  /(?<![\d.])(?<!(?<![a-z])[a-z])(?:(?<=^|[\s(:=,，:是])-)?(?:\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d{1,9}(?:[.,]\d{1,4})?|(?<=^|[\s(:=,，])\.\d{1,4})(?:\s?\/\s?[23458](?!\d))?k?(?![\d])/g;
/** 蓋碗120，5克: in Chinese a comma parts two numbers, unless whole thousands are behind it. */
const hanDigitPattern = new RegExp(
  digitPattern.source.replace('\\d{1,3}(?:,\\d{3})+', '\\d{1,2}(?:,000)+').replace('(?:[.,]', '(?:[.]'),
  'g',
);
const isHan = /\p{Script=Han}/u;
const mixedPattern = /(\d{1,3})\s+([1-7])\s?\/\s?([23458])(?!\d)/g;

/** "3/4 of a litre" is no litre. */
const ofAUnit = /^ of an?(?= (?:lit(?:re|er)|pint|quart|gallon|cup|mug|teaspoon|tablespoon|tsp|tbsp|spoon)\b)/;

function digitNumbers(plain: string): FoundNumber[] {
  const found: FoundNumber[] = [];
  for (const m of plain.matchAll(mixedPattern)) {
    found.push(numberAt(m, Number(m[1]) + Number(m[2]) / Number(m[3])));
  }
  for (const m of plain.matchAll(isHan.test(plain) ? hanDigitPattern : digitPattern)) {
    const followed = plain.charAt(m.index + m[0].length);
    const thousand = m[0].endsWith('k') && !/[a-z]/.test(followed);
    const text = m[0].endsWith('k') ? m[0].slice(0, -1) : m[0];
    const [top = '', bottom] = text.split('/');
    const value = (decimal(top.trim()) / (bottom ? Number(bottom) : 1)) * (thousand ? 1000 : 1);
    const end = m.index + (m[0].endsWith('k') && !thousand ? text.length : m[0].length);
    const ofOne = ofAUnit.exec(plain.slice(end, end + 24))?.[0] ?? '';
    found.push({ value, start: m.index, end: end + ofOne.length, digits: true });
  }
  return found;
}

function decimal(text: string): number {
  return Number(/,\d{3}(?!\d)/.test(text) ? text.replaceAll(',', '') : text.replace(',', '.'));
}

function numberAt(m: RegExpMatchArray & { index: number }, value: number): FoundNumber {
  return { value, start: m.index, end: m.index + m[0].length, digits: true };
}

const small: { readonly [word: string]: number } = {
  zero: 0,
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
/** What a number is said with. */
export const numberWords: readonly string[] = [
  ...Object.keys(small),
  'hundred',
  'thousand',
  'half',
  'quarter',
  'couple',
  'dozen',
];
const words = Object.keys(small).join('|');
const digitWords = Object.keys(small).slice(0, 10).join('|');
const englishPattern = new RegExp(
  `\\b(?:(?:a|one)[ -])?(?:couple(?: of)?|pair of|dozen|half(?: of)?(?: an?| one)?|quarter(?: of)?(?: an?)?|three[ -]quarters(?: of)?(?: an?)?|(?:an?|one|two) thirds? of(?: an?| the)?)\\b|\\b(?:(?:${words}|hundred|thousand)(?:[ -](?:and )?)?|a (?=hundred|thousand))+(?:and a half\\b)?(?![a-z])`,
  'g',
);

/** "one point two", "point five" */
const pointPattern = new RegExp(
  `\\b(?:(${words}) )?point ((?:${digitWords}|ten|fifteen|twenty|thirty|forty|fifty)(?: (?:${digitWords}))?)(?: of an?)?\\b`,
  'g',
);

/** "a litre and a half", "pint and a half" */
const oneAndHalf =
  /(?:\b(?:a|one) |(?<![a-z\d] ?))(?=(?:lit(?:re|er)|pint|quart|(?:tea ?|coffee )?cup|spoon|teaspoon)s? and a half\b)/g;
/** "a litre", "for a minute": one; "half a litre" is no such, and nobody counts "a minute ago". */
const oneOf =
  /(?<!\bhalf |quarter |quarters )\ba (?=(?:lit(?:re|er)|pint|quart|(?:level |heaped )?(?:tea|table)?spoon|tsp|tbsp)\b(?! and a half))|(?<=\b(?:for|after|about|around|nearly|almost|over) )a (?=min(?:ute)?\b(?! (?:ago|please|or|and a half)))/g;

/** "pint glass", "litre flask": it holds one, and nothing counts them. */
const oneHeld =
  /(?<![\d.][ -]?)(?<!\b(?:half|quarter|quarters|an?|of|couple|one|two|three|four|five|six|eight|ten)[ -])\b(?=(?:pint|quart|lit(?:re|er))[ -](?:glass|mug|jug|jar|pot|teapot|bottle|flask|thermos|cup|tankard)\b)/g;

function englishNumbers(plain: string): FoundNumber[] {
  const held = [...plain.matchAll(oneHeld)].map((m) => ({ value: 1, start: m.index, end: m.index, digits: false }));
  const ones = [...plain.matchAll(oneOf)].map((m) => ({ value: 1, start: m.index, end: m.index + 1, digits: false }));
  const halves = [...plain.matchAll(oneAndHalf)].map((m) => ({
    value: 1.5,
    start: m.index,
    end: m.index + Math.max(0, m[0].length - 1),
    digits: false,
  }));
  return [...held, ...ones, ...halves, ...pointedInEnglish(plain), ...countedInEnglish(plain)];
}

function pointedInEnglish(plain: string): FoundNumber[] {
  if (!plain.includes(' point ') && !plain.startsWith('point ')) return [];
  return [...plain.matchAll(pointPattern)].map((m) => {
    const tenths = (m[2] ?? '')
      .trim()
      .split(' ')
      .map((word) => small[word] ?? 0);
    const value = Number(`${englishValue(m[1] ?? 'zero') ?? 0}.${tenths.join('')}`);
    return { value, start: m.index, end: m.index + m[0].length, digits: false };
  });
}

function countedInEnglish(plain: string): FoundNumber[] {
  return [...plain.matchAll(englishPattern)].flatMap((m) => {
    const text = m[0].replace(/(?:[ -]and|[ -])+\s*$/, '');
    const value = englishValue(text);
    return value === null ? [] : [{ value, start: m.index, end: m.index + text.length, digits: false }];
  });
}

function englishValue(text: string): number | null {
  if (/couple|pair of/.test(text)) return 2;
  if (text.includes('dozen')) return 12;
  if (text.includes('third')) return (text.startsWith('two') ? 2 : 1) / 3;
  if (text.includes('three quarter') || text.includes('three-quarter')) return 0.75;
  if (/^(?:(?:a|one)[ -])?quarter/.test(text)) return 0.25;
  if (/^(?:(?:a|one)[ -])?half/.test(text)) return 0.5;
  let sum = 0;
  let current = 0;
  for (const word of text.split(/[ -]/)) {
    if (word === 'hundred') current = (current || 1) * 100;
    else if (word === 'thousand') [sum, current] = [sum + (current || 1) * 1000, 0];
    else current = joinSmall(current, small[word] ?? 0);
  }
  return sum + current + (text.includes('and a half') ? 0.5 : 0);
}

/** "one fifty" is 150, "three fifty" 350; "twenty five" 25. */
function joinSmall(current: number, next: number): number {
  return current > 0 && current < 10 && next >= 10 ? current * 100 + next : current + next;
}

function withoutOverlaps(numbers: readonly FoundNumber[]): FoundNumber[] {
  const kept: FoundNumber[] = [];
  for (const number of numbers) if (number.start >= (kept.at(-1)?.end ?? 0)) kept.push(number);
  return kept;
}

/** "80 or 100" are two choices; "two or three" is somewhere between. */
const largestEither = 12;

/** "5-6 g", "5 to 6", "五至六": one number, the middle. */
function joinRanges(plain: string, numbers: readonly FoundNumber[]): FoundNumber[] {
  const joined: FoundNumber[] = [];
  for (const number of numbers) {
    const last = joined.at(-1);
    const between = last ? plain.slice(last.end, number.start) : '';
    const range =
      last &&
      last.value < number.value &&
      number.value <= last.value * 3 &&
      (/^\s?(?:-|~|to|至|到)\s?$/.test(between) ||
        (/^\s?(?:and|和|跟)\s?$/.test(between) && /\bbetween $|介于$/.test(plain.slice(0, last.start))) ||
        (number.value <= largestEither && /^\s?(?:or|或|或者|、)\s?$/.test(between)));
    if (range) joined[joined.length - 1] = { ...last, value: (last.value + number.value) / 2, end: number.end };
    else joined.push(number);
  }
  return joined;
}
