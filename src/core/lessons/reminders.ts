/** What a booking is told of by itself, and when each is due. Sends nothing and words nothing. */
import type { Instant } from '../units.ts';
import { addDays, dateOf, instantOf, timeOf } from './calendar.ts';
import type { Lesson } from './lesson.ts';
import { afterQuiet, beforeQuiet, isQuiet, nightfallOf, tellableAt } from './quiet.ts';
import type { Booking, Standing } from './roster.ts';

/** In the order they fall due; the last comes after the lesson. */
export const purposes = ['week-before', 'evening-before', 'two-hours-before', 'thanks'] as const;
/** What the waiting list brings: a freed seat is offered, the time to take it is up. */
export const listPurposes = ['offer', 'lapsed'] as const;
export type ListPurpose = (typeof listPurposes)[number];
export type Purpose = (typeof purposes)[number] | ListPurpose;

/** `too-late`: the lesson came first. `overtaken`: a later reminder of the same lesson was due as well. */
export type ReminderState = 'planned' | 'sent' | 'too-late' | 'overtaken' | 'withdrawn';

/** One row: there is one for a (booking, lesson, purpose), however often the lesson is moved. */
export interface Reminder {
  readonly booking: string;
  readonly lesson: string;
  readonly purpose: Purpose;
  /** `lesson.moves` it was planned for: after a move it is planned anew, after a change of time-zone rules not. */
  readonly moves: number;
  readonly dueAt: Instant;
  readonly state: ReminderState;
}

const eveningTime = '18:00';
/** Common practice, no source: so soon after the end that the taste is still there. */
const thanksAfterMs = 15 * 60_000;
/** Common practice, no source: later than this, thanks read like a mistake. */
const thanksForMs = 3 * 86_400_000;

/** When a purpose falls due: before the lesson and by day, except thanks, which come after it and by day. */
export function dueAt(lesson: Lesson, purpose: (typeof purposes)[number]): Instant {
  const { starts, startsAt, endsAt, zone } = lesson;
  const daysBefore = (days: number, time: string): Instant =>
    instantOf(`${addDays(dateOf(starts), -days)}T${time}`, zone);
  if (purpose === 'week-before') return beforeQuiet(daysBefore(7, timeOf(starts)), zone);
  if (purpose === 'evening-before') return beforeQuiet(daysBefore(1, eveningTime), zone);
  if (purpose === 'two-hours-before') return beforeQuiet(startsAt - 2 * 3_600_000, zone);
  return afterQuiet(endsAt + thanksAfterMs, zone);
}

/**
 * The rows to write so that the kept ones fit the lesson and the booking as they are now: new ones, planned anew,
 * withdrawn. Those not named stay as they are, so that asking twice writes nothing the second time. What is due
 * already is not planned for who enrols late. What the waiting list brings is planned when it comes about; here it is
 * only kept true.
 */
export function replanReminders(
  kept: readonly Reminder[],
  lesson: Lesson,
  booking: Booking,
  now: Instant,
): readonly Reminder[] {
  const list = kept.filter(({ purpose, state }) => isOfList(purpose) && state === 'planned');
  const reminders = purposes.flatMap((purpose) => {
    const old = kept.find((one) => one.purpose === purpose);
    if (!isOwed(purpose, lesson, booking))
      return old?.state === 'planned' ? [{ ...old, state: 'withdrawn' as const }] : [];
    const wanted = {
      booking: booking.id,
      lesson: lesson.id,
      purpose,
      moves: lesson.moves,
      dueAt: dueAt(lesson, purpose),
    };
    return replan(old, { ...wanted, state: 'planned' }, now);
  });
  return [...reminders, ...list.flatMap((one) => replanOfList(one, lesson, booking, now))];
}

function replanOfList(old: Reminder, lesson: Lesson, booking: Booking, now: Instant): readonly Reminder[] {
  if (!isOwed(old.purpose, lesson, booking)) return [{ ...old, state: 'withdrawn' }];
  // The lesson may come before the morning now.
  const at = tellableAt(lesson.startsAt, now, lesson.zone);
  return old.dueAt > at ? [{ ...old, dueAt: at }] : [];
}

export const isOfList = (purpose: Purpose): purpose is ListPurpose =>
  (listPurposes as readonly Purpose[]).includes(purpose);

/** Whether this is still for them to hear. */
export function isOwed(purpose: Purpose, lesson: Lesson, { standing }: Booking): boolean {
  const concerned: Standing = purpose === 'offer' ? 'offered' : purpose === 'lapsed' ? 'left' : 'seated';
  return standing === concerned && lesson.status !== 'cancelled';
}

/** What has just come about on the waiting list. */
export function ofList(purpose: ListPurpose, lesson: Lesson, booking: Booking, now: Instant): Reminder {
  const due = tellableAt(lesson.startsAt, now, lesson.zone);
  return { booking: booking.id, lesson: lesson.id, purpose, moves: lesson.moves, dueAt: due, state: 'planned' };
}

function replan(old: Reminder | undefined, wanted: Reminder, now: Instant): readonly Reminder[] {
  const toCome = wanted.dueAt > now;
  if (old === undefined) return toCome ? [wanted] : [];
  if (old.moves !== wanted.moves) {
    if (toCome) return [wanted];
    return old.state === 'planned' ? [{ ...old, state: 'withdrawn' }] : [];
  }
  // Same move: only time-zone rules can have shifted it. Overdue stays planned: it is owed.
  return old.state === 'planned' && old.dueAt !== wanted.dueAt ? [wanted] : [];
}

export interface DueReminders {
  /** The one to send now. */
  readonly send: Reminder | null;
  /** Rows to write with nothing sent: recorded as too late or overtaken, or held until the quiet hours are over. */
  readonly settle: readonly Reminder[];
}

/** What is owed now of one booking's reminders, at most one: after a standstill people get no burst of old ones. */
export function dueReminders(kept: readonly Reminder[], lesson: Lesson, booking: Booking, now: Instant): DueReminders {
  const due = kept.filter((one) => one.state === 'planned' && one.dueAt <= now);
  const late = due.filter((one) => now >= uselessFrom(lesson, one.purpose));
  const useful = due.filter((one) => !late.includes(one)).toSorted((a, b) => rank(a) - rank(b));
  const last = useful.at(-1);
  const settle = [
    ...late.map((one) => ({ ...one, state: 'too-late' as const })),
    ...useful.slice(0, -1).map((one) => ({ ...one, state: 'overtaken' as const })),
  ];
  if (last === undefined) return { send: null, settle };
  if (!isOwed(last.purpose, lesson, booking) || stayedAway(last, booking)) {
    return { send: null, settle: [...settle, { ...last, state: 'withdrawn' }] };
  }
  const held = isQuiet(now, lesson.zone) && waitsForMorning(lesson, last.purpose, now);
  return held
    ? { send: null, settle: [...settle, { ...last, dueAt: afterQuiet(now, lesson.zone) }] }
    : { send: last, settle };
}

/** Until when what is handed over now may be tried: at nightfall it is looked at anew, unless it cannot wait. */
export function sendableUntil(lesson: Lesson, purpose: Purpose, now: Instant): Instant {
  const useless = uselessFrom(lesson, purpose);
  const nightfall = nightfallOf(now, lesson.zone);
  const goesOn = isQuiet(now, lesson.zone) || !waitsForMorning(lesson, purpose, nightfall);
  return goesOn ? useless : Math.min(nightfall, useless);
}

/** In the night of this instant. A lesson that comes before the morning wakes people itself; thanks never do. */
function waitsForMorning(lesson: Lesson, purpose: Purpose, night: Instant): boolean {
  return purpose === 'thanks' || afterQuiet(night, lesson.zone) < uselessFrom(lesson, purpose);
}

/** Nothing but thanks is of use once the lesson has begun. */
function uselessFrom(lesson: Lesson, purpose: Purpose): Instant {
  return purpose === 'thanks' ? lesson.endsAt + thanksForMs : lesson.startsAt;
}

function rank(reminder: Reminder): number {
  return (purposes as readonly Purpose[]).indexOf(reminder.purpose);
}

function stayedAway(reminder: Reminder, booking: Booking): boolean {
  return reminder.purpose === 'thanks' && booking.came === false;
}
