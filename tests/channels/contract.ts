/** What every channel owes the house, whatever it is made of: a new one adds a row to contract.test.ts and is held to all of it. */
import { setTimeout as pause } from 'node:timers/promises';
import { expect, it } from 'vitest';
import type { Channel, ChannelName, Incoming, Outgoing } from '../../src/messages.ts';
import { repeatsDoNoHarm } from '../../src/delivery/retry.ts';

/** A channel and the person at its other end. */
export interface Ends {
  readonly channel: Channel;
  /** Where answers go before anyone has written. */
  readonly chat: string;
  /** The person writes a line; resolves once it is on its way. Null where people only read. */
  readonly write: ((text: string) => Promise<unknown>) | null;
  /** What has come to the person, one text a message, whatever it looks like. */
  seen(): readonly string[];
  end(): Promise<unknown>;
}

const long = 60_000;
const inTime = { timeout: 20_000 };

export function holdsTheContract(name: ChannelName, open: () => Promise<Ends>, more: Partial<Outgoing> = {}): void {
  const between = async (act: (ends: Ends, kept: Incoming[]) => Promise<void>): Promise<void> => {
    const ends = await open();
    const kept: Incoming[] = [];
    await ends.channel.start((incoming) => {
      kept.push(incoming);
      return Promise.resolve('new');
    });
    try {
      await act(ends, kept);
    } finally {
      await ends.channel.stop();
      await ends.end();
    }
  };
  /** As the house answers: where what was written came from. */
  const answerTo = async ({ channel, chat, write }: Ends, kept: readonly Incoming[]): Promise<Outgoing> => {
    await write?.('hello');
    if (write) await expect.poll(() => kept.length, inTime).toBe(1);
    const paragraphs = ['First the dong ding.', '再來是龍井。'];
    const rest = { id: 'row-1', language: 'en', choices: [] } as const;
    return { ...rest, channel: channel.name, chat: kept[0]?.chat ?? chat, paragraphs, ...more };
  };

  it('has a name of its own', { timeout: long }, () =>
    between(({ channel }) => {
      expect(channel.name).toBe(name);
      return Promise.resolve();
    }),
  );

  it('takes in each line once, in order, under its name', { timeout: long }, ({ skip }) =>
    between(async ({ channel, write }, kept) => {
      skip(!write, 'people only read there');
      for (const [n, text] of ['long jing', '龍井 100 毫升'].entries()) {
        await write!(text);
        await expect.poll(() => kept.length, inTime).toBe(n + 1);
        expect(kept[n]).toMatchObject({ channel: channel.name, what: { kind: 'text', text } });
      }
      expect(kept[0]).toMatchObject({ from: kept[1]?.from, chat: kept[1]?.chat });
      expect(new Set(kept.map(({ updateId }) => updateId)).size).toBe(2);
      for (const { updateId, receivedAt } of kept) {
        expect(updateId).not.toBe('');
        expect(Number.isInteger(receivedAt)).toBe(true);
      }
    }),
  );

  it('shows all that is said, and tells that it is sent', { timeout: long }, () =>
    between(async (ends, kept) => {
      const message = await answerTo(ends, kept);
      const sent = await ends.channel.send(message);
      expect(sent).toMatchObject({ outcome: 'sent', ref: expect.stringMatching(/./) as string });
      await expect.poll(() => ends.seen().length, inTime).toBe(1);
      for (const paragraph of message.paragraphs) expect(ends.seen()[0]).toContain(paragraph);
    }),
  );

  it('tells that it begins before a byte goes out, unless a repeat does no harm', { timeout: long }, ({ skip }) =>
    between(async (ends, kept) => {
      skip(repeatsDoNoHarm[ends.channel.name], 'a repeat is known there by its id');
      const message = await answerTo(ends, kept);
      let begin!: () => void;
      const begun = new Promise<void>((resolve) => (begin = resolve));
      let asked = 0;
      const sending = ends.channel.send(message, () => {
        asked += 1;
        return begun;
      });
      await expect.poll(() => asked, inTime).toBe(1);
      await pause(150);
      expect(ends.seen()).toEqual([]);
      begin();
      expect(await sending).toMatchObject({ outcome: 'sent' });
      await expect.poll(() => ends.seen().length, inTime).toBe(1);
    }),
  );

  it('takes nothing in once it has stopped, and may be stopped again', { timeout: long }, () =>
    between(async ({ channel, write }, kept) => {
      await write?.('in time');
      if (write) await expect.poll(() => kept.length, inTime).toBe(1);
      const { length } = kept;
      await channel.stop();
      const late = async (): Promise<unknown> => write?.('too late');
      await late().catch(() => undefined);
      await pause(150);
      expect(kept).toHaveLength(length);
    }),
  );
}
