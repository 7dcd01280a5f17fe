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

const everySaid = [
  new RegExp(`\\b(?<weekday>${fullWeekdays})s\\b(?!')`, 'iu'),
  new RegExp(`\\b(?:a|any|every|each) (?<weekday>${fullWeekdays})\\b`, 'iu'),
  new RegExp(
    `(?<!\\b(?:this|next|last|coming|on) )\\b(?<weekday>${fullWeekdays}) (?:morning|afternoon|evening|night)s\\b`,
    'iu',
  ),
  new RegExp(`\\bon (?<weekday>${fullWeekdays}) (?:morning|afternoon|evening|night)s\\b`, 'iu'),
  new RegExp(`(?<![下上這这本隔](?:個|个|一)?)(?:星期|禮拜|礼拜|週|周)(?<weekday>[${hanWeekdays}天])`, 'u'),
];

/** Which weekday is asked for, whatever the week: "on Sundays", 週日; undefined where a single day is meant. */
export function weekdayMeant(text: string): number | undefined {
  const words = everySaid.map((pattern) => pattern.exec(text)?.groups?.['weekday']).find((one) => one !== undefined);
  return words === undefined ? undefined : weekdayIn(words);
}
