/** The time-zone rules change: the wall time of a lesson stays, and everything that is worked out from it moves. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { boardOf, day, denverAt, enrols, sent, starts, tendAll, told, withLesson } from '../store/lesson-samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-rules-'));
afterAll(() => rmSync(folder, { recursive: true }));
const hour = 3_600_000;
const nothing = { lessons: [], series: [] };

/** As if all had been worked out when the zone was still an hour behind. */
async function keptUnderOldRules(file: string): Promise<void> {
  const store = openSqliteStore(file, '2020a');
  await withLesson(store);
  await enrols(store, 'ann');
  await store.close();
  const db = new Database(file);
  db.exec(`UPDATE lesson SET starts_at = starts_at + ${hour}, ends_at = ends_at + ${hour};
    UPDATE reminder SET due_at = due_at + ${hour}`);
  db.close();
}

test('rows under other rules are worked out anew at the start, and who booked gets their calendar put right', async () => {
  const file = join(folder, 'shop.sqlite');
  await keptUnderOldRules(file);
  const store = openSqliteStore(file);
  expect((await boardOf(store, 'ben')).upcoming).toMatchObject([{ startsAt: starts + hour }]);
  await store.planLessons(nothing, day);
  expect((await boardOf(store, 'ben')).upcoming).toMatchObject([
    { starts: '2026-12-05T19:00', startsAt: starts, tzVersion: process.versions['tz'], revision: 1, moves: 0 },
  ]);
  const [owed, ...others] = await sent(store, day);
  expect(others).toEqual([]);
  expect(owed?.saying.show).toMatchObject({ kind: 'calendar', entry: { startsAtMs: starts, sequence: 1 } });
  expect(told(owed ? [owed] : [])).toEqual(['ann recomputed']);
  expect(await store.nextDue(['web'], day)).toBe(denverAt('2026-11-28T19:00'));
  await tendAll(store, denverAt('2026-11-28T19:00'));
  expect(told(await sent(store, denverAt('2026-11-28T19:00')))).toEqual(['ann week-before']);
  // Under the same rules nothing happens the second time.
  await store.planLessons(nothing, day);
  expect(await sent(store, day + 1)).toEqual([]);
  await store.close();
});
