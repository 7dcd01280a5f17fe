/** `npm run backup`: one backup now, checked; old ones go. The service calls it too, and may go on working all the while. */
import { databaseFile, readConfig } from '../config.ts';
import { requireUtc, runCommand } from '../start.ts';
import { dropOldBackups, makeBackup } from '../store/sqlite/backup.ts';

await runCommand(async () => {
  requireUtc();
  const config = readConfig(process.env);
  const { folder, keepDays } = config.backups;
  const now = Date.now();
  const { file } = await makeBackup({ database: databaseFile(config), folder, now });
  const gone = dropOldBackups(folder, keepDays, now);
  process.stdout.write(`${file}${gone === 0 ? '' : `; older than ${keepDays} days and gone: ${gone}`}\n`);
});
