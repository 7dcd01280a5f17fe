/** Remembers which chats the server asked us to leave alone, and queues everybody when it means the bot as a whole. */

type Instant = number;

/** Refusals from this many chats at a time mean that the bot as a whole is too fast. */
const chatsMeaningAll = 2;
/** Then messages go one after another, at 25 a second: below the 30 of the Bot FAQ. */
const spacingMs = 40;
/** A message that would wait longer in the queue is handed back. */
const longestQueueMs = 5000;

export interface Floodgate {
  /** When this message may go; taking the place, if `goes`. */
  enter(chat: string, now: Instant): { readonly at: Instant; readonly goes: boolean };
  /** The server refused a message to this chat until then. */
  refused(chat: string, until: Instant, now: Instant): void;
}

export function makeFloodgate(): Floodgate {
  const closed = new Map<string, Instant>();
  /** When the next in the queue goes; past when there is none. */
  let nextAt = 0;
  return {
    enter(chat, now) {
      const until = closed.get(chat) ?? 0;
      if (until > now) return { at: until, goes: false };
      if (nextAt <= now) return { at: now, goes: true };
      const at = nextAt;
      if (at - now > longestQueueMs) return { at, goes: false };
      nextAt += spacingMs;
      return { at, goes: true };
    },
    refused(chat, until, now) {
      for (const [other, end] of closed) if (end <= now) closed.delete(other);
      closed.set(chat, Math.max(until, closed.get(chat) ?? 0));
      if (closed.size >= chatsMeaningAll) nextAt = Math.max(nextAt, until);
    },
  };
}
