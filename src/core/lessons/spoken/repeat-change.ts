/** What makes a planned lesson repeat, or repeat otherwise: "every other week, six times", 每月一次, "only once". */
import { addDays, dateOf, timeOf, weekdayOf, type WallDate, type WallTime } from '../calendar.ts';
import type { Recurrence } from '../recurrence.ts';
import { mark, plain } from './cut.ts';
import { endOf, readEnd } from './repeat-end.ts';
import { firstInMonth, readRepeats } from './repeats.ts';
import { readMonths } from './span.ts';

export interface RepeatChange {
  /** Null: not any more. */
  readonly repeats: Recurrence | null;
  /** Where it says a day of the month: the first such day from the planned one on. */
  readonly date?: WallDate;
  /** What else is said. */
  readonly rest: string;
}

const once =
  /\b(?:only once|just once|once only|one-?off|(?:don'?t|do not|not|no) (?:to be )?repeat(?:ed|ing)?|a single (?:lesson|class|evening|time))\b|(?:不|唔)(?:要|用|使|需要)?重[複复覆]|(?:只|淨係|就)(?:上|開|开|辦|办|有|係|是)?一次|單次|单次/iu;
const endless =
  /\b(?:without (?:an )?end|no end(?: date)?|open-ended|for ?ever|until further notice|indefinitely)\b|不限(?:次數|次数)|(?:沒有|没有|冇|無|无)(?:期限|限期)|一直(?:開|开|辦|办)下去/iu;
const keeps: readonly (readonly [RegExp, 'date' | 'weekday'])[] = [
  [/\bsame (?:date|day of the month)\b|同一?(?:個|个)?日期|同一?[日號号]/iu, 'date'],
  [/\bsame weekday\b|同一?(?:個|个)?(?:星期幾|星期几|週幾|周几)/iu, 'weekday'],
];

/** Null when it says nothing of it. */
export function repeatChange(sentence: string, before: Recurrence | undefined, starts: WallTime): RepeatChange | null {
  const text = plain(sentence);
  if (once.test(text)) return { repeats: null, rest: clear(text.replace(once, ' ')) };
  const { rule, inMonth, rest } = readRepeats(text);
  if (rule === undefined) return before === undefined ? null : goingOn(text, before, starts);
  const ended = readEnd(rest, dateOf(starts));
  const end = endOf(ended, rule, dateOf(starts));
  const months = readMonths(ended.rest, dateOf(starts));
  const isBound = end.times !== undefined || end.until !== undefined;
  const until = months.span === undefined || isBound ? {} : { until: months.span.to };
  const change = { repeats: { ...rule, ...until, ...end }, rest: clear(months.rest) };
  if (inMonth !== undefined) return { ...change, date: firstInMonth(inMonth, dateOf(starts)) };
  return months.span === undefined || rule.every !== 'week'
    ? change
    : { ...change, date: firstSuch(months.span.from, starts) };
}

/** "Every Friday in January", said of a lesson on a Friday: the first of them. */
function firstSuch(from: WallDate, starts: WallTime): WallDate {
  const since = from > dateOf(starts) ? from : dateOf(starts);
  return addDays(since, (weekdayOf(dateOf(starts)) - weekdayOf(since) + 7) % 7);
}

/** What is said of how long it goes on, or of what it keeps, where it repeats already. */
function goingOn(text: string, before: Recurrence, starts: WallTime): RepeatChange | null {
  const { times: _, until: __, ...open } = before;
  const kept = before.every !== 'month' ? undefined : keeps.find(([pattern]) => pattern.test(text));
  if (kept) return { repeats: { ...before, keep: kept[1] }, rest: clear(text.replace(kept[0], ' ')) };
  if (endless.test(text)) return { repeats: open, rest: clear(text.replace(endless, ' ')) };
  const { rest, ...ended } = readEnd(text, dateOf(starts));
  const end = endOf(ended, before, dateOf(starts));
  if (Object.keys(end).length === 0) return null;
  const except = [...(before.except ?? []), ...(end.except ?? [])];
  const bounds = end.times === undefined && end.until === undefined ? before : { ...open, ...end };
  return { repeats: { ...bounds, ...(except.length > 0 ? { except } : {}) }, rest: clear(rest) };
}

/** What else is said beside how often and how long. */
export function withoutRepeats(sentence: string): string {
  const { rule, rest } = readRepeats(plain(sentence));
  return rule === undefined ? sentence : clear(readEnd(rest, firstDay).rest);
}

/** Any will do, where only the words are wanted. */
const firstDay = '2000-01-01';

const clear = (rest: string): string => rest.replaceAll(mark, ' ').trim();

export const onDate = (date: WallDate, starts: WallTime): WallTime => `${date}T${timeOf(starts)}`;
