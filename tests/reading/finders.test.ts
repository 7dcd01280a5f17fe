import { expect, test } from 'vitest';
import { compareFinders } from '../bench/finders.ts';

test(
  'the tea finder is right more often, and wrong less often, than a search library alone',
  { timeout: 120_000 },
  () => {
    const lines = compareFinders(15);
    if (process.env['REPORT'] !== undefined) console.log(lines.join('\n'));
    const numbers = lines.map((line) => /(\d+) of \d+ right, (\d+) taken/.exec(line)?.slice(1).map(Number) ?? []);
    const [[right = 0, wrong = 1] = [], ...others] = numbers;
    for (const [theirRight = 0, theirWrong = 0] of others) {
      expect(right).toBeGreaterThan(theirRight);
      expect(wrong).toBeLessThan(theirWrong);
    }
  },
);
