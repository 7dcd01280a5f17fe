/** Undoes what the shop gave back for someone: their seat, if nobody has it yet, or their place among those who wait. */
import type { Instant } from '../units.ts';
import { mistake } from './lesson.ts';
import { closedMistakes, seatsFree, type Booking, type Roster, type Turn } from './roster.ts';
import { enrol, lapseOffers } from './seats.ts';

export interface PutBack {
  readonly booking: string;
  /** The id of a new booking: one that was given back is reminded of nothing. */
  readonly id: string;
  readonly to: 'seated' | 'waiting';
}

export function putBack(roster: Roster, { booking: old, id, to }: PutBack, now: Instant): Turn {
  const gone = roster.bookings.find((one) => one.id === old);
  if (gone === undefined) return { mistakes: [mistake('booking-unknown', 'booking')] };
  const mistakes = closedMistakes(roster.lesson, now);
  if (mistakes.length > 0) return { mistakes };
  const isThere = roster.bookings.some(({ person, standing }) => person === gone.person && standing !== 'left');
  if (isThere) return { mistakes: [mistake('already-back', 'booking')] };
  if (to === 'waiting') return waitingAgain(roster, gone, now);
  const free = seatsFree(lapseOffers(roster, now).roster);
  if (free < gone.seats) return { mistakes: [mistake('full', 'seats', { free })] };
  return enrol(roster, { id, person: gone.person, seats: gone.seats }, now);
}

/** In the place they had; where a seat is free for them, it is offered. */
function waitingAgain(roster: Roster, gone: Booking, now: Instant): Turn {
  const back: Booking = { ...gone, standing: 'waiting', revision: gone.revision + 1 };
  const bookings = roster.bookings.map((one) => (one.id === gone.id ? back : one));
  const { id, person, seats, standing } = back;
  const turned = lapseOffers({ ...roster, bookings }, now);
  return { ...turned, changes: [{ booking: id, person, seats, to: standing, why: 'enrolled' }, ...turned.changes] };
}
