/** The real house with its real flows over a real file, on a clock that is told, among students who can be heard and tapped for. */
import { join } from 'node:path';
import { makeApp, type App } from '../../../src/app.ts';
import { contentOf, stepIn } from '../../../src/own-content.ts';
import { makeToldClock, type ToldClock } from '../../../src/commands/told-clock.ts';
import { readConfig } from '../../../src/config.ts';
import type { Instant } from '../../../src/core/units.ts';
import type { Say } from '../../../src/delivery/render.ts';
import type { Outgoing } from '../../../src/messages.ts';
import type { Store } from '../../../src/store/contract.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import type { Log } from '../../../src/log.ts';
import { fakeChannel, type FakeChannel } from '../../delivery/fake-channel.ts';

export interface Heard {
  readonly at: Instant;
  readonly chat: string;
  readonly keys: readonly string[];
  readonly lesson: string | null;
  readonly choices: Outgoing['choices'];
}

export interface Shop {
  readonly clock: ToldClock;
  store(): Store;
  /** Everything said since it was last asked. */
  heard(): readonly Heard[];
  /** What troubled the house; a promise is that nothing does. */
  troubles(): readonly string[];
  /** The next instant at which the house has something to do by itself; Infinity when it stands still. */
  nextDue(): Promise<Instant>;
  take(incoming: Parameters<FakeChannel['take']>[0]): Promise<'new' | 'seen'>;
  /** The next sending fails for certain, and is tried again. */
  stumble(): void;
  /** Until then no reminder can be sent, nor what the waiting list brings. */
  cutOff(until: Instant): void;
  readonly settled: () => Promise<void>;
  open(): Promise<void>;
  close(): Promise<void>;
}

/** Keys instead of words, so that a check need not read three languages. Here every lesson is called by its id. */
const plain: Say = (_, { key, values }) => JSON.stringify({ key, lesson: titleOf(values['title']) });

const titleOf = (title: unknown): string | null =>
  typeof title === 'object' && title !== null && 'en' in title ? String(title.en) : null;

const isUnasked = ({ paragraphs }: Outgoing): boolean =>
  paragraphs.some((one) => purposeKeys.test(keyOf(one)) || listKeys.test(keyOf(one)));

const keyOf = (paragraph: string): string => (JSON.parse(paragraph) as { key: string }).key;

/** What is told because a clock says so. */
export const purposeKeys = /^lesson-told-(week-before|evening-before|two-hours-before|thanks)/;

/** What is told because someone else gave a seat back, or let its time pass. */
export const listKeys = /^lesson-told-(offer|lapsed)$/;

export function makeShop(folder: string, start: Instant): Shop {
  const content = contentOf(readConfig({ NINTHPOUR_FOLDER: folder }));
  const clock = makeToldClock(start);
  const troubles: string[] = [];
  const trouble = (event: string, fields?: object): void =>
    void troubles.push(`${event} ${JSON.stringify(fields ?? {})}`);
  const log: Log = { debug: () => {}, info: () => {}, warn: () => {}, error: trouble };
  const all: Heard[] = [];
  let cutOffUntil = start;
  let house: { readonly app: App; readonly store: Store; readonly channel: FakeChannel } | null = null;

  const hear = (message: Outgoing): void => {
    const told = message.paragraphs.map((one) => JSON.parse(one) as { key: string; lesson: string | null });
    const lesson = told.find((one) => one.lesson !== null)?.lesson ?? null;
    all.push({
      at: clock.now(),
      chat: message.chat,
      keys: told.map(({ key }) => key),
      lesson,
      choices: message.choices,
    });
  };
  const inside = (): NonNullable<typeof house> => {
    if (!house) throw new Error('the shop is closed');
    return house;
  };
  return {
    clock,
    store: () => inside().store,
    heard: () => all.splice(0),
    troubles: () => troubles,
    nextDue: async () => (house ? ((await house.store.nextDue(['web'], clock.now())) ?? Infinity) : Infinity),
    take: (incoming) => inside().channel.take(incoming),
    stumble: () => void inside().channel.outcomes.push({ outcome: 'retry', why: 'as the dice would have it' }),
    cutOff: (until) => void (cutOffUntil = until),
    settled: async () => {
      if (house) await house.app.settled();
    },
    async open() {
      const channel = fakeChannel();
      const store = openSqliteStore(join(folder, 'shop.sqlite'), 'one rule');
      const sending = {
        ...channel,
        async send(message: Outgoing) {
          if (isUnasked(message) && clock.now() < cutOffUntil) return { outcome: 'retry', why: 'cut off' } as const;
          const sent = await channel.send(message);
          if (sent.outcome === 'sent') hear(message);
          return sent;
        },
      };
      const parts = { store, step: stepIn(content), say: plain, channels: [sending], clock, log, keepDays: 30 };
      const app = makeApp({ ...parts, shopkeepers: [{ channel: 'web', from: 'keeper' }] });
      house = { app, store, channel };
      await app.start();
      await app.settled();
    },
    async close() {
      const { app } = inside();
      house = null;
      await app.stop();
    },
  };
}
