/** What is only said around a message, a hello ahead and thanks behind, is taken off before it is read. Says nothing of the rest. */
import { lazily } from '../../lazily.ts';
import { plainText } from '../../teas/plain-text.ts';
import { framed, sourceOf } from '../cues/cue-set.ts';

/** Patterns, as data/reading/cues.yaml tells their small language; `'?` where an apostrophe may stand. */
export interface CourtesyWords {
  readonly ahead: readonly string[];
  /** "Well, …": only with a mark behind it. */
  readonly aheadOfAMark: readonly string[];
  readonly behind: readonly string[];
  readonly thanks: readonly string[];
  /** "Great, thanks", "no thanks": with these thanks are an answer of their own, and stay. */
  readonly withThanks: readonly string[];
}

export type WithoutCourtesies = (text: string) => string;

/** More of them in one message are no courtesy. */
const mostAtAnEnd = 5;
/** A courtesy is no longer than this: it bounds the cost. */
const longestAtAnEnd = 90;

export function makeWithoutCourtesies(words: CourtesyWords): WithoutCourtesies {
  const patterns = lazily(() => patternsOf(words));
  return (text) => {
    const { shown, plain } = plainText(text);
    const from = endOfAhead(plain, patterns());
    const { to, asks } = startOfBehind(plain, from, patterns());
    return from === 0 && to === plain.length ? text : shown.slice(from, to) + (asks ? '?' : '');
  };
}

type Patterns = ReturnType<typeof patternsOf>;

function patternsOf(words: CourtesyWords) {
  const [ahead, aheadOfAMark, behind] = [words.ahead, words.aheadOfAMark, words.behind].map(anyOf);
  const [thanks, withThanks] = [words.thanks, words.withThanks].map(anyOf);
  const small = [ahead, aheadOfAMark, behind, thanks, withThanks].join('|');
  const picture = String.raw`\p{Extended_Pictographic}\u200d\ufe0f\s`;
  const around = String.raw`[\s\p{P}\p{S}\u200d\ufe0f]*`;
  const before = String.raw`[\s,、.。!~…;:\-(]*`;
  const mark = String.raw`(?=\s*[\p{P}\n])`;
  return {
    ahead: new RegExp(`^${around}(?:${ahead}|(?:${aheadOfAMark})${mark})${around}|^[${picture}]+`, 'u'),
    aheadThanks: new RegExp(`^${around}(?:${thanks})(?:${mark}| but\\b)${around}`, 'u'),
    behind: new RegExp(`${before}(?:${behind})${around}$|[${picture}]+$`, 'u'),
    behindThanks: new RegExp(`${before}(?:${thanks})${around}$`, 'u'),
    small: new RegExp(`^${around}(?:(?:${small})${around})+$`, 'u'),
  };
}

const anyOf = (patterns: readonly string[]): string => patterns.map((pattern) => framed(sourceOf(pattern))).join('|');

/** Where what is said begins. */
function endOfAhead(plain: string, patterns: Patterns): number {
  let from = 0;
  for (let n = 0; n < mostAtAnEnd; n++) {
    const rest = plain.slice(from);
    const head = rest.slice(0, longestAtAnEnd);
    const found = patterns.ahead.exec(head) ?? thanksOf(patterns.aheadThanks.exec(head), rest, patterns);
    if (!found?.[0] || !saysMore(rest.slice(found[0].length))) break;
    from += found[0].length;
  }
  return from;
}

/** Where what is said ends; "how long, please?" still asks. */
function startOfBehind(
  plain: string,
  from: number,
  patterns: Patterns,
): { readonly to: number; readonly asks: boolean } {
  let [to, asks] = [plain.length, false];
  for (let n = 0; n < mostAtAnEnd; n++) {
    const rest = plain.slice(from, to);
    const tail = rest.slice(-longestAtAnEnd);
    const found = patterns.behind.exec(tail) ?? thanksOf(patterns.behindThanks.exec(tail), rest, patterns);
    if (!found?.[0] || !saysMore(rest.slice(0, -found[0].length))) break;
    to -= found[0].length;
    asks ||= found[0].includes('?');
  }
  return { to, asks };
}

/** Null where all of it is no more than thanks and what goes with them. */
const thanksOf = (found: RegExpExecArray | null, all: string, { small }: Patterns): RegExpExecArray | null =>
  found === null || (all.length <= longestAtAnEnd && small.test(all)) ? null : found;

const saysMore = (plain: string): boolean => /[\p{L}\p{N}]/u.test(plain);
