// Makes a fresh clone ready: installs from the lock file and builds, only what is missing or stale.
// Says what it does on stderr, so that a command's own output stays clean. Needs nothing but Node and npm.
import { spawnSync } from 'node:child_process';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from './chromium.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
process.chdir(root);

const modified = (path) => (existsSync(path) ? statSync(path).mtimeMs : 0);

function newest(path) {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

function run(what, command, args) {
  process.stderr.write(`${what}\n`);
  // Their stdout goes to our stderr.
  const done = spawnSync(command, args, { stdio: ['ignore', 2, 2], shell: process.platform === 'win32' });
  if (done.status === 0) return;
  process.stderr.write(`${what} did not succeed: ${command} ${args.join(' ')}\n`);
  process.exit(1);
}

if (modified('node_modules/.package-lock.json') < modified('package-lock.json')) {
  run('Installing what the lock file names …', 'npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
}
if (
  modified('dist/.built') <
  Math.max(
    ...['src', 'ops/build.mjs', 'ops/bundle.mjs', 'tsconfig.json', 'node_modules/.package-lock.json'].map(newest),
  )
) {
  run('Building …', process.execPath, ['ops/build.mjs']);
}
if (process.argv.includes('--browser') && chromium() === null) {
  const debianRoot = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (debianRoot) {
    run('Fetching the list of Debian packages …', 'apt-get', ['update', '-q']);
    run('Installing a browser for the tests of the page …', 'apt-get', [
      'install',
      '-y',
      '-q',
      '--no-install-recommends',
      'chromium-headless-shell',
      'fonts-noto-cjk',
    ]);
  } else if (process.env.CI) {
    process.stderr.write('No Chromium found, and the tests of the page must not be skipped here.\n');
    process.exit(1);
  } else {
    process.stderr.write('No Chromium found: the tests of the page in a browser are skipped.\n');
  }
}
