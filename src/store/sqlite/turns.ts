/** What is next for whom: the oldest incoming or the earliest due wake of a person, with all that handling needs. */
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { PersonId, Turn, TurnEvent } from '../contract.ts';
import type { LessonBoard } from '../lesson-contract.ts';
import type { BookingRows } from './booking-rows.ts';
import type { Claims } from './claims.ts';
import type { Conversations } from './conversations.ts';
import { deskOf, type DeskParts } from './desk.ts';
import type { Arrived, Inbox } from './inbox.ts';
import type { People } from './people.ts';
import type { ReminderRows } from './reminder-rows.ts';
import type { Wakes } from './wakes.ts';

export interface Turns {
  awaiting(channels: string, now: Instant, limit: number): readonly PersonId[];
  load(person: PersonId, now: Instant): Turn | null;
  /** Whether what arrives at this instant is what is next of this person. */
  isNext(person: PersonId, receivedAt: Instant, now: Instant): boolean;
  /** Of what has just arrived. */
  of(person: PersonId, arrived: Arrived, now: Instant): Turn;
  nextDue(channels: string, after: Instant): Instant | null;
}

export interface TurnParts extends DeskParts {
  readonly people: People;
  readonly inbox: Inbox;
  readonly conversations: Conversations;
  readonly wakes: Wakes;
  readonly claims: Claims;
  readonly bookings: BookingRows;
  readonly reminders: ReminderRows;
  readonly board: (person: PersonId, isKeeper: boolean, now: Instant) => LessonBoard;
}

interface Next {
  readonly event: TurnEvent;
  readonly tries: number;
  /** The incoming it came with; a wake came with none. */
  readonly from: Arrived | null;
}

export function makeTurns(db: Database, parts: TurnParts): Turns {
  const { people, inbox, conversations, wakes, claims, bookings, reminders, board } = parts;
  const awaiting = db.prepare<unknown[], { person: PersonId }>(
    `SELECT person FROM inbox WHERE status = 'waiting' AND channel IN (SELECT value FROM json_each(@channels))
     UNION
     SELECT w.person FROM wake w INDEXED BY wake_at JOIN conversation c USING (person)
     WHERE w.at <= @now AND c.channel IN (SELECT value FROM json_each(@channels))
     LIMIT @limit`,
  );
  const nextWake = db.prepare<[number, string], { at: number | null }>(
    `SELECT w.at FROM wake w JOIN conversation c USING (person)
     WHERE w.at > ? AND c.channel IN (SELECT value FROM json_each(?)) ORDER BY w.at LIMIT 1`,
  );

  const asEvent = (person: PersonId, { seq, what }: Arrived): TurnEvent => {
    if (what.kind === 'text') return { kind: 'text', seq, text: what.text };
    if (what.kind === 'open') return { kind: 'open', seq, payload: what.payload };
    if (what.kind === 'tap') return { kind: 'tap', seq, chosen: claims.choice(person, what.key) };
    throw new Error('coming and going is never left waiting');
  };
  const next = (person: PersonId, now: Instant): Next | null => {
    const arrived = inbox.oldest(person);
    const wake = wakes.due(person, now);
    if (wake && (!arrived || wake.at <= arrived.receivedAt)) {
      return { event: { kind: 'wake', name: wake.name, at: wake.at }, tries: wake.tries, from: null };
    }
    return arrived ? { event: asEvent(person, arrived), tries: arrived.tries, from: arrived } : null;
  };

  const turnOf = (person: PersonId, found: Next, now: Instant): Turn => {
    const spoken = conversations.of(person);
    const address = found.from ?? spoken;
    if (!address) throw new Error('a wake is only ever set by a conversation');
    const desk = deskOf(parts, { person, text: found.event.kind === 'text' ? found.event.text : null, now });
    return {
      person,
      version: spoken?.version ?? 0,
      state: spoken?.state ?? null,
      memory: conversations.memory(person),
      language: spoken?.language ?? null,
      deviceLanguage: people.deviceLanguage(person),
      address: { channel: address.channel, chat: address.chat },
      event: found.event,
      receivedAt: found.from?.receivedAt ?? null,
      tries: found.tries,
      desk,
      lessons: board(person, desk.keeper, now),
    };
  };

  return {
    awaiting: (channels, now, limit) => awaiting.all({ channels, now, limit }).map(({ person }) => person),
    load(person, now) {
      const found = next(person, now);
      return found && turnOf(person, found, now);
    },
    isNext(person, receivedAt, now) {
      const wake = wakes.due(person, now);
      return !inbox.oldest(person) && !(wake && wake.at <= receivedAt);
    },
    of: (person, arrived, now) =>
      turnOf(person, { event: asEvent(person, arrived), tries: arrived.tries, from: arrived }, now),
    nextDue: (channels, after) => {
      const dues = [
        claims.nextDue(channels, after),
        nextWake.get(after, channels)?.at ?? null,
        reminders.nextDue(after),
        bookings.nextOfferEnd(after),
      ];
      const due = Math.min(...dues.map((d) => d ?? Infinity));
      return due === Infinity ? null : due;
    },
  };
}
