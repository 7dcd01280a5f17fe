/** Someone on a list, found by the name they gave: are they there, give their seat back, are they at the door. Does nothing yet. */
import type { Around, Calls } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { stateOf, type Door } from '../lessons/door-list.ts';
import { doorOpensMs } from '../lessons/seats.ts';
import type { DeskCue, Sentence } from '../lessons/spoken/sentence.ts';
import { wallAt } from '../lessons/calendar.ts';
import { phrase, textOf } from './values.ts';
import { namedBy, type Named } from './guest-names.ts';
import { doorsIn, markOf } from './desk-board.ts';

export const deskGuestCallNames = ['deskGuests'] as const;

export const deskGuestCalls: { readonly [name in (typeof deskGuestCallNames)[number]]: Calls[string] } = {
  deskGuests: ({ text, lesson = null, act }, around) => ({ gives: guests(textOf(text), lesson, act ?? null, around) }),
};

interface Guest extends Named {
  readonly door: Door;
  readonly one: Door['bookings'][number];
}

type GuestAct = 'find' | 'release' | 'tick';

/** What is to be done with someone, if the sentence says so and, for all but a question, names somebody there is. */
export function guestErrand(sentence: Sentence, lesson: string | null, around: Around): GuestAct | null {
  if (sentence.says('desk-find-guest')) return 'find';
  const said = acts.filter(([, cues]) => cues.some((cue) => sentence.says(cue))).map(([act]) => act);
  return said.find((act) => guestsNamed(sentence.text, lesson, act, around).length > 0) ?? null;
}

const acts: readonly (readonly [GuestAct, readonly DeskCue[]])[] = [
  ['tick', ['desk-here', 'desk-away']],
  ['release', ['desk-release']],
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
    free: act === 'tick' ? [] : items,
    ticks: act === 'tick' ? items : [],
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
