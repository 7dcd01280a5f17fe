/** Every transcript of this folder, played through the whole house to the letter. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { play } from '../../src/commands/play.ts';
import { readConfig } from '../../src/config.ts';
import { content } from '../the-content.ts';

const config = { ...readConfig({}), log: 'silent' } as const;
const files = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.transcript'));

test('there are transcripts in all three languages', () => {
  expect(files.length).toBeGreaterThanOrEqual(12);
  expect(files.filter((name) => name.includes('zh-Hant')).length).toBeGreaterThan(1);
  expect(files.filter((name) => name.includes('zh-Hans')).length).toBeGreaterThan(1);
});

test.each(files)('%s plays to the letter', { timeout: 60_000 }, async (name) => {
  expect(await play(join(import.meta.dirname, name), content, config)).toBeNull();
});
