/** The shelf out to a file and in again, by the built command itself, in a shop's own folder. */
import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';

const shop = mkdtempSync(join(tmpdir(), 'ninthpour-shelf-'));
const path = (name: string): string => join(shop, name);
const kept = (): string => readFileSync(path('shelf.yaml'), 'utf8');

const run = (...args: readonly string[]): Promise<string> =>
  new Promise((resolve) => {
    const env = { ...process.env, NINTHPOUR_SHOP: shop, LANG: 'en' };
    execFile(process.execPath, [join(projectRoot, 'dist/commands/shelf.js'), ...args], { env }, (_, out, error) =>
      resolve(`${out}${error}`.trim()),
    );
  });

beforeAll(() => cpSync(join(projectRoot, 'data/shop'), shop, { recursive: true }));
afterAll(() => rmSync(shop, { recursive: true }));

test('what was written down and is taken in again changes nothing', { timeout: 120_000 }, async () => {
  const before = kept();
  for (const name of ['out.csv', 'out.yaml']) {
    expect(await run('out', path(name))).toMatch(/: \d+$/);
    expect(await run('in', path(name))).toMatch(/: \d+$/);
  }
  expect(kept()).toBe(before);
  expect(await run('out', path('out.csv'))).toMatch(/is there already/);
});

test('a list with a mistake is told by its line, and the shelf stays', { timeout: 120_000 }, async () => {
  const before = kept();
  writeFileSync(path('wrong.csv'), '\uFEFFtea\r\nlongjing\r\nlongjink\r\n');
  expect(await run('in', path('wrong.csv'))).toBe('Line 3, tea: “longjink” is no tea of the catalogue.');
  writeFileSync(path('wrong.yaml'), '- longjing\n- longjing\n');
  expect(await run('in', path('wrong.yaml'))).toMatch(/wrong\.yaml:2:3 "longjing" is there twice$/);
  expect(await run('in', path('none.csv'))).toBe(`There is no file ${path('none.csv')}.`);
  expect(kept()).toBe(before);
});

test('a changed list takes its place, and its comment stays', { timeout: 120_000 }, async () => {
  writeFileSync(path('new.csv'), 'tea\nsencha\nlongjing\n');
  expect(await run('in', path('new.csv'))).toMatch(/: 2$/);
  expect(kept()).toMatch(/^# .*\n- sencha\n- longjing\n$/);
  expect((await run()).split('\n').slice(0, 2)).toEqual(['sencha\tSencha', expect.stringMatching(/^longjing\t/)]);
});
