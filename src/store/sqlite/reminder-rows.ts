/** Reminders as rows: one for a booking, a lesson and a purpose. */
import type { Database } from 'better-sqlite3';
import type { Purpose, Reminder } from '../../core/lessons/reminders.ts';
import type { Instant } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';

export interface ReminderRows {
  of(booking: string): readonly Reminder[];
  put(reminder: Reminder, person: PersonId): void;
  /** The booking of each reminder that is due, the longest due first; one may be there more than once. */
  due(now: Instant, limit: number): readonly string[];
  nextDue(after: Instant): Instant | null;
  /** False for who wants no reminders, or none of this purpose. */
  wantedBy(person: PersonId, purpose: Purpose): boolean;
  /** One that was handed over is planned again. */
  takeBack(booking: string, purpose: string): void;
  /** Handed over anew it goes on where its tries ended: since when they failed, and whether one may have arrived. */
  goOn(name: string, person: PersonId, since: Instant): void;
}

/** What a reminder is called among the messages owed. */
export const reminderName = (booking: string, purpose: Purpose): string => `reminder/${booking}/${purpose}`;

export function reminderParts(name: string): { readonly booking: string; readonly purpose: string } {
  const [, booking = '', purpose = ''] = /^reminder\/(.*)\/([a-z-]+)$/.exec(name) ?? [];
  return { booking, purpose };
}

export function makeReminderRows(db: Database): ReminderRows {
  const of = db.prepare<[string], Reminder>(
    'SELECT booking, lesson, purpose, moves, due_at AS dueAt, state FROM reminder WHERE booking = ?',
  );
  const put = db.prepare(
    `INSERT INTO reminder (booking, lesson, purpose, person, moves, due_at, state)
     VALUES (@booking, @lesson, @purpose, @person, @moves, @dueAt, @state)
     ON CONFLICT DO UPDATE SET moves = @moves, due_at = @dueAt, state = @state`,
  );
  const due = db.prepare<[number, number], { booking: string }>(
    `SELECT booking FROM reminder WHERE state = 'planned' AND due_at <= ? ORDER BY due_at LIMIT ?`,
  );
  const nextDue = db
    .prepare<[number], number | null>(`SELECT min(due_at) FROM reminder WHERE state = 'planned' AND due_at > ?`)
    .pluck();
  const takeBack = db.prepare<[string, string]>(
    `UPDATE reminder SET state = 'planned' WHERE booking = ? AND purpose = ? AND state = 'sent'`,
  );
  const unwanted = db.prepare<[PersonId, string], { one: 1 }>(
    `SELECT 1 AS one FROM memory WHERE person = ? AND name = 'reminders' AND value IN ('"off"', ?)`,
  );
  const goOn = db.prepare(
    `UPDATE outbox SET attempts = 1, doubts = before.doubts, due = before.due
     FROM (SELECT max(doubts) AS doubts, min(due) AS due FROM outbox
       WHERE person = @person AND name = @name AND status = 'gave-up' AND due >= @since) AS before
     WHERE person = @person AND name = @name AND status IN ('waiting', 'held') AND before.due IS NOT NULL`,
  );

  return {
    of: (booking) => of.all(booking),
    put: (reminder, person) => void put.run({ ...reminder, person }),
    due: (now, limit) => due.all(now, limit).map(({ booking }) => booking),
    nextDue: (after) => nextDue.get(after) ?? null,
    wantedBy: (person, purpose) => unwanted.get(person, JSON.stringify(purpose)) === undefined,
    takeBack: (booking, purpose) => void takeBack.run(booking, purpose),
    goOn: (name, person, since) => void goOn.run({ name, person, since }),
  };
}
