/** What a shopkeeper sees of the lessons: which there are, who comes to one, and today's list. Changes nothing. */
import type { Around, Calls, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { dateOf, wallAt } from '../../lessons/calendar.ts';
import { dayPhrases, doorValues, peopleOf, peoplePhrases, reachOf, type Door } from '../../lessons/door-list.ts';
import { statusAt, type Planned } from '../../lessons/lesson.ts';
import { lessonValues } from '../../lessons/tidings.ts';
import type { Booking, Roster } from '../../lessons/roster.ts';
import { doorOpensMs } from '../../lessons/seats.ts';
import { hearNarrowing, narrowed } from '../../lessons/spoken/narrow.ts';
import type { Listen, Sentence } from '../../lessons/spoken/sentence.ts';
import type { CoreContent } from '../core-content.ts';
import { namedDoors, untoldNames } from './named.ts';
import { phrase, refusedBy, textOf } from '../values.ts';

export const deskBoardCallNames = [
  'deskLessons',
  'deskWhich',
  'deskLesson',
  'deskPeople',
  'deskToday',
  'deskTallies',
  'deskUndelivered',
] as const;

/** Where it is said, and how people here say it. */
export interface Here extends Around {
  readonly listen: Listen;
}

type Named = { readonly [name in (typeof deskBoardCallNames)[number]]: Calls[string] };

type Ground = Pick<CoreContent, 'listen' | 'zone'>;

/** `zone` is the shop's own. */
export const deskBoardCalls = ({ listen, zone }: Ground): Named => ({
  deskLessons: (given, around) => ({ gives: deskLessons(given, around) }),
  deskWhich: ({ text, among }, around) => ({
    gives: whichOf(lessonsOf(among ?? null, around), listen(textOf(text)), { now: around.nowMs, zone }),
  }),
  deskLesson: ({ lesson }, around) => onDoor(lesson ?? null, around, (door) => ({ gives: lessonFacts(door, around) })),
  deskPeople: ({ lesson }, around) => onDoor(lesson ?? null, around, (door) => ({ gives: peopleFacts(door) })),
  deskToday: (_, around) => ({
    gives: { told: dayPhrases(doorsIn(around), around.nowMs), next: nextPhrases(around) },
  }),
  deskTallies: (_, around) => ({
    gives: { asked: talliesOf('tea-asked', around), bitter: talliesOf('too-bitter', around) },
  }),
  deskUndelivered: (_, around) => ({ gives: undeliveredFacts(around, zone) }),
});

export const doorsIn = ({ house }: Around): readonly Door[] => (house?.['doors'] ?? []) as unknown as readonly Door[];

export function onDoor(id: Json, around: Around, act: (door: Door) => Outcome): Outcome {
  const door = doorsIn(around).find(({ lesson }) => lesson.id === id);
  return door ? act(door) : { wrong: 'no-such-lesson', field: 'lesson', values: {} };
}

export const rosterOf = ({ lesson, bookings }: Door): Roster => ({ lesson, bookings });

/** So many fit a screen. */
const mostListed = 8;

/** The next of another day. */
function nextPhrases(around: Around): readonly Json[] {
  const today = ({ zone }: Door['lesson']): string => dateOf(wallAt(around.nowMs, zone));
  const next = doorsIn(around)
    .filter(({ lesson }) => lesson.status !== 'cancelled' && dateOf(lesson.starts) > today(lesson))
    .toSorted((a, b) => a.lesson.startsAt - b.lesson.startsAt)[0];
  return next ? [phrase('desk-told-next', doorValues(next))] : [];
}

/** Those under way and over since less than a day are there as well: people are ticked off late. Of those `among`, if there are any. */
function lessonsOf(among: Json, around: Around): readonly Door[] {
  const planned = doorsIn(around).filter(({ lesson }) => lesson.status !== 'cancelled');
  const these = Array.isArray(among) ? planned.filter(({ lesson }) => among.includes(lesson.id)) : [];
  return these.length > 0 ? these : planned;
}

/** The one a sentence tells from the others: 下午那堂, "the gaiwan one". Null where several are left. */
function whichOf(doors: readonly Door[], sentence: Sentence, then: { now: number; zone: string }): Json {
  const named = namedDoors(sentence, doors, then) ?? doors;
  const narrowing = hearNarrowing(sentence);
  const lessons = named.map(({ lesson }) => lesson);
  const left = narrowing ? narrowed(lessons, narrowing) : lessons;
  return left.length === 1 ? (left[0]?.id ?? null) : null;
}

function deskLessons({ from: first = 0, among = null }: Facts, around: Around): Facts {
  const from = Number(first);
  const all = lessonsOf(among, around);
  const shown = all.slice(from, from + mostListed);
  return {
    items: shown.map(({ lesson }, i) => ({ n: from + i + 1, id: lesson.id, title: { ...lesson.title } })),
    told: shown.map((door, i) => phrase('desk-told-line', { n: from + i + 1, ...doorValues(door) })),
    next: from + mostListed < all.length ? from + mostListed : null,
  };
}

function lessonFacts(door: Door, { nowMs }: Around): Facts {
  const { lesson, bookings } = door;
  const seated = bookings.filter(({ standing }) => standing === 'seated');
  const isOver = statusAt(lesson, nowMs) === 'over';
  return {
    seen: lesson.revision,
    isOpen: lesson.status !== 'cancelled' && !isOver,
    isDoorOpen: lesson.status !== 'cancelled' && nowMs >= lesson.startsAt - doorOpensMs,
    isOff: lesson.status === 'cancelled' && lesson.startsAt > nowMs,
    isAlone: lesson.series === undefined,
    told: [
      phrase('desk-told-lesson', { ...lessonValues(lesson), ...doorValues(door) }),
      ...(lesson.status === 'cancelled' ? [phrase('desk-told-off', { reason: lesson.reason || null })] : []),
    ],
    people: seated.length,
    title: { ...lesson.title },
    starts: wallAt(lesson.startsAt, lesson.zone),
    ...reachOf(seated),
    untold: untoldNames(seated),
  };
}

/** With what a tap at the door makes of each: from unsaid to here, to stayed away, and round again. */
export function peopleFacts(door: Door): Facts {
  const people = peopleOf(door);
  return {
    items: people.flatMap(({ n, booking: { id, standing, came } }) =>
      standing === 'seated' ? [{ n, booking: id, ...markOf({ came }) }] : [],
    ),
    everybody: people.map(({ n, booking: { id } }) => ({ n, booking: id })),
    told: peoplePhrases(door),
    title: { ...door.lesson.title },
  };
}

export const markOf = ({ came }: Pick<Booking, 'came'>): { readonly mark: string } => ({
  mark: came === null ? 'here' : came ? 'away' : 'back',
});

const itemsIn = (around: Around, name: string): readonly Facts[] =>
  (around.house?.[name] ?? []) as unknown as readonly Facts[];

function talliesOf(what: string, around: Around): readonly Json[] {
  return itemsIn(around, 'tallies')
    .filter((one) => one['what'] === what)
    .map(({ item = null, count = null }, i) => phrase('desk-told-tally', { n: i + 1, tea: item, count }));
}

/** Words of the house for what the channel said; anything else is just not possible. */
const knownReasons = ['could not be reached', 'restored', 'no address', 'no words'];

function undeliveredFacts(around: Around, zone: string): Facts {
  const all = itemsIn(around, 'undelivered');
  return {
    told: all.map(({ name = null, why = null, about = null, at = 0 }) => {
      const said = { name, at: wallAt(Number(at), zone), why: reasonOf(why) };
      return about === null
        ? phrase('desk-told-undelivered', said)
        : phrase('desk-told-undelivered-about', { ...said, about });
    }),
    upTo: all.at(-1)?.['id'] ?? 0,
  };
}

function reasonOf(why: Json): string {
  const words = typeof why === 'string' ? why : '';
  if (words.startsWith('no-such-address') || words === 'address-wrong') return 'address';
  return knownReasons.includes(words) ? words.replaceAll(' ', '-') : 'other';
}

/** What follows where the plan is no mistake. */
export function allowed(planned: Planned, gives: Facts): Outcome {
  return 'mistakes' in planned ? refusedBy(planned.mistakes) : { gives };
}
