/** `npm run lessons`: the lessons to come; `-- out FILE` writes them down, `-- in FILE` takes a changed file in, all of it or nothing. */
import { readFileSync, writeFileSync } from 'node:fs';
import { extname } from 'node:path';
import { contentOf } from '../app.ts';
import { databaseFile, readConfig, type Config } from '../config.ts';
import type { Content } from '../content.ts';
import { writeBookings } from '../content/booking-table.ts';
import type { LineMistake } from '../content/csv.ts';
import { readLessonFile } from '../content/lesson-data.ts';
import { readLessonTable, writeLessons } from '../content/lesson-table.ts';
import { writeLessonYaml } from '../content/lesson-yaml.ts';
import { languageOfDevice } from '../conversation/device-language.ts';
import { draftOf } from '../core/lessons/lesson-draft.ts';
import type { LessonDraft } from '../core/lessons/lesson.ts';
import { seatsTaken, type Roster } from '../core/lessons/roster.ts';
import type { Language } from '../core/units.ts';
import { PlainMistake, requireUtc, toldPlainly } from '../start.ts';
import type { Store } from '../store/contract.ts';
import { openSqliteStore } from '../store/sqlite/store.ts';

const usage = `npm run lessons
npm run lessons -- out FILE.csv | FILE.yaml | bookings.csv
npm run lessons -- in FILE.csv | FILE.yaml`;

interface Desk {
  readonly store: Store;
  readonly content: Content;
  readonly language: Language;
  readonly now: number;
}

async function listed({ store, now, language }: Desk): Promise<string> {
  const rosters = await store.rosters(now);
  const lines = rosters
    .filter(({ lesson }) => lesson.status !== 'cancelled')
    .map((roster) => {
      const { id, starts, title, seats } = roster.lesson;
      return [id, starts.replace('T', ' '), `${seatsTaken(roster)}/${seats}`, title[language]].join('\t');
    });
  return [...lines, usage].join('\n');
}

async function written({ store, now, content, language }: Desk, file: string): Promise<string> {
  const { text, count } = tableFor(file, await store.rosters(now));
  try {
    // Never over a file that is there: it may hold what was not taken in yet.
    writeFileSync(file, text, { flag: 'wx' });
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
    throw new PlainMistake(content.words.say(language, { key: 'lesson-table-there', values: { file } }));
  }
  return `${file}: ${count}`;
}

/** Which table it is, its name tells. */
function tableFor(file: string, rosters: readonly Roster[]): { readonly text: string; readonly count: number } {
  if (/(^|[\\/])bookings[^\\/]*\.csv$/.test(file)) {
    return { text: writeBookings(rosters), count: rosters.flatMap(({ bookings }) => bookings).length };
  }
  const drafts = rosters.filter(({ lesson }) => lesson.status !== 'cancelled').map(({ lesson }) => draftOf(lesson));
  return { text: kindOf(file) === 'csv' ? writeLessons(drafts) : writeLessonYaml(drafts), count: drafts.length };
}

interface Given {
  readonly drafts: readonly LessonDraft[];
  /** Where each stands. */
  readonly lines: readonly number[];
}

async function taken(desk: Desk, file: string): Promise<string> {
  const { drafts, lines } = await given(desk, file);
  const wrong = await desk.store.putLessons(drafts, desk.now);
  const mistakes = wrong.flatMap(({ n, mistakes: of }) => of.map((one) => ({ ...one, line: lines[n] ?? n + 1 })));
  if (mistakes.length > 0) throw new PlainMistake(told(mistakes, desk));
  return `${file}: ${drafts.length}`;
}

function unknownTeas({ drafts, lines }: Given, teas: ReadonlySet<string>): readonly LineMistake[] {
  return drafts.flatMap((draft, n) =>
    draft.teas
      .filter((tea) => !teas.has(tea))
      .map((words) => ({ code: 'lesson-table-tea', field: 'teas', values: { words }, line: lines[n] ?? n + 1 })),
  );
}

async function given(desk: Desk, file: string): Promise<Given> {
  const teas = new Set(desk.content.teas.map(({ id }) => id));
  if (kindOf(file) === 'yaml') {
    const known = (await desk.store.rosters(0)).flatMap(({ lesson: { id, series = id } }) => [id, series]);
    const { lessons, series } = readLessonFile(file, teas, known);
    if (series.length > 0)
      throw new PlainMistake(desk.content.words.say(desk.language, { key: 'lesson-table-series', values: {} }));
    const text = readFileSync(file, 'utf8').split('\n');
    return { drafts: lessons, lines: lessons.map(({ id }) => lineOf(id, text)) };
  }
  const read = readLessonTable(readFileSync(file, 'utf8'));
  if ('mistakes' in read) throw new PlainMistake(told(read.mistakes, desk));
  const unknown = unknownTeas(read, teas);
  if (unknown.length > 0) throw new PlainMistake(told(unknown, desk));
  return read;
}

function lineOf(id: string, text: readonly string[]): number {
  return text.findIndex((line) => /^[-\s]*id:\s*['"]?([\w.-]+)['"]?\s*$/.exec(line)?.[1] === id) + 1;
}

function kindOf(file: string): 'csv' | 'yaml' {
  const ending = extname(file);
  if (ending === '.csv') return 'csv';
  if (ending === '.yaml') return 'yaml';
  throw new PlainMistake(usage);
}

function told(mistakes: readonly LineMistake[], { content, language }: Desk): string {
  return mistakes
    .map(({ code, field, values, line }) => {
      const mistake = { key: `mistake-${code}`, values };
      return content.words.say(language, { key: 'lesson-table-place', values: { line, column: field, mistake } });
    })
    .join('\n');
}

async function run(config: Config, [act, file, ...rest]: readonly string[]): Promise<string> {
  if (rest.length > 0 || (act !== undefined && (file === undefined || !['in', 'out'].includes(act)))) {
    throw new PlainMistake(usage);
  }
  const content = contentOf(config);
  const store = openSqliteStore(databaseFile(config));
  const desk = { store, content, language: languageOfDevice(config.deviceLanguage), now: Date.now() };
  try {
    if (file === undefined) return await listed(desk);
    return await (act === 'in' ? taken(desk, file) : written(desk, file));
  } finally {
    await store.close();
  }
}

try {
  requireUtc();
  process.stdout.write(`${await run(readConfig(process.env), process.argv.slice(2))}\n`);
} catch (error) {
  process.stderr.write(`${toldPlainly(error)}\n`);
  process.exitCode = 1;
}
