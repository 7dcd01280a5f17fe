/** What was meant where no lesson to come is as it was said: one that is gone, or one on another day. */
import type { Around } from '../../flow/book.ts';
import type { ListedLesson } from '../../lessons/roster.ts';
import { titledLessons } from '../../lessons/spoken/titles.ts';
import { lessonElsewhen, lessonsOn, type Wish } from '../../lessons/spoken/wish.ts';
import { goneIn, upcomingIn } from './in-house.ts';

interface Otherwise {
  /** Nobody can book it any more. */
  readonly gone?: ListedLesson | undefined;
  /** To come, but on another day than was said. */
  readonly elsewhen?: ListedLesson | undefined;
}

/** A title counts for more than a day; what is gone is meant only when nothing to come is. */
export function otherwise(wish: Wish, around: Around): Otherwise {
  const onDay = lessonsOn(upcomingIn(around), wish);
  if (titledLessons(onDay, wish).length > 0) return {};
  if (wish.isLater) return onDay.length === 1 && wish.want === 'enrol' ? { elsewhen: onDay[0] } : {};
  const gone = lessonsOn(goneIn(around), wish).toReversed();
  const [titled] = titledLessons(gone, wish);
  if (titled || wish.date === undefined) return { gone: titled };
  const elsewhen = lessonElsewhen(upcomingIn(around), wish);
  return elsewhen ? { elsewhen } : { gone: onDay.length === 0 ? gone[0] : undefined };
}
