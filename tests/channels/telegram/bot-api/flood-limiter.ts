/** Answers 429 to who writes too fast: so many to one chat, so many in all. */
import { tooMany } from './refusal.ts';

export interface FloodLimits {
  readonly overallPerSecond: number;
  readonly perChatPerSecond: number;
  readonly perChatBurst: number;
}

/** The published rates with bursts of a second overall and of three to one chat. */
export const publishedLimits: FloodLimits = { overallPerSecond: 30, perChatPerSecond: 1, perChatBurst: 3 };

export const countedMethods: ReadonlySet<string> = new Set([
  'sendmessage',
  'sendphoto',
  'editmessagetext',
  'editmessagecaption',
]);

interface Bucket {
  left: number;
  at: number;
}

export class FloodLimiter {
  readonly #limits: FloodLimits;
  readonly #now: () => number;
  readonly #chats = new Map<string, Bucket>();
  readonly #all: Bucket;

  constructor(limits: FloodLimits, now: () => number) {
    this.#limits = limits;
    this.#now = now;
    this.#all = { left: limits.overallPerSecond, at: now() };
  }

  /** Throws the 429; a refused call costs nothing more. */
  pass(chat: string): void {
    const { overallPerSecond, perChatPerSecond, perChatBurst } = this.#limits;
    const now = this.#now();
    const own = this.#chats.get(chat) ?? { left: perChatBurst, at: now };
    this.#chats.set(chat, own);
    refill(own, perChatPerSecond, perChatBurst, now);
    refill(this.#all, overallPerSecond, overallPerSecond, now);
    if (own.left < 1) throw tooMany(Math.ceil((1 - own.left) / perChatPerSecond));
    if (this.#all.left < 1) throw tooMany(Math.ceil((1 - this.#all.left) / overallPerSecond));
    own.left--;
    this.#all.left--;
  }
}

function refill(bucket: Bucket, perSecond: number, most: number, now: number): void {
  bucket.left = Math.min(most, bucket.left + ((now - bucket.at) / 1000) * perSecond);
  bucket.at = now;
}
