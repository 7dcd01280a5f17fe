/** The composition root: the only file that knows every part, and the order in which they start and stop. */
import type { Clock } from './clock.ts';
import type { Step } from './conversation/answer.ts';
import { makeHandling } from './conversation/handle.ts';
import { makeRecord } from './conversation/record.ts';
import { makeDelivering } from './delivery/deliver.ts';
import { makeLoop } from './delivery/loop.ts';
import { makePace } from './delivery/pace.ts';
import { render, type Say } from './delivery/render.ts';
import type { Instant } from './core/units.ts';
import { errorFields, type Log } from './log.ts';
import type { Channel, ChannelName, Outgoing } from './messages.ts';
import type { Address, Store } from './store/contract.ts';

export interface AppParts {
  readonly store: Store;
  readonly step: Step;
  readonly say: Say;
  readonly channels: readonly Channel[];
  readonly clock: Clock;
  readonly log: Log;
  readonly keepDays: number;
}

export interface App {
  /** Takes up what was left, then lets people in. */
  start(): Promise<void>;
  /** Resolves when all that came in is handled and all that is due is sent. */
  settled(): Promise<void>;
  /** Stops taking in, finishes what is under way, closes the store. What is not finished in time stays in the store. */
  stop(): Promise<void>;
}

const pruneEveryMs = 6 * 60 * 60_000;
const dayMs = 24 * 60 * 60_000;
/** A service manager's patience is longer; ours ends here. */
const longestStopMs = 4_000;

export function makeApp({ store, step, say, channels, clock, log, keepDays }: AppParts): App {
  const names = channels.map(({ name }) => name);
  const byName = new Map<ChannelName, Channel>(channels.map((channel) => [channel.name, channel]));
  const later = (at: Instant): void => loop.owed(at);
  const delivering = makeDelivering({ store, channels: byName, say, clock, log, pace: makePace(), later });
  const handling = makeHandling({
    store,
    step,
    clock,
    owed: later,
    stumbled: (error, tries) => log.error('a step failed', { tries, ...errorFields(error) }),
  });
  const loop = makeLoop({ store, channels: names, clock, log, pump: delivering.pump, take: handling.take });
  const record = makeRecord({
    store,
    take: handling.take,
    troubled: (error) => log.error('handling was put off', errorFields(error)),
  });
  const tidying = makeTidying({ store, clock, log, keepDays });

  const finish = async (): Promise<'finished'> => {
    await Promise.all(channels.map((channel) => channel.stop()));
    tidying.stop();
    await loop.stop();
    await handling.idle();
    await delivering.stop();
    await store.close();
    return 'finished';
  };
  return {
    async start() {
      await loop.start();
      for (const channel of channels) await channel.start(record);
      tidying.start();
    },
    async settled() {
      await handling.idle();
      await delivering.idle();
    },
    async stop() {
      const outcome = await Promise.race([finish(), tooLate(longestStopMs)]);
      if (outcome === 'late') log.warn('stopped before all was finished; the rest is taken up at the next start');
    },
  };
}

/** What a chat was sent after a message, in the words it was sent in. */
export function makeHistory(store: Store, say: Say, log: Log) {
  return async (address: Address, after: string | null): Promise<readonly Outgoing[]> => {
    const owed = await store.history(address, after);
    return owed.flatMap((one) => {
      try {
        return [render(say, one)];
      } catch (error) {
        // Its sentence left the words since: better a gap than no history.
        log.warn('an old message has no words any more', errorFields(error));
        return [];
      }
    });
  };
}

function tooLate(ms: number): Promise<'late'> {
  return new Promise((resolve) => setTimeout(() => resolve('late'), ms).unref());
}

function makeTidying({ store, clock, log, keepDays }: Pick<AppParts, 'store' | 'clock' | 'log' | 'keepDays'>) {
  let cancel: (() => void) | null = null;
  const tidy = (): void => {
    arm();
    store
      .prune(clock.now() - keepDays * dayMs)
      .then((rows) => log.info('old rows are gone', { rows }))
      .catch((error: unknown) => log.error('old rows could not be dropped', errorFields(error)));
  };
  const arm = (): void => {
    cancel = clock.wakeAt(clock.now() + pruneEveryMs, tidy);
  };
  return { start: arm, stop: () => cancel?.() };
}
