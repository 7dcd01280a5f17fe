/** What a day brings, told to every shopkeeper once. */
import type { Database } from 'better-sqlite3';
import { dayPhrases } from '../../core/lessons/door-list.ts';
import type { Instant } from '../../core/units.ts';
import { namedDoor, type LessonBoard } from '../lesson-contract.ts';
import type { Outbox } from './outbox.ts';
import type { Questions } from './questions.ts';
import type { Shopkeepers } from './shopkeepers.ts';

export interface MorningParts {
  readonly doors: (now: Instant) => LessonBoard['doors'];
  readonly shopkeepers: Shopkeepers;
  readonly questions: Questions;
  readonly outbox: Outbox;
}

export function makeMornings(db: Database, { doors, shopkeepers, questions, outbox }: MorningParts) {
  const tell = db.prepare<[string]>('INSERT INTO morning (day) VALUES (?) ON CONFLICT DO NOTHING');
  const forget = db.prepare<[string]>('DELETE FROM morning WHERE day < ?');
  return {
    /** False when the day was told already, or there is nothing to tell. */
    tell(day: string, letters: boolean, now: Instant): boolean {
      if (tell.run(day).changes === 0) return false;
      forget.run(day);
      const lessons = dayPhrases(
        doors(now).map((door) => namedDoor(door, letters)),
        now,
      );
      const waiting = questions.waitingCount();
      if (lessons.length === 0 && waiting === 0) return false;
      const questionsWait = waiting === 0 ? [] : [{ key: 'desk-told-waiting', values: { count: waiting } }];
      const phrases = [{ key: 'desk-told-morning', values: {} }, ...lessons, ...questionsWait];
      for (const { person, ...address } of shopkeepers.met()) {
        outbox.add({ person, address, saying: { phrases, choices: [] }, due: now, priority: 'reply' });
      }
      return true;
    },
  };
}
