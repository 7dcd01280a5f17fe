/**
 * Group commit: what waits in the same tick shares one transaction and, if any of it asks for one, one sync. What was only
 * noted is in the log, out of reach of a dying process, and goes to the disk with the next sync.
 */
import type { Database } from 'better-sqlite3';
import { makeGroup, type Job, type Result } from './commit-group.ts';
import { makeQueue } from './commit-queue.ts';
import { isBusy } from './database.ts';

/** Runs `work` inside a transaction; rejects when it was rolled back. */
export type Write = <T>(work: () => T) => Promise<T>;

/** Bounds how long one group keeps the event loop. */
const largestGroup = 64;
/** How long other processes may keep the lock before what waits is given up. */
const patienceMs = 60_000;
const betweenTriesMs = 25;
/** What was noted and is followed by nothing goes to the disk after so long. */
const longestUnsyncedMs = 1_000;

export interface Commits {
  /** Resolves once it is on the disk. */
  readonly write: Write;
  /** The same, after all that waits already or is asked for in this tick: it sees what the others wrote. */
  readonly writeLast: Write;
  /** Resolves once it outlives the process; a failing machine may lose it until `synced` resolves. */
  readonly note: Write;
  /** Resolves once all that was noted is on the disk. */
  synced(): Promise<void>;
  /** Whether nothing waits to be written, nor is being written. */
  isQuiet(): boolean;
  /** Resolves when nothing waits. */
  drained(): Promise<void>;
}

/** `undone`: what was read inside a transaction may not be so any more. */
export function makeCommits(db: Database, undone: () => void = () => {}): Commits {
  const group = makeGroup(db, undone);
  const queue = makeQueue();
  const asked: { readonly done: () => void; readonly failed: Job['failed'] }[] = [];
  let flushing: Promise<void> | null = null;
  let isSynced = true;
  let isWriting = false;
  let backstop: NodeJS.Timeout | undefined;

  const flush = async (): Promise<void> => {
    let overdue = false;
    while (!queue.isEmpty() || asked.length > 0) {
      // Everything else of this tick gets its chance to join the group, and I/O is never starved.
      await new Promise(setImmediate);
      const jobs = queue.take(largestGroup);
      // Who asks for a sync mostly has something written in the next turn, and shares that one.
      const durable = overdue || jobs.some((job) => job.durable);
      if (jobs.length > 0 || !isSynced) await commit(jobs, durable ? asked.splice(0) : null);
      if (isSynced && queue.isEmpty()) for (const one of asked.splice(0)) one.done();
      overdue = asked.length > 0;
    }
    flushing = null;
    if (!isSynced) backstop ??= setTimeout(syncAlone, longestUnsyncedMs).unref();
  };
  const syncAlone = (): void => {
    backstop = undefined;
    synced().catch(() => undefined);
  };
  /** Those who asked for a sync share it; null: none is needed. */
  const commit = async (jobs: readonly Job[], sharing: typeof asked | null): Promise<void> => {
    isWriting = true;
    const outcome = await patiently(() =>
      group(jobs, { durable: sharing !== null, surely: !isSynced && sharing?.length !== 0 }),
    );
    isWriting = false;
    if ('error' in outcome) {
      for (const one of [...jobs, ...(sharing ?? [])]) one.failed(outcome.error);
      return;
    }
    const { results, changed } = outcome.value;
    if (changed) isSynced = sharing !== null;
    jobs.forEach((job, i) => answer(job, results[i]));
    for (const one of sharing ?? []) one.done();
  };
  const wake = (): void => void (flushing ??= flush());
  const put = (how: Pick<Job, 'durable' | 'last'>): Write => {
    return <T>(work: () => T) =>
      new Promise<T>((done, failed) => {
        queue.put({ ...how, work, done: done as (value: unknown) => void, failed });
        wake();
      });
  };
  const synced = (): Promise<void> =>
    new Promise((done, failed) => {
      asked.push({ done, failed });
      wake();
    });
  return {
    write: put({ durable: true, last: false }),
    writeLast: put({ durable: true, last: true }),
    note: put({ durable: false, last: false }),
    synced,
    isQuiet: () => queue.isEmpty() && !isWriting,
    drained: async () => {
      await flushing;
    },
  };
}

/** Another process may hold the lock: tries again until patience ends. */
async function patiently<T>(run: () => T): Promise<{ readonly value: T } | { readonly error: unknown }> {
  const giveUpAt = performance.now() + patienceMs;
  for (;;) {
    try {
      return { value: run() };
    } catch (error) {
      if (!isBusy(error) || performance.now() > giveUpAt) return { error };
    }
    await new Promise((resolve) => setTimeout(resolve, betweenTriesMs));
  }
}

function answer(job: Job, result: Result | undefined): void {
  if (result && 'value' in result) job.done(result.value);
  else job.failed(result?.error);
}
