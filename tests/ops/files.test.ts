/** What lies in ops/ speaks of this program: of measures it gives out, settings it knows, files there are. */
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { readConfig, unset } from '../../src/config.ts';
import { projectRoot } from '../../src/project-root.ts';
import { makeMeasures } from '../../src/operation/measures.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { claimAt, exchange, say } from '../store/samples.ts';

const read = (name: string): string => readFileSync(join(projectRoot, 'ops', name), 'utf8');

const folder = mkdtempSync(join(tmpdir(), 'tea-ops-files-'));
let made = 0;
const measures = makeMeasures('/nowhere', 0);
afterAll(() => {
  measures.stop();
  rmSync(folder, { recursive: true });
});

/** With something of everything, so that nothing is left out for want of a value. */
async function measured(): Promise<ReadonlySet<string>> {
  const store = measures.counted(openSqliteStore(join(folder, `${(made += 1)}.sqlite`)));
  await exchange(store, 'ann', [say('hello')]);
  const [owed] = await store.claim(claimAt(Date.now()));
  await store.settle(owed?.id ?? '', { kind: 'sent', ref: 'r' }, Date.now());
  const vitals = { unhandled: 0, undelivered: 0, oldestUndelivered: null, questions: 0, tasks: 0 };
  const text = measures.text({
    ready: true,
    vitals,
    lastPollAgeS: { telegram: 1 },
    oldestUndeliveredS: 0,
    backupAgeS: 1,
  });
  await store.close();
  return new Set(text.split('\n').map((line) => /^\w+/.exec(line)?.[0] ?? ''));
}

const named = (text: string): readonly string[] => [...new Set(text.match(/\b(ninthpour|process)_[a-z_]+\b/g))];

interface Rules {
  readonly groups: readonly { readonly rules: readonly { readonly alert: string; readonly expr: string }[] }[];
}

interface Board {
  readonly panels: readonly { readonly id: number; readonly targets: readonly { readonly expr: string }[] }[];
}

describe('what is watched', () => {
  test('by the alerts is what is given out', async () => {
    const given = await measured();
    const rules = (parse(read('alerts.yaml')) as Rules).groups.flatMap((group) => group.rules);
    const names = named(rules.map(({ expr }) => expr).join('\n'));
    expect(names.length).toBeGreaterThan(6);
    expect(names.filter((name) => !given.has(name))).toEqual([]);
    expect(new Set(rules.map(({ alert }) => alert)).size).toBe(rules.length);
  });

  test('by the dashboard is what is given out, and all of it', async () => {
    const given = await measured();
    const { panels } = JSON.parse(read('dashboard.json')) as Board;
    const names = named(panels.flatMap(({ targets }) => targets.map(({ expr }) => expr)).join('\n'));
    expect(names.filter((name) => !given.has(name))).toEqual([]);
    const shown = names.map((name) => name.replace(/_bucket$/, ''));
    const all = [...given].filter((name) => name !== '' && !/_(bucket|sum|count)$/.test(name));
    expect(all.filter((name) => !shown.includes(name))).toEqual([]);
    expect(new Set(panels.map(({ id }) => id)).size).toBe(panels.length);
  });
});

const settingsIn = (text: string): Readonly<Record<string, string>> =>
  Object.fromEntries(
    [...text.matchAll(/\b((?:NINTHPOUR|TELEGRAM)_\w+)=(\S+)/g)].map(([, name, value]) => [name, value]),
  );

describe('what is started', () => {
  test.each(['ninthpour.service', 'Containerfile'])('by %s is started with settings that are right', (name) => {
    const settings = settingsIn(read(name));
    expect(Object.keys(settings)).toContain('NINTHPOUR_FOLDER');
    expect(() => readConfig(settings)).not.toThrow();
  });

  test('in the container is there', () => {
    const copied = [...read('Containerfile').matchAll(/^COPY (?!--from)(.+) \.\/?\S*$/gm)].flatMap(([, names = '']) =>
      names.split(' '),
    );
    expect(copied.length).toBeGreaterThan(6);
    const called = [...read('Containerfile').matchAll(/\bops\/\w+\.mjs/g)].map(([name]) => name);
    expect([...copied, ...called].filter((name) => !existsSync(join(projectRoot, name)))).toEqual([]);
  });
});

test('the replica forgets no later than the backups', () => {
  const { snapshot } = parse(read('litestream.yml')) as { readonly snapshot: { readonly retention: string } };
  expect(snapshot.retention).toBe(`${unset().NINTHPOUR_BACKUP_DAYS * 24}h`);
});
