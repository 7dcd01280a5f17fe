/** Makes phrases of sentence keys and what is known. Puts nothing into words. */
import type { FlowWords, SayPart, Values } from './book.ts';
import { evaluate, factsOf, isSame, type Lookup } from './evaluate.ts';
import type { Facts, Json, Phrase, Saying } from './flow.ts';

/** Known only when a sentence goes out: how late it is, in seconds and as a word. */
export const toldAtDelivery: readonly string[] = ['lateS', 'late'];

/** In no sentence, but what a channel may show beside it: the instants its times are. */
const goesAlong: readonly string[] = ['instants'];

/** A sentence's values are given beside it, or are facts of the same name; a dash reads into a fact. */
export function phraseOf(words: FlowWords, key: string, given: Facts, lookup: Lookup): Phrase {
  const valueNamed = (name: string): Json => (name in given ? (given[name] ?? null) : lookup(name.split('-')));
  const values: { [name: string]: Json } = {};
  for (const name of words.variables(key)) if (!toldAtDelivery.includes(name)) values[name] = valueNamed(name);
  for (const name of goesAlong) if (name in given) values[name] = given[name] ?? null;
  return { key, values };
}

/** One part of a "say": a key, or an expression that gives a phrase, a list of them, or null for nothing. */
export function spoken(words: FlowWords, part: SayPart, values: Values, lookup: Lookup): readonly Phrase[] {
  if ('key' in part) return [phraseOf(words, part.key, factsOf(values, lookup), lookup)];
  const found = evaluate(part.computed, lookup);
  const phrases = (Array.isArray(found) ? found : [found]) as readonly (Phrase | null)[];
  return phrases.flatMap((phrase) => (phrase === null ? [] : [phraseOf(words, phrase.key, phrase.values, lookup)]));
}

interface Beside {
  readonly choices: Saying['choices'];
  readonly show: Facts | null;
  readonly slot: string | null;
}

/** What two answers both end with is said once, after both; `first` of the phrases are the first answer's. */
export function withoutTwins(phrases: readonly Phrase[], first: number): readonly Phrase[] {
  if (phrases.length < 2) return phrases;
  const lastOf = (key: string): number => phrases.findLastIndex((other) => other.key === key);
  const isSaidAgain = (phrase: Phrase): boolean =>
    phrases.some((other, n) => n >= first && isSame({ ...phrase }, { ...other }));
  return phrases.filter((phrase, n) => {
    if (Object.keys(phrase.values).length === 0) return lastOf(phrase.key) === n;
    return n >= first || !isSaidAgain(phrase);
  });
}

/** One message. */
export function sayingOf(phrases: readonly Phrase[], { choices, show, slot }: Beside): Saying {
  const saying: Saying = { phrases, choices };
  const shown = show ? { ...saying, show } : saying;
  return slot === null ? shown : { ...shown, slot };
}
