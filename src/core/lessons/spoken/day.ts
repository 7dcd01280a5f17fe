/** Which day a sentence names, seen from today, past days too. Weeks begin on Monday; a bare weekday is the nearest to come. */
import type { Mistake } from '../../units.ts';
import { addDays, isWallDate, weekdayOf, type WallDate } from '../calendar.ts';
import { mistake } from '../lesson.ts';
import { cut, type Cut } from './cut.ts';
import { readFeastDay } from './feast-day.ts';
import { monthName, readMonth } from './months.ts';
import { readNumber } from './numeral.ts';
import { fullWeekdays, weekdayIn } from './weekdays.ts';

export interface Day {
  readonly date?: WallDate;
  /** A bare weekday: when the hour is past already, the one of next week is meant. */
  readonly mayBeNextWeek: boolean;
  /** The day meant when the hour of today is past already: of a month's first Saturday, the next month's. */
  readonly next?: WallDate;
  /** A bare weekday, the nearest to come: "this Thursday" and "next Thursday" say which. */
  readonly byWeekday?: true;
  /** "Saturday evening" tells the half of the day as well. */
  readonly part?: string;
  readonly mistakes: readonly Mistake[];
  readonly rest: string;
}

const monthSaid = `(?<month>${monthName})\\.?`;
const dayNumber = '(?<day>\\d{1,2})(?:st|nd|rd|th)?';
const yearAfter = '(?:,?\\s*(?<year>\\d{4})(?!\\s*(?:seats|places)))?';

const datePatterns = [
  /(?<![\d-])(?<year>\d{4})[-/.](?<month>\d{1,2})[-/.](?<day>\d{1,2})(?:T(?=\d)|(?!\d))/u,
  /(?:(?<year>\d{4})\s*年\s*)?(?<month>\d{1,2}|[一二三四五六七八九十]+)\s*月\s*(?<day>\d{1,2}|[一二三四五六七八九十]+)\s*[日号號]/u,
  new RegExp(`\\b${dayNumber}(?:\\s+of)?\\s+${monthSaid}\\b${yearAfter}`, 'iu'),
  new RegExp(`\\b${monthSaid}\\s+${dayNumber}\\b${yearAfter}`, 'iu'),
  /(?<![\d.])(?<day>\d{1,2})\.\s?(?<month>\d{1,2})\.\s?(?<year>\d{4})(?!\d)/u,
];
/** Without a month the next such day is meant: "on the 5th", "5號". */
const dayPatterns = [
  /\b(?:on\s+)?the\s+(?<day>\d{1,2})(?:st|nd|rd|th)\b(?!\s+(?!(?:at|in|from|to|please|and|for|then|is|has|would|works|looks|sounds|suits|fits|or|one|lesson|class|gets|starts|can|if|full|booked|sold|that|we|morning|afternoon|evening|night)\b)\p{L})/iu,
  /(?<![\d月年第])(?<day>\d{1,2}|[一二三四五六七八九十]{1,3})[日号號](?![茶店線线])/u,
];
const slashed = /(?<![\d/])(?<first>\d{1,2})\/(?<second>\d{1,2})(?:\/(?<year>\d{4}))?(?![\d/])/u;

const partOfDay = '(?:\\s+(?<part>morning|afternoon|evening|night)\\b)?';
const short = 'mon|tues?|wed|thu(?:rs?)?|fri|sat|sun';

const weekdayPatterns = [
  new RegExp(
    `\\b(?:(?<which>next|last|this|coming|every other|every)\\s+)?(?<weekday>${fullWeekdays})s?\\b${partOfDay}`,
    'iu',
  ),
  // "Sun dried" and "sat down" are no days: a short name stands before an hour, or alone.
  new RegExp(
    `(?:^|(?<=[\\s,;\\u241F]))(?:(?<which>next|last|this|coming|every other|every)\\s+)?(?<weekday>${short})\\b\\.?(?=\\s*(?:,|;|$|\\u241F|at\\b|from\\b|\\d))`,
    'iu',
  ),
  /(?<which>下下|下|上|每|隔|这|這|本)?\s*(?:个|個)?(?:周|週|星期|礼拜|禮拜)(?<weekday>[一二三四五六日天])/u,
];
const relative = new RegExp(
  `\\b(?<english>the day after tomorrow|the day before yesterday|tonight|today|tomorrow|yesterday)\\b${partOfDay}|(?<han>大后|大後|后|後|今|明|(?:昨|前)(?!.{0,6}(?:报名|報名|订了|訂了|预约|預約|登记|登記|付[了过過款钱錢])))(?:天|日|(?=[晚早]))`,
  'iu',
);

/** "Tomorrow week", "Saturday week", "a week on Saturday": seven days on. */
const aWeekOn = new RegExp(
  `\\b(?:on )?(?:(?<day>today|tomorrow|${fullWeekdays}) week\\b(?:'s)?(?! (?:after|before))|a week (?:on|from) (?<day2>today|tomorrow|${fullWeekdays})\\b)`,
  'iu',
);

export function readDay(text: string, today: WallDate): Day {
  const week = cut(text, aWeekOn);
  if (week) {
    const day = readDay(week.groups['day'] ?? week.groups['day2'] ?? '', today);
    if (day.date !== undefined)
      return { date: addDays(day.date, 7), mayBeNextWeek: false, mistakes: [], rest: week.rest };
  }
  const feast = readFeastDay(text, today);
  if (feast) return { ...feast, mayBeNextWeek: false, mistakes: [] };
  const dated = datePatterns.map((pattern) => cut(text, pattern)).find((one) => one !== undefined);
  const slash = dated ? undefined : cut(text, slashed);
  const day =
    (dated ?? slash) ? undefined : dayPatterns.map((pattern) => cut(text, pattern)).find((one) => one !== undefined);
  const found = dated
    ? writtenDate(dated, today)
    : slash
      ? slashedDate(slash, today, text)
      : day && nextSuchDay(day, today);
  const rest = found?.rest ?? text;
  const weekday = weekdayPatterns.map((pattern) => cut(rest, pattern)).find((one) => one !== undefined);
  if (weekday)
    return found ? agree((day && onWeekday(day, weekday, today)) ?? found, weekday) : ofWeekday(weekday, today);
  return found ?? ofRelative(cut(text, relative), text, today);
}

function writtenDate({ groups, words, rest }: Cut, today: WallDate): Day {
  const day = readNumber(groups['day'] ?? '');
  return theDate({ year: groups['year'], month: readMonth(groups['month'] ?? ''), day, words, rest }, today);
}

/** "12/5" is the fifth of December in Chinese; elsewhere nobody can tell, unless one figure is no month. */
function slashedDate({ groups, words, rest }: Cut, today: WallDate, text: string): Day {
  const [first, second] = [Number(groups['first']), Number(groups['second'])];
  const monthFirst = /\p{Script=Han}/u.test(text) || second > 12 || first === second;
  if (!monthFirst && first <= 12) return unread(mistake('date-unclear', 'starts', { words }), rest);
  const [month, day] = monthFirst ? [first, second] : [second, first];
  return theDate({ year: groups['year'], month, day, words, rest }, today);
}

interface Written {
  readonly year: string | undefined;
  readonly month: number | undefined;
  readonly day: number | undefined;
  readonly words: string;
  readonly rest: string;
}

function theDate({ year, month = 0, day = 0, words, rest }: Written, today: WallDate): Day {
  const monthDay = `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
  const thisYear = Number(today.slice(0, 4));
  // Four years ahead at most: "29 February".
  const candidates = year ? [year] : Array.from({ length: 5 }, (_, n) => String(thisYear + n));
  const dates = candidates.map((one) => `${one}-${monthDay}`).filter((one) => isWallDate(one));
  const date = dates.find((one) => year !== undefined || one >= today);
  if (date === undefined) return unread(mistake('date-unreadable', 'starts', { words }), rest);
  return { date, mayBeNextWeek: false, mistakes: [], rest };
}

function nextSuchDay({ groups, words, rest }: Cut, today: WallDate): Day {
  const day = String(readNumber(groups['day'] ?? '') ?? 0).padStart(2, '0');
  const [year = 0, month = 0] = today.split('-').map(Number);
  const ahead = Array.from({ length: 12 }, (_, n) => new Date(Date.UTC(year, month - 1 + n)).toISOString().slice(0, 7));
  const date = ahead.map((one) => `${one}-${day}`).find((one) => isWallDate(one) && one >= today);
  if (date === undefined) return unread(mistake('date-unreadable', 'starts', { words }), rest);
  return { date, mayBeNextWeek: false, mistakes: [], rest };
}

/** "Saturday the 23rd", told without its month: no more than so many days ahead, or one of the two is wrong. Judgement. */
const mostAhead = 62;

function onWeekday(day: Cut, { groups }: Cut, today: WallDate): Day | undefined {
  const dayOfMonth = readNumber(day.groups['day'] ?? '');
  const weekday = weekdayIn(groups['weekday'] ?? '');
  const ahead = Array.from({ length: mostAhead }, (_, n) => addDays(today, n));
  const date = ahead.find((one) => Number(one.slice(8)) === dayOfMonth && weekdayOf(one) === weekday);
  return date === undefined ? undefined : { date, mayBeNextWeek: false, mistakes: [], rest: day.rest };
}

function agree(found: Day, { groups, rest }: Cut): Day {
  const weekday = weekdayIn(groups['weekday'] ?? '');
  const { date } = found;
  const differs = date !== undefined && weekdayOf(date) !== weekday;
  const mistakes = differs ? [...found.mistakes, mistake('weekday-differs', 'starts', { date })] : found.mistakes;
  return { ...found, ...partOf(groups), mistakes, rest };
}

function ofWeekday({ groups, rest }: Cut, today: WallDate): Day {
  const weekday = weekdayIn(groups['weekday'] ?? '');
  const which = (groups['which'] ?? '').toLowerCase();
  const fromMonday = weekdayOf(today) - 1;
  const next = ['next', '下', '下下'].includes(which);
  const inThisWeek = weekday - 1 - fromMonday;
  const ahead = next ? (which === '下下' ? 14 : 7) + inThisWeek : (agoOf(which, inThisWeek) ?? (inThisWeek + 7) % 7);
  return {
    date: addDays(today, ahead),
    mayBeNextWeek: ahead === 0 && !next,
    ...(which === '' || which === 'coming' ? { byWeekday: true as const } : {}),
    ...partOf(groups),
    mistakes: [],
    rest,
  };
}

/** "上週五" is one of last week, "last Friday" the nearest that is past. */
function agoOf(which: string, inThisWeek: number): number | undefined {
  if (which === '上') return inThisWeek - 7;
  return which === 'last' ? (inThisWeek < 0 ? inThisWeek : inThisWeek - 7) : undefined;
}

const daysAhead: { readonly [words: string]: number } = {
  'the day after tomorrow': 2,
  tomorrow: 1,
  yesterday: -1,
  'the day before yesterday': -2,
  明: 1,
  后: 2,
  後: 2,
  大后: 3,
  大後: 3,
  昨: -1,
  前: -2,
};

function ofRelative(found: Cut | undefined, text: string, today: WallDate): Day {
  if (found === undefined) return { mayBeNextWeek: false, mistakes: [], rest: text };
  const { groups, rest } = found;
  const words = (groups['han'] ?? groups['english'] ?? '').toLowerCase();
  const days = daysAhead[words] ?? 0;
  const tonight = words === 'tonight' ? { part: 'evening' } : {};
  return { date: addDays(today, days), mayBeNextWeek: false, ...tonight, ...partOf(groups), mistakes: [], rest };
}

function partOf(groups: Cut['groups']): { part?: string } {
  const said = groups['part'];
  return said === undefined ? {} : { part: said.toLowerCase() };
}

function unread(problem: Mistake, rest: string): Day {
  return { mayBeNextWeek: false, mistakes: [problem], rest };
}
