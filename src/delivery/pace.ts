/** Who may be sent what, when: a bucket of tokens a chat, and one a channel for what is not urgent. */
import type { Instant } from '../core/units.ts';
import { channelNames, type ChannelName } from '../messages.ts';
import { chatKey, type Address, type Owed, type Room } from '../store/contract.ts';

export interface Rate {
  /** So many at once … */
  readonly burst: number;
  /** … and so many a second after that. */
  readonly perSecond: number;
}

export interface ChannelPace {
  readonly chat: Rate;
  /** Reminders and edits of all chats together; timers and replies are never held by it. */
  readonly bulk: Rate;
}

const free: Rate = { burst: Infinity, perSecond: Infinity };

/**
 * Telegram: about one message a second a chat with short bursts, about 30 a second in bulk (Bot FAQ;
 * exact limits are not published, so we stay below, and bring few at once: what a busy second holds up here arrives there
 * in one lump). Mail: common practice, no source.
 */
export const paces: { readonly [name in ChannelName]: ChannelPace } = {
  terminal: { chat: free, bulk: free },
  web: { chat: free, bulk: free },
  telegram: { chat: { burst: 3, perSecond: 1 }, bulk: { burst: 5, perSecond: 25 } },
  mail: { chat: { burst: 5, perSecond: 0.1 }, bulk: { burst: 5, perSecond: 5 } },
};

export interface Bucket {
  readonly level: number;
  readonly at: Instant;
}

/** What the bucket holds at `now`; an unknown bucket is full. */
export function levelAt(bucket: Bucket | undefined, { burst, perSecond }: Rate, now: Instant): number {
  if (!bucket) return burst;
  // A clock set back must not empty a bucket for ever.
  const elapsed = Math.max(0, now - bucket.at);
  return Math.min(burst, bucket.level + (elapsed / 1000) * perSecond);
}

export function spend(bucket: Bucket | undefined, rate: Rate, now: Instant): Bucket {
  return { level: levelAt(bucket, rate, now) - 1, at: now };
}

/** When the next token is there. */
export function freeAt(bucket: Bucket, rate: Rate, now: Instant): Instant {
  const missing = 1 - levelAt(bucket, rate, now);
  return missing <= 0 ? now : now + Math.ceil((missing / rate.perSecond) * 1000);
}

export interface Pace {
  spent(owed: Owed, now: Instant): void;
  /** The other side asked this chat to wait. */
  pause(address: Address, until: Instant): void;
  /** What this chat may be sent now, when so many others are about to be sent something. */
  roomFor(address: Address, others: number, now: Instant): Room;
  /** Chats and channels that must wait now, and when the first of them need not any more. */
  held(now: Instant): Held;
}

export interface Held {
  readonly chats: ReadonlySet<string>;
  readonly until: Instant | null;
  /** How much that is not urgent each channel may be given now; one that is not named, any number. */
  readonly bulkRoom: ReadonlyMap<ChannelName, number>;
}

/** For the channels at hand. */
export function makePace(names: readonly ChannelName[] = channelNames, rates = paces): Pace {
  const chats = new Map<string, Instant>();
  const buckets = new Map<string, { bucket: Bucket; rate: Rate }>();
  const bulk = new Map<ChannelName, Bucket>();

  const spendOfChat = (key: string, rate: Rate, now: Instant): void => {
    if (rate.burst === Infinity) return;
    const bucket = spend(buckets.get(key)?.bucket, rate, now);
    buckets.set(key, { bucket, rate });
    if (freeAt(bucket, rate, now) > now) chats.set(key, freeAt(bucket, rate, now));
  };
  const dropFull = (now: Instant): void => {
    for (const [key, { bucket, rate }] of buckets) if (levelAt(bucket, rate, now) >= rate.burst) buckets.delete(key);
    for (const [key, until] of chats) if (until <= now) chats.delete(key);
  };
  const bulkUntil = (name: ChannelName, now: Instant): Instant => {
    const bucket = bulk.get(name);
    return bucket ? freeAt(bucket, rates[name].bulk, now) : now;
  };
  const paced = names.filter((name) => rates[name].bulk.burst !== Infinity);
  const bulkRoom = (name: ChannelName, now: Instant): number =>
    Math.floor(levelAt(bulk.get(name), rates[name].bulk, now));

  return {
    spent({ address, priority }, now) {
      const { chat, bulk: rate } = rates[address.channel];
      spendOfChat(chatKey(address), chat, now);
      const urgent = priority === 'timer' || priority === 'reply';
      if (!urgent && rate.burst !== Infinity) bulk.set(address.channel, spend(bulk.get(address.channel), rate, now));
    },
    roomFor(address, others, now) {
      const until = chats.get(chatKey(address));
      if (until !== undefined && until > now) return 'none';
      return bulkRoom(address.channel, now) > others ? 'any' : 'urgent';
    },
    pause: (address, until) => void chats.set(chatKey(address), until),
    held(now) {
      dropFull(now);
      const room = new Map(paced.map((name) => [name, bulkRoom(name, now)]));
      const full = paced.filter((name) => room.get(name) === 0);
      const until = Math.min(...chats.values(), ...full.map((name) => bulkUntil(name, now)));
      return { chats: new Set(chats.keys()), until: until === Infinity ? null : until, bulkRoom: room };
    },
  };
}
