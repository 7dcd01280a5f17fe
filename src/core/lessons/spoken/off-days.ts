/** On which days there are to be no lessons, as a shopkeeper says it: "next week", "after Christmas", 12月24日到26日. */
import { addDays, type WallDate } from '../calendar.ts';
import type { OffDays } from '../calling-off.ts';
import { plain } from './cut.ts';
import { readDay } from './day.ts';
import { feastDay, feastName, hanFeastName } from './feasts.ts';
import { itsLessons, monthName } from './months.ts';
import { readEnd, readOpening } from './repeat-end.ts';
import { readSpan } from './span.ts';
import { fullWeekdays, hanWeekdays, weekdayIn } from './weekdays.ts';

export interface ReadOff {
  readonly days: OffDays;
  /** Whether it tells any days at all. */
  readonly isTold: boolean;
  /** What else is said. */
  readonly rest: string;
}

export function readOffDays(sentence: string, today: WallDate): ReadOff {
  const text = eachWritten(plain(sentence));
  const weekly = everyWeekday(text);
  const dated = withDates(weekly.rest, today);
  const { rest, ...told } = bounds(dated, today) ?? months(dated, today) ?? { rest: dated };
  const days = { from: today, to: null, only: null, ...told, weekday: weekly.weekday };
  const isTold = weekly.weekday !== null || Object.keys(told).length > 0;
  return { days: days.from < today ? { ...days, from: today } : days, isTold, rest: rest.replaceAll(token, ' ') };
}

const events = 'lessons?|classes|courses|evenings|mornings|afternoons|workshops|tastings|series|ones';
const hanWeek = '(?:逢|每|所有)?(?:個|个)?(?:星期|禮拜|礼拜|週|周)';
/** "The Saturday lessons", "Saturdays", 逢星期六: all of them. "Saturday's lessons" are of one day. */
const weekdays = [
  new RegExp(`\\b(?:(?:on|every|all|the|each) )*(?<weekday>${fullWeekdays})s(?!')\\b`, 'iu'),
  new RegExp(`\\b(?:every|each) (?<weekday>${fullWeekdays})\\b`, 'iu'),
  new RegExp(
    `(?<!\\b(?:this|next|last|coming) )\\b(?<weekday>${fullWeekdays}) (?=(?:[a-z]+ ){0,2}(?:${events})\\b)`,
    'iu',
  ),
];

/** 星期六的課不上了 is of one day; 逢星期六, 星期六都不上, 以後星期六不上 are of all of them. */
const hanWeekday = new RegExp(`(?<![下上這这本](?:個|个|一)?)${hanWeek}(?<weekday>[${hanWeekdays}天])`, 'u');
const hanEvery = /[逢每都]|所有|全部|一律|不再|再也|[後后](?!天)|起/u;

function everyWeekday(text: string): { readonly weekday: number | null; readonly rest: string } {
  for (const pattern of hanEvery.test(text) ? [...weekdays, hanWeekday] : weekdays) {
    const found = pattern.exec(text);
    if (found) return { weekday: weekdayIn(found.groups?.['weekday'] ?? ''), rest: text.replace(found[0], ' ') };
  }
  return { weekday: null, rest: text };
}

const between = '(?:,|and|&|-|–|to|until|till|through)';
const hanBetween = '[到至和、及,–-]';
/** "24 and 25 December", 12月24到26日: each day with its month. */
const shared: readonly (readonly [RegExp, string])[] = [
  [
    new RegExp(
      `\\b(\\d{1,2})(?:st|nd|rd|th)?(\\s*${between}\\s*(?:the )?)(?=(?:\\d{1,2})(?:st|nd|rd|th)?(?: of)? (${monthName})\\b)`,
      'giu',
    ),
    '$1 $3$2',
  ],
  [
    new RegExp(
      `\\b(${monthName}) (\\d{1,2})(?:st|nd|rd|th)?(\\s*${between}\\s*(?:the )?)(?=\\d{1,2}(?:st|nd|rd|th)?\\b(?! (?:${monthName})))`,
      'giu',
    ),
    '$1 $2$3$1 ',
  ],
  [new RegExp(`(\\d{1,2}月)(\\d{1,2})[日號号]?(${hanBetween})(?=\\d{1,2}[日號号])`, 'gu'), '$1$2日$3$1'],
];

/** Three in a row take two passes. */
function eachWritten(text: string): string {
  const once = shared.reduce((words, [pattern, by]) => words.replace(pattern, by), text);
  return once === text ? text : eachWritten(once);
}

/** A day that was read stands in the text like this. Nobody types it. */
const token = /\u2402(?<date>\d{4}-\d{2}-\d{2})\u2402/gu;
const D = (name: string): string => `\\u2402(?<${name}>\\d{4}-\\d{2}-\\d{2})\\u2402`;

const dayNumber = '\\d{1,2}(?:st|nd|rd|th)?';
const dateSaid = new RegExp(
  [
    '(?<![\\d\\u2402])\\d{4}-\\d{1,2}-\\d{1,2}(?!\\d)',
    `\\b${dayNumber}(?: of)? (?:${monthName})\\b(?:,? \\d{4})?`,
    `\\b(?:${monthName}) ${dayNumber}\\b(?:,? \\d{4})?`,
    '(?:\\d{4}年)?(?:\\d{1,2}|[一二三四五六七八九十]{1,2})月(?:\\d{1,2}|[一二三四五六七八九十]{1,3})[日號号]',
    '\\bthe \\d{1,2}(?:st|nd|rd|th)\\b',
    '(?<![\\d月年第])(?:\\d{1,2}|[一二三四五六七八九十]{1,3})[日號号]',
    `\\b(?:(?:next|this|coming) )?(?:${fullWeekdays})\\b(?!s)`,
    `[下這这本](?:個|个|一)?(?:星期|禮拜|礼拜|週|周)[${hanWeekdays}天]`,
    '\\b(?:today|tonight|tomorrow|the day after tomorrow)\\b|(?:今|明|後|后)(?:天|日)',
  ].join('|'),
  'giu',
);
/** "The Christmas lessons" are called so; "on", "after", 前 and 後 tell days. */
const feastSaid = [
  new RegExp(
    `(?<=\\b(?:on|after|before|until|till|from|since|over|at|between|and|to|through|with|for) (?:the )?)${feastName}`,
    'giu',
  ),
  new RegExp(
    `${hanFeastName}(?=(?:之|以|過|过)?[前後后]|起|開始|开始|到|至|為止|为止|休|放假|停|不)|(?<=[到至過过在])${hanFeastName.replace('?<feast>', '?<feast2>')}`,
    'gu',
  ),
];

const asToken = (words: string, date: WallDate | undefined): string =>
  date === undefined ? words : `\u2402${date}\u2402`;

function withDates(text: string, today: WallDate): string {
  const feasted = feastSaid.reduce(
    (before, pattern) =>
      before.replace(pattern, (words: string, ...given: unknown[]) => {
        const { feast, feast2 } = given.at(-1) as { readonly [name: string]: string | undefined };
        return asToken(words, feastDay(feast ?? feast2 ?? '', today));
      }),
    text,
  );
  return feasted.replace(dateSaid, (words) => asToken(words, readDay(words, today).date));
}

type Bounds = Partial<Pick<OffDays, 'from' | 'to' | 'only'>> & { readonly rest: string };
type Dates = { readonly [name: string]: string | undefined };

const offWords =
  /\b(?:closed|closing|shut|away|holiday|vacation|no|cancel|call off|pause|suspend|off)\b|取消|休|停|放假|關|关|不/iu;

/** The first that fits. */
const bounded: readonly (readonly [RegExp, (dates: Dates, text: string, today: WallDate) => Omit<Bounds, 'rest'>])[] = [
  [
    new RegExp(
      `(?:\\b(?:from|between)|從|从|由|自)?\\s*(?:the )?${D('a')}\\s*(?:to|till|until|through|up to|and including|-|–|~|到|至)\\s*(?:the )?${D('b')}(?:為止|为止)?`,
      'iu',
    ),
    ({ a = '', b = '' }) => ({ from: a, to: b < a ? a : b }),
  ],
  [new RegExp(`\\bbetween ${D('a')} and ${D('b')}`, 'iu'), ({ a = '', b = '' }) => ({ from: a, to: b })],
  [
    new RegExp(
      `\\b(?:after|past|following|once)\\s*(?:the )?${D('a')}|(?:過了|过了)${D('b')}|${D('c')}\\s*(?:之|以|過|过)?[後后]`,
      'iu',
    ),
    ({ a, b, c }) => ({ from: addDays(a ?? b ?? c ?? '', 1) }),
  ],
  [
    new RegExp(
      `\\bthe last (?:(?:[a-z]+ ){0,3}?(?:one|lesson|class|evening|time|date))?s?(?: (?:is|are|will be|should be|shall be))?(?: on)?\\s*${D('a')}|\\b(?:end|ends|ending|finish|finishes)(?: (?:on|with))?(?: the one)?(?: (?:on|of))?\\s*${D('b')}|最[後后]一?[堂節节次個个課课][\\u3400-\\u9fff]{0,10}?(?:是|係|系|在|喺)?\\s*${D('c')}|${D('d')}\\s*(?:是|係|系)?最[後后]一`,
      'iu',
    ),
    ({ a, b, c, d }) => ({ from: addDays(a ?? b ?? c ?? d ?? '', 1) }),
  ],
  [
    new RegExp(`\\bbefore\\s*(?:the )?${D('a')}|${D('b')}\\s*(?:之|以)?前`, 'iu'),
    ({ a, b }) => ({ to: addDays(a ?? b ?? '', -1) }),
  ],
  [
    new RegExp(`\\b(?:until|till|up to|through)\\s*(?:the )?${D('a')}|(?:到|至)\\s*${D('b')}(?:為止|为止)?`, 'iu'),
    ({ a, b }, text) => {
      const date = a ?? b ?? '';
      return offWords.test(text.slice(0, text.search(/\b(?:until|till|up to|through)\b|到|至/iu)))
        ? { to: date }
        : { from: addDays(date, 1) };
    },
  ],
  [
    new RegExp(
      `\\b(?:from|starting|beginning|as of|since)(?: (?:on|from|with))?\\s*(?:the )?${D('a')}(?: on(?:wards?)?\\b)?|(?:從|从|由|自)\\s*${D('b')}(?:起|開始|开始)?|${D('c')}\\s*(?:起|開始|开始)`,
      'iu',
    ),
    ({ a, b, c }) => ({ from: a ?? b ?? c ?? '' }),
  ],
];

function bounds(text: string, today: WallDate): Bounds | undefined {
  for (const [pattern, boundsOf] of bounded) {
    const found = pattern.exec(text);
    if (found) return { ...boundsOf(found.groups ?? {}, text, today), rest: text };
  }
  const only = [...text.matchAll(token)].map(({ groups }) => groups?.['date'] ?? '').toSorted();
  const [from] = only;
  return from === undefined ? undefined : { from, to: only.at(-1) ?? from, only, rest: text };
}

const afterMonth = new RegExp(
  `\\bafter (?:the end of )?(?<month>${monthName})\\b|(?<han>(?:1[0-2]|[1-9]|十[一二]?|[一二三四五六七八九])月)(?:份)?(?:之|以)?[後后]`,
  'iu',
);

/** By a month or a week: "in January", "after this week", "from February on". */
function months(text: string, today: WallDate): Bounds | undefined {
  const after = afterMonth.exec(text);
  if (after) {
    const { month, han = '' } = after.groups ?? {};
    const until = readEnd(month === undefined ? `到${han}底` : `until the end of ${month}`, today).end.until;
    if (until !== undefined) return { from: addDays(until, 1), rest: text.replace(after[0], ' ') };
  }
  const opened = readOpening(text, today);
  if (opened.from !== undefined) return { from: opened.from, rest: opened.rest };
  const { end, rest } = readEnd(text, today);
  if (end.until !== undefined)
    return { ...(offWords.test(text) ? { to: end.until } : { from: addDays(end.until, 1) }), rest };
  const span = readSpan(text, today);
  if (span === undefined) return undefined;
  const isAfter = /\bafter (?:this|next)\b|(?:週|周|星期|禮拜|礼拜|月)(?:之|以)[後后]/iu.test(text);
  return { ...(isAfter ? { from: addDays(span.to, 1) } : span), rest: text.replace(spanWords, ' ') };
}

const spanWords = new RegExp(
  `\\b(?:after |in |over |during )?(?:this|next|the whole) (?:week(?:end)?|month)\\b|\\b(?:in|over|during|for) (?:${monthName})\\b|\\b(?:${monthName})(?=${itsLessons})|[下這这本](?:個|个|一)*(?:週末|周末|週|周|星期|禮拜|礼拜|月)|(?:1[0-2]|[1-9]|十[一二]?|[一二三四五六七八九])月(?:份)?`,
  'giu',
);
