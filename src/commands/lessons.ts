/** `npm run lessons`: the lessons to come; `-- out FILE` writes lessons or bookings down, `-- in FILE` takes a file in, all of it or nothing. */
import { contentOf } from '../own-content.ts';
import { databaseFile, readConfig, type Config } from '../config.ts';
import { languageOfDevice } from '../core/language-tag.ts';
import { seatsTaken } from '../core/lessons/roster.ts';
import { PlainMistake, requireUtc, runCommand } from '../start.ts';
import { openSqliteStore } from '../store/sqlite/store.ts';
import { taken, usage, written, type Desk } from './lesson-files.ts';

async function listed({ store, now, language }: Desk): Promise<string> {
  const rosters = await store.rosters(now);
  const lines = rosters
    .filter(({ lesson }) => lesson.status !== 'cancelled')
    .map((roster) => {
      const { id, starts, title, seats } = roster.lesson;
      return [id, starts.replace('T', ' '), `${seatsTaken(roster)}/${seats}`, title[language]].join('\t');
    });
  return [...lines, usage].join('\n');
}

async function run(config: Config, [act, file, ...rest]: readonly string[]): Promise<string> {
  if (rest.length > 0 || (act !== undefined && (file === undefined || !['in', 'out'].includes(act)))) {
    throw new PlainMistake(usage);
  }
  const store = openSqliteStore(databaseFile(config));
  const desk = {
    store,
    content: contentOf(config),
    language: languageOfDevice(config.deviceLanguage),
    now: Date.now(),
    hasMail: config.mail !== null,
  };
  try {
    if (file === undefined) return await listed(desk);
    return await (act === 'in' ? taken(desk, file) : written(desk, file));
  } finally {
    await store.close();
  }
}

await runCommand(async () => {
  requireUtc();
  process.stdout.write(`${await run(readConfig(process.env), process.argv.slice(2))}\n`);
});
