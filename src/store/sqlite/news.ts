/** Whether anything of lessons changed since it was last looked at, by this program or by another one. */
import type { Database } from 'better-sqlite3';

export interface News {
  tell(): void;
  /** Another number whenever something may have changed. */
  latest(): string;
}

export function makeNews(db: Database): News {
  // Counts what other connections commit, to whichever table.
  const others = db.prepare<[], number>('PRAGMA data_version').pluck();
  let own = 0;
  return { tell: () => void (own += 1), latest: () => `${own} ${others.get()}` };
}
