/** Bookings as rows, in the order of each lesson's list. */
import type { Database } from 'better-sqlite3';
import type { NamedBooking } from '../../core/lessons/booking-draft.ts';
import type { Reach } from '../../core/lessons/door-list.ts';
import type { Booking } from '../../core/lessons/roster.ts';
import type { Instant } from '../../core/units.ts';
import type { Address, PersonId } from '../contract.ts';
import type { News } from './news.ts';

/** A booking with its lesson, its person, and where they are told of it. */
export interface Booked {
  readonly booking: Booking;
  readonly lesson: string;
  readonly person: PersonId;
  readonly address: Address;
}

export interface BookingRows {
  of(id: string): Booked | undefined;
  ofLesson(lesson: string): readonly Booking[];
  namedOfLesson(lesson: string): readonly NamedBooking[];
  /** Of those who gave one: the name for the list at the door. */
  namesOfLesson(lesson: string): readonly { readonly booking: string; readonly name: string }[];
  /** How those on the list can be told, by the id of their booking. */
  reachOfLesson(lesson: string): (booking: string) => Reach;
  /** The last enrolled first: all that stand in a lesson to come, and of the others the last 30. */
  ofPerson(person: PersonId, now: Instant): readonly Booked[];
  /** All that were not given back. */
  standingOf(person: PersonId): readonly Booked[];
  add(lesson: string, booking: Booking, address: Address): void;
  put(booking: Booking): void;
  /** Lessons where the time of an offer is up. */
  offersEnded(now: Instant, limit: number): readonly string[];
  nextOfferEnd(after: Instant): Instant | null;
}

interface BookingRow extends Omit<Booking, 'person' | 'came'>, Address {
  readonly lesson: string;
  readonly person: PersonId;
  readonly came: 0 | 1 | null;
}

const columns = `id, lesson, person, channel, chat, seats, standing, enrolled_at AS enrolledAt,
  offer_until AS offerUntil, answer, came, moves, revision`;

export function makeBookingRows(db: Database, news: News): BookingRows {
  const of = db.prepare<[string], BookingRow>(`SELECT ${columns} FROM booking WHERE id = ?`);
  const ofLesson = db.prepare<[string], BookingRow>(`SELECT ${columns} FROM booking WHERE lesson = ? ORDER BY place`);
  const namesOf = db.prepare<[string], { id: string; name: string | null; mail: string | null }>(
    `SELECT id, memory.value ->> '$' AS name, iif(channel = 'mail', nullif(chat, ''), NULL) AS mail
     FROM booking LEFT JOIN memory ON memory.person = booking.person AND memory.name = 'name' WHERE lesson = ?`,
  );
  const reachOf = db.prepare<[string], { id: string; reach: Reach }>(
    `SELECT id, CASE WHEN chat = '' OR EXISTS (SELECT 1 FROM handle WHERE reachable = 0
         AND handle.channel = booking.channel AND handle.chat = booking.chat) THEN 'none'
       WHEN channel = 'mail' THEN 'mail' ELSE 'chat' END AS reach FROM booking WHERE lesson = ?`,
  );
  const anyOf = db.prepare<[PersonId], { one: 1 }>('SELECT 1 AS one FROM booking WHERE person = ? LIMIT 1');
  const ofPerson = db.prepare<unknown[], BookingRow>(
    `WITH own AS (SELECT b.*, b.standing <> 'left' AND l.ends_at > @now AS ahead
       FROM booking b JOIN lesson l ON l.id = b.lesson WHERE b.person = @person)
     SELECT ${columns} FROM
       (SELECT * FROM own WHERE ahead
        UNION ALL SELECT * FROM (SELECT * FROM own WHERE NOT ahead ORDER BY standing = 'left', place DESC LIMIT 30))
     ORDER BY place DESC`,
  );
  const standingOf = db.prepare<[PersonId], BookingRow>(
    `SELECT ${columns} FROM booking WHERE person = ? AND standing <> 'left'`,
  );
  const add = db.prepare(
    `INSERT INTO booking (id, lesson, person, channel, chat, seats, standing, enrolled_at, offer_until, answer, came,
       moves, revision)
     VALUES (@id, @lesson, @person, @channel, @chat, @seats, @standing, @enrolledAt, @offerUntil, @answer, @came,
       @moves, @revision)`,
  );
  const put = db.prepare(
    `UPDATE booking SET seats = @seats, standing = @standing, offer_until = @offerUntil, answer = @answer,
       came = @came, moves = @moves, revision = @revision WHERE id = @id`,
  );
  // In a cancelled lesson nothing is offered on.
  const offersEnded = db.prepare<[number, number], { lesson: string }>(
    `SELECT DISTINCT b.lesson FROM booking b INDEXED BY booking_offered JOIN lesson l ON l.id = b.lesson
     WHERE b.standing = 'offered' AND coalesce(b.offer_until, l.starts_at) <= ? AND l.status <> 'cancelled' LIMIT ?`,
  );
  const nextOfferEnd = db
    .prepare<[number], number | null>(
      `SELECT min(offer_until) FROM booking WHERE standing = 'offered' AND offer_until > ?`,
    )
    .pluck();

  return {
    of(id) {
      const row = of.get(id);
      return row && toBooked(row);
    },
    ofLesson: (lesson) => ofLesson.all(lesson).map(toBooking),
    namedOfLesson(lesson) {
      const names = new Map(namesOf.all(lesson).map((one) => [one.id, one]));
      return ofLesson.all(lesson).map((row) => {
        const { name = null, mail = null } = names.get(row.id) ?? {};
        return { ...toBooking(row), lesson, name, mail };
      });
    },
    namesOfLesson: (lesson) =>
      namesOf.all(lesson).flatMap(({ id, name }) => (name === null ? [] : [{ booking: id, name }])),
    reachOfLesson(lesson) {
      const reach = new Map(reachOf.all(lesson).map((one) => [one.id, one.reach]));
      return (booking) => reach.get(booking) ?? 'none';
    },
    // Most have none, and finding that out with all it takes to sort some costs five times as much.
    ofPerson: (person, now) => (anyOf.get(person) ? ofPerson.all({ person, now }).map(toBooked) : []),
    standingOf: (person) => standingOf.all(person).map(toBooked),
    add(lesson, booking, { channel, chat }) {
      news.tell();
      add.run({ ...toRow(booking), lesson, person: Number(booking.person), channel, chat });
    },
    put(booking) {
      news.tell();
      put.run(toRow(booking));
    },
    offersEnded: (now, limit) => offersEnded.all(now, limit).map(({ lesson }) => lesson),
    nextOfferEnd: (after) => nextOfferEnd.get(after) ?? null,
  };
}

function toRow({ came, ...booking }: Booking): Record<string, unknown> {
  return { ...booking, came: came === null ? null : Number(came) };
}

function toBooking(row: BookingRow): Booking {
  const { id, person, seats, standing, enrolledAt, offerUntil, answer, came, moves, revision } = row;
  return {
    id,
    person: String(person),
    seats,
    standing,
    enrolledAt,
    offerUntil,
    answer,
    came: came === null ? null : came === 1,
    moves,
    revision,
  };
}

function toBooked(row: BookingRow): Booked {
  const { lesson, person, channel, chat } = row;
  return { booking: toBooking(row), lesson, person, address: { channel, chat } };
}
