/** The part of a commit that is about lessons. The core judges again, on the rows as they are now. */
import { withoutDays } from '../../core/lessons/calling-off.ts';
import { planLesson, type Today } from '../../core/lessons/lesson.ts';
import type { Roster, Turn } from '../../core/lessons/roster.ts';
import { changeSeats, enrol, giveBack, lapseOffers, ownActs, tickOff } from '../../core/lessons/seats.ts';
import { lessonsOfSeries } from '../../core/lessons/series.ts';
import type { Instant } from '../../core/units.ts';
import type { Commit, PersonId } from '../contract.ts';
import type { LessonChange } from '../lesson-contract.ts';
import { cancel, move, resume, retell, write, writeToAll } from './lesson-keeping.ts';
import { horizonOf } from './lesson-planning.ts';
import { keepRoster, keepTurn, rosterOf } from './rosters.ts';
import type { Shopkeepers } from './shopkeepers.ts';
import type { RosterRows } from './telling.ts';

export interface LessonChangeRows extends RosterRows {
  readonly shopkeepers: Shopkeepers;
  readonly tzVersion: string;
}

type Do<Name extends LessonChange['do']> = Extract<LessonChange, { readonly do: Name }>;
type OnLesson = Do<'change-lesson' | 'move-lesson' | 'cancel-lesson' | 'write-to-lesson'>;

/** False when the ground has moved. */
export function applyLessonChange(rows: LessonChangeRows, commit: Commit, change: LessonChange): boolean {
  switch (change.do) {
    case 'enrol':
      return applyEnrolment(rows, commit, change);
    case 'booking':
      return onOwn(rows, commit, change.booking, (roster) => ownActs[change.act](roster, change.booking, change.at));
    case 'reseat': {
      const wish = { id: change.booking, seats: change.seats };
      return onOwn(rows, commit, change.booking, (roster) => changeSeats(roster, wish, change.at));
    }
    case 'tick-off':
    case 'add-lessons':
    case 'change-lesson':
    case 'move-lesson':
    case 'cancel-lesson':
    case 'cancel-lessons':
    case 'resume-lessons':
    case 'write-to-lesson':
    case 'write-to-lessons':
      return rows.shopkeepers.has(commit.person) && applyByKeeper(rows, change, commit.now);
    default:
      return change satisfies never;
  }
}

function applyEnrolment(rows: RosterRows, { person, address, now }: Commit, wish: Do<'enrol'>): boolean {
  const before = rosterOf(rows, wish.lesson);
  if (!before) return false;
  const turn = enrol(before, { id: wish.booking, person: String(person), seats: wish.seats }, wish.at);
  if ('mistakes' in turn || turn.roster.bookings.at(-1)?.standing !== wish.to) return false;
  return keepTurn(rows, turn, { before, now, address });
}

function onOwn(rows: RosterRows, { person, now }: Commit, id: string, act: (roster: Roster) => Turn): boolean {
  return rows.bookings.of(id)?.person === person && onBooking(rows, id, now, act);
}

function onBooking(rows: RosterRows, id: string, now: Instant, act: (roster: Roster) => Turn): boolean {
  const booked = rows.bookings.of(id);
  const before = booked && rosterOf(rows, booked.lesson);
  return before !== undefined && keepTurn(rows, act(before), { before, now });
}

function applyByKeeper(
  rows: LessonChangeRows,
  change: Do<'tick-off' | 'add-lessons' | 'cancel-lessons' | 'resume-lessons' | 'write-to-lessons'> | OnLesson,
  now: Instant,
): boolean {
  const today = { now, tzVersion: rows.tzVersion };
  if (change.do === 'add-lessons') return addLessons(rows, change, today);
  if (change.do === 'cancel-lessons') return cancelLessons(rows, change, now);
  if (change.do === 'resume-lessons') return resumeLessons(rows, change, now);
  if (change.do === 'write-to-lessons') return writeToLessons(rows, change, now);
  if (change.do === 'tick-off') {
    return onBooking(rows, change.booking, now, (roster) => tickOff(roster, change.booking, change.came, change.at));
  }
  const before = rosterOf(rows, change.lesson);
  return before !== undefined && onLesson(rows, before, change, today).length === 0;
}

function onLesson(rows: RosterRows, before: Roster, change: OnLesson, today: Today): readonly unknown[] {
  switch (change.do) {
    case 'change-lesson':
      return retell(rows, before, change, today.now);
    case 'move-lesson': {
      const { starts, minutes, seen } = change;
      return move(rows, before, { starts, seen, ...(minutes === null ? {} : { minutes }) }, today);
    }
    case 'cancel-lesson':
      return cancel(rows, before, change, today.now);
    case 'write-to-lesson':
      return write(rows, before, change.text, today.now);
    default:
      return change satisfies never;
  }
}

function addLessons({ lessons }: RosterRows, { drafts, series }: Do<'add-lessons'>, today: Today): boolean {
  const single = drafts.map((draft) => planLesson(draft, today));
  if (!single.every((one) => 'lesson' in one && lessons.add(one.lesson))) return false;
  if (series === null) return true;
  const horizon = horizonOf(series.draft.zone, today.now);
  const planned = lessonsOfSeries(series, horizon, today).lessons;
  return lessons.addSeries(series) && planned.every((lesson) => lessons.add(lesson));
}

/** One that is not as it was shown holds up all: nothing is half called off. */
function cancelLessons(
  rows: RosterRows,
  { lessons, series, days, reason }: Do<'cancel-lessons'>,
  now: Instant,
): boolean {
  const isDone = lessons.every(({ lesson, seen }) => {
    const before = rosterOf(rows, lesson);
    return before !== undefined && cancel(rows, before, { reason, seen }, now).length === 0;
  });
  for (const one of rows.lessons.series().filter(({ draft }) => series.includes(draft.id)))
    rows.lessons.putSeries(withoutDays(one, days));
  return isDone;
}

/** What came to a series meanwhile is not undone with it. */
function resumeLessons(rows: RosterRows, { lessons, series, days }: Do<'resume-lessons'>, now: Instant): boolean {
  const kept = rows.lessons.series();
  const isAsLeft = series.every((one) => {
    const there = kept.find(({ draft }) => draft.id === one.draft.id);
    return days !== null && JSON.stringify(there) === JSON.stringify(withoutDays(one, days));
  });
  if (!isAsLeft) return false;
  for (const one of series) rows.lessons.putSeries(one);
  return lessons.every(({ lesson, seen }) => {
    const before = rosterOf(rows, lesson);
    return before !== undefined && resume(rows, before, seen, now).length === 0;
  });
}

function writeToLessons(rows: RosterRows, { lessons, text }: Do<'write-to-lessons'>, now: Instant): boolean {
  const rosters = lessons.map((lesson) => rosterOf(rows, lesson)).filter((one) => one !== undefined);
  return rosters.length === lessons.length && writeToAll(rows, rosters, text, now).length === 0;
}

/** All seats of a person are given back, whatever the time for leaving. */
export function leaveAll(rows: RosterRows, person: PersonId, now: Instant): void {
  for (const { booking, lesson } of rows.bookings.standingOf(person)) {
    const kept = rosterOf(rows, lesson);
    if (!kept) continue;
    // Kept by itself: an offer that ended is offered on, though there is nothing left to give back.
    const lapsed = lapseOffers(kept, now);
    keepRoster(rows, lapsed, { before: kept, now });
    keepTurn(rows, giveBack(lapsed.roster, booking.id, now), { before: lapsed.roster, now });
  }
}
