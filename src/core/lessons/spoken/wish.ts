/** What a student wants of lessons in a sentence of theirs, and which lesson they mean. Enrols nobody, and guesses no number. */
import { dateOf, wallAt, weekdayOf, type WallDate } from '../calendar.ts';
import type { Lesson, Level } from '../lesson.ts';
import type { Instant, Mistake } from '../../units.ts';
import { readSeats, type Amount } from './amounts.ts';
import { cut, mark, plain } from './cut.ts';
import { readDay, type Day } from './day.ts';
import { withoutDeclined } from './day-declined.ts';
import { asksDetail, asksForRoom } from './detail.ts';
import { levelWished } from './level.ts';
import { number, readNumber } from './numeral.ts';
import { firstSaid, type LessonCue, type Sentence } from './sentence.ts';
import { readSpan, type Span } from './span.ts';
import { weekdayMeant } from './weekdays.ts';
import { enoughLikeness, likeness, sureLikeness, titledLessons } from './titles.ts';

/** `detail`: what is told of a lesson anyway; `remind`: what the house does by itself; `question`: none of the others, for a person to answer. */
export type Wanted =
  | 'list'
  | 'enrol'
  | 'own'
  | 'leave'
  | 'remind'
  | 'unremind'
  | 'late'
  | 'unheard'
  | 'how-waits'
  | 'mail'
  | 'shop-says'
  | 'detail'
  | 'question';

export interface Wish {
  readonly want: Wanted;
  readonly date?: WallDate;
  /** By its weekday alone: `onMeantDay` tells which it is. */
  readonly byWeekday?: true;
  /** There is none on the nearest such day. */
  readonly isLater?: true;
  /** A day that cannot be, or can be two. */
  readonly dayWrong?: Mistake;
  /** "On Sundays", 週日有課嗎: all of them, no single one. */
  readonly weekday?: number;
  /** Days named together, when no single one is. */
  readonly span?: Span;
  readonly level?: Level;
  readonly seats?: number;
  /** What is left when day and seats are taken out. */
  readonly rest: string;
}

/** Longer than any wish needs; it bounds the reading's time. */
const longest = 400;

/** The first that fits; order matters: "my booking" is no wish to book, and "how late can I cancel?" cancels nothing. */
const wants: readonly (readonly [LessonCue, Wanted])[] = [
  ['until-when', 'detail'],
  ['asks-level', 'detail'],
  ['asks-cost', 'detail'],
  ['how-waits', 'how-waits'],
  ['mail', 'mail'],
  ['shop-says', 'shop-says'],
  ['unheard', 'unheard'],
  ['late', 'late'],
  ['stands-in', 'shop-says'],
  ['leave', 'leave'],
  ['unremind', 'unremind'],
  ['remind', 'remind'],
  ['own', 'own'],
  ['enrol', 'enrol'],
];

/** "The next lesson": the first to come. */
export const asksForNext = (sentence: Sentence): boolean => sentence.says('next-lesson');

/** `zone` is the shop's, in which "Saturday" and "tomorrow" are meant. */
export function hearWish(sentence: Sentence, now: Instant, zone: string): Wish {
  const today = dateOf(wallAt(now, zone));
  const want = wantIn(sentence);
  const text = want === 'leave' ? cleared(sentence.text) : withoutDeclined(cleared(sentence.text));
  const weekday = want === 'list' ? weekdayMeant(text) : undefined;
  const day: Day = weekday === undefined ? readDay(text, today) : { mayBeNextWeek: false, mistakes: [], rest: text };
  const seats = seatsIn(day.rest);
  const [dayWrong] = day.mistakes;
  const span = day.date === undefined ? readSpan(text, today) : undefined;
  const level = levelWished(sentence);
  return {
    want,
    ...(weekday === undefined ? {} : { weekday }),
    ...(day.date === undefined ? {} : { date: day.date }),
    ...(day.byWeekday ? { byWeekday: true } : {}),
    ...(dayWrong ? { dayWrong } : {}),
    ...(span ? { span } : {}),
    ...(level ? { level } : {}),
    ...(seats.amount === undefined ? {} : { seats: seats.amount }),
    rest: seats.rest,
  };
}

/** "Two for Saturday", the day taken out. */
const forTheDay = new RegExp(
  `^\\W*(?:(?:ok|okay|so|then|yes|right|book|we are|i'?d like|i'?ll take) )*(?<n>${number}) (?=(?:for|on)(?: the)? ${mark})`,
  'iu',
);

function seatsIn(text: string): Amount {
  const told = readSeats(text);
  const found = told.amount === undefined ? cut(text, forTheDay) : undefined;
  const amount = readNumber(found?.groups['n'] ?? '');
  return found && amount !== undefined ? { amount, rest: found.rest } : told;
}

function wantIn(sentence: Sentence): Wanted {
  if (asksForRoom(sentence)) return 'detail';
  if (sentence.says('only-so-many')) return 'question';
  const want = plainWant(sentence);
  if (want !== undefined) return want;
  // "How long is the course?" lists nothing; "What is there next week?" asks for a list, whatever else it asks.
  if (asksDetail(sentence) && firstSaid(sentence, ofSeveral) === undefined) return 'detail';
  return sentence.says('list') ? 'list' : 'question';
}

const ofSeveral = ['asks-for-lessons', 'next-lesson', 'asks-which'] as const;

const plainWant = (sentence: Sentence): Wanted | undefined => wants.find(([cue]) => sentence.says(cue))?.[1];

/** Whether a lesson is for whom, and in the days, that were named. */
export const isSuch = ({ level, starts }: Lesson, wish: Pick<Wish, 'span' | 'level' | 'weekday'>): boolean =>
  (wish.level === undefined || wish.level === level) &&
  (wish.span === undefined || (dateOf(starts) >= wish.span.from && dateOf(starts) <= wish.span.to)) &&
  (wish.weekday === undefined || weekdayOf(dateOf(starts)) === wish.weekday);

/** The lessons a sentence can mean, by day and by the words of their titles; all of them when it names neither. */
export function meantLessons<Kind extends Lesson>(
  lessons: readonly Kind[],
  wish: Wish,
  least = enoughLikeness,
): readonly Kind[] {
  const onDay = lessonsOn(lessons, wish);
  const titled = titledLessons(onDay, wish, least);
  return titled.length > 0 ? titled : onDay;
}

/** All of them when no day is named. */
export function lessonsOn<Kind extends Lesson>(lessons: readonly Kind[], { date }: Pick<Wish, 'date'>) {
  return date === undefined ? lessons : lessons.filter(({ starts }) => dateOf(starts) === date);
}

/** Whether a sentence says so much of a title, or the day, that a seat may be taken without asking. */
export const isSureOf = (lesson: Lesson, wish: Wish): boolean =>
  (wish.date !== undefined && !wish.isLater) || likeness(lesson, wish.rest) >= sureLikeness;

/** The one whose title was said, with a day on which it is not. */
export function lessonElsewhen<Kind extends Lesson>(lessons: readonly Kind[], wish: Wish): Kind | undefined {
  if (wish.date === undefined || titledLessons(lessonsOn(lessons, wish), wish).length > 0) return undefined;
  return titledLessons(lessons, wish, sureLikeness)[0];
}

/** What nobody says of tea. */
const plainlyOfLessons: ReadonlySet<Wanted> = new Set(['own', 'unremind', 'late', 'unheard']);

/** Whether a sentence wants a seat, or one's own booking, so plainly that it is about lessons, whatever its words are about. Where `now` is null, a title and its day alone want nothing. */
export function isAboutLessons(sentence: Sentence, lessons: readonly Lesson[], now: Instant | null): boolean {
  const want = plainWant(sentence);
  if (want !== undefined && plainlyOfLessons.has(want)) return true;
  if (sentence.says('asks-for-lessons') || sentence.says('reminders-back')) return true;
  // One word of a title may be a tea to buy as well.
  const text = cleared(sentence.text);
  const named = lessons.filter((lesson) => likeness(lesson, text, 2) >= enoughLikeness);
  // "Me and my daughter for the first cup, 12 December": its title and its very day.
  if (want === undefined && !asksDetail(sentence))
    return now !== null && named.length > 0 && isOnItsDay(named, text, now);
  const isNamed = named.length > 0;
  return isNamed || (want === 'enrol' && !sentence.says('table') && readSeats(text).amount !== undefined);
}

function isOnItsDay([first, ...others]: readonly Lesson[], text: string, now: Instant): boolean {
  const { date } = first ? readDay(text, dateOf(wallAt(now, first.zone))) : {};
  return date !== undefined && [first, ...others].some((one) => one !== undefined && dateOf(one.starts) === date);
}

const cleared = (sentence: string): string => plain(sentence.slice(0, longest)).replaceAll('’', "'");
