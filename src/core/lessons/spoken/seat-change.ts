/** How many more seats than there are, or fewer: "two more", "my sister can't come", "can I bring a friend". Knows no booking. */
import { plain } from './cut.ts';
import { number, readNumber } from './numeral.ts';
import type { Sentence } from './sentence.ts';

/** Who may be spoken of, in small letters: one of them, two ("my parents"), or as many as are said ("friends"). */
export interface Kin {
  readonly one: readonly string[];
  readonly two: readonly string[];
  readonly many: readonly string[];
}

/** Null where nothing of the kind is said. */
export interface SeatChange {
  readonly more: number | null;
  readonly fewer: number | null;
  /** Beside whoever speaks. */
  readonly along: number | null;
}

export type SeatChangeReader = (sentence: Sentence) => SeatChange;

/** Longer texts tell more than that. */
const longest = 60;

const asksHan = '(?:可以|可不可以|能不能|能|那|請|请|麻煩|麻烦|我想|想|幫我|帮我|幫忙|帮忙)*';
const more = [
  new RegExp(
    `^(?:(?:can|could|may) (?:i|we) (?:have|get|add|bring|book) |and |make it |add )?(?<n>${number}) (?:more|extra|further)\\b(?: seats?| places?| people| persons?)?`,
  ),
  new RegExp(`^${asksHan}(?:再|多|再多)(?:幫我|帮我)?(?:加|來|来|要|訂|订|報|报)?(?<n>${number})(?:個|个|位|人|座)`),
  new RegExp(`^${asksHan}加(?<n>${number})(?:個|个|位|人|座)(?:位子|座位|人)?[吧嗎吗呢啦]*[。?？]?$`),
];

/** "Drop two seats", 取消一位, 少一個人: seats, and not the booking. */
const less = [
  new RegExp(
    `^(?:[a-z]+[, ]+){0,3}(?:drop|remove|lose|cancel|take off|take away|give back) (?<n>${number})(?: (?:of (?:us|them|my|the|our)|people|persons?|seats?|places?|spots?|guests?)){1,2}[.! ]*$`,
  ),
  new RegExp(`^(?:[a-z]+[, ]+){0,3}(?<n>${number})(?: (?:people|persons?|seats?|places?))? (?:less|fewer)\\b`),
  new RegExp(
    `^(?:那|我|我們|我们|想|要|請|请|可以|能不能|可唔可以)*(?:取消|退掉|退|少|減|减)(?:掉|了|少|去)?(?<n>${number})(?:個|个)?(?:位子|座位|位|人|座)[吧了嗎吗呢啦]*[。?？]?$`,
  ),
];

/** Of some who come together; what is said of them follows. */
const ofUs = [
  new RegExp(`\\b(?<n>${number}|a couple) of us `),
  /^(?:sorry,? |actually,? |oh no,? )*(?:he|she) /,
  /(?:^|(?<=[ ，,。說说話话講讲]))(?:他|她|佢)(?![們们哋])/,
  /(?:有|其中)(?<n>[一二两兩三四五\d])(?:個|个)?(?:人|位)?/,
];

/** Each with the words of who it is. */
interface Patterns {
  /** What is said of them follows. */
  readonly fewer: readonly RegExp[];
  readonly along: readonly RegExp[];
}

/** English words stand apart, Han words beside others; the longest first. */
function patternsOf({ one, two, many }: Kin): Patterns {
  const words = [...one, ...two, ...many].toSorted((a, b) => b.length - a.length);
  const inEnglish = words.filter((word) => /^[a-z ]+$/.test(word)).join('|');
  const inHan = words.filter((word) => /^\p{Script=Han}+$/u.test(word)).join('|');
  const whom = `(?:(?<n>${number}|a couple of|both) )?(?:of )?(?:my |the )?(?:other |good |best )?(?<who>${inEnglish})`;
  const may =
    "(?:(?:can|could|may) (?:i|we)|(?:is it )?(?:ok|okay|fine|alright) (?:if|for|to)(?: i| we| me to| us to)?|i(?:'d| would) (?:like|love) to|i want to|i'll|i'm|we'll)";
  const mayHan = '(?:可以|能不能|可不可以|可唔可以|能|想|要)';
  const whomHan = `(?<n>[一二兩两三四\\d])?(?<single>個|个|位)?(?<who>${inHan})`;
  const tailHan = '(?:一起|一同|一齊|一齐|同行)?[來来去嚟上參参加課课過过]*[嗎吗呀啊嘛]?[？?。!！]*';
  const tail = '(?: along| too| as well| with me| with us| please)*';
  return {
    fewer: [
      new RegExp(`^(?:sorry,? |actually,? |oh no,? )*my (?<who>${inEnglish}) `),
      new RegExp(`(?:^|(?<=[ ，,。]))(?:我(?:的|嘅)?|啊|唉|抱歉)*(?<single>個|个|位)?(?<who>${inHan})`),
    ],
    along: [
      new RegExp(`^(?:[a-z]+[, ]+){0,2}${may} (?:bring(?:ing)?|come with|take)(?: along)? ${whom}${tail}[?.! ]*$`),
      new RegExp(
        `^(?:[a-z]+[, ]+){0,2}(?:can|could|may) (?:my |a |an )(?<who>${inEnglish}) (?:come|join|sit in)${tail}[?.! ]*$`,
      ),
      new RegExp(
        `^(?:那|我(?:的|嘅)?)*(?<n>[一二兩两三四\\d])?(?:個|个|位)?(?<who>${inHan})(?:說|说)?(?<single>也|都)(?:想|要|會|会|可以|能)(?:一起|一齊|一齐|跟)?(?:來|来|去|嚟|上|參加|参加)(?:課|课)?(?:[，, ]*(?:可以|能不能|能)?(?:幫|帮|給|给|替|再)(?:他|她|佢|我)?(?:也|再)?(?:加|報|报|訂|订|留)[一1]?(?:個|个|位|名)?(?:位子|座位|名)?)?[嗎吗吧呀啊]?[？?。!！]*$`,
      ),
      new RegExp(`^.{0,4}${mayHan}.{0,3}[帶带攞](?:埋|上|多)?(?:我(?:的|嘅)?)?${whomHan}${tailHan}$`),
    ],
  };
}

export function makeSeatChange(kin: Kin): SeatChangeReader {
  const patterns = patternsOf(kin);
  const twos = new Set(kin.two);
  const alone = new Set([...kin.one, ...kin.two]);
  const countedBy = (groups: Groups | undefined, isHeld = false): number | null => {
    const { n, single, who = '' } = groups ?? {};
    // "Can I bring friends?": how many is not said; 帶個朋友 says one, and so does 朋友不能來 of somebody who has a seat.
    const isOne = isHeld && /\p{Script=Han}/u.test(who);
    if (groups === undefined || ((n ?? single) === undefined && !isOne && !alone.has(who))) return null;
    return countOf(n) ?? (twos.has(who) ? 2 : 1);
  };
  return (sentence) => {
    const text = plain(sentence.text).replaceAll('’', "'").toLowerCase();
    if (text.length > longest) return { more: null, fewer: null, along: null };
    const found = notComing(ofUs, text, sentence);
    return {
      more: countOf(firstOf(more, text)?.groups?.['n']),
      fewer: found
        ? (countOf(found['n']) ?? 1)
        : (countOf(firstOf(less, text)?.groups?.['n']) ?? countedBy(notComing(patterns.fewer, text, sentence), true)),
      along: countedBy(firstOf(patterns.along, text)?.groups),
    };
  };
}

type Groups = { readonly [name: string]: string | undefined };

const firstOf = (patterns: readonly RegExp[], text: string): RegExpExecArray | undefined =>
  patterns.map((pattern) => pattern.exec(text)).find((one) => one !== null);

/** Who it is that does not come: what is behind them says so. */
function notComing(whom: readonly RegExp[], text: string, sentence: Sentence): Groups | undefined {
  const found = whom
    .map((pattern) => pattern.exec(text))
    .find((one) => one !== null && sentence.part(text.slice(one.index + one[0].length)).says('not-coming'));
  return found ? (found.groups ?? {}) : undefined;
}

function countOf(words: string | undefined): number | null {
  if (words === undefined) return null;
  return words === 'both' || words.startsWith('a couple') ? 2 : (readNumber(words) ?? null);
}
