/** What this device keeps of a sheet: the person's own lines and whether it may sound. */
import type { Act } from './sheet-state.ts';

/** More own lines than anybody scrolls back to. */
const mostActs = 100;
const prefix = 'sheet.';

/** Reads the acts of this sheet, and forgets those of any other. */
export function keptActs(sheet: string): readonly Act[] {
  for (const key of storedKeys()) {
    if (key.startsWith(prefix) && key !== prefix + sheet) drop(key);
  }
  return (read(prefix + sheet) as readonly Act[] | null) ?? [];
}

export function keepActs(sheet: string, acts: readonly Act[]): void {
  write(prefix + sheet, acts.slice(-mostActs));
}

export const mayRing = (): boolean => read('ring') === true;
export const keepMayRing = (may: boolean): void => write('ring', may);

export function forgetEverything(): void {
  for (const key of storedKeys()) drop(key);
}

// Storage may be switched off or full: the page works without it, it only remembers less.
function attempt<T>(what: () => T, otherwise: T): T {
  try {
    return what();
  } catch {
    return otherwise;
  }
}

const storedKeys = (): readonly string[] => attempt(() => Object.keys(localStorage), []);
const drop = (key: string): void => attempt(() => localStorage.removeItem(key), undefined);
const write = (key: string, value: unknown): void =>
  attempt(() => localStorage.setItem(key, JSON.stringify(value)), undefined);
const read = (key: string): unknown => attempt(() => JSON.parse(localStorage.getItem(key) ?? 'null') as unknown, null);
