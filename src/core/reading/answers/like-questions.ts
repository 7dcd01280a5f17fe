/** Which of some questions is clearly the same as the one asked, by the words they share. Knows no answers. */
import { plainText } from '../../teas/plain-text.ts';
import { cueText } from '../cues/cues.ts';
import { termsOf } from './terms.ts';

/** The place in the list of the question that is clearly the same, or null. */
export type QuestionFinder = (text: string) => number | null;

/** Of all the words of both, so much weight must be in both: a wrong standing answer is worse than none. */
const leastShared = 0.5;
/** Pairs of Han characters overlap less than words do. */
const leastSharedHan = 0.4;
/** A question that shares one word only is not clearly the same, however short. */
const leastTerms = 2;

export function makeQuestionFinder(questions: readonly string[]): QuestionFinder {
  const known = questions.map(termsIn);
  const holding = new Map<string, number[]>();
  for (const [at, terms] of known.entries()) {
    for (const term of terms) {
      const places = holding.get(term);
      if (places) places.push(at);
      else holding.set(term, [at]);
    }
  }
  // Words that many questions hold say little.
  const weight = (term: string): number => Math.log(1 + (known.length + 1) / ((holding.get(term)?.length ?? 0) + 1));
  const sum = (terms: Iterable<string>): number => [...terms].reduce((total, term) => total + weight(term), 0);
  const sums = known.map(sum);

  return (text) => {
    const asked = termsIn(text);
    const least = isHan(asked) ? leastSharedHan : leastShared;
    const askedSum = sum(asked);
    const both = new Map<number, { readonly count: number; readonly sum: number }>();
    for (const term of asked) {
      const weighs = weight(term);
      for (const at of holding.get(term) ?? []) {
        const before = both.get(at) ?? { count: 0, sum: 0 };
        both.set(at, { count: before.count + 1, sum: before.sum + weighs });
      }
    }
    const alike = [...both].flatMap(([at, shared]) => {
      const share = shared.sum / ((sums[at] ?? 0) + askedSum - shared.sum);
      const enough = shared.count >= Math.min(leastTerms, known[at]?.size ?? 0, asked.size);
      return enough && share >= least ? [{ at, share }] : [];
    });
    return alike.toSorted((a, b) => b.share - a.share)[0]?.at ?? null;
  };
}

const isHan = (terms: ReadonlySet<string>): boolean => [...terms].some((term) => /\p{Script=Han}/u.test(term));

/** Said to be polite; they say nothing of what is asked. */
const courtesies: ReadonlySet<string> = new Set('may might please thanks thank hi hello hey'.split(' '));

/** Chinese has them too, and no spaces around them: who asks, that it is asked, whether one may. A "not" is left where it is. */
const smallHan =
  /可唔可以|可不可以|能不能|可以|请问|請問|我们|我們|你们|你們|[我你您在能吗嗎呢啊呀吧的嘅了里裡请請想]/gu;

const termsIn = (text: string): ReadonlySet<string> =>
  new Set(
    termsOf(cueText(plainText(text).plain).replace(smallHan, ' '))
      .filter((term) => !courtesies.has(term))
      .map((term) => (/^[a-z]{3,}[^s]s$/.test(term) ? term.slice(0, -1) : term)),
  );
