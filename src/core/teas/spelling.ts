/** How near two spellings are, and what a romanisation sounds like. Knows no names. */

/** Edits between two words, a swap of neighbours counting one; stops counting above `limit`. */
export function editDistance(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}

/** The word itself and the word with any one letter left out: two words one edit apart share one of these. */
export function withOneLeftOut(word: string): string[] {
  const forms = new Set([word]);
  for (let i = 0; i < word.length; i++) forms.add(word.slice(0, i) + word.slice(i + 1));
  return [...forms];
}

/** Romanisations of one sound fall together: tieh kuan yin, ti guan yin → diguanin. */
export function soundOf(letters: string): string {
  return letters
    .replace(/tz|ts/g, 'c')
    .replace(/hs|sh|x/g, 's')
    .replace(/zh|ch|j|q/g, 'c')
    .replace(/ie|ee|ea|y/g, 'i')
    .replace(/ou|oo|o|w/g, 'u')
    .replace(/h/g, '')
    .replace(/k/g, 'g')
    .replace(/p/g, 'b')
    .replace(/t/g, 'd')
    .replace(/ng/g, 'n')
    .replace(/(.)\1+/g, '$1');
}
