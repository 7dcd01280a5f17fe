/** What was called off takes place after all. */
import { describe, expect, it, test } from 'vitest';
import { cancelLesson, moveLesson, type Lesson } from '../../../src/core/lessons/lesson.ts';
import { dueAt, replanReminders } from '../../../src/core/lessons/reminders.ts';
import { resumeLesson } from '../../../src/core/lessons/resuming.ts';
import { leaveUntil, type Roster, type Turn, type Turned } from '../../../src/core/lessons/roster.ts';
import { enrol, giveBack } from '../../../src/core/lessons/seats.ts';
import { bookingWith, denverAt, lessonWith } from './lesson-drafts.ts';

const now = denverAt('2026-12-01T10:00');
const hour = 3_600_000;

const done = (turn: Turn): Turned => {
  if ('mistakes' in turn) throw new Error(turn.mistakes.map((one) => one.code).join());
  return turn;
};
const codes = (turn: Turn): readonly string[] => ('mistakes' in turn ? turn.mistakes.map(({ code }) => code) : []);
const off = (lesson: Lesson): Lesson => {
  const planned = cancelLesson(lesson, { reason: 'snow', seen: lesson.revision }, now);
  if ('mistakes' in planned) throw new Error('not cancelled');
  return planned.lesson;
};
const standings = ({ bookings }: Roster): readonly string[] =>
  bookings.map(({ id, standing, offerUntil }) => `${id} ${standing}${offerUntil === null ? '' : ' until'}`);

const lesson = off(lessonWith({ seats: 2 }));

test('it stands as it was planned, with every change a calendar must carry, and no reason', () => {
  const { roster } = done(resumeLesson({ lesson, bookings: [] }, 1, now));
  expect(roster.lesson).toEqual({ ...lessonWith({ seats: 2 }), revision: 2, moves: 1 });
  const moved = moveLesson(lessonWith(), { starts: '2026-12-06T19:00', seen: 0 }, { now, tzVersion: '2025c' });
  if ('mistakes' in moved) throw new Error('not moved');
  const back = done(resumeLesson({ lesson: off(moved.lesson), bookings: [] }, 2, now)).roster.lesson;
  expect(back).toMatchObject({ status: 'moved', starts: '2026-12-06T19:00', moves: 2 });
});

it.each<[string, Lesson, number, string]>([
  ['one that takes place', lessonWith(), 0, 'lesson-not-cancelled'],
  ['one that would have begun', off(lessonWith({ starts: '2026-12-01T09:00', minutes: 120 })), 1, 'lesson-past'],
  ['one that has changed since it was shown', lesson, 0, 'lesson-changed-meanwhile'],
])('refuses %s', (_, one, seen, code) => {
  expect(codes(resumeLesson({ lesson: one, bookings: [] }, seen, now))).toEqual([code]);
});

describe('seats', () => {
  const roster: Roster = {
    lesson,
    bookings: [
      bookingWith({ id: 'a', person: 'a', answer: 'coming' }),
      bookingWith({ id: 'b', person: 'b', standing: 'offered', offerUntil: now - hour }),
      bookingWith({ id: 'c', person: 'c', standing: 'waiting' }),
      bookingWith({ id: 'd', person: 'd', standing: 'left' }),
    ],
  };

  it('stay whose they were; whether they come is asked anew, and who gave theirs back has none', () => {
    const turn = done(resumeLesson(roster, 1, now));
    expect(turn.roster.bookings[0]).toMatchObject({ standing: 'seated', answer: null });
    expect(standings(turn.roster)).toEqual(['a seated', 'b offered until', 'c waiting', 'd left']);
  });

  it('that were offered are offered to the same person again, with all their time', () => {
    const { roster: after, changes } = done(resumeLesson(roster, 1, now));
    expect(after.bookings[1]?.offerUntil).toBeGreaterThan(now);
    expect(changes).toEqual([{ booking: 'b', person: 'b', seats: 1, to: 'offered', why: 'freed' }]);
  });

  it('can be given back freely until it begins, for who booked before it was called off', () => {
    const { roster: after } = done(resumeLesson(roster, 1, now));
    expect(leaveUntil(after.lesson, after.bookings[0]!)).toBe(after.lesson.startsAt);
    const late = after.lesson.startsAt - hour;
    expect(standings(done(giveBack(after, 'a', late)).roster)[0]).toBe('a left');
    const newcomer = done(enrol({ ...after, bookings: [] }, { id: 'e', person: 'e', seats: 1 }, now)).roster;
    expect(leaveUntil(newcomer.lesson, newcomer.bookings[0]!)).toBeLessThan(after.lesson.startsAt);
  });
});

test('who was to be reminded is reminded anew of what is still to come, and of nothing that is past', () => {
  const booking = bookingWith();
  const before = replanReminders([], lessonWith(), booking, now);
  const withdrawn = replanReminders(before, lesson, booking, now);
  expect(new Set(withdrawn.map(({ state }) => state))).toEqual(new Set(['withdrawn']));
  const late = dueAt(lesson, 'evening-before') + hour;
  const { roster } = done(resumeLesson({ lesson, bookings: [booking] }, 1, late));
  const after = replanReminders(withdrawn, roster.lesson, roster.bookings[0]!, late);
  expect(after.map(({ purpose, state }) => `${purpose} ${state}`)).toEqual([
    'two-hours-before planned',
    'thanks planned',
  ]);
});
