/** `npm run chat` with lines piped in, faster than anybody writes. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { text } from 'node:stream/consumers';
import { expect, it } from 'vitest';

it('answers each line in full before the next, though all were there at once', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-chat-'));
  const script = join(import.meta.dirname, '..', '..', 'dist', 'commands', 'chat.js');
  const chat = spawn(process.execPath, [script], { env: { ...process.env, TZ: 'UTC', NINTHPOUR_FOLDER: folder } });
  chat.stdin.end('sencha, kyusu 200 ml\nguide me\nready\ndone\nthe leaf is in\n');
  const answers = (await text(chat.stdout)).split('\n> ');
  rmSync(folder, { recursive: true });
  expect(answers.map((answer) => /\[1\] (.*)/.exec(answer)?.[1])).toEqual([
    'Brew a tea',
    'Guide me',
    'Ready',
    'Done',
    'The leaf is in',
    'Filled',
    undefined,
  ]);
});
