/**
 * A process of its own: the house with many brews under way, one call to pour owed to each, and commits of other people beside. Tells how late
 * the calls were by the house's clock and as a client behind a socket sees it, and what the process took of memory.
 */
import { once } from 'node:events';
import { connect, createServer, type AddressInfo } from 'node:net';
import { monitorEventLoopDelay } from 'node:perf_hooks';
import { makeApp } from '../../src/app.ts';
import { systemClock } from '../../src/clock.ts';
import { step } from '../../src/core/flow/step.ts';
import { makeLog } from '../../src/log.ts';
import type { Channel, Incoming } from '../../src/messages.ts';
import type { Store } from '../../src/store/contract.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { book, say } from './six-questions/flow.ts';
import { messages } from './six-questions/questions.ts';

/** What the measuring process tells this one; the calls fall due one after another. */
export interface Order {
  readonly file: string;
  readonly brews: number;
  readonly dueFrom: number;
  readonly everyMs: number;
  readonly people: number;
  readonly commitsPerSecond: number;
}

export interface Told {
  readonly own: readonly number[];
  readonly client: readonly number[];
  readonly commitsPerSecond: number;
  readonly worstBlockMs: number;
  readonly mostMemoryMb: number;
}

const afterMs = 1_000;

async function measure(order: Order): Promise<Told> {
  const { brews, dueFrom, everyMs } = order;
  const blocks = monitorEventLoopDelay({ resolution: 1 });
  blocks.enable();
  const far = await farEnd();
  const own: number[] = [];
  const dueOf = (chat: string): number => Math.round(dueFrom + Number(chat.slice(1)) * everyMs);
  let record: ((incoming: Incoming) => Promise<unknown>) | null = null;
  const channel: Channel = {
    name: 'web',
    start: (given) => Promise.resolve(void (record = given)),
    send({ id, chat }) {
      if (Number(chat.slice(1)) < brews) {
        own.push(Date.now() - dueOf(chat));
        far.write(dueOf(chat));
      }
      return Promise.resolve({ outcome: 'sent', ref: id });
    },
    stop: () => Promise.resolve(),
  };
  const counted = counting(openSqliteStore(order.file));
  const app = makeApp({
    store: counted.store,
    step: (state, event, around) => step(book, state, event, around),
    say,
    channels: [channel],
    clock: systemClock,
    log: makeLog('warn'),
    keepDays: 90,
  });
  await app.start();
  const neighbours = talkBeside(order, (incoming) => record?.(incoming));
  let mostMemory = process.memoryUsage.rss();
  const looking = setInterval(() => (mostMemory = Math.max(mostMemory, process.memoryUsage.rss())), 200);
  const until = dueFrom + brews * everyMs + afterMs;
  const began = Date.now();
  await new Promise((resolve) => setTimeout(resolve, until - Date.now()));
  const perSecond = counted.commits() / ((Date.now() - began) / 1000);
  clearInterval(neighbours);
  clearInterval(looking);
  await app.settled();
  await new Promise((resolve) => setTimeout(resolve, 200));
  await app.stop();
  far.close();
  return {
    own,
    client: far.lateness,
    commitsPerSecond: perSecond,
    worstBlockMs: blocks.max / 1e6,
    mostMemoryMb: mostMemory / 2 ** 20,
  };
}

/** What is handled counts, whether with what arrived or after it. */
function counting(store: Store): { readonly store: Store; commits(): number } {
  let commits = 0;
  return {
    store: {
      ...store,
      async record(incoming, atOnce) {
        const recorded = await store.record(incoming, atOnce);
        if (recorded.handled) commits += 1;
        return recorded;
      },
      async commit(commit) {
        const outcome = await store.commit(commit);
        if (outcome === 'done') commits += 1;
        return outcome;
      },
    },
    commits: () => commits,
  };
}

/** Other people hold the six questions, evenly over time. */
function talkBeside(
  { brews, people, commitsPerSecond }: Order,
  record: (incoming: Incoming) => Promise<unknown> | undefined,
): NodeJS.Timeout {
  const began = Date.now();
  let told = 0;
  return setInterval(() => {
    const owed = Math.floor(((Date.now() - began) / 1000) * commitsPerSecond);
    for (; told < owed; told++) {
      const chat = `p${brews + (told % (people - brews))}`;
      const what = { kind: 'text', text: messages[1 + (told % (messages.length - 1))] ?? '' } as const;
      void record({ channel: 'web', updateId: `beside-${told}`, from: chat, chat, receivedAt: Date.now(), what });
    }
  }, 5);
}

interface FarEnd {
  readonly lateness: readonly number[];
  write(due: number): void;
  close(): void;
}

/** The other side of a socket: notes when each call arrives. */
async function farEnd(): Promise<FarEnd> {
  const lateness: number[] = [];
  let rest = '';
  const server = createServer((socket) =>
    socket.setNoDelay(true).on('data', (chunk: Buffer) => {
      const now = Date.now();
      const lines = (rest + chunk.toString()).split('\n');
      rest = lines.pop() ?? '';
      for (const due of lines) lateness.push(now - Number(due));
    }),
  );
  server.listen(0, '127.0.0.1');
  await once(server, 'listening');
  const near = connect((server.address() as AddressInfo).port, '127.0.0.1').setNoDelay(true);
  await once(near, 'connect');
  return {
    lateness,
    write: (due) => void near.write(`${due}\n`),
    close() {
      near.destroy();
      server.close();
    },
  };
}

process.once('message', (order: Order) => {
  void measure(order).then((told) => process.send?.(told, () => process.exit(0)));
});
process.once('disconnect', () => process.exit(1));
process.send?.('here');
