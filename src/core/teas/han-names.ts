/** Finds known names in Han, as they are written or with one character taken for another. Knows nothing of what they mean. */
import type { Mention, Name } from './name-index.ts';

export interface HanNames<T> {
  learn(name: Name<T>): void;
  /** In the order of the text, none overlapping; the longest name wins. */
  mentions(plain: string): Mention<T>[];
}

/** A shorter name with one character wrong is another word. */
const shortestNear = 3;

/** `alike` are groups of plain characters one of which is often written for another. */
export function makeHanNames<T>(alike: readonly string[]): HanNames<T> {
  const exactly = new Map<string, Name<T>>();
  /** A name with one character wrong → the name, or null where it is two's. */
  const nearly = new Map<string, Name<T> | null>();
  /** First character → longest name that begins with it. */
  const reach = new Map<string, number>();
  const mistaken = mistakenFor(alike);

  const reachTo = (text: string): void => {
    const first = text.charAt(0);
    reach.set(first, Math.max(reach.get(first) ?? 0, text.length));
  };
  const learnSlip = (name: Name<T>, slip: string): void => {
    const before = nearly.get(slip);
    nearly.set(slip, before === undefined || before?.id === name.id ? name : null);
    reachTo(slip);
  };
  const mentionAt = (plain: string, start: number): Mention<T> | null => {
    for (let length = Math.min(reach.get(plain.charAt(start)) ?? 0, plain.length - start); length > 0; length--) {
      const written = plain.slice(start, start + length);
      const exact = exactly.get(written);
      const known = exact ?? nearly.get(written);
      if (known)
        return { meaning: known.meaning, id: known.id, start, end: start + length, exact: exact !== undefined };
    }
    return null;
  };
  return {
    learn(name) {
      exactly.set(name.text, name);
      reachTo(name.text);
      if (name.text.length < shortestNear) return;
      for (const [i, character] of name.text.split('').entries()) {
        for (const other of mistaken.get(character) ?? []) {
          learnSlip(name, name.text.slice(0, i) + other + name.text.slice(i + 1));
        }
      }
    },
    mentions(plain) {
      const mentions: Mention<T>[] = [];
      for (let i = 0; i < plain.length; i++) {
        const found = mentionAt(plain, i);
        if (!found) continue;
        mentions.push(found);
        i = found.end - 1;
      }
      return mentions;
    },
  };
}

/** Character → those it may stand for. */
function mistakenFor(alike: readonly string[]): ReadonlyMap<string, readonly string[]> {
  const others = new Map<string, string[]>();
  for (const group of alike) {
    for (const one of group) {
      for (const other of group) if (other !== one) others.set(one, [...(others.get(one) ?? []), other]);
    }
  }
  return others;
}
