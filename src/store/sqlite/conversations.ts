/** Where each person is in the conversation, and what is kept of them across conversations. */
import type { Database } from 'better-sqlite3';
import type { Facts, FlowState, Json } from '../../core/flow/flow.ts';
import type { Language } from '../../core/units.ts';
import type { ChannelName } from '../../messages.ts';
import type { Commit, PersonId } from '../contract.ts';

export interface Conversation {
  readonly version: number;
  readonly state: FlowState | null;
  readonly language: Language;
  readonly channel: ChannelName;
  readonly chat: string;
}

interface ConversationRow extends Omit<Conversation, 'state'> {
  readonly state: string | null;
}

export interface Conversations {
  of(person: PersonId): Conversation | undefined;
  /** False when the version no longer holds, or the person is gone. */
  advance(commit: Commit): boolean;
  memory(person: PersonId): Facts;
  /** Null forgets it. */
  remember(person: PersonId, name: string, value: Json): void;
}

export function makeConversations(db: Database): Conversations {
  const of = db.prepare<[PersonId], ConversationRow>(
    'SELECT version, state, language, channel, chat FROM conversation WHERE person = ?',
  );
  const begin = db.prepare(
    `INSERT INTO conversation (person, version, state, language, channel, chat, updated_at)
     SELECT id, 1, @state, @language, @channel, @chat, @now FROM person WHERE id = @person
     ON CONFLICT DO NOTHING`,
  );
  const advance = db.prepare(
    `UPDATE conversation SET version = version + 1, state = @state, language = @language,
       channel = @channel, chat = @chat, updated_at = @now
     WHERE person = @person AND version = @version`,
  );
  const memory = db.prepare<[PersonId], { name: string; value: string }>(
    'SELECT name, value FROM memory WHERE person = ? ORDER BY name',
  );
  const remember = db.prepare<[PersonId, string, string]>(
    'INSERT INTO memory (person, name, value) VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET value = excluded.value',
  );
  const forget = db.prepare<[PersonId, string]>('DELETE FROM memory WHERE person = ? AND name = ?');

  return {
    of(person) {
      const row = of.get(person);
      return row && { ...row, state: row.state === null ? null : (JSON.parse(row.state) as FlowState) };
    },
    advance({ person, version, state, language, address, now }) {
      const { channel, chat } = address;
      const row = { person, version, state: state && JSON.stringify(state), language, channel, chat, now };
      return (version === 0 ? begin : advance).run(row).changes === 1;
    },
    memory: (person) =>
      Object.fromEntries(memory.all(person).map(({ name, value }) => [name, JSON.parse(value) as Json])),
    remember(person, name, value) {
      if (value === null) forget.run(person, name);
      else remember.run(person, name, JSON.stringify(value));
    },
  };
}
