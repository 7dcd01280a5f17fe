/** Who came to lessons that are over, as it was ticked off at the door: which lessons are meant, and what is told of them. */
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { dateOf, wallAt } from '../../lessons/calendar.ts';
import { doorValues, type Door } from '../../lessons/door-list.ts';
import type { Listen, Sentence } from '../../lessons/spoken/sentence.ts';
import { readPastDays } from '../../lessons/spoken/past-days.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import type { CoreContent } from '../core-content.ts';
import { doorsIn } from './board.ts';
import { namedBy, type Named } from './guest-names.ts';
import { phrase, textOf } from '../values.ts';

export const deskAttendedCallNames = ['deskAttended'] as const;

export const deskAttendedCalls = ({
  listen,
  zone,
}: Pick<CoreContent, 'listen' | 'zone'>): {
  readonly [name in (typeof deskAttendedCallNames)[number]]: Calls[string];
} => ({ deskAttended: ({ text }, around) => ({ gives: attended(textOf(text), { around, listen, zone }) }) });

interface Ground {
  readonly around: Around;
  readonly listen: Listen;
  readonly zone: string;
}

/** Begun or over, the latest first. */
function begunIn(around: Around): readonly Door[] {
  const past = (around.house?.['past'] ?? []) as unknown as readonly Door[];
  return [...doorsIn(around), ...past]
    .filter(({ lesson }) => lesson.status !== 'cancelled' && lesson.startsAt <= around.nowMs)
    .toSorted((a, b) => b.lesson.startsAt - a.lesson.startsAt);
}

type Came = 'here' | 'away' | 'unsaid';
type One = Door['bookings'][number];

const cameOf = ({ came }: One): Came => (came === null ? 'unsaid' : came ? 'here' : 'away');
const seatedIn = ({ bookings }: Door): readonly One[] => bookings.filter(({ standing }) => standing === 'seated');

/** So many lessons fit a screen, and so many people of each. */
const mostLessons = 6;
const mostPeople = 40;

function attended(text: string, { around, listen, zone }: Ground): Facts {
  const sentence = listen(text);
  const begun = begunIn(around);
  const doors = meantOf(sentence, begun, dateOf(wallAt(around.nowMs, zone))).slice(0, mostLessons);
  const some = personIn(sentence, doors, around);
  const shown = doors.toReversed();
  const [only] = doors.length === 1 ? doors : [];
  return {
    isNothing: doors.length === 0,
    isNever: begun.length === 0,
    // Ticked off later, as long as it is on the list.
    lesson: only && doorsIn(around).includes(only) ? only.lesson.id : null,
    told: some.length > 0 ? some : shown.flatMap((door) => doorPhrases(door, sentence)),
  };
}

/** Those of the days or the title that are named; else the last one. */
function meantOf(sentence: Sentence, begun: readonly Door[], today: string): readonly Door[] {
  const lessons = begun.map(({ lesson }) => lesson);
  const days = readPastDays(
    sentence.text,
    today,
    lessons.map(({ starts }) => dateOf(starts)),
  );
  const then = days
    ? lessons.filter(({ starts }) => dateOf(starts) >= days.from && dateOf(starts) <= days.to)
    : lessons;
  const titled = titledLessons(then, { rest: sentence.text });
  const meant = titled.length > 0 ? titled : days ? then : then.slice(0, 1);
  return begun.filter(({ lesson }) => meant.includes(lesson));
}

/** "Was Mei there yesterday?" */
function personIn(sentence: Sentence, doors: readonly Door[], around: Around): readonly Json[] {
  const names = (around.house?.['names'] ?? []) as unknown as readonly Named[];
  const called = new Map(names.map(({ booking, name }) => [booking, name]));
  const known = doors.flatMap((door) =>
    seatedIn(door).flatMap((one) => {
      const name = called.get(one.id);
      return name === undefined ? [] : [{ booking: one.id, name, door, one }];
    }),
  );
  return namedBy(sentence.text, known).map(({ door, one }) =>
    phrase('desk-told-attended-one', { ...doorValues(door), name: one.name, state: cameOf(one) }),
  );
}

function doorPhrases(door: Door, sentence: Sentence): readonly Json[] {
  const seated = seatedIn(door);
  const seatsOf = (state: Came): number =>
    seated.filter((one) => cameOf(one) === state).reduce((sum, { seats }) => sum + seats, 0);
  const [here, away, unsaid] = [seatsOf('here'), seatsOf('away'), seatsOf('unsaid')];
  const states = asked(sentence);
  const people = states.flatMap((state) => seated.filter((one) => cameOf(one) === state)).slice(0, mostPeople);
  return [
    phrase('desk-told-attended', { ...doorValues(door), booked: seated.length, here, away, unsaid }),
    ...people.map((one, i) =>
      phrase('desk-told-attended-line', { n: i + 1, name: one.name, seats: one.seats, state: cameOf(one) }),
    ),
  ];
}

/** Who was not ticked off may have been there or not: they are named either way. */
function asked(sentence: Sentence): readonly Came[] {
  if (sentence.says('desk-missing')) return ['away', 'unsaid'];
  return sentence.says('desk-came') ? ['here', 'unsaid'] : ['here', 'away', 'unsaid'];
}
