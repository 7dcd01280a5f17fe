/** What a lesson is, and how it is planned, moved and cancelled. Holds no bookings and tells nobody. */
import type { Instant, Language, Mistake } from '../units.ts';
import { instantOf, isWallTime, saidWall, shownIn, zoneNamed, type WallTime } from './calendar.ts';

export const levels = ['beginner', 'intermediate', 'advanced'] as const;
export type Level = (typeof levels)[number];

/** The same said in every language. */
export type Wording = { readonly [language in Language]: string };

/** A lesson as a person states it. */
export interface LessonDraft {
  /** At most 40 of [A-Za-z0-9._-]: it travels in links and on paper. */
  readonly id: string;
  readonly series?: string;
  readonly title: Wording;
  readonly level: Level;
  /** Ids of lessons or series a student should have had before. */
  readonly buildsOn: readonly string[];
  readonly place: Wording;
  readonly teacher: string;
  readonly seats: number;
  readonly zone: string;
  readonly starts: WallTime;
  readonly minutes: number;
  /** In words: it is paid at the shop. */
  readonly price: Wording;
  readonly bring: Wording;
  /** Ids of the catalogue. */
  readonly teas: readonly string[];
  /** A seat can be given back until so many hours before the start. */
  readonly cancelHours: number;
  /** A freed seat is kept so many minutes (of day) for the one it is offered to. */
  readonly offerMinutes: number;
}

export interface Lesson extends LessonDraft {
  /** Derived from `starts` and `zone` under `tzVersion`. */
  readonly startsAt: Instant;
  readonly endsAt: Instant;
  readonly tzVersion: string;
  readonly status: 'planned' | 'moved' | 'cancelled';
  /** Why it was cancelled, in the shopkeeper's words; empty otherwise. */
  readonly reason: string;
  /** Rises with every change a calendar file must carry. */
  readonly revision: number;
  /** How often people moved it; a change of time-zone rules is no move. */
  readonly moves: number;
}

/** When something is done, and under which time-zone rules. */
export interface Today {
  readonly now: Instant;
  readonly tzVersion: string;
}

export interface Refused {
  readonly mistakes: readonly Mistake[];
}
export type Planned = { readonly lesson: Lesson } | Refused;

export const mostSeats = 500;
export const mostMinutes = 12 * 60;

/** Common practice, no source: a shop may state its own for each lesson. */
export const usual = { cancelHours: 24, offerMinutes: 120, minutes: 90 } as const;

export const mistake = (code: string, field: string, values: Mistake['values'] = {}): Mistake => ({
  code: `lesson-${code}`,
  field,
  values,
});

/** What is wrong with a lesson whenever it is looked at; whether it lies in the past is asked apart. */
export function draftMistakes(draft: LessonDraft): readonly Mistake[] {
  const { title, seats, minutes } = draft;
  return [
    ...(Object.values(title).every((words) => words.trim() !== '') ? [] : [mistake('title-missing', 'title')]),
    ...(Number.isInteger(seats) && seats >= 1 && seats <= mostSeats
      ? []
      : [mistake('seats', 'seats', { seats, most: mostSeats })]),
    ...(Number.isInteger(minutes) && minutes >= 1 && minutes <= mostMinutes
      ? []
      : [mistake('minutes', 'minutes', { minutes, most: mostMinutes })]),
    ...startMistakes(draft),
  ];
}

/** A lesson of its own, unlike one of a series, may not start in an hour the clocks skip or show twice. */
export function startMistakes({ starts, zone }: Pick<LessonDraft, 'starts' | 'zone'>): readonly Mistake[] {
  if (zoneNamed(zone) === undefined) return [mistake('zone-unknown', 'zone', { zone })];
  if (!isWallTime(starts)) return [mistake('time-unreadable', 'starts', { starts })];
  const shown = shownIn(starts, zone);
  return shown === 'once' ? [] : [mistake(`hour-${shown}`, 'starts', { starts: saidWall(starts), zone })];
}

export function planLesson(draft: LessonDraft, today: Today): Planned {
  const mistakes = draftMistakes(draft);
  if (mistakes.length > 0) return { mistakes };
  const lesson = freshLesson(draft, today.tzVersion);
  return lesson.startsAt > today.now ? { lesson } : { mistakes: [pastMistake(draft.starts)] };
}

/** A lesson without asking whether it is well stated: for drafts already checked, such as those of a series. */
export function freshLesson(draft: LessonDraft, tzVersion: string): Lesson {
  return { ...draft, ...derived(draft, tzVersion), status: 'planned', reason: '', revision: 0, moves: 0 };
}

export interface Move {
  readonly starts: WallTime;
  readonly minutes?: number;
  /** The revision the mover saw: of two who move at once, one is told. */
  readonly seen: number;
}

export function moveLesson(lesson: Lesson, move: Move, today: Today): Planned {
  const draft = { ...lesson, starts: move.starts, minutes: move.minutes ?? lesson.minutes };
  const mistakes = [...changeMistakes(lesson, move.seen, today.now), ...draftMistakes(draft)];
  if (mistakes.length > 0) return { mistakes };
  const times = derived(draft, today.tzVersion);
  if (times.startsAt <= today.now) return { mistakes: [pastMistake(move.starts)] };
  const { revision, moves } = lesson;
  return { lesson: { ...draft, ...times, status: 'moved', revision: revision + 1, moves: moves + 1 } };
}

export interface Cancellation {
  readonly reason: string;
  readonly seen: number;
}

export function cancelLesson(lesson: Lesson, { reason, seen }: Cancellation, now: Instant): Planned {
  const mistakes = changeMistakes(lesson, seen, now);
  if (mistakes.length > 0) return { mistakes };
  return { lesson: { ...lesson, status: 'cancelled', reason, revision: lesson.revision + 1 } };
}

/** What can be changed of a lesson while it stays where it is in time; its seats are another matter (`resizeLesson`). */
export type Retold = Partial<Omit<LessonDraft, 'id' | 'series' | 'starts' | 'zone' | 'minutes' | 'seats'>>;

export function retellLesson(lesson: Lesson, retold: Retold, seen: number, now: Instant): Planned {
  const changed = { ...lesson, ...retold, revision: lesson.revision + 1 };
  // One of a series may start in an hour the clocks skip.
  const wrong = draftMistakes(changed).filter((one) => one.field !== 'starts');
  const mistakes = [...changeMistakes(lesson, seen, now), ...wrong];
  return mistakes.length > 0 ? { mistakes } : { lesson: changed };
}

/** Under new time-zone rules the wall time stays and the instant may move. The same value when nothing changed. */
export function recomputeLesson(lesson: Lesson, tzVersion: string): Lesson {
  if (lesson.tzVersion === tzVersion) return lesson;
  const times = derived(lesson, tzVersion);
  const revision = times.startsAt === lesson.startsAt ? lesson.revision : lesson.revision + 1;
  return { ...lesson, ...times, revision };
}

export function statusAt(lesson: Lesson, now: Instant): Lesson['status'] | 'over' {
  return lesson.status !== 'cancelled' && now >= lesson.endsAt ? 'over' : lesson.status;
}

function derived(draft: LessonDraft, tzVersion: string): Pick<Lesson, 'startsAt' | 'endsAt' | 'tzVersion'> {
  const startsAt = instantOf(draft.starts, draft.zone);
  return { startsAt, endsAt: startsAt + draft.minutes * 60_000, tzVersion };
}

function changeMistakes(lesson: Lesson, seen: number, now: Instant): readonly Mistake[] {
  if (lesson.status === 'cancelled') return [mistake('cancelled', 'lesson')];
  if (statusAt(lesson, now) === 'over') return [mistake('over', 'lesson')];
  return seen === lesson.revision ? [] : [mistake('changed-meanwhile', 'lesson', { starts: lesson.starts })];
}

function pastMistake(starts: WallTime): Mistake {
  return mistake('past', 'starts', { starts: saidWall(starts) });
}
