/** What one sentence of a shopkeeper says of a lesson, and what in it cannot be read. It guesses no half of a day and no number. */
import type { Instant, Mistake } from '../../units.ts';
import { addDays, dateOf, timeOf, wallAt, zoneNamed, type WallDate, type WallTime } from '../calendar.ts';
import { mistake, type Level } from '../lesson.ts';
import type { Recurrence } from '../recurrence.ts';
import { readDuration, readPrice, readSeats } from './amounts.ts';
import { cut, mark, plain } from './cut.ts';
import { readDay, type Day } from './day.ts';
import { readHours, type Hours } from './hours.ts';
import { endOf, readEnd, readOpening } from './repeat-end.ts';
import { firstInMonth, readRepeats, type InMonth } from './repeats.ts';
import { readLevel } from './level.ts';
import type { Sentence } from './sentence.ts';
import { readMonths } from './span.ts';
import { readOtherDays } from './other-days.ts';
import { readTeacher } from './teacher.ts';

/** What was understood; what is absent was not said. */
export interface SpokenLesson {
  readonly title?: string;
  readonly starts?: WallTime;
  /** More days on which it is the same. */
  readonly also?: readonly WallDate[];
  readonly minutes?: number;
  readonly seats?: number;
  readonly price?: string;
  readonly teacher?: string;
  /** Where, said in a piece of its own. */
  readonly place?: string;
  readonly level?: Level;
  readonly zone?: string;
  readonly repeats?: Recurrence;
}

export interface Heard {
  readonly said: SpokenLesson;
  /** What could not be read, or can be read in two ways. What is only absent is no mistake here. */
  readonly mistakes: readonly Mistake[];
}

/** Longer than any lesson needs; it bounds the reading's time. */
const longest = 400;

/** `zone` is the shop's, in which "Saturday" and "tomorrow" are meant unless the sentence names another. */
export function hearLesson(sentence: Sentence, now: Instant, zone: string): Heard {
  const text = plain(sentence.text);
  if (text.length > longest) return { said: {}, mistakes: [mistake('sentence-too-long', 'title', { most: longest })] };
  return understood(sentence, readZone(text), { now, zone });
}

/** "A puer evening on Friday at 7". */
const partNamed = (text: string): string | undefined =>
  /\b(?<part>morning|afternoon|evening)\b/iu.exec(text)?.groups?.['part'];

function understood({ part }: Sentence, named: NamedZone, { now, zone }: { now: Instant; zone: string }): Heard {
  const here = wallAt(now, named.zone ?? zone);
  const paid = readPrice(named.rest);
  const { repeats, day } = whenOf(paid.rest, dateOf(here));
  const others = readOtherDays(day.rest, repeats ? undefined : day.date, dateOf(here));
  const seats = readSeats(others.rest);
  const lasting = readDuration(seats.rest);
  const hours = readHours(lasting.rest, day.part ?? partNamed(lasting.rest));
  const led = readTeacher(part(hours.rest));
  const pieces = piecesIn(led.rest).map(part);
  const ofTitle = pieces.filter((piece) => !isLevel(piece) && !isFree(piece) && !isPlace(piece));
  const place = pieces.find(isPlace)?.text.replace(/^(?:(?:in|at) (?=the\b)|在)/iu, '');
  const title = titleIn(ofTitle.map(({ text }) => text));
  const price = withFree(paid.price, pieces.find(isFree)?.text.replace(/^(?:it'?s|it is) /iu, ''));
  const level = readLevel(pieces.find(isLevel) ?? part(''));
  const starts = day.date !== undefined && hours.from !== undefined ? startOf(day, hours.from, here) : undefined;
  const minutes = hours.minutes ?? lasting.amount;
  const said = {
    ...(title === '' ? {} : { title }),
    ...(starts === undefined ? {} : { starts }),
    ...(starts === undefined || others.dates.length === 0 ? {} : { also: others.dates }),
    ...(minutes === undefined ? {} : { minutes }),
    ...(seats.amount === undefined ? {} : { seats: seats.amount }),
    ...(level === undefined ? {} : { level }),
    ...(price === undefined ? {} : { price }),
    ...(place === undefined ? {} : { place }),
    ...(led.teacher === undefined ? {} : { teacher: led.teacher }),
    ...(named.zone === undefined ? {} : { zone: named.zone }),
    ...(repeats === undefined ? {} : { repeats }),
  };
  return { said, mistakes: [...named.mistakes, ...day.mistakes, ...hours.mistakes, ...unsaid(day, hours)] };
}

/** "30 dollars, free for students". */
export function withFree(price: string | undefined, free: string | undefined): string | undefined {
  if (free === undefined || price === undefined) return price ?? free;
  const isForSome = /\bfor (?!all\b|every)|^(?:學生|学生|會員|会员|小孩|兒童|儿童|長者|长者)/iu.test(free);
  return isForSome && !price.includes(free) ? `${price}, ${free}` : free;
}

/** As pieces of their own: "advanced puer" is a title, and "free seats" are no price. */
const isLevel = (piece: Sentence): boolean => piece.says('level-alone');
const isFree = (piece: Sentence): boolean => piece.says('free');
const isPlace = (piece: Sentence): boolean => piece.says('place-alone');

function unsaid(day: Day, hours: Hours): readonly Mistake[] {
  return [
    ...(day.date === undefined && day.mistakes.length === 0 ? [mistake('day-missing', 'starts')] : []),
    ...(hours.from === undefined && hours.mistakes.length === 0 ? [mistake('time-missing', 'starts')] : []),
  ];
}

interface NamedZone {
  readonly zone?: string;
  readonly mistakes: readonly Mistake[];
  readonly rest: string;
}

function readZone(text: string): NamedZone {
  const found = cut(
    text,
    /(?<sign>\b(?:in|zone)\s+|时区\s*|時區\s*)?\b(?<zone>[A-Z][A-Za-z_]+(?:\/[A-Z][A-Za-z_-]+)+)\b/u,
  );
  if (found === undefined) return { mistakes: [], rest: text };
  const { sign, zone = '' } = found.groups;
  const known = zoneNamed(zone);
  if (known !== undefined) return { zone: known, mistakes: [], rest: found.rest };
  // "Green/White tea" is a title, not a zone.
  return sign === undefined
    ? { mistakes: [], rest: text }
    : { mistakes: [mistake('zone-unknown', 'zone', { zone })], rest: found.rest };
}

/** Said on Saturday at eight in the evening, "Saturday 7 pm" is next week's. */
function startOf(day: Day, from: string, here: WallTime): WallTime {
  const date = day.date ?? '';
  const passed = from <= timeOf(here);
  if (passed && day.next !== undefined) return `${day.next}T${from}`;
  return `${passed && day.mayBeNextWeek ? addDays(date, 7) : date}T${from}`;
}

/** The day it is on, or first on, and how it comes again. */
function whenOf(text: string, today: WallDate): { readonly repeats?: Recurrence; readonly day: Day } {
  const { rule, inMonth, rest } = readRepeats(text);
  if (rule === undefined) return { day: readDay(text, today) };
  const ended = readEnd(rest, today);
  const { day, until } =
    inMonth === undefined ? firstSince(ended.rest, today) : firstInSuch(inMonth, ended.rest, today);
  const end = endOf(ended, rule, day.date ?? today);
  const repeats = { ...rule, ...(until === undefined || isEnded(end) ? {} : { until }), ...end };
  return { repeats, day: { ...day, rest: day.rest.replace(begun, mark) } };
}

const isEnded = ({ times, until }: Pick<Recurrence, 'times' | 'until'>): boolean => (times ?? until) !== undefined;

/** "In January", "from February": the first such day from then on, and the last there is of the months told. */
function firstSince(text: string, today: WallDate): { readonly day: Day; readonly until?: WallDate } {
  const opened = readOpening(text, today);
  const months = opened.from === undefined ? readMonths(text, today) : { rest: opened.rest };
  const from = opened.from ?? months.span?.from ?? today;
  const day = readDay(months.rest, from > today ? from : today);
  return { day, ...(months.span === undefined ? {} : { until: months.span.to }) };
}

/** "From the 13th on": 12月13日開始. */
const begun = new RegExp(`${mark}(?:起|開始|开始)|\\b(?:starting|beginning|commencing)(?: on)?\\s*${mark}`, 'iu');

const firstInSuch = (where: InMonth, text: string, today: WallDate): ReturnType<typeof firstSince> => ({
  day: firstOf(where, text, today),
});

/** From the day or the month it is said to begin with, else from today. */
function firstOf(where: InMonth, text: string, today: WallDate): Day {
  const told = readDay(text, today);
  const opened = told.date === undefined ? readOpening(text, today) : { rest: told.rest, from: told.date };
  const date = firstInMonth(where, opened.from ?? today);
  const next = date === today ? { next: firstInMonth(where, addDays(date, 1)) } : {};
  const part = told.part === undefined ? {} : { part: told.part };
  return { date, mayBeNextWeek: false, ...next, ...part, mistakes: told.mistakes, rest: opened.rest };
}

const wish =
  "(?:(?:i(?:'d| would)? (?:want|like|need) to|let'?s|can (?:we|you|i)|could (?:we|you|i)|help me(?: to)?|i'm going to|we(?:'ll| will| want to| should))\\s+)?";
const order = `${wish}(?:please\\s+)?(?:add|new|plan|schedule|set up|put on|put in|offer|create|open|announce|advertise|host|organi[sz]e)\\b\\s*`;
const aLesson = '(?:(?:a|an|the)\\s+)?(?:new\\s+)?(?:(?:lesson|class)\\b\\s*)?';
const opening = new RegExp(`^(?:${order})?${aLesson}(?:(?:on|about|at|for|in|from|with|and)\\b\\s*)*[:：]?\\s*`, 'iu');
const hanOpening =
  /^(?:(?:早上|上午|中午|下午|傍晚|晚上)(?=[加增开開排办辦新]))?(?:我(?:们|們)?(?:想|要|想要|打算)|(?:请|請)?(?:帮|幫)我|唔該|麻煩|麻烦)?(?:请|請)?(?:新增|[加增多再]?[开開]|加|(?:安?排|办|辦|新)(?=新|一|节|節|堂|场|場|个|個|课|課|门|門|$))?(?:新(?=一|节|節|堂|课|課))?(?:一)?(?:节|節|堂|场|場|个|個|门|門)?(?:新(?=课|課))?(?:课程|課程|课|課)?[:：]?\s*/;
const ending = /\s+(?:on|at|for|in|from|with|and)$|[在有共的]$/iu;

/** What nothing else has claimed. */
function piecesIn(rest: string): readonly string[] {
  return rest
    .split(new RegExp(`[,;，；、。|${mark}]|\\.(?=\\s|$)`, 'u'))
    .map((piece) => piece.trim().replace(opening, '').replace(hanOpening, '').replace(ending, '').trim())
    .filter((piece) => /[\p{L}\p{N}]/u.test(piece));
}

function titleIn(pieces: readonly string[]): string {
  return pieces.join(pieces.some((piece) => /\p{Script=Han}/u.test(piece)) ? '，' : ', ');
}
