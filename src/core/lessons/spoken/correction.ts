/** What puts a planned lesson right: "make it 7:30", "10 seats", "call it Raw and ripe". It changes only what it names. */
import type { Instant } from '../../units.ts';
import { dateOf, plusMinutes, timeOf, type WallTime } from '../calendar.ts';
import { usual } from '../lesson.ts';
import { plain } from './cut.ts';
import { number, readNumber } from './numeral.ts';
import { onDate, repeatChange, type RepeatChange } from './repeat-change.ts';
import type { Sentence } from './sentence.ts';
import { readLengthening, readShift } from './shift.ts';
import { hearLesson, withFree, type SpokenLesson } from './spoken.ts';

const quoted = (title: string): string => `\\s*["“「']?(?<title>${title})["”」'.。]*$`;
/** "Call it Raw and ripe", 課名改成生與熟. */
const called = [
  new RegExp(`(?:\\b(?:call|name|title) it|\\b(?:title|name) (?:is|should be|:))\\s${quoted('[^"”]{2,80}?')}`, 'iu'),
  new RegExp(
    `(?:名[稱称字]?|[標标][題题]|[課课]名)(?:是|叫|改(?:成|為|为|叫)?|[:：])?${quoted('[^」”"]{2,40}?')}`,
    'u',
  ),
];

/** Null when it names nothing of a lesson. */
export function corrected(said: SpokenLesson, sentence: Sentence, now: Instant, zone: string): SpokenLesson | null {
  const text = plain(sentence.text);
  const named = called.map((pattern) => pattern.exec(text)).find((one) => one !== null);
  const title = named?.groups?.['title']?.trim();
  if (title !== undefined) return { ...said, title };
  const shifted = shiftedBy(said, text);
  if (shifted !== null) return shifted;
  const change = said.starts === undefined ? null : repeatChange(text, said.repeats, said.starts);
  // "Until 31 January" is no day of the lesson.
  const others = change === null ? sentence : sentence.part(change.rest);
  const { title: _, starts: __, repeats: ___, ...told } = hearLesson(others, now, said.zone ?? zone).said;
  const heard = {
    ...told,
    ...(isFree.test(told.price ?? '') ? { price: withFree(said.price, told.price) ?? '' } : {}),
  };
  const moved = said.starts === undefined ? undefined : newStart(said.starts, others, now, zone);
  const starts = change?.date === undefined ? moved : onDate(change.date, moved ?? said.starts ?? '');
  // Another day than was told is told with those that go with it.
  const isOtherDay = starts !== undefined && dateOf(starts) !== dateOf(said.starts ?? '');
  const { also: _also, ...alone } = said;
  const news = { ...heard, ...(starts === undefined ? {} : { starts }) };
  const kept = isOtherDay ? alone : said;
  return change === null && Object.keys(news).length === 0 ? null : repeating({ ...kept, ...news }, change);
}

/** "Half an hour later", "half an hour longer": beside what was told. */
function shiftedBy(said: SpokenLesson, text: string): SpokenLesson | null {
  const [minutes, more] = [readShift(text), readLengthening(text)];
  if (minutes !== undefined && said.starts !== undefined) return { ...said, starts: plusMinutes(said.starts, minutes) };
  return more === undefined ? null : { ...said, minutes: (said.minutes ?? usual.minutes) + more };
}

function repeating(said: SpokenLesson, change: RepeatChange | null): SpokenLesson {
  if (change === null) return said;
  const { repeats: _, ...once } = said;
  return change.repeats === null ? once : { ...once, repeats: change.repeats };
}

/** A day keeps the hour, and an hour the day; "7:30" stays in the evening. */
function newStart(before: WallTime, sentence: Sentence, now: Instant, zone: string): WallTime | undefined {
  const told = inItsHalf(sentence, before, now, zone);
  const sentences = [told, `${dateOf(before)} ${told}`, `${told} ${timeOf(before)}`];
  const starts = sentences.map((words) => hearLesson(sentence.part(words), now, zone).said.starts);
  return starts.find((one) => one !== undefined);
}

const isFree = /^free\b|免[費费]/iu;

const later = /\b(?:pm|p\.m\.?|afternoon|evening|night)\b|下午|晚上|傍晚|夜/iu;
const earlier = /\b(?:am|a\.m\.?|morning)\b|上午|早上|朝/iu;

/** "At 2", and then "in the afternoon": the hour with its half of the day; as it stands where none is told. */
export function inHalfOfDay(sentence: Sentence, told: string, now: Instant, zone: string): string {
  if (!later.test(told) && !earlier.test(told)) return sentence.text;
  return withHalf(sentence, () => later.test(told), now, zone);
}

/** With "pm" told of an hour that may be both, where it was in the afternoon before or would be in the night. */
export function inItsHalf(sentence: Sentence, before: WallTime, now: Instant, zone: string): string {
  const wasLater = Number(timeOf(before).slice(0, 2)) >= 12;
  return withHalf(sentence, (hour) => wasLater || hour < earliestHour, now, zone);
}
/** Before that nobody comes to a lesson. Common practice, no source. */
const earliestHour = 7;

function withHalf(sentence: Sentence, isInLater: (hour: number) => boolean, now: Instant, zone: string): string {
  const text = plain(sentence.text);
  const unclear = hearLesson(sentence, now, zone).mistakes.find(({ code }) => code === 'lesson-hour-unclear');
  const words = String(unclear?.values['words'] ?? '');
  if (words === '' || !text.includes(words)) return text;
  const isLater = isInLater(readNumber(hourFirst.exec(words)?.[0] ?? '') ?? earliestHour);
  const inHan = /\p{Script=Han}/u.test(words);
  return text.replace(words, inHan ? `${isLater ? '下午' : '上午'}${words}` : `${words} ${isLater ? 'pm' : 'am'}`);
}
const hourFirst = new RegExp(number, 'iu');
