/** Sees to it that what was deleted leaves the write-ahead log too, now or as soon as nobody else reads it. */
import { StoreMistake } from '../contract.ts';
import type { Commits } from './commits.ts';
import type { Privacy } from './privacy.ts';

const wipeTries = 20;
const betweenWipesMs = 100;

export interface Wiping {
  /** Tries for two seconds; throws StoreMistake when another program keeps reading all the while. */
  now(): Promise<void>;
  /** The same, but what cannot be done now is done later. */
  soon(): Promise<void>;
  /** Takes up what could not be done. */
  rest(): void;
}

export function makeWiping(commits: Commits, privacy: Privacy): Wiping {
  // A former process may have died between a forgetting and this.
  let owed = true;
  const now = async (): Promise<void> => {
    for (let tries = 0; tries < wipeTries; tries++) {
      await commits.drained();
      if (privacy.wipeLog()) return;
      await new Promise((resolve) => setTimeout(resolve, betweenWipesMs));
    }
    throw new StoreMistake('a person is forgotten, but another program keeps the log file from being emptied');
  };
  return {
    now,
    soon: () =>
      now().catch((error: unknown) => {
        if (!(error instanceof StoreMistake)) throw error;
        owed = true;
      }),
    rest() {
      if (owed && privacy.wipeLog()) owed = false;
    },
  };
}
