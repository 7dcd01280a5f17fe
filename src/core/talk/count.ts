/** Small numbers and spans of time, as they are said beside a brew. */
import { readNumber } from '../lessons/spoken/numeral.ts';

const more: { readonly [word: string]: number } = { fifteen: 15, twenty: 20, thirty: 30 };
const ordinals = 'third fourth fifth sixth seventh eighth ninth tenth'.split(' ');
const words = 'one two three four five six seven eight nine ten eleven twelve'.split(' ');

/** What may stand for a number. "First" and "second" mean other things more often. */
export const numberPattern = `\\d{1,4}|${[...words, ...Object.keys(more), ...ordinals].join('|')}|[一二两三四五六七八九十]{1,3}`;

export function readCount(told: string): number | null {
  if (/^(?:half|半)/.test(told)) return 0.5;
  const nth = ordinals.indexOf(told);
  return nth >= 0 ? nth + 3 : (more[told] ?? readNumber(told) ?? null);
}

type Unit = readonly [pattern: RegExp, seconds: number];

const unit = (number: string, name: string): RegExp =>
  new RegExp(`(?<![a-z\\d])(?<n>${number}) ?个? ?(?:${name})(?![a-z])`);
/** "A minute" is one, "an hour longer" may be anything. */
const few = `half an?|an?|半|${numberPattern}`;

export const shortTimes: readonly Unit[] = [
  [unit(few, 's|secs?|seconds?|秒'), 1],
  [unit(few, 'mins?|minutes?|分'), 60],
];
export const longTimes: readonly Unit[] = [
  [unit(numberPattern, 'h|hrs?|hours?|小时|钟头?'), 3600],
  [unit(numberPattern, 'days?|天'), 86_400],
];

/** Seconds, as far as they are told in these units; null where none is. */
export function secondsSaid(text: string, units: readonly Unit[]): number | null {
  const told = units.flatMap(([pattern, seconds]) => {
    const count = readCount(pattern.exec(text)?.groups?.['n'] ?? '');
    return count === null ? [] : [count * seconds];
  });
  return told.length === 0 ? null : told.reduce((sum, one) => sum + one);
}
