/**
 * Seats: who gets one, who waits, to whom a freed one is offered. Every function takes a roster and gives a new one and
 * what changed; it never has more seats taken than the lesson has. Tells nobody, and keeps nothing between calls.
 *
 * A freed seat goes to the first on the list whose party fits; a party too large for it keeps its place.
 */
import type { Instant, Mistake } from '../units.ts';
import { wallAt } from './calendar.ts';
import { mistake, mostSeats, type Lesson, type Refused } from './lesson.ts';
import { afterWakingMinutes, tellableAt } from './quiet.ts';
import {
  bookingOf,
  closedMistakes,
  leaveUntil,
  seatsFree,
  seatsTaken,
  waitingList,
  type Booking,
  type Change,
  type Roster,
  type Turn,
  type Turned,
  type Why,
} from './roster.ts';

export interface Wish {
  /** The id the booking shall have. */
  readonly id: string;
  readonly person: string;
  readonly seats: number;
}

export function enrol(roster: Roster, wish: Wish, now: Instant): Turn {
  const mistakes = [...closedMistakes(roster.lesson, now), ...wishMistakes(roster, wish)];
  if (mistakes.length > 0) return { mistakes };
  const { roster: current, changes } = lapseOffers(roster, now);
  const standing = wish.seats <= seatsFree(current) ? 'seated' : 'waiting';
  const booking: Booking = {
    ...wish,
    standing,
    enrolledAt: now,
    offerUntil: null,
    answer: null,
    came: null,
    moves: roster.lesson.moves,
    revision: 0,
  };
  const bookings = [...current.bookings, booking];
  return { roster: { ...current, bookings }, changes: [...changes, changeOf(booking, 'enrolled')] };
}

/** Gives the seats back, or the place in the waiting list, or the offer. */
export function leave(roster: Roster, id: string, now: Instant): Turn {
  return withBooking(roster, id, now, (current, booking) => {
    const { lesson } = current;
    const until = leaveUntil(lesson, booking);
    if (booking.standing !== 'seated' || now < until) return release(current, booking, 'left', now);
    return leaveClosed(lesson, until);
  });
}

function leaveClosed({ zone }: Lesson, until: Instant): Refused {
  return { mistakes: [mistake('leave-closed', 'booking', { until: wallAt(until, zone) })] };
}

/** The answer to a reminder. "Can't come" is taken until the lesson starts, whatever the time for leaving: it was asked. */
export function answerReminder(roster: Roster, id: string, answer: 'coming' | 'absent', now: Instant): Turn {
  return withBooking(roster, id, now, (current, booking) => {
    if (booking.standing !== 'seated') return { mistakes: [mistake('booking-not-seated', 'booking')] };
    const answered = { ...booking, answer };
    return answer === 'absent'
      ? release(current, answered, 'absent', now)
      : { roster: put(current, answered), changes: [] };
  });
}

export function acceptOffer(roster: Roster, id: string, now: Instant): Turn {
  return withBooking(roster, id, now, (current, booking) => {
    if (booking.standing !== 'offered') return { mistakes: [mistake('offer-gone', 'booking')] };
    return turned(current, { ...booking, standing: 'seated', offerUntil: null }, 'accepted');
  });
}

export function declineOffer(roster: Roster, id: string, now: Instant): Turn {
  return withBooking(roster, id, now, (current, booking) =>
    booking.standing === 'offered'
      ? release(current, booking, 'declined', now)
      : { mistakes: [mistake('offer-gone', 'booking')] },
  );
}

export const bookingActs = ['leave', 'accept', 'decline', 'coming', 'absent'] as const;
export type BookingAct = (typeof bookingActs)[number];

/** What a person may do with a booking of their own. */
export const ownActs: { readonly [act in BookingAct]: (roster: Roster, id: string, now: Instant) => Turn } = {
  leave,
  accept: acceptOffer,
  decline: declineOffer,
  coming: (roster, id, now) => answerReminder(roster, id, 'coming', now),
  absent: (roster, id, now) => answerReminder(roster, id, 'absent', now),
};

/** On someone's behalf, whatever it is that goes back, and whatever the time for leaving. */
export function giveBack(roster: Roster, id: string, now: Instant): Turn {
  const standing = roster.bookings.find((one) => one.id === id)?.standing ?? 'left';
  const act = { seated: ownActs.absent, offered: ownActs.decline, waiting: ownActs.leave, left: ownActs.leave };
  return act[standing](roster, id, now);
}

/**
 * Ends the offers whose time is up and offers their seats on. Who let one lapse leaves the list, and may enrol again. An
 * offer nobody could be told of ends with the beginning of the lesson.
 */
export function lapseOffers(roster: Roster, now: Instant): Turned {
  if (roster.lesson.status === 'cancelled') return { roster, changes: [] };
  const isUp = ({ offerUntil }: Booking): boolean => (offerUntil ?? roster.lesson.startsAt) <= now;
  const lapsed = roster.bookings.filter((one) => one.standing === 'offered' && isUp(one));
  const left = lapsed.map((one) => departed(one));
  const changes = left.map((one) => changeOf(one, 'lapsed'));
  return offerOn(left.reduce(put, roster), changes, now);
}

export interface Reseat extends Pick<Wish, 'id' | 'seats'> {
  /** By the shop on someone's behalf, whatever the time for giving back. */
  readonly byShop?: boolean;
}

/** More seats only if they are free; fewer as long as seats may be given back; who waits keeps their place with fewer or more. */
export function changeSeats(roster: Roster, wish: Reseat, now: Instant): Turn {
  return withBooking(roster, wish.id, now, (current, booking) => {
    if (booking.standing === 'offered') return { mistakes: [mistake('offer-open', 'booking')] };
    const mistakes = seatMistakes(wish.seats, current.lesson.seats);
    if (mistakes.length > 0) return { mistakes };
    const more = wish.seats - booking.seats;
    const free = seatsFree(current);
    const until = leaveUntil(current.lesson, booking);
    const isLate = now >= until && wish.byShop !== true;
    if (booking.standing === 'seated' && more < 0 && isLate) return leaveClosed(current.lesson, until);
    if (booking.standing === 'seated' && more > free) return { mistakes: [mistake('full', 'seats', { free })] };
    const changed = { ...booking, seats: wish.seats, revision: booking.revision + 1 };
    return offerOn(put(current, changed), [changeOf(changed, 'reseated')], now);
  });
}

/** The lesson itself gets more or fewer seats; never fewer than are taken. */
export function resizeLesson(roster: Roster, seats: number, now: Instant): Turn {
  const taken = seatsTaken(roster);
  const mistakes = [...closedMistakes(roster.lesson, now), ...seatMistakes(seats, mostSeats)];
  if (mistakes.length > 0) return { mistakes };
  if (seats < taken) return { mistakes: [mistake('seats-below-taken', 'seats', { seats, taken })] };
  return offerOn({ ...roster, lesson: { ...roster.lesson, seats } }, [], now);
}

/** So long before the start people are ticked off. */
export const doorOpensMs = 3_600_000;

/** Ticked off at the door, or taken back. */
export function tickOff(roster: Roster, id: string, came: boolean | null, now: Instant): Turn {
  const booking = bookingOf(roster, id);
  if ('mistakes' in booking) return booking;
  if (roster.lesson.status === 'cancelled') return { mistakes: [mistake('cancelled', 'lesson')] };
  if (booking.standing !== 'seated') return { mistakes: [mistake('booking-not-seated', 'booking')] };
  if (now < roster.lesson.startsAt - doorOpensMs) return { mistakes: [mistake('door-closed', 'lesson')] };
  return { roster: put(roster, { ...booking, came }), changes: [] };
}

function withBooking(roster: Roster, id: string, now: Instant, act: (current: Roster, booking: Booking) => Turn): Turn {
  const mistakes = closedMistakes(roster.lesson, now);
  if (mistakes.length > 0) return { mistakes };
  const asked = roster.bookings.find((one) => one.id === id);
  const { roster: current, changes } = lapseOffers(roster, now);
  const booking = bookingOf(current, id);
  if ('mistakes' in booking) {
    return asked?.standing === 'offered' ? { mistakes: [mistake('offer-gone', 'booking')] } : booking;
  }
  const turn = act(current, booking);
  return 'mistakes' in turn ? turn : { ...turn, changes: [...changes, ...turn.changes] };
}

function release(roster: Roster, booking: Booking, why: Why, now: Instant): Turned {
  const gone = departed(booking);
  return offerOn(put(roster, gone), [changeOf(gone, why)], now);
}

function offerOn(roster: Roster, changes: readonly Change[], now: Instant): Turned {
  if (closedMistakes(roster.lesson, now).length > 0) return { roster, changes };
  const fits = waitingList(roster).find((one) => one.seats <= seatsFree(roster));
  if (fits === undefined) return { roster, changes };
  const unheard: Booking = { ...fits, standing: 'offered', offerUntil: null };
  // Whoever has just changed something themselves is awake.
  const isAwake = changes.some(({ booking }) => booking === fits.id);
  const isTold = isAwake || tellableAt(roster.lesson.startsAt, now, roster.lesson.zone) <= now;
  const offered = isTold ? beginOffer(roster.lesson, unheard, now) : unheard;
  return offerOn(put(roster, offered), [...changes, changeOf(offered, 'freed')], now);
}

/** They are told now: their time to take it begins. */
export function beginOffer(lesson: Lesson, booking: Booking, now: Instant): Booking {
  return { ...booking, offerUntil: offerEnd(lesson, now) };
}

/** When an offer ends that is told now. */
export function offerEnd({ offerMinutes, zone, startsAt }: Lesson, now: Instant): Instant {
  return Math.min(afterWakingMinutes(now, offerMinutes, zone), startsAt);
}

function departed(booking: Booking): Booking {
  return { ...booking, standing: 'left', offerUntil: null, revision: booking.revision + 1 };
}

function turned(roster: Roster, booking: Booking, why: Why): Turned {
  return { roster: put(roster, booking), changes: [changeOf(booking, why)] };
}

function put(roster: Roster, booking: Booking): Roster {
  return { ...roster, bookings: roster.bookings.map((one) => (one.id === booking.id ? booking : one)) };
}

function changeOf({ id, person, seats, standing }: Booking, why: Why): Change {
  return { booking: id, person, seats, to: standing, why };
}

function wishMistakes({ lesson, bookings }: Roster, wish: Wish): readonly Mistake[] {
  const already = bookings.some((one) => one.person === wish.person && one.standing !== 'left');
  return [...(already ? [mistake('already-booked', 'person')] : []), ...seatMistakes(wish.seats, lesson.seats)];
}

function seatMistakes(seats: number, most: number): readonly Mistake[] {
  const fine = Number.isInteger(seats) && seats >= 1 && seats <= most;
  return fine ? [] : [mistake('seats', 'seats', { seats, most })];
}
