/** Days that are named together, "this week", "下個月": from which to which. A single day is day.ts's. */
import { addDays, weekdayOf, type WallDate } from '../calendar.ts';
import { cut, plain } from './cut.ts';
import { itsLessons, monthName, readMonth, suits } from './months.ts';

export interface Span {
  readonly from: WallDate;
  readonly to: WallDate;
}

/** "In December", "the December ones", 十二月有什麼課: no day of it is named. */
const monthAlone = `\\b(?:(?:in|over|during|for|what about|how about|maybe|make it) |(?=(?:${monthName})(?:${itsLessons}|${suits})))(?<en>${monthName})\\b(?! \\d)`;
const hanMonthAlone =
  '(?<![\\d個个])(?<han>1[0-2]|[1-9]|十[一二]?|[一二三四五六七八九])月(?!\\s*[\\d一二三四五六七八九十])';
const inMonth = new RegExp(`${monthAlone}|${hanMonthAlone}`, 'iu');

function monthIn(text: string): string {
  const { en, han } = inMonth.exec(text)?.groups ?? {};
  return monthNumber(en ?? han ?? '');
}

const monthNumber = (words: string): string => String(readMonth(words) ?? 0).padStart(2, '0');

/** Of this year or the next; what is past of it is not meant. */
function nextMonthNamed(month: string, today: WallDate): WallDate {
  const year = Number(today.slice(0, 4));
  return month === today.slice(5, 7) ? today : `${month > today.slice(5, 7) ? year : year + 1}-${month}-01`;
}

/** Weeks begin on Monday; what is past of one is not meant. */
const spans: readonly (readonly [RegExp, (today: WallDate, month: string) => Span])[] = [
  [
    /\bweek after next\b|\bin two weeks\b|下下(?:一|個|个)*(?:週|周|星期|禮拜|礼拜)(?![一二三四五六日天末])/iu,
    (today) => ({ from: addDays(mondayAfter(today), 7), to: addDays(mondayAfter(today), 13) }),
  ],
  [
    /\b(?:next|coming|following) (?:two|2) weeks\b|\bfortnight\b|(?:接下來|接下来|未來|未来|往後|往后)的?[兩两二2](?:個|个)?(?:週|周|星期|禮拜|礼拜)/iu,
    (today) => ({ from: today, to: addDays(today, 14) }),
  ],
  [
    /\b(?:next|coming|following) (?:few|three|3) weeks\b|(?:接下來|接下来|未來|未来|往後|往后)的?(?:幾|几|三|3)(?:個|个)?(?:週|周|星期|禮拜|礼拜)/iu,
    (today) => ({ from: today, to: addDays(today, 21) }),
  ],
  [/\bnext weekend\b|下(?:個|个)?(?:週末|周末)/iu, (today) => weekendOf(addDays(today, 7))],
  [/\bweekend\b|週末|周末/iu, (today) => weekendOf(today)],
  [
    /\bnext week\b|下(?:一|個|个)*(?:週|周|星期|禮拜|礼拜)(?![一二三四五六日天末])/iu,
    (today) => ({ from: mondayAfter(today), to: addDays(mondayAfter(today), 6) }),
  ],
  [
    /\bthis week\b|\bdays\b.*\bahead\b|[這这本](?:個|个)?(?:週|周|星期|禮拜|礼拜)(?![一二三四五六日天末])/iu,
    (today) => ({ from: today, to: addDays(mondayAfter(today), -1) }),
  ],
  [/\bnext month\b|下(?:個|个)?月/iu, (today) => monthOf(firstAfter(today))],
  [inMonth, (today, month) => monthOf(nextMonthNamed(month, today))],
  [/\bthis month\b|[這这本](?:個|个)?月/iu, (today) => ({ ...monthOf(today), from: today })],
];

const monthSpans = new RegExp(
  `${monthAlone}(?:,? (?:and|to|through|until|till) (?<en2>${monthName})\\b(?! \\d))?|${hanMonthAlone}(?:份)?(?:(?:到|至|和|、|及)(?<han2>1[0-2]|[1-9]|十[一二]?|[一二三四五六七八九])月(?:份|底)?)?|(?:\\b(?:in|during) )?(?<next>\\bnext month\\b|下(?:個|个)?月)|(?:\\b(?:in|during) )?(?<this>\\bthis month\\b|[這这本](?:個|个)?月)`,
  'iu',
);

/** A month, or more in a row, in which something that repeats is to be: "in January", 一月到三月. */
export function readMonths(text: string, today: WallDate): { readonly span?: Span; readonly rest: string } {
  const found = cut(text, monthSpans);
  if (!found) return { rest: text };
  const { en, han, en2, han2, next } = found.groups;
  const named = en ?? han;
  const from =
    named === undefined ? (next === undefined ? today : firstAfter(today)) : nextMonthNamed(monthNumber(named), today);
  const last = en2 ?? han2;
  const to = monthOf(last === undefined ? from : nextMonthNamed(monthNumber(last), from)).to;
  return { span: { from, to }, rest: found.rest };
}

export function readSpan(sentence: string, today: WallDate): Span | undefined {
  const text = plain(sentence);
  const found = spans.find(([pattern]) => pattern.test(text));
  return thirdOf(found?.[1](today, monthIn(text)), text, today);
}

/** 月底, 下個月初: ten days of a month, the last ones to its end. */
const thirds: readonly (readonly [RegExp, string, string?])[] = [
  [/月初|月頭|月头|上旬|\b(?:beginning|start) of (?:the|this|next) month\b/iu, '01', '10'],
  [/月中(?!旬)|中旬|\bmiddle of (?:the|this|next) month\b/iu, '11', '20'],
  [/月[底尾末]|下旬|\bend of (?:the|this|next) month\b/iu, '21'],
];

function thirdOf(span: Span | undefined, text: string, today: WallDate): Span | undefined {
  const third = thirds.find(([pattern]) => pattern.test(text));
  if (third === undefined) return span;
  const [, first, last] = third;
  const within = (day: WallDate): Span => ({
    from: `${day.slice(0, 8)}${first}`,
    to: last === undefined ? monthOf(day).to : `${day.slice(0, 8)}${last}`,
  });
  const of = within(span?.from ?? today);
  const meant = span === undefined && of.to < today ? within(firstAfter(today)) : of;
  return { from: meant.from < today ? today : meant.from, to: meant.to };
}

const mondayAfter = (today: WallDate): WallDate => addDays(today, 8 - weekdayOf(today));

/** On a Sunday it is that Sunday. */
function weekendOf(day: WallDate): Span {
  const sunday = addDays(mondayAfter(day), -1);
  const saturday = addDays(sunday, -1);
  return { from: day > saturday ? day : saturday, to: sunday };
}

const firstAfter = (day: WallDate): WallDate => `${addDays(`${day.slice(0, 7)}-28`, 4).slice(0, 7)}-01`;

const monthOf = (day: WallDate): Span => ({
  from: `${day.slice(0, 7)}-01`,
  to: addDays(firstAfter(day), -1),
});
