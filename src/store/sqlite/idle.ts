/** People nobody has heard of for long, and whom nothing binds to the house. */
import type { Database } from 'better-sqlite3';
import type { PersonId } from '../contract.ts';
import type { IdleFound, IdleWalk } from '../idle-contract.ts';

export function makeIdle(db: Database): (walk: IdleWalk) => IdleFound {
  const next = db
    .prepare<[PersonId, number], PersonId>('SELECT id FROM person WHERE id > ? ORDER BY id LIMIT ?')
    .pluck();
  const idle = db
    .prepare<unknown[], PersonId>(
      `SELECT id FROM person p WHERE id > @after AND id <= @last AND created_at < @before
         AND NOT EXISTS (SELECT 1 FROM inbox WHERE person = p.id AND received_at >= @before)
         AND NOT EXISTS (SELECT 1 FROM conversation WHERE person = p.id AND updated_at >= @before)
         AND NOT EXISTS (SELECT 1 FROM outbox WHERE person = p.id AND status IN ('waiting', 'sending'))
         AND NOT EXISTS (SELECT 1 FROM wake WHERE person = p.id)
         AND NOT EXISTS (SELECT 1 FROM question WHERE person = p.id AND answer IS NULL)
         AND NOT EXISTS (SELECT 1 FROM standing_answer WHERE person = p.id)
         AND NOT EXISTS (SELECT 1 FROM booking b JOIN lesson l ON l.id = b.lesson
           WHERE b.person = p.id AND l.ends_at >= @before)
         AND NOT EXISTS (SELECT 1 FROM handle h JOIN shopkeeper USING (channel, sender) WHERE h.person = p.id)
       ORDER BY id`,
    )
    .pluck();
  return ({ after, limit, before }) => {
    const walked = next.all(after, limit);
    const last = walked.at(-1);
    if (last === undefined) return { people: [], last: null };
    return { people: idle.all({ after, last, before }), last: walked.length < limit ? null : last };
  };
}
