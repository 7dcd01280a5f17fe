/** The whole house behind Telegram: real flows, a real store, and the stand-in for the other side. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp, type App } from '../../../src/app.ts';
import { sayIn, stepIn } from '../../../src/own-content.ts';
import type { TelegramChannel } from '../../../src/channels/telegram/telegram.ts';
import { systemClock } from '../../../src/clock.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import type { LessonPlan } from '../../../src/store/lesson-contract.ts';
import { content } from '../../the-content.ts';
import type { StandIn } from './bot-api/server.ts';
import { channelAt, type KeptLog } from './harness.ts';

export interface House {
  readonly app: App;
  readonly channel: TelegramChannel;
  readonly log: KeptLog;
  /** Stops in order and starts anew with the same store. */
  restart(): Promise<House>;
  close(): Promise<void>;
}

export function openHouse(
  server: StandIn,
  folder = mkdtempSync(join(tmpdir(), 'ninthpour-telegram-')),
  lessons: LessonPlan = { lessons: [], series: [] },
): Promise<House> {
  const { channel, log } = channelAt(server, { sendTimeoutMs: 5000 });
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const parts = { store, step: stepIn(content), say: sayIn(content), channels: [channel], lessons };
  const app = makeApp({ ...parts, clock: systemClock, log, keepDays: 90 });
  const house: House = {
    app,
    channel,
    log,
    restart: async () => {
      await app.stop();
      return openHouse(server, folder, lessons);
    },
    close: async () => {
      await app.stop();
      rmSync(folder, { recursive: true });
    },
  };
  return app.start().then(() => house);
}
