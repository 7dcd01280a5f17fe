/** Every mistake of lessons has its sentence, every sentence its mistake, and each is given the values it needs. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readWordFiles } from '../../../src/content/words.ts';
import { makeWords } from '../../../src/core/words/words.ts';
import { languages } from '../../../src/core/units.ts';
import { denver, denverAt } from './lesson-drafts.ts';
import { planned } from './heard-here.ts';

const folders = ['src/core/lessons', 'src/core/functions', 'src/content'];
const files = folders.flatMap((folder) =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => join(folder, name)),
);
const sources = [...files, 'src/commands/lesson-files.ts'].map((file) => readFileSync(file, 'utf8'));
const codes = sources.flatMap((text) => [
  ...[...text.matchAll(/\b(?:wrong|code): 'lesson-([a-z-]+)'/g)].map(([, code = '']) => code),
  ...[...text.matchAll(/\b(?:mistake|lineMistake)\(\s*['`]([a-z-]+)(\$\{shown\})?['`]/g)].flatMap(
    ([, code = '', shown]) => (shown === undefined ? [code] : [`${code}never`, `${code}twice`]),
  ),
]);

it('has a sentence for each mistake and a mistake for each sentence', () => {
  const keys = makeWords(readWordFiles('flows').sources, () => null).keys();
  const worded = keys.filter((key) => key.startsWith('mistake-lesson-'));
  expect(codes.length).toBeGreaterThan(30);
  expect(worded.toSorted()).toEqual([...new Set(codes)].map((code) => `mistake-lesson-${code}`).toSorted());
});

it.each([
  ['yesterday, 0 seats'],
  ['Saturday 7, white tea, 10,000 seats'],
  ['14 March 2027 2:30 am, tea, 8 seats'],
  ['7 November 2027 1:30 am, tea, 8 seats'],
  ['Saturday 9 pm to 7 pm, tea, 8 seats'],
  ['2020-01-01 19:00, tea, 8 seats'],
  ['5/12 7 pm for 900 minutes in Mars/Base, tea'],
  ['Saturday 6 December 25:00, tea'],
  ['30 February 7 pm, tea'],
  ['long '.repeat(200)],
])('says each with its values: %s', (sentence) => {
  const words = makeWords(readWordFiles('flows').sources, () => null);
  const { problem } = planned(sentence, denver, denverAt('2026-12-02T10:00'));
  if (!problem) throw new Error('no mistake');
  for (const language of languages)
    expect(words.say(language, problem as unknown as Parameters<typeof words.say>[1])).not.toMatch(/\{|\$/);
});
