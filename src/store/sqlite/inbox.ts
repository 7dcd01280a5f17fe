/** What arrived, once each, and whether it was handled. */
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { ChannelName, Incoming, What } from '../../messages.ts';
import type { Heard, PersonId } from '../contract.ts';
import { lineDigest } from '../line-name.ts';
import { idParts } from './message-id.ts';

export interface Arrived {
  readonly seq: number;
  readonly channel: ChannelName;
  readonly chat: string;
  readonly receivedAt: Instant;
  readonly what: What;
  readonly tries: number;
}

interface InboxRow extends Omit<Arrived, 'what'> {
  readonly what: string;
}

export interface Inbox {
  /** Whether it came before, from this person or from someone forgotten since. */
  seen(key: Buffer, person: PersonId | null): { readonly person: PersonId | null } | undefined;
  /** Returns its number. */
  add(person: PersonId, key: Buffer, incoming: Incoming, status: 'waiting' | 'handled' | 'failed'): number;
  /** It was not handled after all. */
  putBack(seq: number, status: 'waiting' | 'failed'): void;
  oldest(person: PersonId): Arrived | undefined;
  /** What came by this channel since a message was sent, or all of it; the last few hundred, oldest first. */
  heard(person: PersonId, channel: ChannelName, after: string | null): readonly Heard[];
  /** False when it is no longer waiting. */
  close(seq: number, outcome: 'handled' | 'failed'): boolean;
  tried(seq: number): void;
  /** Counts what waits, and marks it as tried once. */
  suspect(channels: string): number;
  prune(before: Instant): number;
}

/** As many as of the messages that are told again. */
const heardLimit = 300;

export function makeInbox(db: Database): Inbox {
  const seen = db.prepare<unknown[], { person: PersonId | null }>(
    `SELECT person FROM inbox WHERE person = @person AND update_key = @key
     UNION ALL SELECT person FROM inbox WHERE person IS NULL AND update_key = @key`,
  );
  const add = db.prepare(
    `INSERT INTO inbox (channel, update_key, person, chat, received_at, what, status)
     VALUES (@channel, @updateKey, @person, @chat, @receivedAt, @what, @status)`,
  );
  const oldest = db.prepare<[PersonId], InboxRow>(
    `SELECT seq, channel, chat, received_at AS receivedAt, what, tries FROM inbox
     WHERE person = ? AND status = 'waiting' ORDER BY seq LIMIT 1`,
  );
  const heard = db.prepare<unknown[], { updateKey: Buffer; receivedAt: Instant; what: string }>(
    `SELECT update_key AS updateKey, received_at AS receivedAt, what FROM inbox
     WHERE person = @person AND channel = @channel
       AND received_at >= coalesce((SELECT claimed_at FROM outbox WHERE seq = @seq AND tag = @tag AND person = @person), 0)
     ORDER BY seq DESC LIMIT ${heardLimit}`,
  );
  const close = db.prepare<[string, number]>(`UPDATE inbox SET status = ? WHERE seq = ? AND status = 'waiting'`);
  const putBack = db.prepare<[string, number]>('UPDATE inbox SET status = ? WHERE seq = ?');
  const tried = db.prepare<[number]>('UPDATE inbox SET tries = tries + 1 WHERE seq = ?');
  const suspect = db.prepare<[string]>(
    `UPDATE inbox SET tries = max(tries, 1)
     WHERE status = 'waiting' AND channel IN (SELECT value FROM json_each(?))`,
  );
  // Rows grow older with their number, so the first young one ends the search. Of the last one
  // its number stays, and nothing else: bookings and questions bear the numbers of what they came with, and none may be
  // given twice. Its key goes too, for a key without a person tells a restore that someone was forgotten.
  const prune = db.prepare<[number, number]>(
    `DELETE FROM inbox WHERE status <> 'waiting' AND received_at < ? AND seq <
       coalesce((SELECT seq FROM inbox WHERE received_at >= ? ORDER BY seq LIMIT 1), (SELECT max(seq) FROM inbox))`,
  );
  const emptyLast = db.prepare<[number]>(
    `UPDATE inbox SET person = NULL, chat = NULL, what = NULL, update_key = randomblob(16)
     WHERE seq = (SELECT max(seq) FROM inbox) AND status <> 'waiting' AND received_at < ? AND what IS NOT NULL`,
  );

  return {
    seen: (key, person) => seen.get({ key, person }),
    add: (person, updateKey, incoming, status) => {
      const { channel, chat, receivedAt, what } = incoming;
      const { lastInsertRowid } = add.run({
        channel,
        updateKey,
        person,
        chat,
        receivedAt,
        what: JSON.stringify(what),
        status,
      });
      return Number(lastInsertRowid);
    },
    oldest(person) {
      const row = oldest.get(person);
      return row && { ...row, what: JSON.parse(row.what) as What };
    },
    heard: (person, channel, after) =>
      heard
        .all({ person, channel, ...idParts(after ?? '') })
        .toReversed()
        .map(({ updateKey, receivedAt, what }) => ({
          line: updateKey.toString('base64url'),
          receivedAt,
          what: JSON.parse(what) as What,
        })),
    putBack: (seq, status) => void putBack.run(status, seq),
    close: (seq, outcome) => close.run(outcome, seq).changes === 1,
    tried: (seq) => void tried.run(seq),
    suspect: (channels) => suspect.run(channels).changes,
    prune: (before) => prune.run(before, before).changes + emptyLast.run(before).changes,
  };
}

/** Channels may put a chat's name into their update ids: a digest lets a repeat be seen after the person is forgotten. */
export const updateKey = (incoming: Incoming): Buffer => lineDigest(incoming);
