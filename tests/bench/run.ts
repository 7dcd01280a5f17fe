/**
 * Measures every row, each in a process of its own, prints the figures and keeps them as var/bench.json and var/bench.svg.
 * `--only NAME` measures one row, `--quick` only that all can be measured, `--out FOLDER` keeps them elsewhere.
 */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chart } from './chart.ts';
import { rows } from './rows.ts';
import { lines, type Measured } from './told.ts';

/** From dist/bench/tests/bench. */
const root = fileURLToPath(new URL('../../../..', import.meta.url));

async function measured(name: string, size: string): Promise<Measured> {
  const script = fileURLToPath(new URL('one-row.js', import.meta.url));
  const child = fork(script, [name, size], { execArgv: ['--expose-gc'] });
  const told = once(child, 'message') as Promise<[Measured]>;
  const gone = once(child, 'exit').then(([code]) => {
    throw new Error(`"${name}" could not be measured (exit code ${code})`);
  });
  const [result] = await Promise.race([told, gone]);
  await gone.catch(() => undefined);
  return result;
}

async function toldOf(name: string, size: string): Promise<Measured> {
  const began = performance.now();
  const result = await measured(name, size);
  const seconds = ((performance.now() - began) / 1000).toFixed(0);
  process.stdout.write(`\n${lines(result).join('\n')}\n  (${seconds} s)\n`);
  return result;
}

/** One after another: each has the machine for itself. */
async function inOrder(names: readonly string[]): Promise<readonly Measured[]> {
  const all: Measured[] = [];
  for (const name of names) all.push(await toldOf(name, 'whole'));
  return all;
}

function machine(): string {
  const [first] = cpus();
  const load = loadavg()[0]?.toFixed(1);
  return `${new Date().toISOString().slice(0, 16)} UTC, Node ${process.versions.node}, ${cpus().length} × ${first?.model ?? '?'}, load ${load} at the start`;
}

const { values } = parseArgs({
  options: { only: { type: 'string' }, quick: { type: 'boolean', default: false }, out: { type: 'string' } },
});
const about = machine();
process.stdout.write(`${about}\n`);
const names = values.only === undefined ? Object.keys(rows) : [values.only];
const all = values.quick ? await Promise.all(names.map((name) => toldOf(name, 'quick'))) : await inOrder(names);
const folder = values.out ?? join(root, 'var');
mkdirSync(folder, { recursive: true });
writeFileSync(join(folder, 'bench.json'), `${JSON.stringify({ about, rows: all }, null, 1)}\n`);
writeFileSync(join(folder, 'bench.svg'), chart(all, about));
process.stdout.write(`\nkept as ${join(folder, 'bench.json')} and bench.svg\n`);
