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

type Errand =
  | 'people'
  | 'move'
  | 'cancel'
  | 'write'
  | 'seats'
  | 'guest'
  | 'show'
  | 'list'
  | 'remind'
  | 'add'
  | 'alter'
  | 'questions';

/** The first that fits. */
const errands: readonly (readonly [Errand, RegExp])[] = [
  [
    'questions',
    /\b(?:any|are there|is there|new|open|unanswered)\b.*\b(?:questions?|anything (?:for me|to do|to answer)|waiting for me)\b|\bdid (?:anyone|anybody|someone) (?:ask|write)\b|有(?:[沒没]有)?(?:什麼|什么|新的?)?(?:問題|问题)(?:[沒没]回|[嗎吗要等]|[?？]|$)|(?:有|[沒没]有)人(?:問|问|留言)/iu,
  ],
  [
    'add',
    /^(?:please |let'?s |i(?:'d| would) like to |i want to )*(?:plan|schedule|add|set up|put on|offer|create|open) (?:a|an|another|one more) (?!seat|place|guest|person|spot)[\p{L}\s-]{0,40}\b(?:lesson|class|course|workshop|session|tasting)\b|^(?:我想|我要|[幫帮]我|[請请])*新?[開开排加辦办]一?[堂節节場场門门](?!課$|课$)/iu,
  ],
  [
    'guest',
    /^(?:[請请])?[幫帮替給给](?<han>(?!我|他|她|大家)\p{Script=Han}{2,4}?)(?:加|留|訂|订|報|报)(?<seats>[一兩两三四五六\d]+)(?:個|个)?(?:位子?|座位?|人|名)/u,
  ],
  [
    'alter',
    /\b(?:change|set|make|put) (?:the |its )?(?:(?<price>price|cost|fee)|(?<title>title|name)|(?<place>place|room|location)|(?<teacher>teacher)) (?:to|into|at)? ?(?<value>.{1,80}?)[.!]*$|\b(?:let|have) (?<teaches>\p{Lu}[\p{L}'-]*(?: \p{Lu}[\p{L}'-]*)?) (?:do|teach|take|lead|give) (?:it|that|this)\b|(?:(?<hanPrice>[費费]用|[價价][格錢钱]|[學学][費费])|(?<hanTitle>名[稱称字]|[課课]名)|(?<hanTeacher>老[師师]))(?:改成|改為|改为|[換换]成)(?<hanValue>.{1,40}?)[。!！]*$|(?:改由|[讓让]|[換换])(?<hanTeaches>\p{Script=Han}{2,4})[教帶带]/u,
  ],
  [
    'show',
    /\b(?:anyone|anybody|has anyone|any(?:one)? (?:bookings?|sign-?ups?))\b(?:.*\b(?:signed up|booked|coming|registered|enrolled))?.*\?*$|\bhow many (?:is that|are we|have we)\b|有人(?:報|报|訂|订)|(?:[幾几]|多少)(?:個|个)?人了|(?:報|报)了(?:[幾几]|多少)|\bhow many (?:seats|places|spots|people|are (?:booked|signed up|coming))\b|\b(?:seats|places|spots) (?:are )?(?:left|free)\b|[還还]有(?:[幾几]|多少)(?:個|个)?(?:空)?(?:位|名[額额])|(?:[幾几]|多少)(?:個|个)?人(?:報|报|來|来|訂|订)/iu,
  ],
  [
    'list',
    /\b(?:what|which) (?:lessons?|class(?:es)?)? ?(?:do|have|are) (?:i|we)\b.*(?:\b(?:have|give|teach|planned|got)\b)|\bmy (?:schedule|timetable|calendar)\b|\bwhat (?:have|do) (?:i|we) (?:got |have )?(?:on|coming up)\b|^我們?们?.{0,6}(?:有|要上|要教)(?:什麼|什么|哪些|哪幾堂|几节)課?课?[？?]?$|^(?:課|课)(?:程)?表$/iu,
  ],
  [
    'remind',
    /^(?:please )?remind (?:them|everyone|everybody|all|the students)\b|^(?:請|请)?提醒(?:他們|他们|大家|學生|学生|學員|学员)/iu,
  ],
  [
    'seats',
    /^(?:now |then |please |actually,? )*(?:make (?:it|that)|change (?:it|that) to|let'?s have) (?<count>\d{1,3}) (?:seats?|places?|people)\b|^.{0,4}[改換换加](?:成|到|為|为)(?<hanCount>\d{1,3}|[一二兩两三四五六七八九十]{1,3})(?:個|个)?(?:位子?|座位?|人|名)[。!！吧]*$|\b(?:add|open|make) (?:another|a|an|one|two|three|\d+|some|more)(?: more| extra)? (?:seats?|places?|spots?)\b|(?:再?加|多[開开加])(?:[一兩两三四五\d]+)?(?:個|个)?(?:座|空)?位/iu,
  ],
  [
    'guest',
    /^(?:please )?(?:put|add|write|sign|book) (?:up )?(?<who>\p{Lu}[\p{L}'’-]*(?:,? (?!(?:on|onto|down|in|into|to|for)\b)[\p{L}\d'’-]+)*?) (?:up |down )?(?:on|onto|down|in|into|to|for)\b|^(?:請|请)?[幫帮替把](?<han>\p{Script=Han}{2,4}?(?:[一兩两三四五\d]+(?:位|個人|个人))?)(?:報名|报名|加[到進进入]|登[記记])/u,
  ],
  [
    'write',
    /\b(?:write|tell|message|let|text)\b.*\b(?:all|everyone|everybody|students|coming|them)\b|(?:寫給|写给|通知|告訴|告诉|跟|[給给]).{0,6}(?:大家|所有人|全部|[學学][員员生]|的人)/iu,
  ],
  [
    'move',
    /^(?:please )?(?:move|shift|postpone|reschedule)\b|^(?:actually |no,? |sorry,? |please |oh,? )*(?:make it|change it to|let's make it)\b.*\d|改到|改期|移到|延到|挪到|^[^，。]{0,4}改(?:成|為|为).*[點点日號号週周]/iu,
  ],
  ['cancel', /^(?:please )?(?:cancel|call off)\b|^[請请]?取消|停[課课]|^(?:把|將|将).{1,10}取消(?:掉|了)?[。!！]*$/iu],
  [
    'people',
    /^(?:today|今天)$|^(?:so )?what'?s (?:happening|on|up|going on) today\b|\b(?:print|show)(?: me)? (?:the )?list\b|^今天有(?:什麼|什么|哪些)(?:事|課|课|安排)|^(?:take|cross|strike|remove) \p{Lu}[\p{L} '-]*\boff\b|\b(?:called|rang|phoned|wrote|texted|says|said)\b.*\b(?:can'?t|cannot|won'?t|not|isn'?t) (?:be )?(?:com(?:e|ing)|mak(?:e|ing) it)\b|(?:電話|电话|[來来]電|[說说]).{0,8}不(?:能)?[來来]|(?:[劃划刪删拿][掉去])|\bwho(?: is|'s|’s| all is)? com(?:es|ing)\b|\bwho (?:has )?(?:booked|signed up)\b|\b(?:attendance|roll call|door list|today's list)\b|[誰谁](?:今天|明天)?(?:[會会要])?[來来](?![教帶带])|[點点]名|[簽签]到|[報报]名名[單单]/iu,
  ],
];

/** Theirs as a customer, not the shop's. */
const ofTheirs = /\bmy\b|我的/iu;

/** Null for all but a shopkeeper. Where no lesson is named, `lesson` is null; the one on the desk is meant then, or all of today's. */
export function errandOf(text: string, around: Around, zone: string): Facts | null {
  if (around.house?.['keeper'] !== true || text.length > 200 || ofTheirs.test(text)) return null;
  const [act, pattern] = errands.find(([, one]) => one.test(text)) ?? [];
  if (act === undefined) return null;
  const { who = null, han = null, seats = null } = pattern?.exec(text)?.groups ?? {};
  const lesson: Json = meant(text, act, around, zone)?.id ?? null;
  // Who has a seat in it themselves may mean that.
  if (act === 'cancel' && typeof lesson === 'string' && ownBooking(lesson, around)) return null;
  const isDated = act !== 'move' && hearWish(text, around.nowMs, zone).date !== undefined;
  return {
    act,
    lesson,
    isDated,
    who: seats === null ? withSeats(who ?? han) : `${han ?? ''}${seats}位`,
    words: act === 'write' ? wordsIn(text) : null,
    ...alteration(pattern?.exec(text)?.groups),
    isToday: /\btoday|今[天晚日]/iu.test(text),
  };
}

/** What is to be changed, and to what: in the names of the fields of a lesson. */
function alteration(groups: { readonly [name: string]: string | undefined } = {}): Facts {
  const value = groups['value'] ?? groups['hanValue'];
  const teacher = groups['teaches'] ?? groups['hanTeaches'];
  if (teacher !== undefined) return { field: 'teacher', value: teacher };
  const count = groups['count'] ?? groups['hanCount'];
  if (count !== undefined) return { field: 'seats', value: count };
  const named = Object.keys(groups).find((name) => groups[name] !== undefined && fieldNamed.has(name));
  return value === undefined || named === undefined
    ? { field: null, value: null }
    : { field: fieldNamed.get(named) ?? null, value: value.trim() };
}

const fieldNamed = new Map([
  ['price', 'price'],
  ['hanPrice', 'price'],
  ['title', 'title'],
  ['hanTitle', 'title'],
  ['place', 'place'],
  ['teacher', 'teacher'],
  ['hanTeacher', 'teacher'],
]);

const saidToAll =
  /\b(?:all|everyone|everybody|students|them|coming)\b(?: know)?(?:,? (?:that|please)|:)\s*(?<that>.{6,})$|\b(?:all|everyone|everybody|students|them)\b to (?<todo>.{6,})$|(?:大家|所有人|[學学][員员生]|的人).{0,8}?(?:[說说：:，,\s]|(?=[請请]))(?<han>.{3,})$/iu;

/** What is to be told to all, where the sentence says it: "tell them to bring a cup". It is asked before it goes out. */
function wordsIn(text: string): string | null {
  const { that, todo, han } = saidToAll.exec(text)?.groups ?? {};
  return (that ?? todo ?? han)?.trim() ?? null;
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
