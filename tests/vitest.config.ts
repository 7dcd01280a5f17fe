import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    env: { TZ: 'UTC' },
    pool: 'forks',
    // One more than cores there are at least: many tests wait, for a browser, a process or a clock.
    maxWorkers: 3,
    // What hangs is found; what is merely slow on a busy machine is no failure.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
