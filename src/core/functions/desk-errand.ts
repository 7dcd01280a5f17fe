/** What a shopkeeper wants done in one sentence: who comes, move, cancel, write to all. It finds the lesson; the desk asks before anything is done. */
import type { Around } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import type { Lesson } from '../lessons/lesson.ts';
import { onMeantDay } from '../lessons/spoken/meant-day.ts';
import { hearWish, lessonsOn } from '../lessons/spoken/wish.ts';
import { titledLessons } from '../lessons/spoken/titles.ts';
import { readNumber } from '../lessons/spoken/numeral.ts';
import { doorsIn } from './desk-board.ts';
import { ownBooking } from './lessons-in-house.ts';

type Errand = 'people' | 'move' | 'cancel' | 'write' | 'seats' | 'guest' | 'show' | 'list' | 'remind';

/** The first that fits. */
const errands: readonly (readonly [Errand, RegExp])[] = [
  [
    'show',
    /\bhow many (?:seats|places|spots|people|are (?:booked|signed up|coming))\b|\b(?:seats|places|spots) (?:are )?(?:left|free)\b|[還还]有(?:[幾几]|多少)(?:個|个)?(?:空)?(?:位|名[額额])|(?:[幾几]|多少)(?:個|个)?人(?:報|报|來|来|訂|订)/iu,
  ],
  [
    'list',
    /\b(?:what|which) (?:lessons?|class(?:es)?)? ?(?:do|have|are) (?:i|we)\b.*(?:\b(?:have|give|teach|planned|got)\b)|\bmy (?:schedule|timetable|calendar)\b|^我們?们?.{0,6}(?:有|要上|要教)(?:什麼|什么|哪些|哪幾堂|几节)課?课?[？?]?$|^(?:課|课)(?:程)?表$/iu,
  ],
  [
    'remind',
    /^(?:please )?remind (?:them|everyone|everybody|all|the students)\b|^(?:請|请)?提醒(?:他們|他们|大家|學生|学生|學員|学员)/iu,
  ],
  [
    'seats',
    /\b(?:add|open|make) (?:another|a|an|one|two|three|\d+|some|more)(?: more| extra)? (?:seats?|places?|spots?)\b|(?:再?加|多[開开加])(?:[一兩两三四五\d]+)?(?:個|个)?(?:座|空)?位/iu,
  ],
  [
    'guest',
    /^(?:please )?(?:put|add|write|sign|book) (?:up )?(?<who>\p{Lu}[\p{L}'’-]*(?:,? (?!(?:on|onto|down|in|into|to|for)\b)[\p{L}\d'’-]+)*?) (?:up |down )?(?:on|onto|down|in|into|to|for)\b|^(?:請|请)?[幫帮替把](?<han>\p{Script=Han}{2,4}?(?:[一兩两三四五\d]+(?:位|個人|个人))?)(?:報名|报名|加[到進进入]|登[記记])/u,
  ],
  [
    'write',
    /\b(?:write|tell|message|let)\b.*\b(?:all|everyone|everybody|students|coming)\b|(?:寫給|写给|通知|告訴|告诉).{0,6}(?:大家|所有人|全部|[學学][員员生]|的人)/iu,
  ],
  [
    'move',
    /^(?:please )?(?:move|shift|postpone|reschedule)\b|^(?:actually |no,? |sorry,? |please |oh,? )*(?:make it|change it to|let's make it)\b.*\d|改到|改期|移到|延到|挪到|^[^，。]{0,4}改(?:成|為|为).*[點点日號号週周]/iu,
  ],
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
  const [act, pattern] = errands.find(([, one]) => one.test(text)) ?? [];
  if (act === undefined) return null;
  const { who = null, han = null } = pattern?.exec(text)?.groups ?? {};
  const lesson: Json = meant(text, act, around, zone)?.id ?? null;
  // Who has a seat in it themselves may mean that.
  if (act === 'cancel' && typeof lesson === 'string' && ownBooking(lesson, around)) return null;
  const isDated = act !== 'move' && hearWish(text, around.nowMs, zone).date !== undefined;
  return { act, lesson, isDated, who: withSeats(who ?? han), isToday: /\btoday|今[天晚日]/iu.test(text) };
}

/** "Rosa and two friends", three seats. */
function withSeats(who: string | null): string | null {
  if (who === null || /\d|[位個个]/u.test(who)) return who;
  const parts = who.split(/ and | & |, |[和跟與与]/u);
  const seats = parts.reduce((sum, part) => sum + (readNumber(part.split(' ')[0] ?? '') ?? 1), 0);
  return seats === 1 ? who : `${who}, ${seats}`;
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
