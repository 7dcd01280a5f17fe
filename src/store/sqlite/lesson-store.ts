/** The lessons' part of the contract. */
import type { LessonDraft, Today } from '../../core/lessons/lesson.ts';
import type { Lessons, WrongLesson } from '../lesson-contract.ts';
import type { Write } from './commits.ts';
import { putAll } from './lesson-keeping.ts';
import { isAnythingDue, planAll, tendLessons } from './lesson-planning.ts';
import type { RosterRows } from './rosters.ts';

export function makeLessons(rows: RosterRows, write: Write, tzVersion: string): Lessons {
  return {
    // Asked at every look: a transaction is opened only when there is something to do.
    tend: async (now, limit) => (isAnythingDue(rows, now) ? write(() => tendLessons(rows, now, limit)) : 0),
    planLessons: (plan, now) => write(() => planAll(rows, plan, { now, tzVersion })),
    putLessons: (drafts, now) => write(() => putOrThrow(rows, drafts, { now, tzVersion })).catch(wrongOrThrow),
    rosters: async (since) =>
      rows.lessons.endingAfter(since).map((lesson) => ({ lesson, bookings: rows.bookings.ofLesson(lesson.id) })),
  };
}

/** Rolls a table back that is wrong anywhere. */
class Wrong extends Error {
  readonly lessons: readonly WrongLesson[];
  constructor(lessons: readonly WrongLesson[]) {
    super('a table of lessons is wrong');
    this.lessons = lessons;
  }
}

function putOrThrow(rows: RosterRows, drafts: readonly LessonDraft[], today: Today): readonly WrongLesson[] {
  const wrong = putAll(rows, drafts, today);
  if (wrong.length > 0) throw new Wrong(wrong);
  return wrong;
}

function wrongOrThrow(error: unknown): readonly WrongLesson[] {
  if (error instanceof Wrong) return error.lessons;
  throw error;
}
