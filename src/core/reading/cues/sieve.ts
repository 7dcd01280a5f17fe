/**
 * Which of many patterns a text may hold, found for all of them at once: what each needs is entered under three of its characters,
 * those under which least stands, and a text is gone through once, however many patterns it is then asked of.
 */
import { lazily } from '../../lazily.ts';
import { neededBy } from './needed.ts';

type Test = (text: string) => boolean;

export interface Sieve {
  /** Whether a text may hold one of these, as `sourceOf` makes them; where it says no, it holds none. */
  add(sources: readonly string[]): Test;
  /** Whether a text holds what `make` makes of these; most are never made. */
  search(sources: readonly string[], make: () => RegExp): Test;
}

/** One text that a pattern needs, as marks. */
interface Entry {
  readonly pattern: number;
  readonly marks: readonly number[];
}

/** What was found of a text. A message is asked of every cue, one after another, and so are its few parts. */
interface Sifted {
  readonly text: string;
  /** By pattern: 1 where it may be held. */
  readonly open: Uint8Array;
}

const slots = 4096;
const kept = 4;

/** Of up to three neighbours. Two may share a slot: then a text is searched that need not be. */
const slotOf = (first: number, second: number, third: number): number =>
  ((Math.imul(first, 0x9e37_79b1) ^ Math.imul(second, 0x85eb_ca6b) ^ Math.imul(third, 0xc2b2_ae35)) >>> 16) % slots;

function marksOf(text: string): readonly number[] {
  const at = (i: number): number => (i < text.length ? text.charCodeAt(i) : 0);
  return Array.from({ length: Math.max(1, text.length - 2) }, (_, i) => slotOf(at(i), at(i + 1), at(i + 2)));
}

function holdsAll(held: Uint8Array, marks: readonly number[]): boolean {
  for (const mark of marks) if (held[mark] === 0) return false;
  return true;
}

export function makeSieve(): Sieve {
  const entries = Array.from({ length: slots }, (): Entry[] => []);
  const held = new Uint8Array(slots);
  let patterns = 0;
  let lately: readonly Sifted[] = [];

  function sift(text: string): Uint8Array {
    held.fill(0);
    const marks: number[] = [];
    const hold = (mark: number): void => {
      if (held[mark] === 1) return;
      held[mark] = 1;
      marks.push(mark);
    };
    let second = 0;
    let third = 0;
    for (let i = text.length - 1; i >= 0; i--) {
      const first = text.charCodeAt(i);
      hold(slotOf(first, 0, 0));
      hold(slotOf(first, second, 0));
      hold(slotOf(first, second, third));
      third = second;
      second = first;
    }
    const open = new Uint8Array(patterns);
    for (const mark of marks) {
      for (const entry of entries[mark] ?? []) if (holdsAll(held, entry.marks)) open[entry.pattern] = 1;
    }
    return open;
  }

  function openIn(text: string): Uint8Array {
    for (const one of lately) if (one.text === text) return one.open;
    const open = sift(text);
    lately = [{ text, open }, ...lately.slice(0, kept - 1)];
    return open;
  }

  function add(sources: readonly string[]): Test {
    const needed = neededBy(sources);
    if (needed === null) return () => true;
    const pattern = patterns++;
    for (const marks of needed.map(marksOf)) {
      const [fewest] = marks.map((mark) => entries[mark] ?? []).toSorted((a, b) => a.length - b.length);
      fewest?.push({ pattern, marks });
    }
    lately = [];
    return (text) => openIn(text)[pattern] === 1;
  }

  return {
    add,
    search(sources, make) {
      const [mayHold, pattern] = [add(sources), lazily(make)];
      return (text) => mayHold(text) && pattern().test(text);
    },
  };
}
