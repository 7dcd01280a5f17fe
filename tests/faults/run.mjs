// npm run faults [-- --long] [--only F7,F9] [--seed N] [--into FILE]: runs run.ts, which is TypeScript.
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

process.env.TZ = 'UTC';
const { module } = await runnerImport(fileURLToPath(new URL('run.ts', import.meta.url)), { configFile: false });
process.exit(await module.run(process.argv.slice(2)));
