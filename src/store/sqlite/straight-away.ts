/**
 * A saying whose chat is free is put in as being sent: taken for sending in the commit that owes it, in the place of a row
 * that is put in, found again, marked, and read. What it may overtake is what `claims.ts` would let it.
 */
import type { Database } from 'better-sqlite3';
import type { Saying } from '../../core/flow/flow.ts';
import type { Instant, Language } from '../../core/units.ts';
import { priorities, type Address, type Owed, type PersonId, type Priority, type Room } from '../contract.ts';
import { messageId, type Tags } from './message-id.ts';
import { filledAsWritten, type QuoteSources } from './quotes.ts';

export interface StraightAway {
  /** Null, and nothing put in, when something else of this chat goes first, or there is no room for it. */
  take(saying: Straight, room: Room): Taken | null;
  /** As it is to be sent. Asked for when all else of the commit is written, which it may tell of. */
  owed(taken: Taken): Owed;
}

export interface Straight {
  readonly person: PersonId;
  readonly address: Address;
  readonly language: Language;
  readonly saying: Saying;
  readonly priority: Priority;
  readonly due: Instant;
  readonly now: Instant;
}

interface Put {
  readonly seq: number;
  readonly priority: number;
  readonly replaces: string | null;
}

/** A row to put in, and what is asked of it. */
interface Row {
  readonly slot: string | null;
  readonly priority: number;
  readonly [column: string]: string | number | null;
}

export interface Taken extends Put {
  readonly of: Straight;
  readonly tag: string;
  readonly text: string;
}

const edit = priorities.indexOf('edit');
const ofChat = 'channel = @channel AND chat = @chat';
const slotBefore = `EXISTS (SELECT 1 FROM outbox WHERE ${ofChat} AND slot = @slot)`;

/** What was never sent has no turn yet; what is tried again has a later time than it was due. */
const chatIsFree = `NOT EXISTS (SELECT 1 FROM outbox WHERE status = 'sending' AND ${ofChat})
  AND NOT EXISTS (SELECT 1 FROM outbox WHERE status = 'waiting' AND ${ofChat} AND turn IS NULL AND due <= @now)
  AND NOT EXISTS (SELECT 1 FROM outbox INDEXED BY outbox_retry WHERE status = 'waiting' AND ${ofChat} AND next_at > due)`;

const put = (priority: string, condition: string): string =>
  `INSERT INTO outbox (tag, person, channel, chat, saying, slot, name, language, priority, due, next_at, status,
     claimed_at, turn)
   SELECT @tag, @person, @channel, @chat, @saying, @slot, @name, @language, ${priority}, @due, @due, 'sending', @now,
     1 + coalesce((SELECT max(turn) FROM outbox WHERE ${ofChat}), 0)
   WHERE ${chatIsFree} ${condition}`;

export function makeStraightAway(db: Database, freshTag: Tags, sources: QuoteSources): StraightAway {
  const plain = db.prepare(put('@priority', ''));
  const ofSlot = db.prepare<unknown[], Put>(
    `${put(`iif(${slotBefore}, ${edit}, @priority)`, `AND (@mayEdit OR NOT ${slotBefore})`)}
     RETURNING seq, priority, (SELECT ref FROM outbox p WHERE ${ofChat} AND p.slot = @slot AND p.turn < outbox.turn
       AND p.ref IS NOT NULL ORDER BY p.turn DESC LIMIT 1) AS replaces`,
  );
  const putIn = (row: Row): Put | null => {
    if (row.slot !== null) return ofSlot.get(row) ?? null;
    const { changes, lastInsertRowid } = plain.run(row);
    return changes === 0 ? null : { seq: Number(lastInsertRowid), priority: row.priority, replaces: null };
  };
  return {
    take(of, room) {
      if (room === 'none') return null;
      const { person, language, due, now } = of;
      const { slot = null, later } = of.saying;
      const tag = freshTag();
      const text = JSON.stringify(of.saying);
      const found = putIn({
        tag,
        person,
        channel: of.address.channel,
        chat: of.address.chat,
        language,
        due,
        now,
        slot,
        saying: text,
        name: later?.name ?? null,
        priority: priorities.indexOf(of.priority),
        mayEdit: room === 'any' ? 1 : 0,
      });
      return found && { ...found, of, tag, text };
    },
    owed: ({ of: { person, address, language, saying, due, now }, seq, tag, text, priority, replaces }) => ({
      person,
      language,
      due,
      claimedAt: now,
      attempts: 0,
      replaces,
      id: messageId({ seq, tag }),
      address: placeOf(address),
      saying: filledAsWritten({ saying, text }, person, sources),
      priority: priorities[priority] ?? 'reply',
    }),
  };
}

const placeOf = ({ channel, chat }: Address): Address => ({ channel, chat });
