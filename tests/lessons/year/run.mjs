// A shop's year on a told clock: npm run year [-- --seed 7] [-- --years 5] [-- --long]
// One seed is one year again; --long plays a hundred smaller ones, and --long --seed 38 --years 63 goes on where it ended.
import { spawnSync } from 'node:child_process';
import { parseArgs } from 'node:util';

const flags = { seed: { type: 'string', default: '1' }, years: { type: 'string' }, long: { type: 'boolean' } };
const { values } = parseArgs({ options: flags });
const size = values.long
  ? { YEARS: '100', YEAR_STUDENTS: '100', YEAR_LESSONS: '2', YEAR_VISITS: '4' }
  : { YEARS: '1', YEAR_STUDENTS: '2000', YEAR_LESSONS: '6', YEAR_VISITS: '40' };
const wish = { YEAR_SEED: values.seed, YEAR_DAYS: '365', ...size, ...(values.years ? { YEARS: values.years } : {}) };
const run = ['node_modules/vitest/vitest.mjs', 'run', '--config=tests/vitest.config.ts', 'tests/lessons/year'];
const env = { ...process.env, REPORT: '1', ...wish };
process.exit(spawnSync(process.execPath, run, { stdio: 'inherit', env }).status ?? 1);
