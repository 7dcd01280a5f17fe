// Builds dist/: the program with tsc, its service once more as one file, the page with vite. Leaves dist/.built as the mark of a whole build.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { bundle, service } from './bundle.mjs';

process.chdir(fileURLToPath(new URL('..', import.meta.url)));
const page = 'src/channels/web/page';

function node(script, ...args) {
  const done = spawnSync(process.execPath, [script, ...args], { stdio: 'inherit' });
  if (done.status !== 0) process.exit(done.status ?? 1);
}

rmSync('dist/.built', { force: true });
mkdirSync('dist', { recursive: true });
node('node_modules/typescript/bin/tsc', '-p', '.');
if (existsSync(`${page}/vite.config.ts`)) {
  node('node_modules/vite/bin/vite.js', 'build', '--config', `${page}/vite.config.ts`, '--logLevel', 'warn');
}
node('dist/commands/keep-read.js');
await bundle(service, 'dist');
writeFileSync('dist/.built', '');
