// npm run faults [-- --long] [--only F7,F9] [--seed N] [--into FILE]: runs run.ts, which is TypeScript.
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';
import { bundle } from '../../ops/bundle.mjs';

process.env.TZ = 'UTC';
// The echo house starts some nine hundred times. What tries one fault finds it bundled, by whoever began the run.
if (process.env.ECHO_HOUSE === undefined) {
  process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
  await bundle({ 'echo-house': 'tests/faults/echo-house.mjs' }, 'dist/faults');
  process.env.ECHO_HOUSE = 'dist/faults/echo-house.js';
}
const { module } = await runnerImport(fileURLToPath(new URL('run.ts', import.meta.url)), { configFile: false });
process.exit(await module.run(process.argv.slice(2)));
