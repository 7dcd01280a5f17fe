import { expect, test } from 'vitest';
import { measureReading } from '../bench/reading-bench.ts';

test('finding a tea among 500 takes a millisecond at most', { timeout: 60_000 }, () => {
  const lines = measureReading();
  if (process.env['REPORT'] !== undefined) console.log(lines.join('\n'));
  const [, among500 = ''] = lines;
  expect(Number(/find ([\d.]+)/.exec(among500)?.[1])).toBeLessThanOrEqual(1);
});
