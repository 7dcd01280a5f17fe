/** Bookings as a table, there and back: every booking of every lesson, in the order of the lists, and by name. */
import type { BookingDraft, NamedBooking } from '../core/lessons/booking-draft.ts';
import { mistake } from '../core/lessons/lesson.ts';
import { longestName, plainAddress } from '../core/lessons/mail-guest.ts';
import { cellsOf, type Cells } from './cells.ts';
import { readTable, writeTable, type LineMistake, type Row, type Table } from './csv.ts';
import { readRows, writeRows } from './yaml-table.ts';

/** What someone who is new needs … */
const needed = ['lesson', 'name', 'mail', 'seats'] as const;
/** … and what the house adds. All but `standing` is empty for someone new. */
const added = ['standing', 'booking', 'enrolled', 'offered until', 'answer', 'came', 'moves', 'revision'] as const;
export const bookingColumns: readonly string[] = [...needed, ...added];

const standings = ['seated', 'waiting', 'offered', 'left'] as const;

export type ReadBookings =
  | { readonly drafts: readonly BookingDraft[]; readonly lines: readonly number[] }
  | { readonly mistakes: readonly LineMistake[] };

export function writeBookings(bookings: readonly NamedBooking[]): string {
  return writeTable(bookingColumns, bookings.map(cellsOfBooking));
}

/** The same, as a list in YAML; what is empty is not written. */
export function writeBookingYaml(bookings: readonly NamedBooking[]): string {
  return writeRows(bookings.map(cellsOfBooking));
}

function cellsOfBooking(booking: NamedBooking): Row['cells'] {
  return {
    lesson: booking.lesson,
    name: booking.name ?? '',
    mail: booking.mail ?? '',
    seats: String(booking.seats),
    standing: booking.standing,
    booking: booking.id,
    enrolled: new Date(booking.enrolledAt).toISOString(),
    'offered until': booking.offerUntil === null ? '' : new Date(booking.offerUntil).toISOString(),
    answer: booking.answer ?? '',
    came: booking.came === null ? '' : booking.came ? 'yes' : 'no',
    moves: String(booking.moves),
    revision: String(booking.revision),
  };
}

export function readBookingTable(text: string): ReadBookings {
  return draftsOf(readTable(text, needed, added));
}

export function readBookingYaml(text: string): ReadBookings {
  return draftsOf(readRows(text, { plain: [...needed, ...added] }));
}

function draftsOf(table: Table): ReadBookings {
  if ('mistakes' in table) return table;
  const read = table.rows.map((row) => ({ cells: cellsOf(row), line: row.line }));
  const drafts = read.map(({ cells }) => draftOf(cells));
  const mistakes = read.flatMap(({ cells }) => cells.mistakes);
  return mistakes.length > 0 ? { mistakes } : { drafts, lines: read.map(({ line }) => line) };
}

/** Of a known booking only what the house may not overlook is read: what it became since, it knows better. */
function draftOf(cells: Cells): BookingDraft {
  const isNew = cells.text('booking') === '';
  const draft = { lesson: cells.id('lesson'), seats: cells.whole('seats') };
  if (isNew) return { ...draft, ...newcomerOf(cells), booking: null };
  return {
    ...draft,
    booking: { id: cells.id('booking'), revision: cells.whole('revision') },
    name: cells.text('name'),
    mail: cells.text('mail') || null,
    standing: cells.oneOf('standing', standings),
  };
}

function newcomerOf(cells: Cells): Pick<BookingDraft, 'name' | 'mail' | 'standing'> {
  for (const column of added.filter((one) => one !== 'standing' && cells.text(one) !== '')) {
    cells.blame(mistake('row-new', column));
  }
  return {
    name: nameOf(cells),
    mail: mailOf(cells),
    standing: cells.text('standing') === '' ? 'seated' : cells.oneOf('standing', ['seated', 'waiting']),
  };
}

function nameOf(cells: Cells): string {
  const name = cells.text('name');
  if (name === '') cells.blame(mistake('row-nameless', 'name'));
  if (name.length > longestName) cells.blame(mistake('guest-name-long', 'name', { most: longestName }));
  return name;
}

function mailOf(cells: Cells): string | null {
  const words = cells.text('mail');
  const mail = words === '' ? null : plainAddress(words);
  if (words !== '' && mail === null) cells.blame(mistake('row-mail', 'mail', { words }));
  return mail;
}
