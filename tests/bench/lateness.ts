/** How late calls to pour are with 1, 1,000 and 10,000 brews under way among 100,000 people, and 300 commits a second beside. */
import { fork } from 'node:child_process';
import { once } from 'node:events';
import { copyFileSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { priorities } from '../../src/store/contract.ts';
import { fillOwed, fillPeople } from './filled.ts';
import type { Figure, Row, Size } from './figure.ts';
import type { Order, Told } from './live-brews.ts';
import { Times } from './rounds.ts';

/** For the rows to be written, and the other process to open its database. */
const leadMs = 1_500;

interface Plan {
  readonly brews: number;
  readonly people: number;
  readonly spanMs: number;
}

async function brew(filled: string, folder: string, { brews, people, spanMs }: Plan): Promise<Told> {
  const file = join(folder, `brews-${brews}.sqlite`);
  copyFileSync(filled, file);
  const everyMs = spanMs / brews;
  const child = fork(fileURLToPath(new URL('live-brews.js', import.meta.url)));
  await once(child, 'message');
  const dueFrom = Date.now() + leadMs;
  fillOwed(file, { count: brews, dueFrom, everyMs, priority: priorities.indexOf('timer') });
  const order: Order = { file, brews, dueFrom, everyMs, people, commitsPerSecond: 300 };
  child.send(order);
  const [told] = (await once(child, 'message')) as [Told];
  return told;
}

function figures(brews: number, told: Told): readonly Figure[] {
  const [own, client] = [new Times(told.own), new Times(told.client)];
  if (own.count !== brews || client.count !== brews) throw new Error(`${own.count} of ${brews} calls were made`);
  const many = `${brews.toLocaleString('en')} brews`;
  const beside = { who: 'commits/s beside', value: told.commitsPerSecond };
  return [
    { what: `${many}, late, p50`, unit: 'ms', ours: client.median, beside },
    { what: `${many}, late, p99`, unit: 'ms', ours: client.p99, beside, reach: { atMost: 10 } },
    { what: `${many}, late, worst`, unit: 'ms', ours: client.worst, beside, reach: { atMost: 100 } },
    { what: `${many}, late by own clock, p99`, unit: 'ms', ours: own.p99 },
    { what: `${many}, longest the loop was held up`, unit: 'ms', ours: told.worstBlockMs },
  ];
}

async function measure({ quick }: Size): Promise<readonly Figure[]> {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-bench-'));
  const people = quick ? 200 : 100_000;
  const filled = join(folder, 'filled.sqlite');
  fillPeople(filled, people);
  const all: Figure[] = [];
  let memoryMb = 0;
  for (const brews of quick ? [20] : [1, 1_000, 10_000]) {
    const told = await brew(filled, folder, { brews, people, spanMs: quick ? 500 : brews === 1 ? 1_000 : 20_000 });
    all.push(...figures(brews, told));
    memoryMb = told.mostMemoryMb;
  }
  rmSync(folder, { recursive: true });
  const what = `memory, ${people.toLocaleString('en')} people, brews under way`;
  return [...all, { what, unit: 'MB', ours: memoryMb, reach: { atMost: 150 } }];
}

export const lateness: Row = { name: 'lateness', about: 'calls to pour, as a client sees them', measure };
