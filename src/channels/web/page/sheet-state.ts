/** What is on the sheet: the messages at their places and the person's own lines between them. Pure. */
import type { PageLanguage, PageWords, PostedWhat, Said, Told, Wrote } from './wire.ts';

/** A message where it stands; one that replaces another takes its place. */
export interface Entry {
  readonly place: string;
  readonly said: Said;
  /** When this place was first filled, and when last, counted in messages. */
  readonly first: number;
  readonly last: number;
}

/** Something the person did, on this device or on another of theirs. */
export interface Act {
  /** This page's own id of it; of what was done elsewhere, the house's name. */
  readonly updateId: string;
  /** The house's name of it, once known. */
  readonly line: string | null;
  readonly what: PostedWhat;
  /** What is shown of it; empty when a place was only opened. */
  readonly shown: string;
  readonly language: PageLanguage;
  /** The message last seen when it was done, and the place that was tapped. */
  readonly after: string | null;
  readonly on: string | null;
  /** `told`: the house tells it to every device of this sheet. */
  readonly state: 'waiting' | 'gone-out' | 'refused' | 'told';
}

/** A choice that was offered: what it says, where, and in which language. */
interface Offered {
  readonly label: string;
  readonly place: string;
  readonly language: PageLanguage;
}

export interface Sheet {
  readonly language: PageLanguage;
  readonly words: PageWords;
  readonly entries: readonly Entry[];
  readonly acts: readonly Act[];
  /** Message id → where it stands in the order of arrival, and its place. */
  readonly known: ReadonlyMap<string, { readonly at: number; readonly place: string }>;
  readonly offered: ReadonlyMap<string, Offered>;
  readonly lastId: string | null;
  readonly line: 'opening' | 'open' | 'lost';
  /** All this is made of, as the house told it. */
  readonly told: readonly Told[];
  /** Whether the past has been told; until then nothing is announced, and what this device kept is shown. */
  readonly caughtUp: boolean;
  /** More was said before all this. */
  readonly isCut: boolean;
  /** The past so far; it takes the place of what is shown once it is whole. */
  readonly telling: readonly Told[];
}

/** What a device keeps of a sheet between two visits. */
export interface KeptSheet {
  readonly acts: readonly Act[];
  readonly told: readonly Told[];
}

export type Happened =
  | { readonly kind: 'told'; readonly told: Told }
  | { readonly kind: 'caught-up'; readonly isCut: boolean }
  | { readonly kind: 'line'; readonly line: Sheet['line'] }
  | { readonly kind: 'acted'; readonly act: Act }
  | { readonly kind: 'settled'; readonly updateId: string; readonly state: Act['state']; readonly line: string | null }
  | { readonly kind: 'language'; readonly language: PageLanguage; readonly words: PageWords };

export function keptSheet(language: PageLanguage, words: PageWords, { acts, told }: KeptSheet): Sheet {
  const nothing = { known: new Map(), offered: new Map(), lastId: null, entries: [], told: [], telling: [] };
  return withAll({ language, words, acts, line: 'opening', caughtUp: false, isCut: false, ...nothing }, told);
}

export function after(sheet: Sheet, happened: Happened): Sheet {
  switch (happened.kind) {
    case 'told':
      if (!sheet.caughtUp) return { ...sheet, telling: [...sheet.telling, happened.told] };
      return withTold(sheet, happened.told);
    case 'caught-up':
      if (sheet.caughtUp) return { ...sheet, line: 'open' };
      return { ...withThePast(sheet), caughtUp: true, isCut: happened.isCut, line: 'open' };
    case 'line':
      return { ...sheet, line: happened.line };
    case 'acted':
      return { ...sheet, acts: [...sheet.acts, happened.act] };
    case 'settled':
      return { ...sheet, acts: settled(sheet.acts, happened) };
    case 'language':
      break;
  }
  return { ...sheet, language: happened.language, words: happened.words };
}

/** The house's own account in the place of what was kept; only what it does not have yet is kept beside it. */
function withThePast(sheet: Sheet): Sheet {
  const own = sheet.acts.filter(({ state }) => state !== 'told');
  const whole = withAll(keptSheet(sheet.language, sheet.words, { acts: own, told: [] }), sheet.telling);
  const told = whole.acts.filter(({ state }) => state === 'told');
  return { ...whole, acts: [...told, ...whole.acts.filter(({ state }) => state === 'waiting' || state === 'refused')] };
}

const withAll = (sheet: Sheet, told: readonly Told[]): Sheet => told.reduce(withTold, sheet);

function withTold(sheet: Sheet, told: Told): Sheet {
  const next = 'said' in told ? withSaid(sheet, told.said) : withWrote(sheet, told.wrote);
  return next === sheet ? sheet : { ...next, told: [...next.told, told] };
}

/** The person is forgotten: what stood here until now is kept nowhere any more. */
function emptied(sheet: Sheet): Sheet {
  const waiting = sheet.acts.filter(({ state }) => state === 'waiting');
  return {
    ...keptSheet(sheet.language, sheet.words, { acts: waiting, told: [] }),
    caughtUp: sheet.caughtUp,
    line: sheet.line,
  };
}

/** The same message a second time changes nothing. */
function withSaid(sheet: Sheet, said: Said): Sheet {
  if (sheet.known.has(said.id)) return sheet;
  if (said.last && sheet.known.size > 0) return withSaid(emptied(sheet), said);
  const at = sheet.known.size + 1;
  const place = (said.replaces === undefined ? undefined : sheet.known.get(said.replaces)?.place) ?? said.id;
  const before = sheet.entries.find((entry) => entry.place === place);
  const entry: Entry = { place, said, first: before?.first ?? at, last: at };
  const choices = said.choices.map(({ key, label }) => [key, { label, place, language: said.language }] as const);
  return {
    ...sheet,
    entries: before ? sheet.entries.map((one) => (one === before ? entry : one)) : [...sheet.entries, entry],
    known: new Map([...sheet.known, [said.id, { at, place }]]),
    offered: new Map([...sheet.offered, ...choices]),
    lastId: said.id,
  };
}

/** What was done here is now the house's; what was done elsewhere appears. */
function withWrote(sheet: Sheet, { line, what, updateId }: Wrote): Sheet {
  const own = sheet.acts.find((act) => act.line === line || act.updateId === updateId);
  if (own?.state === 'told') return sheet;
  if (own) {
    const act: Act = { ...own, line, state: 'told' };
    return { ...sheet, acts: sheet.acts.map((one) => (one === own ? act : one)) };
  }
  const choice = what.kind === 'tap' ? sheet.offered.get(what.key) : undefined;
  const spoken = sheet.entries.find((entry) => entry.last === sheet.known.size)?.said.language;
  const act: Act = {
    updateId: line,
    line,
    what,
    shown: what.kind === 'text' ? what.text : (choice?.label ?? ''),
    language: choice?.language ?? spoken ?? sheet.language,
    after: sheet.lastId,
    on: choice?.place ?? null,
    state: 'told',
  };
  return { ...sheet, acts: [...sheet.acts, act] };
}

function settled(
  acts: readonly Act[],
  { updateId, state, line }: Extract<Happened, { kind: 'settled' }>,
): readonly Act[] {
  // Its answer was lost, and the house has told of it meanwhile.
  if (line !== null && acts.some((act) => act.line === line && act.updateId !== updateId)) {
    return acts.filter((act) => act.updateId !== updateId);
  }
  return acts.map((act) => (act.updateId === updateId && act.state !== 'told' ? { ...act, state, line } : act));
}
