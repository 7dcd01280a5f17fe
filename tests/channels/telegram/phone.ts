/** A customer's phone before the whole house: real flows and store, Telegram through the stand-in, and time that passes when told. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp } from '../../../src/app.ts';
import { sayIn, stepIn } from '../../../src/own-content.ts';
import { profilesOf } from '../../../src/channels/telegram/menu.ts';
import type { Clock } from '../../../src/clock.ts';
import type { Language } from '../../../src/core/units.ts';
import type { Phrase } from '../../../src/messages.ts';
import type { Keeper } from '../../../src/store/contract.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import { content } from '../../the-content.ts';
import { publishedLimits } from './bot-api/flood-limiter.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import type { KeptMessage } from './bot-api/world.ts';
import { channelAt, until, type KeptLog } from './harness.ts';

const profiles = profilesOf((language, key) => content.words.say(language, { key, values: {} }));

/** The words of a button or sentence. */
export const wordsIn =
  (language: Language) =>
  (key: string, values: Phrase['values'] = {}): string =>
    content.words.say(language, { key, values });

/** What one thing done changed in a chat, as it looked then. */
export interface Seen {
  readonly fresh: readonly KeptMessage[];
  readonly edited: readonly KeptMessage[];
}

export interface Phone {
  readonly server: StandIn;
  readonly log: KeptLog;
  /** The bot's messages in a chat, oldest first, as they look now. */
  messages(person?: number): readonly KeptMessage[];
  say(text: string, person?: number): Promise<Seen>;
  /** The button with these words under the newest message that has it. */
  tap(label: string, person?: number): Promise<Seen>;
  /** The button with these words as this message, seen earlier, had it. */
  tapOn(message: KeptMessage, label: string, person?: number): Promise<Seen>;
  /** Anything else that people do in their app. */
  does(what: () => void, person?: number): Promise<Seen>;
  pass(seconds: number): Promise<Seen>;
  /** Milliseconds of the house's clock. */
  now(): number;
  close(): Promise<void>;
}

export interface PhoneParts {
  /** As the app on the phone tells it: "zh-hans". */
  readonly language: string;
  /** How long each sending takes, by the house's clock. */
  readonly sendMs?: number;
  readonly keepers?: readonly Keeper[];
}

export const customer = 7;
const opened = Date.UTC(2026, 0, 15, 16);

export async function pickUp({ language, sendMs = 0, keepers = [] }: PhoneParts): Promise<Phone> {
  const server = await startStandIn({ flood: publishedLimits });
  server.clock.stand();
  const clock = handClock(opened, (ms) => server.clock.advance(ms));
  const { channel, log } = channelAt(server, { now: () => clock.now(), profiles });
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-phone-'));
  const slow: typeof channel = {
    ...channel,
    async send(message) {
      const sent = await channel.send(message);
      clock.slip(sendMs);
      return sent;
    },
  };
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const parts = { store, step: stepIn(content), say: sayIn(content), channels: [slow], shopkeepers: keepers };
  const app = makeApp({ ...parts, clock, log, keepDays: 90 });
  await app.start();

  const messages = (person = customer): readonly KeptMessage[] => server.seenBy(person).map((one) => ({ ...one }));
  async function watch(person: number, what: () => Promise<void>): Promise<Seen> {
    const before = new Map(messages(person).map((one) => [one.id, one.edits]));
    await what();
    const after = messages(person);
    return {
      fresh: after.filter(({ id }) => !before.has(id)),
      edited: after.filter(({ id, edits }) => before.has(id) && before.get(id) !== edits),
    };
  }
  async function settle(): Promise<void> {
    await until(() => server.queue.pending.length === 0);
    await app.settled();
  }
  const does = (what: () => void, person = customer): Promise<Seen> =>
    watch(person, async () => {
      what();
      await settle();
      // Nobody is quicker than a second; by then what the pace of one chat held back has gone too.
      await clock.pass(1500, () => app.settled());
    });
  return {
    server,
    log,
    messages,
    does,
    say: (text, person = customer) => does(() => void server.people.say(person, text, language), person),
    tap: (label, person = customer) => does(() => void server.people.tap(person, label), person),
    tapOn: (message, label, person = customer) =>
      does(() => void server.people.forge(person, keyOf(message, label), message), person),
    pass: (seconds) => watch(customer, () => clock.pass(seconds * 1000, () => app.settled())),
    now: () => clock.now(),
    async close() {
      await app.stop();
      await server.close();
      rmSync(folder, { recursive: true });
    },
  };
}

export const labels = ({ markup }: KeptMessage): readonly string[] =>
  (markup?.inline_keyboard ?? []).flat().map(({ text }) => text);

function keyOf(message: KeptMessage, label: string): string {
  const found = (message.markup?.inline_keyboard ?? []).flat().find(({ text }) => text === label);
  if (!found || !('callback_data' in found)) throw new Error(`no button "${label}" there`);
  return found.callback_data;
}

interface HandClock extends Clock {
  /** Rings whatever is due on the way. */
  pass(ms: number, settled: () => Promise<void>): Promise<void>;
  /** Time that goes by while something else is done; what falls due in it rings at the next passing. */
  slip(ms: number): void;
}

function handClock(start: number, moved: (ms: number) => void): HandClock {
  let now = start;
  const calls = new Set<{ readonly at: number; readonly call: () => void }>();
  const go = (to: number): void => {
    if (to <= now) return;
    moved(to - now);
    now = to;
  };
  return {
    now: () => now,
    wakeAt(at, call) {
      const entry = { at, call };
      calls.add(entry);
      return () => calls.delete(entry);
    },
    slip: (ms) => go(now + ms),
    async pass(ms, settled) {
      const end = now + ms;
      for (;;) {
        const [next] = [...calls].filter(({ at }) => at <= Math.max(end, now)).toSorted((a, b) => a.at - b.at);
        if (!next) break;
        calls.delete(next);
        go(next.at);
        next.call();
        await settled();
      }
      go(end);
    },
  };
}
