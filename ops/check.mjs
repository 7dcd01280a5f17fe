// Every check of the project, in order, each once; the last line counts them: 'N passed, N failed'.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const node = process.execPath;
const bin = (path) => join('node_modules', path);
const results = join(mkdtempSync(join(tmpdir(), 'ninthpour-check-')), 'tests.json');

const checks = [
  { name: 'format', args: [bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'] },
  { name: 'types of the program and its tests', args: [bin('typescript/bin/tsc'), '-p', 'tests'] },
  { name: 'types of the page', args: [bin('typescript/bin/tsc'), '-p', 'src/channels/web/page'] },
  { name: 'lint with types', args: [bin('oxlint/bin/oxlint'), '--type-aware', '--quiet', 'src', 'tests', 'ops'] },
  { name: 'unused code', args: [bin('knip/bin/knip.js'), '--no-progress'] },
  { name: 'flows and words', args: ['dist/commands/flows.js'] },
  {
    name: 'tests',
    args: [
      bin('vitest/vitest.mjs'),
      'run',
      '--config=tests/vitest.config.ts',
      '--reporter=default',
      '--reporter=json',
      `--outputFile=${results}`,
    ],
  },
];

let passed = 0;
let failed = 0;
for (const { name, args } of checks) {
  const started = Date.now();
  const done = spawnSync(node, args, { stdio: 'inherit' });
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  process.stdout.write(`${done.status === 0 ? 'ok    ' : 'FAILED'} ${name} (${seconds} s)\n`);
  if (done.status === 0) passed++;
  else failed++;
}
try {
  const counts = JSON.parse(readFileSync(results, 'utf8'));
  passed += counts.numPassedTests;
  failed += counts.numFailedTests;
} catch {
  failed++;
}
rmSync(join(results, '..'), { recursive: true, force: true });
process.stdout.write(`${passed} passed, ${failed} failed\n`);
process.exit(failed === 0 ? 0 : 1);
