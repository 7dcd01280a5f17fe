/** `npm run settings`: every setting with its default and meaning, as a table; and whether those that are set are right. */
import { readConfig } from '../config.ts';
import { settingsTable } from './settings-reference.ts';
import { runCommand } from '../start.ts';

process.stdout.write(`${settingsTable()}\n`);
await runCommand(() => {
  readConfig(process.env);
});
