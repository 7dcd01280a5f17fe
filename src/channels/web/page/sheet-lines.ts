/** Everything that is seen of a sheet, from its top to its end. Pure. */
import type { Act, Entry, Sheet } from './sheet-state.ts';

export type SheetLine =
  | { readonly kind: 'entry'; readonly entry: Entry; readonly open: boolean }
  | { readonly kind: 'act'; readonly act: Act };

/** Until a tap is answered the choices stay where they are: nothing moves under the finger. Null when none is on its way. */
export function tapUnderWay({ acts, lastId, line }: Sheet): Act | null {
  const act = acts.at(-1);
  // Without a connection it is a line of its own, which waits to go out.
  if (act === undefined || act.on === null || line !== 'open') return null;
  return act.after === lastId && act.state !== 'refused' ? act : null;
}

export function linesOf(sheet: Sheet): readonly SheetLine[] {
  const tap = tapUnderWay(sheet);
  const acts = sheet.acts.filter((act) => act !== tap).map((act) => ({ act, at: standing(sheet, act) }));
  // A refused act answered nothing, so the choices before it stay open.
  const lastAct = Math.max(0, ...acts.filter(({ act }) => act.state !== 'refused').map(({ at }) => at));
  const entries = sheet.entries.map((entry) => {
    const open = entry.last > lastAct;
    return { at: entry.first, order: 0, line: { kind: 'entry', entry, open } as const };
  });
  const own = acts
    .filter(({ act, at }) => isSeen(sheet, act, at))
    .map(({ act, at }) => ({ at, order: 1, line: { kind: 'act', act } as const }));
  return [...entries, ...own].toSorted((a, b) => a.at - b.at || a.order - b.order).map(({ line }) => line);
}

/** What was done after a message that is no longer kept stands at the end: only what waits can be in that case. */
function standing(sheet: Sheet, { after }: Act): number {
  return after === null ? 0 : (sheet.known.get(after)?.at ?? sheet.known.size);
}

/** A tap that its message answered in place leaves no line: a brew would fill the sheet with them. */
function isSeen(sheet: Sheet, act: Act, at: number): boolean {
  if (act.shown === '') return false;
  const tapped = sheet.entries.find((entry) => entry.place === act.on);
  return tapped === undefined || tapped.first === tapped.last || tapped.last <= at;
}
