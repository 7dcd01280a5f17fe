/** The whole program, Telegram and all, killed at random while people ask: every question is answered, none more than twice. */
import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, test } from 'vitest';
import { startService, type Service } from '../app/service.ts';
import { ask } from '../channels/telegram/bot-api/control.ts';
import { countOf, dice, type Dice } from './counts.ts';

const script = fileURLToPath(new URL('../channels/telegram/bot-api/serve.mjs', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'tea-telegram-kill-'));
const standIn = spawn(process.execPath, [script], { stdio: ['ignore', 'pipe', 'inherit'] });
afterAll(() => {
  standIn.kill('SIGTERM');
  rmSync(folder, { recursive: true });
});

interface World {
  readonly root: string;
  readonly token: string;
  /** Who asked, and the size of vessel their answer must name. */
  readonly asked: Map<number, string>;
}

async function openWorld(): Promise<World> {
  const line = await new Promise<string>((resolve) => standIn.stdout.once('data', (chunk) => resolve(String(chunk))));
  return { ...(JSON.parse(line) as { root: string; token: string }), asked: new Map() };
}

const live = ({ root, token }: World): Service =>
  startService({ env: { NINTHPOUR_FOLDER: folder, TELEGRAM_TOKEN: token, TELEGRAM_API_ROOT: root } });

async function askMore(world: World, count: number): Promise<void> {
  for (let i = 0; i < count; i++) {
    const person = 1000 + world.asked.size;
    const size = `${60 + (world.asked.size % 140)} ml`;
    world.asked.set(person, size);
    await ask(world.root, 'say', person, `tieguanyin in a ${size} gaiwan`, 'en');
  }
}

async function liveAndDie(world: World, { below }: Dice, i: number): Promise<void> {
  const service = live(world);
  // Every fourth dies while it is still getting up: the second death of a double.
  if (i % 4 === 3) await pause(below(500));
  else {
    await service.ready;
    await askMore(world, 6);
    await pause(below(120));
  }
  service.child.kill('SIGKILL');
  await service.ended;
}

const seenBy = async (world: World, person: number): Promise<readonly string[]> =>
  ((await ask(world.root, 'seen', person)) as { text: string }[]).map(({ text }) => text);

async function unanswered(world: World): Promise<readonly number[]> {
  const open: number[] = [];
  for (const [person, size] of world.asked) {
    if (!(await seenBy(world, person)).some((text) => text.includes(size))) open.push(person);
  }
  return open;
}

test('killed at random', { timeout: 3_600_000 }, async () => {
  const kills = countOf('KILLS', 8);
  const thrown = dice();
  const world = await openWorld();
  for (let i = 0; i < kills; i++) await liveAndDie(world, thrown, i);
  const last = live(world);
  await last.ready;
  await askMore(world, 3);
  const giveUpAt = Date.now() + 30_000;
  while ((await unanswered(world)).length > 0 && Date.now() < giveUpAt) await pause(250);
  await pause(500);
  last.child.kill('SIGTERM');
  const { code, told } = await last.ended;

  const when = `seed ${thrown.seed}, ${kills} kills, ${world.asked.size} questions`;
  const open = await unanswered(world);
  const copies: number[] = [];
  for (const person of world.asked.keys()) copies.push((await seenBy(world, person)).length);
  const doubled = copies.filter((n) => n > 1).length;
  process.stdout.write(`${when}: ${open.length} unanswered, ${doubled} answered twice\n`);
  expect(code, `${when}: ${told}`).toBe(0);
  expect(await ask(world.root, 'pending'), when).toEqual([]);
  expect(open, when).toEqual([]);
  expect(Math.max(...copies), when).toBeLessThanOrEqual(2);
});
