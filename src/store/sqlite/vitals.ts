/** How the house fares, counted in the database itself: what waits, and since when. */
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { Vitals } from '../vitals.ts';

export function makeVitals(db: Database): (channels: string, now: Instant) => Vitals {
  const unhandled = db
    .prepare<[string], number>(
      `SELECT count(*) FROM inbox WHERE status = 'waiting' AND channel IN (SELECT value FROM json_each(?))`,
    )
    .pluck();
  // Left to itself SQLite looks through all that was ever said in the channel: seconds, for a million messages.
  const undelivered = db.prepare<[number, string], { count: number; oldest: Instant | null }>(
    `SELECT count(*) AS count, min(due) AS oldest FROM (
       SELECT due, channel FROM outbox INDEXED BY outbox_waiting WHERE status = 'waiting'
       UNION ALL SELECT due, channel FROM outbox INDEXED BY outbox_sending WHERE status = 'sending')
     WHERE due <= ? AND channel IN (SELECT value FROM json_each(?))`,
  );
  const questions = db.prepare<[], number>('SELECT count(*) FROM question WHERE answer IS NULL').pluck();
  const tasks = db.prepare<[], number>(`SELECT count(*) FROM task WHERE status = 'open'`).pluck();

  return (channels, now) => {
    const { count = 0, oldest = null } = undelivered.get(now, channels) ?? {};
    return {
      unhandled: unhandled.get(channels) ?? 0,
      undelivered: count,
      oldestUndelivered: oldest,
      questions: questions.get() ?? 0,
      tasks: tasks.get() ?? 0,
    };
  };
}
