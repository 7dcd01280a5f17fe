/** Looks each minute whether a backup is due, and has it made elsewhere. What is due is read from what there is, not remembered. */
import { execFile } from 'node:child_process';
import { schedule } from 'node-cron';
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import { errorFields, type Log } from '../log.ts';

export interface BackupScheduleParts {
  readonly everyHours: number;
  readonly clock: Clock;
  readonly log: Log;
  /** When the newest backup was made; null when there is none. */
  readonly newest: () => Instant | null;
  readonly make: (stopped: AbortSignal) => Promise<void>;
  /** Calls back about each minute until told to stop. */
  readonly tick?: (call: () => void) => () => void;
}

export interface BackupSchedule {
  start(): void;
  /** Ends one under way; what is half made is cleared away by a later one. */
  stop(): Promise<void>;
}

const hourMs = 60 * 60_000;
/** Judgement: often enough for a disk that has room again, seldom enough not to wear it out. */
const afterFailureMs = 15 * 60_000;
/** Independent of the tick. */
const backstopMs = 60_000;

export function makeBackupSchedule(parts: BackupScheduleParts): BackupSchedule {
  const { clock, log, tick = eachMinute } = parts;
  const stopping = new AbortController();
  let notBefore = -Infinity;
  let underWay: Promise<void> | null = null;
  let endTicks: (() => void) | null = null;
  let endBackstop: (() => void) | null = null;

  const make = async (): Promise<void> => {
    try {
      await parts.make(stopping.signal);
      log.info('a backup is made');
    } catch (error) {
      if (stopping.signal.aborted) return;
      notBefore = clock.now() + afterFailureMs;
      log.error('no backup could be made', errorFields(error));
    }
  };
  const look = (): void => {
    if (stopping.signal.aborted || underWay || clock.now() < notBefore || !isDue(parts)) return;
    underWay = make().finally(() => (underWay = null));
  };
  const backstop = (): void => {
    endBackstop = clock.wakeAt(clock.now() + backstopMs, () => {
      backstop();
      look();
    });
  };
  return {
    start() {
      endTicks = tick(look);
      backstop();
    },
    async stop() {
      stopping.abort();
      endTicks?.();
      endBackstop?.();
      await underWay;
    },
  };
}

/** One from the future was made under a wrong clock, and says nothing. */
function isDue({ newest, everyHours, clock }: BackupScheduleParts): boolean {
  const at = newest();
  return at === null || at > clock.now() || clock.now() - at >= everyHours * hourMs;
}

/** In UTC, where no minute is missing or comes twice. A tick lost costs a minute: the backstop looks too. */
function eachMinute(call: () => void): () => void {
  const ticks = schedule('* * * * *', call, { timezone: 'Etc/UTC', unref: true, suppressMissedWarning: true });
  return () => void ticks.destroy();
}

/** By a process of its own: copying and checking would hold up a call to pour. Rejects when it did not succeed. */
export function inOwnProcess(script: string): BackupScheduleParts['make'] {
  return (signal) =>
    new Promise((resolve, reject) => {
      execFile(process.execPath, [script], { signal }, (error) =>
        error ? reject(new Error('ended', { cause: error })) : resolve(),
      );
    });
}
