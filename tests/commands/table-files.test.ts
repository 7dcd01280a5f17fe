/** Files of the shop as they come from spreadsheets and editors, byte by byte. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { textOf } from '../../src/commands/table-files.ts';
import { content } from '../the-content.ts';

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-files-'));
const file = join(folder, 'bookings.csv');
const speech = { content, language: 'en' } as const;
afterAll(() => rmSync(folder, { recursive: true }));

const latin = Buffer.from('name\nMei\nOdalys é,2\n', 'latin1');
const cut = Buffer.from('name\nMei\n林美', 'utf8').subarray(0, -1);

test.each<readonly [string, Buffer, number]>([
  ['Latin 1', latin, 3],
  ['UTF-16', Buffer.from('\uFEFFname\nMei\n', 'utf16le'), 1],
  ['broken off in a sign', cut, 3],
])('%s is told with its line', (_, bytes, line) => {
  writeFileSync(file, bytes);
  expect(() => textOf(file, speech)).toThrow(`Line ${line}, table: There are signs here that are not UTF-8`);
});

test.each(['name\nOdalys \uFFFD é 林美\n', '', '\uFEFFname'])('%j is read as it stands', (text) => {
  writeFileSync(file, text);
  expect(textOf(file, speech)).toBe(text);
});
