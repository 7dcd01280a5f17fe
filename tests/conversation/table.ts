/** Somebody at a table with a guided brew: the real flows and a real store, a channel and a clock that obey, and a house that can be killed. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { makeApp, type App } from '../../src/app.ts';
import { sayIn, stepIn } from '../../src/own-content.ts';
import type { Facts } from '../../src/core/flow/flow.ts';
import { makeLog } from '../../src/log.ts';
import type { Outgoing, Sent, What } from '../../src/messages.ts';
import type { Recorded, Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { content } from '../the-content.ts';
import { fakeChannel, type FakeChannel } from '../delivery/fake-channel.ts';
import { fakeClock, rest, type FakeClock } from '../delivery/fake-clock.ts';
import { noon } from '../store/samples.ts';

export interface Table {
  readonly clock: FakeClock;
  /** Everything that arrived, oldest first, through all restarts; a repeat of the same message once. */
  readonly arrived: () => readonly Arrived[];
  /** The newest choice with this label, wherever it stands; the key, to tap it again later. */
  readonly keyOf: (label: string) => string;
  readonly tap: (label: string) => Promise<void>;
  readonly tapKey: (key: string) => Promise<void>;
  readonly write: (text: string) => Promise<void>;
  readonly pass: (seconds: number) => Promise<void>;
  /** The house dies now, without a word, and is started again so many seconds later. */
  readonly restart: (afterS?: number) => Promise<void>;
  /** Dies at the n-th thing it asks of its store from now on. */
  readonly dieAt: (operation: number) => void;
  readonly isDead: () => boolean;
  readonly operations: () => number;
  readonly commits: () => number;
  /** What is remembered of the brew under way. */
  readonly brew: () => Promise<Facts>;
  readonly leave: () => Promise<void>;
}

export interface Arrived extends Outgoing {
  readonly at: number;
}

interface Kept {
  readonly conversation: readonly { readonly state: { readonly facts: Facts } }[];
}

/** How long the channel takes to send, and the language of the device. */
export async function sitDown({ delayMs = 0, language = 'en' } = {}): Promise<Table> {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-table-'));
  const file = join(folder, 'shop.sqlite');
  const clock = fakeClock(noon);
  const arrived: Arrived[] = [];
  let channel: FakeChannel;
  let store: Store;
  let app: App;
  let operations = 0;
  let commits = 0;
  let deathAt = Infinity;
  let updates = 0;

  /** From its death on, nothing that is asked of the store is ever answered. */
  const mortal = (real: Store): Store =>
    new Proxy(real, {
      get(target, name: keyof Store) {
        const asked: unknown = target[name];
        if (typeof asked !== 'function') return asked;
        return (...given: never[]) => {
          if (target !== store || operations >= deathAt) return new Promise(() => undefined);
          operations++;
          const answer: unknown = (asked as (...args: never[]) => unknown).apply(target, given);
          if (name === 'commit') commits++;
          // What arrives is mostly handled with that.
          if (name === 'record') void (answer as Promise<Recorded>).then(({ handled }) => handled && commits++);
          return answer;
        };
      },
    });
  const open = async (): Promise<void> => {
    store = openSqliteStore(file);
    const mine = store;
    channel = fakeChannel('web');
    const send = async (message: Outgoing): Promise<Sent> => {
      if (delayMs > 0) await new Promise<void>((resolve) => clock.wakeAt(clock.now() + delayMs, resolve));
      if (mine === store && operations < deathAt) arrived.push({ ...message, at: clock.now() });
      return { outcome: 'sent', ref: message.id };
    };
    app = makeApp({
      store: mortal(store),
      step: stepIn(content),
      say: sayIn(content),
      channels: [{ ...channel, send }],
      clock,
      log: makeLog('silent'),
      keepDays: 30,
    });
    void app.start();
    await rest();
  };
  /** As a page does: what was not acknowledged is posted once more, under the same id. */
  const post = async (what: What): Promise<void> => {
    const incoming = {
      channel: 'web',
      from: 'ann',
      chat: 'ann',
      updateId: `u${++updates}`,
      receivedAt: clock.now(),
      deviceLanguage: language,
      what,
    } as const;
    let isKept = false;
    void channel.take(incoming).then(() => (isKept = true));
    await rest();
    if (!isKept && operations >= deathAt) {
      await table.restart();
      void channel.take(incoming);
      await rest();
    }
    if (delayMs > 0) await clock.pass(3 * delayMs);
  };
  const table: Table = {
    clock,
    arrived: () => [...new Map(arrived.map((message) => [message.id, message])).values()],
    keyOf(label) {
      const choices = arrived.toReversed().flatMap((message) => message.choices);
      const found = choices.find((choice) => choice.label === label);
      if (!found) throw new Error(`nothing to tap is called "${label}"`);
      return found.key;
    },
    tap: (label) => post({ kind: 'tap', key: table.keyOf(label) }),
    tapKey: (key) => post({ kind: 'tap', key }),
    write: (text) => post({ kind: 'text', text }),
    pass: (seconds) => clock.pass(seconds * 1000),
    async restart(afterS = 0) {
      const old = store;
      await clock.pass(afterS * 1000);
      deathAt = Infinity;
      await open();
      await old.close();
      await clock.pass(0);
    },
    dieAt: (operation) => (deathAt = operations + operation),
    isDead: () => operations >= deathAt,
    operations: () => operations,
    commits: () => commits,
    async brew() {
      const person = await store.find('web', 'ann');
      const kept = (await store.exportOf(person ?? 0)) as unknown as Kept;
      return (kept.conversation[0]?.state.facts['brew'] ?? {}) as Facts;
    },
    async leave() {
      await rest();
      await app.stop();
      rmSync(folder, { recursive: true });
    },
  };
  await open();
  return table;
}
