/** The commands as they are typed, in processes of their own, killed too. */
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { listBackups } from '../../src/store/sqlite/backup.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService } from '../app/service.ts';
import { countOf, dice } from '../faults/counts.ts';
import { addPeople, cutOff, makeHome, peopleIn, runIn, type PeopleFound } from './homes.ts';

const root = mkdtempSync(join(tmpdir(), 'tea-ops-'));
afterAll(() => rmSync(root, { recursive: true }));
let made = 0;

const whole = (people: number): PeopleFound => ({ integrity: 'ok', people });
const homeOf = (people: number): string => makeHome(join(root, `${(made += 1)}`), people);

test('a backup is made, listed, rehearsed, and put back once the service is stopped', async () => {
  const home = join(root, `${(made += 1)}`);
  const service = startService({ env: { NINTHPOUR_FOLDER: home } });
  await service.ready;
  const backup = await runIn('backup', home);
  expect(backup).toMatchObject({ code: 0, told: '' });
  const file = backup.out.trim();
  expect((await runIn('restore', home)).out).toContain(file);
  expect(await runIn('restore', home, [file, '--rehearse'])).toMatchObject({ code: 0, told: '' });
  expect(await runIn('restore', home, [file])).toMatchObject({
    code: 1,
    told: expect.stringMatching(/stop the service/),
  });
  service.child.kill('SIGTERM');
  await service.ended;
  expect(await runIn('restore', home, [file])).toMatchObject({ code: 0, told: '' });
  const again = startService({ env: { NINTHPOUR_FOLDER: home } });
  await again.ready;
  again.child.kill('SIGTERM');
  expect((await again.ended).code).toBe(0);
});

test('a backup killed at any instant leaves the one before it, and no false one', async () => {
  const home = homeOf(1_000);
  const backups = join(home, 'backups');
  expect((await runIn('backup', home)).code).toBe(0);
  const [first] = listBackups(backups);
  const { roll } = dice();
  for (let kill = 0; kill < countOf('BACKUP_KILLS', 4); kill++) {
    await cutOff('backup', home, { partial: '.part-', folder: backups, afterMs: roll() * 150 });
    const found = listBackups(backups);
    expect(found.at(-1)).toEqual(first);
    for (const { file } of found) expect(peopleIn(file)).toEqual(whole(1_000));
  }
});

test('a restore killed at any instant leaves the former database or the restored one', async () => {
  const home = homeOf(1_000);
  const database = join(home, 'ninthpour.sqlite');
  const file = (await runIn('backup', home)).out.trim();
  const { roll } = dice();
  for (let kill = 0; kill < countOf('RESTORE_KILLS', 4); kill++) {
    addPeople(home, 1_500 - peopleIn(database).people);
    await cutOff('restore', home, {
      args: [file, '--replace'],
      partial: '.restoring-',
      folder: home,
      afterMs: roll() * 250,
    });
    expect([whole(1_000), whole(1_500)]).toContainEqual(peopleIn(database));
    openDatabase(database).close();
  }
  expect(await runIn('restore', home, [file, '--replace'])).toMatchObject({ code: 0 });
  expect(peopleIn(database)).toEqual(whole(1_000));
  expect(readdirSync(home).filter((name) => name.includes('.restoring-'))).toEqual([]);
});
