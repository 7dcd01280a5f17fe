// Every check of the project, each once, the short ones two at a time; the last line counts them: 'N passed, N failed'.
import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const node = process.execPath;
const bin = (path) => join('node_modules', path);
const results = join(mkdtempSync(join(tmpdir(), 'ninthpour-check-')), 'tests.json');

/** Two lanes of about the same length, side by side. */
const short = [
  [
    { name: 'format', args: [bin('prettier/bin/prettier.cjs'), '--check', '--log-level', 'warn', '.'] },
    { name: 'unused code', args: [bin('knip/bin/knip.js'), '--no-progress'] },
    { name: 'flows and words', args: ['dist/commands/flows.js'] },
  ],
  [
    { name: 'types of the program and its tests', args: [bin('typescript/bin/tsc'), '-p', 'tests'] },
    { name: 'types of the page', args: [bin('typescript/bin/tsc'), '-p', 'src/channels/web/page'] },
    { name: 'lint with types', args: [bin('oxlint/bin/oxlint'), '--type-aware', '--quiet', 'src', 'tests', 'ops'] },
  ],
];
const tests = {
  name: 'tests',
  args: [
    bin('vitest/vitest.mjs'),
    'run',
    '--config=tests/vitest.config.ts',
    '--reporter=default',
    '--reporter=json',
    `--outputFile=${results}`,
  ],
};

let passed = 0;
let failed = 0;

/** What it prints comes as one piece, so that two at a time stay apart. */
async function check({ name, args }, isAlone = false) {
  const started = Date.now();
  const child = spawn(node, args, { stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'] });
  const printed = [];
  child.stdout?.on('data', (piece) => printed.push(piece));
  child.stderr?.on('data', (piece) => printed.push(piece));
  const [status] = await once(child, 'close');
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  process.stdout.write(Buffer.concat(printed));
  process.stdout.write(`${status === 0 ? 'ok    ' : 'FAILED'} ${name} (${seconds} s)\n`);
  if (status === 0) passed++;
  else failed++;
}

async function oneAfterAnother(checks) {
  for (const one of checks) await check(one);
}

await Promise.all(short.map(oneAfterAnother));
await check(tests, true);
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
