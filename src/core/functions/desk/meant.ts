/** Which lessons a shopkeeper's order is about: by title, by day, by the part of the day. Knows no errand. */
import type { Around } from '../../flow/book.ts';
import { dateOf, wallAt } from '../../lessons/calendar.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import { onMeantDay } from '../../lessons/spoken/meant-day.ts';
import { inPartOfDay } from '../../lessons/spoken/part-of-day.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { readSpan } from '../../lessons/spoken/span.ts';
import { titledLessons, titledTogether } from '../../lessons/spoken/titles.ts';
import { hearWish, isSuch, lessonsOn } from '../../lessons/spoken/wish.ts';
import { doorsIn } from './board.ts';

/** A day, or a week. */
export function namesDays(sentence: Sentence, now: number, zone: string): boolean {
  const isDay = hearWish(sentence, now, zone).date !== undefined;
  return isDay || readSpan(sentence.text, dateOf(wallAt(now, zone))) !== undefined;
}

const openIn = (around: Around): readonly Lesson[] =>
  doorsIn(around).flatMap(({ lesson }) => (lesson.status === 'cancelled' ? [] : [lesson]));

/** A day, and nothing is on it. */
export function noneOn(sentence: Sentence, around: Around, zone: string): boolean {
  const lessons = openIn(around);
  const wish = onMeantDay(hearWish(sentence, around.nowMs, zone), lessons, around.nowMs);
  return wish.date !== undefined && lessonsOn(lessons, wish).length === 0;
}

export const only = (lessons: readonly Lesson[]): Lesson | undefined => (lessons.length === 1 ? lessons[0] : undefined);
export const meant = (...what: Parameters<typeof lessonsMeant>): Lesson | undefined => only(lessonsMeant(...what));

/** By title, or by day: of a move the day it is moved from. Several where that does not tell. */
export function lessonsMeant(sentence: Sentence, act: string, around: Around, zone: string): readonly Lesson[] {
  const lessons = openIn(around);
  // 週六下午的課: the first Saturday that has one.
  const atThatHour = inPartOfDay(lessons, sentence.text);
  const wish = onMeantDay(hearWish(sentence, around.nowMs, zone), atThatHour, around.nowMs);
  const onDay = act === 'repeat' || wish.date === undefined ? [] : lessonsOn(lessons, wish);
  // 王先生報蓋碗課和岩茶課: one after the other.
  const together = act === 'guest' ? titledTogether(lessons, wish) : [];
  if (together.length > 1) return together;
  const titled = titledLessons(onDay.length > 0 ? onDay : lessons, wish);
  return inPartOfDay(titled.length > 0 ? titled : onDay, sentence.text);
}

/** "This week", "in January": of days named together. */
export function inDays({ text }: Sentence, around: Around, zone: string): readonly Lesson[] {
  const span = readSpan(text, dateOf(wallAt(around.nowMs, zone)));
  return span === undefined ? [] : openIn(around).filter((one) => isSuch(one, { span }));
}
