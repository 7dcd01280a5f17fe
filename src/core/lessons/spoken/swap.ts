/** A seat changed for another day's, in one sentence: from which day, to which. Finds no lesson and changes nothing. */
import { dateOf, wallAt, type WallDate } from '../calendar.ts';
import type { Instant } from '../../units.ts';
import { plain } from './cut.ts';
import { readDay, type Day } from './day.ts';
import { number, readNumber } from './numeral.ts';
import type { Sentence } from './sentence.ts';
import { readSpan, type Span } from './span.ts';

export interface Swap {
  readonly from?: WallDate;
  readonly to: WallDate;
  /** `to` was named by its weekday alone: `onMeantDay` tells which it is. */
  readonly byWeekday?: true;
}

/** Longer than any such wish; it bounds the reading's time. */
const longest = 200;

/** What stands before these words is one day, what stands behind them the other. */
const turnedAround = /\binstead of\b|\brather than\b|而不是/iu;
const movesTo = '[改換换移挪調调轉转延][到成為为至上去]';
const aDay = '[下上]?[個个]?[週周星禮礼明後后\\d一二三四五六七八九十]';
const onward = new RegExp(`\\b(?:to|for|onto|until)\\b|${movesTo}|[改換换](?=${aDay})`, 'giu');
/** "Cancel Saturday, I take the 12th": the one that is given up is named first. */
const givenUp = /^(?<from>.*\b(?:cancel|can'?t|cannot)\b.*?)[,.;](?<to>.+\binstead\b.*)$/iu;

export function hearSwap(sentence: Sentence, now: Instant, zone: string): Swap | null {
  if (!sentence.says('swap')) return null;
  const text = wordsOf(sentence);
  const today = dateOf(wallAt(now, zone));
  const dayIn = (part: string): Day => readDay(part.replace(/\binstead\b/giu, ''), today);
  for (const [before, after] of partings(text)) {
    const [from, to] = [dayIn(before), dayIn(after)];
    if (to.date !== undefined && isOther(from, to)) return swapped(from, { ...to, date: to.date });
  }
  return null;
}

const wordsOf = ({ text }: Sentence): string => plain(text.slice(0, longest)).replaceAll('’', "'");

/** Another lesson wanted for the one there is, without a day: by its title or its week ("the week after"). */
export interface Change {
  readonly span?: Span;
  /** So many weeks after the one there is; below nothing, before it. */
  readonly weeksLater?: number;
}

export function hearChange(sentence: Sentence, now: Instant, zone: string): Change | null {
  if (!sentence.says('swap')) return null;
  const weeksLater = weeksIn(sentence);
  if (weeksLater !== undefined) return { weeksLater };
  const span = readSpan(wordsOf(sentence), dateOf(wallAt(now, zone)));
  return span ? { span } : {};
}

const weeks = '(?:週|周|星期|禮拜|礼拜)';
const soManyLater = [
  new RegExp(`\\b(?<n>${number}|a couple of) weeks?\\b`, 'iu'),
  new RegExp(`(?<n>${number})(?:個|个)?${weeks}(?![一二三四五六日天末])`, 'u'),
];

/** "Push it back two weeks", 可以延後兩週嗎, "the week after". */
export function weeksIn(sentence: Sentence): number | undefined {
  const text = wordsOf(sentence);
  const words = sentence.says('puts-off')
    ? soManyLater.map((pattern) => pattern.exec(text)?.groups?.['n']).find((n) => n !== undefined)
    : undefined;
  const n = words === undefined ? undefined : words.startsWith('a couple') ? 2 : readNumber(words);
  if (n !== undefined && n > 0) return sentence.says('sooner') ? -n : n;
  return sentence.says('week-after') ? 1 : undefined;
}

/** "From today to Saturday", said on a Saturday, are two days. */
const isOther = (from: Day, to: Day): boolean => to.date !== from.date || (to.byWeekday === true && !from.byWeekday);

function swapped(from: Day, to: Day & { readonly date: WallDate }): Swap {
  return {
    to: to.date,
    ...(to.byWeekday ? { byWeekday: true } : {}),
    ...(from.date === undefined ? {} : { from: from.date }),
  };
}

/** Each way to part it into where from and where to, the likeliest first. */
function partings(text: string): readonly (readonly [string, string])[] {
  const given = givenUp.exec(text)?.groups;
  const around = turnedAround.exec(text);
  const onwards = [...text.matchAll(onward)].toReversed();
  return [
    ...(given ? [[given['from'] ?? '', given['to'] ?? ''] as const] : []),
    ...(around ? [[text.slice(around.index), text.slice(0, around.index)] as const] : []),
    ...onwards.map(({ index, 0: mark }) => [text.slice(0, index), text.slice(index + mark.length)] as const),
  ];
}
