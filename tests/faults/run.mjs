// npm run faults [-- --long] [--only F7,F9] [--seed N] [--into FILE]: runs run.ts, which is TypeScript. It is bundled once,
// and with it the programs that are killed: a thousand starts of those, and twenty-five of this, were a fifth of the work.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { parse } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { bundle } from '../../ops/bundle.mjs';

process.env.TZ = 'UTC';
const root = fileURLToPath(new URL('../..', import.meta.url));
if (process.env.FAULTS_BUILT === undefined) {
  // Each run its own: another one under way goes on with what it has.
  mkdirSync(`${root}dist`, { recursive: true });
  const folder = mkdtempSync(`${root}dist/faults-`);
  process.once('exit', () => rmSync(folder, { recursive: true, force: true }));
  process.chdir(root);
  const programs = ['run.ts', 'echo-house.mjs', 'open-and-die.mjs'].map((file) => [
    parse(file).name,
    `tests/faults/${file}`,
  ]);
  await bundle(Object.fromEntries(programs), folder);
  process.env.FAULTS_BUILT = folder;
}
const { run } = await import(pathToFileURL(`${process.env.FAULTS_BUILT}/run.js`).href);
process.exit(await run(process.argv.slice(2)));
