import { existsSync, mkdtempSync, rmSync, statfsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** With room for it, what tests write stands in memory: waiting for a disk took a fifth of their time, and none of them cuts the power. */
const memory = '/dev/shm';
const roomBytes = 2 ** 31;

function filesInMemory(): Record<string, string> {
  if (!existsSync(memory)) return {};
  const { bavail, bsize } = statfsSync(memory);
  if (bavail * bsize < roomBytes) return {};
  const folder = mkdtempSync(`${memory}/ninthpour-tests-`);
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  return { TMPDIR: folder };
}

/** What only computes. */
const pure = ['tests/core/**/*.test.ts', 'tests/reading/*.test.ts', 'tests/reference/*.test.ts'];

/**
 * These put something of their own in the place of what all share: the network, the clock, an output. The others share a process,
 * and what it has read, which takes longer than most of them.
 */
const apart = [
  'tests/clock.test.ts',
  'tests/channels/telegram/bot-api.test.ts',
  'tests/channels/telegram/secrets.test.ts',
];

/** Begun first, the longest first: begun last, as the short files they are, they leave a core idle for a minute. */
const long = [
  'tests/flows/transcripts.test.ts',
  'tests/page/sheet.test.ts',
  'tests/page/house.test.ts',
  'tests/flows/walk-through.test.ts',
  'tests/faults/faults.test.ts',
  'tests/commands/lessons.test.ts',
].map((file) => fileURLToPath(new URL(`../${file}`, import.meta.url)));
for (const file of long) if (!existsSync(file)) throw new Error(`no such test: ${file}`);

const place = ({ moduleId }: TestSpecification): number => {
  const at = long.indexOf(moduleId);
  return at === -1 ? long.length : at;
};

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    // oxlint-disable-next-line unicorn/no-array-sort -- not an array's
    const sorted = await super.sort(files);
    return sorted.toSorted((a, b) => place(a) - place(b));
  }
}

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    projects: [
      { extends: true, test: { name: 'core', include: pure, isolate: false } },
      {
        extends: true,
        test: { name: 'house', include: ['tests/**/*.test.ts'], exclude: [...pure, ...apart], isolate: false },
      },
      { extends: true, test: { name: 'apart', include: apart } },
    ],
    env: { TZ: 'UTC', ...filesInMemory() },
    sequence: { sequencer: LongestFirst },
    pool: 'forks',
    // The usual number leaves one core of two idle; three were no faster.
    maxWorkers: 2,
    // What hangs is found; what is merely slow on a busy machine is no failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
