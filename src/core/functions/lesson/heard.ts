/** What a message says of lessons, by the lessons there are: anywhere, and where they are shown. */
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import type { Lesson } from '../../lessons/lesson.ts';
import { declines } from '../../lessons/spoken/declined.ts';
import { asksDetailAlone } from '../../lessons/spoken/detail.ts';
import { isAsking } from '../../lessons/spoken/name.ts';
import { hearSaid, seatsAlone, seatsMeant } from '../../lessons/spoken/said.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import type { SeatChange } from '../../lessons/spoken/seat-change.ts';
import { hearLesson } from '../../lessons/spoken/spoken.ts';
import { hearWish, isAboutLessons } from '../../lessons/spoken/wish.ts';
import type { Tea } from '../../teas/tea.ts';
import { doorsIn } from '../desk/board.ts';
import { swapOf } from './swap.ts';
import { goneIn, isAhead, isAsked, ownIn, shownIn, upcomingIn, zoneOf } from './in-house.ts';

/** A message, what was read of it, and where it was written. */
export interface Message {
  readonly sentence: Sentence;
  readonly heard: Facts;
  readonly flow: Json;
  readonly change: SeatChange;
}

/** Whether a message asks for a seat, or for one's own booking, by the names of the lessons there are. */
export function isLessonWish(sentence: Sentence, { house, nowMs }: Pick<Around, 'house' | 'nowMs'>): boolean {
  const known = [...upcomingIn({ house }), ...goneIn({ house }), ...ownIn({ house }).map(({ lesson }) => lesson)];
  return known.length > 0 && isAboutLessons(sentence, known, house?.['keeper'] === true ? null : nowMs);
}

/** What can only be of a booking just made: "what should I bring?", "改三位", where nothing else is spoken of. */
export function isOfOwnLesson({ sentence, flow, change }: Message, around: Around): boolean {
  const { text } = sentence;
  if (swapOf(sentence, around, flow)) return true;
  const changes = change.fewer ?? change.along;
  const isAwaited = ownIn(around).some((one) => isAsked(one, around.nowMs));
  const mostWords = isAwaited ? longWish : shortWish;
  const isShort = (text.length <= mostWords || changes !== null) && !elsewhere.has(flow);
  if ((flow !== 'front' && !isShort) || !ownIn(around).some((one) => isAhead(one, around.nowMs))) return false;
  if (flow === 'front' && (asksDetailAlone(sentence) || seatsAlone(sentence) !== null || change.more !== null))
    return true;
  if (changes !== null && !elsewhere.has(flow)) return true;
  const isAll = text.length <= mostWords || saysLittleElse(sentence);
  return isAll && hearWish(sentence, around.nowMs, 'UTC').want === 'leave';
}

/** Where lessons are talked about, what names nothing of a tea or a brew is still about them, and so is what names one or chooses among them. */
export function goesOnAboutLessons({ sentence, heard, flow }: Message, said: Facts | null): boolean {
  if (flow !== 'lesson') return false;
  // 先自己試試，家裡有鳳凰單叢
  if (heard['kind'] === 'brew' && (heard['tea'] ?? null) !== null && sentence.says('brews-own')) return false;
  const isOfThem = said?.['named'] === true || said?.['narrows'] === true || saysOtherDays(sentence);
  if (isOfThem || asksForTopic(sentence, heard)) return true;
  const tellsNothing = ofABrew.every((name) => (heard[name] ?? null) === null);
  return heard['kind'] === 'brew' && tellsNothing && !sentence.says('brew-talk');
}

/** "Any other day?", "and the week after?" */
const saysOtherDays = (sentence: Sentence): boolean => sentence.says('other-days') || sentence.says('week-after');

/** "Do you have anything on puer?", where lessons are talked of. */
const asksForTopic = (sentence: Sentence, heard: Facts): boolean =>
  (heard['tea'] ?? heard['family'] ?? null) !== null && sentence.says('topic') && !sentence.says('to-buy');

/** Whether a lesson is about the tea that is asked for: it is brewed there, or one of its family where only that is named. */
export function topicOf(sentence: Sentence, heard: Facts, teas: readonly Tea[]): ((lesson: Lesson) => boolean) | null {
  if (!asksForTopic(sentence, heard)) return null;
  const { tea = null, family = null } = heard;
  const familyOf = (id: string): Json => teas.find((one) => one.id === id)?.family ?? null;
  return (lesson) => lesson.teas.some((id) => (tea === null ? familyOf(id) === family : id === tea));
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
/** There "I won't" is said of something else. */
const elsewhere: ReadonlySet<Json> = new Set(['guide', 'shop', 'lesson-desk', 'ask', 'my-tea', 'answers']);

/** Longer than that, "I can't come to the shop before six" may be about anything. */
const shortWish = 24;
/** … unless it was just asked whether they can come. */
const longWish = 80;
/** "Sorry, I won't be able to make it" is about the lesson, however long it takes to say. Judgement. */
const saysLittleElse = (sentence: Sentence): boolean => sentence.without('leave').text.trim().length <= 12;

/** "No thanks, I have to be home by three", where something was offered. */
export function declinesHere(
  sentence: Sentence,
  { kind, answer, tea = null, vessel = null }: Facts,
  flow: Json,
): boolean {
  // "Not now, first help me brew this silver needle."
  const wantsTea = kind === 'brew' && (tea ?? vessel) !== null && brews.test(sentence.text);
  return (
    !wantsTea &&
    (flow === 'lesson' || flow === 'answers') &&
    !(kind === 'safety' && answer !== 'safety-general') &&
    declines(sentence)
  );
}

const brews = /\b(?:brew|brewing|make|steep)\b/i;

/** A shopkeeper's sentence with a day, an hour and a number of seats plans a lesson, whatever tea it names. */
export function plansLesson(sentence: Sentence, { house, nowMs }: Around, zone: string): boolean {
  if (house?.['keeper'] !== true) return false;
  const { said, mistakes } = hearLesson(sentence, nowMs, zone);
  const isWhole = !mistakes.some(({ code }) => code === 'lesson-day-missing' || code === 'lesson-time-missing');
  const { want } = hearWish(sentence, nowMs, zone);
  const isTold = want === 'question' || want === 'detail' || (want === 'list' && !isAsking(sentence));
  return said.seats !== undefined && isWhole && isTold;
}

/** Where lessons are shown; a shopkeeper is shown those under way as well. Null elsewhere. */
export function saidOfLessons({ sentence, heard, flow, change }: Message, around: Around): Facts | null {
  if (flow !== 'lesson' && flow !== 'lesson-desk') return null;
  if (flow === 'lesson' && swapOf(sentence, around, flow)) return null;
  const doors = doorsIn(around).map(({ lesson }) => lesson);
  const lessons = flow === 'lesson' ? shownIn(around) : doors.filter(({ status }) => status !== 'cancelled');
  const said = hearSaid(sentence, { lessons, now: around.nowMs, zone: zoneOf(lessons), change });
  if (said === null) return null;
  return said.seats === 1 ? { ...said, seats: seatsMeant(sentence, 1, heard['guests']) } : { ...said };
}
