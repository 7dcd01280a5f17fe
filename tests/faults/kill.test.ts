/** The whole house killed at random under load, again and again: nothing acknowledged is lost, nothing is said thrice. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import type { ChannelName } from '../../src/messages.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService, type Service } from '../app/service.ts';
import { countOf, dice, type Dice } from './counts.ts';

const script = fileURLToPath(new URL('echo-house.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'tea-kill-'));
afterAll(() => rmSync(folder, { recursive: true }));

interface Told {
  readonly kept?: string;
  readonly id?: string;
  readonly chat?: string;
  readonly text?: string;
}

/** All that the other side saw, over all lives of the house. */
class World {
  readonly file: string;
  readonly channel: ChannelName;
  readonly chats: number;
  readonly kept = new Set<string>();
  readonly unkept = new Map<string, string>();
  readonly copies = new Map<string, number>();
  readonly said = new Map<string, { readonly chat: string; readonly text: string }>();
  private next = 0;

  constructor(channel: ChannelName, chats: number) {
    this.file = join(folder, `${channel}-${chats}.sqlite`);
    this.channel = channel;
    this.chats = chats;
  }

  hear({ kept, id, chat = '', text = '' }: Told): void {
    if (kept !== undefined) {
      this.kept.add(kept);
      this.unkept.delete(kept);
    }
    if (id === undefined) return;
    this.copies.set(id, (this.copies.get(id) ?? 0) + 1);
    this.said.set(id, { chat, text });
  }

  /** One more message of the next chat. */
  write(): string {
    const n = this.next++;
    const chat = `c${n % this.chats}`;
    const updateId = `u${n}`;
    const what = { kind: 'text', text: `t${n}` };
    const line = JSON.stringify({ channel: this.channel, updateId, from: chat, chat, receivedAt: Date.now(), what });
    this.unkept.set(updateId, line);
    return line;
  }
}

function live(world: World): Service {
  const { file, channel } = world;
  const service = startService({ script, args: [file, channel] });
  createInterface({ input: service.child.stdout }).on('line', (line) => world.hear(JSON.parse(line) as Told));
  // A line cut off by the kill finds no reader.
  service.child.stdin.on('error', () => {});
  return service;
}

/** As a channel does: what was not acknowledged is delivered again, and new things come in all the while. */
async function load(world: World, service: Service, forMs: number): Promise<void> {
  for (const line of world.unkept.values()) service.child.stdin.write(`${line}\n`);
  const end = performance.now() + forMs;
  while (performance.now() < end) {
    for (let i = 0; i < 4; i++) service.child.stdin.write(`${world.write()}\n`);
    await pause(3);
  }
}

/** Longer than the pace of any channel holds a chat. */
const quietMs = 1_300;

async function settled(world: World): Promise<void> {
  for (let before = -1; before !== world.copies.size + world.kept.size || world.unkept.size > 0;) {
    before = world.copies.size + world.kept.size;
    await pause(quietMs);
  }
}

/** Where a repeat does no harm nothing is ever given up; where it does, nothing is said thrice. Many chats, so that none is paced for long. */
const rooms = [
  ['web', 8, Infinity],
  ['telegram', 64, 2],
] as const;

test.each(rooms)('%s, killed at random', { timeout: 3_600_000 }, async (channel, chats, mostCopies) => {
  const kills = countOf('KILLS', 5);
  const thrown = dice();
  const world = new World(channel, chats);
  for (let i = 0; i < kills; i++) await liveAndDie(world, thrown, i);
  const last = live(world);
  await last.ready;
  await load(world, last, 50);
  await settled(world);
  last.child.kill('SIGTERM');
  const { code } = await last.ended;

  const when = `${channel}: seed ${thrown.seed}, ${kills} kills, ${world.kept.size} messages`;
  const copies = [...world.copies.values()];
  const doubled = copies.filter((n) => n > 1).length;
  const books = booksOf(world.file);
  expect(code, when).toBe(0);
  expect(world.kept.size, when).toBeGreaterThan(kills);
  expect(Math.max(...copies), when).toBeLessThanOrEqual(mostCopies);
  expect(doubled, when).toBeLessThanOrEqual(kills * chats);
  expect(books, when).toMatchObject({ integrity: 'ok', open: 0, givenUp: books.tasks });
  if (mostCopies === Infinity) expect(books.givenUp, when).toBe(0);
  const answered = Array.from({ length: chats }, (_, c) => answersOf(world, `c${c}`)).flat();
  const missing = [...world.kept].filter((updateId) => !answered.includes(Number(updateId.slice(1))));
  // What is not seen was twice cut off, and the shop has been told.
  expect(missing.length, when).toBeLessThanOrEqual(books.givenUp);
  process.stdout.write(`${when}: ${missing.length} given up and told, ${doubled} said twice\n`);
});

async function liveAndDie(world: World, { below }: Dice, i: number): Promise<void> {
  const service = live(world);
  // Every fifth dies while it is still getting up: the second death of a double.
  if (i % 5 === 4) await pause(below(400));
  else {
    await service.ready;
    await load(world, service, below(300));
  }
  service.child.kill('SIGKILL');
  await service.ended;
}

function booksOf(file: string) {
  const db = openDatabase(file);
  const count = (sql: string): number => db.prepare<[], number>(sql).pluck().get() ?? 0;
  const books = {
    integrity: db.pragma('integrity_check', { simple: true }) as string,
    open: count(`SELECT count(*) FROM outbox WHERE status NOT IN ('sent', 'gave-up')`),
    givenUp: count(`SELECT count(*) FROM outbox WHERE status = 'gave-up'`),
    tasks: count(`SELECT count(*) FROM task WHERE task = 'undelivered'`),
  };
  db.close();
  return books;
}

const byNumber = (a: number, b: number): number => a - b;

/** Which of a chat's own messages were answered, wakes apart. */
function answersOf(world: World, chat: string): readonly number[] {
  const texts = [...world.said.values()]
    .filter((said) => said.chat === chat)
    .map(({ text }) => text.split(' ')[1] ?? '');
  return texts.flatMap((text) => (/^t\d+$/.test(text) ? [Number(text.slice(1))] : [])).toSorted(byNumber);
}

function textsOf(world: World, chat: number): readonly number[] {
  const all = [...world.kept].map((updateId) => Number(updateId.slice(1)));
  return all.filter((n) => n % world.chats === chat).toSorted(byNumber);
}

test('stopped in order under load, nothing is lost and nothing said twice', { timeout: 120_000 }, async () => {
  const world = new World('web', 16);
  const thrown = dice();
  for (let i = 0; i < 2; i++) {
    const service = live(world);
    await service.ready;
    await load(world, service, 50 + thrown.below(150));
    const asked = performance.now();
    service.child.kill('SIGTERM');
    const { code } = await service.ended;
    expect(performance.now() - asked).toBeLessThan(5_000);
    expect(code).toBe(0);
  }
  const last = live(world);
  await last.ready;
  await load(world, last, 0);
  await settled(world);
  last.child.kill('SIGTERM');
  await last.ended;
  expect([...world.copies.values()].filter((n) => n > 1)).toEqual([]);
  for (let c = 0; c < world.chats; c++) expect(answersOf(world, `c${c}`)).toEqual(textsOf(world, c));
});
