/** Who has booked a lesson, as one value, and what can be read off it. Changes nothing: seats.ts does. */
import type { Instant, Mistake } from '../units.ts';
import { mistake, statusAt, type Lesson, type Refused } from './lesson.ts';

/** `offered`: a freed seat is kept for them until `offerUntil`. `left` stays on the list as history. */
export type Standing = 'seated' | 'waiting' | 'offered' | 'left';

export interface Booking {
  readonly id: string;
  readonly person: string;
  readonly seats: number;
  readonly standing: Standing;
  readonly enrolledAt: Instant;
  /** Of an offer; null until they are told of it, for only then does its time begin. */
  readonly offerUntil: Instant | null;
  /** Their answer to a reminder. */
  readonly answer: 'coming' | 'absent' | null;
  /** Ticked off at the door. */
  readonly came: boolean | null;
  /** `lesson.moves` when they enrolled: who enrolled before a move may leave at any time. */
  readonly moves: number;
  /** Rises with every change a calendar file must carry. */
  readonly revision: number;
}

export interface Roster {
  readonly lesson: Lesson;
  /** In order of enrolment, which is the order of the waiting list. */
  readonly bookings: readonly Booking[];
}

/** A lesson as whoever asks for it sees it. */
export interface ListedLesson extends Lesson {
  readonly free: number;
  /** How many bookings wait. */
  readonly waiting: number;
}

/** A person's booking with its lesson. */
export interface OwnBooking extends Booking {
  readonly lesson: ListedLesson;
  /** On the waiting list, from 1; 0 for who does not wait. */
  readonly place: number;
}

export type Why = 'enrolled' | 'freed' | 'accepted' | 'declined' | 'lapsed' | 'left' | 'absent' | 'reseated' | 'moved';

/** What happened to one booking, for those who tell people and keep reminders. */
export interface Change {
  readonly booking: string;
  readonly person: string;
  readonly seats: number;
  readonly to: Standing;
  readonly why: Why;
}

export interface Turned {
  readonly roster: Roster;
  readonly changes: readonly Change[];
}
export type Turn = Turned | Refused;

export function seatsTaken({ bookings }: Roster): number {
  return bookings
    .filter((one) => one.standing === 'seated' || one.standing === 'offered')
    .reduce((sum, one) => sum + one.seats, 0);
}

export function seatsFree(roster: Roster): number {
  return roster.lesson.seats - seatsTaken(roster);
}

export function waitingList({ bookings }: Roster): readonly Booking[] {
  return bookings.filter((one) => one.standing === 'waiting');
}

/** From 1; 0 for who does not wait. */
export const placeOf = (roster: Roster, id: string): number =>
  1 + waitingList(roster).findIndex((one) => one.id === id);

/** Offers whose time is up are to be ended before (`lapseOffers`). */
export function listed(roster: Roster): ListedLesson {
  return { ...roster.lesson, free: seatsFree(roster), waiting: waitingList(roster).length };
}

export function onList({ bookings }: Roster): readonly Booking[] {
  return bookings.filter((one) => one.standing !== 'left');
}

/** Those a move or another change concerns: who is still to hear of their offer hears then how the lesson stands. */
export function toBeTold(roster: Roster): readonly Booking[] {
  return onList(roster).filter((one) => !isUnheard(one));
}

/** A seat is kept for them, and they were not told yet. */
export function isUnheard({ standing, offerUntil }: Booking): boolean {
  return standing === 'offered' && offerUntil === null;
}

/** When the next offer ends, to be woken then; null when none is open. */
export function nextOfferEnd({ lesson, bookings }: Roster): Instant | null {
  if (lesson.status === 'cancelled') return null;
  const offered = bookings.filter((one) => one.standing === 'offered');
  const ends = offered.map((one) => one.offerUntil ?? lesson.startsAt);
  return ends.length === 0 ? null : Math.min(...ends);
}

/** The end of free leaving: a stated time, or the lesson itself for who enrolled before it was moved. */
export function leaveUntil(lesson: Lesson, booking: Booking): Instant {
  return booking.moves < lesson.moves ? lesson.startsAt : lesson.startsAt - lesson.cancelHours * 3_600_000;
}

/** A lesson takes and loses bookings until it starts. */
export function closedMistakes(lesson: Lesson, now: Instant): readonly Mistake[] {
  if (lesson.status === 'cancelled') return [mistake('cancelled', 'lesson')];
  if (statusAt(lesson, now) === 'over') return [mistake('over', 'lesson')];
  return now >= lesson.startsAt ? [mistake('started', 'lesson')] : [];
}

export function bookingOf(roster: Roster, id: string): Booking | Refused {
  const booking = roster.bookings.find((one) => one.id === id);
  if (booking === undefined) return { mistakes: [mistake('booking-unknown', 'booking')] };
  return booking.standing === 'left' ? { mistakes: [mistake('booking-left', 'booking')] } : booking;
}
