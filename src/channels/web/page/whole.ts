/** Cuts a text where a line may not break: between a number and what it counts. Pure. */

/** A number with its unit or the Han character after it; "第 3 泡" is one as well. */
const together = /(?:第 ?)?\d[\d.,:½¼¾⅓⅔]*(?: ?°[CF]?| ?%| ?\p{Script=Han}| \p{Script=Latin}{1,3}(?!\p{L}))/gu;

/** The parts of a text in order; every second one must stay on one line. */
export function wholes(text: string): readonly string[] {
  const parts: string[] = [];
  let from = 0;
  for (const { index, 0: whole } of text.matchAll(together)) {
    parts.push(text.slice(from, index), whole);
    from = index + whole.length;
  }
  return [...parts, text.slice(from)];
}

/** About how much room a text takes, in letters: a Han character is as wide as two. */
export const breadth = (text: string): number => text.length + (text.match(/[\u2e80-\uffff]/g)?.length ?? 0);
