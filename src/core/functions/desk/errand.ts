/** What a shopkeeper wants done in one sentence: who comes, move, cancel, write to all. It finds the lesson; the desk asks before anything is done. */
import type { Around } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import type { DeskCue, Sentence } from '../../lessons/spoken/sentence.ts';
import { hearLesson } from '../../lessons/spoken/spoken.ts';
import { hearWish } from '../../lessons/spoken/wish.ts';
import { dateOf, wallAt } from '../../lessons/calendar.ts';
import { readOffDays } from '../../lessons/spoken/off-days.ts';
import { readPastDays } from '../../lessons/spoken/past-days.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import { withoutRepeats } from '../../lessons/spoken/repeat-change.ts';
import { doorOpensMs } from '../../lessons/seats.ts';
import { doorsIn } from './board.ts';
import { guestSeatsTaken, guestTaken } from './guest-taken.ts';
import { guestErrand } from './guests.ts';
import { inDays, lessonsMeant, meant, namesDays, noneOn, only } from './meant.ts';
import {
  changeTaken,
  correctionTaken,
  moveTaken,
  reasonTaken,
  repeatTaken,
  seatsTaken,
  wordsTaken,
  type Take,
} from './taken.ts';
import { calledOffIn } from './resume.ts';
import { ownBooking } from '../lesson/in-house.ts';
import { textOf } from '../values.ts';

type Errand =
  | 'people'
  | 'move'
  | 'cancel'
  | 'call-off'
  | 'resume'
  | 'off-listed'
  | 'attended'
  | 'phone'
  | 'code'
  | 'asked'
  | 'write'
  | 'seats'
  | 'guest'
  | 'show'
  | 'list'
  | 'remind'
  | 'add'
  | 'alter'
  | 'questions'
  | 'correct'
  | 'repeat'
  | 'find'
  | 'release'
  | 'tick'
  | 'reseat'
  | 'transfer'
  | 'write-one'
  | 'undo'
  | 'undelivered'
  | 'note'
  | 'stock'
  | 'swap';

/** Errand, the cue that tells it, and what is taken from the sentence; null where it must hold something and does not. The first that fits. */
const errands: readonly (readonly [Errand, DeskCue, Take?])[] = [
  ['correct', 'desk-correct', correctionTaken],
  ['asked', 'desk-asked'],
  ['code', 'desk-code'],
  ['phone', 'desk-phone'],
  ['questions', 'desk-first-question', () => ({ value: 'first' })],
  ['questions', 'desk-questions'],
  ['undelivered', 'desk-undelivered'],
  ['note', 'desk-note'],
  ['stock', 'desk-stock'],
  ['swap', 'desk-swap'],
  ['add', 'desk-add'],
  ['guest', 'desk-guest-mail', guestTaken],
  ['guest', 'desk-guest-seats', guestSeatsTaken],
  ['repeat', 'desk-repeat', repeatTaken],
  ['alter', 'desk-alter', changeTaken],
  ['show', 'desk-show'],
  ['list', 'desk-list'],
  ['remind', 'desk-remind'],
  ['seats', 'desk-seats', seatsTaken],
  ['guest', 'desk-guest', guestTaken],
  ['write', 'desk-write', wordsTaken],
  ['write-one', 'desk-write-named'],
  ['move', 'desk-move', moveTaken],
  ['cancel', 'desk-cancel', reasonTaken],
  ['people', 'desk-people'],
  ['find', 'desk-caller'],
  ['find', 'desk-unknown-guest'],
];

/** The lesson is that of whoever is meant. */
const ofNoLesson: Facts = { lesson: null, among: [], isDated: false, isNone: false, isAll: false, isToday: false };

const nothingTaken: Facts = { who: null, words: null, field: null, value: null };

/** Null for all but a shopkeeper. Where no lesson is named, `lesson` is null: one of those `among`, the one on the desk, or all of today's. */
export function errandOf(sentence: Sentence, around: Around, zone: string): Facts | null {
  const isKeeper = around.house?.['keeper'] === true;
  if (!isKeeper || sentence.text.length > 200) return null;
  // "My answer" is one the shop gave.
  const back = ofWhatWas(sentence, around, zone);
  const isOff = back === null && callsOff(sentence, around, zone);
  if (!isOff && !sentence.says('desk-correct') && sentence.says('desk-of-theirs')) return null;
  const found = isOff
    ? { act: 'call-off' as const, taken: {} }
    : (back ?? errandWithGuest(sentence, around, zone) ?? firstErrand(sentence));
  if (found === null) return null;
  const { act, taken } = found;
  if (act === 'transfer' || act === 'write-one')
    return { ...ofNoLesson, act, ...nothingTaken, ...taken, isOfOne: sentence.says('desk-of-one') };
  const naming = namingIn(sentence, found);
  const fit = lessonsMeant(naming, act, around, zone);
  const ofDay = saysDay(found) && !naming.says('desk-write-all') ? meant(sentence, act, around, zone) : undefined;
  const lesson: Json = found.lesson ?? (only(fit) ?? ofDay)?.id ?? null;
  const among = (fit.length > 0 ? fit : inDays(naming, around, zone)).map(({ id }) => id);
  // "Move Lee Wong to the 12th", of nobody who is on a list.
  if (act === 'move' && lesson === null && among.length === 0 && movesSomebody.test(textOf(taken['value'])))
    return { ...ofNoLesson, act: 'find', ...nothingTaken, isOfOne: false };
  // Who has a seat in it themselves may mean that.
  if (act === 'cancel' && typeof lesson === 'string' && ownBooking(lesson, around)) return null;
  const isDated = act !== 'repeat' && namesDays(naming, around.nowMs, zone);
  const isAll =
    (act === 'correct' && !/[\p{L}\p{N}]/u.test(sentence.without('desk-correct').text)) ||
    (act === 'write' && naming.says('desk-write-all'));
  return {
    act,
    lesson,
    among,
    isDated,
    isNone: lesson === null && isDated && noneOn(naming, around, zone),
    ...nothingTaken,
    ...taken,
    isAll,
    isOfOne: sentence.says('desk-of-one'),
    isToday: sentence.says('desk-today'),
  };
}

const movesSomebody =
  /^(?:please |now )?(?:move|shift|reschedule|rebook) (?!(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|January|February|March|April|May|June|July|August|September|October|November|December|Christmas)\p{Lu}\p{Ll}+(?: \p{Lu}\p{Ll}+)*\s*$/u;

/** What was called off, and who came: of lessons that are not to be changed. */
function ofWhatWas(sentence: Sentence, around: Around, zone: string): Found | null {
  if (sentence.says('desk-off-listed')) return { act: 'off-listed', taken: {} };
  const isBack = sentence.says('desk-resume') || (sentence.says('desk-undo') && calledOffIn(around).length > 0);
  if (isBack) return { act: 'resume', taken: {} };
  if (sentence.says('desk-reverse')) return { act: 'undo', taken: {} };
  if (!sentence.says('desk-attended')) return null;
  const door = namesPast(sentence, around, zone) ? undefined : doorOpenIn(around);
  return door ? { act: 'people', taken: {}, lesson: door } : { act: 'attended', taken: {} };
}

/** The lesson at whose door people are ticked off just now. */
const doorOpenIn = (around: Around): string | undefined =>
  doorsIn(around).find(
    ({ lesson: { status, startsAt, endsAt } }) =>
      status !== 'cancelled' && around.nowMs >= startsAt - doorOpensMs && around.nowMs < endsAt,
  )?.lesson.id;

/** "Today" is not over. */
function namesPast({ text }: Sentence, { nowMs }: Around, zone: string): boolean {
  const today = dateOf(wallAt(nowMs, zone));
  return (readPastDays(text, today, [])?.to ?? today) < today;
}

/** More than one, or days. A lesson to plan tells its hour; "are we closed on Monday?" only asks. */
function callsOff(sentence: Sentence, around: Around, zone: string): boolean {
  if (sentence.says('desk-write') || hearLesson(sentence, around.nowMs, zone).said.starts !== undefined) return false;
  if (sentence.says('desk-call-off')) return true;
  if (isQuestion.test(sentence.text)) return false;
  const { isTold, rest } = readOffDays(sentence.text, dateOf(wallAt(around.nowMs, zone)));
  // 週六的課不上了 is of one day.
  const isOneDay = !isTold && hearWish(sentence, around.nowMs, zone).date !== undefined;
  if (sentence.says('desk-call-off-told')) return !isOneDay;
  const lessons = doorsIn(around).map(({ lesson }) => lesson);
  const isNamed = (): boolean => titledLessons(lessons, { rest }).length > 0;
  return isTold && (sentence.says('desk-call-off-days') || (sentence.says('desk-stops') && isNamed()));
}

const isQuestion = /[?？]|[嗎吗呢]\s*$/u;

/** "Take Ah Keung off Saturday": with someone who is on a list. */
function errandWithGuest(sentence: Sentence, around: Around, zone: string): Found | null {
  const act = sentence.says('desk-correct')
    ? null
    : guestErrand(sentence, meant(sentence, 'people', around, zone)?.id ?? null, around);
  return act === null ? null : { act, taken: { value: sentence.says('desk-away') ? 'away' : 'here' } };
}

interface Found {
  readonly act: Errand;
  readonly taken: Facts;
  /** Where it is none that is named. */
  readonly lesson?: string;
}

function firstErrand(sentence: Sentence): Found | null {
  for (const [act, cue, take] of errands) {
    const taken = sentence.says(cue) ? (take ? take(sentence.text) : {}) : null;
    if (taken !== null) return { act, taken };
  }
  return null;
}

/** "On the first Saturday of each month" names no lesson, and neither does what a letter says. */
function namingIn(sentence: Sentence, { act, taken }: Found): Sentence {
  if (act === 'repeat') return sentence.part(withoutRepeats(sentence.text));
  return act === 'write' || act === 'move' ? sentence.part(textOf(taken['value'])) : sentence;
}

/** "Let everyone know the street is closed on Saturday": one day, to those of that day. Of days together it says nothing. */
const saysDay = ({ act, taken }: Found): boolean => {
  const words = textOf(taken['words']);
  return act === 'write' && words !== '' && !/\b(?:from|until|till|between|through|to \d)|[到至]/iu.test(words);
};
