/** Any lesson in any zone, any standstills, moves and changes of mind: what reaches the student stays sensible. */
import { isDeepStrictEqual } from 'node:util';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { addDays, isWallTime, zoneNamed } from '../../../src/core/lessons/calendar.ts';
import { cancelLesson, moveLesson, recomputeLesson, type Lesson } from '../../../src/core/lessons/lesson.ts';
import { isQuiet } from '../../../src/core/lessons/quiet.ts';
import {
  dueAt,
  dueReminders,
  isOfList,
  purposes,
  replanReminders,
  type Reminder,
} from '../../../src/core/lessons/reminders.ts';
import { bookingWith, lessonWith } from './lesson-drafts.ts';

const zones = Intl.supportedValuesOf('timeZone').filter((zone) => zoneNamed(zone) !== undefined);
const two = (n: number) => String(n).padStart(2, '0');
const walls = fc
  .record({ day: fc.nat({ max: 3650 }), hour: fc.nat({ max: 23 }), quarter: fc.nat({ max: 3 }) })
  .map(({ day, hour, quarter }) => `${addDays('2024-06-01', day)}T${two(hour)}:${two(quarter * 15)}`);
const lessons = fc
  .record({ zone: fc.constantFrom(...zones), starts: walls, minutes: fc.integer({ min: 15, max: 720 }) })
  .map((differences) => lessonWith(differences));

interface Sent {
  readonly purpose: string;
  readonly moves: number;
  readonly at: number;
}

/** Every reminder of the plan is at its place. */
function planFaults(lesson: Lesson, rows: readonly Reminder[], now: number): string[] {
  return rows
    .filter((one) => one.state === 'planned')
    .flatMap(({ purpose, dueAt: due }) => [
      ...(isQuiet(due, lesson.zone) ? [`${purpose} in quiet hours`] : []),
      ...(due <= now ? [`${purpose} in the past`] : []),
      ...(purpose !== 'thanks' && due > lesson.startsAt - 2 * 3_600_000 ? [`${purpose} too near the lesson`] : []),
      ...(purpose === 'thanks' && due < lesson.endsAt ? ['thanks before the end'] : []),
    ]);
}

it('planned: before the lesson, by day, in order, one a purpose', () => {
  fc.assert(
    fc.property(lessons, fc.integer({ min: -400, max: 24 * 20 }), (lesson, hoursBefore) => {
      const now = lesson.startsAt - hoursBefore * 3_600_000;
      const rows = replanReminders([], lesson, bookingWith(), now);
      expect(planFaults(lesson, rows, now)).toEqual([]);
      expect(new Set(rows.map((one) => one.purpose)).size).toBe(rows.length);
      const dues = rows.map((one) => one.dueAt);
      expect(dues).toEqual(dues.toSorted((a, b) => a - b));
      if (hoursBefore > 24 * 8) expect(rows.map((one) => one.purpose)).toEqual(purposes);
    }),
    { numRuns: 400 },
  );
});

const events = fc.array(
  fc.record({
    after: fc.oneof(fc.nat({ max: 90 }), fc.nat({ max: 60 * 24 * 10 })),
    what: fc.constantFrom('tick', 'tick', 'tick', 'tick', 'tick', 'move', 'cancel', 'leave', 'again'),
    by: fc.integer({ min: -10, max: 20 }),
  }),
  { maxLength: 40, size: 'max' },
);

it('lived through: never twice, never after the lesson, never by night while the morning is early enough', () => {
  const seen = { sent: 0, moves: 0, late: 0, overtaken: 0, withdrawn: 0 };
  fc.assert(
    fc.property(lessons, events, (start, happenings) => {
      let lesson = start;
      let booking = bookingWith();
      let now = lesson.startsAt - 12 * 86_400_000;
      const rows = new Map<string, Reminder>();
      const sent: Sent[] = [];
      const write = (changed: readonly Reminder[]) => changed.forEach((one) => rows.set(one.purpose, one));
      const replan = () => write(replanReminders([...rows.values()], lesson, booking, now));
      replan();

      for (const { after, what, by } of happenings) {
        now += after * 60_000;
        if (what === 'move') {
          const starts = `${addDays(lesson.starts.slice(0, 10), by)}T${lesson.starts.slice(11)}`;
          const turn = moveLesson(lesson, { starts, seen: lesson.revision }, { now, tzVersion: '2025c' });
          if ('lesson' in turn) seen.moves++;
          if ('lesson' in turn) lesson = turn.lesson;
          expect(isWallTime(lesson.starts)).toBe(true);
        }
        if (what === 'cancel' && by > 17) {
          const turn = cancelLesson(lesson, { reason: '', seen: lesson.revision }, now);
          if ('lesson' in turn) lesson = turn.lesson;
        }
        if (what === 'leave' && by > 17) booking = { ...booking, standing: 'left' };
        if (what !== 'tick') {
          replan();
          expect(replanReminders([...rows.values()], lesson, booking, now)).toEqual([]);
          continue;
        }
        const due = dueReminders([...rows.values()], lesson, booking, now);
        write(due.settle);
        if (!due.send) continue;
        const { purpose, moves } = due.send;
        write([{ ...due.send, state: 'sent' }]);
        sent.push({ purpose, moves, at: now });
        seen.sent++;
        expect(lesson.status === 'cancelled' || booking.standing === 'left').toBe(false);
        expect(purpose === 'thanks' ? now >= lesson.endsAt : now < lesson.startsAt).toBe(true);
        if (isQuiet(now, lesson.zone))
          expect(purpose !== 'thanks' && lesson.startsAt - now <= 12 * 3_600_000).toBe(true);
        // At most one is owed at a time: another tick at the same moment owes nothing.
        expect(dueReminders([...rows.values()], lesson, booking, now)).toEqual({ send: null, settle: [] });
      }

      const keys = sent.map((one) => `${one.purpose} ${one.moves}`);
      expect(new Set(keys).size).toBe(keys.length);
      expect(isDeepStrictEqual(JSON.parse(JSON.stringify([...rows.values()])), [...rows.values()])).toBe(true);
      for (const { state } of rows.values()) {
        if (state === 'too-late') seen.late++;
        if (state === 'overtaken') seen.overtaken++;
        if (state === 'withdrawn') seen.withdrawn++;
      }
    }),
    { numRuns: 250 },
  );
  expect(Math.min(...Object.values(seen))).toBeGreaterThan(2);
});

it('missed by nobody: whatever the standstill, who is back before the lesson sends the newest one due', () => {
  fc.assert(
    fc.property(lessons, fc.integer({ min: 1, max: 60 * 24 * 9 }), (lesson, minutesBefore) => {
      const rows = replanReminders([], lesson, bookingWith(), lesson.startsAt - 20 * 86_400_000);
      const back = lesson.startsAt - minutesBefore * 60_000;
      const overdue = rows.filter((one) => one.dueAt <= back);
      const { send, settle } = dueReminders(rows, lesson, bookingWith(), back);
      const held = settle.filter((one) => one.state === 'planned');
      expect([...(send ? [send] : []), ...held].map((one) => one.purpose)).toEqual(
        overdue.slice(-1).map((one) => one.purpose),
      );
      for (const one of held) expect(one.dueAt).toBeLessThan(lesson.startsAt);
      expect(settle.filter((one) => one.state === 'overtaken')).toHaveLength(Math.max(0, overdue.length - 1));
    }),
    { numRuns: 400 },
  );
});

it('under new time-zone rules what is to come is planned anew and nothing sent is sent again', () => {
  fc.assert(
    fc.property(lessons, fc.constantFrom(-1, 1), fc.integer({ min: -24, max: 24 * 9 }), (truth, shift, hoursBefore) => {
      const shiftMs = shift * 3_600_000;
      const old = { ...truth, startsAt: truth.startsAt + shiftMs, endsAt: truth.endsAt + shiftMs, tzVersion: 'old' };
      const now = truth.startsAt - hoursBefore * 3_600_000;
      const rows = replanReminders([], truth, bookingWith(), truth.startsAt - 20 * 86_400_000)
        .map((one) => ({ ...one, dueAt: one.dueAt + shiftMs }))
        .map((one) => (one.dueAt <= now ? { ...one, state: 'sent' as const } : one));
      const lesson = recomputeLesson(old, '2025c');
      expect(lesson).toEqual({ ...truth, tzVersion: '2025c', revision: 1 });
      const changed = replanReminders(rows, lesson, bookingWith(), now);
      const planned = rows.filter((one) => one.state === 'planned').map((one) => one.purpose);
      expect(changed.map((one) => one.purpose)).toEqual(planned);
      for (const one of changed) {
        const due = isOfList(one.purpose) ? null : dueAt(lesson, one.purpose);
        expect(one).toMatchObject({ state: 'planned', dueAt: due });
      }
    }),
    { numRuns: 300 },
  );
});
