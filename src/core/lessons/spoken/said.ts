/** What is said where lessons are shown: which of them, how many seats, how many more. Less is needed there than anywhere else. */
import type { Instant } from '../../units.ts';
import type { Lesson } from '../lesson.ts';
import { number, readNumber } from './numeral.ts';
import { plain } from './cut.ts';
import { isAsking, partedFromName } from './name.ts';
import { hearNarrowing } from './narrow.ts';
import type { Sentence } from './sentence.ts';
import type { SeatChange } from './seat-change.ts';
import { severalMeant } from './several.ts';
import { onMeantDay } from './meant-day.ts';
import { hearWish, lessonElsewhen, lessonsOn, meantLessons, type Wanted, type Wish } from './wish.ts';
import { isTitledAlone, likeness, shownLikeness, sureLikeness, titledLessons } from './titles.ts';

export interface Said {
  readonly want: Wanted;
  /** By its title, and nothing else. */
  readonly titled: boolean;
  /** By its title, or by a day. */
  readonly named: boolean;
  /** With a day that cannot be, or can be two. */
  readonly unclear: boolean;
  /** The one that is meant; null for none or several. */
  readonly lesson: string | null;
  readonly seats: number | null;
  /** "Two more". */
  readonly more: number | null;
  /** "Can I bring my sister?": so many beside whoever speaks. */
  readonly along: number | null;
  /** "Which is the easiest?", "anything in the evening?": fewer of them are asked for. */
  readonly narrows: boolean;
  /** Nothing but figures: a choice's number goes before it. */
  readonly figure: number | null;
}

/** "Just one seat", "改三位": a number of seats and nothing else. */
export const seatsAlone = ({ text, part }: Sentence): number | null =>
  numberAlone(part(plain(text.slice(0, longest)).trim()));

/** "A place for me and my mum": one is said of the booking, and two of who comes. "One seat, the children stay at home" says one. */
export const seatsMeant = ({ text }: Sentence, said: number | undefined, guests: unknown): number | null =>
  typeof guests === 'number' && (said === undefined || (said === 1 && !saysOne.test(text))) ? guests : (said ?? null);
const saysOne = /\b(?:one|1|just|only|single)\b|[只净淨就]|1\s?[個个]?[位人]/iu;

export interface Ground {
  readonly lessons: readonly Lesson[];
  readonly now: Instant;
  readonly zone: string;
  readonly change: SeatChange;
}

/** Null when it says nothing of the kind: it is about something else then. */
export function hearSaid(sentence: Sentence, { lessons, now, zone, change }: Ground): Said | null {
  const text = partedFromName(sentence.text.slice(0, longest)).rest;
  const spoken = sentence.part(text);
  const wish = onMeantDay(hearWish(spoken, now, zone), lessons, now);
  if (wish.want === 'leave' || wish.want === 'own') return null;
  const isSeveral = severalMeant(spoken, wish, lessons).length > 1;
  const named = isSeveral || isNamed(spoken, wish, lessons);
  const meant = named && !isSeveral && !lessonElsewhen(lessons, wish) ? meantLessons(lessons, wish, shownLikeness) : [];
  const figure = /^\d{1,4}$/.test(text) ? Number(text) : null;
  const { more, along } = change;
  const asksFewer = hearNarrowing(spoken) !== null || wish.weekday !== undefined || spoken.says('other-days');
  const narrows = !named && wish.want !== 'detail' && asksFewer;
  const said = {
    want: wish.want,
    titled: wish.date === undefined && wish.seats === undefined && isTitledAlone(lessons, wish),
    named,
    unclear: wish.dayWrong !== undefined,
    lesson: meant.length === 1 ? (meant[0]?.id ?? null) : null,
    seats:
      more === null && along === null && figure === null
        ? (wish.seats ?? numberAlone(spoken) ?? (named ? partyIn(wish.rest).seats : null))
        : null,
    more,
    along,
    narrows,
    figure,
  };
  const saysSomething =
    named ||
    narrows ||
    said.seats !== null ||
    (more ?? along) !== null ||
    figure !== null ||
    ['enrol', 'detail', ...besides].includes(wish.want);
  return saysSomething ? said : null;
}

const longest = 200;

/** Answered in a sentence, whatever is talked of. */
const besides = ['how-waits', 'late', 'unheard', 'remind', 'unremind', 'mail', 'shop-says'];

/** A day alone, or with a wish; a title alone. "Are you open on Sunday?" names no lesson. */
function isNamed(spoken: Sentence, wish: Wish, lessons: readonly Lesson[]): boolean {
  if (wish.span !== undefined && (wish.want === 'list' || wish.rest.length <= longestDays)) return true;
  // "When is the next one?": of those that are shown the first.
  if (spoken.says('next-lesson')) return true;
  if (isTitledOnItsDay(spoken, wish, lessons)) return true;
  // 我要報名第一杯茶: the whole title, among other words.
  if (wish.want === 'enrol' && lessons.some((one) => likeness(one, wish.rest, 2) >= sureLikeness)) return true;
  const isBare = !/[\p{L}\p{N}]/u.test(spoken.part(partyIn(wish.rest).rest).without('beside-day').text);
  return isTitledAlone(lessons, wish) || (wish.date !== undefined && (wish.want !== 'question' || isBare));
}

/** "Me and my daughter for the first cup, 12 December": whoever tells both asks for that one, whatever else is said. */
const isTitledOnItsDay = (spoken: Sentence, wish: Wish, lessons: readonly Lesson[]): boolean =>
  wish.date !== undefined &&
  wish.want === 'question' &&
  !isAsking(spoken) &&
  titledLessons(lessonsOn(lessons, wish), wish, sureLikeness).length > 0;

/** "The 10th then, two of us": how many they are, told beside the day. */
const party = new RegExp(
  `\\b(?:(?:for|and|with|its|it's|it is|we are|we're|there are|there'll be|there will be|just|only) )*(?<n>${number}) of us\\b(?: please)?`,
  'iu',
);

function partyIn(text: string): { readonly seats: number | null; readonly rest: string } {
  const found = party.exec(text);
  if (found === null) return { seats: null, rest: text };
  return { seats: readNumber(found.groups?.['n'] ?? '') ?? null, rest: text.replace(found[0], ' ') };
}

/** "Anything next week?": longer than that, it is about something else in those days. */
const longestDays = 28;

const before =
  "just |only |for |we are |we will be |we'll be |we would be |we'd be |there are |there will be |there'll be |it's |its |that's |thats |" +
  '就|只要|只有|只[來来去]|我們|我们';
const changed = '(?:(?:can|could|may) (?:i|we|you) )?(?:be |make (?:it|that) |change (?:it |that )?to )';
const changedHan = '(?:我|我們|我们)?(?:想|要|想要|可以|能)?[改換换](?:成|為|为|做)?';
const behind = ' of us| seats?| places?| people| persons?|個人|个人|個|个|位';
/** "Only one of us is coming." */
const comes =
  ' (?:is|are|will be) (?:coming|there)(?: now| after all)?| (?:can|will) (?:come|make it|be there)(?: now| after all)?|(?:能|可以|會|会)?(?:來|来|去|到|參加|参加)';
/** "Just one seat", "can you make it 3?", 改三位吧: a number, and what may stand around it. */
const alone = new RegExp(
  `^(?:actually |no |sorry |but )*(?:\\p{Script=Han}{1,5}[說说])?(?:${before}|${changed}|${changedHan})?(?<n>${number})(?:${behind})?(?:${comes})?(?: instead)?(?: please|吧)?[嗎吗]?[.!。！?？]?$`,
  'iu',
);

/** "My sister can't come, just one seat": what is said before the last comma, or space between Han, is why. */
function numberAlone({ text, part }: Sentence): number | null {
  const last =
    text.length <= 60
      ? (text.split(/[,，;；。]\s*|(?<=\p{Script=Han}) (?=\p{Script=Han})/u).findLast((piece) => piece !== '') ?? '')
      : text;
  if (part(last.replace(/[.!]$/, '')).says('only-me')) return 1;
  const n = alone.exec(last)?.groups?.['n'];
  return n === undefined ? null : (readNumber(n) ?? null);
}
