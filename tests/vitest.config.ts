import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: fileURLToPath(new URL('..', import.meta.url)),
    include: ['tests/**/*.test.ts'],
    env: { TZ: 'UTC' },
    pool: 'forks',
    // The usual number leaves one core of two idle.
    maxWorkers: 2,
    testTimeout: 20_000,
  },
});
