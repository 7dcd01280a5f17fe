/** What a turn sees of lessons. What does not differ from person to person is gathered once, until something changes. */
import { lapseOffers } from '../../core/lessons/seats.ts';
import {
  listed,
  nextOfferEnd,
  placeOf,
  type ListedLesson,
  type OwnBooking,
  type Roster,
} from '../../core/lessons/roster.ts';
import type { Lesson } from '../../core/lessons/lesson.ts';
import type { Series } from '../../core/lessons/series.ts';
import type { Instant } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';
import type { DoorList, LessonBoard } from '../lesson-contract.ts';
import type { Booked, BookingRows } from './booking-rows.ts';
import type { LessonRows } from './lesson-rows.ts';
import type { News } from './news.ts';

export interface BoardParts {
  readonly lessons: LessonRows;
  readonly bookings: BookingRows;
  readonly news: News;
  readonly tzVersion: string;
}

interface Gathered {
  readonly latest: string;
  readonly from: Instant;
  /** Until the next lesson begins, or the next offer ends. */
  readonly until: Instant;
  readonly upcoming: readonly ListedLesson[];
  readonly gone: readonly ListedLesson[];
  readonly doors: readonly DoorList[];
  readonly series: readonly Series[];
}

/** The shopkeeper may still tick off who came when the lesson is over. */
const doorMs = 24 * 60 * 60_000;
/** Judgement: who came is asked for the last month and a little. */
const pastMs = 35 * doorMs;

/** Older ones are read only for a shopkeeper, whose turns are few. */
interface Past {
  readonly latest: string;
  readonly from: Instant;
  readonly doors: readonly DoorList[];
}

export function makeLessonBoard({ lessons, bookings, news, tzVersion }: BoardParts) {
  let kept: Gathered | null = null;
  let keptPast: Past | null = null;

  const doorOf = (roster: Roster): DoorList => {
    const reach = bookings.reachOfLesson(roster.lesson.id);
    return { lesson: listed(roster), bookings: roster.bookings.map((one) => ({ ...one, reach: reach(one.id) })) };
  };
  const past = (now: Instant): readonly DoorList[] => {
    const from = now - (now % 3_600_000);
    if (keptPast?.latest !== news.latest() || keptPast.from !== from) {
      const over = lessons.endedWithin(from - pastMs, now - doorMs).filter(({ status }) => status !== 'cancelled');
      const doors = over.map((lesson) => doorOf({ lesson, bookings: bookings.ofLesson(lesson.id) }));
      keptPast = { latest: news.latest(), from, doors };
    }
    return keptPast.doors;
  };

  const gather = (now: Instant): Gathered => {
    const rosters = lessons.endingAfter(now - doorMs).map((lesson): Roster => {
      const roster = { lesson, bookings: bookings.ofLesson(lesson.id) };
      // As it will be once the house has looked: an offer whose time is up holds no seat.
      return lapseOffers(roster, now).roster;
    });
    const doors = rosters.map(doorOf);
    const known = doors.map(({ lesson }) => lesson);
    const turns = rosters.flatMap((roster) => [roster.lesson.startsAt, nextOfferEnd(roster) ?? Infinity]);
    return {
      latest: news.latest(),
      from: now,
      until: Math.min(...turns.filter((at) => at > now), now + doorMs),
      upcoming: known.filter((lesson) => isToCome(lesson, now)),
      gone: known.filter((lesson) => !isToCome(lesson, now)),
      doors,
      series: lessons.series(),
    };
  };
  const current = (now: Instant): Gathered => {
    const holds = kept !== null && kept.latest === news.latest() && now >= kept.from && now < kept.until;
    return (kept = holds && kept ? kept : gather(now));
  };
  const own = ({ booking, lesson: id }: Booked, { doors }: Gathered, now: Instant): readonly OwnBooking[] => {
    const door = doors.find(({ lesson }) => lesson.id === id);
    const lesson = door?.lesson ?? asPast(lessons.of(id));
    if (!lesson || (booking.standing === 'left' && now >= lesson.startsAt)) return [];
    const asItStands = door?.bookings.find((one) => one.id === booking.id) ?? booking;
    return [{ ...asItStands, lesson, place: door ? placeOf(door, booking.id) : 0 }];
  };
  return (person: PersonId, isKeeper: boolean, now: Instant): LessonBoard => {
    const gathered = current(now);
    const over = isKeeper ? past(now) : [];
    const named = isKeeper ? [...gathered.doors, ...over] : [];
    return {
      upcoming: gathered.upcoming,
      gone: gathered.gone,
      own: bookings.ofPerson(person, now).flatMap((booked) => own(booked, gathered, now)),
      doors: isKeeper ? gathered.doors : [],
      past: over,
      // Names change without a word to the lists.
      names: named.flatMap(({ lesson }) => bookings.namesOfLesson(lesson.id)),
      series: isKeeper ? gathered.series : [],
      tzVersion,
    };
  };
}

function asPast(lesson: Lesson | undefined): ListedLesson | undefined {
  return lesson && { ...lesson, free: 0, waiting: 0 };
}

function isToCome({ status, startsAt }: Lesson, now: Instant): boolean {
  return status !== 'cancelled' && startsAt > now;
}
