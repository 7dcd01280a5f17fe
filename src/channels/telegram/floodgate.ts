/** Remembers which chats, or all, the server asked us to leave alone, so that no call is spent on a certain refusal. */

type Instant = number;

/** Refusals from this many chats at a time mean that the bot as a whole is too fast. */
const chatsMeaningAll = 2;

export interface Floodgate {
  /** When this chat may be written to again; null when it may now. */
  closedUntil(chat: string, now: Instant): Instant | null;
  /** The server refused a message to this chat until then. */
  refused(chat: string, until: Instant, now: Instant): void;
}

export function makeFloodgate(): Floodgate {
  const until = new Map<string, Instant>();
  let allUntil = 0;
  const forgetPast = (now: Instant): void => {
    for (const [chat, end] of until) if (end <= now) until.delete(chat);
  };
  return {
    closedUntil(chat, now) {
      const end = Math.max(allUntil, until.get(chat) ?? 0);
      return end > now ? end : null;
    },
    refused(chat, end, now) {
      forgetPast(now);
      until.set(chat, Math.max(end, until.get(chat) ?? 0));
      if (until.size >= chatsMeaningAll) allUntil = Math.max(allUntil, end);
    },
  };
}
