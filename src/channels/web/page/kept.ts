/** What this device keeps of a sheet: the end of it, the person's own lines that wait, and whether it may sound. */
import { forgetShell } from './shell.ts';
import type { KeptSheet, Sheet } from './sheet-state.ts';

/** More than anybody scrolls back to while there is no connection. */
const mostTold = 80;
const mostActs = 100;
const prefix = 'sheet.';

/** Reads what was kept of this sheet, and forgets any other. */
export function keptOf(sheet: string): KeptSheet {
  for (const key of storedKeys()) {
    if (key.startsWith(prefix) && key !== prefix + sheet) drop(key);
  }
  const kept = read(prefix + sheet) as Partial<KeptSheet> | null;
  return { acts: kept?.acts ?? [], told: kept?.told ?? [] };
}

export function keep(sheet: string, { acts, told }: Sheet): void {
  const own = acts.filter(({ state }) => state !== 'told').slice(-mostActs);
  write(prefix + sheet, { acts: own, told: told.slice(-mostTold) } satisfies KeptSheet);
}

export const mayRing = (): boolean => read('ring') === true;
export const keepMayRing = (may: boolean): void => write('ring', may);

/** How far the house's clock is ahead of this device's, as last measured, in milliseconds. */
export const keptOffset = (): number => Number(read('ahead') ?? 0);
export const keepOffset = (ms: number): void => write('ahead', ms);

/** Of the holds that have ended here, those whose call was made; in this tab alone, for another may lie in another room. */
const calledHere = new Set<string>();
export const wasCalled = (hold: string): boolean =>
  calledHere.has(hold) || attempt(() => sessionStorage.getItem(hold) !== null, false);
export const keepCalled = (hold: string): void => {
  calledHere.add(hold);
  attempt(() => sessionStorage.setItem(hold, ''), undefined);
};

export async function forgetEverything(): Promise<void> {
  for (const key of storedKeys()) drop(key);
  await forgetShell().catch(() => undefined);
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
