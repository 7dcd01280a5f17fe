/** F23: someone is forgotten, and every byte of theirs is looked for: database, log, free pages, backups. */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { dropOldBackups, listBackups, makeBackup } from '../../src/store/sqlite/backup.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import type { Change, Store } from '../../src/store/contract.ts';
import { claimAt, commitOf, exchange, incoming, loaded, noon, say } from '../store/samples.ts';
import { Tally, type Fault, type Trial } from './fault.ts';

const day = 86_400_000;
const keepDays = 14;

export const erasures: Fault = {
  id: 'F23',
  title: 'someone is forgotten, to the byte',
  unit: 'people',
  counts: { few: 3, usual: 50, long: 500 },
  async run(trial) {
    const tally = new Tally();
    let looked = 0;
    for (let i = 0; i < trial.count; i++) looked += await erase(i, trial, tally);
    return tally.found({ 'bytes looked through': looked });
  },
};

/** In everything that is kept, in both scripts, short and over several pages. */
async function live(store: Store, canary: string, { dice }: Trial): Promise<number> {
  const long = `${canary} `.repeat(1 + dice.below(600));
  const values = { canary, long };
  let person = 0;
  for (let i = 0; i < 1 + dice.below(5); i++) {
    const arrival = incoming(canary, long, { chat: canary, updateId: `${canary}-${i}`, deviceLanguage: 'zh-TW' });
    person = (await store.record(arrival)).person ?? 0;
    const changes: readonly Change[] = [
      { do: 'say', saying: { phrases: [{ key: 'k', values }], choices: [] }, due: noon, priority: 'reply' },
      say(canary, { later: { name: canary, atMs: noon + day }, slot: canary }),
      { do: 'wake', name: canary, at: noon + day },
      { do: 'remember', name: canary, value: long },
      { do: 'task', task: canary, values },
      { do: 'ask', id: 1_000_000 + person * 10 + i, text: long, language: 'en' },
    ];
    const state = { flow: 'f', hash: 'h', place: 'p', facts: { canary: long }, trail: [], parked: [] };
    await store.commit(commitOf(await loaded(store, person), changes, { state }));
  }
  for (const { id, address } of await store.claim(claimAt(noon))) {
    await store.settle(id, { kind: 'sent', ref: address.chat === canary ? canary : 'r' }, noon);
  }
  return person;
}

const bytes = (...files: readonly string[]): string =>
  files.map((file) => (existsSync(file) ? readFileSync(file, 'latin1') : '')).join('');

/** Returns how many bytes were looked through. */
async function erase(n: number, trial: Trial, tally: Tally): Promise<number> {
  const { folder, dice } = trial;
  const home = join(folder, String(n));
  const database = join(home, 'ninthpour.sqlite');
  const backups = join(home, 'backups');
  const canary = `Canary-${n}-${dice.below(1e9)}-鐵觀音`;
  const needle = Buffer.from(canary).toString('latin1');
  const kept = (): string => bytes(database, `${database}-wal`, `${database}-shm`);
  const store = openSqliteStore(database);
  for (let i = 0; i < 5; i++) await exchange(store, `other-${i}`, [say('x'.repeat(dice.below(3_000)))]);
  const person = await live(store, canary, trial);
  const before = kept().includes(needle);
  await makeBackup({ database, folder: backups, now: noon });
  await store.forget(person, noon);
  const after = kept();
  await exchange(store, 'other-6', [say('x')]);
  await store.close();
  const closed = kept();
  await makeBackup({ database, folder: backups, now: noon + day });
  const inBackups = (): string => bytes(...listBackups(backups).map(({ file }) => file));
  const meanwhile = inBackups().includes(needle);
  dropOldBackups(backups, keepDays, noon + (keepDays + 0.5) * day);
  tally.add(
    !before && 'the canary was not there in the first place',
    after.includes(needle) && 'in database or log at once after forgetting',
    closed.includes(needle) && 'in database or log after closing',
    !meanwhile && 'the earlier backup did not hold it: nothing was proved',
    inBackups().includes(needle) && 'in a backup after their days',
  );
  return before ? after.length + closed.length : 0;
}
