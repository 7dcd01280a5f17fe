/** How many seats a lesson is to have, as it is told beside those it has: "two more seats", "no more bookings". */
import { seatsTaken, type Roster } from '../roster.ts';
import { number, readNumber } from './numeral.ts';

const more = [
  new RegExp(`\\b(?<n>${number}) (?:more|extra|additional|other) (?:seats?|places?|spots?)\\b`, 'iu'),
  new RegExp(`(?:[加多]|多開|多开|增加)(?:了)?(?<n>${number})[個个]?(?:(?:空|座)?位|名[額额])`, 'u'),
];
const noMore =
  /\bno (?:more|further) (?:bookings?|people|guests?|students?|sign-?ups?)\b|\b(?:stop|close|end) (?:taking )?(?:the )?(?:bookings?|sign-?ups?|enrol\w*)\b|(?:不|別|别|停止)再?(?:收人|收學生|收学生|接受?報名|接受?报名)|(?:截止|停止)(?:報名|报名)/iu;

/** Undefined where it tells no such thing; a lesson nobody has booked keeps one seat. */
export function seatsWanted(text: string, roster: Roster): number | undefined {
  if (noMore.test(text)) return Math.max(1, seatsTaken(roster));
  const n = more.map((pattern) => pattern.exec(text)?.groups?.['n']).find((one) => one !== undefined);
  const count = n === undefined ? undefined : readNumber(n);
  return count === undefined ? undefined : roster.lesson.seats + count;
}
