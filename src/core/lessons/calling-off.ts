/** Days on which there are to be no lessons: a closing week, all from a day on, every Saturday. Calls nothing off. */
import { addDays, dateOf, weekdayOf, type WallDate } from './calendar.ts';
import { occurrences, type Recurrence } from './recurrence.ts';
import type { Series } from './series.ts';

export interface OffDays {
  readonly from: WallDate;
  /** The last of them; null when they go on without end. */
  readonly to: WallDate | null;
  /** Of these only, 1 Monday … 7 Sunday. */
  readonly weekday: number | null;
  /** These days and no others. */
  readonly only: readonly WallDate[] | null;
}

export const isOff = ({ from, to, weekday, only }: OffDays, date: WallDate): boolean =>
  date >= from &&
  (to === null || date <= to) &&
  (weekday === null || weekdayOf(date) === weekday) &&
  (only === null || only.includes(date));

/** A day is skipped so far ahead at most, where the days have no end and the series does not end with them. */
const skippedAheadDays = 400;

/** The series as it is without those days: it ends, or leaves them out. The same value where it is on none of them. */
export function withoutDays(series: Series, off: OffDays): Series {
  const days = daysOf(series, off);
  if (days.length === 0) return series;
  const { draft, repeats } = series;
  if (endsIt(series, off)) return { draft, repeats: { ...repeats, until: addDays(off.from, -1) } };
  const except = [...(repeats.except ?? []), ...days.filter((day) => !repeats.except?.includes(day))];
  return { draft, repeats: { ...repeats, except } };
}

/** On which of those days it would be. */
export function daysOf({ draft, repeats }: Series, off: OffDays): readonly WallDate[] {
  const horizon = off.to ?? addDays(off.from, skippedAheadDays);
  return occurrences(draft.starts, repeats, horizon)
    .map(dateOf)
    .filter((date) => isOff(off, date));
}

/** Whether nothing of it is left after the first of those days. */
export function endsIt({ draft, repeats }: Series, { to, only, weekday }: OffDays): boolean {
  if (to !== null || only !== null) return false;
  return weekday === null || (keepsWeekday(repeats) && weekdayOf(dateOf(draft.starts)) === weekday);
}

const keepsWeekday = ({ every, keep }: Recurrence): boolean =>
  every === 'week' || (every === 'month' && keep !== 'date');
