// The zone comparison with as many cases as asked for: node tests/lessons/long.mjs 10000000
import { spawnSync } from 'node:child_process';

const cases = Number(process.argv[2] ?? 10_000_000);
if (!Number.isInteger(cases) || cases < 1) throw new RangeError(`expected a number of cases, not ${process.argv[2]}`);
const run = ['node_modules/vitest/vitest.mjs', 'run', '--config=tests/vitest.config.ts', 'tests/lessons/zones.test.ts'];
const done = spawnSync(process.execPath, run, { stdio: 'inherit', env: { ...process.env, ZONE_CASES: String(cases) } });
process.exit(done.status ?? 1);
