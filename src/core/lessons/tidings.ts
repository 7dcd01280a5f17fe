/** What people are told of a lesson they booked, as sentences not yet in words. Decides neither who is told nor when. */
import type { Instant, Json } from '../units.ts';
import { wallAt } from './calendar.ts';
import type { Lesson, Wording } from './lesson.ts';
import type { ListPurpose, Purpose } from './reminders.ts';
import type { Booking } from './roster.ts';

type Values = { readonly [name: string]: Json };

interface Sentence {
  readonly key: string;
  readonly values: Values;
}

/** A message before it is in words. */
export interface Tidings {
  /** What it is about, where a message has a line for that. */
  readonly subject: Sentence;
  readonly phrases: readonly Sentence[];
  readonly choices: readonly TidingsChoice[];
  readonly show?: Values;
}

export interface TidingsChoice {
  readonly id: string;
  readonly label: { readonly key: string; readonly values: Values };
  readonly gives: Values;
  readonly from: { readonly flow: string; readonly place: string };
}

/**
 * The instants of the times on the wall that a sentence says: where a channel can, it shows each person their own clock.
 * They stand beside the times, not in their place, so that what was written down before can still be said.
 */
export function saidInstants(zone: string, ...instants: readonly Instant[]): Json {
  return instants.map((instantMs) => ({ key: 'lesson-when', values: { starts: wallAt(instantMs, zone), instantMs } }));
}

/** Everything a sentence may want of a lesson. */
export function lessonValues(lesson: Lesson): Values {
  const { id, title, level, place, teacher, minutes, price, bring, reason } = lesson;
  return {
    id,
    title: { ...title },
    level,
    place: said(place),
    teacher: teacher === '' ? null : teacher,
    starts: wallAt(lesson.startsAt, lesson.zone),
    instants: saidInstants(lesson.zone, lesson.startsAt),
    minutes,
    price: said(price),
    bring: said(bring),
    reason,
  };
}

/** Null where nothing is said. */
function said(words: Wording): Json {
  return words.en === '' ? null : { ...words };
}

/** What the calendar of who booked is to hold of it. */
export function calendarEntry(lesson: Lesson, booking: Pick<Booking, 'id' | 'revision' | 'standing'>): Values {
  const { title, place, bring, teacher, startsAt, endsAt } = lesson;
  return {
    booking: booking.id,
    // Both revisions only rise, so their sum does.
    sequence: lesson.revision + booking.revision,
    startsAtMs: startsAt,
    endsAtMs: endsAt,
    cancelled: lesson.status === 'cancelled' || booking.standing === 'left',
    title: { ...title },
    place: { ...place },
    bring: { ...bring },
    teacher,
  };
}

export function offerTidings(lesson: Lesson, booking: Booking): Tidings {
  const until = booking.offerUntil ?? 0;
  return {
    ...told('offer', { ...lessonValues(lesson), seats: booking.seats, ...untilValues(lesson, until) }),
    choices: [answerChoice('accept', booking), answerChoice('decline', booking)],
  };
}

/** Until when a seat is kept, or may be given back. */
export function untilValues({ zone, startsAt }: Pick<Lesson, 'zone' | 'startsAt'>, until: Instant): Values {
  return { until: wallAt(until, zone), instants: saidInstants(zone, startsAt, until) };
}

export function lapsedTidings(lesson: Lesson): Tidings {
  return { ...told('lapsed', lessonValues(lesson)), choices: [] };
}

/** Only who has a seat is asked whether they can come. */
export function movedTidings(lesson: Lesson, before: Lesson, booking: Booking): Tidings {
  const was = wallAt(before.startsAt, before.zone);
  const instants = saidInstants(lesson.zone, lesson.startsAt, before.startsAt);
  return {
    ...told(lesson.startsAt === before.startsAt ? 'lasts' : 'moved', { ...lessonValues(lesson), was, instants }),
    choices: booking.standing === 'seated' ? comingChoices(booking) : [],
    ...entryIfSeated(lesson, booking),
  };
}

export function cancelledTidings(lesson: Lesson, booking: Booking): Tidings {
  return {
    ...told(lesson.reason === '' ? 'cancelled' : 'cancelled-because', lessonValues(lesson)),
    choices: [],
    ...entryIfSeated(lesson, booking),
  };
}

/** … which takes place after all. */
export function resumedTidings(lesson: Lesson, booking: Booking): Tidings {
  const { standing, seats } = booking;
  return {
    ...told('resumed', { ...lessonValues(lesson), standing, seats }),
    choices: standing === 'seated' ? comingChoices(booking) : [],
    ...entryIfSeated(lesson, booking),
  };
}

export function changedTidings(lesson: Lesson, booking: Booking): Tidings {
  return { ...told('changed', lessonValues(lesson)), choices: [], ...entryIfSeated(lesson, booking) };
}

/** New rules for the clocks: the lesson stays where it is on the wall, the calendar must be put right. */
export function recomputedTidings(lesson: Lesson, booking: Booking): Tidings {
  return { ...told('recomputed', lessonValues(lesson)), choices: [], ...entryIfSeated(lesson, booking) };
}

export function writtenTidings(lesson: Lesson, text: string): Tidings {
  return { ...told('written', { ...lessonValues(lesson), text }), choices: [] };
}

/** … to all who come to lessons, whichever. */
export const writtenToAllTidings = (text: string): Tidings => ({
  subject: { key: 'lesson-subject-all', values: {} },
  phrases: [{ key: 'lesson-told-written-to-all', values: { text } }],
  choices: [],
});

export function reminderTidings(lesson: Lesson, booking: Booking, purpose: Exclude<Purpose, ListPurpose>): Tidings {
  if (purpose === 'thanks') {
    const choices = lesson.teas.map((tea) => choice('brew', { tea }, { tea }));
    return { ...told(choices.length > 0 ? 'thanks' : 'thanks-only', lessonValues(lesson)), choices };
  }
  return {
    ...told(purpose, { ...lessonValues(lesson), seats: booking.seats }),
    choices: booking.answer === 'coming' ? [answerChoice('absent', booking)] : comingChoices(booking),
  };
}

const comingChoices = (booking: Booking): readonly TidingsChoice[] => [
  answerChoice('coming', booking),
  answerChoice('absent', booking),
];

function answerChoice(answer: 'coming' | 'absent' | 'accept' | 'decline', booking: Booking): TidingsChoice {
  return choice(answer, {}, { booking: booking.id, answer });
}

/** The choices are the front's, so that they count wherever in the conversation the person is. */
function choice(name: string, values: Values, gives: Values): TidingsChoice {
  const key = `choice-lesson-${name}`;
  return { id: key, label: { key, values }, gives, from: { flow: 'front', place: 'hello' } };
}

function entryIfSeated(lesson: Lesson, booking: Booking): Pick<Tidings, 'show'> {
  return booking.standing === 'seated' ? { show: { kind: 'calendar', entry: calendarEntry(lesson, booking) } } : {};
}

function told(name: string, values: Values): Pick<Tidings, 'phrases' | 'subject'> {
  const { title = null, starts = null } = values;
  const subject = { key: 'lesson-subject', values: { what: name, title, starts } };
  return { phrases: [{ key: `lesson-told-${name}`, values }], subject };
}

/** To someone whose seat the shop has given back for them. */
export function givenBackTidings(
  lesson: Lesson,
  booking: Booking,
  { key, hadSeat }: { readonly key: 'did-leave' | 'taken-off'; readonly hadSeat: boolean },
): Tidings {
  const entry = { show: { kind: 'calendar', entry: calendarEntry(lesson, booking) } };
  return { ...told(key, lessonValues(lesson)), choices: [], ...(hadSeat ? entry : {}) };
}

/** … and who has it again. */
export function putBackTidings(lesson: Lesson, booking: Booking): Tidings {
  const { standing, seats } = booking;
  const values = { ...lessonValues(lesson), standing, seats };
  return { ...told('put-back', values), choices: [], ...entryIfSeated(lesson, booking) };
}

/** To someone who was written down by the shop, and was not there. */
export function enrolledTidings(lesson: Lesson, booking: Booking): Tidings {
  const key = booking.standing === 'seated' ? 'written-down' : 'written-down-waiting';
  return {
    ...told(key, { ...lessonValues(lesson), seats: booking.seats }),
    choices: [],
    ...entryIfSeated(lesson, booking),
  };
}

/** To someone whose seats the shop has changed for them: how many they have now, and had. */
export function reseatedTidings(lesson: Lesson, { seats, standing }: Booking, was: number): Tidings {
  return { ...told('reseated-by-shop', { ...lessonValues(lesson), seats, was, standing }), choices: [] };
}

/** … whom it has put into another lesson; what was booked before is theirs no more. */
export function transferredTidings(lesson: Lesson, before: Lesson, booking: Booking): Tidings {
  const was = { key: 'lesson-told-was', values: lessonValues(before) };
  return {
    ...told('transferred', { ...lessonValues(lesson), seats: booking.seats, was }),
    choices: [],
    ...entryIfSeated(lesson, booking),
  };
}

/** … to whom alone it writes. */
export const writtenToOneTidings = (lesson: Lesson, text: string): Tidings => ({
  ...told('written-to-one', { ...lessonValues(lesson), text }),
  choices: [],
});
