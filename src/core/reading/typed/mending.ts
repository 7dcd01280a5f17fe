/** Puts a slip of the keyboard right where one common word is a letter away. Knows no meanings. */
import { editDistance, withOneLeftOut } from '../../teas/spelling.ts';

/** Shorter words are too near to one another. */
const shortest = 4;

/** Shortened as people do on a telephone. */
const shortened: { readonly [word: string]: string } = {
  u: 'you',
  ur: 'your',
  r: 'are',
  y: 'why',
  pls: 'please',
  plz: 'please',
  wat: 'what',
  wut: 'what',
  wht: 'what',
  wen: 'when',
  hw: 'how',
  hav: 'have',
  haf: 'have',
  shud: 'should',
  cud: 'could',
  tme: 'time',
  kep: 'keep',
  mak: 'make',
  teh: 'the',
  abt: 'about',
  tmrw: 'tomorrow',
  tmrrw: 'tomorrow',
  tomoz: 'tomorrow',
  tonite: 'tonight',
  nite: 'night',
  wanna: 'want to',
  gimme: 'give me',
  lemme: 'let me',
  cuz: 'because',
  bc: 'because',
  bout: 'about',
  n: 'and',
  w: 'with',
  tmr: 'tomorrow',
  tho: 'though',
  thru: 'through',
  em: 'them',
  til: 'until',
  bday: 'birthday',
  rn: 'now',
};

/** What is shortened on a telephone, in full. */
export const spelledOut = (text: string): string => text.replace(/[a-z]+/g, (word) => shortened[word] ?? word);

/** `common` words are what a slip is put right to, the commonest first; `known` words are none. */
export function makeMender(common: readonly string[], known: ReadonlySet<string>): (text: string) => string {
  const targets = common.filter((word) => word.length >= shortest);
  const places = new Map(targets.map((word, i) => [word, i]));
  const near = new Map<string, number[]>();
  for (const [i, word] of targets.entries()) {
    for (const form of withOneLeftOut(word)) {
      const those = near.get(form);
      if (those) those.push(i);
      else near.set(form, [i]);
    }
  }
  const mend = (word: string): string => {
    const long = shortened[word];
    if (long !== undefined) return long;
    if (word.length < shortest || places.has(word) || known.has(word)) return word;
    const those = withOneLeftOut(word).flatMap((form) => near.get(form) ?? []);
    const fitting = those.filter((i) => isSlipOf(word, targets[i] ?? ''));
    // More slips leave a letter out than put one in.
    const whole = fitting.filter((i) => (targets[i]?.length ?? 0) >= word.length);
    return targets[Math.min(...(whole.length > 0 ? whole : fitting))] ?? word;
  };
  return (text) => text.replace(/[a-z]+/g, mend);
}

/** A first letter is seldom wrong. */
function isSlipOf(word: string, meant: string): boolean {
  return word.charAt(0) === meant.charAt(0) && editDistance(word, meant, 1) <= 1;
}
