/** A day that is told only because it does not suit: "Saturday is no good, anything on a weekday?". It books nothing and gives nothing back. */
import { feastName } from './feasts.ts';
import { fullWeekdays } from './weekdays.ts';

const day = `(?:on )?(?:a |any |the )?(?:${fullWeekdays})s?(?: (?:morning|afternoon|evening|night)s?)?`;
const declined = new RegExp(
  [
    `\\b${day}(?: is| are|'s|s)?(?: just| really)? (?:no (?:good|use)|not (?:good|possible|an option|convenient)|isn'?t (?:good|possible|an option|convenient)|aren'?t (?:good|possible)|out|bad|hopeless|impossible|tricky|difficult)(?: for (?:me|us))?`,
    `\\b${day} (?:doesn'?t|don'?t|won'?t|never)(?: really)? (?:works?|suits?|do)(?: for)?(?: me| us)?`,
    `\\b(?:can'?t|cannot|don'?t|couldn'?t) (?:do|make|manage) ${day}`,
    `\\bnot ${day}`,
    `\\bonly (?:on )?(?:${fullWeekdays})s?(?=\\?)`,
    `\\b(?:that|it|this)(?:'?s| is) (?:on )?(?:a |the )?(?:${fullWeekdays}|${feastName.replace('?<feast>', '?:')})`,
  ].join('|'),
  'giu',
);

/** What else is asked for beside it. */
const asksElse =
  /\b(?:any|anything|something|other|another|else|instead|rather|which|what|when|weekdays?|workdays?|during the week|have you|is there|are there|do you)\b/iu;

/** The text without such a day, where another is asked for; else as it is. */
export function withoutDeclined(text: string): string {
  const rest = text.replace(declined, ' ');
  return rest !== text && asksElse.test(rest) ? rest : text;
}
