/** What a shopkeeper does with one lesson: moves, cancels, retells it, writes to those who come; everybody concerned is told. */
import {
  cancelLesson,
  moveLesson,
  planLesson,
  retellLesson,
  statusAt,
  type Lesson,
  type LessonDraft,
  type Move,
  type Retold,
  type Today,
} from '../../core/lessons/lesson.ts';
import { lettersTo } from '../../core/lessons/door-list.ts';
import { resumeLesson } from '../../core/lessons/resuming.ts';
import { closedMistakes, onList, toBeTold, type Booking, type Roster } from '../../core/lessons/roster.ts';
import { resizeLesson } from '../../core/lessons/seats.ts';
import {
  cancelledTidings,
  changedTidings,
  movedTidings,
  resumedTidings,
  writtenTidings,
  writtenToAllTidings,
  type Tidings,
} from '../../core/lessons/tidings.ts';
import type { Instant, Mistake } from '../../core/units.ts';
import type { WrongRow } from '../lesson-contract.ts';
import { dropLapse } from './reminding.ts';
import { keepRoster, rosterOf } from './rosters.ts';
import { tell, type RosterRows } from './telling.ts';

/** What hindered it; nothing when it is done. */
type Hindered = readonly Mistake[];
const done: Hindered = [];

export function move(rows: RosterRows, before: Roster, how: Move, today: Today): Hindered {
  const planned = moveLesson(before.lesson, how, today);
  if ('mistakes' in planned) return planned.mistakes;
  keepLesson(rows, before, planned.lesson, today.now);
  const concerned = toBeTold(rosterOf(rows, planned.lesson.id) ?? before);
  tellAll(rows, concerned, today.now, (booking) => movedTidings(planned.lesson, before.lesson, booking));
  return done;
}

export function cancel(
  rows: RosterRows,
  before: Roster,
  how: { readonly reason: string; readonly seen: number },
  now: Instant,
): Hindered {
  const planned = cancelLesson(before.lesson, how, now);
  if ('mistakes' in planned) return planned.mistakes;
  // Who has not heard yet that their time was up hears this instead.
  const thinkSo = before.bookings.filter((one) => one.standing === 'left' && dropLapse(rows, one, now));
  keepLesson(rows, before, planned.lesson, now);
  tellAll(rows, [...onList(before), ...thinkSo], now, (booking) => cancelledTidings(planned.lesson, booking));
  return done;
}

/** Whom a seat is offered hears of that, and so that it takes place. */
export function resume(rows: RosterRows, before: Roster, seen: number, now: Instant): Hindered {
  const turn = resumeLesson(before, seen, now);
  if ('mistakes' in turn) return turn.mistakes;
  keepRoster(rows, turn, { before, now });
  const { lesson } = turn.roster;
  const concerned = onList(turn.roster).filter(({ standing }) => standing !== 'offered');
  tellAll(rows, concerned, now, (booking) => resumedTidings(lesson, booking));
  return done;
}

export interface Retelling {
  readonly retold: Retold;
  /** Null leaves them as they are. */
  readonly seats: number | null;
  readonly seen: number;
}

export function retell(rows: RosterRows, before: Roster, { retold, seats, seen }: Retelling, now: Instant): Hindered {
  const planned = retellLesson(before.lesson, retold, seen, now);
  if ('mistakes' in planned) return planned.mistakes;
  const { lesson } = planned;
  const changed = { ...before, lesson };
  const turn = seats === null ? { roster: changed, changes: [] } : resizeLesson(changed, seats, now);
  if ('mistakes' in turn) return turn.mistakes;
  keepRoster(rows, turn, { before, now });
  if (concerns(before.lesson, lesson)) {
    tellAll(rows, toBeTold(rosterOf(rows, lesson.id) ?? before), now, (booking) => changedTidings(lesson, booking));
  }
  return done;
}

/** Whether who booked must know: a new price in words or another tea is no news to send. */
function concerns(before: Lesson, after: Lesson): boolean {
  return (['title', 'place', 'teacher', 'bring'] as const).some((field) => differs(before[field], after[field]));
}

export function write(rows: RosterRows, { lesson, bookings }: Roster, text: string, now: Instant): Hindered {
  const cancelled = closedMistakes(lesson, now).filter(({ code }) => code === 'lesson-cancelled');
  if (cancelled.length > 0) return cancelled;
  const seated = bookings.filter((one) => one.standing === 'seated');
  tellAll(rows, seated, now, () => writtenTidings(lesson, text));
  return done;
}

/** Once to each person, however many of the lessons they come to. */
export function writeToAll(rows: RosterRows, rosters: readonly Roster[], text: string, now: Instant): Hindered {
  const [only] = rosters;
  if (rosters.length === 1 && only) return write(rows, only, text, now);
  const cancelled = rosters.filter(({ lesson }) => lesson.status === 'cancelled');
  if (cancelled.length > 0) return cancelled.flatMap(({ lesson }) => closedMistakes(lesson, now));
  const seated = rosters.map(({ bookings }) => bookings.filter(({ standing }) => standing === 'seated'));
  tellAll(rows, lettersTo(seated), now, () => writtenToAllTidings(text));
  return done;
}

/** Nothing is undone here: whoever calls it drops everything when anything is wrong. */
export function putAll(rows: RosterRows, drafts: readonly LessonDraft[], today: Today): readonly WrongRow[] {
  return drafts
    .map((draft, n) => ({ n, mistakes: put(rows, draft, today) }))
    .filter(({ mistakes }) => mistakes.length > 0);
}

/** A table may hold a season that is half over: what is past is left as it is. */
function put(rows: RosterRows, draft: LessonDraft, today: Today): Hindered {
  const known = rosterOf(rows, draft.id);
  if (!known) return add(rows, draft, today);
  if (statusAt(known.lesson, today.now) === 'over' || known.lesson.status === 'cancelled') return done;
  const hindered = changeTo(rows, known, draft, today.now);
  const { starts, minutes, zone } = known.lesson;
  if (hindered.length > 0 || (starts === draft.starts && minutes === draft.minutes && zone === draft.zone)) {
    return hindered;
  }
  const changed = rosterOf(rows, draft.id) ?? known;
  const there = { ...changed, lesson: { ...changed.lesson, zone: draft.zone } };
  return move(rows, there, { starts: draft.starts, minutes: draft.minutes, seen: there.lesson.revision }, today);
}

function add(rows: RosterRows, draft: LessonDraft, today: Today): Hindered {
  const planned = planLesson(draft, today);
  if ('lesson' in planned) rows.lessons.add(planned.lesson);
  const wrong = 'mistakes' in planned ? planned.mistakes : done;
  return wrong.filter(({ code }) => code !== 'lesson-past');
}

function changeTo(rows: RosterRows, known: Roster, draft: LessonDraft, now: Instant): Hindered {
  const { id: _, series: __, starts: ___, minutes: ____, zone: _____, seats, ...retold } = draft;
  const { lesson } = known;
  const isSame = (Object.keys(retold) as (keyof typeof retold)[]).every((name) => !differs(retold[name], lesson[name]));
  if (isSame && seats === lesson.seats) return done;
  return retell(rows, known, { retold, seats: seats === lesson.seats ? null : seats, seen: lesson.revision }, now);
}

function differs(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) !== JSON.stringify(b);
}

function keepLesson(rows: RosterRows, before: Roster, lesson: Lesson, now: Instant): void {
  keepRoster(rows, { roster: { ...before, lesson }, changes: [] }, { before, now });
}

function tellAll(
  rows: RosterRows,
  bookings: readonly Booking[],
  now: Instant,
  tidings: (booking: Booking) => Tidings,
): void {
  for (const booking of bookings) tell(rows, booking, { tidings: tidings(booking), now });
}
