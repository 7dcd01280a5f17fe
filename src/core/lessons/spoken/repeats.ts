/** How often a lesson comes again, as a sentence says it: "the first Saturday of each month", 隔週一次. How long it goes on is repeat-end.ts's. */
import { addDays, isWallDate, weekdayOf, type WallDate } from '../calendar.ts';
import type { Recurrence } from '../recurrence.ts';
import { cut, type Cut } from './cut.ts';
import { number, readNumber } from './numeral.ts';
import { fullWeekdays, hanWeekdays, weekdayIn } from './weekdays.ts';

export type Rule = Pick<Recurrence, 'every' | 'step' | 'keep'>;

/** Where in the month, when the sentence tells that instead of a date: the second Thursday, the last Sunday (-1), the 15th. */
export type InMonth = { readonly weekday: number; readonly nth: number } | { readonly day: number };

export interface Repeats {
  readonly rule?: Rule;
  readonly inMonth?: InMonth;
  readonly rest: string;
}

const nth = '(?<nth>first|second|third|fourth|last|1st|2nd|3rd|4th)';
const hanNth = '(?:第?(?<nth>[一二三四]|[1-4])|(?<nth2>首|最後|最后|尾))一?(?:個|个)?';
const weekday = `(?<weekday>${fullWeekdays})s?`;
const hanWeek = '(?:星期|禮拜|礼拜|週|周)';
const hanWeekday = `${hanWeek}(?<weekday>[${hanWeekdays}天])`;
const ofMonth = '(?:of|in|every|each)(?: (?:the|a|every|each))? month|monthly';
const hanMonth = '逢?每(?:個|个)?月(?:的|嘅|逢)?';
const again =
  '(?:(?:please )?(?:and )?(?:repeat(?:s|ed|ing)?|recurring|do|hold|give|have|run)(?: (?:it|this|that|them))?(?: again)? (?:on )?)?';
const hanAgain =
  '(?:重[複复覆](?:一次|舉行|举行)?|舉行一次|举行一次|辦一次|办一次|開一次|开一次|上一次|一次|一堂|一節|一节)?';

/** A weekday of the month. "Every first Saturday" needs no month; "every second Saturday" without one is every other. */
const weekdaysOfMonth = [
  new RegExp(`\\b${again}(?:on )?(?:(?:the|every|each) )*${nth} ${weekday}(?: (?:${ofMonth}))\\b`, 'iu'),
  new RegExp(`\\b${again}(?:every|each) month,? (?:on )?(?:the )?${nth} ${weekday}\\b`, 'iu'),
  new RegExp(`\\b${again}(?:every|each) (?<nth>first|third|fourth|last|1st|3rd|4th) ${weekday}\\b`, 'iu'),
  new RegExp(`${hanMonth}${hanNth}${hanWeekday}${hanAgain}`, 'u'),
];

const daysOfMonth = [
  new RegExp(`\\b${again}(?:on )?the (?<day>\\d{1,2})(?:st|nd|rd|th)? (?:${ofMonth})\\b`, 'iu'),
  new RegExp(`\\b${again}(?:every|each) month,? on the (?<day>\\d{1,2})(?:st|nd|rd|th)?\\b`, 'iu'),
  new RegExp(`${hanMonth}(?<day>\\d{1,2}|[一二三四五六七八九十]{1,3})(?:日|號|号)${hanAgain}`, 'u'),
];

const few = '(?<n>two|three|four|five|six|2|3|4|5|6)';
const hanFew = '(?<n>[兩两二三四五六]|[2-6])';
/** The weekday that stands behind is left for the day. */
const beforeWeekday = `(?=(?:${fullWeekdays})s?\\b)`;
const beforeHanWeekday = `(?=(?:個|个)?${hanWeek}[${hanWeekdays}天](?![次堂節节]))`;
/** 每週一次 names no Monday. */
const noWeekday = `(?![${hanWeekdays}天](?![次堂節节]))`;
const every: readonly (readonly [RegExp, Recurrence['every'], number?])[] = [
  [new RegExp(`\\b${again}(?:every other|every second|alternate) ${beforeWeekday}`, 'iu'), 'week', 2],
  [
    new RegExp(
      `\\b${again}(?:every|each|on) (?=(?:${fullWeekdays})s\\b)|\\b${again}(?:every|each) ${beforeWeekday}`,
      'iu',
    ),
    'week',
    1,
  ],
  [new RegExp(`\\b${again}(?:every|each) ${few} weeks\\b`, 'iu'), 'week'],
  [
    new RegExp(
      `\\b${again}(?:every (?:other|second) week|fortnightly|bi-?weekly|(?:once )?(?:every|each|a) fortnight|alternate weeks)\\b`,
      'iu',
    ),
    'week',
    2,
  ],
  [new RegExp(`\\b${again}(?:(?:once )?(?:every|each|a) week|weekly)\\b`, 'iu'), 'week', 1],
  [new RegExp(`\\b${again}(?:every|each) ${few} months\\b`, 'iu'), 'month'],
  [new RegExp(`\\b${again}(?:every (?:other|second) month|bi-?monthly)\\b`, 'iu'), 'month', 2],
  [new RegExp(`\\b${again}(?:every quarter|quarterly)\\b`, 'iu'), 'month', 3],
  [new RegExp(`\\b${again}(?:(?:once )?(?:every|each|a) month|monthly)\\b(?: on an?\\b)?`, 'iu'), 'month', 1],
  [/\brepeat(?:s|ed)?(?: (?:it|this|that))? (?:every day|daily)\b/iu, 'day', 1],
  [/(?<=\b(?:mon|tues|wednes|thurs|fri|satur|sun)day)s\b/iu, 'week', 1],
  [new RegExp(`(?:連續|连续|一連|一连|連著|连着)(?=${number}(?:個|个)?${hanWeek}[${hanWeekdays}天])`, 'u'), 'week', 1],
  [new RegExp(`(?:每?隔一?|每兩|每两|每二)(?:個|个)?${hanWeek}(?:的|嘅)?${beforeHanWeekday}`, 'u'), 'week', 2],
  [new RegExp(`每?隔(?:一(?:個|个))?${beforeHanWeekday}`, 'u'), 'week', 2],
  [new RegExp(`[每逢]逢?${beforeHanWeekday}`, 'u'), 'week', 1],
  [new RegExp(`(?:每?隔一?(?:個|个)?${hanWeek}|雙[週周]|双周)${noWeekday}${hanAgain}`, 'u'), 'week', 2],
  [new RegExp(`每${hanFew}(?:個|个)?${hanWeek}${noWeekday}${hanAgain}`, 'u'), 'week'],
  [new RegExp(`${hanFew}(?:個|个)?${hanWeek}(?:重[複复覆])?一次`, 'u'), 'week'],
  [new RegExp(`(?:每一?(?:個|个)?${hanWeek}|一(?:個|个)?${hanWeek}(?=一次))${noWeekday}${hanAgain}`, 'u'), 'week', 1],
  [new RegExp(`每${hanFew}(?:個|个)月${hanAgain}`, 'u'), 'month'],
  [new RegExp(`每?隔一?(?:個|个)?月${hanAgain}`, 'u'), 'month', 2],
  [new RegExp(`(?:每季|每一季)${hanAgain}`, 'u'), 'month', 3],
  [new RegExp(`(?:每一?(?:個|个)?月|按月|一(?:個|个)月(?=一次))${hanAgain}`, 'u'), 'month', 1],
  [/(?:每天|每日)重[複复覆]|重[複复覆]每[天日]/u, 'day', 1],
];

export function readRepeats(text: string): Repeats {
  const ofWeekday = firstCut(text, weekdaysOfMonth);
  if (ofWeekday) {
    const { groups, rest } = ofWeekday;
    const inMonth = { weekday: weekdayIn(groups['weekday'] ?? ''), nth: nthIn(groups['nth'] ?? groups['nth2'] ?? '') };
    const keep = inMonth.nth === -1 ? 'last' : 'weekday';
    return { rule: { every: 'month', step: 1, keep }, inMonth, rest };
  }
  const ofDay = firstCut(text, daysOfMonth);
  const day = readNumber(ofDay?.groups['day'] ?? '') ?? 0;
  if (ofDay && day >= 1 && day <= 31)
    return { rule: { every: 'month', step: 1, keep: 'date' }, inMonth: { day }, rest: ofDay.rest };
  return readEvery(text);
}

function readEvery(text: string): Repeats {
  for (const [pattern, unit, step] of every) {
    const found = cut(text, pattern);
    const n = step ?? readNumber(found?.groups['n'] ?? '');
    if (found && n !== undefined) return { rule: { every: unit, step: n }, rest: found.rest };
  }
  return { rest: text };
}

const firstCut = (text: string, patterns: readonly RegExp[]): Cut | undefined =>
  patterns.map((pattern) => cut(text, pattern)).find((one) => one !== undefined);

function nthIn(words: string): number {
  const word = words.toLowerCase();
  if (/^(?:last|最[後后]|尾)/u.test(word)) return -1;
  const index = ['first', 'second', 'third', 'fourth'].indexOf(word);
  return index >= 0 ? index + 1 : word === '首' ? 1 : (readNumber(word.replace(/(?:st|nd|rd|th)$/, '')) ?? 1);
}

/** The first such day on or after `from`. */
export function firstInMonth(where: InMonth, from: WallDate): WallDate {
  // A 31st comes at least every other month.
  const months = [0, 1, 2, 3].map((n) => monthAfter(from, n));
  const dates = months.map((month) => dayIn(where, month)).filter((date) => isWallDate(date) && date >= from);
  return dates[0] ?? from;
}

function dayIn(where: InMonth, month: string): WallDate {
  if ('day' in where) return `${month}-${String(where.day).padStart(2, '0')}`;
  const first = where.nth === -1 ? addDays(`${monthAfter(`${month}-01`, 1)}-01`, -7) : `${month}-01`;
  const ahead = (where.weekday - weekdayOf(first) + 7) % 7;
  return addDays(first, ahead + (where.nth === -1 ? 0 : 7 * (where.nth - 1)));
}

/** The same day so many months on, or the last one of that month. */
export function monthsOn(date: WallDate, n: number): WallDate {
  const month = monthAfter(date, n);
  const days = [0, 1, 2, 3].map((fewer) => `${month}-${String(Number(date.slice(8)) - fewer).padStart(2, '0')}`);
  return days.find((one) => isWallDate(one)) ?? date;
}

/** "2026-12" and so many months on. */
function monthAfter(date: WallDate, n: number): string {
  const months = Number(date.slice(0, 4)) * 12 + Number(date.slice(5, 7)) - 1 + n;
  return `${Math.floor(months / 12)}-${String((months % 12) + 1).padStart(2, '0')}`;
}
