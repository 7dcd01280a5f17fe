/** The lessons' part of the contract. */
import type { Lessons, WrongRow } from '../lesson-contract.ts';
import type { Write } from './commits.ts';
import { putBookings, type GuestRows } from './booking-keeping.ts';
import { putAll } from './lesson-keeping.ts';
import { isAnythingDue, planAll, tendLessons } from './lesson-planning.ts';
import type { RosterRows } from './telling.ts';

export function makeLessons(rows: RosterRows & GuestRows, write: Write, tzVersion: string): Lessons {
  return {
    // Asked at every look: a transaction is opened only when there is something to do.
    tend: async (now, limit) => (isAnythingDue(rows, now) ? write(() => tendLessons(rows, now, limit)) : 0),
    planLessons: (plan, now) => write(() => planAll(rows, plan, { now, tzVersion })),
    putLessons: (drafts, now) =>
      write(() => rightOrThrow(putAll(rows, drafts, { now, tzVersion }))).catch(wrongOrThrow),
    rosters: async (since) =>
      rows.lessons.endingAfter(since).map((lesson) => ({ lesson, bookings: rows.bookings.ofLesson(lesson.id) })),
    bookings: async (since) => rows.lessons.endingAfter(since).flatMap(({ id }) => rows.bookings.namedOfLesson(id)),
    putBookings: (drafts, language, now) =>
      write(() => rightOrThrow(putBookings(rows, drafts, { language, now }))).catch(wrongOrThrow),
  };
}

/** Rolls a table back that is wrong anywhere. */
class Wrong extends Error {
  readonly rows: readonly WrongRow[];
  constructor(rows: readonly WrongRow[]) {
    super('a table is wrong');
    this.rows = rows;
  }
}

function rightOrThrow(wrong: readonly WrongRow[]): readonly WrongRow[] {
  if (wrong.length > 0) throw new Wrong(wrong);
  return wrong;
}

function wrongOrThrow(error: unknown): readonly WrongRow[] {
  if (error instanceof Wrong) return error.rows;
  throw error;
}
