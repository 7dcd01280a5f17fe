/** What is asked of a cold infusion: when to begin it, how long it may stand, whether it may come along. It reckons nothing. */
import { longTimes, secondsSaid } from './count.ts';
import type { TalkCues } from './talk-cues.ts';

export type ColdAsk =
  | 'begin-for'
  | 'begun-at'
  | 'stands'
  | 'on-the-way'
  | 'strain'
  | 'taste-early'
  | 'is-ready'
  | 'unchilled'
  | 'still-good'
  | 'lid'
  | 'ice';

/** Longer texts tell more than that. */
const longest = 120;

/** The first that fits. */
export function coldAsked(words: string, { says }: TalkCues): ColdAsk | null {
  if (words.length > longest || says('of-the-shop', words)) return null;
  const asksWhen = says('asks-when', words);
  if (says('unchilled', words)) return 'unchilled';
  if (!asksWhen && says('on-the-way', words)) return says('has-been-out', words) ? null : 'on-the-way';
  if (says('put-in-then-when', words)) return 'begun-at';
  if ((asksWhen && says('of-beginning', words)) || (says('leaves-at', words) && says('at-an-hour', words)))
    return 'begin-for';
  if (says('asks-strain', words)) return 'strain';
  if (says('taste-early', words)) return 'taste-early';
  if (says('is-ready', words)) return 'is-ready';
  if (says('still-good', words)) return 'still-good';
  if (says('may-stand', words) && !says('has-been-out', words)) return 'stands';
  if (says('of-lid', words)) return 'lid';
  if (says('of-ice', words)) return 'ice';
  if (says('goes-on', words)) return 'begin-for';
  if (!says('tells-begin', words) || !says('at-an-hour', words)) return null;
  return beginsNow.test(words) ? 'begin-for' : 'begun-at';
}

/** 現在放進去明早七點能喝嗎: the hour is when it shall be ready. */
const beginsNow =
  /^(?!.*(?:什么时候|几点|何时))(?:那|我|如果)*(?:现在|这就|马上|刚刚?|等下|今晚).{0,12}(?:能|可以|好)(?:喝|了)?(?:吗|不|了|$)/;

const hourS = 3600;
const dayH = 24;
/** From the evening to the morning. Common practice, no source. */
const nightH = 10;

/** "Ready in an hour?"; "an hour longer" may be anything. */
const inAnHour = /\b(?:in|after|is|have|got|only|just) (half )?an (?:hour|hr)\b(?! (?:longer|more))/;

/** "14 hours", "over night", 兩天. */
export function hoursSaid(words: string, { says }: TalkCues): number | null {
  const seconds = secondsSaid(words, longTimes);
  if (seconds !== null) return seconds / hourS;
  const hour = inAnHour.exec(words);
  if (hour !== null) return hour[1] === undefined ? 1 : 0.5;
  if (says('all-day', words)) return dayH;
  return says('all-night', words) ? nightH : null;
}
