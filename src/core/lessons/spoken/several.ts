/** More than one lesson wished for in a sentence: "both on Saturday", 蓋碗課和岩茶課我都想上. They are booked one by one. */
import { dateOf, weekdayOf, type WallDate } from '../calendar.ts';
import type { Lesson } from '../lesson.ts';
import type { Sentence } from './sentence.ts';
import { titledTogether } from './titles.ts';
import { lessonsOn, type Wish } from './wish.ts';

/** Their ids; fewer than two where no such thing is said. */
export function severalMeant(sentence: Sentence, wish: Wish, lessons: readonly Lesson[]): readonly string[] {
  if (!mayBeSeveral.has(wish.want) || !sentence.says('several')) return [];
  const called = titledTogether(lessons, wish);
  return (called.length > 1 ? called : onFullDay(lessons, wish)).map(({ id }) => id);
}

const mayBeSeveral: ReadonlySet<Wish['want']> = new Set(['enrol', 'list', 'question']);

/** Those of the first such day that has more than one. */
function onFullDay(lessons: readonly Lesson[], { date, byWeekday }: Wish): readonly Lesson[] {
  if (date === undefined) return [];
  const days = lessons.map(({ starts }) => dateOf(starts)).filter((day) => weekdayOf(day) === weekdayOf(date));
  const on = (day: WallDate): readonly Lesson[] => lessonsOn(lessons, { date: day });
  return (byWeekday ? days.toSorted() : [date]).map(on).find((those) => those.length > 1) ?? [];
}
