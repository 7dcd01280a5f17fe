/** Which of some questions is clearly the same as the one asked, by the words they share. Knows no answers. */
import { plainText } from '../teas/plain-text.ts';
import { cueText } from './cues.ts';
import { termsOf } from './terms.ts';

/** The place in the list of the question that is clearly the same, or null. */
export type QuestionFinder = (text: string) => number | null;

/** Of all the words of both, so much weight must be in both: a wrong standing answer is worse than none. */
const leastShared = 0.5;
/** A question that shares one word only is not clearly the same, however short. */
const leastTerms = 2;

export function makeQuestionFinder(questions: readonly string[]): QuestionFinder {
  const known = questions.map(termsIn);
  const often = new Map<string, number>();
  for (const term of known.flatMap((terms) => [...terms])) often.set(term, (often.get(term) ?? 0) + 1);
  // Words that many questions hold say little.
  const weight = (term: string): number => Math.log(1 + (known.length + 1) / ((often.get(term) ?? 0) + 1));
  const sum = (terms: Iterable<string>): number => [...terms].reduce((total, term) => total + weight(term), 0);

  return (text) => {
    const asked = termsIn(text);
    let best: { readonly at: number; readonly share: number } | null = null;
    for (const [at, terms] of known.entries()) {
      const both = shared(terms, asked);
      if (both.size < Math.min(leastTerms, terms.size, asked.size) || both.size === 0) continue;
      const share = sum(both) / sum(new Set([...terms, ...asked]));
      if (share >= leastShared && share > (best?.share ?? 0)) best = { at, share };
    }
    return best?.at ?? null;
  };
}

const shared = (a: ReadonlySet<string>, b: ReadonlySet<string>): ReadonlySet<string> =>
  new Set([...a].filter((term) => b.has(term)));

/** Said to be polite; they say nothing of what is asked. */
const courtesies: ReadonlySet<string> = new Set('may might please thanks thank hi hello hey'.split(' '));

const termsIn = (text: string): ReadonlySet<string> =>
  new Set(
    termsOf(cueText(plainText(text).plain))
      .filter((term) => !courtesies.has(term))
      .map((term) => (/^[a-z]{3,}[^s]s$/.test(term) ? term.slice(0, -1) : term)),
  );
