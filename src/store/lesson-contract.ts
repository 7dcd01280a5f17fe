/** What the house keeps of lessons: what a turn sees of them, what it may change, and what is done without anyone's word. */
import type { WallTime } from '../core/lessons/calendar.ts';
import type { Door, Reached } from '../core/lessons/door-list.ts';
import type { LessonDraft, Retold } from '../core/lessons/lesson.ts';
import type { BookingDraft, NamedBooking } from '../core/lessons/booking-draft.ts';
import type { ListedLesson, OwnBooking, Roster } from '../core/lessons/roster.ts';
import type { BookingAct } from '../core/lessons/seats.ts';
import type { OffDays } from '../core/lessons/calling-off.ts';
import type { Series } from '../core/lessons/series.ts';
import type { Instant, Language, Mistake } from '../core/units.ts';
import { nameQuote } from './quote.ts';

/** Part of the store. Seats, offers and reminders are judged by core/lessons where the rows are locked. */
export interface Lessons {
  /**
   * Ends the offers whose time is up and offers their seats on; hands over reminders that are due, one a booking, and
   * writes down those that come too late. So many at most; returns how many there were.
   */
  tend(now: Instant, limit: number): Promise<number>;
  /**
   * Takes in what is planned but not known yet; what is known stays as it is. Series are carried on, and times worked out
   * under other time-zone rules are worked out anew.
   */
  planLessons(plan: LessonPlan, now: Instant): Promise<void>;
  /**
   * Adds the lessons that are new and changes those that are known as a shopkeeper would, with everybody told; all, or
   * none and what is wrong with which.
   */
  putLessons(drafts: readonly LessonDraft[], now: Instant): Promise<readonly WrongRow[]>;
  /** The lessons that end after this instant, by their start, with everybody on their lists. */
  rosters(since: Instant): Promise<readonly Roster[]>;
  /** Everybody on the lists of those lessons, by name. */
  bookings(since: Instant): Promise<readonly NamedBooking[]>;
  /**
   * Enrols those who are new, each as someone without a chat, told in this language; all, or none and what is wrong with
   * which. What is known stays as it is.
   */
  putBookings(drafts: readonly BookingDraft[], language: Language, now: Instant): Promise<readonly WrongRow[]>;
}

export interface LessonPlan {
  readonly lessons: readonly LessonDraft[];
  readonly series: readonly Series[];
}

export interface WrongRow {
  /** Which of those given, from 0. */
  readonly n: number;
  readonly mistakes: readonly Mistake[];
}

export interface DoorList {
  readonly lesson: ListedLesson;
  readonly bookings: readonly Reached[];
}

/** With everybody's name, said from where it is kept; where no letters go out, they reach nobody. */
export function namedDoor({ lesson, bookings }: DoorList, letters: boolean): Door {
  const reachOf = ({ reach }: Reached): Reached['reach'] => (reach === 'mail' && !letters ? 'none' : reach);
  const named = (one: Reached) => ({ ...one, reach: reachOf(one), name: nameQuote(Number(one.person)) });
  return { lesson, bookings: bookings.map(named) };
}

/** What a turn sees of lessons. */
export interface LessonBoard {
  /** To come and not cancelled, by their start. The same list until something changes. */
  readonly upcoming: readonly ListedLesson[];
  /** Begun, or over since less than a day, or cancelled. The same list until something changes. */
  readonly gone: readonly ListedLesson[];
  /** This person's, the last enrolled first; those given back only while the lesson is to come. */
  readonly own: readonly OwnBooking[];
  /** For a shopkeeper: over since less than a day, or to come; cancelled ones too. The same list until something changes. */
  readonly doors: readonly DoorList[];
  /** For a shopkeeper: over for longer than that, for as long as it is still asked who came, the latest first. */
  readonly past: readonly DoorList[];
  /** For a shopkeeper: the names given by those on these lists, by their bookings. */
  readonly names: readonly { readonly booking: string; readonly name: string }[];
  /** For a shopkeeper: what lessons come onto the list from. */
  readonly series: readonly Series[];
  /** Under which time-zone rules times are worked out. */
  readonly tzVersion: string;
}

/** `at`: when the person did it. What the core refuses, or comes out otherwise than told, has moved. */
export type LessonChange =
  | {
      readonly do: 'enrol';
      /** The id the booking shall have. */
      readonly booking: string;
      readonly lesson: string;
      readonly seats: number;
      /** What the person was told. */
      readonly to: 'seated' | 'waiting';
      readonly at: Instant;
    }
  /** Of one's own booking. */
  | { readonly do: 'reseat'; readonly booking: string; readonly seats: number; readonly at: Instant }
  | { readonly do: 'booking'; readonly booking: string; readonly act: BookingAct; readonly at: Instant }
  // What follows is a shopkeeper's right. `seen` is the lesson's revision as it was shown.
  | { readonly do: 'tick-off'; readonly booking: string; readonly came: boolean | null; readonly at: Instant }
  | { readonly do: 'add-lessons'; readonly drafts: readonly LessonDraft[]; readonly series: Series | null }
  | {
      readonly do: 'change-lesson';
      readonly lesson: string;
      readonly seen: number;
      readonly retold: Retold;
      readonly seats: number | null;
    }
  | {
      readonly do: 'move-lesson';
      readonly lesson: string;
      readonly seen: number;
      readonly starts: WallTime;
      readonly minutes: number | null;
    }
  | { readonly do: 'cancel-lesson'; readonly lesson: string; readonly seen: number; readonly reason: string }
  /** Together, or not at all; the series have none on those days any more. */
  | {
      readonly do: 'cancel-lessons';
      readonly lessons: readonly { readonly lesson: string; readonly seen: number }[];
      readonly series: readonly string[];
      readonly days: OffDays;
      readonly reason: string;
    }
  /**
   * Called off, and they take place after all: together, or not at all. The series are as they were; they have meanwhile
   * left out those days and nothing else.
   */
  | {
      readonly do: 'resume-lessons';
      readonly lessons: readonly { readonly lesson: string; readonly seen: number }[];
      readonly series: readonly Series[];
      readonly days: OffDays | null;
    }
  /** Said to everybody who has a seat. */
  | { readonly do: 'write-to-lesson'; readonly lesson: string; readonly text: string }
  /** … in any of these, once to each person. */
  | { readonly do: 'write-to-lessons'; readonly lessons: readonly string[]; readonly text: string };
