/** How fast Telegram may be written to, for whoever schedules the sending. */

export interface Pace {
  readonly overallPerSecond: number;
  readonly perChatPerSecond: number;
  /** How many to one chat may go at once before its rate holds. */
  readonly perChatBurst: number;
}

/**
 * Bot FAQ: about 30 messages a second in all, one a second to a chat, short bursts pass. The exact limits are not published;
 * three as a burst is common practice, no source.
 */
export const telegramPace: Pace = { overallPerSecond: 30, perChatPerSecond: 1, perChatBurst: 3 };
