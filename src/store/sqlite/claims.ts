/** Taking messages out: which may be sent now, what was sent before, and when the next falls due. */
import type { Database } from 'better-sqlite3';
import type { Saying, SayingChoice } from '../../core/flow/flow.ts';
import type { Instant, Language } from '../../core/units.ts';
import type { ChannelName } from '../../messages.ts';
import { chatKey, priorities, type Address, type Claim, type Owed, type PersonId } from '../contract.ts';
import { choiceParts, idParts, messageId } from './message-id.ts';
import { filled, type QuoteSources } from './quotes.ts';

export interface Claims {
  /** Whether anything waits that is of no use any more; none such is ever taken out. */
  isAnyExpired(now: Instant): boolean;
  /** Gives it up; returns the names of those that had one. */
  expire(now: Instant): readonly string[];
  /** Cheaper than to find nothing. */
  isAnyDue(now: Instant): boolean;
  claim(claim: Claim): readonly Owed[];
  history(address: Address, after: string | null): readonly Owed[];
  choice(person: PersonId, key: string): SayingChoice | null;
  nextDue(channels: string, after: Instant): Instant | null;
}

interface Candidate extends Address {
  readonly seq: number;
  readonly slot: string | null;
}

interface OwedRow {
  readonly seq: number;
  readonly tag: string;
  readonly person: PersonId | null;
  readonly channel: ChannelName;
  readonly chat: string;
  readonly language: Language;
  readonly saying: string;
  readonly priority: number;
  readonly due: Instant;
  readonly claimedAt: Instant;
  readonly attempts: number;
  readonly replaces: string | null;
}

const historyLimit = 300;
const timer = priorities.indexOf('timer');
const firstBulk = priorities.indexOf('reminder');

const owedColumns = `o.seq, o.tag, o.person, o.channel, o.chat, o.language, o.saying, o.priority, o.due,
  o.claimed_at AS claimedAt, o.attempts,
  (SELECT ref FROM outbox p WHERE p.channel = o.channel AND p.chat = o.chat AND p.slot = o.slot
     AND p.turn < o.turn AND p.ref IS NOT NULL ORDER BY p.turn DESC LIMIT 1) AS replaces`;

export function makeClaims(db: Database, sources: QuoteSources): Claims {
  const dueRows = (alsoFree: string) =>
    db.prepare<{ names: string; priority: number; now: Instant }, Candidate>(
      `SELECT seq, channel, chat, slot FROM outbox o
       WHERE status = 'waiting' AND channel IN (SELECT value FROM json_each(@names))
         AND priority = @priority AND due <= @now AND next_at <= @now AND (until IS NULL OR until > @now)
         AND NOT EXISTS (SELECT 1 FROM outbox s
           WHERE s.status = 'sending' AND s.channel = o.channel AND s.chat = o.chat) ${alsoFree}
       ORDER BY due, seq`,
    );
  // What is said first arrives first, even when it has to be tried again. A call to pour cannot wait for that, nor an
  // answer for a reminder that failed: it may be a quarter of an hour until its next try.
  const dueTimers = dueRows('');
  const dueOthers = dueRows(`AND NOT EXISTS (SELECT 1 FROM outbox r
    WHERE r.status = 'waiting' AND r.next_at > r.due AND r.next_at > @now AND r.priority <= o.priority
      AND r.channel = o.channel AND r.chat = o.chat)`);
  const sameSlot = db.prepare<unknown[], { seq: number }>(
    `SELECT seq FROM outbox WHERE channel = @channel AND chat = @chat AND slot = @slot AND status = 'waiting'
       AND next_at <= @now ORDER BY due DESC, seq DESC`,
  );
  const anyDue = db.prepare<{ now: Instant }, { priority: number }>(
    [...priorities.keys()]
      .map(
        (n) => `SELECT ${n} AS priority WHERE EXISTS
         (SELECT 1 FROM outbox WHERE status = 'waiting' AND priority = ${n} AND due <= @now)`,
      )
      .join(' UNION ALL ')
      .concat(' ORDER BY priority'),
  );
  const expired = db.prepare<[Instant], { one: 1 }>(
    `SELECT 1 AS one FROM outbox WHERE status = 'waiting' AND until <= ? LIMIT 1`,
  );
  const expire = db.prepare<[Instant, Instant], { name: string | null }>(
    `UPDATE outbox SET status = 'gave-up', why = 'too late', settled_at = ?
     WHERE status = 'waiting' AND until <= ? RETURNING name`,
  );
  const overtake = db.prepare<[number, number]>(`UPDATE outbox SET status = 'overtaken', settled_at = ? WHERE seq = ?`);
  const take = db.prepare(
    `UPDATE outbox SET status = 'sending', begun = 0, claimed_at = @now,
       turn = 1 + coalesce((SELECT max(turn) FROM outbox WHERE channel = @channel AND chat = @chat), 0),
       language = coalesce((SELECT language FROM conversation c WHERE c.person = outbox.person), language, 'en')
     WHERE seq = @seq`,
  );
  const owed = db.prepare<[number], OwedRow>(`SELECT ${owedColumns} FROM outbox o WHERE seq = ?`);
  const history = db.prepare<unknown[], OwedRow>(
    `SELECT ${owedColumns} FROM outbox o
     WHERE channel = @channel AND chat = @chat AND status IN ('sending', 'sent')
       AND turn > coalesce((SELECT turn FROM outbox WHERE seq = @seq AND tag = @tag
         AND channel = @channel AND chat = @chat), 0)
     ORDER BY turn DESC LIMIT ${historyLimit}`,
  );
  const sayingOf = db.prepare<[number, string, PersonId], { saying: string }>(
    `SELECT saying FROM outbox WHERE seq = ? AND tag = ? AND person = ? AND claimed_at IS NOT NULL`,
  );
  const nextDue = db.prepare<[number, number, string], { due: number | null }>(
    `SELECT min(due) AS due FROM outbox WHERE status = 'waiting' AND priority = ? AND due > ?
       AND channel IN (SELECT value FROM json_each(?))`,
  );
  const nextRetry = db.prepare<[string, number], { due: number | null }>(
    `SELECT min(next_at) AS due FROM outbox WHERE status = 'waiting' AND next_at > due
       AND channel IN (SELECT value FROM json_each(?)) AND next_at > ?`,
  );

  /** The latest due of a slot goes; those it overtakes need not be shown any more. */
  const latestOfSlot = (first: Candidate, now: Instant): number => {
    if (first.slot === null) return first.seq;
    const [latest, ...overtaken] = sameSlot.all({ ...first, now });
    for (const { seq } of overtaken) overtake.run(now, seq);
    return latest?.seq ?? first.seq;
  };
  const choose = ({ channels, bulkRoom, now, limit, held }: Claim): readonly Candidate[] => {
    const chosen = new Map<string, Candidate>();
    const room = new Map(bulkRoom);
    const roomIn = (name: ChannelName): number => room.get(name) ?? Infinity;
    /** True when a channel is used up: the rows of the others are looked for anew, not among all of its. */
    const isCutShort = (priority: number): boolean => {
      const isBulk = priority >= firstBulk;
      const free = isBulk ? channels.filter((name) => roomIn(name) > 0) : channels;
      const rows = priority === timer ? dueTimers : dueOthers;
      for (const row of rows.iterate({ names: JSON.stringify(free), priority, now })) {
        const chat = chatKey(row);
        if (held.has(chat) || chosen.has(chat)) continue;
        chosen.set(chat, row);
        if (isBulk) room.set(row.channel, roomIn(row.channel) - 1);
        if (chosen.size === limit) return false;
        if (isBulk && roomIn(row.channel) === 0) return true;
      }
      return false;
    };
    for (const { priority } of anyDue.all({ now })) while (chosen.size < limit && isCutShort(priority));
    return [...chosen.values()];
  };

  return {
    isAnyExpired: (now) => expired.get(now) !== undefined,
    expire: (now) => expire.all(now, now).flatMap(({ name }) => (name === null ? [] : [name])),
    isAnyDue: (now) => anyDue.get({ now }) !== undefined,
    claim: (claim) =>
      choose(claim).map((first) => {
        const seq = latestOfSlot(first, claim.now);
        take.run({ seq, channel: first.channel, chat: first.chat, now: claim.now });
        return toOwed(owed.get(seq) as OwedRow, sources);
      }),
    history: (address, after) =>
      history
        .all({ ...address, ...idParts(after ?? '') })
        .toReversed()
        .map((row) => toOwed(row, sources)),
    choice(person, key) {
      const parts = choiceParts(key);
      const row = parts && sayingOf.get(parts.seq, parts.tag, person);
      return (row && (JSON.parse(row.saying) as Saying).choices[parts.index]) ?? null;
    },
    nextDue(channels, after) {
      const dues = [...priorities.keys()].map((p) => nextDue.get(p, after, channels)?.due ?? Infinity);
      const due = Math.min(...dues, nextRetry.get(channels, after)?.due ?? Infinity);
      return due === Infinity ? null : due;
    },
  };
}

function toOwed(row: OwedRow, sources: QuoteSources): Owed {
  const { seq, tag, channel, chat, saying, priority, ...rest } = row;
  return {
    ...rest,
    id: messageId({ seq, tag }),
    address: { channel, chat },
    saying: filled(saying, row.person, sources),
    priority: priorities[priority] ?? 'reply',
  };
}
