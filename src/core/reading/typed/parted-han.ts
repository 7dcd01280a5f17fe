/** Chinese words with a space within, put together again: 凍 頂, 龙 井 茶, 蓋🙂碗. A space between two words stays. */
import type { PlainText } from '../../teas/plain-text.ts';

interface Span {
  readonly start: number;
  readonly end: number;
}

/** A name of one character stands beside anything. */
const shortest = 2;

const gap = /(?<=\p{Script=Han}) (?=\p{Script=Han})/gu;
/** So many single characters in a row were spaced, or dictated, one by one. */
const spaced = /(?<!\p{Script=Han})\p{Script=Han}(?: \p{Script=Han}){3,}(?!\p{Script=Han})/gu;

/** `namesIn` finds the names of teas and vessels in a plain text. */
export function makeHanJoiner(namesIn: (plain: string) => readonly Span[]): (text: PlainText) => PlainText {
  return (text) => {
    if (text.plain.search(gap) < 0) return text;
    const runs = [...text.plain.matchAll(spaced)].map(({ index, 0: { length } }) => ({
      start: index,
      end: index + length,
    }));
    const isOfRun = (at: number): boolean => runs.some(({ start, end }) => start < at && at < end);
    const all = [...text.plain.matchAll(gap)].map(({ index }) => index);
    const close = without(text, all.filter(isOfRun));
    return without(close, gapsWithinNames(close.plain, namesIn));
  };
}

function without(text: PlainText, places: readonly number[]): PlainText {
  if (places.length === 0) return text;
  const cut = (from: string): string =>
    from
      .split('')
      .filter((_, at) => !places.includes(at))
      .join('');
  return { shown: cut(text.shown), plain: cut(text.plain) };
}

/** Where a name begins before a space and ends behind it, and none of its own stands on either side. */
function gapsWithinNames(plain: string, namesIn: (plain: string) => readonly Span[]): readonly number[] {
  const gaps = [...plain.matchAll(gap)].map(({ index }) => index);
  const whole = namesIn(plain.replace(gap, ''));
  const spanned = gaps.filter((at, nth) => whole.some(({ start, end }) => start < at - nth && at - nth < end));
  if (spanned.length === 0) return spanned;
  const apart = namesIn(plain).filter(({ start, end }) => end - start >= shortest);
  return spanned.filter((at) => !apart.some(({ start, end }) => end === at || start === at + 1));
}
