/** Lessons as YAML, there and back: written as data/shop/lessons.yaml holds them, read as the rows of their table are. */
import { stringify } from 'yaml';
import { usual, type LessonDraft } from '../core/lessons/lesson.ts';
import { languages } from '../core/units.ts';
import { lineMistake, type Row } from './csv.ts';
import { lessonsOf, worded, type ReadLessons } from './lesson-table.ts';
import { readRows } from './yaml-table.ts';

/** The lessons one by one: a series stands here as the lessons that follow from it. What is not said is not written. */
export function writeLessonYaml(drafts: readonly LessonDraft[]): string {
  const entries = drafts.map((draft) => withoutUnsaid({ ...draft, series: '' }));
  return stringify(entries, { aliasDuplicateObjects: false });
}

function withoutUnsaid(draft: object): object {
  return Object.fromEntries(Object.entries(draft).filter(([, value]) => !isUnsaid(value)));
}

const isUnsaid = (value: unknown): boolean =>
  value === '' || (typeof value === 'object' && value !== null && 'en' in value && value.en === '');

/** What is said here as one word, the table says as two. */
const columnOf: { readonly [name: string]: string } = {
  buildsOn: 'builds on',
  cancelHours: 'cancel hours',
  offerMinutes: 'offer minutes',
};
const plain = [
  'id',
  'level',
  'teacher',
  'starts',
  'minutes',
  'zone',
  'seats',
  'cancelHours',
  'offerMinutes',
  'repeats',
];
const whereUnsaid = {
  minutes: String(usual.minutes),
  'cancel hours': String(usual.cancelHours),
  'offer minutes': String(usual.offerMinutes),
};

/** A series cannot be among them: taken in twice, it would not be known again. */
export function readLessonYaml(text: string): ReadLessons {
  const named = Object.fromEntries(worded.map((name) => [name, languages]));
  const table = readRows(text, { plain, listed: ['teas', 'buildsOn'], named });
  if ('mistakes' in table) {
    const [series] = table.mistakes.filter(({ field }) => field === 'repeats');
    return series ? { mistakes: [lineMistake('table-series', series.line, 'repeats')] } : table;
  }
  return lessonsOf({ rows: table.rows.map(asTableRow) });
}

function asTableRow({ line, cells, lines = {} }: Row): Row {
  return { line, cells: { ...whereUnsaid, ...renamed(cells) }, lines: renamed(lines) };
}

function renamed<Value>(cells: { readonly [name: string]: Value }): { readonly [column: string]: Value } {
  return Object.fromEntries(Object.entries(cells).map(([name, value]) => [columnOf[name] ?? name, value]));
}
