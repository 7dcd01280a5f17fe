// Puts a program into one file, with the libraries it needs: loading some 500 files was most of a start. What is native
// stays where npm put it.
import { rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { build } from 'vite';

const require = createRequire(import.meta.url);

/** The service, and the backup it makes in a process of its own. */
export const service = { main: 'src/main.ts', 'commands/backup': 'src/commands/backup.ts' };

/** `programs`: where each begins, by the name it gets in the folder. */
export async function bundle(programs, folder) {
  rmSync(join(folder, 'shared'), { recursive: true, force: true });
  await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    // Asked for from outside node_modules, Node's own tells whoever starts the house that it is deprecated.
    resolve: { alias: [{ find: /^punycode$/, replacement: require.resolve('punycode.js') }] },
    ssr: { noExternal: true, external: ['better-sqlite3', '@resvg/resvg-js'] },
    build: {
      ssr: true,
      outDir: folder,
      emptyOutDir: false,
      target: 'node20',
      minify: false,
      sourcemap: true,
      rolldownOptions: {
        input: programs,
        // Some libraries know a class by its name.
        output: { entryFileNames: '[name].js', chunkFileNames: 'shared/[name].js', keepNames: true },
      },
    },
  });
}
