// Compiles the benchmarks, and the program they measure with them, into dist/bench, beside the files they read.
import { spawnSync } from 'node:child_process';
import { cpSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

process.chdir(fileURLToPath(new URL('../..', import.meta.url)));
const tsc = spawnSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', 'tests/bench'], { stdio: 'inherit' });
const filter = (path) => !path.endsWith('.ts');
for (const folder of ['src/store/sqlite/migrations', 'flows', 'data', 'tests/reading']) {
  cpSync(folder, `dist/bench/${folder}`, { recursive: true, filter });
}
process.exitCode = tsc.status ?? 1;
