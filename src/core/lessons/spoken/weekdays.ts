/** The days of the week as people write them. */

/** To be put into a pattern. */
export const fullWeekdays = 'monday|tuesday|wednesday|thursday|friday|saturday|sunday';
export const hanWeekdays = '一二三四五六日';

const short = 'mon tue wed thu fri sat sun'.split(' ');

/** 1 Monday … 7 Sunday. */
export function weekdayIn(words: string): number {
  const han = hanWeekdays.indexOf(words.replace('天', '日'));
  return 1 + (han >= 0 ? han : short.indexOf(words.toLowerCase().slice(0, 3)));
}
