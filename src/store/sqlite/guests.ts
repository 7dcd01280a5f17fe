/** People without a chat, whom a shopkeeper has written down, with a mail address or without. */
import type { Database } from 'better-sqlite3';
import type { Instant, Language } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';

export interface NewGuest {
  /** One booking makes one guest: two friends may share an address. */
  readonly booking: string;
  readonly name: string;
  readonly mail: string;
  readonly language: Language;
  readonly now: Instant;
}

export function makeGuests(db: Database) {
  const person = db.prepare<[number]>('INSERT INTO person (created_at) VALUES (?)');
  const handle = db.prepare(
    `INSERT INTO handle (channel, sender, person, chat) VALUES ('mail', @sender, @person, @mail)`,
  );
  // They never speak; what they are told is told in this language.
  const conversation = db.prepare(
    `INSERT INTO conversation (person, version, state, language, channel, chat, updated_at)
     VALUES (@person, 0, NULL, @language, 'mail', @mail, @now)`,
  );
  const memory = db.prepare<[PersonId, string]>(`INSERT INTO memory (person, name, value) VALUES (?, 'name', ?)`);
  return {
    add({ booking, name, mail, language, now }: NewGuest): PersonId {
      const id = Number(person.run(now).lastInsertRowid);
      handle.run({ sender: `guest-${booking}`, person: id, mail });
      conversation.run({ person: id, language, mail, now });
      memory.run(id, JSON.stringify(name));
      return id;
    },
  };
}
