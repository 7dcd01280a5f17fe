/** How unlikely it is that a thumb made one word of another. Knows no words. */

/** What costs no more is a slip; what costs more is one only in a long word. */
export const likely = 2;
const [longEnough, longest] = [6, 8];

/** From 1; null where no thumb did it, or more than one slip is between them. */
export function slipCost(word: string, target: string): number | null {
  const at = sameAhead(word, target);
  const cost = costAt(word, target, at);
  if (cost === null) return null;
  // A first letter is seldom wrong.
  if (at === 0) return cost <= (word.length < longEnough ? 1 : likely) ? cost + 1 : null;
  return cost <= likely || Math.min(word.length, target.length) >= longest ? cost : null;
}

function costAt(word: string, target: string, at: number): number | null {
  if (word.length === target.length) return otherLetter(word, target, at);
  if (word.length === target.length + 1) return letterMore(word, target, at);
  return word.length + 1 === target.length ? letterLess(word, target, at) : null;
}

function otherLetter(word: string, target: string, at: number): number | null {
  const [typed, meant] = [word.charAt(at), target.charAt(at)];
  const [behind, behindMeant] = [word.slice(at + 1), target.slice(at + 1)];
  const isSwapped = typed === behindMeant.charAt(0) && meant === behind.charAt(0);
  if (isSwapped && behind.slice(1) === behindMeant.slice(1)) return 1;
  if (behind !== behindMeant) return null;
  return isBeside(typed, meant) || soundsAlike(typed, meant) ? 2 : 3;
}

function letterMore(word: string, target: string, at: number): number | null {
  const [typed, behind] = [word.charAt(at), word.slice(at + 1)];
  if (behind !== target.slice(at)) return null;
  if (typed === word.charAt(at - 1)) return 1;
  return isBeside(typed, word.charAt(at - 1)) || isBeside(typed, behind.charAt(0)) ? 2 : 3;
}

function letterLess(word: string, target: string, at: number): number | null {
  const [meant, behind] = [target.charAt(at), target.slice(at + 1)];
  // "draw" of "draws" is a word of its own.
  if (word.slice(at) !== behind || (behind === '' && meant === 's')) return null;
  if (meant === target.charAt(at - 1)) return 1;
  return behind === '' && 'dry'.includes(meant) ? 2 : 1.5;
}

function sameAhead(a: string, b: string): number {
  let same = 0;
  while (same < a.length && a[same] === b[same]) same++;
  return same;
}

const alike = ['aeiouy', 'ckqs', 'sz', 'gj', 'fv', 'vw'];
const soundsAlike = (a: string, b: string): boolean =>
  b !== '' && alike.some((letters) => letters.includes(a) && letters.includes(b));

const rows = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
/** Pairs of keys that lie side by side. */
const beside = new Set(
  rows.flatMap((row, at) =>
    row.split('').flatMap((key, i) => {
      const below = rows[at + 1] ?? '';
      const others = [row[i + 1], below[i], below[i - 1]].filter((other) => other !== undefined);
      return others.flatMap((other) => [`${key}${other}`, `${other}${key}`]);
    }),
  ),
);
const isBeside = (a: string, b: string): boolean => beside.has(a + b);

/** With the letter at this place and the one behind it changed. */
export const swapped = (word: string, at: number): string =>
  word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2);
