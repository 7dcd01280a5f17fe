/** What makes fewer of many lessons: the easiest, those in the evening, on workdays. Knows no lesson, and no day of the calendar. */
import { dateOf, timeOf, weekdayOf } from '../calendar.ts';
import { levels, type Lesson, type Level } from '../lesson.ts';
import { levelWished } from './level.ts';
import { firstSaid, type Sentence } from './sentence.ts';

export interface Narrowing {
  /** The easiest, or the hardest, of those there are. */
  readonly end?: (typeof ends)[number];
  readonly level?: Level;
  readonly part?: Part;
  readonly onWorkdays?: true;
}

/** Longer texts ask for more than that; it bounds the reading's time. */
const longest = 80;

/** Each is a cue of the same name; the first that fits. */
const ends = ['easiest', 'hardest'] as const;
const parts = ['morning', 'afternoon', 'evening'] as const;
type Part = (typeof parts)[number];

/** Null where it names nothing of the kind. */
export function hearNarrowing(sentence: Sentence): Narrowing | null {
  if (sentence.text.length > longest) return null;
  const end = firstSaid(sentence, ends);
  const part = firstSaid(sentence, parts);
  const level = end === undefined ? levelWished(sentence) : undefined;
  const narrowing = {
    ...(end === undefined ? {} : { end }),
    ...(level === undefined ? {} : { level }),
    ...(part === undefined ? {} : { part }),
    ...(sentence.says('workdays') ? { onWorkdays: true as const } : {}),
  };
  return Object.keys(narrowing).length === 0 ? null : narrowing;
}

/** Those that are so; none where there is none. */
export function narrowed<Kind extends Lesson>(lessons: readonly Kind[], narrowing: Narrowing): readonly Kind[] {
  const level = narrowing.level ?? levelAt(lessons, narrowing.end);
  return lessons.filter(
    (one) =>
      (level === undefined || one.level === level) &&
      (narrowing.part === undefined || partOf(one) === narrowing.part) &&
      (narrowing.onWorkdays === undefined || weekdayOf(dateOf(one.starts)) <= 5),
  );
}

function levelAt(lessons: readonly Lesson[], end: Narrowing['end']): Level | undefined {
  const there = levels.filter((level) => lessons.some((one) => one.level === level));
  return end === undefined ? undefined : end === 'easiest' ? there[0] : there.at(-1);
}

function partOf({ starts }: Lesson): Part {
  const time = timeOf(starts);
  return time < '12:00' ? 'morning' : time < '17:30' ? 'afternoon' : 'evening';
}
