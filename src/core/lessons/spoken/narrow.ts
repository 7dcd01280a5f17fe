/** What makes fewer of many lessons: the easiest, those in the evening, on workdays. Knows no lesson, and no day of the calendar. */
import { dateOf, timeOf, weekdayOf } from '../calendar.ts';
import { levels, type Lesson, type Level } from '../lesson.ts';
import { plain } from './cut.ts';
import { levelWished } from './level.ts';

type Part = 'morning' | 'afternoon' | 'evening';

export interface Narrowing {
  /** The easiest, or the hardest, of those there are. */
  readonly end?: 'easiest' | 'hardest';
  readonly level?: Level;
  readonly part?: Part;
  readonly onWorkdays?: true;
}

/** Longer texts ask for more than that; it bounds the reading's time. */
const longest = 80;

const ends: readonly (readonly ['easiest' | 'hardest', RegExp])[] = [
  [
    'easiest',
    /\b(?:easiest|simplest|easier|simpler|most basic|gentlest|best to (?:start|begin) with|(?:start|begin) with)\b|(?:最|比較|比较|較|较)(?:簡單|简单|容易|基[礎础]|淺|浅|易)|(?:先上|先學|先学)(?:哪|邊|边)|邊堂易|边堂易/iu,
  ],
  [
    'hardest',
    /\b(?:hardest|harder|most (?:advanced|difficult|demanding)|more advanced|deeper|next level)\b|(?:最|比較|比较|較|较)(?:難|难|深|進階|进阶|高級|高级)/iu,
  ],
];

const parts: readonly (readonly [Part, RegExp])[] = [
  ['morning', /\bmornings?\b|早上|上午|朝早/iu],
  ['afternoon', /\bafternoons?\b|下午|下晝|下昼|晏晝|晏昼/iu],
  ['evening', /\bevenings?\b|\bat night\b|\bafter work\b|晚上|夜晚|傍晚|下班[後后]|放工/iu],
];

const workdays =
  /\b(?:weekdays?|workdays?|during the week|mid-?week|not (?:on|at) (?:the |a )?weekends?|(?:can'?t|cannot|don'?t) (?:do|make|manage) weekends?)\b|平日|工作日|[週周]一到[週周]五|[週周]末.{0,3}(?:[沒没]空|不行|唔得|不方便|[沒没]辦法|没办法)/iu;

/** Null where it names nothing of the kind. */
export function hearNarrowing(sentence: string): Narrowing | null {
  if (sentence.length > longest) return null;
  const text = plain(sentence);
  const end = ends.find(([, pattern]) => pattern.test(text))?.[0];
  const part = parts.find(([, pattern]) => pattern.test(text))?.[0];
  const level = end === undefined ? levelWished(text) : undefined;
  const narrowing = {
    ...(end === undefined ? {} : { end }),
    ...(level === undefined ? {} : { level }),
    ...(part === undefined ? {} : { part }),
    ...(workdays.test(text) ? { onWorkdays: true as const } : {}),
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
