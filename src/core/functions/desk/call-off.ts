/** Lessons that are called off together, as one sentence of a shopkeeper names them: which, on which days, and who will be told. */
import type { Around, Calls, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { addDays, dateOf, timeOf, wallAt } from '../../lessons/calendar.ts';
import { daysOf, endsIt, isOff, type OffDays } from '../../lessons/calling-off.ts';
import { doorValues, reachOf, type Door } from '../../lessons/door-list.ts';
import { mistake, statusAt, type Lesson, type LessonDraft } from '../../lessons/lesson.ts';
import { onList } from '../../lessons/roster.ts';
import type { Series } from '../../lessons/series.ts';
import { hearNarrowing, narrowed } from '../../lessons/spoken/narrow.ts';
import { readOffDays } from '../../lessons/spoken/off-days.ts';
import type { Listen, Sentence } from '../../lessons/spoken/sentence.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import type { CoreContent } from '../core-content.ts';
import { asFacts, phrase, refused, textOf } from '../values.ts';
import { doorsIn, rosterOf } from './board.ts';
import { mostWritten } from './plan-heard.ts';

export const deskCallOffCallNames = ['deskCallOff'] as const;

export const deskCallOffCalls = ({
  listen,
  zone,
}: Pick<CoreContent, 'listen' | 'zone'>): {
  readonly [name in (typeof deskCallOffCallNames)[number]]: Calls[string];
} => ({ deskCallOff: (given, around) => callOff(given, { around, listen, zone }) });

interface Ground {
  readonly around: Around;
  readonly listen: Listen;
  readonly zone: string;
}

/** One that is given once, or all of a series: by the id of either. */
type Key = string;

interface Found {
  readonly doors: readonly Door[];
  readonly series: readonly Series[];
}

/** `lesson`: the one on the desk. `only`: of those found this one alone. `seen`: what was shown, so that nothing else is called off. */
function callOff({ text, lesson = null, only = null, reason = null, seen = null }: Facts, ground: Ground): Outcome {
  const { around, listen, zone } = ground;
  const words = textOf(reason).trim();
  if (words.length > mostWritten) return refused(mistake('words-too-long', 'reason', { most: mostWritten }));
  const today = dateOf(wallAt(around.nowMs, zone));
  const told = readOffDays(textOf(text), today);
  const all = { doors: toCome(around), series: seriesIn(around) };
  const named = only === null ? namedIn(listen(told.rest), all, lesson, told.isTold) : ofKey(all, textOf(only));
  if (named === null) return { gives: whichOf(all) };
  const doors = named.doors.filter(({ lesson: { starts } }) => isOff(told.days, dateOf(starts)));
  const series = named.series.filter((one) => daysOf(one, told.days).length > 0);
  const shown = signOf(doors, series);
  if (seen !== null && seen !== shown) return refused(mistake('changed-meanwhile', 'lesson', { starts: '' }));
  // "We're closed till January": of the whole house, and so of its hours.
  const isClosed = listen(textOf(text)).says('desk-closed');
  return { gives: { ...offFacts({ doors, series }, { days: told.days, seen: shown, words }), isClosed } };
}

const toCome = (around: Around): readonly Door[] =>
  doorsIn(around).filter(
    ({ lesson }) => statusAt(lesson, around.nowMs) !== 'cancelled' && lesson.startsAt > around.nowMs,
  );

const seriesIn = ({ house }: Around): readonly Series[] => (house?.['series'] ?? []) as unknown as readonly Series[];

const keyOf = ({ id, series }: Pick<Lesson, 'id' | 'series'>): Key => series ?? id;
const ofKey = ({ doors, series }: Found, key: Key): Found => ({
  doors: doors.filter(({ lesson }) => keyOf(lesson) === key),
  series: series.filter(({ draft }) => draft.id === key),
});

/** By a title, else by what else tells them apart, else the one on the desk; null where nothing says which. */
function namedIn(sentence: Sentence, all: Found, lesson: Json, hasDays: boolean): Found | null {
  const lessons = all.doors.map((door) => door.lesson);
  const drafts = all.series.map(({ draft }) => asLesson(draft));
  const titled = titledLessons([...lessons, ...drafts], { rest: sentence.text });
  if (titled.length > 0) return withKeys(all, new Set(titled.map(keyOf)));
  const narrowing = hearNarrowing(sentence);
  if (narrowing !== null) {
    const such = new Set(narrowed([...lessons, ...drafts], narrowing).map(({ id }) => id));
    return {
      doors: all.doors.filter((door) => such.has(door.lesson.id)),
      series: all.series.filter(({ draft }) => such.has(draft.id)),
    };
  }
  const onDesk = lessons.find(({ id }) => id === lesson);
  const isAll = sentence.says('desk-all-lessons');
  if (onDesk && (sentence.says('desk-this-series') || !(hasDays || isAll))) return ofKey(all, keyOf(onDesk));
  return (hasDays && !sentence.says('desk-this-series')) || isAll ? all : null;
}

function withKeys(all: Found, keys: ReadonlySet<Key>): Found {
  const found = [...keys].map((key) => ofKey(all, key));
  return { doors: found.flatMap(({ doors }) => doors), series: found.flatMap(({ series }) => series) };
}

/** A series is called as its lessons are, on the list or not yet. */
const asLesson = (draft: LessonDraft): Lesson => ({ ...draft, series: draft.id }) as Lesson;

/** Which series there are to end, where none was named. */
function whichOf({ series, doors }: Found): Facts {
  const there = series.filter(({ draft }) => doors.some(({ lesson }) => lesson.series === draft.id));
  return { isWhich: true, groups: groupsOf(there.map(({ draft }) => asLesson(draft))), told: [] };
}

function groupsOf(lessons: readonly Lesson[]): readonly Facts[] {
  const first = lessons.filter((one, i) => lessons.findIndex((other) => keyOf(other) === keyOf(one)) === i);
  return first.map((one, i) => ({ n: i + 1, only: keyOf(one), title: { ...one.title } }));
}

/** So many fit a screen; how many more there are is told. */
const mostShown = 12;

interface Told {
  readonly days: OffDays;
  readonly seen: string;
  readonly words: string;
}

function offFacts({ doors, series }: Found, { days, seen, words }: Told): Facts {
  const sorted = doors.toSorted((a, b) => a.lesson.startsAt - b.lesson.startsAt);
  const concerned = reachOf(sorted.flatMap(({ bookings }) => bookings));
  const ended = series.filter((one) => endsIt(one, days));
  const groups = groupsOf([...sorted.map(({ lesson }) => lesson), ...series.map(({ draft }) => asLesson(draft))]);
  const bookings = sorted.map(rosterOf).flatMap(onList);
  const people = new Set(bookings.map(({ person }) => person)).size;
  const more = sorted.length - mostShown;
  return {
    isWhich: false,
    isNothing: doors.length === 0 && series.length === 0,
    count: doors.length,
    lessons: sorted.map(({ lesson }) => ({ lesson: lesson.id, seen: lesson.revision })),
    called: sorted.map(({ lesson }) => lesson.id),
    days: asFacts(days),
    series: series.map(({ draft }) => draft.id),
    before: series as unknown as Json,
    seen,
    groups: groups.length > 1 ? groups : [],
    booked: concerned.reached + concerned.unreached,
    unreached: concerned.unreached,
    told: [
      ...sorted.slice(0, mostShown).map((door, i) => phrase('desk-told-line', { n: i + 1, ...doorValues(door) })),
      ...(more > 0 ? [phrase('desk-told-off-more', { more })] : []),
      ...ended.map((one) => phrase('desk-told-series-ends', seriesValues(one, days))),
      ...series.filter((one) => !ended.includes(one)).flatMap((one) => skipped(one, days, sorted)),
      ...(doors.length > 0
        ? [
            phrase('desk-told-off-people', {
              ...concerned,
              people: people < bookings.length ? people : 0,
            }),
          ]
        : []),
      ...(words === '' ? [] : [phrase('desk-told-off-reason', { reason: words })]),
    ],
  };
}

function seriesValues({ draft }: Series, { from }: OffDays): Facts {
  return { title: { ...draft.title }, starts: `${addDays(from, -1)}T${timeOf(draft.starts)}` };
}

/** Days of a series that are not on the list yet. */
function skipped(one: Series, days: OffDays, doors: readonly Door[]): readonly Json[] {
  const there = new Set(
    doors.filter(({ lesson }) => lesson.series === one.draft.id).map(({ lesson }) => dateOf(lesson.starts)),
  );
  const dates = daysOf(one, days).filter((date) => !there.has(date));
  const told = dates
    .slice(0, mostShown)
    .map((date) => phrase('desk-told-date', { starts: `${date}T${timeOf(one.draft.starts)}` }));
  return told.length === 0 ? [] : [phrase('desk-told-series-skips', { title: { ...one.draft.title }, dates: told })];
}

/** What was shown, as one word: the lessons as they stood, and the series. */
const signOf = (doors: readonly Door[], series: readonly Series[]): string =>
  [...doors.map(({ lesson }) => `${lesson.id}:${lesson.revision}`), ...series.map(({ draft }) => draft.id)]
    .toSorted()
    .join(' ');
