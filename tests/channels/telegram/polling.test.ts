/** Intake by polling, against the stand-in: nothing confirmed before it is durable, nothing lost, nothing twice. */
import { EventEmitter, once } from 'node:events';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Incoming } from '../../../src/messages.ts';
import type { TelegramChannel, TelegramDeps } from '../../../src/channels/telegram/telegram.ts';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { channelAt, Memory, quickWaits, until, type KeptLog } from './harness.ts';

let server: StandIn;
const running: TelegramChannel[] = [];
/** They never finish, and so are not waited for. */
const dead: TelegramChannel[] = [];
beforeEach(async () => {
  server = await startStandIn();
});
afterEach(async () => {
  await Promise.all(running.splice(0).map((channel) => channel.stop()));
  for (const channel of dead.splice(0)) void channel.stop();
  await server.close();
});

async function begin(
  record: (incoming: Incoming) => Promise<'new' | 'seen'>,
  more: Partial<TelegramDeps> = {},
): Promise<{ channel: TelegramChannel; log: KeptLog }> {
  const made = channelAt(server, more);
  running.push(made.channel);
  await made.channel.start(record);
  return made;
}

const forever = <T>(): Promise<T> => new Promise<T>(() => undefined);

describe('polling', () => {
  it('takes in what people do, in their order', async () => {
    const memory = new Memory();
    await begin(memory.record);
    const sent = [
      server.people.say(1, 'a', 'en'),
      server.people.say(2, 'b'),
      server.people.say(1, 'c'),
      server.people.block(2),
    ];
    await until(() => memory.kept.length === 4);
    expect(memory.sortedIds).toEqual(sent);
    expect(memory.kept.filter(({ from }) => from === '1').map(({ what }) => what)).toEqual([
      { kind: 'text', text: 'a' },
      { kind: 'text', text: 'c' },
    ]);
  });

  it('confirms only once a batch is durable', async () => {
    const durable = new EventEmitter();
    const memory = new Memory();
    server.people.say(1, 'a');
    const late = server.people.say(2, 'b')!;
    await begin(async (incoming) => {
      if (incoming.from === '2') await once(durable, 'synced');
      return memory.record(incoming);
    });
    await until(() => memory.kept.length === 1);
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(server.queue.pending).toHaveLength(2);
    expect(server.record.of('getUpdates')).toHaveLength(1);
    durable.emit('synced');
    await until(() => server.queue.pending.length === 0);
    expect(memory.ids).toContain(late);
  });

  it('tries again, and loses nothing, when recording fails', async () => {
    const memory = new Memory();
    let failures = 3;
    const { channel, log } = await begin((incoming) =>
      incoming.from === '2' && failures-- > 0 ? Promise.reject(new Error('disk full')) : memory.record(incoming),
    );
    server.people.say(1, 'a');
    server.people.say(2, 'b');
    await until(() => memory.kept.length === 2 && server.queue.pending.length === 0);
    expect(log.lines.filter((line) => line.startsWith('error an update could not be recorded'))).toHaveLength(3);
    expect(channel.health().state).toBe('polling');
  });

  it('answers a tap before it is recorded', async () => {
    const { channel } = channelAt(server);
    dead.push(channel);
    await channel.start(forever);
    server.people.forge(1, 'k.1');
    await until(() => [...server.world.taps.values()].every(({ answeredAt }) => answeredAt !== null));
    expect(server.queue.pending).toHaveLength(1);
  });

  it('passes over what it does not serve, and confirms it', async () => {
    const memory = new Memory();
    await begin(memory.record);
    server.people.bring('message', {
      message_id: 1,
      date: 1,
      chat: { id: -4, type: 'group' },
      from: { id: 1 },
      text: 'x',
    });
    server.people.bring('message', null);
    server.people.say(1, 'a');
    await until(() => memory.kept.length === 1 && server.queue.pending.length === 0);
  });

  it('sees ids that start anew, and lower, after an idle week', async () => {
    const memory = new Memory();
    await begin(memory.record, { pollSeconds: 1 });
    server.people.say(1, 'before');
    await until(() => server.queue.pending.length === 0);
    await until(() => server.record.of('getUpdates').at(-1)?.values['offset'] === undefined);
    server.queue.jumpTo(4_000_000);
    const low = server.people.say(1, 'after');
    await until(() => memory.kept.length === 2);
    expect(memory.ids).toContain(low);
  });

  it('says that another copy took its poll, and takes up again', async () => {
    const memory = new Memory();
    const told: string[] = [];
    const { channel, log } = await begin(memory.record, { tellTrouble: (trouble) => void told.push(trouble) });
    await until(() => server.record.of('getUpdates').length > 0);
    const other = new AbortController();
    const asked = fetch(`${server.root}/bot${server.token}/getUpdates?timeout=20`, { signal: other.signal }).catch(
      () => null,
    );
    await until(() => channel.health().state === 'second-copy');
    expect(log.lines).toContainEqual(
      expect.stringMatching(/^error a poll of Telegram failed \{"why":"second-copy","state":"second-copy",/),
    );
    expect(told).toEqual(['telegram-second-copy']);
    await until(() => server.record.of('getUpdates').length === 3);
    server.people.say(1, 'a');
    await until(() => memory.kept.length === 1 && channel.health().state === 'polling');
    other.abort();
    await asked;
  });

  it('says that its token is refused', async () => {
    const { channel } = channelAt({ root: server.root, token: '7000000001:wrong' });
    running.push(channel);
    expect(await channel.check()).toBe('telegram-token-refused');
    await channel.start(new Memory().record);
    server.faults.add({ method: 'getWebhookInfo', times: 1, trouble: { kind: 'delay', ms: 1 } });
    expect(channel.health()).toMatchObject({ lastPollAt: null, username: null });
  });

  it('says that nobody answers', async () => {
    const gone = await startStandIn();
    await gone.close();
    const { channel } = channelAt(gone);
    expect(await channel.check()).toBe('telegram-unreachable');
  });

  it('works on when the server comes back', async () => {
    const memory = new Memory();
    for (const trouble of [
      { kind: 'refuse', code: 502, description: 'Bad Gateway' },
      { kind: 'reset', processed: false },
      { kind: 'truncate' },
    ] as const) {
      server.faults.add({ method: 'getUpdates', times: 2, trouble });
    }
    server.faults.add({
      method: 'getUpdates',
      trouble: {
        kind: 'refuse',
        code: 429,
        description: 'Too Many Requests: retry after 1',
        parameters: { retry_after: 1 },
      },
    });
    const { channel } = await begin(memory.record);
    server.people.say(1, 'a');
    await until(() => memory.kept.length === 1);
    expect(channel.health()).toMatchObject({ state: 'polling', username: 'stand_in_bot' });
    expect(Date.now() - channel.health().lastPollAt!).toBeLessThan(5000);
  });

  it('takes a webhook away that would keep it from polling', async () => {
    const memory = new Memory();
    await fetch(`${server.root}/bot${server.token}/setWebhook?url=https://old.example/`);
    const { log } = await begin(memory.record);
    server.people.say(1, 'a');
    await until(() => memory.kept.length === 1);
    expect(log.lines).toContain('warn a webhook was removed, to poll instead {}');
  });
});

/** The last word may take its time on a busy machine; asked again within three seconds, the server would hold it back. */
const patient: Partial<TelegramDeps> = { waits: { ...quickWaits, farewellMs: 3000 } };

describe('an orderly stop', () => {
  it('leaves nothing to be handed out twice', async () => {
    const memory = new Memory();
    const { channel } = await begin(memory.record, patient);
    for (let i = 0; i < 20; i++) server.people.say(i % 3, `${i}`);
    await until(() => memory.kept.length === 20);
    server.clock.advance(4000);
    await channel.stop();
    expect(server.queue.pending).toEqual([]);
    expect(channel.health().state).toBe('stopped');
    await begin(memory.record);
    server.people.say(1, 'after');
    await until(() => memory.kept.length === 21);
    expect(memory.repeats).toEqual([]);
  });

  it('lets a recording under way finish', async () => {
    const memory = new Memory();
    let begun = false;
    const { channel } = await begin(async (incoming) => {
      begun = true;
      await new Promise((resolve) => setTimeout(resolve, 60));
      return memory.record(incoming);
    }, patient);
    server.people.say(1, 'a');
    await until(() => begun);
    server.clock.advance(4000);
    await channel.stop();
    expect(memory.kept).toHaveLength(1);
    expect(server.queue.pending).toEqual([]);
  });
});

/** A process that dies does nothing more: its recordings never end and its calls never come back. */
describe('a death between any two steps of intake', () => {
  const deaths: Readonly<Record<string, (memory: Memory) => (incoming: Incoming) => Promise<'new' | 'seen'>>> = {
    'after the poll, before anything is recorded': () => () => forever(),
    'half-way through a batch': (memory) => (incoming) =>
      memory.kept.length < 3 ? memory.record(incoming) : forever(),
    'once all is durable, before the recorder hears of it': (memory) => async (incoming) => {
      await memory.record(incoming);
      return forever();
    },
  };
  it.each(Object.entries(deaths))('%s', async (_point, die) => {
    const memory = new Memory();
    const sent = [...Array(8).keys()].map((i) => server.people.say(i % 3, `${i}`)!);
    const { channel } = channelAt(server);
    dead.push(channel);
    await channel.start(die(memory));
    await until(() => server.record.of('getUpdates').some(({ code }) => code === 200));
    await new Promise((resolve) => setTimeout(resolve, 20));
    await begin(memory.record);
    await until(() => server.queue.pending.length === 0);
    expect(memory.sortedIds).toEqual(sent);
    for (const from of ['0', '1', '2']) {
      const ids = memory.kept.filter((one) => one.from === from).map(({ updateId }) => updateId);
      expect(ids).toEqual(ids.toSorted((a, b) => Number(a) - Number(b)));
    }
  });

  it.each([true, false])('while the confirming poll is on its way, arrived: %s', async (processed) => {
    const memory = new Memory();
    const sent = [...Array(8).keys()].map((i) => server.people.say(i % 3, `${i}`)!);
    server.faults.add({ method: 'getUpdates', after: 1, times: 1, trouble: { kind: 'hang', processed } });
    const { channel } = channelAt(server, { pollSeconds: 0 });
    dead.push(channel);
    await channel.start(memory.record);
    await until(() => server.record.of('getUpdates').length === 2);
    await begin(memory.record);
    const after = server.people.say(5, 'after')!;
    await until(() => memory.ids.includes(after));
    expect(memory.sortedIds).toEqual([...sent, after]);
    expect(memory.repeats).toHaveLength(processed ? 0 : 8);
  });
});
