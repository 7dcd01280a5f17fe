/** Before every statement of every step the power goes: what is on the disk then is the state before the step, or after it. */
import { copyFileSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Database as Connection } from 'better-sqlite3';
import Database from 'better-sqlite3';
import { afterAll, expect, test } from 'vitest';
import type { Store } from '../../src/store/contract.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { makeSqliteStore } from '../../src/store/sqlite/store.ts';
import { act, day, denverAt, does, enrols, lessonOf, tendAll, withLesson } from '../store/lesson-samples.ts';
import { exchange } from '../store/samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-power-'));
afterAll(() => rmSync(folder, { recursive: true }));

/** Everything that must not be half done. */
const tables = {
  lesson: '*',
  booking: '*',
  reminder: '*',
  inbox: 'seq, person, status',
  outbox: 'person, chat, saying, name, status, until',
  series: '*',
};

function stateOf(file: string): string {
  const db = new Database(file);
  const rows = Object.entries(tables).map(([table, columns]) =>
    db.prepare(`SELECT ${columns} FROM ${table} ORDER BY 1, 2`).all(),
  );
  db.close();
  return JSON.stringify(rows);
}

function copied(file: string, to: string): string {
  for (const end of ['', '-wal']) if (existsSync(file + end)) copyFileSync(file + end, to + end);
  return to;
}

/** Tells before each statement is run. */
function watched(db: Connection, before: () => void): Connection {
  const prepare = db.prepare.bind(db);
  db.prepare = (sql: string) => watchedStatement(prepare(sql), before);
  return db;
}

function watchedStatement<T extends object>(statement: T, before: () => void): T {
  return new Proxy(statement, {
    get(target, name) {
      const value: unknown = Reflect.get(target, name, target);
      if (typeof value !== 'function') return value;
      return (...given: readonly unknown[]): unknown => {
        if (name === 'run') before();
        return Reflect.apply(value, target, given);
      };
    },
  });
}

test('every step of a lesson is whole or not at all, wherever the power goes', async () => {
  const file = join(folder, 'shop.sqlite');
  const states: string[] = [];
  const cuts: { readonly step: number; readonly copy: string }[] = [];
  let counts = false;
  const store: Store = makeSqliteStore(
    watched(openDatabase(file), () => {
      if (counts) cuts.push({ step: states.length, copy: copied(file, join(folder, `${cuts.length}.sqlite`)) });
    }),
  );
  await store.appoint([{ channel: 'web', from: 'mei' }], day);
  await exchange(store, 'mei', []);
  await withLesson(store, { seats: 1 });
  let [ann, ben] = ['', ''];
  const change = { lesson: 'white-evening', seen: 0 };
  const [night, morning] = [denverAt('2026-11-20T22:00'), denverAt('2026-11-21T08:00')];
  const weekly = { draft: lessonOf({ id: 'weekly' }), repeats: { every: 'week', step: 1, times: 2 } } as const;
  const days = { from: '2026-12-05', to: null, weekday: null, only: null };
  const together = { lessons: ['weekly-2026-12-05', 'weekly-2026-12-12'].map((lesson) => ({ lesson, seen: 0 })) };
  const backAgain = { lessons: together.lessons.map((one) => ({ ...one, seen: 1 })) };
  const steps: readonly (() => Promise<unknown>)[] = [
    async () => (ann = await enrols(store, 'ann')),
    async () => (ben = await enrols(store, 'ben', { to: 'waiting' })),
    () => does(store, 'ann', () => act(ann, 'leave', night), night),
    () => tendAll(store, morning),
    () => does(store, 'ben', () => act(ben, 'accept', morning), morning),
    () => tendAll(store, denverAt('2026-11-28T19:00')),
    () => does(store, 'mei', () => ({ do: 'move-lesson', ...change, starts: '2026-12-12T19:00', minutes: null })),
    () => does(store, 'mei', () => ({ do: 'cancel-lesson', ...change, seen: 1, reason: 'snow' })),
    () =>
      does(store, 'mei', () => ({ do: 'resume-lessons', lessons: [{ ...change, seen: 2 }], series: [], days: null })),
    () => does(store, 'mei', () => ({ do: 'add-lessons', drafts: [], series: weekly })),
    () => enrols(store, 'ann', { lesson: 'weekly-2026-12-05' }),
    () => enrols(store, 'ben', { lesson: 'weekly-2026-12-12' }),
    () =>
      does(store, 'mei', () => ({
        do: 'write-to-lessons',
        lessons: ['weekly-2026-12-05', 'weekly-2026-12-12'],
        text: 'a coat',
      })),
    () => does(store, 'mei', () => ({ do: 'cancel-lessons', ...together, series: ['weekly'], days, reason: '' })),
    () => does(store, 'mei', () => ({ do: 'resume-lessons', ...backAgain, series: [weekly], days })),
  ];
  const now = (): string => stateOf(copied(file, join(folder, 'now.sqlite')));
  states.push(now());
  for (const step of steps) {
    counts = true;
    await step();
    counts = false;
    states.push(now());
  }
  await store.close();
  expect(cuts.length).toBeGreaterThan(50);
  for (const [i, before] of states.slice(0, -1).entries()) {
    const found = [...new Set(cuts.filter(({ step }) => step === i + 1).map(({ copy }) => stateOf(copy)))];
    // As it was, with the message kept, and as it is after: never a fourth.
    expect(found.length, `step ${i}`).toBeLessThanOrEqual(3);
    expect(found[0]).toBe(before);
    for (const state of found) expectWhole(state);
  }
});

/** A seat, the reminders that go with it and the message it was made with are there together or not at all. */
function expectWhole(state: string): void {
  const [, bookings, reminders, inbox] = JSON.parse(state) as readonly (readonly Record<string, string | number>[])[];
  for (const { id, standing } of bookings ?? []) {
    const own = (reminders ?? []).filter(({ booking }) => booking === id);
    expect(inbox?.find(({ seq }) => String(seq) === id)?.['status']).toBe('handled');
    if (standing === 'seated') expect(own).not.toHaveLength(0);
    expect(new Set(own.map(({ purpose }) => purpose)).size).toBe(own.length);
  }
  const seated = (bookings ?? []).filter(
    ({ lesson, standing }) => lesson === 'white-evening' && ['seated', 'offered'].includes(String(standing)),
  );
  expect(seated.length).toBeLessThanOrEqual(1);
}
