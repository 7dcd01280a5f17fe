/** Text as the server counts and cleans it, and cut where a reader would pause. */

/** Characters as the server counts them: Unicode code points. */
export function lengthOf(text: string): number {
  let length = 0;
  for (let i = 0; i < text.length; i++) if (!isLowSurrogate(text.charCodeAt(i))) length++;
  return length;
}

/**
 * What the server would drop or replace by itself, and so shift every mark behind it: carriage returns, control characters,
 * line and direction overrides (U+2028–202E); and halves of characters, which it refuses. (Bot API: text is cleaned.)
 */
export function cleanText(text: string): string {
  return text
    .replace(/[\r\u2028-\u202e]/g, '')
    .replace(/[^\P{Cc}\n]/gu, ' ')
    .replace(/\p{Surrogate}/gu, '\ufffd');
}

const pauses = [/\n\n/g, /\n/g, /[.!?…](?=\s)\s|[。！？]/g, /\s/g];

/** Pieces of at most `limit` code points, none empty, none with space around it. */
export function splitText(text: string, limit: number): readonly string[] {
  const pieces: string[] = [];
  let rest = text.trim();
  while (lengthOf(rest) > limit) {
    const cut = cutOf(rest, limit);
    pieces.push(rest.slice(0, cut).trimEnd());
    rest = rest.slice(cut).trimStart();
  }
  return rest === '' ? pieces : [...pieces, rest];
}

/** The last best pause in the second half of what fits; a hard cut where there is none. */
function cutOf(text: string, limit: number): number {
  const end = indexOfPoint(text, limit);
  const window = text.slice(0, end);
  for (const pause of pauses) {
    const last = [...window.matchAll(pause)].at(-1);
    const cut = last === undefined ? 0 : last.index + last[0].length;
    if (cut > end / 2) return cut;
  }
  return end;
}

/** The string index of the n-th code point. */
function indexOfPoint(text: string, n: number): number {
  let index = 0;
  for (let points = 0; points < n; points++) index += text.codePointAt(index)! > 0xffff ? 2 : 1;
  return index;
}

function isLowSurrogate(unit: number): boolean {
  return unit >= 0xdc00 && unit <= 0xdfff;
}
