/** A lesson that comes again, as the desk tells of it: how often, on which days, and for how long. Plans nothing. */
import type { Around, Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { addDays, dateOf, weekdayOf, type WallDate, type WallTime } from '../../lessons/calendar.ts';
import { occurrences, type Recurrence } from '../../lessons/recurrence.ts';
import type { Door } from '../../lessons/door-list.ts';
import { draftOf } from '../../lessons/lesson-draft.ts';
import { mistake, type Lesson } from '../../lessons/lesson.ts';
import { plain } from '../../lessons/spoken/cut.ts';
import { onDate, repeatChange } from '../../lessons/spoken/repeat-change.ts';
import { asFacts, phrase, refused, textOf } from '../values.ts';
import { doorsIn } from './board.ts';

/** So far ahead is looked for the days it is on, and for hours the clocks skip or show twice. */
export const notesAheadDays = 400;

/** Of a series without an end, and of any other; how many more there are is told. */
const shownDays = { open: 6, ended: 12 };

export function repeatPhrases(repeats: Recurrence, starts: WallTime): readonly Json[] {
  const isOpen = repeats.times === undefined && repeats.until === undefined;
  const all = occurrences(starts, repeats, addDays(dateOf(starts), isOpen ? notesAheadDays : mostAheadDays));
  const shown = all.slice(0, isOpen ? shownDays.open : shownDays.ended);
  const dates = shown.map((one) => phrase('desk-told-date', { starts: one }));
  const times = repeats.times === undefined ? 0 : all.length;
  return [
    phrase('desk-told-repeats', { ...oftenValues(repeats, starts), times }),
    phrase('desk-told-dates', { dates, more: isOpen ? 'open' : all.length - shown.length }),
  ];
}

/** The first of them that is not left out. */
export const firstOf = (repeats: Recurrence, starts: WallTime): WallTime =>
  occurrences(starts, repeats, addDays(dateOf(starts), notesAheadDays))[0] ?? starts;

function oftenValues({ every, step, until, keep }: Recurrence, starts: WallTime): Facts {
  const date = dateOf(starts);
  const day = Number(date.slice(8));
  // The fifth is wherever it is missing the last.
  const nth = keep === 'last' ? 5 : Math.ceil(day / 7);
  const by = keep === 'date' ? 'date' : 'weekday';
  return { every, step, until: until ?? null, by, nth, weekday: weekdayOf(date), day };
}

/** A hundred months. */
const mostAheadDays = 3_100;

/** The lessons after this one, as one series; this one stays what it is. In the words of the shopkeeper, or by the button. */
export function deskRepeat(door: Door, { every = null, step, text = null }: Facts, around: Around): Outcome {
  const { lesson } = door;
  const id = seriesIdOf(lesson);
  const isRepeated = doorsIn(around).some(({ lesson: { series } }) => series === id);
  if (lesson.series !== undefined || isRepeated) return refused(mistake('repeats-already', 'lesson'));
  const told = text === null ? null : repeatChange(textOf(text), undefined, lesson.starts);
  if (text !== null && !told?.repeats) return refused(mistake('repeats-unclear', 'text'));
  const rule = told?.repeats ?? { every: every as Recurrence['every'], step: Number(step) };
  const next = told?.date === undefined ? second(lesson, rule) : after(told.date, lesson, rule);
  if (next === undefined) return refused(mistake('repeats-already', 'lesson'));
  const repeats = goingOnFrom(lesson, rule, isCountedIn(textOf(text)));
  return {
    gives: {
      series: asFacts({ draft: { ...draftOf(lesson), id, starts: next }, repeats }),
      told: [phrase('desk-told-again', { title: { ...lesson.title }, starts: next }), ...repeatPhrases(repeats, next)],
    },
  };
}

const second = ({ starts }: Pick<Lesson, 'starts'>, rule: Recurrence): WallTime | undefined =>
  occurrences(starts, { ...withoutEnd(rule), times: 2 }, addDays(dateOf(starts), notesAheadDays))[1];

/** "The first Saturday of each month", when this one is on it: the month after. */
function after(date: WallDate, { starts }: Lesson, rule: Recurrence): WallTime | undefined {
  const first = onDate(date, starts);
  return first > starts ? first : second({ starts: first }, rule);
}

function withoutEnd(repeats: Recurrence): Recurrence {
  const { times: _, until: __, except: ___, ...rule } = repeats;
  return rule;
}

/** A fifth Saturday goes on as the last one, whatever month comes next; "six times in all" holds this lesson as well. */
function goingOnFrom({ starts }: Lesson, { times, ...rule }: Recurrence, countsThis: boolean): Recurrence {
  const isLast = rule.every === 'month' && rule.keep !== 'date' && Number(starts.slice(8, 10)) > 28;
  const count = times === undefined ? {} : { times: Math.max(1, times - (countsThis ? 1 : 0)) };
  return { ...rule, ...(isLast ? { keep: 'last' as const } : {}), ...count };
}

const isCountedIn = (text: string): boolean => /\b(?:in all|in total|altogether)\b|[共總总]/iu.test(plain(text));

/** Always the same for the same lesson, so that it is repeated once. Its end tells it apart, if it is too long. */
function seriesIdOf({ id }: Lesson): string {
  return `${id.slice(-longestRepeated).replace(/^[^a-z]+/, '') || 'lesson'}-on`;
}

/** With "-on" and a day such as "-2026-12-05" behind it: the 40 letters an id may have. */
const longestRepeated = 26;
