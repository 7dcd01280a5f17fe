/** Which of several lessons a shopkeeper's sentence names: on a day, in days named together, by a title. */
import { doorValues, reachOf, type Door } from '../../lessons/door-list.ts';
import { onMeantDay } from '../../lessons/spoken/meant-day.ts';
import type { Sentence } from '../../lessons/spoken/sentence.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import { hearWish, isSuch, lessonsOn } from '../../lessons/spoken/wish.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { phrase } from '../values.ts';

/** Null where it names none of these ways; of a series that is named without a day its next one. */
export function namedDoors(
  sentence: Sentence,
  doors: readonly Door[],
  { now, zone }: { readonly now: number; readonly zone: string },
): readonly Door[] | null {
  const lessons = doors.map(({ lesson }) => lesson);
  const wish = onMeantDay(hearWish(sentence, now, zone), lessons, now);
  const { date, span } = wish;
  const then = lessonsOn(lessons, wish).filter((one) => isSuch(one, span === undefined ? {} : { span }));
  const titled = titledLessons(then, wish);
  if (titled.length === 0 && date === undefined && span === undefined) return null;
  const meant = titled.length > 0 ? titled : then;
  return doors.filter(({ lesson }) => meant.includes(lesson));
}

/** So many fit a screen; how many more there are is told. */
const mostShown = 12;

/** A line each, by their start. */
export function doorLines(doors: readonly Door[]): readonly Json[] {
  const more = doors.length - mostShown;
  return [
    ...doors.slice(0, mostShown).map((door, i) => phrase('desk-told-line', { n: i + 1, ...doorValues(door) })),
    ...(more > 0 ? [phrase('desk-told-off-more', { more })] : []),
  ];
}

/** Each as it was shown, so that nothing else is done to it. */
export const doorsSeen = (doors: readonly Door[]): readonly Facts[] =>
  doors.map(({ lesson }) => ({ lesson: lesson.id, seen: lesson.revision }));

export const reachOfAll = (doors: readonly Door[]): ReturnType<typeof reachOf> =>
  reachOf(doors.flatMap(({ bookings }) => bookings));

/** A button for each, where there is more than one. */
export const oneByOne = (doors: readonly Door[]): readonly Facts[] =>
  doors.length > 1
    ? doors.slice(0, mostShown).map(({ lesson }, i) => ({ n: i + 1, only: lesson.id, title: { ...lesson.title } }))
    : [];

const mostNames = 20;

/** Whom the shop tells itself, by their names. */
export const untoldNames = (bookings: Door['bookings']): readonly Json[] =>
  bookings
    .filter(({ reach }) => reach === 'none')
    .slice(0, mostNames)
    .map(({ name }) => phrase('desk-told-name', { name }));
