/** Writes what came of a lesson's list: the rows that changed, the reminders that follow, and what others are told. */
import type { Booking, Change, Roster, Turn, Turned } from '../../core/lessons/roster.ts';
import type { Instant } from '../../core/units.ts';
import type { Address } from '../contract.ts';
import { dropLapse, oweOfList, remindAnew, tellListAnew } from './reminding.ts';
import type { RosterRows } from './telling.ts';

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
    remindAnew(rows, { lesson: roster.lesson, booking, now });
    if (isNewLesson) tellListAnew(rows, booking, now);
  }
  for (const change of changes) tellOf(rows, roster, change, now);
}

/** What one change is to others, or ends. */
function tellOf(rows: RosterRows, { lesson, bookings }: Roster, { booking: id, why }: Change, now: Instant): void {
  const booking = bookings.find((one) => one.id === id);
  if (!booking) return;
  if (why === 'freed' && booking.standing === 'offered') oweOfList(rows, 'offer', { lesson, booking, now });
  if (why === 'lapsed') oweOfList(rows, 'lapsed', { lesson, booking, now });
  // Back on the list, they need not hear that they left it.
  if (why === 'enrolled') for (const earlier of othersOf(bookings, booking)) dropLapse(rows, earlier, now);
}

const othersOf = (bookings: readonly Booking[], { id, person }: Booking): readonly Booking[] =>
  bookings.filter((one) => one.person === person && one.id !== id);

function requireAddress(address: Address | undefined): Address {
  if (!address) throw new Error('a booking is only ever made with where its person is told of it');
  return address;
}
