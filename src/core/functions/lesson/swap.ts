/** A seat given up for one in another lesson, both at once or neither. Which lessons are meant; the commit judges again. */
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { addDays, dateOf } from '../../lessons/calendar.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import { leaveUntil, type ListedLesson, type OwnBooking } from '../../lessons/roster.ts';
import { enrol, ownActs } from '../../lessons/seats.ts';
import { onMeantDay } from '../../lessons/spoken/meant-day.ts';
import { hearChange, hearSwap, weeksIn } from '../../lessons/spoken/swap.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import { calendarEntry, lessonValues, untilValues } from '../../lessons/tidings.ts';
import { phrase, refusedBy, textOf } from '../values.ts';
import { ownIn, stands, upcomingIn } from './in-house.ts';

/** What a sentence wants changed; null when it wants nothing of the kind, or nothing is booked. */
export function swapOf(sentence: Sentence, around: Around, flow: Json = null): Facts | null {
  const upcoming = upcomingIn(around);
  const ahead = ownIn(around).filter((one) => stands(one) && one.lesson.startsAt > around.nowMs);
  const zone = [...upcoming, ...ahead.map(({ lesson }) => lesson)][0]?.zone;
  const swap = zone === undefined || ahead.length === 0 ? null : hearSwap(sentence, around.nowMs, zone);
  if (swap === null) return changeOf(sentence, { ahead, upcoming }, around, flow);
  const own = ownMeant(ahead, sentence.text, swap.from);
  const others = upcoming.filter(({ id }) => id !== own?.lesson.id);
  const { date } = onMeantDay({ ...swap, date: swap.to }, others, around.nowMs);
  const there = others.filter(({ starts }) => dateOf(starts) === date);
  const lesson = meantThere(there, sentence.text, own?.lesson);
  return { want: 'swap', booking: own?.id ?? null, lesson: lesson?.id ?? null, noneThen: there.length === 0 };
}

interface Ground {
  readonly ahead: readonly OwnBooking[];
  readonly upcoming: readonly ListedLesson[];
}

/** Without a day: to a lesson called by its title, or to the same one of another week. */
function changeOf(sentence: Sentence, { ahead, upcoming }: Ground, around: Around, flow: Json): Facts | null {
  const zone = ahead[0]?.lesson.zone;
  const change = zone === undefined ? null : hearChange(sentence, around.nowMs, zone);
  const isOfLessons = lessonFlows.has(flow) || sentence.says('of-lessons');
  if (change === null || !isOfLessons) return null;
  const own = ahead.length === 1 ? ahead[0] : ownMeant(ahead, sentence.text, undefined);
  const at = own && dateOf(own.lesson.starts);
  const isOfItsWeek = at !== undefined && change.span !== undefined && at >= change.span.from && at <= change.span.to;
  // "Next week", said of a lesson of next week, is the week after.
  const weeks = change.weeksLater ?? (isOfItsWeek ? 1 : 0);
  const day = at && weeks !== 0 ? addDays(at, 7 * weeks) : undefined;
  const span = isOfItsWeek ? undefined : change.span;
  const there = upcoming.filter(
    ({ id, starts }) =>
      id !== own?.lesson.id &&
      (day === undefined || dateOf(starts) === day) &&
      (span === undefined || (dateOf(starts) >= span.from && dateOf(starts) <= span.to)),
  );
  const [titled] = titledLessons(there, { rest: sentence.text });
  if (!titled && day === undefined && span === undefined)
    return nextTime(sentence, own, upcoming) ?? sometime(sentence, own, { ahead, upcoming });
  const lesson = titled ?? meantThere(there, '', own?.lesson);
  return { want: 'swap', booking: own?.id ?? null, lesson: lesson?.id ?? null, noneThen: there.length === 0 };
}

/** "And the week after?", said of one that is only shown: the same a week later, to be looked at. Null where nothing of the kind is said. */
export function insteadOfShown(sentence: Sentence, shown: Json, around: Around): Facts | null {
  const upcoming = upcomingIn(around);
  const one = upcoming.find(({ id }) => id === shown);
  const weeks = one === undefined ? undefined : weeksIn(sentence);
  if (one === undefined || weeks === undefined) return null;
  const day = addDays(dateOf(one.starts), 7 * weeks);
  const alike = upcoming.filter((other) => other.id !== one.id && isSameKind(other, one));
  const there = alike.find(({ starts }) => dateOf(starts) === day);
  if (there) return { want: 'enrol', lesson: there.id, seats: null, isSure: false };
  return { want: 'list', ids: alike.map(({ id }) => id), noneThen: true };
}

/** "The next one", 改到下次: of the same kind, after the one there is. */
function nextTime(sentence: Sentence, own: OwnBooking | undefined, upcoming: readonly ListedLesson[]): Facts | null {
  if (own === undefined || !sentence.says('next-time')) return null;
  const later = upcoming.filter(({ startsAt }) => startsAt > own.lesson.startsAt);
  const next = later.find((one) => isSameKind(one, own.lesson));
  return { want: 'swap', booking: own.id, lesson: next?.id ?? null, noneThen: next === undefined };
}

/** 可以改期嗎: to when, is still to be asked; the same on other days, or whatever there is. */
function sometime(sentence: Sentence, own: OwnBooking | undefined, { ahead, upcoming }: Ground): Facts | null {
  if (!sentence.says('moves-sometime')) return null;
  const others = upcoming.filter(({ id }) => !ahead.some(({ lesson }) => lesson.id === id));
  const alike = own === undefined ? [] : others.filter((one) => isSameKind(one, own.lesson));
  const ids = (alike.length > 0 ? alike : others).map(({ id }) => id);
  if (own === undefined || ids.length === 0) return { want: 'swap', booking: own?.id ?? null, lesson: null };
  return {
    want: 'move',
    booking: own.id,
    lesson: own.lesson.id,
    what: phrase('lesson-told-was', lessonValues(own.lesson)),
    ids,
  };
}

/** Elsewhere a title may be the tea that is brewed. */
const lessonFlows: ReadonlySet<Json> = new Set(['lesson', 'front', 'answers']);

/** By its day, else by its title, else the only one. */
function ownMeant(ahead: readonly OwnBooking[], text: string, from: string | undefined): OwnBooking | undefined {
  const onDay = from === undefined ? [] : ahead.filter(({ lesson }) => dateOf(lesson.starts) === from);
  const among = onDay.length > 0 ? onDay : ahead;
  const titled = titledLessons(
    among.map(({ lesson }) => lesson),
    { rest: text },
  );
  if (titled.length === 1) return among.find(({ lesson }) => lesson.id === titled[0]?.id);
  return among.length === 1 ? among[0] : undefined;
}

/** The same lesson on another day before any other; whoever means another says so when asked. */
function meantThere(there: readonly ListedLesson[], text: string, own: Lesson | undefined): ListedLesson | undefined {
  return (own && there.find((one) => isSameKind(one, own))) ?? titledLessons(there, { rest: text })[0] ?? there[0];
}

/** What will be asked and told; a mistake when the one cannot be given back, or the other is full. */
export function swapping({ booking, lesson: id }: Facts, around: Around): Outcome {
  const own = ownIn(around).find((one) => one.id === booking && stands(one));
  const lesson = upcomingIn(around).find((one) => one.id === id);
  if (!own) return { wrong: 'no-such-booking', field: 'booking', values: {} };
  if (!lesson) return { wrong: 'no-such-lesson', field: 'lesson', values: {} };
  const left = ownActs.leave({ lesson: own.lesson, bookings: [own] }, own.id, around.nowMs);
  if ('mistakes' in left) return refusedBy(left.mistakes);
  const wish = { id: textOf(around.house?.['event']), person: own.person, seats: own.seats };
  const booked = ownIn(around).find((one) => one.lesson.id === lesson.id && stands(one));
  const taken = enrol({ lesson, bookings: booked ? [booked] : [] }, wish, around.nowMs);
  if ('mistakes' in taken) return refusedBy(taken.mistakes);
  const made = taken.roster.bookings.at(-1)!;
  const was = phrase('lesson-told-was', lessonValues(own.lesson));
  const values = { ...lessonValues(lesson), seats: own.seats, was, free: lesson.free };
  return {
    gives: {
      isFull: own.seats > lesson.free,
      seats: own.seats,
      what: phrase(own.seats > lesson.free ? 'lesson-told-swap-full' : 'lesson-told-swap', values),
      told: phrase('lesson-told-swapped', { ...values, ...untilValues(lesson, leaveUntil(lesson, made)) }),
      entry: calendarEntry(lesson, made),
    },
  };
}

const isSameKind = (one: Lesson, own: Lesson): boolean =>
  one.title.en === own.title.en || (one.series !== undefined && one.series === own.series);
