/** A key and its values become a sentence in a language. Loads nothing: the sources are given as text. */
import { FluentBundle, FluentType, type FluentFunction, type FluentVariable } from '@fluent/bundle';
import { languages, type Json, type Language } from '../units.ts';
import { variablesOf, type Entry } from './pattern.ts';
import {
  degrees,
  degreesApart,
  duration,
  durations,
  either,
  grams,
  listed,
  millilitres,
  plainNumber,
  spoons,
} from './quantities.ts';
import type { WordsSource } from './source-check.ts';
import { wallClock, wallDay, wallTime } from './wall-times.ts';

/** A sentence before it is in words. A value may itself be a phrase, a list of them, or the same words in each language. */
export interface Spoken {
  readonly key: string;
  readonly values: { readonly [name: string]: Json };
}

export interface Words {
  /** Throws on an unknown key or a missing value: a programmer's mistake. */
  say(language: Language, phrase: Spoken): string;
  has(key: string): boolean;
  keys(): readonly string[];
  /** The values a sentence needs, in any of its languages. */
  variables(key: string): readonly string[];
  /** Other words a person may type for it: the attribute `.typed`, parted by " / ". */
  typed(language: Language, key: string): readonly string[];
}

/** The name of a tea, a vessel … in a language, or null where the data has none. */
export type NameOf = (kind: string, id: string, language: Language) => string | null;

export type WordsSources = { readonly [language in Language]: WordsSource };

/** The functions a sentence may call, besides Fluent's own NUMBER and DATETIME. */
export const wordFunctions: ReadonlySet<string> = new Set(
  'GRAMS DEGREES SPREAD ML DURATION DURATIONS SPOONS LIST EITHER PERCENT TEA VESSEL FAMILY STYLE ANSWER LESSON WHEN DAY CLOCK NUMBER DATETIME'.split(
    ' ',
  ),
);

/** A list, a phrase or anything else that is neither text nor number. */
class Value extends FluentType<Json> {
  override toString(): string {
    throw new TypeError(`${JSON.stringify(this.value)} cannot be said as it is`);
  }
}

interface Voice {
  readonly bundle: FluentBundle;
  readonly entries: ReadonlyMap<string, Entry>;
}

/** Throws when a source has problems; content tells those with their file before it comes to this. */
export function makeWords(sources: WordsSources, names: NameOf): Words {
  const say = (language: Language, phrase: Spoken): string => render(voices[language], phrase, valueIn(language, say));
  const voices = Object.fromEntries(
    languages.map((language) => [language, makeVoice(language, sources[language], { names, say })]),
  ) as { readonly [language in Language]: Voice };
  const keys = [...voices.en.entries.keys()].filter((id) => !id.startsWith('-'));
  const known = new Set(keys);
  const variables = new Map<string, readonly string[]>();
  const variablesIn = (key: string): readonly string[] => {
    const before = variables.get(key);
    if (before) return before;
    const found = allVariables(key, Object.values(voices));
    variables.set(key, found);
    return found;
  };
  return {
    say,
    has: (key) => known.has(key),
    keys: () => keys,
    variables: variablesIn,
    typed: (language, key) => typedWords(voices[language], key),
  };
}

const allVariables = (key: string, voices: readonly Voice[]): readonly string[] => [
  ...new Set(voices.flatMap((voice) => [...variablesOf(key, voice.entries)])),
];

function typedWords({ bundle }: Voice, key: string): readonly string[] {
  const typed = bundle.getMessage(key)?.attributes['typed'];
  return typed === undefined ? [] : bundle.formatPattern(typed).split(' / ');
}

type Say = (language: Language, phrase: Spoken) => string;

function makeVoice(
  language: Language,
  { resource, entries, problems: [problem] }: WordsSource,
  using: { names: NameOf; say: Say },
): Voice {
  if (problem) throw new Error(`${language}:${problem.line}:${problem.column} expected ${problem.expected}`);
  const bundle = new FluentBundle(language, { functions: functionsOf(language, using), useIsolating: false });
  bundle.addResource(resource);
  return { bundle, entries };
}

function render({ bundle }: Voice, phrase: Spoken, toVariable: (value: Json) => FluentVariable): string {
  const pattern = bundle.getMessage(phrase.key)?.value;
  if (pattern === undefined || pattern === null) throw new Error(`no sentence is called "${phrase.key}"`);
  const values = Object.fromEntries(Object.entries(phrase.values).map(([name, value]) => [name, toVariable(value)]));
  const errors: Error[] = [];
  const text = bundle.formatPattern(pattern, values, errors);
  if (errors[0]) throw new Error(`"${phrase.key}" cannot be said: ${errors[0].message}`, { cause: errors[0] });
  return text;
}

const isPhrase = (value: Json): value is { key: string; values: { [name: string]: Json } } =>
  typeof value === 'object' && value !== null && !Array.isArray(value) && 'key' in value && 'values' in value;

const isInEveryLanguage = (value: Json): value is { readonly [language in Language]: string } =>
  typeof value === 'object' && value !== null && languages.every((language) => language in value);

/** Null and the booleans are words a sentence can choose by: none, true, false. */
function valueIn(language: Language, say: Say): (value: Json) => FluentVariable {
  return (value) => {
    if (typeof value === 'string' || typeof value === 'number') return value;
    if (value === null) return 'none';
    if (typeof value === 'boolean') return String(value);
    if (isInEveryLanguage(value)) return value[language];
    return isPhrase(value) ? say(language, value) : new Value(value);
  };
}

function functionsOf(language: Language, { names, say }: { names: NameOf; say: Say }): Record<string, FluentFunction> {
  const named =
    (kind: string): FluentFunction =>
    ([id]) =>
      names(kind, textOf(id), language) ?? say(language, { key: `${kind}-${textOf(id)}`, values: {} });
  const items = (list: unknown): string[] =>
    listOf(list).map((item) => (isPhrase(item) ? say(language, item) : String(item as string | number)));
  return {
    GRAMS: ([g]) => grams(numberOf(g), language),
    DEGREES: ([c, unit]) => degrees(numberOf(c), unit === undefined ? 'C' : textOf(unit)),
    SPREAD: ([c, unit]) => degreesApart(numberOf(c), unit === undefined ? 'C' : textOf(unit)),
    ML: ([ml]) => millilitres(numberOf(ml), language),
    DURATION: ([s]) => duration(numberOf(s), language),
    DURATIONS: ([list]) => durations(listOf(list).map(Number), language),
    SPOONS: ([n]) => spoons(numberOf(n)),
    PERCENT: ([fraction]) => `${plainNumber(numberOf(fraction) * 100)} %`,
    LIST: ([list]) => listed(items(list), language),
    EITHER: ([list]) => either(items(list), language),
    TEA: named('tea'),
    VESSEL: named('vessel'),
    FAMILY: named('family'),
    STYLE: named('style'),
    ANSWER: named('answer'),
    LESSON: named('lesson'),
    WHEN: ([wall], { style }) => wallTime(textOf(wall), language, style === undefined ? 'long' : 'short'),
    DAY: ([wall]) => wallDay(textOf(wall), language),
    CLOCK: ([wall]) => wallClock(textOf(wall), language),
  };
}

const bare = (value: unknown): unknown => (value instanceof FluentType ? value.valueOf() : value);
const textOf = (value: unknown): string => String(bare(value));

function numberOf(value: unknown): number {
  const number = bare(value);
  if (typeof number !== 'number') throw new TypeError(`expected a number, not ${textOf(value)}`);
  return number;
}

function listOf(value: unknown): readonly Json[] {
  const list = bare(value);
  if (!Array.isArray(list)) throw new TypeError(`expected a list, not ${textOf(value)}`);
  return list as readonly Json[];
}
