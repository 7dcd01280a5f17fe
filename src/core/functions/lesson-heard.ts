/** What a message says of lessons, by the lessons there are: anywhere, and where they are shown. */
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { dateOf, wallAt } from '../lessons/calendar.ts';
import { asksDetailAlone } from '../lessons/spoken/detail.ts';
import { onMeantDay } from '../lessons/spoken/meant-day.ts';
import { seatsFewer, seatsMore } from '../lessons/spoken/seat-change.ts';
import { hearSaid, seatsAlone } from '../lessons/spoken/said.ts';
import { hearLesson } from '../lessons/spoken/spoken.ts';
import {
  asksForNext,
  hearWish,
  isAboutLessons,
  isSuch,
  isSureOf,
  lessonElsewhen,
  lessonsOn,
  meantLessons,
  type Wish,
} from '../lessons/spoken/wish.ts';
import { shownLikeness, titledLessons } from '../lessons/spoken/titles.ts';
import type { Lesson } from '../lessons/lesson.ts';
import type { ListedLesson, OwnBooking } from '../lessons/roster.ts';
import { doorsIn } from './desk-board.ts';
import { lessonValues } from '../lessons/tidings.ts';
import { phrase } from './asked-brew.ts';
import { swapOf } from './lesson-swap.ts';
import { goneIn, ownIn, stands, upcomingIn } from './lessons-in-house.ts';

/** Whether a message asks for a seat, or for one's own booking, by the names of the lessons there are. */
export function isLessonWish(text: string, house: Facts | undefined): boolean {
  const known = [...upcomingIn({ house }), ...goneIn({ house }), ...ownIn({ house }).map(({ lesson }) => lesson)];
  return known.length > 0 && isAboutLessons(text, known);
}

/** What can only be of a booking just made: "what should I bring?", "改三位", where nothing else is spoken of. */
export function isOfOwnLesson(text: string, flow: Json, around: Around): boolean {
  if (swapOf(text, around, flow)) return true;
  const isShort = (text.length <= shortWish || seatsFewer(text) !== null) && !elsewhere.has(flow);
  if ((flow !== 'front' && !isShort) || !ownIn(around).some((one) => isAhead(one, around))) return false;
  if (flow === 'front' && (asksDetailAlone(text) || seatsAlone(text) !== null || seatsMore(text) !== null)) return true;
  if (seatsFewer(text) !== null && !elsewhere.has(flow)) return true;
  return text.length <= shortWish && hearWish(text, around.nowMs, 'UTC').want === 'leave';
}

/** Where lessons are talked about, what names nothing of a tea or a brew is still about them. */
export function goesOnAboutLessons(text: string, heard: Facts, flow: Json): boolean {
  const tellsNothing = ofABrew.every((name) => (heard[name] ?? null) === null);
  return flow === 'lesson' && heard['kind'] === 'brew' && tellsNothing && !brewTalk.test(text);
}

const ofABrew = [
  'tea',
  'teas',
  'family',
  'vessel',
  'volumeMl',
  'leafG',
  'tempC',
  'infusion',
  'turn',
  'style',
  'unknownTea',
];
const brewTalk =
  /\b(?:brew\w*|steep\w*|infus\w*|rins\w*|leaf|leaves|water|grams?|bitter|weak|strong\w*|tea)\b|[泡沖冲水茶葉叶苦澀涩濃浓淡]/iu;

/** There "I won't" is said of something else. */
const elsewhere: ReadonlySet<Json> = new Set(['guide', 'shop', 'lesson-desk', 'ask', 'my-tea', 'answers']);

/** Longer than that, "I can't come to the shop before six" may be about anything. */
const shortWish = 24;

const isAhead = (one: OwnBooking, { nowMs }: Around): boolean => stands(one) && one.lesson.endsAt > nowMs;

/** A shopkeeper's sentence with a day, an hour and a number of seats plans a lesson, whatever tea it names. */
export function plansLesson(text: string, { house, nowMs }: Around, zone: string): boolean {
  if (house?.['keeper'] !== true) return false;
  const { said, mistakes } = hearLesson(text, nowMs, zone);
  const isWhole = !mistakes.some(({ code }) => code === 'lesson-day-missing' || code === 'lesson-time-missing');
  return said.seats !== undefined && isWhole && ['question', 'detail'].includes(hearWish(text, nowMs, zone).want);
}

/** Where lessons are shown; a shopkeeper is shown those under way as well. Null elsewhere. */
export function saidOfLessons(text: string, flow: Json, around: Around): Json {
  if (flow !== 'lesson' && flow !== 'lesson-desk') return null;
  if (flow === 'lesson' && swapOf(text, around, flow)) return null;
  const doors = doorsIn(around).map(({ lesson }) => lesson);
  const lessons = flow === 'lesson' ? shownIn(around) : doors.filter(({ status }) => status !== 'cancelled');
  const said = hearSaid(text, { lessons, now: around.nowMs, zone: zoneOf(lessons) });
  return said === null ? null : { ...said };
}

/** Where lessons are shown, what was on the list a while ago can be named as well. */
const shownIn = (around: Around): readonly Lesson[] => [...upcomingIn(around), ...goneIn(around)];

const zoneOf = (lessons: readonly Lesson[]): string => lessons[0]?.zone ?? 'UTC';

export function wishOf(text: string, guests: Json, around: Around): Facts {
  const swap = swapOf(text, around, 'lesson');
  if (swap) return swap;
  const upcoming = upcomingIn(around);
  const zone = zoneOf(shownIn(around));
  const today = dateOf(wallAt(around.nowMs, zone));
  const changed = seatsChanged(text, around);
  if (changed) return changed;
  const said = hearWish(text, around.nowMs, zone);
  const heard = onMeantDay(said, daysMeantBy(said, around), around.nowMs);
  // "My sister can't come, just one seat": the seat stays.
  const wish: Wish = heard.want === 'leave' && seatsAlone(text) !== null ? { ...heard, want: 'question' } : heard;
  const own = spokenOfOwn(wish, around);
  const isOwn = ({ id }: ListedLesson): boolean => own.some(({ lesson }) => lesson.id === id);
  // Who names a lesson they have not booked does not mean the one they have.
  const isOfSpan = wish.span !== undefined && wish.want === 'question';
  const such =
    isOfSpan || ['list', 'enrol'].includes(wish.want) ? upcoming.filter((one) => isSuch(one, wish)) : upcoming;
  const open = such.length > 0 ? such : upcoming;
  const among =
    wish.want === 'leave' ? [...own.map(({ lesson }) => lesson), ...upcoming.filter((one) => !isOwn(one))] : open;
  // Nothing but a title or a day, where lessons are shown.
  const isShown =
    wish.want === 'question' &&
    hearSaid(text, { lessons: shownIn(around), now: around.nowMs, zone: zoneOf(shownIn(around)) })?.named;
  const other = wish.want === 'enrol' || wish.want === 'list' || isShown ? otherwise(wish, around) : {};
  if (other.gone) return { want: 'enrol', seats: null, lesson: other.gone.id, booking: null, ids: null };
  const named = other.elsewhen ? [other.elsewhen] : meantLessons(among, wish, ...(isShown ? [shownLikeness] : []));
  const meant = wish.want === 'leave' ? named.filter(isOwn) : named;
  const isOfOwn = wish.want === 'detail' || (wish.want === 'question' && seatsAlone(text) !== null);
  const next = wish.want !== 'leave' && asksForNext(text) && meant.length > 1 ? nextOf(meant) : undefined;
  const one = isOfOwn ? spokenOf(wish, own, upcoming) : meant.length === 1 ? meant[0] : next;
  return {
    want: isShown ? 'enrol' : wish.want,
    seats: seatsAlone(text) ?? wish.seats ?? guests,
    lesson: one?.id ?? null,
    isSure: one !== undefined && (upcoming.length === 1 || one === next || isSureOf(one, wish)),
    booking: own.find(({ lesson }) => lesson.id === one?.id)?.id ?? null,
    elsewhen: other.elsewhen ? phrase('lesson-told-elsewhen', elsewhenValues(other.elsewhen)) : null,
    isNext: next !== undefined,
    isDated: wish.date !== undefined,
    titled: titledLessons(upcoming, wish)[0]?.id ?? null,
    // Nothing on that day: all there are.
    ids: meant.length === 0 ? null : meant.map(({ id }) => id),
    noneThen:
      wish.date !== undefined && among.length > 0 && (meant.length === 0 || (wish.isLater === true && !isShown)),
    isPast: wish.date !== undefined && wish.date < today,
    noneSuch: such.length === 0 && upcoming.length > 0,
    dayWrong: wish.dayWrong ? phrase(`mistake-${wish.dayWrong.code}`, wish.dayWrong.values) : null,
  };
}

/** Of the only booking there is: two more seats, or one fewer; who was the last to come gives it back. */
function seatsChanged(text: string, around: Around): Facts | null {
  const own = ownIn(around).filter((one) => isAhead(one, around));
  const [one] = own;
  const fewer = seatsFewer(text);
  const change = fewer === null ? seatsMore(text) : -fewer;
  if (own.length !== 1 || one === undefined || change === null || one.seats + change < 1) return null;
  return { want: 'change', booking: one.id, lesson: one.lesson.id, more: change };
}

/** "I can't come on Saturday" is said of a booking, where there is one. */
function daysMeantBy({ want }: Wish, around: Around): readonly Lesson[] {
  const own = ownIn(around)
    .filter(stands)
    .map(({ lesson }) => lesson);
  return want === 'leave' && own.length > 0 ? own : [...shownIn(around), ...own];
}

const isCancelled = ({ lesson }: OwnBooking): boolean => lesson.status === 'cancelled';

/** What was cancelled is spoken of only by its name, unless there is no other. */
function spokenOfOwn(wish: Wish, around: Around): readonly OwnBooking[] {
  const own = ownIn(around).filter((one) => isAhead(one, around));
  const named = titledLessons(
    own.filter(isCancelled).map(({ lesson }) => lesson),
    wish,
  );
  return named.length > 0 || own.every(isCancelled) ? own : own.filter((one) => !isCancelled(one));
}

/** The first to begin. */
const nextOf = (lessons: readonly Lesson[]): Lesson | undefined =>
  lessons.toSorted((a, b) => a.startsAt - b.startsAt)[0];

/** The one named; else the one booked, when there is no other. */
function spokenOf(wish: Wish, own: readonly OwnBooking[], upcoming: readonly ListedLesson[]): Lesson | undefined {
  const [titled] = titledLessons(upcoming, wish);
  const onDay = wish.date === undefined ? [] : lessonsOn(upcoming, wish);
  if (!titled && onDay.length > 0) return onDay.length === 1 ? onDay[0] : undefined;
  return titled ?? (own.length === 1 ? own[0]?.lesson : undefined);
}

interface Otherwise {
  /** Nobody can book it any more. */
  readonly gone?: ListedLesson | undefined;
  /** To come, but on another day than was said. */
  readonly elsewhen?: ListedLesson | undefined;
}

/** A title counts for more than a day; what is gone is meant only when nothing to come is. */
function otherwise(wish: Wish, around: Around): Otherwise {
  const onDay = lessonsOn(upcomingIn(around), wish);
  if (titledLessons(onDay, wish).length > 0) return {};
  if (wish.isLater) return onDay.length === 1 && wish.want === 'enrol' ? { elsewhen: onDay[0] } : {};
  const gone = lessonsOn(goneIn(around), wish).toReversed();
  const [titled] = titledLessons(gone, wish);
  if (titled || wish.date === undefined) return { gone: titled };
  const elsewhen = lessonElsewhen(upcomingIn(around), wish);
  return elsewhen ? { elsewhen } : { gone: onDay.length === 0 ? gone[0] : undefined };
}

const elsewhenValues = (lesson: Lesson): Facts => ({ ...lessonValues(lesson), moves: lesson.moves });
