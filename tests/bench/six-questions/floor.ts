/** The floor: the rows the house leaves behind for each update, written by bare better-sqlite3 in one transaction with a sync. */
import { join } from 'node:path';
import { openDatabase } from '../../../src/store/sqlite/database.ts';
import { facts, messages, questions, type OpenTalk } from './questions.ts';

export const openFloor: OpenTalk = (folder) => {
  const db = openDatabase(join(folder, 'floor.sqlite'));
  const arrive = db.prepare(
    `INSERT INTO inbox (channel, update_key, person, chat, received_at, what, status)
     VALUES ('web', randomblob(16), @person, @chat, @now, @what, 'handled')`,
  );
  const meet = db.prepare('INSERT INTO person (id, created_at) VALUES (@person, @now) ON CONFLICT DO NOTHING');
  const know = db.prepare(
    `INSERT INTO handle (channel, sender, person, chat) VALUES ('web', @chat, @person, @chat) ON CONFLICT DO NOTHING`,
  );
  const advance = db.prepare(
    `INSERT INTO conversation (person, version, state, language, channel, chat, updated_at)
     VALUES (@person, 1, @state, 'en', 'web', @chat, @now)
     ON CONFLICT DO UPDATE SET version = version + 1, state = excluded.state, updated_at = excluded.updated_at`,
  );
  const owe = db.prepare(
    `INSERT INTO outbox (tag, person, channel, chat, saying, priority, due, next_at, status)
     VALUES ('12345678', @person, 'web', @chat, @saying, 1, @now, @now, 'waiting')`,
  );
  const sent = db.prepare(
    `UPDATE outbox SET status = 'sent', turn = 1, language = 'en', claimed_at = @now, settled_at = @now, ref = '1' WHERE seq = @seq`,
  );
  let last: number | bigint = 0;
  let said = 0;
  const update = db.transaction((person: number, text: string) => {
    const row = { person: person + 1, chat: `p${person}`, now: Date.now() };
    meet.run(row);
    know.run(row);
    arrive.run({ ...row, what: JSON.stringify({ kind: 'text', text }) });
    advance.run({ ...row, state: stateAfter(text) });
    last = owe.run({ ...row, saying: sayingAfter(text) }).lastInsertRowid;
    // Its being sent is written down right away: what the house must spread over three transactions is one here.
    sent.run({ ...row, seq: last });
  });
  return Promise.resolve({
    tell(person, text) {
      update.immediate(person, text);
      said += 1;
      return Promise.resolve();
    },
    settled: () => Promise.resolve(),
    said: () => said,
    close: () => Promise.resolve(void db.close()),
  });
};

/** As long as the house's own. */
function stateAfter(text: string): string {
  const known = messages.slice(1, messages.indexOf(text as 'hello') + 1);
  const told = Object.fromEntries(known.map((answer, i) => [facts[i] ?? '', answer]));
  const trail = known.map((_, i) => ({ flow: 'six', place: `ask-${facts[i]}` }));
  return JSON.stringify({ flow: 'six', hash: 'as-measured', place: 'told', facts: told, trail, parked: [] });
}

function sayingAfter(text: string): string {
  const next = facts[messages.indexOf(text as 'hello')];
  const key = next === undefined ? 'closing' : `ask-${next}`;
  return JSON.stringify({ phrases: [{ key, values: {} }], choices: [], asks: next && questions[next].length });
}
