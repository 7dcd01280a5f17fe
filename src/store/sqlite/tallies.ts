/** How often something was asked for, by tea and day. */
import type { Database } from 'better-sqlite3';
import type { Instant } from '../../core/units.ts';
import type { Counted, Tally } from '../desk-contract.ts';

export interface Tallies {
  count(what: Counted, item: string, now: Instant): void;
  /** The most frequent first, a dozen of each kind. */
  recent(now: Instant): readonly Tally[];
  prune(before: Instant): number;
}

const dayMs = 86_400_000;
const recentDays = 30;
const mostOfAKind = 12;

export function makeTallies(db: Database): Tallies {
  const count = db.prepare<[string, string, string]>(
    `INSERT INTO tally (day, what, item, count) VALUES (?, ?, ?, 1) ON CONFLICT DO UPDATE SET count = count + 1`,
  );
  const recent = db.prepare<[string], Tally>(
    `SELECT what, item, count FROM (
       SELECT what, item, sum(count) AS count, row_number() OVER (PARTITION BY what ORDER BY sum(count) DESC, item) AS place
       FROM tally WHERE day > ? GROUP BY what, item)
     WHERE place <= ${mostOfAKind} ORDER BY what, place`,
  );
  const prune = db.prepare<[string]>('DELETE FROM tally WHERE day < ?');
  return {
    count: (what, item, now) => void count.run(dayOf(now), what, item),
    recent: (now) => recent.all(dayOf(now - recentDays * dayMs)),
    prune: (before) => prune.run(dayOf(before)).changes,
  };
}

const dayOf = (at: Instant): string => new Date(at).toISOString().slice(0, 10);
