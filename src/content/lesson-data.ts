/** Reads data/shop/lessons.yaml, or the same file of the folder that NINTHPOUR_SHOP names: single lessons and series. Whether one lies in the past is not asked: nobody knows the time here. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { isWallDate } from '../core/lessons/calendar.ts';
import {
  draftMistakes,
  levels,
  mostMinutes,
  mostSeats,
  usual,
  type LessonDraft,
  type Wording,
} from '../core/lessons/lesson.ts';
import type { Recurrence } from '../core/lessons/recurrence.ts';
import type { Series } from '../core/lessons/series.ts';
import { languages } from '../core/units.ts';
import { inEachLanguage } from './in-each-language.ts';
import { ContentMistake, readYaml, type YamlFile } from './yaml-file.ts';

export interface LessonData {
  readonly lessons: readonly LessonDraft[];
  readonly series: readonly Series[];
}

const text = z.string().trim().min(1);
const wording = inEachLanguage(text);
const id = z.string().regex(/^[a-z][a-z0-9-]{0,39}$/, 'expected at most 40 small letters, figures and hyphens');
/** A day such as "-2026-12-05" goes behind it. */
const longestSeriesId = 29;
/** What is not said is not written. */
const unsaid = Object.fromEntries(languages.map((language) => [language, ''])) as Wording;
const whole = z.number().int();
const date = z.string().refine(isWallDate, 'expected a day such as 2026-12-05');

const repeats = z
  .strictObject({
    every: z.enum(['day', 'week', 'month']),
    step: whole.min(1).max(52).default(1),
    keep: z.enum(['weekday', 'last', 'date']).optional(),
    times: whole.min(1).max(500).optional(),
    until: date.optional(),
    except: z.array(date).optional(),
  })
  .transform((rule): Recurrence => withoutGaps(rule));

const lessonSchema = z.strictObject({
  id,
  title: wording,
  level: z.enum(levels),
  buildsOn: z.array(id).default([]),
  place: wording.default(unsaid),
  teacher: text.default(''),
  seats: whole.min(1).max(mostSeats),
  zone: text,
  starts: text,
  minutes: whole.min(1).max(mostMinutes).default(usual.minutes),
  price: wording.default(unsaid),
  bring: wording.default(unsaid),
  teas: z.array(text).default([]),
  cancelHours: whole.min(0).max(720).default(usual.cancelHours),
  offerMinutes: whole.min(1).max(10_080).default(usual.offerMinutes),
  repeats: repeats.optional(),
});
type Entry = z.output<typeof lessonSchema>;

/** `teas` are the ids of the catalogue, null when nobody knows them. A shop without the file gives no lessons yet. Throws ContentMistake. */
export function readLessons(shopDir: string, teas: ReadonlySet<string> | null): LessonData {
  const path = join(shopDir, 'lessons.yaml');
  return existsSync(path) ? readLessonFile(path, teas) : { lessons: [], series: [] };
}

/** The same, from any file. */
export function readLessonFile(path: string, teas: ReadonlySet<string> | null): LessonData {
  const file = readYaml(path, z.array(lessonSchema));
  const problems = file.value.flatMap((entry, n) => problemsOf(entry, n, { file, teas }));
  if (problems.length > 0) throw new ContentMistake(problems.join('\n'));
  return {
    lessons: file.value.filter((one) => one.repeats === undefined).map(draftOf),
    series: file.value.flatMap((one) => (one.repeats ? [{ draft: draftOf(one), repeats: one.repeats }] : [])),
  };
}

interface Surroundings {
  readonly file: YamlFile<readonly Entry[]>;
  readonly teas: ReadonlySet<string> | null;
}

function problemsOf(entry: Entry, n: number, { file, teas }: Surroundings): readonly string[] {
  const ids = file.value.map((one) => one.id);
  const unknown = (field: 'teas' | 'buildsOn', known: ReadonlySet<string>): readonly string[] =>
    entry[field].flatMap((one, m) =>
      known.has(one) ? [] : [`${file.at([n, field, m])} ${field}: "${one}" is not known`],
    );
  return [
    ...(ids.indexOf(entry.id) < n ? [`${file.at([n, 'id'])} id: "${entry.id}" is there twice`] : []),
    ...(entry.repeats && entry.id.length > longestSeriesId
      ? [`${file.at([n, 'id'])} id: expected at most ${longestSeriesId} letters for a lesson that repeats`]
      : []),
    ...(teas === null ? [] : unknown('teas', teas)),
    ...unknown('buildsOn', new Set(ids.slice(0, n))),
    ...draftMistakes(draftOf(entry)).map((one) => {
      const values = Object.values(one.values).join(', ');
      return `${file.at([n, one.field])} ${one.field}: ${one.code.replace('lesson-', '').replaceAll('-', ' ')} (${values})`;
    }),
  ];
}

function draftOf(entry: Entry): LessonDraft {
  const { repeats: _, ...draft } = entry;
  return draft;
}

/** exactOptionalPropertyTypes: a key that is absent, not one that is undefined. */
function withoutGaps<T extends object>(value: T): { [key in keyof T]: Exclude<T[key], undefined> } {
  return Object.fromEntries(Object.entries(value).filter(([, one]) => one !== undefined)) as {
    [key in keyof T]: Exclude<T[key], undefined>;
  };
}
