/** When a conversation is to be woken: one row a name, due at an instant. */
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { PersonId } from '../contract.ts';

export interface Wake {
  readonly name: string;
  readonly at: Instant;
  readonly tries: number;
}

export interface Wakes {
  /** The earliest that is due. */
  due(person: PersonId, now: Instant): Wake | undefined;
  set(person: PersonId, name: string, at: Instant): void;
  /** False when there is none of this name. */
  drop(person: PersonId, name: string): boolean;
  tried(person: PersonId, name: string): void;
}

export function makeWakes(db: Database): Wakes {
  const due = db.prepare<[PersonId, number], Wake>(
    'SELECT name, at, tries FROM wake WHERE person = ? AND at <= ? ORDER BY at, name LIMIT 1',
  );
  const set = db.prepare<[PersonId, string, number]>(
    'INSERT INTO wake (person, name, at) VALUES (?, ?, ?) ON CONFLICT DO UPDATE SET at = excluded.at, tries = 0',
  );
  const drop = db.prepare<[PersonId, string]>('DELETE FROM wake WHERE person = ? AND name = ?');
  const tried = db.prepare<[PersonId, string]>('UPDATE wake SET tries = tries + 1 WHERE person = ? AND name = ?');

  return {
    due: (person, now) => due.get(person, now),
    set: (person, name, at) => void set.run(person, name, at),
    drop: (person, name) => drop.run(person, name).changes === 1,
    tried: (person, name) => void tried.run(person, name),
  };
}
