/** A channel that does as told: keeps what it was sent, and answers with the outcomes it was given. */
import type { Channel, ChannelName, Incoming, Outgoing, Sent } from '../../src/messages.ts';

export interface FakeChannel extends Channel {
  readonly sent: Outgoing[];
  /** Answers of the next sendings; then all are sent. */
  readonly outcomes: (Sent | (() => Promise<Sent>))[];
  take(incoming: Incoming): Promise<'new' | 'seen'>;
}

export function fakeChannel(name: ChannelName = 'web'): FakeChannel {
  let record: ((incoming: Incoming) => Promise<'new' | 'seen'>) | null = null;
  const sent: Outgoing[] = [];
  const outcomes: FakeChannel['outcomes'] = [];
  return {
    name,
    sent,
    outcomes,
    start(given) {
      record = given;
      return Promise.resolve();
    },
    take(incoming) {
      if (!record) throw new Error('not open');
      return record(incoming);
    },
    async send(message) {
      sent.push(message);
      const outcome = outcomes.shift() ?? { outcome: 'sent', ref: message.id };
      return typeof outcome === 'function' ? outcome() : outcome;
    },
    stop: () => Promise.resolve(),
  };
}

export const wordsOf = (messages: readonly Outgoing[]): readonly string[] =>
  messages.map(({ paragraphs }) => paragraphs.join(' '));
