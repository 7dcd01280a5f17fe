/** A booking as an event of the student's own calendar. Its words come from outside. */
import type { CalendarEvent } from './icalendar.ts';
import type { Lesson } from './lesson.ts';
import type { Booking } from './roster.ts';

type Given = 'stampedAt' | 'language' | 'summary' | 'description' | 'location' | 'organizer';

export interface EventSurroundings extends Pick<CalendarEvent, Given> {
  /** The shop's own name on the net, or any other name nobody else uses: it makes the uid unique in the world. */
  readonly host: string;
}

export function lessonEvent(lesson: Lesson, booking: Booking, { host, ...given }: EventSurroundings): CalendarEvent {
  return {
    ...given,
    uid: `${booking.id}@${host}`,
    // Both revisions only rise, so their sum does.
    sequence: lesson.revision + booking.revision,
    startsAt: lesson.startsAt,
    endsAt: lesson.endsAt,
    cancelled: lesson.status === 'cancelled' || booking.standing === 'left',
  };
}
