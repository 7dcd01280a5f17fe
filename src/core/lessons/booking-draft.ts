/** A row of a table of bookings: someone the shop writes down, or a booking that is known. Judges it and changes nothing. */
import type { Instant, Mistake } from '../units.ts';
import { mistake } from './lesson.ts';
import { closedMistakes, seatsFree, type Booking, type Roster, type Standing } from './roster.ts';
import { lapseOffers } from './seats.ts';

export interface BookingDraft {
  /** Of a booking that is known; null for someone new. */
  readonly booking: KnownBooking | null;
  readonly lesson: string;
  readonly name: string;
  /** Null: there is no way to tell them anything but by word of mouth. */
  readonly mail: string | null;
  readonly seats: number;
  /** For someone new: `waiting` takes a place in the list when there are not seats enough. */
  readonly standing: Standing;
}

interface KnownBooking {
  readonly id: string;
  readonly revision: number;
}

/** Someone on the list, by what the shop wrote down. */
export interface Named {
  readonly name: string | null;
  readonly mail: string | null;
  readonly standing: Standing;
}

/** The address is that of who is told by mail. */
export interface NamedBooking extends Booking, Named {
  readonly lesson: string;
}

/** A lesson's list, also by name. */
export interface NamedRoster {
  readonly roster: Roster;
  readonly there: readonly Named[];
}

/** What hinders someone new; the number of seats is judged where they enrol. */
export function newcomerMistakes(
  { roster, there }: NamedRoster,
  draft: BookingDraft,
  now: Instant,
): readonly Mistake[] {
  const closed = closedMistakes(roster.lesson, now);
  if (closed.length > 0) return closed;
  const isThere = there.some((one) => one.standing !== 'left' && one.name === draft.name && one.mail === draft.mail);
  if (isThere) return [mistake('row-there', 'name', { name: draft.name })];
  const free = seatsFree(lapseOffers(roster, now).roster);
  if (draft.seats <= free || draft.seats > roster.lesson.seats) return [];
  if (draft.standing !== 'waiting') return [mistake('row-full', 'seats', { free })];
  // A seat that becomes free is offered for a stated time: who cannot be told would lose it unasked.
  return draft.mail === null ? [mistake('row-waits-untold', 'mail')] : [];
}

/**
 * A known booking stays what it is: a table may be older than what was done since. One that was edited in the table is
 * refused, since nobody would notice that it was not done.
 */
export function knownMistakes(kept: Booking, lesson: string, { booking, ...draft }: BookingDraft): readonly Mistake[] {
  if (kept.revision !== booking?.revision) return [];
  const isSame =
    lesson === draft.lesson && kept.seats === draft.seats && (kept.standing === 'left') === (draft.standing === 'left');
  return isSame ? [] : [mistake('row-edited', 'booking', { seats: kept.seats })];
}

export const noSuchLesson = (words: string): Mistake => mistake('row-no-lesson', 'lesson', { words });
export const noSuchBooking = (words: string): Mistake => mistake('row-unknown', 'booking', { words });
