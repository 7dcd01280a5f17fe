import { existsSync, mkdtempSync, rmSync, statfsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

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

/** What only computes leaves nothing behind: these share what they have read, which takes longer than most of them. */
const pure = ['tests/core/**/*.test.ts', 'tests/reading/*.test.ts', 'tests/reference/*.test.ts'];

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    projects: [
      { extends: true, test: { name: 'core', include: pure, isolate: false } },
      { extends: true, test: { name: 'house', include: ['tests/**/*.test.ts'], exclude: pure } },
    ],
    env: { TZ: 'UTC', ...filesInMemory() },
    pool: 'forks',
    // The usual number leaves one core of two idle; three were no faster.
    maxWorkers: 2,
    // What hangs is found; what is merely slow on a busy machine is no failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
