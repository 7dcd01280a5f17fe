import { existsSync } from 'node:fs';
import { dirname, join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
const root = fileURLToPath(new URL('..', import.meta.url));
const src = join(root, 'src') + sep;
export default defineConfig({
  plugins: [{
    name: 'as-built',
    enforce: 'pre',
    resolveId(source, importer) {
      if (!importer || !source.startsWith('.') || !source.endsWith('.ts')) return null;
      const file = resolve(dirname(importer), source);
      if (!file.startsWith(src)) return null;
      const built = join(root, 'dist', file.slice(src.length).replace(/\.ts$/, '.js'));
      return existsSync(built) ? built : null;
    },
  }],
  test: {
    root,
    include: ['tests/**/*.test.ts'],
    env: { TZ: 'UTC' },
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 120_000,
    hookTimeout: 120_000,
    server: { deps: { external: [/\/dist\//] } },
  },
});
