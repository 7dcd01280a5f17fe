/** "Saturday", said on a Saturday: today as long as a lesson is left today, else a week from now. */
import type { Instant } from '../../units.ts';
import { addDays, dateOf, type WallDate } from '../calendar.ts';
import type { Lesson } from '../lesson.ts';

interface Dated {
  readonly date?: WallDate;
  /** The day is today's, and was named by its weekday alone. */
  readonly mayBeNextWeek?: true;
}

/** `lessons`: those that can be meant. A lesson under way is still one of today. */
export function onMeantDay<Kind extends Dated>(
  said: Kind,
  lessons: readonly Pick<Lesson, 'starts' | 'endsAt'>[],
  now: Instant,
): Kind {
  const { date, mayBeNextWeek } = said;
  if (date === undefined || mayBeNextWeek !== true) return said;
  const isLeft = lessons.some(({ starts, endsAt }) => dateOf(starts) === date && endsAt > now);
  return isLeft ? said : { ...said, date: addDays(date, 7) };
}
