/** Messages owed: put in, withdrawn, and what became of each. Taking them out is in claims.ts. */
import type { Database } from 'better-sqlite3';
import type { Saying } from '../../core/flow/flow.ts';
import type { Instant, Language } from '../../core/units.ts';
import { priorities, type Address, type PersonId, type Priority, type Settlement } from '../contract.ts';
import { idParts, type Tags } from './message-id.ts';

export interface Owing {
  /** Null for a last word: it is dropped once settled. */
  readonly person: PersonId | null;
  readonly address: Address;
  readonly saying: Saying;
  readonly due: Instant;
  readonly priority: Priority;
  /** Never stale: it waits for a person who cannot be reached. */
  readonly lasting?: boolean;
  /** Needed only where no conversation tells it. */
  readonly language?: Language | null;
  /** After this it is of no use. */
  readonly until?: Instant | null;
}

/** Who a given-up message was for. */
export interface GivenUp {
  readonly person: PersonId | null;
  readonly why: string;
  /** What it was about, as it is written down; null where a message has no line for that. */
  readonly about: string | null;
}

export interface Outbox {
  add(owing: Owing): void;
  withdraw(person: PersonId, name: string): void;
  /** True when one of this name was not sent yet: a later message says the same. */
  overtake(person: PersonId, name: string, now: Instant): boolean;
  /** Of a message to someone; false when it was a last word, or is not being sent. */
  sent(id: string, ref: string, now: Instant): boolean;
  /** Whom the shop must be told of because the message being sent to them has no words. */
  wordlessOf(id: string): readonly GivenUp[];
  /** Returns whom the shop must be told of. */
  settle(id: string, settlement: Settlement, now: Instant): readonly GivenUp[];
  /** Sendings cut off half-way: they may have arrived. */
  doubtCutOff(channels: string, now: Instant): { readonly count: number; readonly givenUp: readonly GivenUp[] };
  begin(id: string): void;
  /** Sendings cut off where a repeat does no harm, and those of any channel that had not begun. Returns how many. */
  waitAgain(where: { readonly channels: string; readonly harmless: string }): number;
  /** A last word that is settled; true when it was one. */
  dropLastWord(id: string): boolean;
  dropLastWords(): boolean;
  addressOf(id: string): Address | undefined;
  /** What was to be tried again in this chat is tried now: whoever writes can be reached. */
  hurry(address: Address, now: Instant): void;
  /** Keeps back what waits for a chat that cannot be reached. */
  hold(address: Address): void;
  /** The person is back: what was due meanwhile is given up, the rest waits again. */
  release(address: Address, now: Instant): void;
  prune(before: Instant): number;
}

const cutOff = 'cut off while sending';
export const notReached = 'could not be reached';
const returned = `person, why, saying -> '$.subject' AS about`;

export function makeOutbox(db: Database, freshTag: Tags): Outbox {
  const add = db.prepare(
    `INSERT INTO outbox (tag, person, channel, chat, saying, slot, name, lasting, language, until, priority, due, next_at,
       status)
     VALUES (@tag, @person, @channel, @chat, @saying, @slot, @name, @lasting, @language, @until,
       iif(@slot IS NOT NULL AND EXISTS (SELECT 1 FROM outbox
         WHERE channel = @channel AND chat = @chat AND slot = @slot), ${priorities.indexOf('edit')}, @priority),
       @due, @due,
       iif(EXISTS (SELECT 1 FROM handle WHERE channel = @channel AND chat = @chat AND reachable = 0), 'held', 'waiting'))`,
  );
  const withdraw = db.prepare<[PersonId, string]>(
    `UPDATE outbox SET unwanted = 1, status = iif(status = 'sending', 'sending', 'withdrawn')
     WHERE person = ? AND name = ? AND status IN ('waiting', 'held', 'sending')`,
  );
  const overtake = db.prepare<[Instant, PersonId, string]>(
    `UPDATE outbox SET status = 'overtaken', settled_at = ?
     WHERE person = ? AND name = ? AND status IN ('waiting', 'held')`,
  );
  const sent = db.prepare(
    `UPDATE outbox SET status = 'sent', ref = @ref, settled_at = @now
     WHERE seq = @seq AND tag = @tag AND status = 'sending'`,
  );
  const sentToSomeone = db.prepare(`${sent.source} AND person IS NOT NULL`);
  // What it was about may be what has no words.
  const wordlessOf = db.prepare<unknown[], GivenUp>(
    `SELECT person, 'no words' AS why, NULL AS about FROM outbox WHERE seq = @seq AND tag = @tag AND status = 'sending'`,
  );
  const retry = db.prepare(
    `UPDATE outbox SET status = iif(unwanted, 'withdrawn', 'waiting'), attempts = attempts + 1,
       next_at = @at, why = @why, settled_at = @now
     WHERE seq = @seq AND tag = @tag AND status = 'sending'`,
  );
  // A second doubt could be a third copy: it ends here.
  const doubtful = `UPDATE outbox SET doubts = doubts + 1, next_at = @at, why = @why, settled_at = @now,
       status = CASE WHEN unwanted THEN 'withdrawn' WHEN doubts > 0 THEN 'gave-up' ELSE 'waiting' END`;
  const doubt = db.prepare<unknown[], GivenUp & { status: string }>(
    `${doubtful} WHERE seq = @seq AND tag = @tag AND status = 'sending' RETURNING ${returned}, status`,
  );
  const doubtAll = db.prepare<unknown[], GivenUp & { status: string }>(
    `${doubtful} WHERE status = 'sending' AND channel IN (SELECT value FROM json_each(@channels))
     RETURNING ${returned}, status`,
  );
  const waitAgain = db.prepare(
    `UPDATE outbox SET status = iif(unwanted, 'withdrawn', 'waiting')
     WHERE status = 'sending' AND channel IN (SELECT value FROM json_each(iif(begun, @harmless, @channels)))`,
  );
  const begin = db.prepare(`UPDATE outbox SET begun = 1 WHERE seq = @seq AND tag = @tag AND status = 'sending'`);
  const giveUp = db.prepare<unknown[], GivenUp>(
    `UPDATE outbox SET status = 'gave-up', why = @why, settled_at = @now
     WHERE seq = @seq AND tag = @tag AND status = 'sending' RETURNING ${returned}`,
  );
  const addressOf = db.prepare<unknown[], Address>('SELECT channel, chat FROM outbox WHERE seq = @seq AND tag = @tag');
  const hold = db.prepare(
    `UPDATE outbox SET status = 'held' WHERE channel = @channel AND chat = @chat AND status = 'waiting'`,
  );
  const holdLasting = db.prepare<unknown[], GivenUp>(
    `UPDATE outbox SET status = 'held', why = @why, settled_at = @now
     WHERE seq = @seq AND tag = @tag AND status = 'sending' AND lasting = 1
     RETURNING person, '${notReached}' AS why, saying -> '$.subject' AS about`,
  );
  const hurry = db.prepare(
    `UPDATE outbox SET next_at = max(due, @now) WHERE channel = @channel AND chat = @chat AND status = 'waiting'
       AND next_at > due AND next_at > @now`,
  );
  const dropLastWord = db.prepare(
    `DELETE FROM outbox WHERE seq = @seq AND tag = @tag AND person IS NULL AND status NOT IN ('waiting', 'sending')`,
  );
  const dropLastWords = db.prepare(`DELETE FROM outbox WHERE person IS NULL AND status NOT IN ('waiting', 'sending')`);
  const release = db.prepare(
    `UPDATE outbox SET status = iif(due > @now OR lasting, 'waiting', 'gave-up'), settled_at = @now,
       why = '${notReached}'
     WHERE channel = @channel AND chat = @chat AND status = 'held'`,
  );
  const prune = db.prepare<[number, number]>(
    `DELETE FROM outbox WHERE status NOT IN ('waiting', 'held', 'sending') AND coalesce(settled_at, due) < ?
       AND seq < coalesce((SELECT seq FROM outbox WHERE due >= ? ORDER BY seq LIMIT 1), 9e15)`,
  );
  const givenUp = (rows: readonly (GivenUp & { status: string })[]): readonly GivenUp[] =>
    rows.filter((row) => row.status === 'gave-up');

  return {
    add({ person, address, saying, due, priority, lasting = false, language = null, until = null }) {
      const { slot = null, later } = saying;
      add.run({
        ...placeOf(address),
        person,
        language,
        until,
        lasting: lasting ? 1 : 0,
        slot,
        due,
        name: later?.name ?? null,
        saying: JSON.stringify(saying),
        tag: freshTag(),
        priority: priorities.indexOf(priority),
      });
    },
    begin: (id) => void begin.run(idParts(id)),
    withdraw: (person, name) => void withdraw.run(person, name),
    overtake: (person, name, now) => overtake.run(now, person, name).changes > 0,
    sent(id, ref, now) {
      const { seq, tag } = idParts(id);
      return sentToSomeone.run({ seq, tag, ref, now }).changes === 1;
    },
    wordlessOf: (id) => wordlessOf.all(idParts(id)),
    settle(id, settlement, now) {
      const row = { ...idParts(id), ...settlement, now };
      if (settlement.kind === 'doubt') return givenUp(doubt.all(row));
      if (settlement.kind === 'give-up') return giveUp.all(row);
      const held = settlement.kind === 'unreachable' ? holdLasting.all(row) : [];
      // It waits for them to come back. What it tells of may not: that is for the shop to tell them.
      if (held.length > 0) return held.filter(({ about }) => about !== null);
      const plain = { sent, retry, unreachable: giveUp };
      plain[settlement.kind].run(row);
      return [];
    },
    doubtCutOff(channels, now) {
      const rows = doubtAll.all({ channels, now, at: now, why: cutOff });
      return { count: rows.length, givenUp: givenUp(rows) };
    },
    waitAgain: (where) => waitAgain.run(where).changes,
    dropLastWord: (id) => dropLastWord.run(idParts(id)).changes > 0,
    dropLastWords: () => dropLastWords.run().changes > 0,
    addressOf: (id) => addressOf.get(idParts(id)),
    hurry: (address, now) => void hurry.run({ ...placeOf(address), now }),
    hold: (address) => void hold.run(placeOf(address)),
    release: (address, now) => void release.run({ ...placeOf(address), now }),
    prune: (before) => prune.run(before, before).changes,
  };
}

const placeOf = ({ channel, chat }: Address): Address => ({ channel, chat });
