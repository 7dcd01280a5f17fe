/** The faults, a few times each in every check; `npm run faults` tries them often. Those left out here have tests of their own. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { dice } from './counts.ts';
import { faults } from './faults.ts';

const elsewhere: Readonly<Record<string, string>> = {
  F3: 'too long a wait for every check; F1 and F2 kill it in every one',
  F8: 'tests/channels/telegram/fault-table.test.ts',
  F11: 'tests/lessons/zones.test.ts',
  F12: 'tests/lessons/zones.test.ts',
  F13: 'tests/lessons/house.test.ts',
  F16: 'too long a wait for every check',
  F17: 'tests/ops/commands.test.ts',
  F19: 'tests/conversation/hand-over.test.ts and tests/faults/races-hand-over.test.ts',
  F20: 'tests/conversation/hand-over-rights.test.ts and tests/lessons/house.test.ts',
  F22: 'tests/channels/telegram/secrets.test.ts',
  F25: 'too long a wait for every check',
};

const here = faults.filter(({ id }) => elsewhere[id] === undefined);

test.each(here)('$id holds: $title', { timeout: 300_000 }, async (fault) => {
  const folder = mkdtempSync(join(tmpdir(), `tea-${fault.id}-`));
  // The same throws in every check; the command throws anew.
  const thrown = dice(Number(process.env['SEED'] ?? 1));
  try {
    const { tried, broken } = await fault.run({ count: fault.counts.few, dice: thrown, folder, slack: 20 });
    expect(broken, `seed ${thrown.seed}`).toEqual([]);
    expect(tried).toBeGreaterThan(0);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

test('there is one for each that is promised, and each is tried more often the longer one waits', () => {
  expect(faults.map(({ id }) => id)).toEqual(Array.from({ length: 25 }, (_, i) => `F${i + 1}`));
  for (const { counts } of faults) {
    expect(counts.few).toBeLessThanOrEqual(counts.usual);
    expect(counts.usual).toBeLessThanOrEqual(counts.long);
  }
});
