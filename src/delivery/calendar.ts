/** A booking as a file for the student's own calendar, in their language. What it is about comes with the saying. */
import { calendarEnclosure } from '../core/lessons/icalendar.ts';
import type { Instant, Language } from '../core/units.ts';
import type { Enclosure, Phrase } from '../messages.ts';

/** Under which name a shop's entries stand in other people's calendars. */
export interface Sign {
  readonly name: InWords;
  /**
   * Tells an entry's id from another shop's. It is made of the shop's mail address, which nobody else has; without one, of
   * its English name, which somebody may. When that changes, or a first address is set, entries given out before can no
   * longer be replaced: a lesson moved then stands there twice.
   */
  readonly host: string;
  /** The address of its mail as a URI; null when it has none. */
  readonly mail: string | null;
}

type InWords = { readonly [language in Language]: string };

/** What core/lessons puts into a saying. */
export interface CalendarEntry {
  readonly booking: string;
  readonly sequence: number;
  readonly startsAtMs: Instant;
  readonly endsAtMs: Instant;
  readonly cancelled: boolean;
  readonly title: InWords;
  readonly place: InWords;
  readonly bring: InWords;
  readonly teacher: string;
}

export interface CalendarSurroundings {
  readonly sign: Sign;
  readonly language: Language;
  readonly tell: (phrase: Phrase) => string;
  readonly stampedAt: Instant;
}

export function calendarOf(entry: CalendarEntry, { sign, language, tell, stampedAt }: CalendarSurroundings): Enclosure {
  const { booking, sequence, startsAtMs, endsAtMs, cancelled, title, place, bring, teacher } = entry;
  const notes = { teacher: teacher || null, bring: bring[language] || null };
  const event = {
    uid: `${booking}@${sign.host}`,
    sequence,
    startsAt: startsAtMs,
    endsAt: endsAtMs,
    cancelled,
    stampedAt,
    language,
    summary: title[language],
    description: tell({ key: 'lesson-calendar-notes', values: notes }),
    location: place[language],
    // RFC 5546 asks for one; without an address it is the name that counts.
    organizer: { name: sign.name[language], address: sign.mail ?? `https://${sign.host}/` },
  };
  const label = tell({ key: cancelled ? 'lesson-calendar-cancelled' : 'lesson-calendar', values: {} });
  return { ...calendarEnclosure(event, `lesson-${booking.replace(/[^\w-]/g, '-')}.ics`), label };
}

export function signOf(name: InWords, from: string | null): Sign {
  // The top-level domain "invalid" is no one's (RFC 2606), so that no stranger's site is named.
  if (from === null) return { name, host: `${slugOf(name.en) || 'shop'}.ninthpour.invalid`, mail: null };
  const [box = '', domain = ''] = from.toLowerCase().split('@');
  // With the box: the domain alone may be that of a provider with many shops.
  return { name, host: `${slugOf(box) || 'shop'}.${domain}`, mail: `mailto:${from}` };
}

function slugOf(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
}
