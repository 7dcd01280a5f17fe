/** From flags or JSON to a checked request: every key known, every value of its kind, the tea found. */
import type { AsBrewedRequest, BrewedInfusion } from '../core/brewing/as-brewed.ts';
import type { BrewingData, LeafProfile } from '../core/brewing/brewing-data.ts';
import { isFamily, leafOfFamily, leafOfTea } from '../core/brewing/leaf-profile.ts';
import { families, styles, type BrewRequest, type Family } from '../core/brewing/plan.ts';
import { isMistake } from '../core/brewing/schedule.ts';
import type { TeaFinder } from '../core/teas/find.ts';
import type { Tea } from '../core/teas/tea.ts';
import type { Mistake } from '../core/units.ts';

export interface Shelf {
  readonly teas: readonly Tea[];
  readonly data: BrewingData;
  readonly finder: TeaFinder;
}

interface Named {
  readonly tea: string | null;
  readonly family: Family;
  readonly leaf: LeafProfile;
}

type Raw = { readonly [key: string]: unknown };
type Kind = 'text' | 'number' | 'flag' | 'list';

const requestKeys: { readonly [key: string]: Kind } = {
  tea: 'text',
  family: 'text',
  vessel: 'text',
  volumeMl: 'number',
  leafG: 'number',
  waterC: 'number',
  elevationM: 'number',
  style: 'text',
  guests: 'number',
  warmed: 'flag',
  strength: 'number',
};
const brewedKeys: { readonly [key: string]: Kind } = {
  tea: 'text',
  family: 'text',
  leafG: 'number',
  vessel: 'text',
  infusions: 'list',
};
const infusionKeys: { readonly [key: string]: Kind } = { waterMl: 'number', waterC: 'number', seconds: 'number' };

export interface Asked<R> {
  readonly leaf: LeafProfile;
  readonly request: R;
}

export function readObject(text: string, field: string): Raw | Mistake {
  try {
    const value: unknown = JSON.parse(text);
    if (typeof value === 'object' && value !== null && !Array.isArray(value)) return withoutNulls(value);
  } catch {
    // Told below, like any other text that is no object.
  }
  return { code: 'json-expected', field, values: {} };
}

/** What is null was not said. */
function withoutNulls(value: object): Raw {
  return Object.fromEntries(Object.entries(value).filter(([, field]) => field !== null));
}

/** The plan's request. What is missing or of the wrong kind is the first mistake. */
export function readRequest(shelf: Shelf, raw: Raw): Asked<BrewRequest> | Mistake {
  const wrong = wrongKey(raw, requestKeys, '');
  if (wrong) return wrong;
  const named = readNamed(shelf, raw);
  if (isMistake(named)) return named;
  if (raw['vessel'] === undefined) return vesselMistake(shelf.data);
  if (raw['volumeMl'] === undefined) return { code: 'volume-missing', field: 'volumeMl', values: {} };
  const { style } = raw;
  if (style !== undefined && !styles.some((known) => known === style)) {
    return { code: 'style-unknown', field: 'style', values: { allowed: styles.join(', ') } };
  }
  // Every key has just been checked to be of its kind.
  const { tea: _tea, family: _family, ...rest } = raw as unknown as BrewRequest;
  return { leaf: named.leaf, request: { ...rest, tea: named.tea, family: named.family } };
}

export function readAsBrewed(shelf: Shelf, raw: Raw): Asked<AsBrewedRequest> | Mistake {
  const wrong = wrongKey(raw, brewedKeys, '');
  if (wrong) return wrong;
  const named = readNamed(shelf, raw);
  if (isMistake(named)) return named;
  const missing = ['leafG', 'infusions'].find((key) => raw[key] === undefined);
  if (missing !== undefined) return { code: 'field-missing', field: missing, values: { field: missing } };
  const infusions = readInfusions(raw['infusions'] as readonly unknown[]);
  if ('code' in infusions) return infusions;
  const { leafG, vessel } = raw as { readonly leafG: number; readonly vessel?: string };
  return { leaf: named.leaf, request: { leafG, infusions, ...(vessel === undefined ? {} : { vessel }) } };
}

function readInfusions(list: readonly unknown[]): readonly BrewedInfusion[] | Mistake {
  const read: BrewedInfusion[] = [];
  for (const [i, item] of list.entries()) {
    const at = `infusions.${i}`;
    if (typeof item !== 'object' || item === null) return { code: 'json-expected', field: at, values: {} };
    const raw: Raw = { ...item };
    const wrong = wrongKey(raw, infusionKeys, `${at}.`);
    if (wrong) return wrong;
    const missing = Object.keys(infusionKeys).find((key) => raw[key] === undefined);
    if (missing !== undefined) return { code: 'field-missing', field: `${at}.${missing}`, values: { field: missing } };
    read.push(raw as unknown as BrewedInfusion);
  }
  return read;
}

function wrongKey(raw: Raw, keys: { readonly [key: string]: Kind }, prefix: string): Mistake | null {
  for (const [key, value] of Object.entries(raw)) {
    const kind = Object.hasOwn(keys, key) ? keys[key] : undefined;
    const field = `${prefix}${key}`;
    if (!kind) return { code: 'field-unknown', field, values: { field, allowed: Object.keys(keys).join(', ') } };
    if (!isOfKind(value, kind)) return { code: `${kind}-expected`, field, values: { field } };
  }
  return null;
}

function isOfKind(value: unknown, kind: Kind): boolean {
  if (kind === 'number') return typeof value === 'number' && Number.isFinite(value);
  if (kind === 'list') return Array.isArray(value);
  return typeof value === (kind === 'flag' ? 'boolean' : 'string');
}

function readNamed({ teas, data, finder }: Shelf, raw: Raw): Named | Mistake {
  const { tea, family } = raw as { readonly tea?: string; readonly family?: string };
  if (tea === undefined && family === undefined) return { code: 'tea-missing', field: 'tea', values: {} };
  if (family !== undefined && !isFamily(family)) {
    return { code: 'family-unknown', field: 'family', values: { allowed: families.join(', ') } };
  }
  if (tea === undefined) return { tea: null, family: family as Family, leaf: leafOfFamily(data, family as Family) };
  const found = finder.find(tea);
  const best = finder.byId(tea) ?? found.best;
  if (!best) return teaMistake(found.candidates, teas);
  if (family !== undefined && best.family !== family) {
    return { code: 'family-differs', field: 'family', values: { tea: best.id, family: best.family } };
  }
  const leaf = leafOfTea(data, best);
  return { tea: best.id, family: leaf.family, leaf };
}

const idsOf = (teas: readonly Tea[]): string => teas.map(({ id }) => id).join(', ');

function teaMistake(candidates: readonly Tea[], teas: readonly Tea[]): Mistake {
  if (candidates.length > 1) return { code: 'tea-ambiguous', field: 'tea', values: { allowed: idsOf(candidates) } };
  return { code: 'tea-unknown', field: 'tea', values: { allowed: idsOf(teas) } };
}

function vesselMistake(data: BrewingData): Mistake {
  return { code: 'vessel-missing', field: 'vessel', values: { allowed: Object.keys(data.vessels).join(', ') } };
}
