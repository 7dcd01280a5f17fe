/** Lessons written down as YAML are the lessons that are read again, however little was said of them. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { readLessonFile } from '../../src/content/lesson-data.ts';
import { writeLessonYaml } from '../../src/content/lesson-yaml.ts';
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

it('a lesson that repeats leaves room for the day behind its id', () => {
  const file = join(folder, 'long.yaml');
  const repeats = 'repeats: { every: week }';
  writeFileSync(file, writeLessonYaml([{ ...draft, id: 'a'.repeat(30) }]).replace('level:', `${repeats}\n  level:`));
  expect(() => readLessonFile(file, new Set(['white-peony']))).toThrow(/at most 29 letters for a lesson that repeats/);
});
