/** Cuts plain text into words of Latin letters, and those into runs. Judges no word. */

export interface Word {
  readonly text: string;
  /** Only a hyphen or an apostrophe stands before it: "ch'i-men" is one word cut in three. */
  readonly glued: boolean;
  readonly start: number;
  readonly end: number;
}

export function wordsOf(plain: string): Word[] {
  return [...plain.matchAll(/[a-z]+/g)].map((m) => ({
    text: m[0],
    glued: isJoint(plain.charAt(m.index - 1)) && isLetter(plain.charAt(m.index - 2)),
    start: m.index,
    end: m.index + m[0].length,
  }));
}

const isJoint = (character: string): boolean => character === '-' || character === "'";
const isLetter = (character: string): boolean => character >= 'a' && character <= 'z';

/** Words that follow one another with nothing but a space, a hyphen or an apostrophe between them. */
export function runsOf(plain: string): Word[][] {
  const runs: Word[][] = [];
  let last: Word | null = null;
  for (const word of wordsOf(plain)) {
    const joined = last !== null && /^[ '\-_]{1,3}$/.test(plain.slice(last.end, word.start));
    if (joined) runs.at(-1)?.push(word);
    else runs.push([word]);
    last = word;
  }
  return runs;
}
