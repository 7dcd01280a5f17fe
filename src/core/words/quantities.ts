/** Quantities as people of each language say them. Rounds for reading only: nothing here is computed with again. */
import type { Celsius, Grams, Language, Millilitres, Seconds } from '../units.ts';

const isChinese = (language: Language): boolean => language.startsWith('zh');

/** At most `places` decimals, without trailing zeros. */
export const plainNumber = (value: number, places = 0): string => String(Number(value.toFixed(places)));

/** Tenths below 20 g, where a scale for tea shows them. */
export const grams = (g: Grams, language: Language): string =>
  `${plainNumber(g, g < 20 ? 1 : 0)} ${isChinese(language) ? '克' : 'g'}`;

/** Whole degrees; `unit` "F" for who counts in Fahrenheit. */
export const degrees = (c: Celsius, unit: string): string =>
  unit === 'F' ? `${plainNumber((c * 9) / 5 + 32)} °F` : `${plainNumber(c)} °C`;

/** How far it may be off, counted as `degrees` counts. */
export const degreesApart = (c: Celsius, unit: string): string =>
  unit === 'F' ? `${plainNumber((c * 9) / 5)} °F` : `${plainNumber(c)} °C`;

/** Litres from one litre on. */
export function millilitres(ml: Millilitres, language: Language): string {
  if (Math.round(ml) < 1000) return `${plainNumber(ml)} ${isChinese(language) ? '毫升' : 'ml'}`;
  return `${plainNumber(ml / 1000, 2)} ${isChinese(language) ? '升' : 'l'}`;
}

interface TimeUnits {
  readonly hour: string;
  readonly minute: string;
  /** Minutes that stand alone: 4 分 is a mark at school. */
  readonly wholeMinutes: string;
  readonly second: string;
  readonly comma: string;
}

const timeUnits: { readonly [language in Language]: TimeUnits } = {
  en: { hour: 'h', minute: 'min', wholeMinutes: 'min', second: 's', comma: ', ' },
  'zh-Hant': { hour: '小時', minute: '分', wholeMinutes: '分鐘', second: '秒', comma: '、' },
  'zh-Hans': { hour: '小时', minute: '分', wholeMinutes: '分钟', second: '秒', comma: '、' },
};

/** Nobody counts seconds of a quarter of an hour, nor minutes of a night. */
function readableSeconds(seconds: Seconds): Seconds {
  if (seconds < 900) return Math.round(seconds);
  const step = seconds < 3600 ? 60 : seconds < 36_000 ? 300 : 3600;
  return Math.round(seconds / step) * step;
}

/** "6 s", "1 min 30 s", "2 分 30 秒", "8 h". */
export function duration(seconds: Seconds, language: Language): string {
  const whole = readableSeconds(Math.max(0, seconds));
  const { hour, minute, wholeMinutes, second } = timeUnits[language];
  if (whole > 0 && whole < 3600 && whole % 60 === 0) return `${whole / 60} ${wholeMinutes}`;
  const parts: readonly (readonly [number, string])[] = [
    [Math.floor(whole / 3600), hour],
    [Math.floor(whole / 60) % 60, minute],
    [whole % 60, second],
  ];
  const said = parts.filter(([n]) => n > 0).map(([n, unit]) => `${n} ${unit}`);
  return said.length > 0 ? said.join(' ') : `0 ${second}`;
}

/** Times in a row; those under a minute share one unit: "6, 5, 5, 8 s". */
export function durations(list: readonly Seconds[], language: Language): string {
  const { comma, second } = timeUnits[language];
  const shortOnes = list.findIndex((s) => Math.round(s) >= 60);
  const cut = shortOnes === -1 ? list.length : shortOnes;
  const short = list.slice(0, cut).map((s) => plainNumber(s));
  const long = list.slice(cut).map((s) => duration(s, language));
  const shortText = short.length > 0 ? [`${short.join(comma)} ${second}`] : [];
  return [...shortText, ...long].join(comma);
}

const halves = ['', '¼', '½', '¾'] as const;

/** Level teaspoons in quarters below one and halves above: "1½". */
export function spoons(count: number): string {
  const step = count < 1 ? 4 : 2;
  const quarters = Math.max(1, Math.round(count * step) * (4 / step));
  const whole = Math.floor(quarters / 4);
  return `${whole === 0 ? '' : whole}${halves[quarters % 4] ?? ''}`;
}

/** "a, b and c"; Chinese as 甲、乙和丙. */
export const listed = (items: readonly string[], language: Language): string =>
  new Intl.ListFormat(language === 'en' ? 'en-GB' : language, { type: 'conjunction' }).format(items);

/** "a, b or c". */
export const either = (items: readonly string[], language: Language): string =>
  new Intl.ListFormat(language === 'en' ? 'en-GB' : language, { type: 'disjunction' }).format(items);
