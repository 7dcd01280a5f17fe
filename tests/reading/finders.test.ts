import { expect, test } from 'vitest';
import { compareFinders } from '../bench/finders.ts';

test(
  'the tea finder is right more often, and wrong less often, than a search library alone',
  { timeout: 120_000 },
  () => {
    const { ours, ...others } = compareFinders(15);
    if (process.env['REPORT'] !== undefined) console.log({ ours, ...others });
    for (const theirs of Object.values(others)) {
      expect(ours.right).toBeGreaterThan(theirs.right);
      expect(ours.wrong).toBeLessThan(theirs.wrong);
    }
  },
);
