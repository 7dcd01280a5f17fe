/** A lesson as it was stated, without what was worked out or came of it since. */
import type { Lesson, LessonDraft } from './lesson.ts';

const stated = [
  'id',
  'title',
  'level',
  'buildsOn',
  'place',
  'teacher',
  'seats',
  'zone',
  'starts',
  'minutes',
  'price',
  'bring',
  'teas',
  'cancelHours',
  'offerMinutes',
] as const satisfies readonly (keyof LessonDraft)[];

export function draftOf(lesson: Lesson): LessonDraft {
  const draft = Object.fromEntries(stated.map((name) => [name, lesson[name]])) as unknown as LessonDraft;
  return lesson.series === undefined ? draft : { ...draft, series: lesson.series };
}
