/** Every transcript of tests/flows, played through the real handler, store and words. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { contentOf } from '../../src/app.ts';
import { play } from '../../src/commands/play.ts';
import { projectRoot, readConfig } from '../../src/config.ts';

const config = { ...readConfig({}), log: 'silent' } as const;
const content = contentOf(config);
const folder = join(projectRoot, 'tests', 'flows');
const files = readdirSync(folder).filter((name) => name.endsWith('.transcript'));

test.each(files)('%s', async (file) => {
  expect(await play(join(folder, file), content, config)).toBeNull();
});
