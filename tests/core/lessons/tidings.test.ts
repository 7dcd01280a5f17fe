import { describe, expect, it } from 'vitest';
import { cancelLesson, moveLesson, recomputeLesson } from '../../../src/core/lessons/lesson.ts';
import { calendarEntry } from '../../../src/core/lessons/tidings.ts';
import { bookingWith, denverAt, lessonWith } from './lesson-drafts.ts';

describe('a booking in the calendar of a student', () => {
  const now = denverAt('2026-12-01T10:00');

  it('keeps its name and raises its sequence through every change', () => {
    const lesson = lessonWith();
    const today = { now, tzVersion: '2026f' };
    const shifted = recomputeLesson({ ...lesson, startsAt: lesson.startsAt - 3_600_000 }, '2026f');
    const moved = moveLesson(shifted, { starts: '2026-12-06T19:00', seen: shifted.revision }, today);
    if ('mistakes' in moved) throw new Error('not moved');
    const gone = cancelLesson(moved.lesson, { reason: 'snow', seen: moved.lesson.revision }, now);
    if ('mistakes' in gone) throw new Error('not cancelled');
    const entries = [
      calendarEntry(lesson, bookingWith()),
      calendarEntry(lesson, bookingWith({ seats: 2, revision: 1 })),
      calendarEntry(shifted, bookingWith({ seats: 2, revision: 1 })),
      calendarEntry(moved.lesson, bookingWith({ seats: 2, revision: 1 })),
      calendarEntry(gone.lesson, bookingWith({ seats: 2, revision: 1 })),
    ];
    expect(entries.map(({ booking }) => booking)).toEqual(entries.map(() => 'b1'));
    expect(entries.map(({ sequence }) => sequence)).toEqual([0, 1, 2, 3, 4]);
    expect(entries.map(({ cancelled }) => cancelled)).toEqual([false, false, false, false, true]);
  });

  it('is cancelled for who left', () => {
    const left = calendarEntry(lessonWith(), bookingWith({ standing: 'left', revision: 1 }));
    expect(left).toMatchObject({ cancelled: true, sequence: 1 });
  });
});
