/** The house: a store, a conversation and a delivery put together for whichever channels, and the order in which they start and stop. */
import { randomBytes } from 'node:crypto';
import type { Clock } from './clock.ts';
import type { Step } from './conversation/answer.ts';
import { makeHandling } from './conversation/handle.ts';
import { makeRecord } from './conversation/record.ts';
import type { Sign } from './delivery/calendar.ts';
import { makeDelays } from './delivery/delay.ts';
import { makeDelivering } from './delivery/deliver.ts';
import { makeLoop } from './delivery/loop.ts';
import { makeMorning, type MorningTime } from './delivery/morning.ts';
import { makePace } from './delivery/pace.ts';
import { makePlanning } from './delivery/planning.ts';
import type { Say } from './delivery/render.ts';
import { makeTidying } from './delivery/tidying.ts';
import type { Instant } from './core/units.ts';
import { errorFields, type Log } from './log.ts';
import type { Channel, ChannelName } from './messages.ts';
import type { Keeper, Store } from './store/contract.ts';
import type { LessonPlan } from './store/lesson-contract.ts';
import { makeShopCode } from './store/shop-code.ts';

export interface AppParts {
  readonly store: Store;
  readonly step: Step;
  readonly say: Say;
  /** The name the shop's entries bear in calendars. */
  readonly sign?: Sign;
  readonly channels: readonly Channel[];
  readonly clock: Clock;
  readonly log: Log;
  readonly keepDays: number;
  /** After so many days without a word someone is forgotten; never when 0 or not told. */
  readonly forgetDays?: number;
  /** Those the settings name; none told leaves them as they are. */
  readonly shopkeepers?: readonly Keeper[];
  /** The lessons the shop's files tell of. */
  readonly lessons?: LessonPlan;
  /** When shopkeepers are told what the day brings. */
  readonly morning?: MorningTime | null;
  /** Codes for colleagues; made by chance unless told. */
  readonly freshCode?: () => string;
  /** Does once, for nobody, what the first customer would otherwise wait for. */
  readonly warmUp?: () => Promise<void>;
}

export interface App {
  /** Takes up what was left, then lets people in. */
  start(): Promise<void>;
  /** Resolves when all that came in is handled and all that is due is sent. */
  settled(): Promise<void>;
  /** Stops taking in, finishes what is under way, closes the store. What is not finished in time stays in the store. */
  stop(): Promise<void>;
}

/** A service manager's patience is longer; ours ends here. */
const longestStopMs = 4_000;

export function makeApp(parts: AppParts): App {
  const { store, step: decide, say, channels, clock, log, keepDays, forgetDays = 0, shopkeepers } = parts;
  const names = channels.map(({ name }) => name);
  const byName = new Map<ChannelName, Channel>(channels.map((channel) => [channel.name, channel]));
  const owed = (at: Instant): void => loop.owed(at);
  const later = (at: Instant): void => loop.later(at);
  const delays = makeDelays();
  const pace = makePace();
  const delivering = makeDelivering({
    store,
    channels: byName,
    say,
    sign: parts.sign,
    clock,
    log,
    pace,
    delays,
    later,
  });
  const letters = names.includes('mail');
  const warm = onceAsked(parts.warmUp);
  const freshCode = parts.freshCode ?? (() => makeShopCode(randomBytes));
  const handling = makeHandling({
    store,
    step: decide,
    clock,
    means: { mail: letters, freshCode },
    deliveryMs: delays.usual,
    reserve: delivering.reserve,
    owed,
    later,
    stumbled: (error, tries) => log.error('a step failed', { tries, ...errorFields(error) }),
    troubled: (error) => log.error('handling was put off', errorFields(error)),
    warm: warm.done,
  });
  const loop = makeLoop({ store, channels: names, clock, log, pump: delivering.pump, take: handling.take });
  const record = makeRecord(store, handling);
  const tidying = makeTidying({ store, clock, log, keepDays, forgetDays });
  const plan = parts.lessons ?? { lessons: [], series: [] };
  const planning = makePlanning({ store, clock, log, plan });
  const morning = makeMorning({ store, clock, letters, log, when: parts.morning ?? null, owed });

  const finish = async (): Promise<'finished'> => {
    await Promise.all(channels.map((channel) => channel.stop()));
    tidying.stop();
    planning.stop();
    morning.stop();
    await loop.stop();
    await handling.idle();
    await delivering.stop();
    await store.close();
    return 'finished';
  };
  return {
    async start() {
      if (shopkeepers) await store.appoint(shopkeepers, clock.now());
      await planning.start();
      await loop.start();
      for (const channel of channels) await channel.start(record);
      tidying.start();
      morning.start();
      setImmediate(warm.ask);
    },
    async settled() {
      await loop.rest();
      await handling.idle();
      await delivering.idle();
    },
    async stop() {
      const outcome = await Promise.race([finish(), tooLate(longestStopMs)]);
      if (outcome === 'late') log.warn('stopped before all was finished; the rest is taken up at the next start');
    },
  };
}

/** `done` resolves once it was asked for, however it went. */
function onceAsked(work: () => Promise<void> = async () => {}): {
  readonly ask: () => void;
  readonly done: Promise<void>;
} {
  let ask: (() => void) | undefined;
  const done = new Promise<void>((resolve) => (ask = resolve)).then(work).catch(() => {});
  return { ask: () => ask?.(), done };
}

function tooLate(ms: number): Promise<'late'> {
  return new Promise((resolve) => setTimeout(() => resolve('late'), ms).unref());
}
