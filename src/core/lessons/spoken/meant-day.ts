/** Which Thursday is meant by "Thursday": the first on which there is a lesson, where nothing says which. */
import type { Instant } from '../../units.ts';
import { dateOf, weekdayOf, type WallDate } from '../calendar.ts';
import type { Lesson } from '../lesson.ts';

interface Dated {
  /** The nearest, when it was named by its weekday alone. */
  readonly date?: WallDate;
  readonly byWeekday?: true;
  /** On the nearest there is none. */
  readonly isLater?: true;
}

/** `lessons`: those that can be meant. A lesson under way is still one of today. */
export function onMeantDay<Kind extends Dated>(
  said: Kind,
  lessons: readonly Pick<Lesson, 'starts' | 'endsAt'>[],
  now: Instant,
): Kind {
  const { date, byWeekday } = said;
  if (date === undefined || byWeekday !== true) return said;
  const days = lessons.filter(({ endsAt }) => endsAt > now).map(({ starts }) => dateOf(starts));
  const [first = date] = days.filter((day) => day >= date && weekdayOf(day) === weekdayOf(date)).toSorted();
  return first === date ? said : { ...said, date: first, isLater: true };
}
