import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { readConfig } from '../../src/config.ts';
import { projectRoot } from '../../src/project-root.ts';
import { settingRows, settingsTable } from '../../src/commands/settings-reference.ts';

/** The cells of the table of settings in a text, however wide they are set. */
function tableIn(text: string): readonly (readonly string[])[] {
  const lines = text.split('\n');
  const start = lines.findIndex((line) => /^\|\s*setting\s*\|/.test(line));
  const after = lines.slice(start).findIndex((line) => !line.startsWith('|'));
  const rows = lines.slice(start, after === -1 ? undefined : start + after);
  return rows.filter((row) => !/^\|[\s|-]+$/.test(row)).map((row) => row.split('|').map((cell) => cell.trim()));
}

test('README tells every setting as the program knows it', () => {
  const readme = tableIn(readFileSync(join(projectRoot, 'README.md'), 'utf8'));
  expect(readme.length).toBeGreaterThan(10);
  expect(readme).toEqual(tableIn(settingsTable()));
});

test('what is shown as usual is right when it is set', () => {
  const set = settingRows().filter(({ usual }) => usual !== '');
  const asSet = readConfig(Object.fromEntries(set.map(({ name, usual }) => [name, usual])));
  const { folder, shopFolder, backups, ...alike } = readConfig({});
  expect(asSet).toMatchObject({ ...alike, backups: { everyHours: backups.everyHours, keepDays: backups.keepDays } });
  expect([folder, shopFolder]).toEqual([join(projectRoot, asSet.folder), join(projectRoot, asSet.shopFolder)]);
});

test.each([
  ['127.0.0.1:9464', { host: '127.0.0.1', port: 9464 }],
  ['[::1]:0', { host: '::1', port: 0 }],
  ['metrics.internal:80', { host: 'metrics.internal', port: 80 }],
])('NINTHPOUR_METRICS=%s is a place', (text, place) => {
  expect(readConfig({ NINTHPOUR_METRICS: text }).metrics).toEqual(place);
});

test.each(['9464', ':9464', '127.0.0.1', '127.0.0.1:99999', 'http://127.0.0.1:1', ''])(
  'NINTHPOUR_METRICS=%s is none',
  (text) => {
    expect(() => readConfig({ NINTHPOUR_METRICS: text })).toThrow(/^NINTHPOUR_METRICS must be an address and a port/);
  },
);
