/** The words by which a choice may be typed, folded so that they can be compared. Knows no places. */
import type { FlowWords } from './book.ts';
import type { Phrase } from './flow.ts';

/** `labels`: as it is said; `all-words`: its other words as well. */
export type NamedBy = 'labels' | 'all-words';

export function foldedText(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[\s\p{P}]+/gu, '');
}

export interface LabelSearch {
  /** Whether other words than the label itself count. */
  readonly by: NamedBy;
  readonly languages: readonly string[];
}

/** A label without values reads the same each time, and every text typed is compared with dozens of them in three languages. */
const kept = new WeakMap<FlowWords, Map<string, Map<string, readonly string[]>>>();

function keptFolded(words: FlowWords, about: string, fold: (key: string) => readonly string[]) {
  const keptHere = kept.get(words) ?? new Map<string, Map<string, readonly string[]>>();
  kept.set(words, keptHere);
  const ofAll = keptHere.get(about) ?? new Map<string, readonly string[]>();
  keptHere.set(about, ofAll);
  return (key: string): readonly string[] => {
    const names = ofAll.get(key) ?? fold(key);
    ofAll.set(key, names);
    return names;
  };
}

/** By which each of some labels may be typed. */
export function namesOfLabels(
  words: FlowWords,
  labels: readonly Phrase[],
  { by, languages }: LabelSearch,
): readonly (readonly string[])[] {
  const inAll = (label: Phrase): readonly string[] =>
    languages.flatMap((language) => worded(words, language, label, by));
  const bare = keptFolded(words, `${by} ${languages.join(' ')}`, (key) => inAll({ key, values: {} }));
  return labels.map((label) => (Object.keys(label.values).length > 0 ? inAll(label) : bare(label.key)));
}

/** Other words of a sentence, in every language. */
export const otherWords = (words: FlowWords, key: string): readonly string[] =>
  keptFolded(words, 'other words', () =>
    words.languages.flatMap((language) => words.typed(language, key)).map(foldedText),
  )(key);

function worded(words: FlowWords, language: string, label: Phrase, by: NamedBy): readonly string[] {
  const others = by === 'labels' ? [] : words.typed(language, label.key);
  return [words.say(language, label), ...others].map(foldedText);
}

/** The sentence whose other words are said around a label and mean nothing beside it: "ok", "please". */
export const aroundLabels = 'said-around-labels';

/** The sentences whose other words mean the last of a list, the first, the second … */
export const ordinals = [
  'said-for-last',
  'said-for-1',
  'said-for-2',
  'said-for-3',
  'said-for-4',
  'said-for-5',
] as const;

/** The sentence whose other words are said before or behind the one that is chosen: "I'll take the first". */
export const aroundChosen = 'said-around-the-chosen';

/** Said behind anything in Chinese, and meaning nothing by itself: "帶我泡吧". */
const particles = /(?<=\p{Script=Han}{2})[吧啦喔哦呀啊囉啰咯嘍喽嘛]+$/u;

/** What was typed, and the same without what is only said around it: "ok, done", "好，帶我泡". */
export function typedWays(words: FlowWords, text: string): readonly string[] {
  const around = new Set(otherWords(words, aroundLabels));
  const parts = text
    .split(/[\s\p{P}]+/u)
    .map(foldedText)
    .filter((part) => part !== '');
  const from = parts.findIndex((part) => !around.has(part));
  const to = parts.findLastIndex((part) => !around.has(part));
  const pared = from < 0 ? '' : parts.slice(from, to + 1).join('');
  return [foldedText(text), pared, pared.replace(particles, '')].filter((way) => way !== '');
}

/** The same for one of a list, without what is said of choosing it. */
export function chosenWays(words: FlowWords, text: string): readonly string[] {
  const around = otherWords(words, aroundChosen);
  const pared = (way: string): string => {
    const ahead = around.find((one) => way.startsWith(one) && way.length > one.length);
    if (ahead !== undefined) return pared(way.slice(ahead.length));
    const behind = around.find((one) => way.endsWith(one) && way.length > one.length);
    return behind === undefined ? way : pared(way.slice(0, -behind.length));
  };
  const ways = typedWays(words, text);
  return [...ways, ...ways.map(pared)];
}
