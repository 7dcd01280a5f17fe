/** How much the house takes in and says through Telegram, measured against the stand-in on the same machine. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp, type App } from '../../../src/app.ts';
import { systemClock, type Clock } from '../../../src/clock.ts';
import type { Step } from '../../../src/conversation/answer.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import { publishedLimits } from './bot-api/flood-limiter.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, until } from './harness.ts';
import { openHouse } from './house.ts';

const texts = ['tieguanyin in a 110 ml gaiwan', '碧螺春，250毫升玻璃壺', 'green tea, mug', '蓋碗 120 ml 東方美人'];
const longWaitMs = 300_000;

export interface Turnover {
  readonly updates: number;
  readonly perSecond: number;
  /** Processor time of house and stand-in together. */
  readonly cpuMsEach: number;
  /** Polls it took; each brings at most a hundred. */
  readonly polls: number;
}

/** Each person writes once, all at the same time; until every answer has arrived. */
export async function measureTurnover(people: number): Promise<Turnover> {
  const server = await startStandIn();
  const house = await openHouse(server);
  // Compiled and warm, as after the first minute of a day.
  server.people.say(people + 1, texts[0]!);
  await until(() => server.seenBy(people + 1).length === 1, longWaitMs);
  const [pollsBefore, cpuBefore, began] = [
    server.record.of('getUpdates').length,
    process.cpuUsage(),
    performance.now(),
  ];
  for (let id = 1; id <= people; id++) server.people.say(id, texts[id % texts.length]!);
  await until(() => allSeen(server, people), longWaitMs);
  const seconds = (performance.now() - began) / 1000;
  const cpu = process.cpuUsage(cpuBefore);
  const cpuMsEach = (cpu.user + cpu.system) / 1000 / people;
  const polls = server.record.of('getUpdates').length - pollsBefore;
  await house.close();
  await server.close();
  return { updates: people, perSecond: people / seconds, cpuMsEach, polls };
}

export interface Reminding {
  readonly reminders: number;
  readonly perSecond: number;
  readonly refusedAsTooMany: number;
  readonly mostCopies: number;
}

/** A reminder to each of so many people, all due at once, against the published limits. */
export async function measureReminders(people: number): Promise<Reminding> {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-reminders-'));
  const server = await startStandIn({ flood: publishedLimits });
  const first = await openRemindingHouse(server, folder, 0);
  for (let id = 1; id <= people; id++) server.people.say(id, 'remind me');
  await until(() => server.queue.pending.length === 0, longWaitMs);
  await first.settled();
  await first.stop();
  const began = performance.now();
  const second = await openRemindingHouse(server, folder, remindAfterMs + 1000);
  await until(() => allSeen(server, people), longWaitMs);
  const seconds = (performance.now() - began) / 1000;
  await second.stop();
  const copies = ids(people).map((id) => server.seenBy(id).length);
  const refusedAsTooMany = server.record.of('sendMessage').filter(({ code }) => code === 429).length;
  await server.close();
  rmSync(folder, { recursive: true });
  return { reminders: people, perSecond: people / seconds, refusedAsTooMany, mostCopies: Math.max(...copies) };
}

/** Far enough ahead to be no timer. */
const remindAfterMs = 48 * 3_600_000;

async function openRemindingHouse(server: StandIn, folder: string, aheadMs: number): Promise<App> {
  const { channel, log } = channelAt(server, { sendTimeoutMs: 5000 });
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const clock = ahead(aheadMs);
  const app = makeApp({ store, step: remind, say: reminding, channels: [channel], clock, log, keepDays: 90 });
  await app.start();
  return app;
}

function reminding(): string {
  return 'Your lesson is soon';
}

const remind: Step = (_state, _event, { nowMs }) => ({
  state: { flow: 'remind', hash: '', place: 'start', facts: {}, trail: [], parked: [] },
  effects: [
    {
      do: 'say',
      saying: {
        phrases: [{ key: 'reminder', values: {} }],
        choices: [],
        later: { name: 'lesson', atMs: nowMs + remindAfterMs },
      },
    },
  ],
});

function ahead(ms: number): Clock {
  return {
    now: () => systemClock.now() + ms,
    wakeAt: (at, call) => systemClock.wakeAt(at - ms, call),
  };
}

function ids(people: number): readonly number[] {
  return Array.from({ length: people }, (_, i) => i + 1);
}

function allSeen(server: StandIn, people: number): boolean {
  return ids(people).every((id) => server.seenBy(id).length > 0);
}
