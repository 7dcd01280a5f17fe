/** Who comes to a lesson, and what a day brings, as sentences not yet in words. Whose names they are is told elsewhere. */
import type { Instant, Json } from '../units.ts';
import { dateOf, wallAt } from './calendar.ts';
import type { Lesson } from './lesson.ts';
import { saidInstants } from './tidings.ts';
import { seatsTaken, waitingList, type Booking } from './roster.ts';

type Values = { readonly [name: string]: Json };
type Phrase = { readonly key: string; readonly values: Values };

/** How someone can be told of a lesson now; `none` for who left no address, or turned the house away. */
export type Reach = 'chat' | 'mail' | 'none';

export interface Reached extends Booking {
  readonly reach: Reach;
}

/** A lesson with everybody on its list; a name stands for words kept with the person. */
export interface Door {
  readonly lesson: Lesson;
  readonly bookings: readonly (Reached & { readonly name: Json })[];
}

/** How many of these are reached when something is sent to all, and how many the shop must tell itself. */
export function reachOf(bookings: Door['bookings']): { readonly reached: number; readonly unreached: number } {
  const there = bookings.filter(({ standing }) => standing !== 'left');
  const unreached = there.filter(({ reach }) => reach === 'none').length;
  return { reached: there.length - unreached, unreached };
}

/** Of those who come to several lessons the first booking: a letter to all reaches each once. */
export function lettersTo<Kind extends Pick<Booking, 'person'>>(lists: readonly (readonly Kind[])[]): readonly Kind[] {
  const first = new Map<string, Kind>();
  for (const one of lists.flat()) if (!first.has(one.person)) first.set(one.person, one);
  return [...first.values()];
}

export function doorValues({ lesson, bookings }: Door): Values {
  const roster = { lesson, bookings };
  return {
    title: { ...lesson.title },
    starts: wallAt(lesson.startsAt, lesson.zone),
    instants: saidInstants(lesson.zone, lesson.startsAt),
    seats: lesson.seats,
    taken: seatsTaken(roster),
    waiting: waitingList(roster).length,
  };
}

/** Judgement: as many as a message and its buttons hold; how many more there are is told. */
const mostPeople = 90;

export interface Listed {
  readonly n: number;
  readonly booking: Door['bookings'][number];
}

/** Those with a seat first, each in the order they booked. */
export function peopleOf({ bookings }: Door): readonly Listed[] {
  const there = bookings.filter(({ standing }) => standing !== 'left');
  const seated = there.filter(({ standing }) => standing === 'seated');
  const others = there.filter(({ standing }) => standing !== 'seated');
  return [...seated, ...others].slice(0, mostPeople).map((booking, i) => ({ n: i + 1, booking }));
}

/** Who is on the list, a line each. */
export function peoplePhrases(door: Door): readonly Phrase[] {
  const more = door.bookings.filter(({ standing }) => standing !== 'left').length - mostPeople;
  const lines = peopleOf(door).map(personPhrase);
  return more > 0 ? [...lines, { key: 'desk-told-more', values: { count: more } }] : lines;
}

function personPhrase({ n, booking }: Listed): Phrase {
  const { name, seats, reach } = booking;
  const key = reach === 'none' ? 'desk-told-person-untold' : 'desk-told-person';
  return { key, values: { n, name, seats, state: stateOf(booking) } };
}

export function stateOf({ standing, answer, came }: Booking): string {
  if (standing !== 'seated') return standing;
  if (came !== null) return came ? 'here' : 'away';
  return answer ?? 'booked';
}

/** The lessons of this local day, each by the clock of its place, and who comes; empty when there are none. */
export function dayPhrases(doors: readonly Door[], now: Instant): readonly Phrase[] {
  return doors
    .filter(({ lesson }) => isToday(lesson, now))
    .flatMap((door) => [
      { key: 'desk-told-day', values: doorValues(door) },
      ...peopleOf(door)
        .filter(({ booking }) => booking.standing === 'seated')
        .map(personPhrase),
    ]);
}

function isToday({ status, startsAt, zone }: Lesson, now: Instant): boolean {
  return status !== 'cancelled' && dateOf(wallAt(startsAt, zone)) === dateOf(wallAt(now, zone));
}
