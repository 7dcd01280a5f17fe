/** What a shopkeeper wants done in one sentence: who comes, move, cancel, write to all. It finds the lesson; the desk asks before anything is done. */
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Lesson } from '../lessons/lesson.ts';
import { onMeantDay } from '../lessons/spoken/meant-day.ts';
import { hearWish, lessonsOn, titledLessons } from '../lessons/spoken/wish.ts';
import { doorsIn } from './desk-board.ts';
import { ownBooking } from './lessons-in-house.ts';

type Errand = 'people' | 'move' | 'cancel' | 'write';

/** The first that fits. */
const errands: readonly (readonly [Errand, RegExp])[] = [
  [
    'write',
    /\b(?:write|tell|message|let)\b.*\b(?:all|everyone|everybody|students|coming)\b|(?:寫給|写给|通知|告訴|告诉).{0,6}(?:大家|所有人|全部|[學学][員员生]|的人)/iu,
  ],
  ['move', /^(?:please )?(?:move|shift|postpone|reschedule)\b|改到|改期|移到|延到|挪到/iu],
  ['cancel', /^(?:please )?(?:cancel|call off)\b|^[請请]?取消|停[課课]/iu],
  [
    'people',
    /^(?:today|今天)$|\bwho(?: is|'s|’s| all is)? com(?:es|ing)\b|\bwho (?:has )?(?:booked|signed up)\b|\b(?:attendance|roll call|door list|today's list)\b|[誰谁](?:今天|明天)?(?:[會会要])?[來来]|[點点]名|[簽签]到|[報报]名名[單单]/iu,
  ],
];

/** Theirs as a customer, not the shop's. */
const ofTheirs = /\bmy\b|我的/iu;

/** Null for all but a shopkeeper. Where no lesson is named, `lesson` is null; the one on the desk is meant then, or all of today's. */
export function errandOf(text: string, around: Around, zone: string): Facts | null {
  if (around.house?.['keeper'] !== true || text.length > 200 || ofTheirs.test(text)) return null;
  const act = errands.find(([, pattern]) => pattern.test(text))?.[0];
  if (act === undefined) return null;
  const lesson: Json = meant(text, act, around, zone)?.id ?? null;
  // Who has a seat in it themselves may mean that.
  if (act === 'cancel' && typeof lesson === 'string' && ownBooking(lesson, around)) return null;
  return { act, lesson, isToday: /\btoday|今[天晚日]/iu.test(text) };
}

/** By its title; by its day only where the day is not the new one. */
function meant(text: string, act: Errand, around: Around, zone: string): Lesson | undefined {
  const lessons = doorsIn(around)
    .map(({ lesson }) => lesson)
    .filter(({ status }) => status !== 'cancelled');
  const wish = onMeantDay(hearWish(text, around.nowMs, zone), lessons, around.nowMs);
  const onDay = act === 'move' || wish.date === undefined ? [] : lessonsOn(lessons, wish);
  const titled = titledLessons(onDay.length > 0 ? onDay : lessons, wish);
  const found = titled.length > 0 ? titled : onDay;
  return found.length === 1 ? found[0] : undefined;
}
