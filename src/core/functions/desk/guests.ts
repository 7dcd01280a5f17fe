/** Someone on a list, found by the name they gave: are they there, give their seat back, are they at the door. Does nothing yet. */
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { stateOf, type Door } from '../../lessons/door-list.ts';
import { doorOpensMs } from '../../lessons/seats.ts';
import type { DeskCue, Sentence } from '../../lessons/spoken/sentence.ts';
import { wallAt } from '../../lessons/calendar.ts';
import { phrase, textOf } from '../values.ts';
import { namedBy, type Named } from './guest-names.ts';
import { doorsIn, markOf } from './board.ts';

export const deskGuestCallNames = ['deskGuests'] as const;

export const deskGuestCalls: { readonly [name in (typeof deskGuestCallNames)[number]]: Calls[string] } = {
  deskGuests: ({ text, lesson = null, act }, around) => ({ gives: guests(textOf(text), lesson, act ?? null, around) }),
};

interface Guest extends Named {
  readonly door: Door;
  readonly one: Door['bookings'][number];
}

export type GuestAct = 'find' | 'release' | 'tick' | 'reseat' | 'transfer' | 'write-one';

/** What is to be done with someone, if the sentence says so and, for all but a question, names somebody there is. */
export function guestErrand(sentence: Sentence, lesson: string | null, around: Around): GuestAct | null {
  if (sentence.says('desk-find-guest')) return 'find';
  const said = acts.filter(([act, cues]) => cues.some((cue) => sentence.says(cue)) && isFree(act, sentence));
  const isOfOne = sentence.says('desk-of-one');
  return said.find(([act]) => isOfOne || isOfSomeone(act, sentence, lesson, around))?.[0] ?? null;
}

/** What is written down anew, or told to all, is no change of one of them. */
function isFree(act: GuestAct, sentence: Sentence): boolean {
  if (act === 'reseat') return !sentence.says('desk-guest-anew');
  return (act !== 'write-one' && act !== 'release') || !sentence.says('desk-write');
}

/** A lesson that is named beside them may be the one they are to come to. */
function isOfSomeone(act: GuestAct, sentence: Sentence, lesson: string | null, around: Around): boolean {
  const at = act === 'transfer' || act === 'write-one' ? null : lesson;
  return guestsNamed(sentence.text, at, act, around).length > 0;
}

const acts: readonly (readonly [GuestAct, readonly DeskCue[]])[] = [
  ['tick', ['desk-here', 'desk-away']],
  ['release', ['desk-release']],
  ['reseat', ['desk-reseat']],
  ['transfer', ['desk-transfer']],
  ['write-one', ['desk-write-one']],
  ['find', ['desk-guest-change']],
];

/** So many fit a screen. */
const mostShown = 8;

function guests(text: string, lesson: Json, act: Json, around: Around): Facts {
  const found = guestsNamed(text, lesson, act, around).slice(0, mostShown);
  const items = found.map(({ door, one }, i) => ({
    n: i + 1,
    lesson: door.lesson.id,
    booking: one.id,
    ...markOf(one),
  }));
  return {
    count: found.length,
    first: items[0] ?? null,
    told: found.map((guest, i) => guestPhrase(guest, i + 1)),
    free: act === 'find' || act === 'release' ? items : [],
    ticks: act === 'tick' ? items : [],
    others: act === 'reseat' || act === 'transfer' || act === 'write-one' ? items : [],
  };
}

/** At the door only those of a lesson that is about to begin, under way or just over. */
function guestsNamed(text: string, lesson: Json, act: Json, around: Around): readonly Guest[] {
  const names = (around.house?.['names'] ?? []) as unknown as readonly Named[];
  const called = new Map(names.map(({ booking, name }) => [booking, name]));
  const doors = doorsIn(around).filter(
    (door) =>
      door.lesson.status !== 'cancelled' &&
      (lesson === null || door.lesson.id === lesson) &&
      (act === 'tick' ? around.nowMs >= door.lesson.startsAt - doorOpensMs : door.lesson.endsAt > around.nowMs),
  );
  const known = doors.flatMap((door) =>
    door.bookings.flatMap((one) => {
      const name = called.get(one.id);
      const isThere = act === 'tick' ? one.standing === 'seated' : one.standing !== 'left';
      return name === undefined || !isThere ? [] : [{ booking: one.id, name, door, one }];
    }),
  );
  return namedBy(text, known);
}

function guestPhrase({ door: { lesson }, one }: Guest, n: number): Json {
  const { name, seats, reach } = one;
  const starts = wallAt(lesson.startsAt, lesson.zone);
  return phrase('desk-told-found', { n, name, seats, state: stateOf(one), title: { ...lesson.title }, starts, reach });
}
