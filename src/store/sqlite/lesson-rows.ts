/** Lessons and series as rows. */
import type { Database } from 'better-sqlite3';
import type { Lesson } from '../../core/lessons/lesson.ts';
import type { Series } from '../../core/lessons/series.ts';
import type { Instant } from '../../core/units.ts';
import type { News } from './news.ts';

export interface LessonRows {
  of(id: string): Lesson | undefined;
  /** Those that end after this instant, by their start. */
  endingAfter(since: Instant): readonly Lesson[];
  /** Those that ended within these, the latest first. */
  endedWithin(from: Instant, to: Instant): readonly Lesson[];
  /** Those to come whose times were worked out under other rules. */
  underOtherRules(tzVersion: string, now: Instant): readonly Lesson[];
  /** False when the id is taken. */
  add(lesson: Lesson): boolean;
  put(lesson: Lesson): void;
  addSeries(series: Series): boolean;
  putSeries(series: Series): void;
  series(): readonly Series[];
}

/** Columns of their own; all else of a lesson stands in `words`. */
const columns = [
  'id',
  'series',
  'starts',
  'zone',
  'minutes',
  'startsAt',
  'endsAt',
  'tzVersion',
  'seats',
  'status',
  'reason',
  'revision',
  'moves',
] as const;
type Column = (typeof columns)[number];
type LessonRow = { readonly [column in Column]: string | number | null } & { readonly words: string };

const column = (name: string): string => name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
const read = columns.map((name) => `${column(name)} AS ${name}`).join(', ');
const written = columns.map(column).join(', ');
const values = columns.map((name) => `@${name}`).join(', ');
const updated = columns.slice(1).map((name) => `${column(name)} = @${name}`);

export function makeLessonRows(db: Database, news: News): LessonRows {
  const of = db.prepare<[string], LessonRow>(`SELECT ${read}, words FROM lesson WHERE id = ?`);
  const endingAfter = db.prepare<[number], LessonRow>(
    `SELECT ${read}, words FROM lesson WHERE ends_at > ? ORDER BY starts_at, id`,
  );
  const endedWithin = db.prepare<[number, number], LessonRow>(
    `SELECT ${read}, words FROM lesson WHERE ends_at > ? AND ends_at <= ? ORDER BY starts_at DESC, id`,
  );
  const underOtherRules = db.prepare<[string, number], LessonRow>(
    `SELECT ${read}, words FROM lesson WHERE tz_version <> ? AND ends_at > ? ORDER BY id`,
  );
  const add = db.prepare(
    `INSERT INTO lesson (${written}, words) VALUES (${values}, @words) ON CONFLICT (id) DO NOTHING`,
  );
  const put = db.prepare(`UPDATE lesson SET ${updated.join(', ')}, words = @words WHERE id = @id`);
  const addSeries = db.prepare<[string, string]>('INSERT INTO series (id, rule) VALUES (?, ?) ON CONFLICT DO NOTHING');
  const putSeries = db.prepare<[string, string]>('UPDATE series SET rule = ? WHERE id = ?');
  const series = db.prepare<[], { rule: string }>('SELECT rule FROM series ORDER BY id');

  return {
    of(id) {
      const row = of.get(id);
      return row && toLesson(row);
    },
    endingAfter: (since) => endingAfter.all(since).map(toLesson),
    endedWithin: (from, to) => endedWithin.all(from, to).map(toLesson),
    underOtherRules: (tzVersion, now) => underOtherRules.all(tzVersion, now).map(toLesson),
    add(lesson) {
      news.tell();
      return add.run(toRow(lesson)).changes === 1;
    },
    put(lesson) {
      news.tell();
      put.run(toRow(lesson));
    },
    addSeries(one) {
      news.tell();
      return addSeries.run(one.draft.id, JSON.stringify(one)).changes === 1;
    },
    putSeries(one) {
      news.tell();
      putSeries.run(JSON.stringify(one), one.draft.id);
    },
    series: () => series.all().map(({ rule }) => JSON.parse(rule) as Series),
  };
}

function toRow(lesson: Lesson): Record<string, unknown> {
  const own = Object.fromEntries(columns.map((name) => [name, lesson[name] ?? null]));
  const words = Object.entries(lesson).filter(([name]) => !(name in own));
  return { ...own, words: JSON.stringify(Object.fromEntries(words)) };
}

function toLesson({ words, series, ...row }: LessonRow): Lesson {
  const inSeries = series === null ? {} : { series };
  return { ...(JSON.parse(words) as object), ...row, ...inSeries } as Lesson;
}
