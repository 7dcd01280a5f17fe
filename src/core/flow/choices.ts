/** The choices of a place: which stand open now, and which one a typed text means. */
import type { ChoiceLine, FlowWords, Place } from './book.ts';
import { evaluate, factsOf, holds, type Lookup } from './evaluate.ts';
import type { Facts, Json, SayingChoice, Spot } from './flow.ts';
import {
  chosenWays,
  foldedText,
  namesOfLabels,
  ordinals,
  otherWords,
  typedWays,
  type LabelSearch,
} from './label-names.ts';
import { phraseOf } from './phrases.ts';

export interface OpenChoice {
  readonly choice: SayingChoice;
  readonly line: ChoiceLine;
}

const none: readonly OpenChoice[] = [];

/** The choices whose conditions hold, lists unfolded, in the order of the file. */
export function openChoices(place: Place, from: Spot, lookup: Lookup, words: FlowWords): readonly OpenChoice[] {
  if (place.choices.length === 0) return none;
  return place.choices.flatMap((line) =>
    itemsOf(line, lookup).flatMap(({ id, item }) => {
      const within: Lookup = (path) => (path[0] === 'item' ? member(item, path, 1) : lookup(path));
      if (!holds(line.when, within)) return [];
      const label = phraseOf(words, line.label, factsOf(line.with, within), within);
      return [{ line, choice: { id, label, gives: factsOf(line.gives, within), from } }];
    }),
  );
}

function itemsOf(line: ChoiceLine, lookup: Lookup): readonly { id: string; item: Json }[] {
  if (line.each === null) return [{ id: line.id, item: null }];
  const list = evaluate(line.each, lookup);
  return Array.isArray(list) ? list.map((item: Json, n) => ({ id: `${line.id}:${n}`, item })) : [];
}

/** The line of the file behind a choice's id, or null when the file has none any more. */
export const choiceLine = (place: Place, id: string): ChoiceLine | null =>
  place.choices.find((line) => line.id === id || (line.each !== null && id.startsWith(`${line.id}:`))) ?? null;

/** What a value holds under a path of names, from the n-th of them on; null where it holds nothing. */
export function member(value: Json, path: readonly string[], from = 0): Json {
  let found: Json = value;
  for (let i = from; i < path.length; i++) {
    const name = path[i] ?? '';
    if (typeof found !== 'object' || found === null || Array.isArray(found)) return null;
    found = Object.hasOwn(found, name) ? ((found as Facts)[name] ?? null) : null;
  }
  return found;
}

/** The choice whose label, in any language, was typed, or one of its other words; all there are, unless told. */
export function choiceByLabel(
  open: readonly OpenChoice[],
  text: string,
  words: FlowWords,
  { by = 'all-words', languages = words.languages }: Partial<LabelSearch> = {},
): OpenChoice | null {
  if (open.length === 0) return null;
  // Word by word as it stands before anything is left out: "no thanks" may be a label of its own.
  const ways = by === 'labels' ? [foldedText(text)].filter((way) => way !== '') : typedWays(words, text);
  if (ways.length === 0) return null;
  const labels = open.map(({ choice }) => choice.label);
  const names = namesOfLabels(words, labels, { by, languages });
  for (const way of ways) {
    const found = open.find((_, i) => names[i]!.includes(way));
    if (found) return found;
  }
  return null;
}

/** Those that stand under a message. */
export const shownChoices = (open: readonly OpenChoice[]): readonly SayingChoice[] =>
  open.flatMap(({ line, choice }) => (line.isUnseen ? [] : [choice]));

/** "The first one", "the last": of the choices a list was made of. */
export function choiceByOrdinal(open: readonly OpenChoice[], text: string, words: FlowWords): OpenChoice | null {
  const listed = open.filter(({ line }) => line.each !== null && !line.isUnseen);
  if (listed.length === 0) return null;
  const ways = chosenWays(words, text);
  const isSaid = (key: string): boolean => otherWords(words, key).some((one) => ways.includes(one));
  const at = ordinals.findIndex(isSaid);
  return (at < 0 ? undefined : at === 0 ? listed.at(-1) : listed[at - 1]) ?? null;
}

/** The choice whose place in the list was typed, from 1. */
export function choiceByNumber(open: readonly OpenChoice[], text: string): OpenChoice | null {
  const shown = open.filter(({ line }) => !line.isUnseen);
  const digits = shown.length === 0 ? null : /^\D{0,2}(\d{1,2})[.)\s]*$/u.exec(text.normalize('NFKC').trim());
  return digits && !/[-−–]/u.test(text) ? (shown[Number(digits[1]) - 1] ?? null) : null;
}
