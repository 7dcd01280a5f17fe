/** The updates of one bot: kept until confirmed or too old, handed out from an offset, to one poller at a time. */
import type { Update } from 'grammy/types';
import { otherPoller, Refusal } from './refusal.ts';
import type { StandInClock } from './stand-in-clock.ts';

export type UpdateKind = Exclude<keyof Update, 'update_id'>;

interface Entry {
  readonly id: number;
  readonly update: Update;
  readonly expiresAt: number;
}

interface Waiter {
  readonly offset: number;
  readonly limit: number;
  readonly timer: NodeJS.Timeout;
  readonly end: (updates: readonly Update[] | Refusal) => void;
}

/** Offsets further off than this are taken for a mistake, and the queue answers from its oldest (TQueue.cpp). */
const futureSlack = 10;
const pastSlack = 2_000_000;
const conflictDelayMs = 3000;
const hour = 3_600_000;
const unlessAsked: ReadonlySet<string> = new Set(['chat_member', 'message_reaction', 'message_reaction_count']);

/** How long an update waits for a poller. */
export const lifetimeMs = { callback_query: 150_000, other: 24 * hour };

export class UpdateQueue {
  #entries: Entry[] = [];
  #nextId: number;
  #waiter: Waiter | null = null;
  #allowed: ReadonlySet<string> | null = null;
  #lastOffset = Number.NaN;
  #lastAskedAt = -Infinity;
  #nextConflictAt = -Infinity;
  readonly #clock: StandInClock;
  /** How often each update was handed out. */
  readonly handedOut = new Map<number, number>();
  readonly expired: number[] = [];

  constructor(clock: StandInClock, firstId: number) {
    this.#clock = clock;
    this.#nextId = firstId;
  }

  get pending(): readonly number[] {
    this.#dropExpired();
    return this.#entries.map(({ id }) => id);
  }

  /** As after an idle week: the next id is any. Only an empty queue may jump. */
  jumpTo(id: number): void {
    if (this.#entries.length > 0) throw new Error('ids start anew only when nothing waits');
    this.#nextId = id;
  }

  /** Which kinds are kept from now on; an empty list is the default, no list keeps what was. */
  allow(kinds: readonly string[] | undefined): void {
    if (kinds !== undefined) this.#allowed = kinds.length === 0 ? null : new Set(kinds);
  }

  /** The id given, or null when this kind is not asked for. */
  push(kind: UpdateKind, content: unknown): number | null {
    if (this.#allowed ? !this.#allowed.has(kind) : unlessAsked.has(kind)) return null;
    const id = this.#nextId++;
    const life = kind === 'callback_query' ? lifetimeMs.callback_query : lifetimeMs.other;
    const update = { update_id: id, [kind]: content } as unknown as Update;
    this.#entries.push({ id, update, expiresAt: this.#clock.now() + life });
    this.#wake();
    return id;
  }

  /** Confirms what lies below the offset, then answers, waiting up to `timeoutS` for something to come. */
  get(asked: {
    readonly offset: number;
    readonly limit: number;
    readonly timeoutS: number;
  }): Promise<readonly Update[]> {
    const now = this.#clock.now();
    const again = asked.offset === this.#lastOffset;
    const timeoutS = again && asked.timeoutS < 3 && now < this.#lastAskedAt + 3000 ? 3 : asked.timeoutS;
    const limit = again && now < this.#lastAskedAt + 500 ? 1 : asked.limit;
    this.#lastOffset = asked.offset;
    this.#lastAskedAt = now;
    const updates = this.#take(asked.offset, limit);
    if (updates.length > 0 || timeoutS === 0) return Promise.resolve(updates);
    this.#endWaiting();
    return this.#wait(asked.offset, limit, timeoutS);
  }

  /** The oldest, for a webhook, without confirming it. */
  peek(): Update | null {
    this.#dropExpired();
    const [first] = this.#entries;
    if (first) this.#count([first]);
    return first?.update ?? null;
  }

  confirm(id: number): void {
    this.#entries = this.#entries.filter((entry) => entry.id !== id);
  }

  clear(): void {
    this.#entries = [];
  }

  close(): void {
    this.#waiter?.end([]);
    this.#waiter = null;
  }

  #take(offset: number, limit: number): readonly Update[] {
    this.#dropExpired();
    if (offset < 0) this.#entries = this.#entries.slice(offset);
    const sane = offset > 0 && offset <= this.#nextId + futureSlack && offset >= this.#nextId - pastSlack;
    if (sane) this.#entries = this.#entries.filter(({ id }) => id >= offset);
    const given = this.#entries.slice(0, limit);
    this.#count(given);
    return given.map(({ update }) => update);
  }

  #count(entries: readonly Entry[]): void {
    for (const { id } of entries) this.handedOut.set(id, (this.handedOut.get(id) ?? 0) + 1);
  }

  #wait(offset: number, limit: number, timeoutS: number): Promise<readonly Update[]> {
    return new Promise((resolve, reject) => {
      const timer = setTimeout(() => this.#wake(), 1000 * timeoutS);
      const end: Waiter['end'] = (updates) => {
        clearTimeout(timer);
        if (updates instanceof Refusal) reject(updates);
        else resolve(updates);
      };
      this.#waiter = { offset, limit, timer, end };
    });
  }

  #wake(): void {
    const waiter = this.#waiter;
    this.#waiter = null;
    waiter?.end(this.#take(waiter.offset, waiter.limit));
  }

  /** The older poller loses; a second loser within three seconds is told late. */
  #endWaiting(): void {
    const loser = this.#waiter;
    if (!loser) return;
    this.#waiter = null;
    const refusal = new Refusal(409, otherPoller);
    const now = this.#clock.now();
    clearTimeout(loser.timer);
    if (now < this.#nextConflictAt) return void setTimeout(() => loser.end(refusal), conflictDelayMs);
    this.#nextConflictAt = now + conflictDelayMs;
    loser.end(refusal);
  }

  #dropExpired(): void {
    const now = this.#clock.now();
    this.expired.push(...this.#entries.filter(({ expiresAt }) => expiresAt < now).map(({ id }) => id));
    this.#entries = this.#entries.filter(({ expiresAt }) => expiresAt >= now);
  }
}
