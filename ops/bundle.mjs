// Puts the service, and the backup it makes in a process of its own, into one file each, with the libraries they need:
// loading some 500 files was most of a start. What is native stays where npm put it.
import { rmSync } from 'node:fs';
import { build } from 'vite';

const entries = { main: 'src/main.ts', 'commands/backup': 'src/commands/backup.ts' };

export async function bundle() {
  rmSync('dist/shared', { recursive: true, force: true });
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true, external: ['better-sqlite3', '@resvg/resvg-js'] },
    build: {
      ssr: true,
      outDir: 'dist',
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      sourcemap: true,
      rolldownOptions: {
        input: entries,
        // Some libraries know a class by its name.
        output: { entryFileNames: '[name].js', chunkFileNames: 'shared/[name].js', keepNames: true },
      },
    },
  });
}
