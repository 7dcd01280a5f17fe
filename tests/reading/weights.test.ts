import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { learnt, learntSentences } from '../../src/commands/learnt.ts';
import { readReadingWords } from '../../src/content/reading-words.ts';
import { kinds } from '../../src/core/reading/kinds/kind.ts';
import { readWeights, weigh, writeWeights } from '../../src/core/reading/kinds/weights.ts';

const dataDir = join(import.meta.dirname, '..', '..', 'data');
const kept = readFileSync(join(dataDir, 'reading', 'weights.txt'), 'utf8');

/** A tenth, as the table has them: exponentials may differ in the last place from machine to machine. */
const mayDiffer = 0.1 + 1e-9;

test(
  'the weights are those learnt from the examples as they stand (npm run learn writes them anew)',
  { timeout: 300_000 },
  () => {
    const { weights, common, shopTalk } = learnt(
      dataDir,
      learntSentences.map((file) => join(import.meta.dirname, file)),
    );
    expect(common).toEqual(readReadingWords(dataDir).common);
    expect(new Set(shopTalk)).toEqual(readReadingWords(dataDir).worlds.shopTalk());
    const anew = readWeights(weights);
    const before = readWeights(kept);
    const nothing = kinds.map(() => 0);
    const apart = [...new Set([...anew.keys(), ...before.keys()])].filter((evidence) => {
      const [a, b] = [anew.get(evidence) ?? nothing, before.get(evidence) ?? nothing];
      return a.some((weight, i) => Math.abs(weight - (b[i] ?? 0)) > mayDiffer);
    });
    expect(apart).toEqual([]);
  },
);

test('a table reads as it was written', () => {
  expect(writeWeights(readWeights(kept))).toBe(kept);
});

test.each([
  ['', /expected the kinds/],
  ['brew taste\n', /expected the kinds/],
  [`${kinds.join(' ')}\n1 2 3\tword\n`, /line 2: expected 8 numbers/],
  [`${kinds.join(' ')}\n1 2 3 4 5 6 7 x\tword\n`, /line 2: expected 8 numbers/],
])('table %j is refused', (text, message) => {
  expect(() => readWeights(text)).toThrow(message);
});

test('shares come to one, and leaning moves them', () => {
  const weights = readWeights(kept);
  const even = weigh(weights, ['open']);
  const leant = weigh(weights, ['open'], { brew: 9 });
  expect(even.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
  expect(leant[0]?.kind).toBe('brew');
});
