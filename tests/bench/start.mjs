// From starting the process to its one line on stdout, built, with an empty database: median and worst of n starts.
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const times = Number(process.argv[2] ?? 10);
const main = fileURLToPath(new URL('../../dist/main.js', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'ninthpour-start-'));

async function start() {
  const env = { PATH: process.env.PATH, NINTHPOUR_PORT: '0', NINTHPOUR_FOLDER: folder };
  const began = performance.now();
  const child = spawn(process.execPath, [main], { env, stdio: ['ignore', 'pipe', 'inherit'] });
  await new Promise((resolve) => child.stdout.once('data', resolve));
  const readyMs = performance.now() - began;
  child.kill('SIGTERM');
  await new Promise((resolve) => child.once('exit', resolve));
  return readyMs;
}

const readyMs = [];
for (let i = 0; i < times; i++) readyMs.push(await start());
readyMs.sort((a, b) => a - b);
rmSync(folder, { recursive: true });
const result = { starts: times, medianMs: readyMs[Math.floor(times / 2)], worstMs: readyMs.at(-1) };
process.stdout.write(`${JSON.stringify(result, (_, v) => (typeof v === 'number' ? Math.round(v) : v))}\n`);
