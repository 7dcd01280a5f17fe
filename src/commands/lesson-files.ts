/** Lessons and bookings as files: what is written down, and what is taken in, all of a file or nothing. */
import { basename } from 'node:path';
import type { Content } from '../content.ts';
import { readBookingTable, readBookingYaml, writeBookings, writeBookingYaml } from '../content/booking-table.ts';
import type { LineMistake } from '../content/csv.ts';
import { readLessonTable, writeLessons } from '../content/lesson-table.ts';
import { readLessonYaml, writeLessonYaml } from '../content/lesson-yaml.ts';
import type { BookingDraft } from '../core/lessons/booking-draft.ts';
import { draftOf } from '../core/lessons/lesson-draft.ts';
import { mistake, type LessonDraft } from '../core/lessons/lesson.ts';
import type { Language } from '../core/units.ts';
import type { Roster } from '../core/lessons/roster.ts';
import type { Store } from '../store/contract.ts';
import type { WrongRow } from '../store/lesson-contract.ts';
import { kindOf, mistakesTold, textOf, writeNew } from './table-files.ts';

export const usage = `npm run lessons
npm run lessons -- out lessons.csv | lessons.yaml | bookings.csv | bookings.yaml
npm run lessons -- in lessons.csv | lessons.yaml | bookings.csv | bookings.yaml`;

export interface Desk {
  readonly store: Store;
  readonly content: Content;
  readonly language: Language;
  readonly now: number;
  /** Whether letters can be sent. */
  readonly hasMail: boolean;
}

/** Which table it is, its name tells. */
const holdsBookings = (file: string): boolean => basename(file).toLowerCase().startsWith('bookings');

export async function written(desk: Desk, file: string): Promise<string> {
  const { text, count } = holdsBookings(file) ? await bookingsFor(desk, file) : await lessonsFor(desk, file);
  writeNew(file, text, desk);
  return `${file}: ${count}`;
}

interface Written {
  readonly text: string;
  readonly count: number;
}

async function bookingsFor({ store, now }: Desk, file: string): Promise<Written> {
  const bookings = await store.bookings(now);
  const text = kindOf(file, usage) === 'csv' ? writeBookings(bookings) : writeBookingYaml(bookings);
  return { text, count: bookings.length };
}

async function lessonsFor({ store, now }: Desk, file: string): Promise<Written> {
  const rosters = await store.rosters(now);
  const drafts = rosters.filter(({ lesson }) => lesson.status !== 'cancelled').map(({ lesson }) => draftOf(lesson));
  return { text: kindOf(file, usage) === 'csv' ? writeLessons(drafts) : writeLessonYaml(drafts), count: drafts.length };
}

/** `lines` tells where each stands. */
interface Given<Draft> {
  readonly drafts: readonly Draft[];
  readonly lines: readonly number[];
}

export async function taken(desk: Desk, file: string): Promise<string> {
  return holdsBookings(file) ? bookingsTaken(desk, file) : lessonsTaken(desk, file);
}

async function bookingsTaken(desk: Desk, file: string): Promise<string> {
  const text = textOf(file, desk);
  const read = kindOf(file, usage) === 'csv' ? readBookingTable(text) : readBookingYaml(text);
  if ('mistakes' in read) throw mistakesTold(read.mistakes, desk);
  const unsendable = desk.hasMail ? [] : letterless(read);
  if (unsendable.length > 0) throw mistakesTold(unsendable, desk);
  refuse(await desk.store.putBookings(read.drafts, desk.language, desk.now), read, desk);
  return `${file}: ${read.drafts.filter(({ booking }) => booking === null).length}`;
}

function letterless({ drafts, lines }: Given<BookingDraft>): readonly LineMistake[] {
  return drafts.flatMap(({ booking, mail }, n) =>
    booking === null && mail !== null ? [{ ...mistake('no-mail', 'mail'), line: lines[n] ?? n + 1 }] : [],
  );
}

async function lessonsTaken(desk: Desk, file: string): Promise<string> {
  const given = await lessonsGiven(desk, file);
  refuse(await desk.store.putLessons(given.drafts, desk.now), given, desk);
  const kept = new Set((await desk.store.rosters(0)).map(({ lesson }) => lesson.id));
  const past = given.drafts.filter(({ id }) => !kept.has(id)).length;
  const told = `${file}: ${given.drafts.length - past}`;
  const { content, language } = desk;
  if (past === 0) return told;
  return `${told}\n${content.words.say(language, { key: 'lesson-table-past', values: { count: past } })}`;
}

function refuse(wrong: readonly WrongRow[], { lines }: Given<unknown>, desk: Desk): void {
  if (wrong.length === 0) return;
  throw mistakesTold(
    wrong.flatMap(({ n, mistakes }) => mistakes.map((one) => ({ ...one, line: lines[n] ?? n + 1 }))),
    desk,
  );
}

async function lessonsGiven(desk: Desk, file: string): Promise<Given<LessonDraft>> {
  const text = textOf(file, desk);
  const read = kindOf(file, usage) === 'csv' ? readLessonTable(text) : readLessonYaml(text);
  if ('mistakes' in read) throw mistakesTold(read.mistakes, desk);
  const unknown = [...unknownTeas(read, desk), ...unknownLessons(read, await desk.store.rosters(0))];
  if (unknown.length > 0) throw mistakesTold(unknown, desk);
  return read;
}

function unknownTeas({ drafts, lines }: Given<LessonDraft>, { content }: Desk): readonly LineMistake[] {
  const teas = new Set(content.teas.map(({ id }) => id));
  return drafts.flatMap((draft, n) =>
    draft.teas
      .filter((tea) => !teas.has(tea))
      .map((words) => ({ ...mistake('table-tea', 'teas', { words }), line: lines[n] ?? n + 1 })),
  );
}

/** A lesson may build on one that is kept, or stands in the same file. */
function unknownLessons({ drafts, lines }: Given<LessonDraft>, kept: readonly Roster[]): readonly LineMistake[] {
  const known = new Set(
    [...kept.map(({ lesson }) => lesson), ...drafts].flatMap(({ id, series = id }) => [id, series]),
  );
  return drafts.flatMap((draft, n) =>
    draft.buildsOn
      .filter((lesson) => !known.has(lesson))
      .map((words) => ({ ...mistake('row-no-lesson', 'builds on', { words }), line: lines[n] ?? n + 1 })),
  );
}
