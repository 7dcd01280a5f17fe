/** A lesson that was called off takes place after all: seats stay whose they were, and whether they still come is asked anew. Tells nobody. */
import type { Instant } from '../units.ts';
import { saidWall } from './calendar.ts';
import { mistake, type Lesson, type Refused } from './lesson.ts';
import type { Booking, Roster, Turn } from './roster.ts';
import { lapseOffers } from './seats.ts';

/** `seen`: the lesson's revision as it was shown. */
export function resumeLesson(roster: Roster, seen: number, now: Instant): Turn {
  const hindered = hindrance(roster.lesson, seen, now);
  if (hindered !== null) return hindered;
  return lapseOffers({ lesson: planned(roster.lesson), bookings: roster.bookings.map(asked) }, now);
}

function hindrance({ status, startsAt, starts, revision }: Lesson, seen: number, now: Instant): Refused | null {
  if (status !== 'cancelled') return { mistakes: [mistake('not-cancelled', 'lesson')] };
  if (startsAt <= now) return { mistakes: [mistake('past', 'lesson', { starts: saidWall(starts) })] };
  return seen === revision ? null : { mistakes: [mistake('changed-meanwhile', 'lesson', { starts })] };
}

/** Who made other plans may leave freely, and all are reminded anew: as when it is moved, to where it was. */
const planned = (lesson: Lesson): Lesson => ({
  ...lesson,
  status: lesson.moves === 0 ? 'planned' : 'moved',
  reason: '',
  revision: lesson.revision + 1,
  moves: lesson.moves + 1,
});

/** The time of an offer stood still with the lesson: it goes back to who was the first on the list, and begins anew. */
function asked(booking: Booking): Booking {
  if (booking.standing === 'offered') return { ...booking, standing: 'waiting', offerUntil: null };
  return booking.standing === 'seated' ? { ...booking, answer: null } : booking;
}
