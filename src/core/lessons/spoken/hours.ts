/** From when to when a sentence says: "7 pm", "19:00-20:30", "7 to 9 in the evening", "晚上七点半到九点". */
import type { Mistake } from '../../units.ts';
import { mistake } from '../lesson.ts';
import { cut, cutOut, type Cut } from './cut.ts';
import { readNumber } from './numeral.ts';

export interface Hours {
  /** "19:00". */
  readonly from?: string;
  readonly minutes?: number;
  readonly mistakes: readonly Mistake[];
  readonly rest: string;
}

type Half = 'am' | 'pm' | 'noon' | undefined;

const hourName = '\\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve';
const past = (n: string): string => `(?:[:.h](?<minute${n}>\\d{2})|\\s?h\\b|\\s+o'clock)`;
const english = (n: string): string =>
  `(?:(?<hour${n}>${hourName})${past(n)}?(?:\\s*(?<half${n}>[ap]\\.?m\\b\\.?))?|(?<name${n}>noon|midnight))`;
const englishTail = '(?:\\s+(?:in the|at)\\s+(?<tail>morning|afternoon|evening|night)\\b)?';
const to = '\\s*(?:-|–|—|~|\\bto\\b|\\btill?\\b|\\buntil\\b|到|至)\\s*';

const hanPart = '凌晨|清晨|早上|早晨|上午|中午|下午|傍晚|晚上|晚间|晚間|夜里|夜裡|早|晚';
// "7:30" is Chinese only behind a part of the day; "7:30 pm" is not.
const partSaid = `(?<=(?:${hanPart})\\s*\\d{1,2})`;
const hanHour = '\\d{1,2}|[零一二两兩三四五六七八九十]{1,3}';
const hanMinute = '\\d{1,2}|[零一二三四五六七八九十]{1,3}';
const hanPast = (n: string): string =>
  `(?:(?<half${n}>半)|(?<quarter${n}>[一三])刻|(?<minute${n}>${hanMinute})分?|整)?`;
const han = (n: string, clockSign = ''): string =>
  `(?<part${n}>${hanPart})?\\s*(?<hour${n}>${hanHour})\\s*(?:[点點时時](?![间間])${hanPast(n)}|${clockSign}:(?<clock${n}>\\d{2}))`;

const englishRange = new RegExp(
  `(?<at>\\b(?:at|from|between)\\s+)?${english('1')}${to}${english('2')}${englishTail}(?!\\d)`,
  'iu',
);
const englishSingle = new RegExp(
  `(?<at>\\b(?:at|from)\\s+)?(?<![\\d:.])\\b${english('1')}${englishTail}(?!\\d|:\\d)`,
  'giu',
);
const hanRange = new RegExp(`${han('1', partSaid)}${to}${han('2')}`, 'u');
const hanSingle = new RegExp(han('1', partSaid), 'u');

/** `part` is what the day said: "Saturday evening". */
export function readHours(text: string, part: string | undefined): Hours {
  const written = inFigures(text);
  const readings = [
    () => cut(written, hanRange),
    () => clearly(cut(written, englishRange)),
    () => cut(written, hanSingle),
    () => firstClear(written),
  ];
  for (const reading of readings) {
    const found = reading();
    if (found) return inMinutes(found, part);
  }
  return { mistakes: [], rest: text };
}

/** "half past seven" is "7:30", "a quarter to eight" "7:45". */
function inFigures(text: string): string {
  const spoken = new RegExp(
    `\\b(?:(?<half>half)|(?:a\\s+)?quarter\\s+(?<to>to\\b)?)\\s*(?:past\\s+)?(?<hour>${hourName})\\b`,
    'giu',
  );
  return text.replace(spoken, (words: string, half: string | undefined, before: string | undefined, name: string) => {
    const said = readNumber(name);
    if (said === undefined || !/\b(?:past|to)\b/iu.test(words)) return words;
    const hour = before === undefined ? said : (said + 11) % 12 || 12;
    return `${hour}:${half !== undefined ? '30' : before !== undefined ? '45' : '15'}`;
  });
}

/** A bare figure is no hour: something beside it must say so. */
function clearly(found: Cut | undefined): Cut | undefined {
  if (found === undefined) return undefined;
  const { groups } = found;
  const signs = ['at', 'tail', 'minute1', 'minute2', 'half1', 'half2', 'name1', 'name2'];
  return signs.some((sign) => groups[sign] !== undefined) || /o'clock|\dh\b/iu.test(found.words) ? found : undefined;
}

function firstClear(text: string): Cut | undefined {
  for (const match of text.matchAll(englishSingle)) {
    const found = clearly(cutOut(text, match));
    if (found) return found;
  }
  return undefined;
}

interface Moment {
  readonly hour: number;
  readonly minute: number;
  readonly half: Half;
  /** "07:30" and "19:00" need no half of the day. */
  readonly exact: boolean;
}

function inMinutes({ groups, words, rest }: Cut, part: string | undefined): Hours {
  const tail = halfOf(groups['tail'] ?? part);
  const first = moment(groups, '1');
  const second = moment(groups, '2');
  if (first === undefined) return { mistakes: [mistake('time-unreadable', 'starts', { starts: words })], rest };
  const starts = startOf(first, second?.half ?? tail, second);
  if (starts === undefined) return { mistakes: [mistake('hour-unclear', 'starts', { words })], rest };
  if (starts >= 1440) return { mistakes: [mistake('time-unreadable', 'starts', { starts: words })], rest };
  const from = clock(starts);
  if (second === undefined) return { from, mistakes: [], rest };
  const ends = endOf(second, second.half ?? tail ?? first.half, starts);
  if (ends > starts) return { from, minutes: ends - starts, mistakes: [], rest };
  return {
    from,
    mistakes: [mistake('ends-before-start', 'minutes', { starts: from, ends: clock(ends % 1440) })],
    rest,
  };
}

function moment(groups: Cut['groups'], n: string): Moment | undefined {
  const name = groups[`name${n}`]?.toLowerCase();
  if (name !== undefined) return { hour: name === 'noon' ? 12 : 0, minute: 0, half: undefined, exact: true };
  const written = groups[`hour${n}`];
  const hour = written === undefined ? undefined : readNumber(written);
  const minute = minuteOf(groups, n);
  if (hour === undefined || minute === undefined || hour > 24 || minute > 59) return undefined;
  const half = halfOf(groups[`part${n}`] ?? groups[`half${n}`]?.replace('半', ''));
  if (half !== undefined && hour > 12) return { hour, minute, half: undefined, exact: true };
  return { hour, minute, half, exact: hour > 12 || hour === 0 || written?.startsWith('0') === true };
}

function minuteOf(groups: Cut['groups'], n: string): number | undefined {
  if (groups[`half${n}`] === '半') return 30;
  const quarter = groups[`quarter${n}`];
  if (quarter !== undefined) return quarter === '一' ? 15 : 45;
  return readNumber(groups[`minute${n}`] ?? groups[`clock${n}`] ?? '0');
}

function halfOf(words: string | undefined): Half {
  if (words === undefined || words === '') return undefined;
  if (/^(?:p|afternoon|evening|night|下午|傍晚|晚|夜)/iu.test(words)) return 'pm';
  return words === '中午' ? 'noon' : 'am';
}

/** Minutes from midnight. Undefined when it could be morning as well as evening. */
function startOf(first: Moment, otherHalf: Half, second: Moment | undefined): number | undefined {
  if (first.exact) return first.hour * 60 + first.minute;
  if (first.half !== undefined) return inHalf(first, first.half);
  if (otherHalf === undefined) return first.hour >= 8 ? first.hour * 60 + first.minute : undefined;
  const same = inHalf(first, otherHalf);
  // "11 to 1 pm" begins before noon.
  return second?.half === 'pm' && same >= inHalf(second, 'pm') ? inHalf(first, 'am') : same;
}

function endOf(second: Moment, half: Half, starts: number): number {
  if (second.exact) return second.hour * 60 + second.minute;
  const said = inHalf(second, half ?? 'am');
  return said <= starts && second.half === undefined && said + 720 > starts && said < 720 ? said + 720 : said;
}

function inHalf({ hour, minute }: Moment, half: Exclude<Half, undefined>): number {
  const of12 = hour % 12;
  if (half === 'noon') return (hour >= 10 ? hour : hour + 12) * 60 + minute;
  return (half === 'pm' ? of12 + 12 : of12) * 60 + minute;
}

function clock(minutes: number): string {
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}
