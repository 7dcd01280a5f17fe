/** An error nobody expected: the program ends at once and tells where, not what; another start takes up what was left. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { startService } from './service.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-last-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Once the program stands. The frames of the error tell this text, so the word is made of two. */
const bomb = (what: string): string =>
  `data:text/javascript,${encodeURIComponent(
    `const write = process.stdout.write.bind(process.stdout);
     process.stdout.write = (...given) => (setTimeout(() => { ${what} }, 50), write(...given));`,
  )}`;

test.each([
  ['thrown', `throw new Error('can' + 'ary')`],
  ['rejected and heard by nobody', `Promise.reject(new Error('can' + 'ary'))`],
])('an error %s ends the process', { timeout: 120_000 }, async (_, what) => {
  const env = { NINTHPOUR_FOLDER: folder };
  const { code, told } = await startService({ env, node: ['--import', bomb(what)] }).ended;
  expect(code).toBe(1);
  expect(told).toContain('stopped by an error nobody expected');
  expect(told).not.toContain('canary');
  const again = startService({ env });
  await again.ready;
  again.child.kill('SIGTERM');
  expect((await again.ended).code).toBe(0);
});
