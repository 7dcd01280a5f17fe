/** A person's right to see all that is kept, and to have every byte of it removed. */
import type { Database } from 'better-sqlite3';
import type { Json } from '../../core/flow/flow.ts';
import type { PersonId } from '../contract.ts';

export interface Privacy {
  exportOf(person: PersonId): Json;
  /** Inside a transaction; the log file is emptied afterwards by `wipeLog`. */
  forget(person: PersonId): void;
  /** What was deleted still stands in the write-ahead log until it is folded back and cut off. False when others read. */
  wipeLog(): boolean;
}

/** What is told of each table; children before their parent, in the order they can be deleted. */
const tables = {
  reminder: 'lesson, purpose, due_at, state AS became',
  booking: 'id, lesson, channel, chat, seats, standing, enrolled_at, offer_until, answer, came',
  standing_answer: 'question, answer, kept_at',
  question: 'channel, language, text, asked_at, answer, answered_at',
  outbox: 'channel, saying, due, status, language, claimed_at, settled_at, why',
  wake: 'name, at',
  task: 'task, facts, status, created_at',
  memory: 'name, value',
  conversation: 'state, language, channel, updated_at',
  inbox: 'channel, what, received_at, status',
  handle: 'channel, sender, chat, device_language, reachable',
} as const;

const jsonColumns = new Set(['saying', 'facts', 'value', 'state', 'what']);

export function makePrivacy(db: Database): Privacy {
  const reads = Object.entries(tables).map(
    ([table, columns]) =>
      [
        table,
        db.prepare<[PersonId], Record<string, string | number | null>>(
          `SELECT ${columns} FROM ${table} WHERE person = ?`,
        ),
      ] as const,
  );
  const deletes = Object.keys(tables)
    .filter((table) => table !== 'inbox')
    .map((table) => db.prepare<[PersonId]>(`DELETE FROM ${table} WHERE person = ?`));
  const leaveAnswers = db.prepare<[PersonId]>('UPDATE question SET answered_by = NULL WHERE answered_by = ?');
  const dismiss = db.prepare<[PersonId]>(
    `DELETE FROM shopkeeper WHERE EXISTS (SELECT 1 FROM handle h
       WHERE h.person = ? AND h.channel = shopkeeper.channel AND h.sender = shopkeeper.sender)`,
  );
  const emptyInbox = db.prepare<[PersonId]>(
    `UPDATE inbox SET person = NULL, chat = NULL, what = NULL, status = iif(status = 'waiting', 'handled', status)
     WHERE person = ?`,
  );
  const removePerson = db.prepare<[PersonId]>('DELETE FROM person WHERE id = ?');

  return {
    exportOf: (person) => Object.fromEntries(reads.map(([table, read]) => [table, read.all(person).map(plain)])),
    forget(person) {
      leaveAnswers.run(person);
      dismiss.run(person);
      for (const remove of deletes) remove.run(person);
      emptyInbox.run(person);
      removePerson.run(person);
    },
    wipeLog: () => (db.pragma('wal_checkpoint(TRUNCATE)', { simple: true }) as number) === 0,
  };
}

function plain(row: Record<string, string | number | null>): Json {
  return Object.fromEntries(
    Object.entries(row).map(([name, value]) => [
      name,
      jsonColumns.has(name) && typeof value === 'string' ? (JSON.parse(value) as Json) : value,
    ]),
  );
}
