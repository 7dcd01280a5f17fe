/** Lessons as a table to be edited in a spreadsheet, there and back. Nothing of a table with a mistake is taken. */
import { draftMistakes, levels, mistake, type LessonDraft, type Wording } from '../core/lessons/lesson.ts';
import { languages, type Mistake } from '../core/units.ts';
import { cellsOf, type Cells } from './cells.ts';
import { readTable, writeTable, type LineMistake, type Row, type Table } from './csv.ts';

export const worded = ['title', 'place', 'price', 'bring'] as const;
type Worded = (typeof worded)[number];

const wordedColumns = (name: Worded): readonly string[] => languages.map((language) => `${name} ${language}`);

/** Lists of ids are parted by blanks. */
export const lessonColumns: readonly string[] = [
  'id',
  'series',
  ...wordedColumns('title'),
  'level',
  'builds on',
  'teacher',
  'starts',
  'minutes',
  'zone',
  'seats',
  ...wordedColumns('place'),
  ...wordedColumns('price'),
  ...wordedColumns('bring'),
  'teas',
  'cancel hours',
  'offer minutes',
];

/** `lines` tells where each draft stands. */
export type ReadLessons =
  | { readonly drafts: readonly LessonDraft[]; readonly lines: readonly number[] }
  | { readonly mistakes: readonly LineMistake[] };

export function writeLessons(drafts: readonly LessonDraft[]): string {
  return writeTable(lessonColumns, drafts.map(cellsOfDraft));
}

function cellsOfDraft(draft: LessonDraft): Row['cells'] {
  return {
    ...Object.fromEntries(worded.flatMap((name) => languages.map((l) => [`${name} ${l}`, draft[name][l]]))),
    id: draft.id,
    series: draft.series ?? '',
    level: draft.level,
    'builds on': draft.buildsOn.join(' '),
    teacher: draft.teacher,
    starts: draft.starts.replace('T', ' '),
    minutes: String(draft.minutes),
    zone: draft.zone,
    seats: String(draft.seats),
    teas: draft.teas.join(' '),
    'cancel hours': String(draft.cancelHours),
    'offer minutes': String(draft.offerMinutes),
  };
}

/** Whether a lesson lies in the past is not asked here: a table may hold a season that is half over. */
export function readLessonTable(text: string): ReadLessons {
  return lessonsOf(readTable(text, lessonColumns));
}

/** The drafts its rows stand for. */
export function lessonsOf(table: Table): ReadLessons {
  if ('mistakes' in table) return table;
  const read = table.rows.map((row) => draftOf(cellsOf(row), row.line));
  const mistakes = [...read.flatMap((one) => one.mistakes), ...twice(read)];
  return mistakes.length > 0
    ? { mistakes: mistakes.toSorted((a, b) => a.line - b.line) }
    : { drafts: read.map(({ draft }) => draft), lines: read.map(({ line }) => line) };
}

interface ReadRow {
  readonly line: number;
  readonly draft: LessonDraft;
  readonly mistakes: readonly LineMistake[];
}

function draftOf(cells: Cells, line: number): ReadRow {
  const series = cells.text('series') === '' ? {} : { series: cells.id('series') };
  const draft: LessonDraft = {
    id: cells.id('id'),
    ...series,
    title: wordingOf(cells, 'title'),
    level: cells.oneOf('level', levels),
    buildsOn: cells.ids('builds on'),
    place: wordingOf(cells, 'place'),
    teacher: cells.text('teacher'),
    seats: cells.judgedWhole('seats'),
    zone: cells.text('zone'),
    starts: wallOf(cells.text('starts')),
    minutes: cells.judgedWhole('minutes'),
    price: wordingOf(cells, 'price'),
    bring: wordingOf(cells, 'bring'),
    teas: cells.ids('teas'),
    cancelHours: cells.whole('cancel hours'),
    offerMinutes: cells.whole('offer minutes'),
  };
  // A cell that is no number has been told already.
  const told = new Set(cells.mistakes.map((one) => one.field));
  draftMistakes(draft).forEach((one: Mistake) => told.has(one.field) || cells.blame(one));
  return { line, draft, mistakes: cells.mistakes };
}

function wordingOf(cells: Cells, name: Worded): Wording {
  return Object.fromEntries(languages.map((l) => [l, cells.text(`${name} ${l}`)])) as Wording;
}

/** A spreadsheet likes a blank between day and time, and adds seconds. */
function wallOf(words: string): string {
  return words.replace(/^(\d{4}-\d\d-\d\d)[ T](\d\d:\d\d)(?::00)?$/, '$1T$2');
}

function twice(rows: readonly ReadRow[]): readonly LineMistake[] {
  const first = new Map<string, number>();
  return rows.flatMap(({ line, draft: { id } }) => {
    const earlier = first.get(id);
    if (earlier !== undefined) return [{ ...mistake('table-twice', 'id', { words: id, earlier }), line }];
    first.set(id, line);
    return [];
  });
}
