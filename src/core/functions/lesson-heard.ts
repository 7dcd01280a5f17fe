/** What a message says of lessons, by the lessons there are: anywhere, and where they are shown. */
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Lesson } from '../lessons/lesson.ts';
import { declines } from '../lessons/spoken/declined.ts';
import { asksDetailAlone } from '../lessons/spoken/detail.ts';
import { hearSaid, seatsAlone } from '../lessons/spoken/said.ts';
import type { SeatChange } from '../lessons/spoken/seat-change.ts';
import { hearLesson } from '../lessons/spoken/spoken.ts';
import { hearWish, isAboutLessons } from '../lessons/spoken/wish.ts';
import type { Tea } from '../teas/tea.ts';
import { doorsIn } from './desk-board.ts';
import { swapOf } from './lesson-swap.ts';
import { goneIn, isAhead, isAsked, ownIn, shownIn, upcomingIn, zoneOf } from './lessons-in-house.ts';

/** A message, what was read of it, and where it was written. */
export interface Message {
  readonly text: string;
  readonly heard: Facts;
  readonly flow: Json;
  readonly change: SeatChange;
}

/** Whether a message asks for a seat, or for one's own booking, by the names of the lessons there are. */
export function isLessonWish(text: string, house: Facts | undefined): boolean {
  const known = [...upcomingIn({ house }), ...goneIn({ house }), ...ownIn({ house }).map(({ lesson }) => lesson)];
  return known.length > 0 && isAboutLessons(text, known);
}

/** What can only be of a booking just made: "what should I bring?", "改三位", where nothing else is spoken of. */
export function isOfOwnLesson({ text, flow, change }: Message, around: Around): boolean {
  if (swapOf(text, around, flow)) return true;
  const changes = change.fewer ?? change.along;
  const isAwaited = ownIn(around).some((one) => isAsked(one, around.nowMs));
  const mostWords = isAwaited ? longWish : shortWish;
  const isShort = (text.length <= mostWords || changes !== null) && !elsewhere.has(flow);
  if ((flow !== 'front' && !isShort) || !ownIn(around).some((one) => isAhead(one, around.nowMs))) return false;
  if (flow === 'front' && (asksDetailAlone(text) || seatsAlone(text) !== null || change.more !== null)) return true;
  if (changes !== null && !elsewhere.has(flow)) return true;
  return text.length <= mostWords && hearWish(text, around.nowMs, 'UTC').want === 'leave';
}

/** Where lessons are talked about, what names nothing of a tea or a brew is still about them, and so is what names one or chooses among them. */
export function goesOnAboutLessons({ text, heard, flow }: Message, said: Facts | null): boolean {
  if (flow !== 'lesson') return false;
  if (said?.['named'] === true || said?.['narrows'] === true || asksForTopic(text, heard)) return true;
  const tellsNothing = ofABrew.every((name) => (heard[name] ?? null) === null);
  return heard['kind'] === 'brew' && tellsNothing && !brewTalk.test(text);
}

/** "Do you have anything on puer?", where lessons are talked of. */
const asksForTopic = (text: string, heard: Facts): boolean =>
  (heard['tea'] ?? heard['family'] ?? null) !== null && asksTopic.test(text) && !buys.test(text);

/** Whether a lesson is about the tea that is asked for: it is brewed there, or one of its family where only that is named. */
export function topicOf(text: string, heard: Facts, teas: readonly Tea[]): ((lesson: Lesson) => boolean) | null {
  if (!asksForTopic(text, heard)) return null;
  const { tea = null, family = null } = heard;
  const familyOf = (id: string): Json => teas.find((one) => one.id === id)?.family ?? null;
  return (lesson) => lesson.teas.some((id) => (tea === null ? familyOf(id) === family : id === tea));
}

const asksTopic =
  /\b(?:any(?:thing)?|something|one|which|lessons?|class(?:es)?)\b.*\b(?:on|about|with|for|covers?|tast(?:e|es|ing)|includ(?:es?|ing))\b|有[沒没冇]?有?.{1,10}(?:的|[嗎吗課课堂]|[?？]|$)|[講讲教][^.。]{1,8}[嗎吗的課课堂]|(?:關於|关于|介紹|介绍)/iu;
const buys = /\b(?:buy|sell|stock|price|order|ship|brew|make)\b|[賣卖買买]|[貨货]|多少[錢钱]|怎[麼么][泡沖冲]/iu;

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
/** … unless it was just asked whether they can come. */
const longWish = 80;

/** "No thanks, I have to be home by three", where something was offered. */
export function declinesHere(text: string, { kind, answer }: Facts, flow: Json): boolean {
  return (
    (flow === 'lesson' || flow === 'answers') && !(kind === 'safety' && answer !== 'safety-general') && declines(text)
  );
}

/** A shopkeeper's sentence with a day, an hour and a number of seats plans a lesson, whatever tea it names. */
export function plansLesson(text: string, { house, nowMs }: Around, zone: string): boolean {
  if (house?.['keeper'] !== true) return false;
  const { said, mistakes } = hearLesson(text, nowMs, zone);
  const isWhole = !mistakes.some(({ code }) => code === 'lesson-day-missing' || code === 'lesson-time-missing');
  return said.seats !== undefined && isWhole && ['question', 'detail'].includes(hearWish(text, nowMs, zone).want);
}

/** Where lessons are shown; a shopkeeper is shown those under way as well. Null elsewhere. */
export function saidOfLessons({ text, flow, change }: Message, around: Around): Facts | null {
  if (flow !== 'lesson' && flow !== 'lesson-desk') return null;
  if (flow === 'lesson' && swapOf(text, around, flow)) return null;
  const doors = doorsIn(around).map(({ lesson }) => lesson);
  const lessons = flow === 'lesson' ? shownIn(around) : doors.filter(({ status }) => status !== 'cancelled');
  const said = hearSaid(text, { lessons, now: around.nowMs, zone: zoneOf(lessons), change });
  return said === null ? null : { ...said };
}
