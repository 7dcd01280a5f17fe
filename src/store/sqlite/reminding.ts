/** Rows of what someone is to be told by itself: planned, kept true, handed over when they fall due, taken back unsent. */
import {
  dueAt,
  dueReminders,
  isOfList,
  isOwed,
  listPurposes,
  ofList,
  purposes,
  replanReminders,
  sendableUntil,
  type ListPurpose,
  type Purpose,
  type Reminder,
} from '../../core/lessons/reminders.ts';
import type { Lesson } from '../../core/lessons/lesson.ts';
import { isUnheard, type Booking } from '../../core/lessons/roster.ts';
import { beginOffer } from '../../core/lessons/seats.ts';
import { lapsedTidings, offerTidings, reminderTidings, type Tidings } from '../../core/lessons/tidings.ts';
import type { Instant } from '../../core/units.ts';
import { reminderName, reminderParts } from './reminder-rows.ts';
import { nowhere, tell, type RosterRows } from './telling.ts';

interface Concern {
  readonly lesson: Lesson;
  readonly booking: Booking;
  readonly now: Instant;
}

/** Plans what one booking is told anew, and takes back what was handed over and is not true any more. */
export function remindAnew(all: RosterRows, { lesson, booking, now }: Concern): void {
  const { bookings, reminders, outbox } = all;
  if (bookings.of(booking.id)?.address.chat === nowhere) return;
  const rows = replanReminders(reminders.of(booking.id), lesson, booking, now);
  const person = Number(booking.person);
  const isStale = (purpose: Purpose): boolean =>
    !isOwed(purpose, lesson, booking) || rows.some((row) => row.purpose === purpose);
  const stale = [...purposes, ...listPurposes].filter(isStale);
  for (const purpose of stale) outbox.withdraw(person, reminderName(booking.id, purpose));
  for (const row of rows) reminders.put(row, person);
  if (rows.some(({ purpose, dueAt: due }) => isOfList(purpose) && due <= now)) remind(all, booking.id, now);
}

/** The lesson is not what it was: what the waiting list brought, and was not sent yet, is told as it is now. */
export function tellListAnew(rows: RosterRows, { id, person }: Booking, now: Instant): void {
  const names = listPurposes.map((purpose) => reminderName(id, purpose));
  for (const name of names.filter((one) => rows.outbox.overtake(Number(person), one, now))) {
    takeBack(rows, name);
    remind(rows, id, now);
  }
}

/** What the waiting list has just brought someone: told now, or when it may be. */
export function oweOfList(rows: RosterRows, purpose: ListPurpose, concern: Concern): void {
  const { lesson, booking, now } = concern;
  const row = ofList(purpose, lesson, booking, now);
  rows.reminders.put(row, Number(booking.person));
  const isTold = purpose === 'offer' && !isUnheard(booking);
  if (isTold) handOver(rows, row, concern);
  else if (row.dueAt <= now) remind(rows, booking.id, now);
}

export function remind(rows: RosterRows, id: string, now: Instant): void {
  const { bookings, lessons, reminders, outbox } = rows;
  const booked = bookings.of(id);
  const lesson = booked && lessons.of(booked.lesson);
  if (!lesson) throw new Error('a reminder is kept only as long as its booking');
  const { booking, person } = booked;
  const kept = reminders.of(id);
  const { send, settle } = dueReminders(kept, lesson, booking, now);
  for (const reminder of settle) reminders.put(reminder, person);
  if (!send) return;
  // An earlier one that could not be sent yet would only repeat this one.
  for (const earlier of kept.filter(({ state }) => state === 'sent')) {
    if (!outbox.overtake(person, reminderName(id, earlier.purpose), now)) continue;
    reminders.put({ ...earlier, state: 'overtaken' }, person);
  }
  // What the waiting list brings, and thanks, are no reminders.
  const isUnwanted = isBefore(send.purpose) && !reminders.wantedBy(person, send.purpose);
  if (isUnwanted) reminders.put({ ...send, state: 'withdrawn' }, person);
  else handOver(rows, send, { lesson, booking, now });
}

const isBefore = (purpose: Purpose): boolean => !isOfList(purpose) && purpose !== 'thanks';

function handOver(rows: RosterRows, reminder: Reminder, { lesson, booking, now }: Concern): void {
  const { purpose } = reminder;
  const person = Number(booking.person);
  rows.reminders.put({ ...reminder, state: 'sent' }, person);
  const told = purpose === 'offer' ? beginOffer(lesson, booking, now) : booking;
  if (told !== booking) rows.bookings.put(told);
  const name = reminderName(booking.id, purpose);
  const row = { name, until: sendableUntil(lesson, purpose, now), isReminder: !isOfList(purpose) };
  tell(rows, told, { tidings: tidingsOf(lesson, told, purpose), now, row });
  rows.reminders.goOn(name, person, isOfList(purpose) ? booking.enrolledAt : dueAt(lesson, purpose));
}

function tidingsOf(lesson: Lesson, booking: Booking, purpose: Purpose): Tidings {
  if (purpose === 'offer') return offerTidings(lesson, booking);
  return purpose === 'lapsed' ? lapsedTidings(lesson) : reminderTidings(lesson, booking, purpose);
}

/** What was handed over could not be sent in time: whether it is still of use is to be looked at anew. */
export function takeBack({ reminders, bookings }: RosterRows, name: string): void {
  const { booking: id, purpose } = reminderParts(name);
  reminders.takeBack(id, purpose);
  const booking = purpose === 'offer' ? bookings.of(id)?.booking : undefined;
  if (booking?.standing === 'offered') bookings.put({ ...booking, offerUntil: null });
}

/** True when someone has not heard yet that their time was up; they will not hear it any more. */
export function dropLapse({ reminders, outbox }: RosterRows, { id, person }: Booking, now: Instant): boolean {
  const row = reminders.of(id).find(({ purpose }) => purpose === 'lapsed');
  const isUnsent = row?.state === 'sent' && outbox.overtake(Number(person), reminderName(id, 'lapsed'), now);
  if (!row || (row.state !== 'planned' && !isUnsent)) return false;
  reminders.put({ ...row, state: 'withdrawn' }, Number(person));
  return true;
}
