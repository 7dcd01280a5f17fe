/** When something that repeats happens, in wall time. Knows neither zones nor lessons: 19:00 stays 19:00. */
import { Temporal } from 'temporal-polyfill';
import { dateOf, timeOf, type WallDate, type WallTime } from './calendar.ts';

export interface Recurrence {
  readonly every: 'day' | 'week' | 'month';
  /** Every so many of them: 2 with `week` is every other week. */
  readonly step: number;
  /** Months only: the second Saturday again (`weekday`, the rule unless said), the last one (`last`), or the 14th (`date`). */
  readonly keep?: 'weekday' | 'last' | 'date';
  /** Ends after so many, those left out counted too; without end when neither this nor `until` is given. */
  readonly times?: number;
  /** The last day it may fall on. */
  readonly until?: WallDate;
  /** Left out: a holiday. */
  readonly except?: readonly WallDate[];
}

/** The occurrences up to and on `horizon`, oldest first; the first is `first` itself unless left out. */
export function occurrences(first: WallTime, rule: Recurrence, horizon: WallDate): readonly WallTime[] {
  if (!Number.isInteger(rule.step) || rule.step < 1) throw new RangeError(`a step of ${rule.step} never ends`);
  const last = rule.until !== undefined && rule.until < horizon ? rule.until : horizon;
  const found: WallTime[] = [];
  for (let n = 0; n < (rule.times ?? Infinity); n++) {
    const date = nth(dateOf(first), rule, n);
    if (date > last) break;
    if (!(rule.except ?? []).includes(date)) found.push(`${date}T${timeOf(first)}`);
  }
  return found;
}

/** Counted from the first each time, so that a short month leaves no trace on the months after it. */
function nth(first: WallDate, { every, step, keep }: Recurrence, n: number): WallDate {
  const start = Temporal.PlainDate.from(first);
  if (every === 'day') return start.add({ days: n * step }).toString();
  if (every === 'week') return start.add({ weeks: n * step }).toString();
  const month = start.toPlainYearMonth().add({ months: n * step });
  return (keep === 'date' ? month.toPlainDate(start) : sameWeekday(start, month, keep === 'last')).toString();
}

/** The same weekday in the same week of the month; the last one where a fifth is missing. */
function sameWeekday(start: Temporal.PlainDate, month: Temporal.PlainYearMonth, isLast: boolean): Temporal.PlainDate {
  const opening = month.toPlainDate({ day: 1 });
  const toWeekday = (start.dayOfWeek - opening.dayOfWeek + 7) % 7;
  const day = 1 + toWeekday + 7 * (isLast ? 4 : Math.floor((start.day - 1) / 7));
  return opening.with({ day: day > month.daysInMonth ? day - 7 : day });
}
