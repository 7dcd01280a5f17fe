/** Fetches updates and confirms only what is durable: the next offset goes out once the whole batch is recorded. */
import type { Log } from '../../log.ts';
import type { Incoming } from '../../messages.ts';
import { errorFields } from '../../log.ts';
import type { BotApi } from './bot-api.ts';
import { meaningOf, waitSecondsOf, type Fault, type Meaning } from './fault.ts';
import { allowedUpdates } from './incoming.ts';

export type PollState =
  'starting' | 'polling' | 'unreachable' | 'second-copy' | 'token-refused' | 'store-failing' | 'stopped';

export interface PollerDeps {
  readonly api: BotApi;
  readonly log: Log;
  now(): number;
  /** Called for each update as it arrives, before recording. */
  greet(update: unknown): void;
  read(update: unknown): Incoming | null;
  record(incoming: Incoming): Promise<unknown>;
  readonly pollSeconds: number;
  readonly waits: PollWaits;
  /** Told once, as it becomes so, of what only a person can mend. */
  readonly trouble?: (state: Graver) => void;
}

type Graver = Extract<PollState, 'second-copy' | 'token-refused'>;

export interface PollWaits {
  /** After the first failure in a row; doubled up to the longest. */
  readonly firstMs: number;
  readonly longestMs: number;
  /** After another copy took our poll: the newer one is let go on, so that a restart that overlaps ends by itself. */
  readonly conflictMs: number;
  readonly tokenMs: number;
  /** For the last word at a stop. */
  readonly farewellMs: number;
}

export const pollWaits: PollWaits = {
  firstMs: 1000,
  longestMs: 30_000,
  conflictMs: 15_000,
  tokenMs: 60_000,
  farewellMs: 1000,
};

export interface Poller {
  /** Resolves once stopped and the last recorded batch is confirmed, if the server can be reached for it. */
  run(stop: AbortSignal): Promise<void>;
  readonly health: () => { readonly state: PollState; readonly lastPollAt: number | null };
}

/** What only a person can mend. */
const isGraver = (state: PollState): state is Graver => state === 'second-copy' || state === 'token-refused';

/** An answer later than this after the long poll's own end is taken for a dead connection. */
const graceMs = 10_000;

export function makePoller(deps: PollerDeps): Poller {
  let state: PollState = 'starting';
  let lastPollAt: number | null = null;
  // Null when nothing is to be confirmed: then the queue is asked from its oldest, whichever ids it uses now.
  // Ids may start anew, and lower, after an idle week; an old offset would then confirm updates never seen.
  let offset: number | null = null;
  let failures = 0;

  async function pollOnce(stop: AbortSignal): Promise<void> {
    const answer = await deps.api.call(
      'getUpdates',
      {
        ...(offset === null ? {} : { offset }),
        limit: 100,
        timeout: deps.pollSeconds,
        allowed_updates: allowedUpdates,
      },
      { timeoutMs: 1000 * deps.pollSeconds + graceMs, signal: stop },
    );
    if (!answer.ok) return failed(answer.fault, stop);
    if (!Array.isArray(answer.result)) return failed({ kind: 'lost', why: 'garbled' }, stop);
    lastPollAt = deps.now();
    const updates: readonly unknown[] = answer.result;
    for (const update of updates) deps.greet(update);
    if (!(await recordAll(updates))) return rest('store-failing', backoffMs(), stop);
    if (state !== 'polling') deps.log.info('polling Telegram');
    state = 'polling';
    failures = 0;
    offset = offsetAfter(updates);
  }

  /** Each person's in their order, people beside each other; false when any is not durable. */
  async function recordAll(updates: readonly unknown[]): Promise<boolean> {
    const byPerson = new Map<string, Incoming[]>();
    for (const incoming of updates.map((update) => deps.read(update))) {
      if (incoming === null) continue;
      const waiting = byPerson.get(incoming.from);
      if (waiting) waiting.push(incoming);
      else byPerson.set(incoming.from, [incoming]);
    }
    const done = await Promise.allSettled([...byPerson.values()].map(recordInOrder));
    const broken = done.find((one) => one.status === 'rejected');
    if (broken) deps.log.error('an update could not be recorded', errorFields(broken.reason));
    return broken === undefined;
  }

  async function recordInOrder(ofOnePerson: readonly Incoming[]): Promise<void> {
    for (const incoming of ofOnePerson) await deps.record(incoming);
  }

  function failed(fault: Fault, stop: AbortSignal): Promise<void> {
    const { meaning, why } = meaningOf(fault);
    if (meaning === 'stopped') return Promise.resolve();
    const [next, waitMs] = afterFault(meaning, fault);
    deps.log[isGraver(next) ? 'error' : 'warn']('a poll of Telegram failed', { why, state: next, waitMs });
    if (isGraver(next) && next !== state) deps.trouble?.(next);
    return rest(next, waitMs, stop);
  }

  function afterFault(meaning: Meaning, fault: Fault): readonly [next: PollState, waitMs: number] {
    if (meaning === 'conflict') return ['second-copy', deps.waits.conflictMs];
    if (meaning === 'token') return ['token-refused', deps.waits.tokenMs];
    if (meaning === 'wait') return [state, 1000 * waitSecondsOf(fault)];
    return ['unreachable', backoffMs()];
  }

  function backoffMs(): number {
    return Math.min(deps.waits.longestMs, deps.waits.firstMs * 2 ** Math.min(failures++, 20));
  }

  function rest(next: PollState, ms: number, stop: AbortSignal): Promise<void> {
    state = next;
    return pause(ms, stop);
  }

  /**
   * Confirms what was recorded last, so that an orderly restart starts with nothing twice. What it brings stays unconfirmed.
   * The server confirms on arrival and may then hold its answer back for three seconds, so we don't insist on that.
   */
  async function farewell(): Promise<void> {
    if (offset === null) return;
    await deps.api.call('getUpdates', { offset, limit: 1, timeout: 0 }, { timeoutMs: deps.waits.farewellMs });
  }

  return {
    async run(stop) {
      while (!stop.aborted) await pollOnce(stop);
      if (state === 'polling') await farewell();
      state = 'stopped';
    },
    health: () => ({ state, lastPollAt }),
  };
}

function offsetAfter(updates: readonly unknown[]): number | null {
  const ids = updates
    .map((update) => (update as { update_id?: unknown } | null)?.update_id)
    .filter(Number.isSafeInteger);
  return ids.length === 0 ? null : Math.max(...(ids as number[])) + 1;
}

/** Waits, or less when stopped. */
export function pause(ms: number, stop: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    if (stop.aborted) return resolve();
    const end = (): void => {
      clearTimeout(timer);
      stop.removeEventListener('abort', end);
      resolve();
    };
    const timer = setTimeout(end, ms);
    stop.addEventListener('abort', end);
  });
}
