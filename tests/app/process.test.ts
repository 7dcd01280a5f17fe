/** The built program from outside: what it prints, how it ends, and what it says when it cannot start. */
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, describe, expect, test } from 'vitest';
import { languages } from '../../src/core/units.ts';
import { projectRoot } from '../../src/project-root.ts';
import { startService, type Ended } from './service.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-process-'));
afterAll(() => rmSync(folder, { recursive: true }));
let made = 0;
const fresh = (): string => join(folder, `${(made += 1)}`);

const refused = ({ code, out, told }: Ended, sentence: RegExp): void => {
  expect(code).toBe(1);
  expect(out).toBe('');
  expect(told).toMatch(sentence);
  expect(told).not.toMatch(/^\s+at /m);
};

describe('the service', () => {
  test.each(['SIGTERM', 'SIGINT'] as const)('prints one address, answers, and ends well on %s', async (signal) => {
    // What is deprecated here is told unasked by a later Node.
    const node = ['--pending-deprecation'];
    const service = startService({ node, env: { NINTHPOUR_FOLDER: fresh(), TZ: 'Europe/Berlin' } });
    const address = await service.ready;
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const page = await fetch(address);
    expect(page.status).toBe(200);
    expect(await page.text()).toContain('<html');
    const asked = performance.now();
    service.child.kill(signal);
    const { code, out, told } = await service.ended;
    expect(performance.now() - asked).toBeLessThan(5_000);
    expect({ code, lines: out.trim().split('\n').length }).toEqual({ code: 0, lines: 1 });
    // There is no shopkeeper yet; nothing else is told.
    expect(told).toMatch(/^Nobody is shopkeeper yet\. Whoever writes [B-Z2-9]{4}-[B-Z2-9]{4} [^\n]*\n$/);
  });
});

/** A house whose content may be broken. */
function houseOfItsOwn(): { root: string; start: () => Promise<Ended> } {
  const root = fresh();
  mkdirSync(root);
  for (const name of ['dist', 'src', 'node_modules', 'package.json']) {
    symlinkSync(join(projectRoot, name), join(root, name));
  }
  for (const name of ['data', 'flows']) cpSync(join(projectRoot, name), join(root, name), { recursive: true });
  const node = ['--preserve-symlinks', '--preserve-symlinks-main'];
  const begun = { script: join(root, 'dist', 'main.js'), node, env: { NINTHPOUR_FOLDER: fresh() } };
  return { root, start: () => startService(begun).ended };
}
const edit = (file: string, from: string | RegExp, to: string): void => {
  const text = readFileSync(file, 'utf8');
  const edited = text.replace(from, to);
  expect(edited).not.toBe(text);
  writeFileSync(file, edited);
};

describe('what hinders a start is told in one message without a stack:', () => {
  test('a port in use', async () => {
    const other = createServer().listen(0, '127.0.0.1');
    await new Promise((resolve) => other.once('listening', resolve));
    const { port } = other.address() as { port: number };
    const service = startService({ env: { NINTHPOUR_FOLDER: fresh(), NINTHPOUR_PORT: String(port) } });
    refused(await service.ended, new RegExp(`^127\\.0\\.0\\.1:${port} is in use by another program; [^\n]*\n$`));
    other.close();
  });

  test('a locked database', async () => {
    const place = fresh();
    mkdirSync(place);
    const holder = new Database(join(place, 'ninthpour.sqlite'));
    holder.exec('BEGIN EXCLUSIVE');
    const service = startService({ env: { NINTHPOUR_FOLDER: place } });
    refused(await service.ended, /^[^\n]*ninthpour\.sqlite is locked by another program; [^\n]*\n$/);
    holder.close();
  });

  test('a database that cannot be written', async () => {
    const place = fresh();
    writeFileSync(place, 'a file where a folder should be');
    const service = startService({ env: { NINTHPOUR_FOLDER: place } });
    refused(await service.ended, /^[^\n]*ninthpour\.sqlite cannot be opened: [^\n]*\n$/);
  });

  test('a database of a newer version', async () => {
    const place = fresh();
    const first = startService({ env: { NINTHPOUR_FOLDER: place } });
    await first.ready;
    first.child.kill('SIGTERM');
    await first.ended;
    const db = new Database(join(place, 'ninthpour.sqlite'));
    db.pragma('user_version = 999');
    db.close();
    refused(await startService({ env: { NINTHPOUR_FOLDER: place } }).ended, /newer version of Ninthpour/);
  });

  test('wrong settings, all at once', async () => {
    const service = startService({ env: { NINTHPOUR_PORT: 'tea', NINTHPOUR_LOG: 'loud' } });
    refused(await service.ended, /^NINTHPOUR_PORT must be [^\n]*\nNINTHPOUR_LOG must be [^\n]*\n$/);
  });

  test('missing data and flow files, each with its place', async () => {
    const { root, start } = houseOfItsOwn();
    rmSync(join(root, 'flows', 'front.yaml'));
    refused(await start(), /front\.yaml:1:1 expected/);
    rmSync(join(root, 'data', 'teas'), { recursive: true });
    refused(await start(), /catalogue\.yaml:1:1 expected this file, but it is missing/);
  });

  test('what was right when the program was built, and is not any more', async () => {
    const { root, start } = houseOfItsOwn();
    for (const language of languages) {
      edit(join(root, 'flows', 'words', `${language}.ftl`), /^lesson-none-then = .*\n/m, '');
    }
    refused(await start(), /flows\/lesson[^\n]*\.yaml:\d+:\d+ [^\n]*"lesson-none-then"/);
    edit(join(root, 'flows', 'words', 'en.ftl'), /^page-[\w-]+ = .*\n/m, '');
    refused(await start(), /en\.ftl:\d+:1 expected a sentence "page-/);
  });
});
