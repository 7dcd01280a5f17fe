/** F9: what arrives comes again, out of order between people, is replayed at each start, and its ids begin anew. */
import { join } from 'node:path';
import { makeApp, type App } from '../../src/app.ts';
import { systemClock } from '../../src/clock.ts';
import type { Incoming } from '../../src/messages.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { keptLog, kettle, plainSay } from '../app/kettle.ts';
import { fakeChannel, wordsOf, type FakeChannel } from '../delivery/fake-channel.ts';
import { Tally, unlike, type Fault, type Trial } from './fault.ts';

const window = 100;
const restartEvery = 2_000;

export const repeats: Fault = {
  id: 'F9',
  title: 'updates repeated, shuffled and replayed',
  unit: 'updates',
  counts: { few: 1_000, usual: 20_000, long: 1_000_000 },
  seconds: 30,
  async run(trial) {
    const tally = new Tally();
    const people = Math.max(20, Math.min(400, Math.floor(trial.count / 50)));
    const clean = updatesOf(trial, people);
    const delivered = disturbed(clean, trial);
    const sent = await deliver(delivered, trial);
    const wanted = answersTo(clean);
    for (const [chat, texts] of wanted) {
      const said = sent.get(chat) ?? [];
      tally.add(unlike(`chat ${chat}`, said, texts));
      tally.tried += texts.length - 1;
    }
    return tally.found({ delivered: delivered.length, people });
  },
};

/** Ids grow by one, and after half of them begin anew, lower: as after an idle week. */
function updatesOf({ count }: Trial, people: number): readonly Incoming[] {
  const half = Math.floor(count / 2);
  return Array.from({ length: count }, (_, i) => ({
    channel: 'telegram' as const,
    updateId: String(i < half ? 700_000_000 + i : 1_000_000 + i),
    from: `p${i % people}`,
    chat: `p${i % people}`,
    receivedAt: Date.UTC(2026, 5, 1) + i,
    what: { kind: 'text' as const, text: `n${i}` },
  }));
}

/** Each comes one to five times, within a hundred places; of one person's the first copies keep their order. */
function disturbed(clean: readonly Incoming[], { dice }: Trial): readonly Incoming[] {
  const placed = clean.flatMap((one, i) => {
    const first = i + dice.below(window / 2);
    const copies = dice.below(5);
    return [{ one, at: first }, ...Array.from({ length: copies }, () => ({ one, at: first + 1 + dice.below(window) }))];
  });
  const shuffled = placed.toSorted((a, b) => a.at - b.at).map(({ one }) => one);
  return inOrderOfEach(shuffled);
}

/** A channel hands on one person's updates in their order. */
function inOrderOfEach(all: readonly Incoming[]): readonly Incoming[] {
  const seen = new Set<string>();
  const firsts = new Map<string, Incoming[]>();
  for (const one of all) {
    if (seen.has(one.updateId)) continue;
    seen.add(one.updateId);
    firsts.set(one.from, [...(firsts.get(one.from) ?? []), one]);
  }
  for (const own of firsts.values()) own.sort((a, b) => a.receivedAt - b.receivedAt);
  const met = new Set<string>();
  const handedOn = new Set<string>();
  return all.map((one) => {
    // A copy comes after its first, wherever that was put.
    const isNext = !met.has(one.updateId) || !handedOn.has(one.updateId);
    const next = (isNext ? firsts.get(one.from)?.shift() : undefined) ?? one;
    met.add(one.updateId);
    handedOn.add(next.updateId);
    return next;
  });
}

async function deliver(
  delivered: readonly Incoming[],
  { folder }: Trial,
): Promise<ReadonlyMap<string, readonly string[]>> {
  const sent = new Map<string, string[]>();
  const file = join(folder, 'shop.sqlite');
  let house = await open(file);
  for (let i = 0; i < delivered.length; i += window) {
    if (i % restartEvery === 0 && i > 0) {
      await close(house, sent);
      house = await open(file);
      await take(house.channel, delivered.slice(i - window, i));
    }
    await take(house.channel, delivered.slice(i, i + window));
    await house.app.settled();
  }
  await close(house, sent);
  return sent;
}

interface House {
  readonly app: App;
  readonly channel: FakeChannel;
}

async function open(file: string): Promise<House> {
  // By the page's pace nobody is held back.
  const channel = { ...fakeChannel('web'), name: 'web' as const };
  const parts = { store: openSqliteStore(file), step: kettle, say: plainSay, clock: systemClock, log: keptLog() };
  const app = makeApp({ ...parts, channels: [channel], keepDays: 90 });
  await app.start();
  return { app, channel };
}

const take = (channel: FakeChannel, updates: readonly Incoming[]): Promise<unknown> =>
  Promise.all(updates.map((one) => channel.take({ ...one, channel: 'web' })));

async function close({ app, channel }: House, sent: Map<string, string[]>): Promise<void> {
  await app.settled();
  await app.stop();
  for (const message of channel.sent) {
    const own = sent.get(message.chat) ?? [];
    // On a busy machine it may come a second late, and say so.
    own.push((wordsOf([message])[0] ?? '').replace(/ lateS=\d+/, ''));
    sent.set(message.chat, own);
  }
}

function answersTo(clean: readonly Incoming[]): ReadonlyMap<string, readonly string[]> {
  const answers = new Map<string, string[]>();
  for (const { chat, what } of clean) {
    const own = answers.get(chat) ?? [];
    own.push(`en echo count=${own.length + 1} text=${what.kind === 'text' ? what.text : ''}`);
    answers.set(chat, own);
  }
  return answers;
}
