/** Knows when to look: at the next due instant, whenever told of an earlier one, and at the latest after a minute. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import { errorFields, type Log } from '../log.ts';
import type { ChannelName } from '../messages.ts';
import type { PersonId, Store } from '../store/contract.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { repeatsDoNoHarm } from './retry.ts';

export interface Loop {
  /** Takes up what a former process left, and begins to look. */
  start(): Promise<void>;
  /** Something is to be sent at this instant. */
  owed(due: Instant): void;
  /** Something of any kind falls due at this instant, and is looked for then; at once when it has passed. */
  later(due: Instant): void;
  /** Resolves when it has looked at all it was asked to look at. */
  rest(): Promise<void>;
  stop(): Promise<void>;
}

export interface LoopParts {
  readonly store: Store;
  readonly channels: readonly ChannelName[];
  readonly clock: Clock;
  readonly log: Log;
  /** Sends what is due. */
  readonly pump: () => void;
  /** Handles what waits of a person. */
  readonly take: (person: PersonId) => Promise<void>;
}

/** Independent of anything told: a lost word or a stepped clock costs at most this. */
const backstopMs = 60_000;
const afterTroubleMs = 1_000;
const peopleAtOnce = 64;
/** So few that nobody else waits long for the one transaction they share. */
const lessonsAtOnce = 64;

export function makeLoop(parts: LoopParts): Loop {
  const { store, channels, clock, log, pump } = parts;
  let armed: { readonly at: Instant; readonly cancel: () => void } | null = null;
  let stopped = false;

  const arm = (at: Instant): void => {
    if (stopped || (armed && armed.at <= at)) return;
    armed?.cancel();
    armed = { at, cancel: clock.wakeAt(at, ring) };
  };
  const ring = (): void => {
    armed = null;
    looking.ask();
  };
  const look = async (): Promise<void> => {
    if (stopped) return;
    try {
      pump();
      const now = clock.now();
      const tended = await tendAll(parts);
      const taken = await takeAll(parts);
      arm(clock.now() + (tended && taken ? backstopMs : afterTroubleMs));
      arm((await store.nextDue(channels, now)) ?? Infinity);
    } catch (error) {
      log.error('could not look for what is due', errorFields(error));
      arm(clock.now() + afterTroubleMs);
    }
  };
  const looking = oneAtATime(look);
  return {
    async start() {
      const found = await store.recover(
        channels,
        channels.filter((name) => repeatsDoNoHarm[name]),
        clock.now(),
      );
      if (found.doubtful + found.waiting > 0) log.info('taken up again', { ...found });
      looking.ask();
    },
    owed(due) {
      if (due <= clock.now()) pump();
      else arm(due);
    },
    later: arm,
    rest: () => looking.rest(),
    async stop() {
      stopped = true;
      armed?.cancel();
      await looking.rest();
    },
  };
}

/** Hands over what falls due of lessons. False when that went wrong: nobody else is to wait for it. */
async function tendAll({ store, clock, log, pump }: LoopParts): Promise<boolean> {
  try {
    for (;;) {
      const tended = await store.tend(clock.now(), lessonsAtOnce);
      if (tended > 0) pump();
      if (tended < lessonsAtOnce) return true;
    }
  } catch (error) {
    log.error('lessons could not be tended', errorFields(error));
    return false;
  }
}

/** False when some could not be handled. */
async function takeAll({ store, channels, clock, log, take }: LoopParts): Promise<boolean> {
  for (;;) {
    const people = await store.awaiting(channels, clock.now(), peopleAtOnce);
    const results = await Promise.allSettled(people.map((person) => take(person)));
    const failed = results.filter((result) => result.status === 'rejected');
    for (const { reason } of failed) log.error('could not be handled', errorFields(reason));
    if (failed.length > 0) return false;
    if (people.length < peopleAtOnce) return true;
  }
}
