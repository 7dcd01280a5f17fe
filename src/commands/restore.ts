/** `npm run restore`: lists the backups; with a file, puts it in the database's place; with --rehearse, all but that. */
import { parseArgs } from 'node:util';
import { databaseFile, readConfig } from '../config.ts';
import { PlainMistake, requireUtc, runCommand } from '../start.ts';
import { listBackups } from '../store/sqlite/backup.ts';
import { restore, type Restored } from '../store/sqlite/restore.ts';

const usage = 'npm run restore -- FILE [--rehearse | --replace]';
const options = {
  rehearse: { type: 'boolean', default: false },
  replace: { type: 'boolean', default: false },
} as const;

function readArgs(args: readonly string[]) {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    if (positionals.length > 1) throw new PlainMistake(usage);
    return { ...values, file: positionals[0] };
  } catch {
    throw new PlainMistake(usage);
  }
}

function listed(folder: string): string {
  const files = listBackups(folder).map(({ file }) => file);
  return files.length === 0 ? `no backups in ${folder}` : `${files.join('\n')}\n${usage}`;
}

function told({ lastChange, unsent, unanswered, forgotten, kept }: Restored): string {
  return [
    `last written to: ${lastChange === null ? 'never' : new Date(lastChange).toISOString()}`,
    `messages that were due and may have been sent since, so are not sent: ${unsent}`,
    `messages of people that were not answered yet, and are left so: ${unanswered}`,
    `people forgotten since, and forgotten again: ${forgotten}`,
    ...(kept === null ? [] : [`the former database is kept as ${kept}; who was forgotten may still be in it`]),
  ].join('\n');
}

await runCommand(async () => {
  requireUtc();
  const config = readConfig(process.env);
  const { file, ...how } = readArgs(process.argv.slice(2));
  const order = { database: databaseFile(config), now: Date.now(), ...how };
  const text = file === undefined ? listed(config.backups.folder) : told(await restore({ backup: file, ...order }));
  process.stdout.write(`${text}\n`);
});
