/** Writes transcripts anew: keeps what the person writes and the comments, and puts down what is answered today. Read the difference before you keep it. */
import { readFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { contentOf } from '../../dist/own-content.js';
import { goOn, makeChat, played, tellingOf, transcriptStart } from '../../dist/commands/play.js';
import { makeToldClock } from '../../dist/commands/told-clock.js';
import { leapTo, timePassing } from '../../dist/commands/transcript.js';
import { readConfig } from '../../dist/config.js';

process.env.TZ = 'UTC';
const config = readConfig({ ...process.env, NINTHPOUR_LOG: 'silent' });
const content = contentOf(config);

async function record(file) {
  const lines = readFileSync(file, 'utf8').split('\n');
  const language = /^language: *([\w-]+)$/.exec(lines[0] ?? '')?.[1] ?? null;
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-record-'));
  const answered = [];
  const clock = makeToldClock(transcriptStart);
  const chat = makeChat({
    config: played(config, folder),
    content,
    deviceLanguage: language,
    clock,
    ...tellingOf((...said) => answered.push(...said)),
  });
  await chat.start();
  const around = { zone: content.shop.zone, settled: () => chat.settled() };
  const kept = lines.filter(
    (line, i) =>
      /^((shop)?>|#( |$))/.test(line) ||
      timePassing(line) !== null ||
      leapTo(line) !== null ||
      (i === 0 && language !== null),
  );
  const written = [];
  for (const line of kept) {
    const passesMs = timePassing(line);
    const leapsTo = leapTo(line);
    const wrote = /^(shop)?>(?: (.*))?$/.exec(line);
    if (wrote || passesMs !== null || leapsTo !== null) {
      if (wrote) await chat.terminal.enter(wrote[2] ?? '', wrote[1]);
      else await goOn(clock, { passesMs: passesMs ?? 0, ...(leapsTo === null ? {} : { leapsTo }) }, around);
      await chat.settled();
      written.push('', line, ...answered.splice(0).map((l) => l.trimEnd()));
    } else written.push(...(written.length > 0 && line.startsWith('#') ? ['', line] : [line]));
  }
  await chat.stop();
  rmSync(folder, { recursive: true });
  const text = written
    .join('\n')
    .replace(/^(#.*)\n\n(?=(shop)?>)/gm, '$1\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();
  writeFileSync(file, `${text}\n`);
}

for (const file of process.argv.slice(2)) await record(file);
