/** What was passed to the shop. */
import type { Database } from 'better-sqlite3';
import type { Facts } from '../../core/flow/flow.ts';
import type { Instant, Json } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';
import type { Undelivered } from '../desk-contract.ts';

export interface NewTask {
  readonly person: PersonId;
  readonly task: string;
  readonly facts: Facts;
  readonly now: Instant;
}

export interface Tasks {
  add(task: NewTask): void;
  /** Open tasks of messages that could not be brought, the oldest first, the first 20. */
  undelivered(): readonly Undelivered[];
  closeUndelivered(upTo: number): void;
  prune(before: Instant): number;
}

export function makeTasks(db: Database): Tasks {
  const add = db.prepare<[PersonId, string, string, number]>(
    'INSERT INTO task (person, task, facts, created_at) VALUES (?, ?, ?, ?)',
  );
  const undelivered = db.prepare<[], Omit<Undelivered, 'about'> & { readonly about: string | null }>(
    `SELECT seq AS id, person, coalesce(facts ->> 'why', '') AS why, facts -> 'about' AS about, created_at AS at FROM task
     WHERE status = 'open' AND task = 'undelivered' ORDER BY seq LIMIT 20`,
  );
  const close = db.prepare<[number]>(
    `UPDATE task SET status = 'closed' WHERE task = 'undelivered' AND status = 'open' AND seq <= ?`,
  );
  const prune = db.prepare<[number]>(`DELETE FROM task WHERE status = 'closed' AND created_at < ?`);
  return {
    add: ({ person, task, facts, now }) => void add.run(person, task, JSON.stringify(facts), now),
    undelivered: () =>
      undelivered.all().map((one) => ({ ...one, about: one.about === null ? null : (JSON.parse(one.about) as Json) })),
    closeUndelivered: (upTo) => void close.run(upTo),
    prune: (before) => prune.run(before).changes,
  };
}
