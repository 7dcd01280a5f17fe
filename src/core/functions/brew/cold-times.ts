/** When a cold infusion has to be begun, when it is ready, and what comes of it when it stands longer. Keeps no state. */
import { shareIfDrawn } from '../../brewing/cup-made.ts';
import { isMistake } from '../../brewing/schedule.ts';
import type { Around, Calls } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { addDays, dateOf, instantOf, wallAt, type WallDate } from '../../lessons/calendar.ts';
import { isQuiet } from '../../lessons/quiet.ts';
import { readDay } from '../../lessons/spoken/day.ts';
import { readHours } from '../../lessons/spoken/hours.ts';
import { hoursSaid, type ColdAsk } from '../../talk/cold.ts';
import { talkWords } from '../../talk/talk-cues.ts';
import type { Instant } from '../../units.ts';
import { brewOf } from './asked-brew.ts';
import type { CoreContent } from '../core-content.ts';
import { phrase, textOf } from '../values.ts';

export const coldCallNames = ['coldAnswer'] as const;

const secondMs = 1000;
const hourMs = 3_600_000;
/** A cold infusion is drunk within a day (caution-keep-cold). */
const mostH = 24;

export const coldCalls = (
  content: CoreContent,
): { readonly [name in (typeof coldCallNames)[number]]: Calls[string] } => ({
  coldAnswer: (given, around) => ({ gives: answerTo(given['ask'] as ColdAsk, content, given, around) }),
});

/** `given`: what is asked, its words, how long the plan says, and the brew. */
function answerTo(ask: ColdAsk, content: CoreContent, given: Facts, around: Around): Json {
  if (ask === 'begin-for') return beginFor(given, around, content.zone);
  if (ask === 'begun-at') return begunAt(given, around, content.zone);
  if (ask === 'is-ready') return phrase('cold-is-ready', { seconds: given['seconds'] ?? null });
  return ask === 'stands' ? stands(content, given, around) : phrase(`cold-${ask}`);
}

const wordsOf = (given: Facts): string => talkWords(textOf(given['text']));

/** By when to begin, so that it is ready when it is wanted. */
function beginFor(given: Facts, { nowMs }: Around, zone: string): Json {
  const seconds = Number(given['seconds']);
  const wanted = timeSaid(wordsOf(given), nowMs, zone);
  if (wanted === null) return phrase('cold-begin-before', { seconds });
  const by = wanted - seconds * secondMs;
  const values = { seconds, wanted: told(wanted, zone), by: toldBeside(by, wanted, zone) };
  if (wanted <= nowMs) return phrase('cold-begin-before', { seconds });
  if (by < nowMs) return phrase('cold-begin-late', { ...values, leftS: (wanted - nowMs) / secondMs });
  return phrase(isQuiet(by, zone) ? 'cold-begin-evening' : 'cold-begin-by', values);
}

/** When it is ready that is begun then. */
function begunAt(given: Facts, { nowMs }: Around, zone: string): Json {
  const seconds = Number(given['seconds']);
  const begun = timeSaid(wordsOf(given), nowMs, zone);
  if (begun === null) return phrase('cold-begin-before', { seconds });
  const ready = begun + seconds * secondMs;
  const values = { begun: told(begun, zone), ready: toldBeside(ready, begun, zone), seconds };
  return phrase(isQuiet(ready, zone) ? 'cold-ready-night' : 'cold-ready-at', values);
}

const told = (instantMs: Instant, zone: string): Json =>
  phrase('lesson-when', { starts: wallAt(instantMs, zone), instantMs });

/** On the same day, the hour is enough. */
function toldBeside(instantMs: Instant, other: Instant, zone: string): Json {
  const wall = wallAt(instantMs, zone);
  if (dateOf(wall) !== dateOf(wallAt(other, zone))) return told(instantMs, zone);
  return phrase('guide-told-clock', { wall, instantMs, shows: 'time' });
}

/** How strong it is after so long, beside what was planned. */
function stands(content: CoreContent, given: Facts, around: Around): Json {
  const hours = hoursSaid(wordsOf(given), content.talkCues);
  if (hours !== null && hours > mostH) return phrase('cold-stands-too-long');
  const brew = brewOf(content, given, around);
  if (hours === null || isMistake(brew)) return phrase('cold-stands');
  const { leaf, request, plan } = brew;
  const plannedS = plan.infusions[0]?.seconds ?? 0;
  if (hours * 3600 < plannedS) return phrase('cold-stands-short', { seconds: plannedS });
  const share = shareIfDrawn({ data: content.brewing, leaf, request }, plan, hours * 3600);
  return phrase('cold-stands-hours', { seconds: hours * 3600, strength: Math.max(share ?? 1, 1) });
}

/** What is meant by a part of the day without an hour. Common practice, no source. */
const hoursOfMeals: readonly (readonly [RegExp, string])[] = [
  [/\b(?:breakfast|first thing)\b|早餐|早饭/, '08:00'],
  [/\b(?:noon|midday|lunch\w*)\b|中午|午餐|午饭|晏昼/, '12:00'],
  [/\bmorning\b|早上|上午|朝早|清早/, '09:00'],
  [/\bafternoon\b|下午|下昼/, '15:00'],
  [/\b(?:evening|dinner|supper|party)\b|傍晚|晚餐|晚饭/, '18:00'],
  [/\b(?:bedtime|tonight|before bed)\b|睡前|今晚|晚上/, '21:00'],
];

/** The time a sentence names, the nearest to come; null where it names none. */
function timeSaid(words: string, nowMs: Instant, zone: string): Instant | null {
  const today = dateOf(wallAt(nowMs, zone));
  const { date, part, rest } = readDay(words, today);
  const clock = clockSaid(rest, part) ?? hoursOfMeals.find(([said]) => said.test(words))?.[1];
  if (clock === undefined) return date === undefined ? null : atWall(date, '12:00', zone);
  const early = date === undefined ? earlyHour(words, rest, part, clock) : null;
  const morning = early === null ? null : nextMorning(early, nowMs, zone);
  if (morning !== null && (isSoon(morning, nowMs) || leaves.test(words))) return morning;
  const at = atWall(date ?? today, clock, zone);
  if (date !== undefined || at >= nowMs) return at;
  // "At nine", said at ten in the morning.
  return clock < '12:00' && !saysMorning.test(words) && at + 12 * hourMs >= nowMs
    ? at + 12 * hourMs
    : atWall(addDays(today, 1), clock, zone);
}

/** "I leave at seven", said before seven in the morning or late in the evening: the hour that comes first. */
function earlyHour(words: string, text: string, part: string | undefined, clock: string): string | null {
  const isUnsaid = part === undefined && readHours(text, part).from === undefined && !saysEvening.test(words);
  const hour = Number(clock.slice(0, 2)) - 12;
  return isUnsaid && hour >= earliestH && hour < leastLateH
    ? `${String(hour).padStart(2, '0')}${clock.slice(2)}`
    : null;
}
const earliestH = 5;
/** From eight on a bare hour is one of the morning anyway. */
const leastLateH = 8;
const leaves =
  /\b(?:leav\w+|get(?:ting)? up|wake|work|school|train|bus|flight|drive|set(?:ting)? off|out the door)\b|起床|起身|出門|出门|上班|上學|上学|返工|返學|返学/;
const saysEvening = /\bpm\b|\b(?:evening|tonight|dinner|supper|party|night)\b|晚|下午|傍晚/;

function nextMorning(clock: string, nowMs: Instant, zone: string): Instant {
  const today = dateOf(wallAt(nowMs, zone));
  const at = atWall(today, clock, zone);
  return at >= nowMs ? at : atWall(addDays(today, 1), clock, zone);
}
const isSoon = (at: Instant, nowMs: Instant): boolean => at - nowMs <= soonH * hourMs;
const soonH = 7;

const saysMorning = /\bam\b|\bmorning\b|早|上午/;

const atWall = (date: WallDate, clock: string, zone: string): Instant => instantOf(`${date}T${clock}`, zone);

/** A bare hour before eight is one of the afternoon: nobody picnics at three in the night. */
function clockSaid(text: string, part: string | undefined): string | undefined {
  const clear = readHours(text, part).from;
  if (clear !== undefined) return clear;
  return readHours(text, part ?? 'afternoon').from ?? bareHour(text);
}

function bareHour(text: string): string | undefined {
  const hour = Number(/\b(?:at|by|for|around|about|till|until) (\d{1,2})\b/.exec(text)?.[1] ?? 0);
  if (hour < 1 || hour > 24) return undefined;
  return `${String(hour < 8 ? hour + 12 : hour % 24).padStart(2, '0')}:00`;
}
