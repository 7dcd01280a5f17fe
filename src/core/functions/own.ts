/** What memory keeps of a person, by functions: their name, vessels, brews and tastes. */
import type { BrewingData } from '../brewing/brewing-data.ts';
import type { Calls, Outcome } from '../flow/book.ts';
import type { Facts, Json } from '../flow/flow.ts';
import { tastesOf } from './brew/asked-brew.ts';
import { listOf, phrase, textOf } from './values.ts';
import { nameAlone, nameGiven } from '../lessons/spoken/name.ts';
import type { Talk } from '../talk/scene.ts';
import { usualTaste, type Taste } from '../brewing/taste.ts';

export const ownCallNames = [
  'keepVessel',
  'nameVessel',
  'dropVessel',
  'keepBrew',
  'ownTea',
  'dropTaste',
  'nameSaid',
] as const;

/** The last used first. */
const mostVessels = 8;
const mostBrews = 10;
const dayMs = 86_400_000;
/** Fits on a button beside the size. */
const longestVesselName = 24;
/** A list at a door has no room for more. */
const longestName = 60;

const isSameVessel = (a: Facts, b: Facts): boolean => a['vessel'] === b['vessel'] && a['volumeMl'] === b['volumeMl'];

export const ownCalls: { readonly [name in (typeof ownCallNames)[number]]: Calls[string] } = {
  keepVessel: ({ vessel = null, volumeMl = null }, { memory }) => {
    const all = listOf(memory['vessels']);
    const before = all.find((one) => isSameVessel(one, { vessel, volumeMl }));
    const others = all.filter((one) => one !== before);
    return { gives: [before ?? { vessel, volumeMl, called: null }, ...others].slice(0, mostVessels) };
  },
  nameVessel: ({ vessel = null, volumeMl = null, text = null }, { memory }) => ({
    gives: listOf(memory['vessels']).map((one) =>
      isSameVessel(one, { vessel, volumeMl }) ? { ...one, called: ownName(text) } : one,
    ),
  }),
  dropVessel: ({ vessel = null, volumeMl = null }, { memory }) => ({
    gives: listOf(memory['vessels']).filter((one) => !isSameVessel(one, { vessel, volumeMl })),
  }),
  /** A brew told again, with its last taste, takes its own place. */
  keepBrew: ({ record }, { memory }) => {
    const others = listOf(memory['brews']).filter((one) => one['atMs'] !== (record as Facts)['atMs']);
    return { gives: [record as Facts, ...others].slice(0, mostBrews) };
  },
  ownTea: (_, { memory, nowMs }) => ({
    gives: {
      tastes: Object.entries(tastesOf(memory)).flatMap(([family, taste]) => tasteLines(family, taste)),
      families: Object.keys(tastesOf(memory)),
      vessels: listOf(memory['vessels']),
      brews: listOf(memory['brews']).map((brew) => brewLine(brew, nowMs)),
      again: listOf(memory['brews']).filter(isFirstOfItsKind),
    },
  }),
  nameSaid: ({ text = null }) => nameSaid(textOf(text)),
  dropTaste: ({ family }, { memory }) => {
    const { [family as string]: _, ...others } = (memory['taste'] ?? {}) as Facts;
    return { gives: others };
  },
};

const called = (vessel: Facts): string => textOf(vessel['called'] ?? null);

interface LastVessel {
  readonly last: Json;
  readonly lastMl: Json;
  readonly vessels: BrewingData['vessels'];
}

const holdsStrainer: ReadonlySet<Json> = new Set(['mug', 'tumbler', 'infuser-mug']);
const vesselNamed = /[杯壶壺碗罐瓶]|\b(?:cups?|mugs?|pots?|teapots?|glass(?:es)?|flasks?|jars?)\b/i;

/** "I've got a strainer", beside a plan: it goes into the mug that is planned for, and makes no other vessel of a pot. */
export function withStrainer(
  heard: Facts,
  text: string,
  { flow, asked = null }: Talk,
  { last, lastMl }: LastVessel,
): Facts {
  const isBeside = (flow === 'brew' || flow === 'guide') && asked === null && last !== null;
  const told = ['tea', 'family', 'volumeMl', 'unknownTea'].some((name) => (heard[name] ?? null) !== null);
  if (!isBeside || told || heard['vessel'] !== 'infuser-mug' || vesselNamed.test(text)) return heard;
  if (flow === 'brew' && holdsStrainer.has(last)) return { ...heard, volumeMl: lastMl };
  return { ...heard, vessel: null, kind: 'greeting', act: 'yes' };
}

/** "My cup is bigger, 350", beside a plan for a glass: the glass is meant. */
export function withSameVessel(heard: Facts, { flow, asked = null }: Talk, { last, vessels }: LastVessel): Facts {
  const meant = heard['vesselFaint'] === true && asked === null && (flow === 'brew' || flow === 'guide');
  const namesTea = (heard['tea'] ?? heard['family'] ?? heard['unknownTea'] ?? null) !== null;
  if (!meant || namesTea || (heard['volumeMl'] ?? null) === null) return heard;
  const kind = vessels[textOf(last)]?.kind ?? null;
  const isAlike = kind !== null && kind === vessels[textOf(heard['vessel'])]?.kind;
  return isAlike ? { ...heard, vessel: last } : heard;
}

/** "And gyokuro, the same size, in a pot": as big as the vessel before it. */
export function withSameSize(heard: Facts, saysSame: boolean, { lastMl }: LastVessel): Facts {
  const isMeant = saysSame && lastMl !== null && (heard['volumeMl'] ?? null) === null && heard['turn'] !== 'other-size';
  return isMeant ? { ...heard, volumeMl: lastMl, sizeWord: null, tellsNothing: false } : heard;
}

/** What was heard, with the vessel meant by its own name; of several, the longest name. Naming it asks how to brew in it. */
export function withOwnVessel(heard: Facts, text: string, memory: Facts): Facts {
  const said = tidy(text).toLowerCase();
  const [own] = listOf(memory['vessels'])
    .filter((one) => called(one) !== '' && standsIn(said, called(one).toLowerCase()))
    .toSorted((a, b) => called(b).length - called(a).length);
  if (!own) return heard;
  const kind = heard['kind'] === 'offtopic' ? 'brew' : (heard['kind'] ?? null);
  return { ...heard, kind, vessel: own['vessel'] ?? null, volumeMl: heard['volumeMl'] ?? own['volumeMl'] ?? null };
}

const joins = (a: string, b: string): boolean => /^[\p{L}\p{N}]{2}$/u.test(a + b) && !/\p{Script=Han}/u.test(a + b);

/** As a word of its own: a pot called "red" is not meant by "bored". Han has no spaces to go by. */
function standsIn(said: string, name: string): boolean {
  for (let at = said.indexOf(name); at >= 0; at = said.indexOf(name, at + 1)) {
    const end = at + name.length;
    const before = joins(said.charAt(at - 1), name.charAt(0));
    if (!before && !joins(name.charAt(name.length - 1), said.charAt(end))) return true;
  }
  return false;
}

/** As it may be shown to others: nothing invisible, no line of its own. */
const tidy = (name: string): string =>
  name
    .normalize('NFC')
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim();

function ownName(text: Json): string | null {
  const letters = [...new Intl.Segmenter().segment(tidy(textOf(text)))].map(({ segment }) => segment);
  return letters.slice(0, longestVesselName).join('').trim() || null;
}

function nameSaid(text: string): Outcome {
  const name = tidy(nameAlone(text) ?? nameGiven(text) ?? text);
  const wrong = (code: string): Outcome => ({ wrong: code, field: 'name', values: { most: longestName } });
  if (!/\p{L}/u.test(name)) return wrong('name-without-letters');
  return name.length > longestName ? wrong('name-too-long') : { gives: name };
}

/** The same tea in the same vessel twice is one choice. */
function isFirstOfItsKind(brew: Facts, at: number, all: readonly Facts[]): boolean {
  return (
    all.findIndex(
      (one) => one['tea'] === brew['tea'] && one['family'] === brew['family'] && isSameVessel(one, brew),
    ) === at
  );
}

/** How it differs from what the trade does: no part of it where it does not. */
export function tasteParts({ waterC, strength, leaf }: Taste): readonly Json[] {
  return [
    ...tastePart(waterC - usualTaste.waterC, 'hotter', 'cooler', { degrees: Math.abs(waterC) }),
    ...tastePart(strength - usualTaste.strength, 'stronger', 'lighter', { share: Math.abs(strength - 1) }),
    ...tastePart(leaf - usualTaste.leaf, 'more-leaf', 'less-leaf', { share: Math.abs(leaf - 1) }),
  ];
}

const tastePart = (by: number, up: string, down: string, values: Facts): readonly Json[] =>
  by === 0 ? [] : [phrase(`my-told-${by > 0 ? up : down}`, values)];

function tasteLines(family: string, taste: Taste): readonly Json[] {
  const parts = tasteParts(taste);
  return [phrase('my-told-taste', { family, parts: parts.length === 0 ? [phrase('my-told-usual')] : parts })];
}

function brewLine({ atMs, tea, family, vessel, volumeMl, times, taste }: Facts, nowMs: number): Json {
  const days = Math.max(0, Math.floor((nowMs - Number(atMs)) / dayMs));
  const name = phrase(tea ? 'my-told-tea' : 'my-told-family', { tea: tea ?? null, family: family ?? null });
  const how = phrase(`my-told-was-${textOf(taste) || 'untold'}`);
  return phrase('my-told-brew', {
    days,
    name,
    vessel: vessel ?? null,
    volumeMl: volumeMl ?? null,
    times: times ?? [],
    how,
  });
}
