import { describe, expect, it } from 'vitest';
import { cancelLesson, moveLesson, recomputeLesson, type Lesson } from '../../../src/core/lessons/lesson.ts';
import {
  dueReminders,
  replanReminders,
  sendableUntil,
  type Purpose,
  type Reminder,
} from '../../../src/core/lessons/reminders.ts';
import { wallAt } from '../../../src/core/lessons/calendar.ts';
import { bookingWith, denver, denverAt, lessonWith } from './lesson-drafts.ts';

const booking = bookingWith();
const early = denverAt('2026-11-01T10:00');
const shown = (rows: readonly Reminder[]) =>
  rows.map((one) => `${one.purpose} ${wallAt(one.dueAt, denver)} ${one.state}`);
const planned = (lesson: Lesson, now: number) => shown(replanReminders([], lesson, booking, now));
const moved = (lesson: Lesson, starts: string, now: number): Lesson => {
  const turn = moveLesson(lesson, { starts, seen: lesson.revision }, { now, tzVersion: '2025c' });
  if ('mistakes' in turn) throw new Error('not moved');
  return turn.lesson;
};
/** The kept rows with the written ones in their places. */
const written = (kept: readonly Reminder[], rows: readonly Reminder[]): readonly Reminder[] => [
  ...kept.filter((one) => !rows.some((row) => row.purpose === one.purpose)),
  ...rows,
];

describe('reminders of a booking', () => {
  it.each([
    ['an evening lesson', '2026-12-05T19:00', ['11-28T19:00', '12-04T18:00', '12-05T17:00', '12-05T20:45']],
    ['an afternoon lesson', '2026-12-05T14:00', ['11-28T14:00', '12-04T18:00', '12-05T12:00', '12-05T15:45']],
    [
      'a morning lesson: two hours before is night',
      '2026-12-05T09:30',
      ['11-28T09:30', '12-04T18:00', '12-04T20:45', '12-05T11:15'],
    ],
    [
      'at ten sharp two hours before is day',
      '2026-12-05T10:00',
      ['11-28T10:00', '12-04T18:00', '12-05T08:00', '12-05T11:45'],
    ],
    ['a late lesson', '2026-12-05T23:00', ['11-28T20:45', '12-04T18:00', '12-05T20:45', '12-06T08:00']],
    ['a lesson after midnight', '2026-12-05T00:30', ['11-27T20:45', '12-04T18:00', '12-04T20:45', '12-05T08:00']],
    [
      'across spring: a week before is the same wall time',
      '2027-03-20T19:00',
      ['03-13T19:00', '03-19T18:00', '03-20T17:00', '03-20T20:45'],
    ],
    [
      'two hours before are two hours of time',
      '2027-03-14T11:00',
      ['03-07T11:00', '03-13T18:00', '03-14T09:00', '03-14T12:45'],
    ],
  ])('%s', (_, starts, due) => {
    const purposes = ['week-before', 'evening-before', 'two-hours-before', 'thanks'];
    const year = starts.slice(0, 4);
    expect(planned(lessonWith({ starts }), early)).toEqual(
      due.map((wall, n) => `${purposes[n]} ${year}-${wall} planned`),
    );
  });

  it.each([
    ['2026-11-28T18:59', ['week-before', 'evening-before', 'two-hours-before', 'thanks']],
    ['2026-11-28T19:00', ['evening-before', 'two-hours-before', 'thanks']],
    ['2026-12-04T17:59', ['evening-before', 'two-hours-before', 'thanks']],
    ['2026-12-04T18:00', ['two-hours-before', 'thanks']],
    ['2026-12-05T18:00', ['thanks']],
  ])('enrolled at %s has only those to come', (wall, purposes) => {
    expect(replanReminders([], lessonWith(), booking, denverAt(wall)).map((one) => one.purpose)).toEqual(purposes);
  });

  it.each(['waiting', 'offered', 'left'] as const)('who is %s has none', (standing) => {
    expect(replanReminders([], lessonWith(), bookingWith({ standing }), early)).toEqual([]);
  });

  it('writes nothing when asked a second time', () => {
    const rows = replanReminders([], lessonWith(), booking, early);
    expect(replanReminders(rows, lessonWith(), booking, early)).toEqual([]);
    expect(replanReminders(rows, lessonWith(), booking, denverAt('2026-12-05T18:00'))).toEqual([]);
    expect(JSON.parse(JSON.stringify(rows))).toEqual(rows);
  });
});

describe('when the lesson changes', () => {
  const lesson = lessonWith();
  const rows = replanReminders([], lesson, booking, early).map((one) =>
    one.purpose === 'week-before' ? { ...one, state: 'sent' as const } : one,
  );
  const now = denverAt('2026-12-02T10:00');

  it('a move plans anew, what was sent for the old time too', () => {
    expect(shown(replanReminders(rows, moved(lesson, '2026-12-19T18:00', now), booking, now))).toEqual([
      'week-before 2026-12-12T18:00 planned',
      'evening-before 2026-12-18T18:00 planned',
      'two-hours-before 2026-12-19T16:00 planned',
      'thanks 2026-12-19T19:45 planned',
    ]);
  });

  it('a move nearer withdraws what would be past', () => {
    const sooner = moved(lesson, '2026-12-02T13:00', now);
    expect(shown(replanReminders(rows, sooner, booking, now))).toEqual([
      'evening-before 2026-12-04T18:00 withdrawn',
      'two-hours-before 2026-12-02T11:00 planned',
      'thanks 2026-12-02T14:45 planned',
    ]);
  });

  it('a cancellation, or leaving, withdraws all that is pending', () => {
    const gone = cancelLesson(lesson, { reason: 'snow', seen: 0 }, now);
    if ('mistakes' in gone) throw new Error('not cancelled');
    const withdrawn = rows.slice(1).map((one) => ({ ...one, state: 'withdrawn' }));
    expect(replanReminders(rows, gone.lesson, booking, now)).toEqual(withdrawn);
    expect(replanReminders(rows, lesson, bookingWith({ standing: 'left' }), now)).toEqual(withdrawn);
    expect(
      replanReminders(written(rows, replanReminders(rows, gone.lesson, booking, now)), gone.lesson, booking, now),
    ).toEqual([]);
  });

  it('new time-zone rules shift what is to come and repeat nothing that was sent', () => {
    const oldRules = { ...lesson, startsAt: lesson.startsAt + 3_600_000, endsAt: lesson.endsAt + 3_600_000 };
    const kept = rows.map((one) => ({ ...one, dueAt: one.dueAt + 3_600_000 }));
    expect(shown(replanReminders(kept, recomputeLesson(oldRules, '2026f'), booking, now))).toEqual([
      'evening-before 2026-12-04T18:00 planned',
      'two-hours-before 2026-12-05T17:00 planned',
      'thanks 2026-12-05T20:45 planned',
    ]);
  });

  it('new time-zone rules that make one overdue leave it owed', () => {
    const kept = rows.map((one) => ({ ...one, dueAt: one.dueAt + 3_600_000 }));
    const between = denverAt('2026-12-04T18:30');
    expect(shown(replanReminders(kept, lesson, booking, between))).toContain('evening-before 2026-12-04T18:00 planned');
  });
});

describe('what is owed', () => {
  const lesson = lessonWith();
  const rows = replanReminders([], lesson, booking, early);
  const owed = (wall: string, differences = {}) => {
    const due = dueReminders(rows, lesson, bookingWith(differences), denverAt(wall));
    return [due.send?.purpose ?? null, due.settle.map((one) => `${one.purpose} ${one.state}`)];
  };

  it.each<[string, string | null, string[]]>([
    ['2026-11-28T18:59', null, []],
    ['2026-11-28T19:00', 'week-before', []],
    // After a standstill one reminder, the newest; the others are recorded.
    ['2026-12-04T19:00', 'evening-before', ['week-before overtaken']],
    ['2026-12-05T18:59', 'two-hours-before', ['week-before overtaken', 'evening-before overtaken']],
    ['2026-12-05T19:00', null, ['week-before too-late', 'evening-before too-late', 'two-hours-before too-late']],
    ['2026-12-05T20:45', 'thanks', ['week-before too-late', 'evening-before too-late', 'two-hours-before too-late']],
    [
      '2026-12-13T20:30',
      null,
      ['week-before too-late', 'evening-before too-late', 'two-hours-before too-late', 'thanks too-late'],
    ],
  ])('at %s: %s', (wall, send, settle) => {
    expect(owed(wall)).toEqual([send, settle]);
  });

  it('is not sent at night, unless the lesson comes before the morning', () => {
    const back = denverAt('2026-12-05T03:00');
    const held = dueReminders(rows, lesson, booking, back);
    expect(held.send).toBeNull();
    expect(shown(held.settle)).toEqual([
      'week-before 2026-11-28T19:00 overtaken',
      'evening-before 2026-12-05T08:00 planned',
    ]);
    const morning = dueReminders(written(rows, held.settle), lesson, booking, denverAt('2026-12-05T08:00'));
    expect(morning.send?.purpose).toBe('evening-before');

    const dawn = lessonWith({ starts: '2026-12-05T07:00' });
    const atDawn = dueReminders(replanReminders([], dawn, booking, early), dawn, booking, back);
    expect(atDawn.send?.purpose).toBe('two-hours-before');
  });

  it.each<[string, string, string | null, string]>([
    // The lesson ends at 23:30, so that thanks are of use until 23:30 three days later.
    ['the next night', '2026-12-07T22:00', null, '2026-12-08T08:00'],
    ['in the last night, when the morning is too late', '2026-12-08T22:00', null, '2026-12-09T08:00'],
    ['in the last evening', '2026-12-08T20:59', 'thanks', ''],
  ])('thanks never wake anyone: %s', (_, wall, send, until) => {
    const late = lessonWith({ starts: '2026-12-05T22:00' });
    const thanks = replanReminders([], late, booking, early).filter(({ purpose }) => purpose === 'thanks');
    const due = dueReminders(thanks, late, booking, denverAt(wall));
    expect(due.send?.purpose ?? null).toBe(send);
    expect(shown(due.settle)).toEqual(send ? [] : [`thanks ${until} planned`]);
    const after = dueReminders(due.settle, late, booking, denverAt('2026-12-09T08:00'));
    expect([after.send, after.settle.map(({ state }) => state)]).toEqual([null, send ? [] : ['too-late']]);
  });

  it.each<[string, string, Purpose, string, string]>([
    ['by day until nightfall', '2026-12-05T19:00', 'evening-before', '2026-12-04T18:00', '2026-12-04T21:00'],
    ['on to the lesson of the day', '2026-12-05T19:00', 'two-hours-before', '2026-12-05T17:00', '2026-12-05T19:00'],
    ['to a lesson in the evening', '2026-12-05T22:00', 'two-hours-before', '2026-12-05T20:00', '2026-12-05T22:00'],
    ['through the night to one at dawn', '2026-12-05T07:00', 'evening-before', '2026-12-04T18:00', '2026-12-05T07:00'],
    ['by night to one at dawn', '2026-12-05T07:00', 'evening-before', '2026-12-05T03:00', '2026-12-05T07:00'],
    ['at eight the night is over', '2026-12-05T08:00', 'evening-before', '2026-12-04T18:00', '2026-12-05T08:00'],
    ['thanks in the last night', '2026-12-05T22:00', 'thanks', '2026-12-08T20:00', '2026-12-08T21:00'],
    ['thanks in the last hour', '2026-12-05T14:00', 'thanks', '2026-12-08T15:00', '2026-12-08T15:30'],
    ['thanks of the evening', '2026-12-05T19:00', 'thanks', '2026-12-05T20:45', '2026-12-05T21:00'],
  ])('may be tried %s', (_, starts, purpose, now, until) => {
    expect(wallAt(sendableUntil(lessonWith({ starts }), purpose, denverAt(now)), denver)).toBe(until);
  });

  it('is nothing to who left in between, and no thanks to who stayed away', () => {
    expect(owed('2026-11-28T19:00', { standing: 'left' })).toEqual([null, ['week-before withdrawn']]);
    const sent = rows.map((one) => (one.purpose === 'thanks' ? one : { ...one, state: 'sent' as const }));
    const after = denverAt('2026-12-06T08:00');
    expect(dueReminders(sent, lesson, bookingWith({ came: false }), after).send).toBeNull();
    expect(dueReminders(sent, lesson, bookingWith({ came: true }), after).send?.purpose).toBe('thanks');
  });
});
