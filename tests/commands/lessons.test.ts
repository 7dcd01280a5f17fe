/** Lessons out to a file and in again, by the built command itself. */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { contentOf } from '../../src/app.ts';
import { databaseFile, projectRoot, readConfig } from '../../src/config.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-lessons-'));
const config = readConfig({ NINTHPOUR_FOLDER: folder });
const path = (name: string): string => join(folder, name);

const run = (...args: readonly string[]): Promise<string> =>
  new Promise((resolve) => {
    const env = { ...process.env, NINTHPOUR_FOLDER: folder, LANG: 'en' };
    execFile(process.execPath, [join(projectRoot, 'dist/commands/lessons.js'), ...args], { env }, (_, out, error) =>
      resolve(`${out}${error}`.trim()),
    );
  });

const kept = async (): Promise<string> => {
  const store = openSqliteStore(databaseFile(config));
  const rosters = await store.rosters(0);
  await store.close();
  return JSON.stringify(rosters);
};

beforeAll(async () => {
  const store = openSqliteStore(databaseFile(config));
  await store.planLessons(contentOf(config).lessons, Date.now());
  await store.close();
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true }));

test('what was written down and is taken in again changes nothing', { timeout: 120_000 }, async () => {
  const before = await kept();
  for (const name of ['lessons.csv', 'lessons.yaml']) {
    expect(await run('out', path(name))).toMatch(/: \d+$/);
    expect(await run('in', path(name))).toMatch(/: \d+$/);
  }
  expect(await kept()).toBe(before);
});

test('a file with a mistake is told by its line, and nothing of it is taken in', { timeout: 120_000 }, async () => {
  const before = await kept();
  const [header, first = '', second = '', ...rest] = readFileSync(path('lessons.csv'), 'utf8').split('\r\n');
  const moved = first.replace(/(\d{4}-\d\d-\d\d) \d\d:\d\d/, '$1 11:00');
  writeFileSync(
    path('wrong.csv'),
    [header, moved, second.replace(/\d{4}-\d\d-\d\d (?=\d)/, 'yesterday '), ...rest].join('\r\n'),
  );
  expect(await run('in', path('wrong.csv'))).toMatch(/^Line 3, starts: /);
  writeFileSync(path('wrong.csv'), [header, moved, second.replace(/,(6|8|10),/, ',10000,'), ...rest].join('\r\n'));
  expect(await run('in', path('wrong.csv'))).toMatch(/^Line 3, seats: 10,?000 seats cannot be/);
  expect(await kept()).toBe(before);
});
