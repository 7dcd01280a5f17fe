/** Lessons written down as YAML are the lessons that are read again, however little was said of them. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { readLessonFile } from '../../src/content/lesson-data.ts';
import { readLessonYaml, writeLessonYaml } from '../../src/content/lesson-yaml.ts';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import { draft } from '../core/lessons/lesson-drafts.ts';

const folder = mkdtempSync(join(tmpdir(), 'lessons-'));
afterAll(() => rmSync(folder, { recursive: true }));

const inThree = (words: string) => ({ en: words, 'zh-Hant': words, 'zh-Hans': words });
const written: readonly LessonDraft[] = [
  draft,
  { ...draft, id: 'in-one-sentence-77', teacher: '', teas: [] },
  { ...draft, id: 'an-evening-with-the-gaiwan-2026-12-10', place: inThree('upstairs'), bring: inThree('a cup') },
];

it('comes back as it was', () => {
  const file = join(folder, 'out.yaml');
  writeFileSync(file, writeLessonYaml(written.map((one) => ({ ...one, series: 'an-evening-with-the-gaiwan' }))));
  const { lessons, series } = readLessonFile(file, new Set(['white-peony']));
  expect(lessons).toEqual(written);
  expect(series).toEqual([]);
});

it('comes back as it was where a shopkeeper gives it to the house, too', () => {
  expect(readLessonYaml(writeLessonYaml(written))).toMatchObject({ drafts: written });
  const short =
    '- { id: a, title: { en: A, zh-Hant: 甲, zh-Hans: 甲 }, level: beginner, seats: 2,\n    zone: Asia/Taipei, starts: 2026-12-05 19:00 }\n';
  expect(readLessonYaml(short)).toMatchObject({
    drafts: [{ id: 'a', minutes: 90, starts: '2026-12-05T19:00', teas: [], place: { en: '' } }],
    lines: [1],
  });
});

it('says the same again by its anchor, as any YAML may', () => {
  const first =
    '- { id: a, title: &t { en: A, zh-Hant: 甲, zh-Hans: 甲 }, level: beginner, seats: 2, zone: Asia/Taipei, starts: 2026-12-05 19:00 }\n';
  const next = first.replace('id: a', 'id: b').replace(/&t \{[^}]*\}/, '*t');
  expect(readLessonYaml(`${first}${next}`)).toMatchObject({ drafts: [{ id: 'a' }, { id: 'b', title: { en: 'A' } }] });
});

const lines = writeLessonYaml([draft]).split('\n');
const at = (name: string): number => lines.findIndex((line) => line.replace(/^\W*/, '').startsWith(`${name}:`)) + 1;
const withLine = (name: string, value: string): string =>
  lines.map((line) => line.replace(new RegExp(`^(\\W*${name}:).*$`), `$1 ${value}`)).join('\n');

it.each<[string, string, string]>([
  ['seats', '0', 'lesson-seats'],
  ['seats', '10000', 'lesson-seats'],
  ['seats', 'many', 'lesson-table-number'],
  ['minutes', '-30', 'lesson-minutes'],
  ['level', 'expert', 'lesson-table-choice'],
  ['zone', 'Mars/Base', 'lesson-zone-unknown'],
  ['starts', '2027-03-14T02:30', 'lesson-hour-never'],
  ['starts', '2027-11-07T01:30', 'lesson-hour-twice'],
  ['starts', 'yesterday', 'lesson-time-unreadable'],
  ['id', 'white evening', 'lesson-table-id'],
])('%s: %s is told by its line', (name, value, code) => {
  const read = readLessonYaml(withLine(name, value));
  expect('mistakes' in read && read.mistakes).toMatchObject([{ code, line: at(name) }]);
});

it.each<[string, string, string]>([
  ['- id: a\n  title: [\n', 'lesson-table-no-yaml', 'table'],
  ['lessons: none', 'lesson-table-no-list', 'table'],
  ['- id: a\n  colour: green\n', 'lesson-table-column-unknown', 'colour'],
  ['- id: a\n  title: { de: Tee }\n', 'lesson-table-column-unknown', 'title de'],
  ['- id: a\n  title: A\n', 'lesson-table-no-text', 'title en'],
  ['- id: a\n  teas: [{ a: b }]\n', 'lesson-table-no-text', 'teas'],
  ['- id: a\n  repeats: { every: week }\n', 'lesson-table-series', 'repeats'],
])('%j is no list of lessons', (text, code, field) => {
  const read = readLessonYaml(text);
  expect('mistakes' in read && read.mistakes).toMatchObject([{ code, field }]);
});

it('a lesson that repeats leaves room for the day behind its id', () => {
  const file = join(folder, 'long.yaml');
  const repeats = 'repeats: { every: week }';
  writeFileSync(file, writeLessonYaml([{ ...draft, id: 'a'.repeat(30) }]).replace('level:', `${repeats}\n  level:`));
  expect(() => readLessonFile(file, new Set(['white-peony']))).toThrow(/at most 29 letters for a lesson that repeats/);
});
