/** What was promised to students, judged from outside: by what was heard when, and by what the lists say. */
import type { Lesson } from '../../../src/core/lessons/lesson.ts';
import type { Booking, Roster } from '../../../src/core/lessons/roster.ts';
import type { Instant } from '../../../src/core/units.ts';
import { clocksOf, offsetAt, secondOpinion, type Clocks } from '../second-opinion.ts';
import type { Heard } from './shop.ts';
import { isOfTable } from './tables.ts';

export const purposes = ['week-before', 'evening-before', 'two-hours-before', 'thanks'] as const;
type Purpose = (typeof purposes)[number];

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
/** A failed sending is tried again within this; standing still apart, nothing is later. */
const tardiestMs = 2 * minute;

export interface Down {
  readonly from: Instant;
  readonly until: Instant;
}

export interface Promises {
  /** A reminder, as it was heard, against the lists of that moment. */
  reminded(heard: Heard, person: string, rosters: readonly Roster[]): void;
  /** That a seat is offered, or that its time is up, as it was heard. */
  ofList(heard: Heard, person: string, rosters: readonly Roster[]): void;
  /** Someone wants another number of seats: they are awake. */
  asked(person: string, lesson: string, at: Instant): void;
  seated(person: string, lesson: string, at: Instant): void;
  moved(lesson: string, at: Instant): void;
  /** Called off, and it takes place after all: offers begin anew. */
  resumed(roster: Roster, at: Instant): void;
  stood(down: Down): void;
  /** The lists as they are now; called often. */
  lists(rosters: readonly Roster[], now: Instant): void;
  readonly broken: readonly string[];
  readonly counts: { reminders: number; overtaken: number; offers: number; mornings: number; lists: number };
}

const keyOf = (person: string, lesson: Lesson, purpose: string): string =>
  `${person} ${lesson.id} ${lesson.moves} ${purpose}`;

export function makePromises(zone: string, span: { readonly from: Instant; readonly until: Instant }): Promises {
  const clocks = clocksOf(zone, { from: span.from - 40 * day, until: span.until + 120 * day }, hour);
  const sent = new Map<string, Instant>();
  /** Bookings that heard of their offer, and of its end. */
  const heardOf = { offer: new Set<string>(), lapsed: new Set<string>() };
  const askedAt = new Map<string, Instant>();
  const seatedAt = new Map<string, Instant>();
  const movedAt = new Map<string, Instant>();
  const downs: Down[] = [];
  const judged = new Set<string>();
  const broken: string[] = [];
  const counts = { reminders: 0, overtaken: 0, offers: 0, mornings: 0, lists: 0 };
  const fail = (what: string, at: Instant): void => void broken.push(`${new Date(at).toISOString()} ${what}`);

  /** After all that stood in the way: another standstill may begin before the morning in which it was to be told. */
  const firstChance = (at: Instant, end: Instant, purpose: Purpose): Instant => {
    const down = downs.find(({ from, until }) => from <= at + tardiestMs && at < until);
    if (down) return firstChance(down.until, end, purpose);
    const morning = afterQuiet(at, clocks);
    // It waits for the morning, unless the lesson comes first; thanks wait in any case.
    return morning === at || (morning >= end && purpose !== 'thanks') ? at : firstChance(morning, end, purpose);
  };
  const judge = (lesson: Lesson, booking: Booking, now: Instant): void => {
    const since = Math.max(seatedAt.get(`${booking.person} ${lesson.id}`) ?? Infinity, movedAt.get(lesson.id) ?? 0);
    for (const purpose of purposes) {
      const due = dueOf(lesson, purpose, clocks);
      if (due <= since || sent.has(keyOf(booking.person, lesson, purpose))) continue;
      if (purpose === 'thanks' && booking.came === false) continue;
      const later = purposes.slice(purposes.indexOf(purpose) + 1);
      const end = purpose === 'thanks' ? lesson.endsAt + 3 * day : lesson.startsAt;
      const overtaken = later.some((one) => sent.has(keyOf(booking.person, lesson, one)));
      const chance = firstChance(due, end, purpose);
      if (chance > due && (overtaken || chance >= end)) counts.overtaken += 1;
      else fail(`${purpose} of ${lesson.id} never reached ${booking.person} (due ${new Date(due).toISOString()})`, now);
    }
  };

  /** By day everyone has heard of the night's offers, and at night of the day's. */
  const isLateOffer = ({ startsAt }: Lesson, { id, offerUntil }: Booking, now: Instant): boolean => {
    const isNight = isQuietAt(now, clocks);
    const justTurned = isNight !== isQuietAt(now - tardiestMs, clocks) || afterQuiet(now, clocks) >= startsAt;
    const stood = downs.some(({ from, until }) => from <= now && until >= now - tardiestMs);
    if (justTurned || stood || isOfTable({ id })) return false;
    return isNight ? offerUntil !== null && !heardOf.offer.has(id) : offerUntil === null;
  };

  return {
    broken,
    counts,
    reminded({ at, keys }, person, rosters) {
      const purpose = purposes.find((one) => keys.some((key) => key.startsWith(`lesson-told-${one}`)));
      if (!purpose) return;
      counts.reminders += 1;
      const roster = rosters[0];
      const booking = roster?.bookings.findLast((one) => one.person === person && one.standing === 'seated');
      if (!roster || !booking) return fail(`${purpose} told to ${person}, who has no seat`, at);
      const { lesson } = roster;
      const key = keyOf(person, lesson, purpose);
      if (sent.has(key) && (seatedAt.get(`${person} ${lesson.id}`) ?? 0) <= (sent.get(key) ?? 0))
        fail(`${purpose} of ${lesson.id} told twice to ${person}`, at);
      sent.set(key, at);
      if (lesson.status === 'cancelled') fail(`${purpose} of the cancelled ${lesson.id} told to ${person}`, at);
      if (purpose !== 'thanks' && at >= lesson.startsAt) fail(`${purpose} of ${lesson.id} told after it began`, at);
      const due = dueOf(lesson, purpose, clocks);
      if (at < due) fail(`${purpose} of ${lesson.id} told ${(due - at) / minute} min early`, at);
      const late = at - due;
      const excused = downs.some(({ from, until }) => due >= from - tardiestMs && due <= until);
      const cannotWait = excused && purpose !== 'thanks' && afterQuiet(at, clocks) >= lesson.startsAt;
      if (isQuietAt(at, clocks) && !cannotWait) fail(`${purpose} of ${lesson.id} told at night`, at);
      if (late > tardiestMs && !excused) fail(`${purpose} of ${lesson.id} told ${late / minute} min late`, at);
    },
    ofList({ at, keys }, person, [roster]) {
      const what = keys.includes('lesson-told-offer') ? 'offer' : 'lapsed';
      const standing = what === 'offer' ? 'offered' : 'left';
      const booking = roster?.bookings.findLast((one) => one.person === person && one.standing === standing);
      if (!roster || !booking) return fail(`${what} told to ${person}, whom it does not concern`, at);
      const { id, startsAt } = roster.lesson;
      if (heardOf[what].has(booking.id)) fail(`${what} of ${id} told twice to ${person}`, at);
      heardOf[what].add(booking.id);
      counts.offers += 1;
      if (isQuietAt(at - tardiestMs, clocks) && !isQuietAt(at, clocks)) counts.mornings += 1;
      if (at >= startsAt) fail(`${what} of ${id} told after it began`, at);
      if (roster.lesson.status === 'cancelled') fail(`${what} of the cancelled ${id} told to ${person}`, at);
      const isAwake = at - (askedAt.get(`${person} ${id}`) ?? 0) <= tardiestMs;
      const canWait = afterQuiet(at, clocks) < startsAt && !isAwake;
      if (isQuietAt(at, clocks) && canWait) fail(`${what} of ${id} told to ${person} at night`, at);
    },
    asked: (person, lesson, at) => void askedAt.set(`${person} ${lesson}`, at),
    seated: (person, lesson, at) => void seatedAt.set(`${person} ${lesson}`, at),
    moved: (lesson, at) => void movedAt.set(lesson, at),
    resumed({ lesson, bookings }, at) {
      movedAt.set(lesson.id, at);
      for (const { id } of bookings) heardOf.offer.delete(id);
    },
    stood: (down) => void downs.push(down),
    lists(rosters, now) {
      for (const { lesson, bookings } of rosters) {
        counts.lists += 1;
        const held = bookings.filter(({ standing }) => standing === 'seated' || standing === 'offered');
        const taken = held.reduce((sum, { seats }) => sum + seats, 0);
        if (taken > lesson.seats) fail(`${lesson.id} has ${taken} of ${lesson.seats} seats taken`, now);
        const here = bookings.filter(({ standing }) => standing !== 'left').map(({ person }) => person);
        if (new Set(here).size < here.length) fail(`someone is twice on the list of ${lesson.id}`, now);
        const open = lesson.status !== 'cancelled' && now < lesson.startsAt;
        const waits = bookings.find(({ standing, seats }) => standing === 'waiting' && seats <= lesson.seats - taken);
        if (open && waits) fail(`${waits.person} waits for ${lesson.id} though ${lesson.seats - taken} are free`, now);
        const lapsed = held.find(({ offerUntil }) => offerUntil !== null && offerUntil < now - tardiestMs);
        if (open && lapsed) fail(`the offer of ${lesson.id} to ${lapsed.person} does not end`, now);
        const kept = held.find((one) => one.standing === 'offered' && isLateOffer(lesson, one, now));
        if (open && kept) fail(`${kept.person} never heard of the offer of ${lesson.id}`, now);
        if (lesson.status === 'cancelled' || now < lesson.endsAt + 4 * day || judged.has(lesson.id)) continue;
        judged.add(lesson.id);
        for (const one of bookings) if (one.standing === 'seated') judge(lesson, one, now);
      }
    },
  };
}

/** Worked out anew, by another way to local time than the house's. */
function dueOf({ starts, minutes }: Lesson, purpose: Purpose, clocks: Clocks): Instant {
  const wall = Date.parse(`${starts}:00Z`);
  const at = (local: number): Instant => secondOpinion(local, clocks).at;
  const date = wall - (wall % day);
  if (purpose === 'week-before') return beforeQuiet(at(wall - 7 * day), clocks);
  if (purpose === 'evening-before') return at(date - day + 18 * hour);
  if (purpose === 'two-hours-before') return beforeQuiet(at(wall) - 2 * hour, clocks);
  return afterQuiet(at(wall) + (minutes + 15) * minute, clocks);
}

function localOf(at: Instant, clocks: Clocks): { readonly date: number; readonly time: number } {
  const local = at + offsetAt(at, clocks);
  return { date: local - (local % day), time: local % day };
}

export function isQuietAt(at: Instant, clocks: Clocks): boolean {
  const { time } = localOf(at, clocks);
  return time >= 21 * hour || time < 8 * hour;
}

function beforeQuiet(at: Instant, clocks: Clocks): Instant {
  if (!isQuietAt(at, clocks)) return at;
  const { date, time } = localOf(at, clocks);
  return secondOpinion((time < 8 * hour ? date - day : date) + 20.75 * hour, clocks).at;
}

function afterQuiet(at: Instant, clocks: Clocks): Instant {
  if (!isQuietAt(at, clocks)) return at;
  const { date, time } = localOf(at, clocks);
  return secondOpinion((time < 8 * hour ? date : date + day) + 8 * hour, clocks).at;
}
