/** Writes what came of a lesson's list: the rows that changed, the reminders that follow, and what others are told. */
import { purposes, replanReminders, type Purpose } from '../../core/lessons/reminders.ts';
import type { Booking, Roster, Turn, Turned } from '../../core/lessons/roster.ts';
import { lapsedTidings, offerTidings, type Tidings } from '../../core/lessons/tidings.ts';
import type { Instant } from '../../core/units.ts';
import type { Address } from '../contract.ts';
import type { BookingRows } from './booking-rows.ts';
import type { Claims } from './claims.ts';
import type { LessonRows } from './lesson-rows.ts';
import { notReached, type Outbox } from './outbox.ts';
import { reminderName, type ReminderRows } from './reminder-rows.ts';
import type { Tasks } from './tasks.ts';

export interface RosterRows {
  readonly lessons: LessonRows;
  readonly bookings: BookingRows;
  readonly reminders: ReminderRows;
  readonly outbox: Outbox;
  readonly claims: Claims;
  readonly tasks: Tasks;
}

export function rosterOf({ lessons, bookings }: RosterRows, id: string): Roster | undefined {
  const lesson = lessons.of(id);
  return lesson && { lesson, bookings: bookings.ofLesson(id) };
}

export interface Kept {
  readonly before: Roster;
  readonly now: Instant;
  /** Of a booking made just now. */
  readonly address?: Address;
}

/** False, and nothing written, when the core refused. */
export function keepTurn(rows: RosterRows, turn: Turn, kept: Kept): boolean {
  if ('mistakes' in turn) return false;
  keepRoster(rows, turn, kept);
  return true;
}

export function keepRoster(rows: RosterRows, { roster, changes }: Turned, { before, now, address }: Kept): void {
  const isNewLesson = roster.lesson !== before.lesson;
  if (isNewLesson) rows.lessons.put(roster.lesson);
  const old = new Map(before.bookings.map((booking) => [booking.id, booking]));
  const changed = roster.bookings.filter((booking) => isNewLesson || booking !== old.get(booking.id));
  for (const booking of changed) {
    if (!old.has(booking.id)) rows.bookings.add(roster.lesson.id, booking, requireAddress(address));
    else if (booking !== old.get(booking.id)) rows.bookings.put(booking);
    remindAnew(rows, roster, booking, now);
  }
  for (const { booking: id, why } of changes) {
    const booking = roster.bookings.find((one) => one.id === id);
    if (booking && why === 'freed') tell(rows, booking, { tidings: offerTidings(roster.lesson, booking), now });
    if (booking && why === 'lapsed') tell(rows, booking, { tidings: lapsedTidings(roster.lesson), now });
  }
}

/** Plans the reminders of one booking anew, and takes back what was handed over and is not true any more. */
function remindAnew(all: RosterRows, { lesson }: Roster, booking: Booking, now: Instant): void {
  const { bookings, reminders, outbox } = all;
  if (bookings.of(booking.id)?.address.chat === nowhere) return;
  const rows = replanReminders(reminders.of(booking.id), lesson, booking, now);
  const person = Number(booking.person);
  const stale = booking.standing !== 'seated' || lesson.status === 'cancelled' ? purposes : rows.map(purposeOf);
  for (const purpose of stale) outbox.withdraw(person, reminderName(booking.id, purpose));
  for (const row of rows) reminders.put(row, person);
}

const purposeOf = ({ purpose }: { readonly purpose: Purpose }): Purpose => purpose;

export interface Told {
  readonly tidings: Tidings;
  readonly now: Instant;
  /** A reminder has a name, to be taken back by, and an end. */
  readonly reminder?: { readonly name: string; readonly until: Instant };
}

/** The chat of who left no address: the shop tells them itself, and gets a task for it. */
export const nowhere = '';

/** Where the booking was made, unless its person is forgotten. */
export function tell({ bookings, outbox, tasks }: RosterRows, { id }: Booking, { tidings, now, reminder }: Told): void {
  const booked = bookings.of(id);
  if (!booked) return;
  const { person, address } = booked;
  const about = { ...tidings.subject };
  if (address.chat === nowhere) {
    tasks.add({ person, task: 'undelivered', facts: { why: 'no address', about }, now });
    return;
  }
  // It waits for them to come back; the lesson may not.
  if (!reminder && bookings.reachOfLesson(booked.lesson)(id) === 'none')
    tasks.add({ person, task: 'undelivered', facts: { why: notReached, about }, now });
  outbox.add({
    person,
    address,
    saying: reminder ? { ...tidings, later: { name: reminder.name, atMs: now } } : tidings,
    due: now,
    priority: reminder ? 'reminder' : 'reply',
    lasting: !reminder,
    until: reminder?.until ?? null,
  });
}

function requireAddress(address: Address | undefined): Address {
  if (!address) throw new Error('a booking is only ever made with where its person is told of it');
  return address;
}
