/** A lesson told or sized otherwise by a shopkeeper: tried by the core first, and told back once it is done. It tells nobody who booked. */
import type { Outcome } from '../../flow/book.ts';
import type { Facts, Json } from '../../flow/flow.ts';
import { doorValues, reachOf, type Door } from '../../lessons/door-list.ts';
import { mistake, retellLesson, type Lesson, type Wording } from '../../lessons/lesson.ts';
import { resizeLesson } from '../../lessons/seats.ts';
import { readSeats } from '../../lessons/spoken/amounts.ts';
import { plain } from '../../lessons/spoken/cut.ts';
import { readLevel } from '../../lessons/spoken/level.ts';
import { readNumber } from '../../lessons/spoken/numeral.ts';
import { withFree } from '../../lessons/spoken/spoken.ts';
import { seatsWanted } from '../../lessons/spoken/seats-wanted.ts';
import { allowed, rosterOf, type Here } from './board.ts';
import { mostWritten } from './plan-heard.ts';
import { phrase, refused, refusedBy, textOf } from '../values.ts';

type Worded = 'title' | 'place' | 'price' | 'bring';

/** Seats are counted anew; words are said in one language and stand in all. */
export function deskChange(door: Door, { seen, field, text }: Facts, here: Here): Outcome {
  const { lesson } = door;
  const words = textOf(text).trim();
  if (field === 'seats') return resized(door, { words, seen: Number(seen) }, here);
  if (words.length > mostWritten) return refused(mistake('words-too-long', 'text', { most: mostWritten }));
  if (field === 'level') return relevelled(door, words, { seen: Number(seen), here });
  const name = field as Worded | 'teacher';
  const value = name === 'teacher' ? words : worded(name, words, lesson);
  const planned = retellLesson(lesson, { [name]: value }, Number(seen), here.nowMs);
  const values = { ...doorValues(door), ...reachOf(door.bookings), field: name, words };
  // Of a price nobody is told.
  const told = name === 'price' ? null : phrase('desk-told-alter', values);
  return allowed(planned, {
    retold: { [name]: asJson(value) },
    seats: null,
    told,
    done: altered(door, name, typeof value === 'string' ? value : value.en),
  });
}

/** "Free for students" stands beside the price. */
function worded(name: Worded, words: string, { price }: Lesson): Wording {
  const inWords = (before: string): string =>
    name === 'price' && /^free for |^\p{Script=Han}+免[費费]/iu.test(words)
      ? (withFree(before || undefined, words) ?? words)
      : words;
  return { en: inWords(price.en), 'zh-Hant': inWords(price['zh-Hant']), 'zh-Hans': inWords(price['zh-Hans']) };
}

/** Told once it is done. */
const altered = (door: Door, field: string, words: string): Facts =>
  phrase('desk-told-altered', { ...doorValues(door), field, words });

function relevelled(door: Door, words: string, { seen, here }: { seen: number; here: Here }): Outcome {
  const level = readLevel(here.listen(words));
  if (level === undefined) return refused(mistake('level-unclear', 'level'));
  const gives = { retold: { level }, seats: null, told: null, done: altered(door, 'level', words) };
  return allowed(retellLesson(door.lesson, { level }, seen, here.nowMs), gives);
}

const asJson = (value: object | string): Json => (typeof value === 'string' ? value : { ...value });

function resized(door: Door, { words, seen }: { words: string; seen: number }, { nowMs }: Here): Outcome {
  const planned = retellLesson(door.lesson, {}, seen, nowMs);
  if ('mistakes' in planned) return refusedBy(planned.mistakes);
  const text = plain(words);
  const seats = seatsWanted(text, rosterOf(door)) ?? readSeats(text).amount ?? readNumber(text);
  if (seats === undefined) return refused(mistake('seats-missing', 'seats'));
  const turn = resizeLesson(rosterOf(door), seats, nowMs);
  if ('mistakes' in turn) return refusedBy(turn.mistakes);
  return { gives: { retold: {}, seats, told: null, done: altered(door, 'seats', String(seats)) } };
}
