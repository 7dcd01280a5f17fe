/** How long a lesson that repeats goes on, as a sentence says it: "six times", "until the end of January", 共六次, 除了12月26日. */
import { addDays, isWallDate, type WallDate } from '../calendar.ts';
import type { Recurrence } from '../recurrence.ts';
import { cut, cutOut, mark, type Cut } from './cut.ts';
import { feastDay, feastName, hanFeastName } from './feasts.ts';
import { monthName, readMonth } from './months.ts';
import { number, readNumber } from './numeral.ts';
import { monthsOn, type Rule } from './repeats.ts';
import { fullWeekdays, hanWeekdays } from './weekdays.ts';

export type End = Pick<Recurrence, 'times' | 'until' | 'except'>;

/** "For two months": how often that is depends on how often it comes again. */
export interface Lasting {
  readonly n: number;
  readonly unit: 'week' | 'month';
}

export interface ReadEnd {
  readonly end: End;
  readonly lasting?: Lasting;
  readonly rest: string;
}

/** More than any course has. */
const mostTimes = 100;

const inAll = '(?:,? (?:in all|in total|altogether|overall))?';
const timesSaid = [
  new RegExp(`(?<!\\b(?:at|from|to) )(?<n>${number}) (?=(?:${fullWeekdays})(?:s\\b|${mark}))`, 'iu'),
  new RegExp(
    `(?:\\bfor )?(?<n>${number})\\s*(?:times|dates|sessions|lessons|classes|evenings|mornings|afternoons|meetings|(?<unit>weeks|months?))\\b(?: (?:in a row|running))?${inAll}`,
    'iu',
  ),
  new RegExp(`(?<=${mark})(?<n>${number})(?:個|个)?(?=(?:星期|禮拜|礼拜|週|周)[${hanWeekdays}天])`, 'u'),
  /\b(?<n>twice)\b(?! (?:a|per|every|each)\b)/iu,
  new RegExp(
    `(?:一?共|總共|总共|合共|連續|连续|連|连)?(?:開|开|辦|办|上)?(?<=[共總总計计合連连續续開开辦办上])\\s*(?![一1]\\s*[堂節节場场])(?<n>${number})\\s*(?:次|堂|節|节|期|場|场|回|(?<unit>(?:個|个)(?:星期|禮拜|礼拜|月)|[週周]))`,
    'u',
  ),
  new RegExp(`(?<![每第一])(?<n>${number})\\s*次`, 'u'),
];
const inARow = /\b(?:in a row|running)\b|一連|連續|连续/iu;

interface Times {
  readonly times?: number;
  readonly lasting?: Lasting;
  readonly rest: string;
}

function readTimes(text: string): Times {
  for (const pattern of timesSaid) {
    const found = cut(text, pattern);
    const word = found?.groups['n'] ?? '';
    const times = /^twice$/iu.test(word) ? 2 : readNumber(word);
    if (!found || times === undefined || times < 1 || times > mostTimes || !Number.isInteger(times)) continue;
    const rest = cut(found.rest, inARow)?.rest ?? found.rest;
    const { unit } = found.groups;
    if (unit === undefined) return { times, rest };
    return { lasting: { n: times, unit: /month|月/u.test(unit) ? 'month' : 'week' }, rest };
  }
  return { rest: text };
}

const english = `(?:(?<from>the end of|end of|mid|the middle of) )?(?:(?:the )?(?<day>\\d{1,2})(?:st|nd|rd|th)?(?: of)? )?(?<month>${monthName})(?: (?<day2>\\d{1,2})(?:st|nd|rd|th)?)?\\b(?:,? (?<year>\\d{4}))?`;
const han =
  '(?:(?<next>明年|下年)|(?<year>\\d{4})年)?(?<month>\\d{1,2}|[一二三四五六七八九十]{1,2})月(?:(?<day>\\d{1,2}|[一二三四五六七八九十]{1,3})[日號号]|底|尾|末)?';
/** "Before" leaves out the day itself; "till Christmas" does so as well. */
const upTo =
  "(?:until|till|'til|through|up to|(?<before>before)|(?:it )?end(?:s|ing)?(?: (?<before2>before))?(?: on| in| at)?)";
const hanUpTo = '(?:[上開开辦办]?一?直?(?:到|至))';
const hanBefore = '(?<before>(?:之|以)?前)';
const untilSaid = [
  new RegExp(`\\b${upTo}(?: and including)? ${english}`, 'iu'),
  new RegExp(`\\b${upTo}(?<with> and including)? (?:the )?${feastName}`, 'iu'),
  /\b(?:until|till|through) (?:the )?(?:end of (?:the |this )?year)\b(?<yearEnd>)/iu,
  /\b(?:until|till|through) (?:the )?end of (?:(?:the|this) month|(?<nextMonth>next month))\b(?<monthEnd>)/iu,
  new RegExp(`${hanUpTo}${hanFeastName}(?:${hanBefore}|為止|为止)?`, 'u'),
  new RegExp(`${hanFeastName}${hanBefore}`, 'u'),
  new RegExp(`${hanUpTo}${han}(?:${hanBefore}|為止|为止)?`, 'u'),
  new RegExp(`${han}${hanBefore}`, 'u'),
  new RegExp(`${hanUpTo}(?:今年)?年(?:底|尾|末)(?:為止|为止)?(?<yearEnd>)`, 'u'),
  new RegExp(
    `${hanUpTo}(?:[這这本]?(?:個|个)?|(?<nextMonth>下(?:個|个)?))月(?:底|尾|末)(?:為止|为止)?(?<monthEnd>)`,
    'u',
  ),
];

function readUntil(text: string, from: WallDate): { readonly until?: WallDate; readonly rest: string } {
  for (const pattern of untilSaid) {
    const found = cut(text, pattern);
    const date = found && lastDay(found, from);
    if (found && date !== undefined) return { until: date, rest: found.rest };
  }
  return { rest: text };
}

function lastDay({ groups, words }: Cut, from: WallDate): WallDate | undefined {
  const { feast, before, before2, monthEnd, nextMonth } = groups;
  const isBefore = (before ?? before2) !== undefined;
  if (monthEnd !== undefined) return lastOfMonth(nextMonth === undefined ? from : addDays(lastOfMonth(from), 1));
  if (feast === undefined) return ofBefore(dateIn(groups, from), isBefore);
  return ofBefore(feastDay(feast, from), groups['with'] === undefined && !/^through/iu.test(words));
}

const ofBefore = (date: WallDate | undefined, isBefore: boolean): WallDate | undefined =>
  date !== undefined && isBefore ? addDays(date, -1) : date;

const lastOfMonth = (date: WallDate): WallDate => dayOf(Number(date.slice(0, 4)), Number(date.slice(5, 7)), undefined);

type Groups = { readonly [name: string]: string | undefined };

/** A month alone is meant to its end. */
function dateIn({ yearEnd, month = '', day, day2, year, next }: Groups, from: WallDate): WallDate | undefined {
  if (yearEnd !== undefined) return `${from.slice(0, 4)}-12-31`;
  const [m, d] = [readMonth(month) ?? 0, readNumber(day ?? day2 ?? '')];
  const first = Number(from.slice(0, 4)) + (next === undefined ? 0 : 1);
  const dates = (year === undefined ? [first, first + 1] : [Number(year)]).map((y) => dayOf(y, m, d));
  return dates.find((date) => isWallDate(date) && (date >= from || year !== undefined));
}

function dayOf(year: number, month: number, day: number | undefined): WallDate {
  const start = `${year}-${String(month).padStart(2, '0')}`;
  if (day !== undefined) return `${start}-${String(day).padStart(2, '0')}`;
  const next = month === 12 ? `${year + 1}-01` : `${year}-${String(month + 1).padStart(2, '0')}`;
  return isWallDate(`${next}-01`) ? addDays(`${next}-01`, -1) : '';
}

const unnamed = (pattern: string): string => pattern.replaceAll(/\?<\w+>/gu, '?:');
const datesIn = (date: string, and: string): string => `(?<dates>${unnamed(date)}(?:${and}${unnamed(date)})*)`;
const leftOut = [
  new RegExp(
    `(?:,? ?but )?\\b(?:except|excluding|without|skipping|skip|not)(?: for)?(?: on)? ${datesIn(english, '(?:,? and |, ?)(?:on )?')}`,
    'iu',
  ),
  new RegExp(`(?:除了|除咗|不包括|跳過|跳过|避開|避开)${datesIn(han, '[、和及]')}(?:以外|之外|外)?`, 'u'),
  new RegExp(`${datesIn(han, '[、和及]')}(?:停一?次|停課|停课|不上|唔上|休息|暫停|暂停)`, 'u'),
];
const dated = new RegExp(unnamed(`${english}|${han}`), 'giu');
const englishDate = new RegExp(`^${english}`, 'iu');
const hanDate = new RegExp(`^${han}`, 'u');

function readExcept(text: string, from: WallDate): { readonly except?: readonly WallDate[]; readonly rest: string } {
  for (const pattern of leftOut) {
    const match = pattern.exec(text);
    const words = match?.groups?.['dates']?.match(dated) ?? [];
    const except = words
      .map((one) => dateIn((englishDate.exec(one) ?? hanDate.exec(one))?.groups ?? {}, from))
      .filter((one) => one !== undefined);
    if (match && except.length > 0 && except.length === words.length) return { except, rest: cutOut(text, match).rest };
  }
  return { rest: text };
}

/** `from` is the day it begins, or today: days without a year are after it. */
export function readEnd(text: string, from: WallDate): ReadEnd {
  const { rest: afterExcept, ...except } = readExcept(text, from);
  const { rest: afterUntil, ...until } = readUntil(afterExcept, from);
  const { rest, lasting, ...times } = readTimes(afterUntil);
  return { end: { ...times, ...until, ...except }, ...(lasting ? { lasting } : {}), rest };
}

/** "For six weeks" is six times, when it is every week; every other week it is three. */
export function endOf({ end, lasting }: Omit<ReadEnd, 'rest'>, rule: Rule, first: WallDate): End {
  if (lasting === undefined) return end;
  if (lasting.unit === rule.every && rule.step === 1) return { ...end, times: lasting.n };
  return {
    ...end,
    until: addDays(lasting.unit === 'week' ? addDays(first, 7 * lasting.n) : monthsOn(first, lasting.n), -1),
  };
}

const opening = [
  new RegExp(
    `\\b(?:from|starting|beginning|begins?|starts?)(?: in| from)?(?: (?:this|next) year)? (?<month>${monthName})\\b(?! \\d)`,
    'iu',
  ),
  /(?:從|从|由|自)(?<next>明年|下年)?(?<month>\d{1,2}|[一二三四五六七八九十]{1,2})月(?!\d|[一二三四五六七八九十]{1,3}[日號号])(?:份)?(?:起|開始|开始)?/u,
  /(?<![\d個个])(?<next>明年|下年)?(?<month>\d{1,2}|[一二三四五六七八九十]{1,2})月(?:份)?(?:起|開始|开始)/u,
];

/** "From January": the month it begins in, when no day is told. */
export function readOpening(text: string, today: WallDate): { readonly from?: WallDate; readonly rest: string } {
  for (const pattern of opening) {
    const found = cut(text, pattern);
    const end = found && dateIn(found.groups, today);
    if (found && end !== undefined) return { from: `${end.slice(0, 7)}-01`, rest: found.rest };
  }
  return { rest: text };
}
