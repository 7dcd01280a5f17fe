/** The months as people write them. */
import { readNumber } from './numeral.ts';

const months = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');

/** To be put into a pattern: a month by its English name. */
export const monthName =
  'jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?';

/** After the name of a month whose lessons are meant: "the January ones". */
export const itsLessons = `(?:'?s)? (?:ones|lessons|classes|courses|dates|evenings|sessions|workshops)\\b`;

/** … which suits them: "January is fine". */
export const suits = '(?: is| would be)? (?:fine|good|ok|okay|better|best|great|then|instead|works|suits)\\b';

/** By its name or its number; undefined when the words are neither. */
export function readMonth(words: string): number | undefined {
  const named = months.indexOf(words.toLowerCase().slice(0, 3));
  return named >= 0 ? named + 1 : readNumber(words);
}
