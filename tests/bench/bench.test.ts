/** Every row of the measurement can be taken. What it comes to is not asked here: a busy machine would lie. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { rows } from './rows.ts';
import type { Measured } from './told.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

function node(...args: readonly string[]): void {
  const done = spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' });
  expect(done.status, `${args.join(' ')}\n${done.stdout}${done.stderr}`).toBe(0);
}

test('every row gives figures, and something to compare them with', { timeout: 300_000 }, () => {
  const out = mkdtempSync(join(tmpdir(), 'ninthpour-bench-'));
  node('tests/bench/build.mjs');
  node('dist/bench/tests/bench/run.js', '--quick', '--out', out);
  const told = JSON.parse(readFileSync(join(out, 'bench.json'), 'utf8')) as { readonly rows: readonly Measured[] };
  expect(told.rows.map(({ name }) => name)).toEqual(Object.keys(rows));
  for (const { name, figures } of told.rows) {
    expect(figures.filter(({ reach }) => reach !== undefined).length, name).toBeGreaterThan(0);
    for (const { what, ours, beside, ratio } of figures) {
      const values = [ours, ...(beside ? [beside.value] : []), ...(ratio === undefined ? [] : [ratio])];
      for (const value of values) expect(Number.isFinite(value), `${name}: ${what} is ${value}`).toBe(true);
    }
  }
  expect(readFileSync(join(out, 'bench.svg'), 'utf8')).toContain('</svg>');
  rmSync(out, { recursive: true });
});
