import { describe, expect, it } from 'vitest';
import {
  cancelLesson,
  moveLesson,
  planLesson,
  recomputeLesson,
  statusAt,
  type LessonDraft,
  type Planned,
} from '../../../src/core/lessons/lesson.ts';
import { denverAt, draft, lessonWith } from './lesson-drafts.ts';

const today = { now: denverAt('2026-12-01T10:00'), tzVersion: '2025c' };
const codesOf = (planned: Planned) => ('mistakes' in planned ? planned.mistakes.map((one) => one.code) : []);
const done = (planned: Planned) => {
  if ('mistakes' in planned) throw new Error(codesOf(planned).join());
  return planned.lesson;
};

describe('a lesson', () => {
  it('is planned with its instants', () => {
    const lesson = done(planLesson(draft, today));
    expect(lesson).toEqual({
      ...draft,
      startsAt: Date.UTC(2026, 11, 6, 2),
      endsAt: Date.UTC(2026, 11, 6, 3, 30),
      tzVersion: '2025c',
      status: 'planned',
      reason: '',
      revision: 0,
      moves: 0,
    });
    expect(JSON.parse(JSON.stringify(lesson))).toEqual(lesson);
  });

  it.each<[string, Partial<LessonDraft>, string[]]>([
    ['in the past', { starts: '2026-12-01T09:59' }, ['lesson-past']],
    ['at this very moment', { starts: '2026-12-01T10:00' }, ['lesson-past']],
    ['no seats', { seats: 0 }, ['lesson-seats']],
    ['10,000 seats', { seats: 10_000 }, ['lesson-seats']],
    ['half a seat', { seats: 2.5 }, ['lesson-seats']],
    ['not a number of seats', { seats: Number.NaN }, ['lesson-seats']],
    ['no time', { minutes: 0 }, ['lesson-minutes']],
    ['less than no time', { minutes: -60 }, ['lesson-minutes']],
    ['a day and a half', { minutes: 2160 }, ['lesson-minutes']],
    ['no such zone', { zone: 'Mars/Base' }, ['lesson-zone-unknown']],
    ['an offset for a zone', { zone: '-07:00' }, ['lesson-zone-unknown']],
    ['no such day', { starts: '2027-02-30T19:00' }, ['lesson-time-unreadable']],
    ['an hour that does not exist', { starts: '2027-03-14T02:30' }, ['lesson-hour-never']],
    ['an hour that exists twice', { starts: '2027-11-07T01:30' }, ['lesson-hour-twice']],
    ['a title missing in one language', { title: { ...draft.title, 'zh-Hans': ' ' } }, ['lesson-title-missing']],
    ['two mistakes, told at once', { seats: 0, zone: 'Mars/Base' }, ['lesson-seats', 'lesson-zone-unknown']],
  ])('is refused with %s', (_, differences, codes) => {
    expect(codesOf(planLesson({ ...draft, ...differences }, today))).toEqual(codes);
  });

  it('moves, and says so to calendars', () => {
    const moved = done(moveLesson(lessonWith(), { starts: '2026-12-06T18:00', minutes: 60, seen: 0 }, today));
    expect(moved).toMatchObject({ status: 'moved', revision: 1, moves: 1, startsAt: denverAt('2026-12-06T18:00') });
    expect(moved.endsAt - moved.startsAt).toBe(3_600_000);
    expect(moved.id).toBe(draft.id);
  });

  it('is moved by one of two who move it at once', () => {
    const first = done(moveLesson(lessonWith(), { starts: '2026-12-06T18:00', seen: 0 }, today));
    expect(codesOf(moveLesson(first, { starts: '2026-12-07T18:00', seen: 0 }, today))).toEqual([
      'lesson-changed-meanwhile',
    ]);
  });

  it('is not moved into the past, into a missing hour, or when it is over', () => {
    const lesson = lessonWith();
    expect(codesOf(moveLesson(lesson, { starts: '2026-11-30T19:00', seen: 0 }, today))).toEqual(['lesson-past']);
    expect(codesOf(moveLesson(lesson, { starts: '2027-03-14T02:30', seen: 0 }, today))).toEqual(['lesson-hour-never']);
    const after = { ...today, now: lesson.endsAt };
    expect(codesOf(moveLesson(lesson, { starts: '2026-12-07T18:00', seen: 0 }, after))).toEqual(['lesson-over']);
  });

  it('is cancelled once, with a reason', () => {
    const gone = done(cancelLesson(lessonWith(), { reason: 'snow on the pass', seen: 0 }, today.now));
    expect(gone).toMatchObject({ status: 'cancelled', reason: 'snow on the pass', revision: 1, moves: 0 });
    expect(codesOf(cancelLesson(gone, { reason: 'again', seen: 1 }, today.now))).toEqual(['lesson-cancelled']);
    expect(codesOf(moveLesson(gone, { starts: '2026-12-07T18:00', seen: 1 }, today))).toEqual(['lesson-cancelled']);
  });

  it('is over when it ends, unless it was cancelled', () => {
    const lesson = lessonWith();
    expect(statusAt(lesson, lesson.endsAt - 1)).toBe('planned');
    expect(statusAt(lesson, lesson.endsAt)).toBe('over');
    expect(statusAt({ ...lesson, status: 'cancelled' }, lesson.endsAt)).toBe('cancelled');
  });
});

describe('new time-zone rules', () => {
  it('leave a lesson alone that they do not touch, but for the version', () => {
    const lesson = lessonWith();
    expect(recomputeLesson(lesson, '2025c')).toBe(lesson);
    expect(recomputeLesson(lesson, '2026f')).toEqual({ ...lesson, tzVersion: '2026f' });
  });

  it('keep the wall time and move the instant, which is no move of the lesson', () => {
    const stored = {
      ...lessonWith(),
      startsAt: lessonWith().startsAt + 3_600_000,
      endsAt: lessonWith().endsAt + 3_600_000,
    };
    expect(recomputeLesson(stored, '2026f')).toEqual({ ...lessonWith(), tzVersion: '2026f', revision: 1 });
  });
});
