/** Finds known names in plain text, in Latin letters and in Han, exactly or nearly. Knows nothing of what the names mean. */
import { makeHanNames } from './han-names.ts';
import { runsOf, wordsOf, type Word } from './latin-words.ts';
import { editDistance, soundOf, withOneLeftOut } from './spelling.ts';

export interface Name<T> {
  /** Already plain (plainText). */
  readonly text: string;
  readonly meaning: T;
  /** Told apart by this: two names of one meaning never compete. */
  readonly id: string;
}

export interface Mention<T> {
  readonly meaning: T;
  readonly id: string;
  readonly start: number;
  readonly end: number;
  readonly exact: boolean;
}

export interface NameIndex<T> {
  /** All mentions, in the order of the text, none overlapping; the longest name wins. */
  mentions(plain: string): Mention<T>[];
}

interface Known<T> extends Name<T> {
  readonly key: string;
  /** Every way it is cut into words: "tie guan yin", "tieguanyin". */
  readonly cuts: Set<string>;
}

/** Shorter names are only found as they are written. */
const shortestNear = 6;
/** What a person wrote may be a letter short of that. */
const shortestWritten = 5;
const longestNear = 24;
const twoEditsFrom = 9;
const mostWords = 5;
/** So many words around an exact name are looked at for a longer one. */
const mostExtra = 2;
const mostKept = 5000;
/** Beyond so many words, and in runs that are longer, only exact names are looked for: it keeps the cost of any text small. */
const wordsReadNearly = 50;

/**
 * `ordinary` are everyday words that are never a misspelt name ("match", "taiwan", "me");
 * `alike` groups of plain Han characters one of which is often written for another.
 */
export function makeNameIndex<T>(
  names: readonly Name<T>[],
  ordinary: ReadonlySet<string>,
  alike: readonly string[] = [],
): NameIndex<T> {
  const latin = new Map<string, Known<T>>();
  const sounds = new Map<string, Known<T>[]>();
  const nearby = new Map<string, Known<T>[]>();
  /** The words of any name. */
  const nameWords = new Set<string>();
  const han = makeHanNames<T>(alike);
  let longestKey = 0;
  for (const name of names) learn(name);

  function learn(name: Name<T>): void {
    if (!/[a-z]/.test(name.text)) return han.learn(name);
    const words = wordsOf(name.text).map((word) => word.text);
    const key = words.join('');
    for (const word of words) nameWords.add(word);
    const before = latin.get(key);
    if (before) return void before.cuts.add(words.join(' '));
    const known: Known<T> = { ...name, key, cuts: new Set([words.join(' ')]) };
    latin.set(key, known);
    longestKey = Math.max(longestKey, key.length);
    if (known.key.length < shortestNear) return;
    add(sounds, soundOf(known.key), known);
    for (const form of withOneLeftOut(known.key)) add(nearby, form, known);
  }

  /** The longest name of the words from i up to `end`. */
  function exactAt(run: readonly Word[], i: number, end: number): { known: Known<T>; count: number } | null {
    let longest: { known: Known<T>; count: number } | null = null;
    let key = '';
    for (let count = 1; i + count <= end && key.length < longestKey; count++) {
      key += run[i + count - 1]?.text ?? '';
      const known = latin.get(key) ?? (key.length > 4 && key.endsWith('s') ? latin.get(key.slice(0, -1)) : undefined);
      if (known && isWhole(known, run.slice(i, i + count))) longest = { known, count };
    }
    return longest;
  }

  /** Everyday words run together are no name, unless it is written so. */
  function isWhole(known: Known<T>, window: readonly Word[]): boolean {
    const one = window.every((word, i) => i === 0 || word.glued);
    if (one || !window.some((word) => ordinary.has(word.text))) return true;
    const written = window.map((word) => word.text).join(' ');
    return known.cuts.has(written) || known.cuts.has(written.replace(/s$/, ''));
  }

  /** An everyday word of no name at all is no part of a misspelt one: most words of a text are such. */
  const parts = ({ text }: Word): boolean => ordinary.has(text) && !nameWords.has(text);

  function nearAt(run: readonly Word[], i: number, end: number): { known: Known<T>; count: number } | null {
    const ahead = run.slice(i, end);
    const parting = ahead.findIndex(parts);
    for (let count = parting < 0 ? ahead.length : parting; count > 0; count--) {
      const window = ahead.slice(0, count);
      const key = keyOf(window);
      if (key.length < shortestWritten || key.length > longestNear) continue;
      const everyday = window.filter((word) => ordinary.has(word.text));
      if (everyday.length === window.length) continue;
      const known = nearest(key);
      if (known && everyday.every((word) => holds(known, word.text))) return { known, count };
    }
    return null;
  }

  /** Windows of one text overlap, and texts repeat words: what was looked up is kept a while. */
  const looked = new Map<string, Known<T> | null>();
  function nearest(key: string): Known<T> | null {
    const before = looked.get(key);
    if (before !== undefined) return before;
    if (looked.size >= mostKept) looked.clear();
    const known = lookUp(key);
    looked.set(key, known);
    return known;
  }

  /** The one meaning that is nearest, or null when two are equally near. */
  function lookUp(key: string): Known<T> | null {
    const limit = key.length >= twoEditsFrom ? 2 : 1;
    const found = new Map<string, { known: Known<T>; edits: number }>();
    const weigh = (known: Known<T>, edits: number): void => {
      const earlier = found.get(known.id);
      if (!earlier || edits < earlier.edits) found.set(known.id, { known, edits });
    };
    for (const known of sounds.get(soundOf(key)) ?? []) weigh(known, 1);
    for (const form of withOneLeftOut(key)) {
      for (const known of nearby.get(form) ?? []) {
        const edits = editDistance(key, known.key, limit);
        if (edits <= limit) weigh(known, edits);
      }
    }
    const [first, second] = [...found.values()].toSorted((a, b) => a.edits - b.edits);
    if (!first || (second && second.edits === first.edits)) return null;
    return first.known;
  }

  /** A name found exactly may be part of a longer one that is misspelt: "jun shn silver needle" is not Silver Needle. */
  function longerNear(
    run: readonly Word[],
    i: number,
    count: number,
    found: Known<T>,
  ): { known: Known<T>; from: number; count: number } | null {
    for (let extra = mostExtra; extra > 0; extra--) {
      for (let from = Math.max(0, i - extra); from <= i; from++) {
        const window = run.slice(from, from + count + extra);
        if (window.length < count + extra) continue;
        const key = keyOf(window);
        if (key.length > longestNear || key.length < found.key.length + 2 || window.some(parts)) continue;
        const known = nearest(key);
        if (!known || known.id === found.id || known.key.length <= found.key.length) continue;
        const everyday = window.filter((word) => ordinary.has(word.text));
        if (everyday.every((word) => holds(known, word.text))) return { known, from, count: count + extra };
      }
    }
    return null;
  }

  function latinMentions(plain: string): Mention<T>[] {
    const mentions: Mention<T>[] = [];
    let read = 0;
    for (const run of runsOf(plain)) {
      const taken = new Set<number>();
      const take = (known: Known<T>, from: number, count: number, exact: boolean): void => {
        for (let k = from; k < from + count; k++) taken.add(k);
        const { meaning, id } = known;
        mentions.push({ meaning, id, start: run[from]?.start ?? 0, end: run[from + count - 1]?.end ?? 0, exact });
      };
      const scan = (at: typeof exactAt, exact: boolean): void => {
        const last = exact ? run.length : Math.min(run.length, wordsReadNearly);
        for (let i = 0; i < last; i++) {
          if (taken.has(i)) continue;
          const hit = at(run, i, firstTaken(taken, i, Math.min(i + mostWords, run.length)));
          if (!hit) continue;
          const longer = exact && read + i < wordsReadNearly ? longerNear(run, i, hit.count, hit.known) : null;
          const free =
            longer && firstTaken(taken, longer.from, longer.from + longer.count) === longer.from + longer.count;
          if (longer && free) take(longer.known, longer.from, longer.count, false);
          else take(hit.known, i, hit.count, exact);
          i = (longer && free ? longer.from + longer.count : i + hit.count) - 1;
        }
      };
      scan(exactAt, true);
      if (read < wordsReadNearly) scan(nearAt, false);
      read += run.length;
    }
    return mentions;
  }

  return {
    mentions: (plain) => [...latinMentions(plain), ...han.mentions(plain)].toSorted((a, b) => a.start - b.start),
  };
}

function keyOf(words: readonly Word[]): string {
  let key = '';
  for (const { text } of words) key += text;
  return key;
}

function add<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

/** "drageon well" may hold "well", since the name does; "show me" may not become Shou Mei. */
function holds<T>(known: Known<T>, word: string): boolean {
  return [...known.cuts].some((cut) => cut.split(' ').includes(word));
}

function firstTaken(taken: ReadonlySet<number>, from: number, length: number): number {
  for (let i = from; i < length; i++) if (taken.has(i)) return i;
  return length;
}
