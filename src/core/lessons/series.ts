/** A series: one statement from which lessons of the same wall time follow. Past lessons do not follow from it. */
import type { Mistake } from '../units.ts';
import { dateOf, saidWall, shownIn, wallAt, type WallDate } from './calendar.ts';
import { freshLesson, mistake, type Lesson, type LessonDraft, type Today } from './lesson.ts';
import { occurrences, type Recurrence } from './recurrence.ts';

export interface Series {
  /** Its first lesson; the id is that of the series. */
  readonly draft: LessonDraft;
  readonly repeats: Recurrence;
}

export interface SeriesLessons {
  readonly lessons: readonly Lesson[];
  /** Lessons whose hour the clocks skip or show twice that day. They take place all the same. */
  readonly notes: readonly Mistake[];
}

/** The lessons to come, up to and on `horizon`. Their ids hold the day they were first meant for, and keep it when moved. */
export function lessonsOfSeries({ draft, repeats }: Series, horizon: WallDate, today: Today): SeriesLessons {
  const lessons = occurrences(draft.starts, repeats, horizon)
    .map((starts) => ({ ...draft, id: `${draft.id}-${dateOf(starts)}`, series: draft.id, starts }))
    .map((one) => freshLesson(one, today.tzVersion))
    .filter((lesson) => lesson.startsAt > today.now);
  return { lessons, notes: lessons.flatMap(hourNote) };
}

function hourNote({ starts, startsAt, zone }: Lesson): readonly Mistake[] {
  const shown = shownIn(starts, zone);
  if (shown === 'once') return [];
  const begins = saidWall(wallAt(startsAt, zone));
  return [mistake(`series-hour-${shown}`, 'starts', { starts: saidWall(starts), begins, zone })];
}
