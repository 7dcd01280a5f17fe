/** Pays what is owed: takes what is due, puts it into words, sends it, and writes down what became of it. */
import type { Clock } from '../clock.ts';
import type { Instant } from '../core/units.ts';
import { errorFields, type Log } from '../log.ts';
import type { Channel, ChannelName, Outgoing, Sent } from '../messages.ts';
import type { Address, Owed, Room, Settlement, Store } from '../store/contract.ts';
import type { Sign } from './calendar.ts';
import type { Delays } from './delay.ts';
import { oneAtATime } from './one-at-a-time.ts';
import type { Pace } from './pace.ts';
import { render, renderWordless, type Say } from './render.ts';
import { settlementOf } from './retry.ts';

export interface Delivering {
  /** Room for one message to this chat, kept free until it is given back. */
  readonly reserve: (address: Address) => Reserved;
  /** Looks for what is due now. */
  readonly pump: () => void;
  /** Resolves when nothing that is due and free to go is left, nor under way. */
  idle(): Promise<void>;
  /** Takes nothing more; resolves when what is under way is settled. */
  stop(): Promise<void>;
}

export interface Reserved {
  readonly room: Room;
  /** Sends what was taken, or gives the room back. */
  readonly use: (taken: Owed | null) => void;
}

export interface DeliveringParts {
  readonly store: Store;
  readonly channels: ReadonlyMap<ChannelName, Channel>;
  readonly say: Say;
  readonly sign?: Sign | undefined;
  readonly clock: Clock;
  readonly log: Log;
  readonly pace: Pace;
  readonly delays: Delays;
  /** Something is to be tried again at this instant. */
  readonly later: (at: Instant) => void;
}

/** Sendings under way at once: bounds what an unclean death leaves in doubt. */
const mostUnderWay = 128;
/** A channel that has not answered by then may or may not have sent. */
const longestSendMs = 60_000;

export function makeDelivering(parts: DeliveringParts): Delivering {
  const { store, channels, clock, log, pace } = parts;
  const names = [...channels.keys()];
  const underWay = new Set<Promise<void>>();
  let reserved = 0;
  /** Something may wait that is free to go once a sending under way has ended. */
  let isMore = false;
  let stopped = false;
  let cancelRelease: (() => void) | null = null;

  const start = (owed: Owed): void => {
    pace.spent(owed, clock.now());
    const run = deliverOne(parts, owed)
      .catch((error: unknown) => log.error('sending was not written down', errorFields(error)))
      .finally(() => {
        underWay.delete(run);
        if (isMore) claiming.ask();
      });
    underWay.add(run);
  };
  const claim = async (): Promise<void> => {
    if (stopped) return;
    const { chats, bulkRoom, until } = pace.held(clock.now());
    const limit = mostUnderWay - underWay.size - reserved;
    isMore = true;
    if (limit <= 0) return;
    cancelRelease?.();
    cancelRelease = until === null ? null : clock.wakeAt(until, claiming.ask);
    const owed = await store.claim({ channels: names, now: clock.now(), limit, held: chats, bulkRoom });
    owed.forEach(start);
    isMore = underWay.size > 0;
    if (owed.length === limit) claiming.ask();
  };
  const claiming = oneAtATime(() =>
    claim().catch((error: unknown) => log.error('nothing could be taken for sending', errorFields(error))),
  );
  const idle = async (): Promise<void> => {
    while (claiming.busy() || underWay.size > 0) {
      await claiming.rest();
      await Promise.all(underWay);
    }
  };
  const reserve = (address: Address): Reserved => {
    const isFull = stopped || underWay.size + reserved >= mostUnderWay;
    const room = isFull ? 'none' : pace.roomFor(address, reserved, clock.now());
    reserved += 1;
    return {
      room,
      use(taken) {
        reserved -= 1;
        if (taken) start(taken);
        else if (isMore) claiming.ask();
      },
    };
  };
  return {
    reserve,
    pump: claiming.ask,
    idle,
    stop() {
      stopped = true;
      cancelRelease?.();
      return idle();
    },
  };
}

async function deliverOne(parts: DeliveringParts, owed: Owed): Promise<void> {
  const { store, clock, log, pace, delays, later } = parts;
  const worded = inWords(parts, owed);
  const sent: Sent = worded ? await send(parts, owed, worded.message) : { outcome: 'refused', why: 'no words' };
  if (sent.outcome === 'sent') delays.took(owed.address.channel, clock.now() - owed.claimedAt);
  if (sent.outcome === 'retry' && sent.notBefore) pace.pause(owed.address, sent.notBefore);
  const outcome = settlementOf(owed, sent, clock.now());
  const settlement: Settlement =
    outcome.kind === 'sent' && worded?.isWordless ? { ...outcome, wordless: true } : outcome;
  if (settlement.kind !== 'sent') tellLog(log, owed, settlement);
  await store.settle(owed.id, settlement, clock.now());
  if (settlement.kind === 'retry' || settlement.kind === 'doubt') later(settlement.at);
}

interface Worded {
  readonly message: Outgoing;
  readonly isWordless: boolean;
}

/** A message whose words fail says so, in its place: who waits for it hears something, and the shop of it. Null when it cannot. */
function inWords({ say, sign, log }: DeliveringParts, owed: Owed): Worded | null {
  try {
    return { message: render(say, owed, sign), isWordless: false };
  } catch (error) {
    log.error('message has no words', { key: owed.saying.phrases[0]?.key, ...errorFields(error) });
  }
  try {
    return { message: renderWordless(say, owed), isWordless: true };
  } catch (error) {
    log.error('not even that can be said', errorFields(error));
    return null;
  }
}

async function send({ store, channels, clock, log }: DeliveringParts, owed: Owed, message: Outgoing): Promise<Sent> {
  const channel = channels.get(owed.address.channel);
  if (!channel) throw new Error('claimed only for channels at hand');
  const limit = timeLimit(clock);
  try {
    return await Promise.race([channel.send(message, () => store.begin(owed.id)), limit.reached]);
  } catch (error) {
    log.error('channel failed', { channel: owed.address.channel, ...errorFields(error) });
    return { outcome: 'unknown', why: 'channel failed' };
  } finally {
    limit.cancel();
  }
}

function timeLimit(clock: Clock): { readonly reached: Promise<Sent>; readonly cancel: () => void } {
  let reach: (sent: Sent) => void;
  const reached = new Promise<Sent>((resolve) => (reach = resolve));
  const at = clock.now() + longestSendMs;
  return { reached, cancel: clock.wakeAt(at, () => reach({ outcome: 'unknown', why: 'no answer in time' })) };
}

function tellLog(log: Log, { id, address, attempts }: Owed, settlement: Settlement): void {
  log.warn('message not sent', { id, channel: address.channel, attempts, outcome: settlement.kind });
}
