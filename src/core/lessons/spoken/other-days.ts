/** The days named beside a first one: "on the 20th and the 27th", 20號和27號. One lesson is meant for each. */
import type { WallDate } from '../calendar.ts';
import { mark } from './cut.ts';
import { readDay } from './day.ts';

const joined = new RegExp(
  `${mark}\\s*(?:,?\\s*(?:and|&|\\+)(?: also)?(?: on)?|[,，、](?=\\s*(?:the )?\\d{1,2}(?:st|nd|rd|th|[日号號]))|[和及跟與与、])\\s*`,
  'iu',
);
/** "The 20th and 27th". */
const bareDay = /^(?=\d{1,2}(?:st|nd|rd|th)\b)/iu;
/** "12 and 19 December": the month stands behind the last. */
const ahead = new RegExp(
  `(?<![\\d:.])(?:the )?(?<day>\\d{1,2})(?:st|nd|rd|th)?\\s*(?:and|&|,)\\s*(?:the )?${mark}`,
  'iu',
);

export interface OtherDays {
  readonly dates: readonly WallDate[];
  readonly rest: string;
}

/** `rest` has its mark where the `first` day stood; nothing where that is not known. */
export function readOtherDays(rest: string, first: WallDate | undefined, today: WallDate): OtherDays {
  if (first === undefined) return { dates: [], rest };
  const before = ahead.exec(rest);
  if (before) {
    const date = `${first.slice(0, 8)}${(before.groups?.['day'] ?? '').padStart(2, '0')}`;
    return date < first ? { dates: [date], rest: rest.replace(ahead, mark) } : { dates: [], rest };
  }
  const found = joined.exec(rest);
  if (!found) return { dates: [], rest };
  const behind = rest.slice(found.index + found[0].length).replace(bareDay, 'the ');
  const { date, rest: left } = readDay(behind, today);
  if (date === undefined || date === first || !left.startsWith(mark)) return { dates: [], rest };
  const others = readOtherDays(left, date, today);
  return { dates: [date, ...others.dates], rest: rest.slice(0, found.index) + others.rest };
}
