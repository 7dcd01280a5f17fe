/** Feasts by which people tell a day: Christmas, 春節. Those whose day is another in each country are not among them. */
import { addDays, type WallDate } from '../calendar.ts';

type InYear = (year: number) => WallDate | undefined;
type Feast = readonly [en: string, han: string, day: InYear];

const each =
  (monthDay: string): InYear =>
  (year) =>
    `${year}-${monthDay}`;

/** The longer of two that begin alike stands first. */
const feasts: readonly Feast[] = [
  ['christmas eve|xmas eve', '平安夜|聖誕前夕|圣诞前夕', each('12-24')],
  ['christmas|xmas', '聖誕|圣诞', each('12-25')],
  ['boxing day', '節禮日|节礼日', each('12-26')],
  ["(?:chinese|lunar) new year'?s? eve", '除夕|大年夜|年三十|年卅', lunarNewYear(-1)],
  [
    '(?:chinese|lunar) new year|spring festival',
    '(?:農曆|农历|舊曆|旧历|陰曆|阴历)新?年|春[節节]|過年|过年|大年初一|年初一|新春',
    lunarNewYear(0),
  ],
  ['lantern festival', '元宵', lunarNewYear(14)],
  ['dragon boat(?: festival)?', '端午', lunar('5/5')],
  ['mid-?autumn(?: festival)?|moon festival', '中秋', lunar('8/15')],
  ["new year'?s eve", '跨年夜?', each('12-31')],
  ["new year(?:'?s(?: day)?)?", '元旦|新年', each('01-01')],
  ['easter(?: sunday)?', '復活|复活', easter],
  ["valentine'?s?(?: day)?", '情人', each('02-14')],
  ['halloween', '萬聖|万圣', each('10-31')],
];

/** To be put into a pattern, with the group `feast`. */
export const feastName = `(?<feast>${feasts.map(([en]) => en).join('|')})(?: day\\b| holidays?\\b| break\\b)?`;
export const hanFeastName = `(?<feast>${feasts.map(([, han]) => han).join('|')})(?:[節节]|假期)?`;

/** The first such day on or after `from`. */
export function feastDay(words: string, from: WallDate): WallDate | undefined {
  const found = feasts.find(([en, han]) => new RegExp(`^(?:${en}|${han})$`, 'iu').test(words));
  const year = Number(from.slice(0, 4));
  return [year, year + 1].map((one) => found?.[2](one)).find((date) => date !== undefined && date >= from);
}

/** Western Easter in the Gregorian calendar: Butcher's rule, as J. Meeus gives it (Astronomical Algorithms, ch. 8); from memory. */
function easter(year: number): WallDate {
  const golden = year % 19;
  const [century, inCentury] = [Math.floor(year / 100), year % 100];
  const correction = Math.floor((8 * century + 13) / 25);
  const epact = (19 * golden + century - Math.floor(century / 4) - correction + 15) % 30;
  const toSunday = (32 + 2 * (century % 4) + 2 * Math.floor(inCentury / 4) - epact - (inCentury % 4)) % 7;
  const late = Math.floor((golden + 11 * epact + 22 * toSunday) / 451);
  const days = epact + toSunday - 7 * late + 114;
  return `${year}-${String(Math.floor(days / 31)).padStart(2, '0')}-${String((days % 31) + 1).padStart(2, '0')}`;
}

/**
 * The first day of the Chinese year, 2024 to 2035: topmarks.co.uk/ChineseNewYear/WhenIsChineseNewYear.aspx, and to 2030
 * factmonster.com/id/A0192339. The platform has 2027 and 2030 wrong by a day: there the moon is new near midnight.
 */
const lunarNewYears =
  '2024-02-10 2025-01-29 2026-02-17 2027-02-06 2028-01-26 2029-02-13 2030-02-03 2031-01-23 2032-02-11 2033-01-31 2034-02-19 2035-02-08'.split(
    ' ',
  );

function lunarNewYear(shift: number): InYear {
  return (year) => {
    const date = lunarNewYears.find((one) => one.startsWith(`${year}-`)) ?? lunar('1/1')(year);
    return date === undefined ? undefined : addDays(date, shift);
  };
}

/** A day of the Chinese calendar, as the platform's tables (CLDR) have it. */
function lunar(monthDay: string): InYear {
  return (year) => {
    const days = Array.from({ length: 365 }, (_, n) => addDays(`${year}-01-01`, n));
    // What is before its first day belongs to the year before.
    const opening = days.findIndex((date) => lunarDay(date) === '1/1');
    return days.slice(Math.max(0, opening)).find((one) => lunarDay(one) === monthDay);
  };
}

const lunarParts = new Intl.DateTimeFormat('en-u-ca-chinese', { month: 'numeric', day: 'numeric', timeZone: 'UTC' });

/** "1/1"; a leap month is none of these. */
function lunarDay(date: WallDate): string {
  const parts = lunarParts.formatToParts(new Date(`${date}T12:00:00Z`));
  return ['month', 'day'].map((name) => parts.find(({ type }) => type === name)?.value ?? '').join('/');
}
