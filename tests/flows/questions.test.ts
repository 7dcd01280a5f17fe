/** How many questions the transcripts ask: to a first plan, and in all. REPORT=1 prints them. */
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readTranscript } from '../../src/commands/transcript.ts';

const here = import.meta.dirname;
const languages = ['en', 'zh-Hant', 'zh-Hans'];
/** Sentences by which a fact for the plan is asked for. */
const asking =
  'ask-tea ask-tea-again ask-family ask-family-of-unknown ask-which-of-these ask-vessel ask-other-vessel ask-size';

/** A sentence of the words as a pattern: what it is given may be anything. */
function patternOf(words: string, key: string): RegExp {
  const sentence = new RegExp(`^${key} = (.+)$`, 'm').exec(words)?.[1];
  if (sentence === undefined) throw new Error(`no sentence ${key}`);
  const fixed = sentence.split(/\{[^}]*\}/).map((part) => part.replace(/[.*+?^$()[\]|\\]/g, String.raw`\$&`));
  return new RegExp(`^${fixed.join('.*')}$`);
}

const words = languages.map((language) =>
  readFileSync(join(here, '..', '..', 'flows', 'words', `${language}.ftl`), 'utf8'),
);
const questions = asking.split(' ').flatMap((key) => words.map((all) => ({ key, pattern: patternOf(all, key) })));
const titles = ['brew-title', 'brew-title-family'].flatMap((key) => words.map((all) => patternOf(all, key)));

interface Count {
  readonly name: string;
  readonly toFirstPlan: number | null;
  readonly inAll: number;
}

function countIn(name: string): Count {
  const { exchanges } = readTranscript(readFileSync(join(here, name), 'utf8'));
  const asked: string[] = [];
  let toFirstPlan: number | null = null;
  for (const { expected } of exchanges) {
    const lines = expected.map(({ text }) => text);
    if (lines.some((line) => titles.some((title) => title.test(line)))) toFirstPlan ??= new Set(asked).size;
    asked.push(...lines.flatMap((line) => questions.find(({ pattern }) => pattern.test(line))?.key ?? []));
  }
  return { name, toFirstPlan, inAll: asked.length };
}

const counts = readdirSync(here)
  .filter((name) => name.endsWith('.transcript'))
  .map(countIn);

const mean = (numbers: readonly number[]): string => (numbers.reduce((a, b) => a + b, 0) / numbers.length).toFixed(2);

test('nobody is asked more than three things before a first plan', () => {
  const first = counts.flatMap(({ toFirstPlan }) => toFirstPlan ?? []);
  const all = counts.map(({ inAll }) => inAll);
  if (process.env['REPORT'] !== undefined) {
    console.log(`to a first plan, over ${first.length} talks: mean ${mean(first)}, most ${Math.max(...first)}`);
    console.log(`in all, over ${all.length} talks: mean ${mean(all)}, most ${Math.max(...all)}`);
    for (const { name, toFirstPlan, inAll } of counts) console.log(`${name}: ${String(toFirstPlan)} / ${inAll}`);
  }
  expect(first.length).toBeGreaterThanOrEqual(10);
  expect(Math.max(...first)).toBeLessThanOrEqual(3);
  expect(Math.min(...first)).toBe(0);
});
