/** Slips of the thumb in Latin words, put right before anything of a message is read. Knows words, no meanings. */
import { replacedInBoth, type PlainText } from '../../teas/plain-text.ts';
import { withOneLeftOut } from '../../teas/spelling.ts';
import { likely, slipCost, swapped } from './slip-cost.ts';

export interface SlipWords {
  /** What a slip is put right to, the commonest first. */
  readonly meant: readonly string[];
  /** Of two that fit one of these is taken, so that what needs care is never read as harmless. */
  readonly careful: ReadonlySet<string>;
  /** Names, of which none is taken where two fit. */
  readonly names: ReadonlySet<string>;
  /** Words that stay as they are, and may be run together with another. */
  readonly known: ReadonlySet<string>;
  /** Words that stay too, unless a long one is only listed as a slip of another. */
  readonly listed: ReadonlySet<string>;
  /** Beginnings of words that stay. */
  readonly stems: ReadonlySet<string>;
}

export type SlipMender = (text: PlainText) => PlainText;

const [shortest, longest] = [4, 16];
const longestParted = 24;
const shortestName = 5;
const shortestStem = 4;
const longEnoughListed = 7;
/** So few words are so common that they are known by three letters of four, or by three that changed places. */
const mostCommon = 150;
/** Of two words run together one is as common as this. */
const oftenGlued = 600;
/** Words kept once they were looked up. */
const mostKept = 5000;
/** So much more often must the word of a costlier slip be written to come first: in doublings, for each cost. */
const pricePerCost = 4;

interface Fitting {
  readonly target: string;
  readonly cost: number;
  readonly score: number;
}

export function makeSlipMender(words: SlipWords): SlipMender {
  const places = new Map<string, number>();
  for (const word of words.meant) if (!places.has(word)) places.set(word, places.size);
  const targets = [...places.keys()];
  const near = nearTo(targets);
  const short = shortSlips(targets.slice(0, mostCommon));

  const isWord = (word: string): boolean => words.known.has(word) || words.listed.has(word);
  const hasStem = (word: string): boolean => {
    for (let length = shortestStem; length <= word.length; length++)
      if (words.stems.has(word.slice(0, length)) && ending.test(word.slice(length))) return true;
    return false;
  };
  const isForm = (word: string): boolean =>
    plainForms(word).some((form) => isWord(form) && (places.get(form) ?? mostCommon) >= mostCommon) || hasStem(word);

  const fitting = (word: string): Fitting[] =>
    [...new Set(withOneLeftOut(word).flatMap((form) => near.get(form) ?? []))].flatMap((at) => {
      const target = targets[at] ?? '';
      const cost = slipCost(word, target);
      return cost === null || !isNearEnough(word, target, cost)
        ? []
        : [{ target, cost, score: cost * pricePerCost + Math.log2(at + 2) }];
    });

  /** The rarer a word, the surer must it be that it was meant. */
  const isNearEnough = (word: string, target: string, cost: number): boolean => {
    if (words.names.has(target)) return word.length >= shortestName;
    return words.known.has(target) || cost < likely || word.length >= longEnoughListed;
  };

  const nearest = (word: string): Fitting | null => {
    const all = fitting(word);
    const careful = all.filter(({ target }) => words.careful.has(target));
    const [first, second] = (careful.length > 0 ? careful : all).toSorted((a, b) => a.score - b.score);
    const isTorn = second !== undefined && words.names.has(first?.target ?? '') && words.names.has(second.target);
    return first === undefined || isTorn ? null : first;
  };

  /** "caffiene" is listed beside the word it is a slip of. */
  const listedFor = (word: string): string | null =>
    fitting(word).find(({ target, cost }) => cost <= 1 && target !== word && words.known.has(target))?.target ?? null;

  /** "howlong": two words, of which the commonest pair is taken. One of them must be very common: "bathrobe" is one word. */
  const parted = (word: string): string | null => {
    let best: { readonly pair: string; readonly rank: number } | null = null;
    for (let at = 2; at <= word.length - 2; at++) {
      const pair = [word.slice(0, at), word.slice(at)];
      const ranks = pair.map(rankOf);
      // "heartwarming" is of no heart, "duringpregnancy" is of one.
      const enough = pair.some((one) => words.careful.has(one)) ? mostCommon : oftenGlued;
      const rank = Math.min(...ranks) < enough ? Math.max(...ranks) : Infinity;
      if (rank < (best?.rank ?? Infinity)) best = { pair: pair.join(' '), rank };
    }
    return best?.pair ?? null;
  };
  const rankOf = (word: string): number => {
    const isPart = word.length > 4 ? isWord(word) : word.length > 2 ? words.known.has(word) : small.has(word);
    return isPart && !partOnly.has(word) ? (places.get(word) ?? targets.length) : Infinity;
  };

  const lookUp = (word: string): string => {
    if (words.known.has(word)) return word;
    if (word.length < shortest) return short.get(word) ?? word;
    if (words.listed.has(word)) return word.length < longEnoughListed ? word : (listedFor(word) ?? word);
    const held = /(.)\1\1/.test(word) ? [word.replace(/(.)\1+/g, '$1$1'), word.replace(/(.)\1+/g, '$1')] : [];
    const meant = held.find((one) => isWord(one) || isForm(one));
    if (meant !== undefined) return meant;
    if (isForm(word)) return word;
    const typed = held[0] ?? word;
    const found = typed.length > longest ? null : nearest(typed);
    return found !== null && found.cost <= likely ? found.target : (parted(typed) ?? found?.target ?? word);
  };

  const looked = new Map<string, string>();
  const mend = (word: string): string => {
    const before = looked.get(word);
    if (before !== undefined) return before;
    if (looked.size >= mostKept) looked.clear();
    const mended = lookUp(word);
    looked.set(word, mended);
    return mended;
  };

  return (text) => replacedInBoth(text, latinWord, (word) => (word.length > longestParted ? word : mend(word)));
}

/** No part of "doesn't", nor of a number with its unit. */
const latinWord = /(?<![a-z0-9'])[a-z]{3,}(?![a-z0-9'])/g;

/** Words of two letters that are often run together with another. */
const small = new Set('in of to my is it do no on at be we an so if up or as me us ml'.split(' '));
/** Endings of many a longer word. */
const partOnly = new Set('age able less est ive ness ful ring ate ting der ers ing ally'.split(' '));

/** "stor*" goes on as "storing", and not as any letters. */
const ending =
  /^(?:e?s|e?d|ing|ings|e?rs?|e?n|ened|ening|y|e?ly|i?est|ies|ied|i?er|e|t|al|ally|ics?|ical|ity|ive|ous|ants?|ents?|ances?|ences?|ancy|ency|at(?:e|es|ed|ing|ions?)|i?ons?|iz(?:e|ed|ing)|is(?:e|ed|ing)|ists?|ism|ments?|ness|able|ible|ful|less|age|ish|up|out|s?man|s?men)?$/;

function nearTo(targets: readonly string[]): ReadonlyMap<string, readonly number[]> {
  const near = new Map<string, number[]>();
  for (const [at, word] of targets.entries()) {
    if (word.length < shortest || word.length > longest) continue;
    for (const form of withOneLeftOut(word)) {
      const those = near.get(form);
      if (those) those.push(at);
      else near.set(form, [at]);
    }
  }
  return near;
}

/** "teh", "hwo"; "tht", "wht". */
function shortSlips(common: readonly string[]): ReadonlyMap<string, string> {
  const slips = new Map<string, string>();
  const add = (slip: string, word: string): unknown => slips.has(slip) || slips.set(slip, word);
  for (const word of common) {
    if (word.length === 3) for (const at of [0, 1]) add(swapped(word, at), word);
    if (word.length === 4) for (const at of [1, 2]) add(word.slice(0, at) + word.slice(at + 1), word);
  }
  return slips;
}

/** What a word may be a form of: "steeps", "brewing", "stored". */
function plainForms(word: string): string[] {
  if (word.endsWith('ss')) return [];
  if (word.endsWith('s')) return [word.slice(0, -1), word.replace(/es$/, ''), word.replace(/ies$/, 'y')];
  const [, base = ''] = /^([a-z]{3,}?)(?:ed|ing|ers?|ly)$/.exec(word) ?? [];
  const forms = [base, `${base}e`, base.replace(/(.)\1$/, '$1'), base.replace(/i$/, 'y')];
  return base === '' ? [] : forms.filter(({ length }) => length >= shortest);
}
