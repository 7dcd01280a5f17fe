/** A database as it is after so many people talked to the house: rows written directly, as the house itself would leave them. */
import { copyFileSync } from 'node:fs';
import { openDatabase } from '../../src/store/sqlite/database.ts';

const state = (n: number): string =>
  JSON.stringify({
    flow: 'six',
    hash: 'as-measured',
    place: 'ask-taste',
    facts: { name: `Person ${n}`, tea: 'oolong', vessel: 'gaiwan', size: '110 ml', kettle: 'on the stove' },
    trail: ['ask-name', 'ask-tea', 'ask-vessel', 'ask-size', 'ask-kettle'].map((place) => ({ flow: 'six', place })),
    parked: [],
  });
const saying = JSON.stringify({ phrases: [{ key: 'ask-taste', values: {} }], choices: [] });

/** Each with a conversation in its middle, so many incomings handled and their answers sent. Persons are numbered from 1, chats from p0. */
export function fillPeople(file: string, people: number, exchanges = 1): void {
  const db = openDatabase(file);
  // Nothing here needs to survive a power cut.
  db.pragma('synchronous = OFF');
  const person = db.prepare('INSERT INTO person (id, created_at) VALUES (@id, @at)');
  const handle = db.prepare(`INSERT INTO handle (channel, sender, person, chat) VALUES ('web', @chat, @id, @chat)`);
  const incoming = db.prepare(
    `INSERT INTO inbox (channel, update_key, person, chat, received_at, what, status)
     VALUES ('web', randomblob(16), @id, @chat, @at, '{"kind":"text","text":"on the stove"}', 'handled')`,
  );
  const conversation = db.prepare(
    `INSERT INTO conversation (person, version, state, language, channel, chat, updated_at)
     VALUES (@id, 6, @state, 'en', 'web', @chat, @at)`,
  );
  const answer = db.prepare(
    `INSERT INTO outbox (tag, person, channel, chat, saying, priority, due, next_at, status, turn, language, claimed_at, settled_at, ref)
     VALUES ('12345678', @id, 'web', @chat, @saying, 1, @at, @at, 'sent', @turn, 'en', @at, @at, '1')`,
  );
  const from = Date.now() - 30 * 24 * 60 * 60_000;
  const add = db.transaction((first: number, last: number) => {
    for (let id = first; id <= last; id++) {
      const row = { id, chat: `p${id - 1}`, at: from + id, state: state(id), saying };
      for (const statement of [person, handle, conversation]) statement.run(row);
      for (let turn = 1; turn <= exchanges; turn++) for (const one of [incoming, answer]) one.run({ ...row, turn });
    }
  });
  for (let id = 1; id <= people; id += 10_000) add(id, Math.min(people, id + 9_999));
  db.pragma('wal_checkpoint(TRUNCATE)');
  db.close();
}

/** So many messages owed, each in a chat of its own, due one after another from an instant on; the people are there already. */
export function fillOwed(
  file: string,
  { count, dueFrom, everyMs, priority }: { count: number; dueFrom: number; everyMs: number; priority: number },
): void {
  const db = openDatabase(file);
  db.pragma('synchronous = OFF');
  const owe = db.prepare(
    `INSERT INTO outbox (tag, person, channel, chat, saying, name, priority, due, next_at, status)
     VALUES ('12345678', @id, 'web', @chat, @saying, 'six/later', @priority, @due, @due, 'waiting')`,
  );
  db.transaction(() => {
    for (let n = 0; n < count; n++) {
      owe.run({ id: n + 1, chat: `p${n}`, saying, priority, due: Math.round(dueFrom + n * everyMs) });
    }
  })();
  db.pragma('wal_checkpoint(TRUNCATE)');
  db.close();
}

export const copyOf = (file: string, to: string): string => {
  copyFileSync(file, to);
  return to;
};
