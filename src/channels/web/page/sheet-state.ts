/** What is on the sheet: the messages at their places and the person's own lines between them. Pure. */
import type { PageLanguage, PageWords, PostedWhat, Said } from './wire.ts';

/** A message where it stands; one that replaces another takes its place. */
export interface Entry {
  readonly place: string;
  readonly said: Said;
  /** When this place was first filled, and when last, counted in messages. */
  readonly first: number;
  readonly last: number;
}

/** Something the person did here. */
export interface Act {
  readonly updateId: string;
  readonly what: PostedWhat;
  /** What is shown of it; empty when a place was only opened. */
  readonly shown: string;
  readonly language: PageLanguage;
  /** The message last seen when it was done, and the place that was tapped. */
  readonly after: string | null;
  readonly on: string | null;
  readonly state: 'waiting' | 'gone-out' | 'refused';
}

export interface Sheet {
  readonly language: PageLanguage;
  readonly words: PageWords;
  readonly entries: readonly Entry[];
  readonly acts: readonly Act[];
  /** Message id → where it stands in the order of arrival, and its place. */
  readonly known: ReadonlyMap<string, { readonly at: number; readonly place: string }>;
  readonly lastId: string | null;
  readonly line: 'opening' | 'open' | 'lost';
  /** Whether the past has been told; until then nothing is announced. */
  readonly caughtUp: boolean;
}

export type Happened =
  | { readonly kind: 'said'; readonly said: Said }
  | { readonly kind: 'caught-up' }
  | { readonly kind: 'line'; readonly line: Sheet['line'] }
  | { readonly kind: 'acted'; readonly act: Act }
  | { readonly kind: 'settled'; readonly updateId: string; readonly state: Act['state'] }
  | { readonly kind: 'language'; readonly language: PageLanguage; readonly words: PageWords };

export function emptySheet(language: PageLanguage, words: PageWords, acts: readonly Act[]): Sheet {
  return { language, words, entries: [], acts, known: new Map(), lastId: null, line: 'opening', caughtUp: false };
}

export function after(sheet: Sheet, happened: Happened): Sheet {
  switch (happened.kind) {
    case 'said':
      return withSaid(sheet, happened.said);
    case 'caught-up':
      return { ...sheet, caughtUp: true, line: 'open' };
    case 'line':
      return { ...sheet, line: happened.line };
    case 'acted':
      return { ...sheet, acts: [...sheet.acts, happened.act] };
    case 'settled': {
      const { updateId, state } = happened;
      return { ...sheet, acts: sheet.acts.map((act) => (act.updateId === updateId ? { ...act, state } : act)) };
    }
    case 'language':
      break;
  }
  return { ...sheet, language: happened.language, words: happened.words };
}

/** The same message a second time changes nothing. */
function withSaid(sheet: Sheet, said: Said): Sheet {
  if (sheet.known.has(said.id)) return sheet;
  const at = sheet.known.size + 1;
  const place = (said.replaces === undefined ? undefined : sheet.known.get(said.replaces)?.place) ?? said.id;
  const before = sheet.entries.find((entry) => entry.place === place);
  const entry: Entry = { place, said, first: before?.first ?? at, last: at };
  return {
    ...sheet,
    entries: before ? sheet.entries.map((one) => (one === before ? entry : one)) : [...sheet.entries, entry],
    known: new Map([...sheet.known, [said.id, { at, place }]]),
    lastId: said.id,
  };
}

export type SheetLine =
  | { readonly kind: 'entry'; readonly entry: Entry; readonly open: boolean }
  | { readonly kind: 'act'; readonly act: Act };

/** Everything that is seen, from the top of the sheet to its end. */
export function linesOf(sheet: Sheet): readonly SheetLine[] {
  const acts = sheet.acts.flatMap((act) => {
    const at = standing(sheet, act);
    return at === null ? [] : [{ act, at }];
  });
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

/** Null when the message it followed is no longer kept: then the line goes with it. */
function standing(sheet: Sheet, act: Act): number | null {
  if (act.after === null) return 0;
  return sheet.known.get(act.after)?.at ?? (sheet.caughtUp && act.state !== 'waiting' ? null : sheet.known.size);
}

/** A tap that its message answered in place leaves no line: a brew would fill the sheet with them. */
function isSeen(sheet: Sheet, act: Act, at: number): boolean {
  if (act.shown === '') return false;
  const tapped = sheet.entries.find((entry) => entry.place === act.on);
  return tapped === undefined || tapped.first === tapped.last || tapped.last <= at;
}
