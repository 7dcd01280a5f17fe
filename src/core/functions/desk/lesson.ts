/** What a shopkeeper does with one lesson: tried by the core first, so that what is wrong is told before anything is done. */
import type { Around, Calls, Outcome } from '../../flow/book.ts';
import type { Facts } from '../../flow/flow.ts';
import {
  addDays,
  dateOf,
  instantOf,
  plusMinutes,
  timeOf,
  wallAt,
  weekdayOf,
  type WallTime,
} from '../../lessons/calendar.ts';
import { cancelLesson, mistake, moveLesson, type Lesson, type Today } from '../../lessons/lesson.ts';
import { doorValues, peopleOf, reachOf, type Door } from '../../lessons/door-list.ts';
import { saidInstants } from '../../lessons/tidings.ts';
import { hearGuest } from '../../lessons/mail-guest.ts';
import { putBack } from '../../lessons/put-back.ts';
import { seatsFree, type Turn } from '../../lessons/roster.ts';
import { enrol, giveBack, tickOff } from '../../lessons/seats.ts';
import { readSeats } from '../../lessons/spoken/amounts.ts';
import { inItsHalf } from '../../lessons/spoken/correction.ts';
import { readNumber } from '../../lessons/spoken/numeral.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { hearLesson } from '../../lessons/spoken/spoken.ts';
import { readLengthening, readShift } from '../../lessons/spoken/shift.ts';
import type { Mistake } from '../../units.ts';
import type { CoreContent } from '../core-content.ts';
import { phrase, refused, refusedBy, textOf } from '../values.ts';
import { allowed, onDoor, peopleFacts, rosterOf, type Here } from './board.ts';
import { deskChange } from './change.ts';
import { mostWritten } from './plan-heard.ts';
import { deskRepeat } from './repeat.ts';

export const deskLessonCallNames = [
  'deskTick',
  'deskMove',
  'deskCancel',
  'deskChange',
  'deskRepeat',
  'deskGuest',
  'deskRelease',
  'deskPutBack',
] as const;

type Act = (door: Door, given: Facts, here: Here) => Outcome;

export function deskLessonCalls({ listen }: Pick<CoreContent, 'listen'>): {
  readonly [name in (typeof deskLessonCallNames)[number]]: Calls[string];
} {
  const at =
    (act: Act): Calls[string] =>
    (given, around) =>
      onDoor(given['lesson'] ?? null, around, (door) => act(door, given, { ...around, listen }));
  return {
    deskTick: at(deskTick),
    deskMove: at(deskMove),
    deskCancel: at(deskCancel),
    deskChange: at(deskChange),
    deskRepeat: at(deskRepeat),
    deskGuest: at(deskGuest),
    deskRelease: at(deskRelease),
    deskPutBack: at(deskPutBack),
  };
}

const todayIn = ({ nowMs, house }: Around): Today => ({ now: nowMs, tzVersion: textOf(house?.['tzVersion']) });

/** What the button said, however it stands by now: a second tap changes nothing. */
function deskTick(door: Door, { booking, mark }: Facts, { nowMs }: Around): Outcome {
  const id = textOf(booking);
  const came = mark === 'here' ? true : mark === 'away' ? false : null;
  const turn = tickOff(rosterOf(door), id, came, nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  const bookings = door.bookings.map((one) => (one.id === id ? { ...one, came } : one));
  return {
    gives: {
      booking: id,
      came,
      people: peopleFacts({ ...door, bookings }),
      told: peopleOf(door)
        .filter((one) => one.booking.id === id)
        .map(({ n, booking: { name } }) => phrase('desk-told-ticked', { n, name, mark: textOf(mark) })),
    },
  };
}

/** "Sunday" keeps the hour, "8 pm" the day. */
function deskMove(door: Door, { seen, text }: Facts, here: Here): Outcome {
  const { lesson } = door;
  const heard = shifted(textOf(text), lesson) ?? heardTime(here.listen(timeSaid(textOf(text))), lesson, here.nowMs);
  if ('mistakes' in heard) return refusedBy(heard.mistakes);
  const { starts, minutes } = heard;
  const move = { starts, seen: Number(seen), ...(minutes === null ? {} : { minutes }) };
  const planned = moveLesson(lesson, move, todayIn(here));
  if ('mistakes' in planned) return refusedBy(planned.mistakes);
  const isSame = planned.lesson.startsAt === lesson.startsAt && planned.lesson.endsAt === lesson.endsAt;
  if (isSame) return refused(mistake('there-already', 'starts', { starts }));
  const was = wallAt(lesson.startsAt, lesson.zone);
  const instants = saidInstants(lesson.zone, lesson.startsAt, planned.lesson.startsAt);
  const told = { ...doorValues(door), was, starts, minutes: planned.lesson.minutes, instants };
  const concerned = reachOf(door.bookings);
  const { unreached } = concerned;
  const key = planned.lesson.startsAt === lesson.startsAt ? 'desk-told-lasts' : 'desk-told-move';
  return { gives: { starts, minutes, unreached, told: phrase(key, { ...told, ...concerned }) } };
}

/** "Move it to 11", "to 11": a bare number is an hour. */
const timeSaid = (text: string): string => text.replace(movesTo, 'at ').replace(/^(?:to )?(?=\d{1,2}[.!]?$)/u, 'at ');
const movesTo =
  /^(?:please )?(?:move|shift|push|postpone|reschedule|make) it (?:back |forward )?(?:to |until |till )?(?=\d{1,2}[.!]?$)/iu;

/** "Half an hour later", 延後半小時; "half an hour longer". */
function shifted(text: string, { starts, minutes }: Lesson): HeardTime | null {
  const [later, longer] = [readShift(text), readLengthening(text)];
  if (longer !== undefined) return { starts, minutes: minutes + longer };
  return later === undefined ? null : { starts: plusMinutes(starts, later), minutes: null };
}

interface HeardTime {
  readonly starts: WallTime;
  readonly minutes: number | null;
}

function heardTime(sentence: Sentence, lesson: Lesson, now: number): HeardTime | { mistakes: readonly Mistake[] } {
  const { starts, zone } = lesson;
  const from = sentence.says('desk-near-day') ? now : Math.max(now, weekBegins(lesson));
  const text = inItsHalf(sentence, starts, from, zone);
  const sentences = [text, `${text} ${timeOf(starts)}`, `${dateOf(starts)} ${text}`];
  const heard = sentences.map((one) => hearLesson(sentence.part(one), from, zone));
  const found = heard.find(({ said, mistakes }) => said.starts !== undefined && mistakes.length === 0);
  if (found?.said.starts !== undefined) return { starts: found.said.starts, minutes: found.said.minutes ?? null };
  return { mistakes: heard[0]?.mistakes ?? [] };
}

/** A bare weekday is one of the week the lesson was to be in. */
function weekBegins({ starts, zone }: Lesson): number {
  const date = dateOf(starts);
  return instantOf(`${addDays(date, 1 - weekdayOf(date))}T00:00`, zone);
}

function deskCancel(door: Door, { seen, reason = null }: Facts, { nowMs }: Around): Outcome {
  const { lesson } = door;
  const words = textOf(reason).trim();
  if (words.length > mostWritten) return refused(mistake('words-too-long', 'reason', { most: mostWritten }));
  const planned = cancelLesson(lesson, { reason: words, seen: Number(seen) }, nowMs);
  const concerned = reachOf(door.bookings);
  const told = [
    phrase('desk-told-cancel', { ...doorValues(door), ...concerned }),
    ...(words === '' ? [] : [phrase('desk-told-off-reason', { reason: words })]),
  ];
  return allowed(planned, { reason: words, unreached: concerned.unreached, told });
}

/** "2 seats, mary@example.com" puts right what was understood of Mary. */
function guestAmended(text: string, before: Facts | null): ReturnType<typeof hearGuest> {
  const heard = hearGuest(text);
  if (before === null || !('mistakes' in heard) || !heard.mistakes[0].code.endsWith('guest-no-name')) return heard;
  const named = hearGuest(`${textOf(before['name'])}, ${text}`);
  if ('mistakes' in named) return named;
  const isCounted = readSeats(text).amount !== undefined || readNumber(text.trim()) !== undefined;
  const { guest } = named;
  const mail = guest.mail ?? (before['mail'] as string | null);
  return { guest: { ...guest, mail, seats: isCounted ? guest.seats : Number(before['seats']) } };
}

function deskGuest(door: Door, { text, before = null }: Facts, around: Around): Outcome {
  const heard = guestAmended(textOf(text), before as Facts | null);
  if ('mistakes' in heard) return refusedBy(heard.mistakes);
  const { name, mail, seats, hasPhone } = heard.guest;
  if (mail !== null && around.house?.['mail'] !== true) return refused(mistake('guest-no-mail', 'mail'));
  const wish = { id: textOf(around.house?.['event']), person: 'guest', seats };
  const turn = enrol(rosterOf(door), wish, around.nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  const free = seatsFree(rosterOf(door));
  const to = seats <= free ? 'seated' : 'waiting';
  // A seat that becomes free is offered for a stated time: who cannot be told would lose it unasked.
  if (to === 'waiting' && mail === null) return refused(mistake('guest-waits-untold', 'mail', { free }));
  const what = mail === null ? 'untold' : to;
  const told = phrase(`desk-told-guest-${what}`, { ...doorValues(door), name, mail, count: seats });
  // What was understood in all, to be read once more when it is put.
  const line = [name, ...(mail === null ? [] : [mail]), `${seats} seats`].join(', ');
  return { gives: { name, mail, seats, to, line, told: hasPhone ? [phrase('desk-told-no-phone', {}), told] : [told] } };
}

/** For someone who has told the shop that they can't come. */
function deskRelease(door: Door, { booking }: Facts, { nowMs }: Around): Outcome {
  const id = textOf(booking);
  const turn = giveBack(rosterOf(door), id, nowMs);
  const one = door.bookings.find((other) => other.id === id);
  if ('mistakes' in turn || !one) return refusedBy('mistakes' in turn ? turn.mistakes : []);
  const { name, seats, standing, reach } = one;
  const to = standing === 'seated' ? 'seated' : 'waiting';
  return {
    gives: { to, told: phrase('desk-told-release', { ...doorValues(door), name, count: seats, standing, reach }) },
  };
}

function deskPutBack(door: Door, { booking, to }: Facts, { nowMs, house }: Here): Outcome {
  const wish = {
    booking: textOf(booking),
    id: textOf(house?.['event']),
    to: to === 'seated' ? to : 'waiting',
  } as const;
  return allowedTurn(putBack(rosterOf(door), wish, nowMs), { to: wish.to });
}

const allowedTurn = (turn: Turn, gives: Facts): Outcome => ('mistakes' in turn ? refusedBy(turn.mistakes) : { gives });
