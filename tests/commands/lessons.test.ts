/** Lessons out to a file and in again, by the built command itself. */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { databaseFile, readConfig } from '../../src/config.ts';
import { projectRoot } from '../../src/project-root.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { content } from '../the-content.ts';
import { does, enrols } from '../store/lesson-samples.ts';
import { exchange } from '../store/samples.ts';

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
  await store.planLessons(content.lessons, Date.now());
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
  writeFileSync(path('wrong.csv'), [header, moved.replace('longjing', 'longjink'), second, ...rest].join('\r\n'));
  expect(await run('in', path('wrong.csv'))).toBe('Line 2, teas: “longjink” is no tea of the catalogue.');
  expect(await kept()).toBe(before);
});

test('what lies in the past is left out, and that is told', { timeout: 120_000 }, async () => {
  const before = await kept();
  const [header, first = ''] = readFileSync(path('lessons.csv'), 'utf8').split('\r\n');
  const past = first.replace(/^[^,]+/, 'long-ago').replace(/\d{4}(-\d\d-\d\d \d\d:\d\d)/, '2020$1');
  writeFileSync(path('past.csv'), [header, first, past, ''].join('\r\n'));
  expect(await run('in', path('past.csv'))).toBe(`${path('past.csv')}: 1\nOne more lies in the past and is left out.`);
  expect(await kept()).toBe(before);
});

test('YAML with a mistake is told by its line as well, in the words of the house', { timeout: 120_000 }, async () => {
  const before = await kept();
  const text = readFileSync(path('lessons.yaml'), 'utf8');
  writeFileSync(path('wrong.yaml'), text.replace(/seats: \d+/, 'seats: 10000'));
  expect(await run('in', path('wrong.yaml'))).toMatch(/^Line \d+, seats: 10,000 seats cannot be/);
  writeFileSync(path('wrong.yaml'), text.replace(/teas:\n( +)- .*/, 'teas:\n$1- longjink'));
  expect(await run('in', path('wrong.yaml'))).toMatch(/^Line \d+, teas: “longjink” is no tea of the catalogue\.$/);
  writeFileSync(path('wrong.yaml'), `${text}  title: [\n`);
  expect(await run('in', path('wrong.yaml'))).toMatch(/^Line \d+, table: This is not YAML from here on/);
  expect(await kept()).toBe(before);
});

test('what is written down is counted, and goes over no file', { timeout: 120_000 }, async () => {
  const store = openSqliteStore(databaseFile(config));
  const now = Date.now();
  const [first, second, ...others] = (await store.rosters(now)).map(({ lesson: { id } }) => id);
  if (first === undefined || second === undefined) throw new Error('two lessons are needed');
  for (const from of ['ann', 'ben']) await enrols(store, from, { lesson: first, now });
  await store.appoint([{ channel: 'web', from: 'mei' }], now);
  await exchange(store, 'mei', []);
  const cancel = { do: 'cancel-lesson', lesson: second, seen: 0, reason: '' } as const;
  expect(await does(store, 'mei', () => cancel, now)).toMatchObject({ outcome: 'done' });
  await store.close();
  const lines = (name: string): number => readFileSync(path(name), 'utf8').trimEnd().split('\r\n').length;
  expect(await run('out', path('bookings.csv'))).toBe(`${path('bookings.csv')}: 2`);
  expect(lines('bookings.csv')).toBe(1 + 2);
  expect(await run('out', path('left.csv'))).toBe(`${path('left.csv')}: ${1 + others.length}`);
  expect(lines('left.csv')).toBe(2 + others.length);
  writeFileSync(path('left.csv'), 'mine');
  expect(await run('out', path('left.csv'))).toBe(`${path('left.csv')} is there already. Please name another file.`);
  expect(readFileSync(path('left.csv'), 'utf8')).toBe('mine');
});

const first = async (): Promise<string> => {
  const store = openSqliteStore(databaseFile(config));
  const [roster] = await store.rosters(Date.now());
  await store.close();
  return roster?.lesson.id ?? '';
};
const give = (name: string, text: string): Promise<string> => {
  writeFileSync(path(name), text);
  return run('in', path(name));
};

test(
  'bookings go in by a few columns, come out by name, and change nothing when they come in again',
  { timeout: 120_000 },
  async () => {
    const lesson = await first();
    expect(await give('bookings-new.csv', `\uFEFFlesson;name;mail;seats\r\n${lesson};"Ah, Keong";;1\r\n`)).toMatch(
      /: 1$/,
    );
    const before = await kept();
    for (const name of ['bookings-out.csv', 'bookings-out.yaml']) {
      expect(await run('out', path(name))).toMatch(/: 3$/);
      expect(readFileSync(path(name), 'utf8')).toMatch(/Ah, Keong/);
      expect(await run('in', path(name))).toMatch(/: 0$/);
    }
    expect(await kept()).toBe(before);
  },
);

test(
  'of bookings with a mistake none is taken in, and each mistake is told by its line',
  { timeout: 120_000 },
  async () => {
    const lesson = await first();
    const before = await kept();
    const table = `lesson,name,mail,seats\n${lesson},Mei,,1\nno-such,Tom,,1\n${lesson},Eve,,10000\n${lesson},"Ah, Keong",,1\n`;
    expect((await give('bookings-wrong.csv', table)).split('\n')).toEqual([
      'Line 3, lesson: There is no lesson “no-such”.',
      expect.stringMatching(/^Line 4, seats: 10,?000 seats cannot be/),
      'Line 5, name: Ah, Keong is on the list of this lesson already.',
    ]);
    expect(
      await give('bookings-mail.yaml', `- lesson: ${lesson}\n  name: Mei\n  mail: mei@example.org\n  seats: 1\n`),
    ).toBe('Line 1, mail: Letters cannot be sent yet: whoever runs the house has to name a mail server.');
    expect(await give('bookings-open.csv', `lesson,name,mail,seats\n${lesson},"Mei,,1\n`)).toBe(
      'Line 2, table: A quotation mark is opened in this line and never closed.',
    );
    expect(await run('in', path('bookings-none.csv'))).toBe(`There is no file ${path('bookings-none.csv')}.`);
    expect(await kept()).toBe(before);
  },
);
