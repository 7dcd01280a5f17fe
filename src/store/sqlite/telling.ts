/** How someone on a lesson's list is told something: where they booked, or by the shop where that is nowhere. */
import type { Booking } from '../../core/lessons/roster.ts';
import type { Tidings } from '../../core/lessons/tidings.ts';
import type { Instant } from '../../core/units.ts';
import type { BookingRows } from './booking-rows.ts';
import type { Claims } from './claims.ts';
import type { LessonRows } from './lesson-rows.ts';
import { notReached, type Outbox } from './outbox.ts';
import type { ReminderRows } from './reminder-rows.ts';
import type { Tasks } from './tasks.ts';

export interface RosterRows {
  readonly lessons: LessonRows;
  readonly bookings: BookingRows;
  readonly reminders: ReminderRows;
  readonly outbox: Outbox;
  readonly claims: Claims;
  readonly tasks: Tasks;
}

export interface Told {
  readonly tidings: Tidings;
  readonly now: Instant;
  /** Of what has a row of its own: a name, to be taken back by, and an end. */
  readonly row?: { readonly name: string; readonly until: Instant; readonly isReminder: boolean };
}

/** The chat of who left no address: the shop tells them itself, and gets a task for it. */
export const nowhere = '';

/** Where the booking was made, unless its person is forgotten. */
export function tell({ bookings, outbox, tasks }: RosterRows, { id }: Booking, { tidings, now, row }: Told): void {
  const booked = bookings.of(id);
  if (!booked) return;
  const { person, address } = booked;
  const about = { ...tidings.subject };
  if (address.chat === nowhere) {
    tasks.add({ person, task: 'undelivered', facts: { why: 'no address', about }, now });
    return;
  }
  const isReminder = row?.isReminder ?? false;
  // It waits for them to come back; the lesson may not.
  if (!isReminder && bookings.reachOfLesson(booked.lesson)(id) === 'none')
    tasks.add({ person, task: 'undelivered', facts: { why: notReached, about }, now });
  outbox.add({
    person,
    address,
    saying: row ? { ...tidings, later: { name: row.name, atMs: now } } : tidings,
    due: now,
    priority: isReminder ? 'reminder' : 'reply',
    lasting: !isReminder,
    until: row?.until ?? null,
  });
}
