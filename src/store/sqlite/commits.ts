/** Group commit: writes that wait in the same tick share one transaction and one sync, each still whole by itself. */
import type { Database } from 'better-sqlite3';
import { isBusy } from './database.ts';

/** Runs `work` inside a transaction; resolves once it is durable, rejects when it was rolled back. */
export type Write = <T>(work: () => T) => Promise<T>;

interface Job {
  readonly work: () => unknown;
  readonly done: (value: unknown) => void;
  readonly failed: (error: unknown) => void;
}

type Result = { readonly value: unknown } | { readonly error: unknown };

/** Bounds how long one group keeps the event loop. */
const largestGroup = 64;
/** How long other processes may keep the lock before what waits is given up. */
const patienceMs = 60_000;
const betweenTriesMs = 25;

export interface Commits {
  readonly write: Write;
  /** Resolves when nothing waits. */
  drained(): Promise<void>;
}

export function makeCommits(db: Database): Commits {
  const waiting: Job[] = [];
  let flushing: Promise<void> | null = null;

  const flush = async (): Promise<void> => {
    while (waiting.length > 0) {
      // Everything else of this tick gets its chance to join the group, and I/O is never starved.
      await new Promise(setImmediate);
      await commitGroup(db, waiting.splice(0, largestGroup));
    }
    flushing = null;
  };
  return {
    write: <T>(work: () => T) =>
      new Promise<T>((done, failed) => {
        waiting.push({ work, done: done as (value: unknown) => void, failed });
        flushing ??= flush();
      }),
    drained: async () => {
      await flushing;
    },
  };
}

async function commitGroup(db: Database, group: readonly Job[]): Promise<void> {
  const giveUpAt = performance.now() + patienceMs;
  for (;;) {
    try {
      const results = runGroup(db, group);
      group.forEach((job, i) => answer(job, results[i]));
      return;
    } catch (error) {
      if (!isBusy(error) || performance.now() > giveUpAt) {
        for (const job of group) job.failed(error);
        return;
      }
    }
    await new Promise((resolve) => setTimeout(resolve, betweenTriesMs));
  }
}

function runGroup(db: Database, group: readonly Job[]): readonly Result[] {
  const savepoint = db.transaction((work: () => unknown) => work());
  return db
    .transaction(() =>
      group.map((job): Result => {
        try {
          return { value: savepoint(job.work) };
        } catch (error) {
          // A full disk or a lost lock ends the whole transaction: then nobody in it may go on.
          if (!db.inTransaction || isBusy(error)) throw error;
          return { error };
        }
      }),
    )
    .immediate();
}

function answer(job: Job, result: Result | undefined): void {
  if (result && 'value' in result) job.done(result.value);
  else job.failed(result?.error);
}
