/**
 * The six questions in the house as it runs: what arrives is recorded, loaded, stepped and committed with a sync, its answer
 * claimed, rendered, handed to a channel that does nothing, and settled. Left out: the network.
 */
import { join } from 'node:path';
import { makeApp } from '../../../src/app.ts';
import { systemClock } from '../../../src/clock.ts';
import { step } from '../../../src/core/flow/step.ts';
import { makeLog } from '../../../src/log.ts';
import type { Channel, Incoming } from '../../../src/messages.ts';
import type { Store } from '../../../src/store/contract.ts';
import { openSqliteStore } from '../../../src/store/sqlite/store.ts';
import { book, say } from './flow.ts';
import type { OpenTalk } from './questions.ts';

export const openHouse: OpenTalk = async (folder) => {
  const answered = new Map<string, () => void>();
  const store = telling(openSqliteStore(join(folder, 'house.sqlite')), (chat) => answered.get(chat)?.());
  let record: ((incoming: Incoming) => Promise<unknown>) | null = null;
  let said = 0;
  const channel: Channel = {
    name: 'web',
    start: (given) => {
      record = given;
      return Promise.resolve();
    },
    send: ({ id }) => {
      said += 1;
      return Promise.resolve({ outcome: 'sent', ref: id });
    },
    stop: () => Promise.resolve(),
  };
  const app = makeApp({
    store,
    step: (state, event, around) => step(book, state, event, around),
    say,
    channels: [channel],
    clock: systemClock,
    log: makeLog('warn'),
    keepDays: 90,
  });
  await app.start();
  let updates = 0;
  return {
    async tell(person, text) {
      const chat = `p${person}`;
      const done = new Promise<void>((resolve) => answered.set(chat, resolve));
      const about = { channel: 'web', from: chat, chat, receivedAt: Date.now(), what: { kind: 'text', text } } as const;
      await record?.({ ...about, updateId: `u${updates++}` });
      await done;
    },
    settled: () => app.settled(),
    said: () => said,
    close: () => app.stop(),
  };
};

/** Tells of everything that is handled of a chat. */
function telling(store: Store, done: (chat: string) => void): Store {
  return {
    ...store,
    async record(incoming, atOnce) {
      const recorded = await store.record(incoming, atOnce);
      if (recorded.handled) done(incoming.chat);
      return recorded;
    },
    async commit(commit) {
      const outcome = await store.commit(commit);
      if (outcome === 'done') done(commit.address.chat);
      return outcome;
    },
  };
}
