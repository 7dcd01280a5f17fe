/** Which lesson a student's sentence means, and what they want of it, by the lessons and bookings there are. Chooses nothing for them. */
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { dateOf, wallAt } from '../../lessons/calendar.ts';
import type { Purpose } from '../../lessons/reminders.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import type { ListedLesson, OwnBooking } from '../../lessons/roster.ts';
import { onMeantDay } from '../../lessons/spoken/meant-day.ts';
import { asksForRoom } from '../../lessons/spoken/detail.ts';
import { hearNarrowing, narrowed } from '../../lessons/spoken/narrow.ts';
import { hearSaid, seatsAlone, seatsMeant } from '../../lessons/spoken/said.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { severalMeant } from '../../lessons/spoken/several.ts';
import type { SeatChange } from '../../lessons/spoken/seat-change.ts';
import { callsAnother, shownLikeness, titledLessons } from '../../lessons/spoken/titles.ts';
import {
  asksForNext,
  hearWish,
  isSuch,
  isSureOf,
  lessonsOn,
  meantLessons,
  type Wish,
} from '../../lessons/spoken/wish.ts';
import { lessonValues } from '../../lessons/tidings.ts';
import { phrase } from '../values.ts';
import { otherwise } from './otherwise.ts';
import { insteadOfShown, swapOf } from './swap.ts';
import {
  isAhead,
  isCancelled,
  isLateFor,
  isLike,
  nextAmong,
  nextOf,
  ownIn,
  shownIn,
  stands,
  upcomingIn,
  zoneOf,
} from './in-house.ts';

export interface Asked {
  readonly sentence: Sentence;
  readonly guests: Json;
  readonly change: SeatChange;
  /** Whether it is about the tea that was named; null where none was. */
  readonly isOnTopic: ((lesson: Lesson) => boolean) | null;
  /** The one that is shown, if one is. */
  readonly lesson: Json;
  /** The one spoken of last, whether it is shown or not. */
  readonly last: Json;
  /** Those listed last, where they are not all there are. */
  readonly ids: Json;
}

export function wishOf(asked: Asked, around: Around): Facts {
  const { sentence, guests, change } = asked;
  const swap = swapOf(sentence, around, 'lesson') ?? insteadOfShown(sentence, asked.last, around);
  if (swap) return swap;
  const upcoming = upcomingIn(around);
  const zone = zoneOf(shownIn(around));
  const today = dateOf(wallAt(around.nowMs, zone));
  const changed = seatsChanged(change, around);
  if (changed) return changed;
  const said = hearWish(sentence, around.nowMs, zone);
  const heard = onMeantDay(said, daysMeantBy(said, around), around.nowMs);
  // "My sister can't come, just one seat": the seat stays.
  const wish: Wish = heard.want === 'leave' && seatsAlone(sentence) !== null ? { ...heard, want: 'question' } : heard;
  const fewer = fewerOf(asked, wish, around);
  if (fewer) return fewer;
  const own = spokenOfOwn(wish, around);
  const several = severalMeant(sentence, wish, upcoming);
  if (several.length > 1)
    return { want: 'enrol', isSeveral: true, narrowed: true, seats: wish.seats ?? null, ids: several };
  const isOwn = ({ id }: ListedLesson): boolean => own.some(({ lesson }) => lesson.id === id);
  // Who names a lesson they have not booked does not mean the one they have.
  const isOfSpan = wish.span !== undefined && (wish.want === 'question' || wish.want === 'detail');
  const such =
    isOfSpan || ['list', 'enrol'].includes(wish.want) ? upcoming.filter((one) => isSuch(one, wish)) : upcoming;
  // 下一次蓋碗課也要: what is booked is not the next.
  const isAnew = wish.want === 'enrol' && wish.date === undefined && sentence.says('next-time');
  const open = atHour(such.length > 0 ? such : upcoming, sentence).filter((one) => !isAnew || !isOwn(one));
  const among =
    wish.want === 'leave' ? [...own.map(({ lesson }) => lesson), ...upcoming.filter((one) => !isOwn(one))] : open;
  // Nothing but a title or a day, where lessons are shown.
  const isShown =
    wish.want === 'question' &&
    hearSaid(sentence, { lessons: shownIn(around), now: around.nowMs, zone, change })?.named;
  const other = wish.want === 'enrol' || wish.want === 'list' || isShown ? otherwise(wish, around) : {};
  if (other.gone) return { want: 'enrol', seats: null, lesson: other.gone.id, booking: null, ids: null };
  const named = other.elsewhen
    ? [other.elsewhen]
    : (ofListed(asked.ids, among, wish) ?? meantLessons(among, wish, ...(isShown ? [shownLikeness] : [])));
  // "The gongfu workshop", where there is none: no other is booked in its place.
  const isOther = wish.want === 'enrol' && titledLessons(upcoming, wish).length === 0 && callsAnother(upcoming, wish);
  const meant = wish.want === 'leave' ? named.filter(isOwn) : isOther ? [] : named;
  const isOfOwn = wish.want === 'detail' || (wish.want === 'question' && seatsAlone(sentence) !== null);
  const next =
    wish.want !== 'leave' && asksForNext(sentence) && meant.length > 1 ? nextAmong(meant, asked.ids) : undefined;
  const shown = shownIn(around).find(({ id }) => id === asked.lesson);
  const alike = shown && wish.date !== undefined ? meant.filter(isLike(shown)) : [];
  const likeliest = alike.length === 1 ? alike : meant;
  const spoken = isOfOwn && !isOfSpan ? (spokenOf(wish, own, upcoming) ?? (own.length === 0 ? next : undefined)) : null;
  const one = spoken === null ? (likeliest.length === 1 ? likeliest[0] : next) : spoken;
  const ofOne = own.find(({ lesson }) => lesson.id === one?.id);
  return {
    want: isShown ? 'enrol' : wish.want,
    seats: seatsAlone(sentence) ?? seatsMeant(sentence, wish.seats, guests),
    lesson: one?.id ?? null,
    isSure: one !== undefined && (upcoming.length === 1 || one === next || isSureOf(one, wish)),
    booking: ofOne?.id ?? null,
    elsewhen: other.elsewhen ? phrase('lesson-told-elsewhen', elsewhenValues(other.elsewhen)) : null,
    isLate: isLateFor(ofOne, around.nowMs),
    isNext: next !== undefined,
    isDated: wish.date !== undefined || (isOfSpan && such.length > 0),
    asksRoom: asksForRoom(sentence),
    titled: titledLessons(upcoming, wish)[0]?.id ?? null,
    narrowed: false,
    movesNothing: sentence.says('moves-own') && own.length === 0,
    isRemindOn: sentence.says('remind-on'),
    unreminds: unremindedIn(sentence),
    along: change.along,
    own: aheadOf(own),
    // Nothing on that day: all there are.
    ids: meant.length === 0 ? null : meant.map(({ id }) => id),
    noneThen:
      wish.date !== undefined && among.length > 0 && (meant.length === 0 || (wish.isLater === true && !isShown)),
    isPast: wish.date !== undefined && wish.date < today,
    noneSuch: upcoming.length > 0 && (such.length === 0 || isOther),
    dayWrong: wish.dayWrong ? phrase(`mistake-${wish.dayWrong.code}`, wish.dayWrong.values) : null,
  };
}

/** 那就第一杯茶吧, under a list of one Saturday: the one of that list, and not the next of its series. */
function ofListed<Kind extends Lesson>(ids: Json, lessons: readonly Kind[], wish: Wish): readonly Kind[] | null {
  if (!Array.isArray(ids) || wish.date !== undefined || wish.span !== undefined) return null;
  const titled = titledLessons(
    lessons.filter(({ id }) => ids.includes(id)),
    wish,
    shownLikeness,
  );
  return titled.length > 0 ? titled : null;
}

/** The next they come to, for what is said of it. */
function aheadOf(own: readonly OwnBooking[]): Json {
  const lesson = nextOf(own.filter(({ standing }) => standing === 'seated').map((one) => one.lesson));
  return lesson ? phrase('lesson-told-was', lessonValues(lesson)) : null;
}

/** Fewer than all, where neither a day nor a title is named: the easiest, those in the evening, those about a tea. */
function fewerOf({ sentence, isOnTopic }: Asked, wish: Wish, around: Around): Facts | null {
  const [upcoming, shown] = [upcomingIn(around), shownIn(around)];
  const narrowing = hearNarrowing(sentence);
  const isOpen = ['list', 'question', 'enrol'].includes(wish.want) && wish.date === undefined && !wish.dayWrong;
  const { weekday = null } = wish;
  const isNarrow = narrowing !== null || isOnTopic !== null || weekday !== null;
  if (!isOpen || !isNarrow || isTitled(sentence, wish, shown)) return null;
  // "Not at the weekend" names no days but those it is not.
  const asked = narrowing?.onWorkdays === undefined ? wish : withoutDays(wish);
  const open = upcoming.filter((one) => isSuch(one, asked) && (isOnTopic?.(one) ?? true));
  const these = narrowing === null ? open : narrowed(open, narrowing);
  const isNone = these.length === 0 && upcoming.length > 0;
  const isWeekdayAlone = weekday !== null && !upcoming.some((one) => isSuch(one, { weekday }));
  const levels = new Set(these.map(({ level }) => level));
  return {
    want: wish.want === 'enrol' && these.length > 0 ? 'enrol' : 'list',
    narrowed: true,
    seats: wish.seats ?? null,
    lesson: null,
    ids: these.length === 0 ? null : these.map(({ id }) => id),
    noneSuch: isNone && !isWeekdayAlone,
    noneOn: isNone && isWeekdayAlone ? weekday : null,
    level: narrowing?.end === undefined || levels.size !== 1 ? null : [...levels][0]!,
  };
}

/** "In the evening" is not "An evening with the gaiwan". */
function isTitled(sentence: Sentence, wish: Wish, shown: readonly Lesson[]): boolean {
  const parts = ['morning', 'afternoon', 'evening'] as const;
  const rest = parts.reduce((words, cue) => words.without(cue), sentence.part(wish.rest)).text;
  return titledLessons(shown, { rest }).length > 0;
}

function withoutDays(wish: Wish): Pick<Wish, 'level'> {
  return wish.level === undefined ? {} : { level: wish.level };
}

/** "The 12th, in the morning": of the lessons that are left those at that hour, if there are any. */
function atHour(lessons: readonly ListedLesson[], sentence: Sentence): readonly ListedLesson[] {
  const { part } = hearNarrowing(sentence) ?? {};
  const there = part === undefined ? [] : narrowed(lessons, { part });
  return there.length > 0 ? there : lessons;
}

/** Of the only booking there is: two more seats, or one fewer; who was the last to come gives it back. */
function seatsChanged({ more, along, fewer }: SeatChange, around: Around): Facts | null {
  const own = ownIn(around).filter((one) => isAhead(one, around.nowMs));
  const [one] = own;
  const change = fewer === null ? (more ?? along) : -fewer;
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

/** Which reminder they don't want: one purpose, or all. */
const unremindedIn = (sentence: Sentence): 'off' | Purpose =>
  unwanted.find(([cue]) => sentence.says(cue))?.[1] ?? 'off';
const unwanted = [
  ['unremind-evening', 'evening-before'],
  ['unremind-week', 'week-before'],
  ['unremind-day', 'two-hours-before'],
] as const;

/** What was cancelled is spoken of only by its name, unless there is no other. */
function spokenOfOwn(wish: Wish, around: Around): readonly OwnBooking[] {
  const own = ownIn(around).filter((one) => isAhead(one, around.nowMs));
  const named = titledLessons(
    own.filter(isCancelled).map(({ lesson }) => lesson),
    wish,
  );
  return named.length > 0 || own.every(isCancelled) ? own : own.filter((one) => !isCancelled(one));
}

/** The one named; else the one booked, when there is no other. */
function spokenOf(wish: Wish, own: readonly OwnBooking[], upcoming: readonly ListedLesson[]): Lesson | undefined {
  const [titled] = titledLessons(upcoming, wish);
  const onDay = wish.date === undefined ? [] : lessonsOn(upcoming, wish);
  if (!titled && onDay.length > 0) return onDay.length === 1 ? onDay[0] : undefined;
  return titled ?? (own.length === 1 ? own[0]?.lesson : undefined);
}

const elsewhenValues = (lesson: Lesson): Facts => ({ ...lessonValues(lesson), moves: lesson.moves });
