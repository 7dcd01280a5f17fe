/** What was passed to the shop. */
import type { Database } from 'better-sqlite3';
import type { Facts } from '../../core/flow/flow.ts';
import type { Instant } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';

export interface NewTask {
  readonly person: PersonId;
  readonly task: string;
  readonly facts: Facts;
  readonly now: Instant;
}

export interface Tasks {
  add(task: NewTask): void;
  prune(before: Instant): number;
}

export function makeTasks(db: Database): Tasks {
  const add = db.prepare<[PersonId, string, string, number]>(
    'INSERT INTO task (person, task, facts, created_at) VALUES (?, ?, ?, ?)',
  );
  const prune = db.prepare<[number]>(`DELETE FROM task WHERE status = 'closed' AND created_at < ?`);
  return {
    add: ({ person, task, facts, now }) => void add.run(person, task, JSON.stringify(facts), now),
    prune: (before) => prune.run(before).changes,
  };
}
