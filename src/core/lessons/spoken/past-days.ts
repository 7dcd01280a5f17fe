/** Which days that are over a sentence names, seen from today: "yesterday", "on Saturday", 上週. Knows no lesson. */
import { addDays, weekdayOf, type WallDate } from '../calendar.ts';
import { plain } from './cut.ts';
import { readDay } from './day.ts';
import type { Span } from './span.ts';

const mondayOf = (day: WallDate): WallDate => addDays(day, 1 - weekdayOf(day));
const firstOf = (day: WallDate): WallDate => `${day.slice(0, 7)}-01`;

/** Weeks begin on Monday. */
const spans: readonly (readonly [RegExp, (today: WallDate) => Span])[] = [
  [
    /\b(?:last|past|previous) weekend\b|上(?:個|个)?(?:週末|周末)/iu,
    (today) => ({ from: addDays(mondayOf(today), -2), to: addDays(mondayOf(today), -1) }),
  ],
  [
    /\b(?:last|previous) week\b|上(?:一|個|个)*(?:週|周|星期|禮拜|礼拜)(?![一二三四五六日天末])/iu,
    (today) => ({ from: addDays(mondayOf(today), -7), to: addDays(mondayOf(today), -1) }),
  ],
  [
    /\bthis week\b|[這这本](?:個|个)?(?:週|周|星期|禮拜|礼拜)(?![一二三四五六日天末])/iu,
    (today) => ({ from: mondayOf(today), to: today }),
  ],
  [
    /\b(?:last|past|previous) month\b|上(?:個|个)?月/iu,
    (today) => {
      const last = addDays(firstOf(today), -1);
      return { from: firstOf(last), to: last };
    },
  ],
  [/\bthis month\b|[這这本](?:個|个)?月/iu, (today) => ({ from: firstOf(today), to: today })],
];

/**
 * `held`: the days on which there was something, today among them when it has begun. A weekday, or a day of the month, is
 * the latest of these that fits; undefined where no day is named at all.
 */
export function readPastDays(sentence: string, today: WallDate, held: readonly WallDate[]): Span | undefined {
  const text = plain(sentence);
  const span = spans.find(([pattern]) => pattern.test(text))?.[1](today);
  if (span !== undefined) return span;
  const { date, byWeekday } = readDay(text, today);
  if (date === undefined) return undefined;
  const latest = held.toSorted().toReversed();
  const isSuch = (day: WallDate): boolean =>
    byWeekday === true ? weekdayOf(day) === weekdayOf(date) : day.slice(5) === date.slice(5);
  const isSuchDay = (day: WallDate): boolean => day.slice(8) === date.slice(8) && !monthSaid.test(text);
  const meant =
    date <= today && byWeekday !== true
      ? date
      : (latest.find(isSuch) ?? latest.find(isSuchDay) ?? lastBefore(date, today));
  return { from: meant, to: meant };
}

const monthSaid = /月|\b(?:jan|feb|mar|apr|may|june?|july?|aug|sep|oct|nov|dec)[a-z]*\b|\d[-/.]\d/iu;

/** Nothing was held then: the weekday before today, so that this can be said of it. */
const lastBefore = (date: WallDate, today: WallDate): WallDate => (date > today ? addDays(date, -7) : date);
