/** Into which other lesson someone is to be put: "the week after", "the gaiwan evening on the 24th", 下週六. Puts nobody anywhere. */
import type { Instant } from '../../units.ts';
import { addDays, dateOf, type WallDate } from '../calendar.ts';
import type { Lesson } from '../lesson.ts';
import { onMeantDay } from './meant-day.ts';
import type { Sentence } from './sentence.ts';
import { hearChange, hearSwap } from './swap.ts';
import { titledLessons } from './titles.ts';
import { hearWish } from './wish.ts';

export interface Other<Kind> {
  readonly lesson?: Kind;
  /** Nothing is on the day, or in the week, that was named. */
  readonly noneThen: boolean;
}

/** `others`: those there are, but for their own. */
export function otherLesson<Kind extends Lesson>(
  sentence: Sentence,
  { own, others, now }: { readonly own: Lesson; readonly others: readonly Kind[]; readonly now: Instant },
): Other<Kind> {
  const days = daysMeant(sentence, { own, others, now });
  const there = days === undefined ? others : others.filter(({ starts }) => days.includes(dateOf(starts)));
  const isSame = (one: Lesson): boolean => one.title.en === own.title.en || (one.series ?? '') === (own.series ?? ' ');
  const [titled] = titledLessons(there, { rest: sentence.text });
  const lesson = titled ?? (days === undefined ? undefined : (there.find(isSame) ?? there[0]));
  return { ...(lesson ? { lesson } : {}), noneThen: days !== undefined && there.length === 0 };
}

interface Ground {
  readonly own: Lesson;
  readonly others: readonly Lesson[];
  readonly now: Instant;
}

/** Undefined where none is named. */
function daysMeant(sentence: Sentence, { own, others, now }: Ground): readonly WallDate[] | undefined {
  const at = dateOf(own.starts);
  const swap = hearSwap(sentence, now, own.zone);
  const wish = swap ? { ...swap, date: swap.to } : hearWish(sentence, now, own.zone);
  const { date } = onMeantDay(wish, others, now);
  // "Next Saturday", of someone who comes on that Saturday, is the one after.
  if (date !== undefined) return [date === at ? addDays(date, 7) : date];
  const { span, weeksLater } = hearChange(sentence, now, own.zone) ?? {};
  const later = weeksLater ?? (span && at >= span.from && at <= span.to ? 1 : undefined);
  if (later !== undefined) return [addDays(at, 7 * later)];
  return span && others.map(({ starts }) => dateOf(starts)).filter((day) => day >= span.from && day <= span.to);
}
