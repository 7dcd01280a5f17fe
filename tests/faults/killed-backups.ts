/** F17: backups made while people write, killed half-way, and put back. */
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { listBackups, makeBackup } from '../../src/store/sqlite/backup.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { restore } from '../../src/store/sqlite/restore.ts';
import { addPeople, cutOff, makeHome, peopleIn, runIn } from '../ops/homes.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

const people = 500;

export const killedBackups: Fault = {
  id: 'F17',
  title: 'backups made under writing, backups and restores killed half-way',
  unit: 'backups and restores',
  counts: { few: 3, usual: 30, long: 500 },
  seconds: 40,
  async run(trial) {
    const tally = new Tally();
    const home = makeHome(join(trial.folder, 'home'), people);
    const { out, code } = await runIn('backup', home);
    tally.wrong(unlike('the first backup', code, 0));
    const first = out.trim();
    let restoreMs = 0;
    for (let i = 0; i < trial.count; i++) {
      if (i % 3 === 0) await killBackup(home, first, trial, tally);
      else if (i % 3 === 1) await killRestore(home, first, trial, tally);
      else restoreMs = Math.max(restoreMs, await backUpWhileWriting(i, trial, tally));
    }
    return tally.found({ 'longest restore, ms': Math.round(restoreMs) });
  },
};

/** The one before it stays, and whatever has a backup's name is whole. */
async function killBackup(home: string, first: string, { dice }: Trial, tally: Tally): Promise<void> {
  const folder = join(home, 'backups');
  await cutOff('backup', home, { partial: '.part-', folder, afterMs: dice.below(150) });
  const found = listBackups(folder);
  const wrong = found.map(({ file }) => unlike(file, peopleIn(file), { integrity: 'ok', people }));
  tally.add(unlike('the oldest backup', found.at(-1)?.file, first), ...wrong);
}

async function killRestore(home: string, backup: string, { dice }: Trial, tally: Tally): Promise<void> {
  const database = join(home, 'ninthpour.sqlite');
  addPeople(home, 3);
  const before = peopleIn(database).people;
  await cutOff('restore', home, {
    args: [backup, '--replace'],
    partial: '.restoring-',
    folder: home,
    afterMs: dice.below(250),
  });
  const after = peopleIn(database);
  tally.add(
    unlike('integrity', after.integrity, 'ok'),
    ![before, people].includes(after.people) && `${after.people} people, neither ${before} nor ${people}`,
  );
  // The next round begins as the first did.
  await runIn('restore', home, [backup, '--replace']);
}

/** What is put back is what was committed when it was begun; how long putting it back took. */
async function backUpWhileWriting(n: number, { folder }: Trial, tally: Tally): Promise<number> {
  const home = makeHome(join(folder, `writing-${n}`), people);
  const database = join(home, 'ninthpour.sqlite');
  const db = openDatabase(database);
  const add = db.prepare('INSERT INTO person (created_at) VALUES (0)');
  const writing = setInterval(() => void add.run(), 1);
  const backup = await makeBackup({ database, folder: join(home, 'backups'), now: Date.now() });
  clearInterval(writing);
  const written = Number(db.prepare('SELECT count(*) FROM person').pluck().get());
  db.close();
  const began = performance.now();
  await restore({ backup: backup.file, database, now: Date.now(), replace: true, rehearse: false });
  const tookMs = performance.now() - began;
  const left = readdirSync(home).filter((name) => name.includes('.restoring-'));
  tally.add(
    unlike('put back', peopleIn(database), { integrity: 'ok', people }),
    unlike('left half made', left, []),
    written <= people && 'nothing was written meanwhile',
  );
  return tookMs;
}
