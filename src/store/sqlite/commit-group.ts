/** One transaction of several jobs: each is still whole by itself, with one sync for all, or none. */
import type { Database } from 'better-sqlite3';
import { isBusy, unsynced } from './database.ts';

export interface Job {
  readonly work: () => unknown;
  readonly durable: boolean;
  readonly last: boolean;
  readonly done: (value: unknown) => void;
  readonly failed: (error: unknown) => void;
}

export type Result = { readonly value: unknown } | { readonly error: unknown };

interface How {
  readonly durable: boolean;
  /** Something noted earlier must go to the disk with it, even if this group changes nothing. */
  readonly surely: boolean;
}

interface Outcome {
  readonly results: readonly Result[];
  /** A transaction that changes nothing is not synced. */
  readonly changed: boolean;
}

/** `undone`: something read inside a transaction is not so any more. */
export function makeGroup(db: Database, undone: () => void): (jobs: readonly Job[], how: How) => Outcome {
  const savepoint = db.transaction((work: () => unknown) => work());
  const changes = db.prepare<[], number>('SELECT total_changes()').pluck();
  const each = ({ work }: Job): Result => {
    try {
      return { value: savepoint(work) };
    } catch (error) {
      // A full disk or a lost lock ends the whole transaction: then nobody in it may go on.
      if (!db.inTransaction || isBusy(error)) throw error;
      undone();
      return { error };
    }
  };
  const transaction = db.transaction((run: () => readonly Result[], surely: boolean): Outcome => {
    const before = changes.get();
    const results = run();
    const changed = changes.get() !== before;
    if (surely && !changed) touch(db);
    return { results, changed: changed || surely };
  });
  const whole = (run: () => readonly Result[], surely: boolean): Outcome => {
    try {
      return transaction.immediate(run, surely);
    } catch (error) {
      undone();
      throw error;
    }
  };
  // A savepoint around each costs a fifth of it all, and is needed only when one goes wrong: then all is done again.
  const hopefully = (jobs: readonly Job[], surely: boolean): Outcome => {
    try {
      return whole(() => jobs.map(({ work }) => ({ value: work() })), surely);
    } catch (error) {
      if (isBusy(error)) throw error;
      return whole(() => jobs.map(each), surely);
    }
  };
  return (jobs, { durable, surely }) =>
    durable ? hopefully(jobs, surely) : unsynced(db, () => hopefully(jobs, false));
}

function touch(db: Database): void {
  db.pragma(`user_version = ${String(db.pragma('user_version', { simple: true }))}`);
}
