import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    env: { TZ: 'UTC' },
    pool: 'forks',
    // The usual number leaves one core of two idle; three were no faster.
    maxWorkers: 2,
    // What hangs is found; what is merely slow on a busy machine is no failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
