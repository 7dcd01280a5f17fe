/** What a student wants of lessons in a sentence of theirs, and which lesson they mean. Enrols nobody, and guesses no number. */
import { dateOf, wallAt, type WallDate } from '../calendar.ts';
import type { Lesson, Level } from '../lesson.ts';
import type { Instant, Mistake } from '../../units.ts';
import { readSeats, type Amount } from './amounts.ts';
import { cut, mark, plain } from './cut.ts';
import { readDay } from './day.ts';
import { asksDetail, asksForRoom } from './detail.ts';
import { levelWished } from './level.ts';
import { lessonWords } from './lesson-words.ts';
import { number, readNumber } from './numeral.ts';
import { readSpan, type Span } from './span.ts';
import { enoughLikeness, likeness, sureLikeness, titledLessons } from './titles.ts';

/** `detail`: what is told of a lesson anyway; `remind`: what the house does by itself; `question`: none of the others, for a person to answer. */
export type Wanted = 'list' | 'enrol' | 'own' | 'leave' | 'remind' | 'detail' | 'question';

export interface Wish {
  readonly want: Wanted;
  readonly date?: WallDate;
  /** By its weekday alone: `onMeantDay` tells which it is. */
  readonly byWeekday?: true;
  /** There is none on the nearest such day. */
  readonly isLater?: true;
  /** A day that cannot be, or can be two. */
  readonly dayWrong?: Mistake;
  /** Days named together, when no single one is. */
  readonly span?: Span;
  readonly level?: Level;
  readonly seats?: number;
  /** What is left when day and seats are taken out. */
  readonly rest: string;
}

/** Longer than any wish needs; it bounds the reading's time. */
const longest = 400;

/** The first that fits; order matters: "my booking" is no wish to book. */
const wants: readonly (readonly [Wanted, RegExp])[] = [
  // "How late can I cancel?" cancels nothing.
  [
    'detail',
    /\b(?:how late|how long before|until when|till when|by when|what is the latest|when is the latest)\b|最[晚遲迟].{0,8}(?:取消|退)|(?:多久|[幾几]天|什麼時候|什么时候|何[時时])(?:以|之)?前.{0,6}(?:取消|退)/iu,
  ],
  [
    'leave',
    /\b(?:cancel|give (?:up|back)|withdraw|drop out|(?:can'?t|cannot|can not|won'?t) (?:come|make it|attend))\b|取消|退(?:課|课|位|掉|出)|(?:不能|沒辦法|没办法|無法|无法)(?:來|来|去|到|上課|上课)|[來来去]不了|不想?(?:去|來|来|上|報|报)了|先不(?:去|上|報|报)|\b(?:do not|don'?t) want to (?:come|go|join)\b|唔(?:嚟|來|来|去)(?:得|到)?|[嚟去]唔到|不(?:排|等)了|\b(?:take|get) (?:me|us) off\b/iu,
  ],
  ['remind', /\bremind (?:me|us)\b|提醒/iu],
  [
    'own',
    new RegExp(
      `\\bmy (?:next |own |past )?(?:${lessonWords}|bookings?|reservations?)\\b|\\bwhat (?:have|did) i (?:book|sign)|\\bam i (?:still )?(?:booked|enrolled|registered|signed|on (?:the|your)(?: waiting)? list)|我(?:排在?|是)第?[幾几]|我(?:[還还]?在|有在?).{0,3}(?:名[單单]|候[補补])|我(?:的|報了|报了|訂了|订了|報名了|报名了)(?:什麼|什么|哪些|哪幾|哪几)?(?:課|课|預約|预约|報名|报名|預訂|预订)|我(?:報|报|訂|订)了`,
      'iu',
    ),
  ],
  [
    'enrol',
    /\b(?:(?:i|we)(?:'d| would) (?:like|love) to|(?:i|we) want to|(?:i|we) will|(?:i|we)'ll) (?:come|join|go)\b|\b(?:enrol+|enlist|sign (?:me |us )?up|register|reserve|book|put (?:me|us) down|save (?:me|us)|join|attend|(?:can|could|may) (?:i|we)(?: still| also)? come)\b|\b(?:put|get) (?:me|us) (?:on|in) (?:the|your) (?:waiting )?list\b|\b(?:seats?|spots?|places?)\b.*\b(?:for|on|in|at)\b|\b(?:want|like|get|have|take|need) (?:\w+ )?(?:seats?|spots?|places?)\b|(?:報|报)(?:名|(?:\d{1,2}|[一二兩两三四五六七八九十])(?:個|个|位|人))|(?:[幫帮]我|想|要|就|^)[報报](?![告紙纸價价警答])|預約|预约|預訂|预订|[訂订留].{0,6}[位座]|參加|参加|(?:想|能|可以)[上報报]|(?:可以|能|想)(?:來|来|嚟)(?:嗎|吗|上|[？?。!！]|$)|我(?:同|哋|[和跟]).{1,8}[嚟來来](?:上|[啦。!！]|$)|我哋?嚟(?:上|啦|[。!！]|$)|[候遞递]補|候补|(?:加|排)(?:進|进|入|到)?(?:名單|名单|候補|候补)/iu,
  ],
  [
    'list',
    new RegExp(
      `\\b(?:which|what|any|are there|is there|do you (?:have|do|teach|give|offer|run|hold)|list|show|see|next|upcoming|when)\\b.*\\b${lessonWords}\\b|^(?:the |tea )?${lessonWords}(?: please)?[?!.]*$|(?:有|開|开)(?:什麼|什么|哪些|沒有|没有|哪幾|哪几)?.{0,6}[課课]|有[咩乜冇].{0,5}堂|[課课](?:程|表)|(?:什麼|什么|哪些|何)(?:時候|时候|時|时)?.{0,4}[課课]|^[課课]程?[？?]?$|\\b(?:free|available|on)\\b.*\\b(?:this|next) (?:week|weekend|month)\\b|\\b(?:some|any)thing\\b.*\\b(?:beginners?|advanced|on|this|next)\\b|\\b(?:learn|study)\\b|想?[學学][習习]?[泡沖冲喝]?茶|有.{0,12}(?:初[學学]|入[門门]|新手)|最近的?一?[節节堂]|下一?[節节堂門门][課课]?|\\bwhat'?s on\\b|\\bwhen(?:'?s| is) the next\\b|有(?:[嗎吗]|[沒没冇]有?)[?？]?$`,
      'iu',
    ),
  ],
];

/** "The next lesson": the first to come. */
const next = new RegExp(
  String.raw`\b(?:next|soonest|earliest|first) (?:available |free |possible )?${lessonWords}\b|下一?(?:[節节堂門门]|[個个]?(?=[課课]))|最近的?(?:一|那)?[節节堂門门]`,
  'iu',
);
export const asksForNext = (sentence: string): boolean => next.test(plain(sentence.slice(0, longest)));

/** `zone` is the shop's, in which "Saturday" and "tomorrow" are meant. */
export function hearWish(sentence: string, now: Instant, zone: string): Wish {
  const text = cleared(sentence);
  const today = dateOf(wallAt(now, zone));
  const day = readDay(text, today);
  const seats = seatsIn(day.rest);
  const [dayWrong] = day.mistakes;
  const span = day.date === undefined ? readSpan(text, today) : undefined;
  const level = levelWished(text);
  return {
    want: wantIn(text),
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

function wantIn(text: string): Wanted {
  if (asksForRoom(text)) return 'detail';
  const found = wants.find(([, pattern]) => pattern.test(text))?.[0];
  if (found !== undefined && found !== 'list') return found;
  // "How long is the course?" lists nothing.
  const isOfOne = asksDetail(text) && !asksForLessons.test(text) && !next.test(text) && !asksWhich.test(text);
  return isOfOne ? 'detail' : (found ?? 'question');
}

/** "What is there next week?" asks for a list, whatever else it asks. */
const asksWhich = /\b(?:are there|is there|do you have|which)\b|有[沒没]有|有(?:什麼|什么|哪些)/iu;

/** Whether a lesson is for whom, and in the days, that were named. */
export const isSuch = ({ level, starts }: Lesson, wish: Pick<Wish, 'span' | 'level'>): boolean =>
  (wish.level === undefined || wish.level === level) &&
  (wish.span === undefined || (dateOf(starts) >= wish.span.from && dateOf(starts) <= wish.span.to));

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

/** Whether a sentence wants a seat, or one's own booking, so plainly that it is about lessons, whatever its words are about. */
export function isAboutLessons(sentence: string, lessons: readonly Lesson[]): boolean {
  const text = cleared(sentence);
  // Asked of every message: what only lists lessons is not looked for.
  const want = wants.find(([one, pattern]) => one !== 'list' && pattern.test(text))?.[0];
  if (want === 'own' || asksForLessons.test(text)) return true;
  if (want === undefined && !asksDetail(text)) return false;
  // One word of a title may be a tea to buy as well.
  const isNamed = lessons.some((lesson) => likeness(lesson, text, 2) >= enoughLikeness);
  return isNamed || (want === 'enrol' && !tableWords.test(text) && readSeats(text).amount !== undefined);
}

/** "What lessons do you have?": so plain that nothing else can be meant. */
const asksForLessons = new RegExp(
  `^(?:(?:hi|hello|hey)[,! ]*)?(?:(?:what|which|are there|do you (?:have|do|teach|give|offer|run|hold))(?: any| other| kind of| sort of)?(?: tea)? ${lessonWords}\\b|what'?s on (?:in|on|at|this|next|over)\\b)`,
  'iu',
);

const cleared = (sentence: string): string => plain(sentence.slice(0, longest)).replaceAll('’', "'");
/** A seat in a lesson is not a table in a restaurant. */
const tableWords = /\btables?\b|[桌]/iu;
