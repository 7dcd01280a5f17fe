/** Bookings as a table, there and back: every booking of every lesson, in the order of the lists. */
import { mistake } from '../core/lessons/lesson.ts';
import type { Booking, Roster } from '../core/lessons/roster.ts';
import { cellsOf, type Cells } from './cells.ts';
import { readTable, writeTable, type LineMistake, type Row } from './csv.ts';

export const bookingColumns: readonly string[] = [
  'lesson',
  'booking',
  'person',
  'seats',
  'standing',
  'enrolled',
  'offered until',
  'answer',
  'came',
  'moves',
  'revision',
];

const standings = ['seated', 'waiting', 'offered', 'left'] as const;
const answers = ['', 'coming', 'absent'] as const;
const cames = ['', 'yes', 'no'] as const;

export interface BookingRow {
  readonly lesson: string;
  readonly booking: Booking;
}
export type ReadBookings = { readonly bookings: readonly BookingRow[] } | { readonly mistakes: readonly LineMistake[] };

/** A lesson's part of the roster is its id only: the lesson itself has a table of its own. */
export function writeBookings(
  rosters: readonly { readonly lesson: Pick<Roster['lesson'], 'id'>; readonly bookings: Roster['bookings'] }[],
): string {
  return writeTable(
    bookingColumns,
    rosters.flatMap(({ lesson, bookings }) => bookings.map((booking) => cellsOfBooking(lesson.id, booking))),
  );
}

function cellsOfBooking(lesson: string, booking: Booking): Row['cells'] {
  return {
    lesson,
    booking: booking.id,
    person: booking.person,
    seats: String(booking.seats),
    standing: booking.standing,
    enrolled: new Date(booking.enrolledAt).toISOString(),
    'offered until': booking.offerUntil === null ? '' : new Date(booking.offerUntil).toISOString(),
    answer: booking.answer ?? '',
    came: booking.came === null ? '' : booking.came ? 'yes' : 'no',
    moves: String(booking.moves),
    revision: String(booking.revision),
  };
}

export function readBookingTable(text: string): ReadBookings {
  const table = readTable(text, bookingColumns);
  if ('mistakes' in table) return table;
  const read = table.rows.map((row) => bookingOf(cellsOf(row)));
  const mistakes = read.flatMap((one) => one.mistakes);
  return mistakes.length > 0 ? { mistakes } : { bookings: read.map(({ lesson, booking }) => ({ lesson, booking })) };
}

function bookingOf(cells: Cells): BookingRow & { readonly mistakes: readonly LineMistake[] } {
  const enrolledAt = cells.instant('enrolled');
  if (enrolledAt === null) cells.blame(mistake('table-instant', 'enrolled', { words: '' }));
  const came = cells.oneOf('came', cames);
  const booking: Booking = {
    id: cells.id('booking'),
    person: cells.text('person'),
    seats: cells.whole('seats'),
    standing: cells.oneOf('standing', standings),
    enrolledAt: enrolledAt ?? 0,
    offerUntil: cells.instant('offered until'),
    answer: cells.oneOf('answer', answers) || null,
    came: came === '' ? null : came === 'yes',
    moves: cells.whole('moves'),
    revision: cells.whole('revision'),
  };
  if ((booking.offerUntil !== null) !== (booking.standing === 'offered')) {
    cells.blame(mistake('table-offer', 'offered until'));
  }
  return { lesson: cells.id('lesson'), booking, mistakes: cells.mistakes };
}
