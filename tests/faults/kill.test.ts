/** The whole house killed at random under load, again and again: nothing acknowledged is lost, nothing is said thrice. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService, type Service } from '../app/service.ts';
import { countOf, dice } from './counts.ts';

const script = fileURLToPath(new URL('echo-house.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'tea-kill-'));
afterAll(() => rmSync(folder, { recursive: true }));

const chats = 8;

interface Told {
  readonly kept?: string;
  readonly id?: string;
  readonly chat?: string;
  readonly text?: string;
}

/** All that the other side saw, over all lives of the house. */
class World {
  readonly file: string;
  readonly kept = new Set<string>();
  readonly unkept = new Map<string, string>();
  readonly copies = new Map<string, number>();
  readonly said = new Map<string, { readonly chat: string; readonly text: string }>();
  private next = 0;

  constructor(name: string) {
    this.file = join(folder, name);
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
    const chat = `c${n % chats}`;
    const updateId = `u${n}`;
    const what = { kind: 'text', text: `t${n}` };
    const line = JSON.stringify({ channel: 'web', updateId, from: chat, chat, receivedAt: Date.now(), what });
    this.unkept.set(updateId, line);
    return line;
  }
}

function live(world: World): Service {
  const { file } = world;
  const service = startService({ script, args: [file] });
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

async function settled(world: World): Promise<void> {
  for (let before = -1; before !== world.copies.size + world.kept.size || world.unkept.size > 0;) {
    before = world.copies.size + world.kept.size;
    await pause(400);
  }
}

test('killed at random', { timeout: 3_600_000 }, async () => {
  const kills = countOf('KILLS', 6);
  const thrown = dice();
  const world = new World('killed.sqlite');
  for (let i = 0; i < kills; i++) {
    const service = live(world);
    // Every sixth dies while it is still getting up: the second death of a double.
    if (i % 6 === 5) await pause(thrown.below(400));
    else {
      await service.ready;
      await load(world, service, thrown.below(300));
    }
    service.child.kill('SIGKILL');
    await service.ended;
  }
  const last = live(world);
  await last.ready;
  await load(world, last, 50);
  await settled(world);
  last.child.kill('SIGTERM');
  const { code } = await last.ended;

  const when = `seed ${thrown.seed}, ${kills} kills, ${world.kept.size} messages`;
  expect(code, when).toBe(0);
  expect(world.kept.size, when).toBeGreaterThan(kills);
  const copies = [...world.copies.values()];
  const doubled = copies.filter((n) => n > 1).length;
  expect(Math.max(...copies), when).toBeLessThanOrEqual(2);
  expect(doubled, when).toBeLessThanOrEqual(kills * chats);
  for (let c = 0; c < chats; c++) expect(answersOf(world, `c${c}`), when).toEqual(textsOf(world, c));
  const db = openDatabase(world.file);
  expect(db.pragma('integrity_check', { simple: true })).toBe('ok');
  const owed = db.prepare(`SELECT status, count(*) AS rows FROM outbox WHERE status <> 'sent' GROUP BY status`).all();
  expect(owed, when).toEqual([]);
  db.close();
  process.stdout.write(`${when}: 0 lost, ${doubled} said twice\n`);
});

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
  return all.filter((n) => n % chats === chat).toSorted(byNumber);
}

test('stopped in order under load, nothing is lost and nothing said twice', { timeout: 120_000 }, async () => {
  const world = new World('stopped.sqlite');
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
  for (let c = 0; c < chats; c++) expect(answersOf(world, `c${c}`)).toEqual(textsOf(world, c));
});
