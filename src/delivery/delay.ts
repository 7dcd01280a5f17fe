/** How long a channel takes to bring a message to a person: the median of its last sendings. */
import type { ChannelName } from '../messages.ts';

export interface Delays {
  /** One sending took so long, in milliseconds. */
  readonly took: (channel: ChannelName, ms: number) => void;
  /** In milliseconds; 0 as long as nothing was sent. */
  readonly usual: (channel: ChannelName) => number;
}

/** Enough for one slow answer not to move the median, few enough to follow a network that changes. */
const lastOnes = 31;
/** Judgement: behind a slower network than this, a call that comes early would mislead more than one that comes late. */
const longestMs = 5_000;

export function makeDelays(): Delays {
  const sendings = new Map<ChannelName, readonly number[]>();
  return {
    took(channel, ms) {
      const before = sendings.get(channel) ?? [];
      sendings.set(channel, [...before, Math.max(0, ms)].slice(-lastOnes));
    },
    usual(channel) {
      const sorted = (sendings.get(channel) ?? []).toSorted((a, b) => a - b);
      return Math.min(sorted[Math.floor(sorted.length / 2)] ?? 0, longestMs);
    },
  };
}
