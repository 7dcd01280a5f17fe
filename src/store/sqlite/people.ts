/** People and the handles channels know them by. */
import type { Database } from 'better-sqlite3';
import type { ChannelName, Incoming } from '../../messages.ts';
import type { PersonId } from '../contract.ts';
import type { News } from './news.ts';

/** How a channel knows someone. */
export interface Handle {
  readonly person: PersonId;
  readonly chat: string;
  readonly device_language: string | null;
  readonly reachable: 0 | 1;
}

export interface People {
  find(channel: ChannelName, from: string): PersonId | null;
  known(incoming: Incoming): Handle | undefined;
  /** The person an incoming is from, made on first sight. Whether they just went, or came back after they could not be reached. */
  meet(
    incoming: Incoming,
    known: Handle | undefined,
  ): { readonly person: PersonId; readonly moved: 'back' | 'gone' | null };
  deviceLanguage(person: PersonId): string | null;
  markUnreachable(channel: string, chat: string): void;
}

export function makePeople(db: Database, news: News): People {
  const handleOf = db.prepare<[string, string], Handle>(
    'SELECT person, chat, device_language, reachable FROM handle WHERE channel = ? AND sender = ?',
  );
  const addPerson = db.prepare<[number]>('INSERT INTO person (created_at) VALUES (?)');
  const setHandle = db.prepare(
    `INSERT INTO handle (channel, sender, person, chat, device_language, reachable)
     VALUES (@channel, @from, @person, @chat, @deviceLanguage, @reachable)
     ON CONFLICT DO UPDATE SET chat = @chat, reachable = @reachable,
       device_language = coalesce(@deviceLanguage, device_language)`,
  );
  const deviceLanguage = db.prepare<[PersonId], { device_language: string }>(
    'SELECT device_language FROM handle WHERE person = ? AND device_language IS NOT NULL LIMIT 1',
  );
  const markUnreachable = db.prepare<[string, string]>(
    'UPDATE handle SET reachable = 0 WHERE channel = ? AND chat = ?',
  );

  return {
    find: (channel, from) => handleOf.get(channel, from)?.person ?? null,
    known: ({ channel, from }) => handleOf.get(channel, from),
    meet(incoming, known) {
      const person = known?.person ?? Number(addPerson.run(incoming.receivedAt).lastInsertRowid);
      const reachable = incoming.what.kind === 'reach' && !incoming.what.reachable ? 0 : 1;
      const { channel, from, chat, deviceLanguage: language = null } = incoming;
      if (!known || known.chat !== chat || known.reachable !== reachable || isNewLanguage(language, known)) {
        // Lists say who can be told.
        if (known && known.reachable !== reachable) news.tell();
        setHandle.run({ channel, from, chat, person, reachable, deviceLanguage: language });
      }
      if (known?.reachable === reachable) return { person, moved: null };
      return { person, moved: reachable === 0 ? 'gone' : known ? 'back' : null };
    },
    deviceLanguage: (person) => deviceLanguage.get(person)?.device_language ?? null,
    markUnreachable(channel, chat) {
      news.tell();
      markUnreachable.run(channel, chat);
    },
  };
}

function isNewLanguage(language: string | null, known: Handle): boolean {
  return language !== null && language !== known.device_language;
}
