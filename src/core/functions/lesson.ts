/** A student's side of lessons: which there are, which one is meant, what becomes of a seat. The commit judges again. */
import type { Around, Calls, Outcome } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { wallAt } from '../lessons/calendar.ts';
import { mistake, statusAt, type Lesson } from '../lessons/lesson.ts';
import { leaveUntil, type ListedLesson, type OwnBooking } from '../lessons/roster.ts';
import { bookingActs, changeSeats, enrol, offerEnd, ownActs } from '../lessons/seats.ts';
import { calendarEntry, lessonValues, untilValues } from '../lessons/tidings.ts';
import type { Instant } from '../units.ts';
import { afterLesson } from './lesson/after.ts';
import { topicOf } from './lesson/heard.ts';
import { wishOf } from './lesson/wish.ts';
import { swapping } from './lesson/swap.ts';
import { goneIn, ownBooking, ownIn, stands, upcomingIn } from './lesson/in-house.ts';
import type { CoreContent } from './core-content.ts';
import { asFacts, phrase, refused, refusedBy, textOf } from './values.ts';

export const lessonCallNames = [
  'lessonWish',
  'lessonList',
  'oneLesson',
  'enrolling',
  'answerBooking',
  'reseating',
  'swapping',
  'ownLessons',
  'teaFamily',
  'afterLesson',
] as const;

type LessonCalls = { readonly [name in (typeof lessonCallNames)[number]]: Calls[string] };

type Listening = Pick<CoreContent, 'teas' | 'seatChange' | 'listen'>;

export const lessonCalls = ({ teas, seatChange, listen }: Listening): LessonCalls => ({
  lessonWish: ({ text, guests = null, tea = null, family = null, lesson = null, last = null, ids = null }, around) => {
    const sentence = listen(textOf(text));
    const isOnTopic = topicOf(sentence, { tea, family }, teas);
    return { gives: wishOf({ sentence, guests, change: seatChange(sentence), isOnTopic, lesson, last, ids }, around) };
  },
  lessonList: ({ ids = null, first }, around) => ({ gives: listed({ ids, first: Number(first ?? 0) }, around) }),
  oneLesson: ({ lesson }, around) => oneLesson(textOf(lesson), around),
  enrolling: (given, around) => enrolling(given, around),
  answerBooking: ({ booking, answer }, around) => answerBooking(textOf(booking), textOf(answer), around),
  reseating: (given, around) => reseating(given, around),
  swapping: (given, around) => swapping(given, around),
  ownLessons: ({ first }, around) => ({ gives: ownLessons(Number(first ?? 0), around) }),
  afterLesson: (given, around) => afterLesson(given, teas, around),
  teaFamily: ({ tea }) => ({ gives: teas.find(({ id }) => id === tea)?.family ?? null }),
});

/** So many fit a screen. */
const mostListed = 8;

function listed({ ids, first }: { readonly ids: Json; readonly first: number }, around: Around): Facts {
  const all = upcomingIn(around).filter(({ id }) => !Array.isArray(ids) || ids.includes(id));
  const shown = all.slice(first, first + mostListed);
  return {
    items: shown.map(itemOf),
    only: all.length === 1 ? (all[0]?.id ?? null) : null,
    told: shown.map((lesson, n) =>
      phrase('lesson-told-line', { n: n + 1, ...lessonValues(lesson), ...stateOf(lesson, around) }),
    ),
    more: Math.max(0, all.length - first - shown.length),
    next: first + shown.length,
  };
}

const itemOf = ({ id, title, startsAt, zone }: Lesson): Facts => ({
  id,
  title: { ...title },
  starts: wallAt(startsAt, zone),
});

/** How it stands for this person: their own booking first, then what is free. */
function stateOf(lesson: ListedLesson, around: Around): Facts {
  const own = ownBooking(lesson.id, around);
  const { free, waiting } = lesson;
  if (own) return { state: own.standing, seats: own.seats, free, waiting, number: own.place };
  return { state: free === 0 ? 'full' : 'free', seats: 0, free, waiting, number: 0 };
}

/** A choice of seats is offered up to so many; more can be written. */
const mostOffered = 4;

function oneLesson(id: string, around: Around): Outcome {
  const own = ownBooking(id, around);
  const lesson = upcomingIn(around).find((one) => one.id === id) ?? own?.lesson;
  if (!lesson || ['cancelled', 'over'].includes(statusAt(lesson, around.nowMs))) return notThere(id, around);
  const isOpen = lesson.startsAt > around.nowMs;
  const until = own ? untilValues(lesson, keptUntil(lesson, own, around.nowMs)) : { until: null };
  return {
    gives: {
      id: lesson.id,
      title: { ...lesson.title },
      told: [
        phrase('lesson-told-one', { ...lessonValues(lesson), after: afterLessons(lesson, around) }),
        ...(lesson.teas.length === 0 ? [] : [phrase('lesson-told-teas', { teas: teaNames(lesson) })]),
        phrase('lesson-told-state', { ...stateOf(lesson, around), ...until }),
      ],
      can: own || !isOpen ? null : lesson.free > 0 ? 'enrol' : 'wait',
      booking: isOpen && own ? own.id : null,
      standing: own?.standing ?? null,
      seats: own?.seats ?? null,
      sizes: Array.from({ length: Math.min(mostOffered, lesson.seats) }, (_, n) => n + 1),
    },
  };
}

/** Cancelled, over or begun; of what is over since longer than a day no more is known. */
function notThere(id: string, around: Around): Outcome {
  const lesson = [...goneIn(around), ...ownIn(around).map((own) => own.lesson)].find((one) => one.id === id);
  if (!lesson) return { wrong: 'no-such-lesson', field: 'lesson', values: {} };
  const why =
    lesson.status === 'cancelled' ? 'cancelled' : statusAt(lesson, around.nowMs) === 'over' ? 'over' : 'begun';
  return { wrong: 'gone-lesson', field: 'lesson', values: { ...lessonValues(lesson), why } };
}

/** Until when a seat is kept for them, or may be given back. */
function keptUntil(lesson: Lesson, own: OwnBooking, now: Instant): Instant {
  return own.standing === 'offered' ? (own.offerUntil ?? offerEnd(lesson, now)) : leaveUntil(lesson, own);
}

const teaNames = ({ teas }: Lesson): readonly Json[] => teas.map((tea) => phrase('my-told-tea', { tea }));

/** What it builds on, by the titles of lessons that are known. */
function afterLessons({ buildsOn }: Lesson, around: Around): Json {
  const known = [...upcomingIn(around), ...ownIn(around).map(({ lesson }) => lesson)];
  const titles = buildsOn.flatMap((id) => {
    const found = known.find((one) => one.id === id || one.series === id);
    return found ? [{ ...found.title }] : [];
  });
  return titles[0] ?? null;
}

/** `to` is "ask" when there are not seats enough and nobody said they would wait. */
function enrolling({ lesson: id, seats, waits = null }: Facts, around: Around): Outcome {
  const lesson = upcomingIn(around).find((one) => one.id === id);
  if (!lesson) return notThere(textOf(id), around);
  const own = ownBooking(lesson.id, around);
  const wish = { id: textOf(around.house?.['event']), person: own?.person ?? 'me', seats: Number(seats) };
  const turn = enrol({ lesson, bookings: own ? [own] : [] }, wish, around.nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  const isFree = wish.seats <= lesson.free;
  const to = isFree ? 'seated' : waits === true ? 'waiting' : 'ask';
  const values = { ...lessonValues(lesson), seats: wish.seats, free: lesson.free, waiting: lesson.waiting };
  const made = turn.roster.bookings.at(-1)!;
  const until = untilValues(lesson, leaveUntil(lesson, made));
  return {
    gives: {
      to,
      told: phrase(`lesson-told-${{ seated: 'enrolled', waiting: 'listed', ask: 'full' }[to]}`, {
        ...values,
        ...until,
      }),
      entry: calendarEntry(lesson, made),
    },
  };
}

/** Without a booking named, the next that such an answer fits. */
function answerBooking(id: string, answer: string, around: Around): Outcome {
  const standing = answer === 'accept' || answer === 'decline' ? 'offered' : 'seated';
  const booking =
    id === ''
      ? ownIn(around)
          .filter((one) => one.standing === standing && one.lesson.startsAt > around.nowMs)
          .toSorted((a, b) => a.lesson.startsAt - b.lesson.startsAt)[0]
      : ownIn(around).find((one) => one.id === id);
  const act = bookingActs.find((name) => name === answer);
  if (!booking || !act) return { wrong: 'no-such-booking', field: 'booking', values: {} };
  const { lesson } = booking;
  if (standing === 'offered' && booking.standing === 'left') return refused(mistake('offer-gone', 'booking'));
  const turn = ownActs[act]({ lesson, bookings: [booking] }, booking.id, around.nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  const after = turn.roster.bookings.find((one) => one.id === booking.id) ?? booking;
  return {
    gives: {
      booking: booking.id,
      what: phrase('lesson-told-was', lessonValues(lesson)),
      told: phrase(`lesson-told-did-${answer}`, { ...lessonValues(lesson), seats: booking.seats }),
      // A place in the list stands in nobody's calendar.
      entry:
        booking.standing === 'waiting' || answer === 'decline' || answer === 'coming'
          ? null
          : calendarEntry(lesson, after),
    },
  };
}

/** More seats, or fewer; `more` comes on top of what they have. */
function reseating({ booking: id, seats = null, more = null }: Facts, around: Around): Outcome {
  const own = ownIn(around).find((one) => one.id === id && stands(one));
  if (!own) return { wrong: 'no-such-booking', field: 'booking', values: {} };
  const { lesson } = own;
  const wanted = more === null ? Number(seats) : own.seats + Number(more);
  const turn = changeSeats({ lesson, bookings: [own] }, { id: own.id, seats: wanted }, around.nowMs);
  // The list here holds nobody else: how many are free, the house has counted.
  if (own.standing === 'seated' && wanted - own.seats > lesson.free) {
    return refused(mistake('full', 'seats', { free: lesson.free }));
  }
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  const values = { ...lessonValues(lesson), seats: wanted, was: own.seats, state: own.standing };
  const isSame = wanted === own.seats;
  return {
    gives: {
      booking: own.id,
      seats: wanted,
      isSame,
      what: phrase(isSame ? 'lesson-told-seats-same' : 'lesson-told-reseat', values),
      told: phrase('lesson-told-reseated', values),
      entry: own.standing === 'seated' ? calendarEntry(lesson, turn.roster.bookings[0] ?? own) : null,
    },
  };
}

/** So much of what was is shown. */
const mostPast = 5;

function ownLessons(first: number, around: Around): Facts {
  const own = ownIn(around).filter(stands);
  const byStart = own.toSorted((a, b) => a.lesson.startsAt - b.lesson.startsAt);
  const ahead = byStart.filter(({ lesson }) => statusAt(lesson, around.nowMs) !== 'over');
  const past = byStart
    .toReversed()
    .filter(
      ({ lesson, standing, came }) =>
        standing === 'seated' && came !== false && statusAt(lesson, around.nowMs) === 'over',
    )
    .slice(0, mostPast);
  const teas = [...new Set(past.flatMap(({ lesson }) => lesson.teas))].slice(0, mostPast);
  const shown = ahead.slice(first, first + mostListed);
  const left = Math.max(0, ahead.length - first - shown.length);
  return {
    items: shown.map(({ lesson }) => itemOf(lesson)),
    more: left,
    next: first + shown.length,
    ahead: shown.map((one, i) =>
      phrase('lesson-told-mine', { n: first + i + 1, ...lessonValues(one.lesson), ...mineOf(one) }),
    ),
    past: past.map(({ lesson }) => phrase('lesson-told-was', lessonValues(lesson))),
    teas: teas.map((tea) => ({ tea })),
  };
}

function mineOf({ lesson, standing, seats, answer, place }: OwnBooking): Facts {
  const state =
    lesson.status === 'cancelled' ? 'cancelled' : standing === 'seated' && answer === 'coming' ? 'coming' : standing;
  return asFacts({ state, seats, number: place });
}
