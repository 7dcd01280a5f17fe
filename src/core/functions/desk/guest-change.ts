/** What a shopkeeper does with one person on a list: other seats, another lesson, a word to them alone. Tried here, shown, and judged again when it is kept. */
import type { Around, Calls, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { wallAt } from '../../lessons/calendar.ts';
import type { Door } from '../../lessons/door-list.ts';
import { mistake } from '../../lessons/lesson.ts';
import { seatsFree } from '../../lessons/roster.ts';
import { changeSeats, enrol, giveBack } from '../../lessons/seats.ts';
import { otherLesson } from '../../lessons/spoken/other-lesson.ts';
import { seatsTold } from '../../lessons/spoken/seats-told.ts';
import type { Listen } from '../../lessons/spoken/sentence.ts';
import { lessonValues } from '../../lessons/tidings.ts';
import type { CoreContent } from '../core-content.ts';
import { doorsIn, onDoor, rosterOf } from './board.ts';
import { mostWritten } from './plan-heard.ts';
import type { Named } from './guest-names.ts';
import { withoutName, wordsTo } from './guest-words.ts';
import { numberOf, phrase, refused, refusedBy, textOf } from '../values.ts';

export const deskGuestChangeCallNames = ['deskReseat', 'deskTransfer', 'deskWriteOne'] as const;

type One = Door['bookings'][number];
type Act = (
  guest: { readonly door: Door; readonly one: One; readonly called: string },
  given: Facts,
  here: Here,
) => Outcome;

interface Here extends Around {
  readonly listen: Listen;
}

export function deskGuestChangeCalls({ listen }: Pick<CoreContent, 'listen'>): {
  readonly [name in (typeof deskGuestChangeCallNames)[number]]: Calls[string];
} {
  const at =
    (act: Act): Calls[string] =>
    (given, around) =>
      onDoor(given['lesson'] ?? null, around, (door) => {
        const one = door.bookings.find(({ id, standing }) => id === given['booking'] && standing !== 'left');
        const called = one ? nameOf(one.id, around) : '';
        return one
          ? act({ door, one, called }, given, { ...around, listen })
          : refused(mistake('booking-left', 'booking'));
      });
  return { deskReseat: at(deskReseat), deskTransfer: at(deskTransfer), deskWriteOne: at(deskWriteOne) };
}

/** In this turn alone: what is shown says where the name stands. */
const nameOf = (id: string, { house }: Around): string =>
  ((house?.['names'] ?? []) as unknown as readonly Named[]).find(({ booking }) => booking === id)?.name ?? '';

function valuesOf({ lesson }: Door, { name, seats, standing, reach }: One): Facts {
  return {
    title: { ...lesson.title },
    starts: wallAt(lesson.startsAt, lesson.zone),
    name,
    was: seats,
    standing,
    reach,
  };
}

/** `seats`: so many, whatever the words; none told, it is asked. */
const deskReseat: Act = ({ door, one, called }, { text, seats = null }, { nowMs }) => {
  const told = seatsTold(withoutName(textOf(text), called));
  const wanted = numberOf(seats) ?? (told === null ? null : 'more' in told ? one.seats + told.more : told.seats);
  const values = valuesOf(door, one);
  if (wanted === null || wanted === one.seats) {
    const key = wanted === null ? 'desk-told-ask-seats' : 'desk-told-seats-same';
    return { gives: { seats: null, was: one.seats, told: phrase(key, values) } };
  }
  const free = seatsFree(rosterOf(door));
  const most = door.lesson.seats;
  if (wanted > most || (one.standing === 'seated' && wanted - one.seats > free)) {
    return { wrong: 'lesson-guest-no-room', field: 'seats', values: { ...values, seats: wanted, free, most } };
  }
  const turn = changeSeats(rosterOf(door), { id: one.id, seats: wanted, byShop: true }, nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  return { gives: { seats: wanted, was: one.seats, told: phrase('desk-told-reseat', { ...values, seats: wanted }) } };
};

/** `there`: that lesson, whatever the words; none told, it is asked. */
const deskTransfer: Act = ({ door, one, called }, { text, there = null }, { listen, nowMs, house }) => {
  const { lesson: own } = door;
  const left = giveBack(rosterOf(door), one.id, nowMs);
  if ('mistakes' in left) return refusedBy(left.mistakes);
  const open = doorsIn({ nowMs, language: '', memory: {}, ...(house ? { house } : {}) }).filter(
    ({ lesson }) => lesson.id !== own.id && lesson.status !== 'cancelled' && lesson.startsAt > nowMs,
  );
  const sentence = listen(withoutName(textOf(text), called));
  const heard = otherLesson(sentence, { own, others: open.map(({ lesson }) => lesson), now: nowMs });
  const to = open.find(({ lesson }) => lesson.id === (there ?? heard.lesson?.id));
  const values = valuesOf(door, one);
  if (!to) return { gives: { there: null, told: asked(heard.noneThen, values) } };
  const isThere = to.bookings.some(({ person, standing }) => person === one.person && standing !== 'left');
  if (isThere) return refused(mistake('guest-there', 'lesson'));
  const wish = { id: textOf(house?.['event']), person: one.person, seats: one.seats };
  const taken = enrol(rosterOf(to), wish, nowMs);
  if ('mistakes' in taken) return refusedBy(taken.mistakes);
  if (taken.roster.bookings.at(-1)?.standing !== 'seated') {
    return refused(mistake('full', 'seats', { free: seatsFree(rosterOf(to)) }));
  }
  const was = phrase('lesson-told-was', lessonValues(own));
  const told = phrase('desk-told-transfer', { ...valuesOf(to, one), count: one.seats, was });
  return { gives: { there: to.lesson.id, from: own.id, id: wish.id, told } };
};

const asked = (noneThen: boolean, values: Facts): Json =>
  phrase(noneThen ? 'desk-told-none-there' : 'desk-told-ask-lesson', values);

/** `note`: these words; else those that follow the name, and none told, they are asked for. */
const deskWriteOne: Act = ({ door, one, called }, { text, note = null }) => {
  const values = valuesOf(door, one);
  if (one.reach === 'none') return { wrong: 'lesson-guest-untold', field: 'booking', values };
  const words = (textOf(note ?? null) || wordsTo(textOf(text), called)).trim();
  if (words.length > mostWritten) return refused(mistake('words-too-long', 'text', { most: mostWritten }));
  if (words === '') return { gives: { words: null, told: phrase('desk-told-ask-note', values) } };
  return { gives: { words, told: phrase('desk-told-note', { ...values, text: words }) } };
};
