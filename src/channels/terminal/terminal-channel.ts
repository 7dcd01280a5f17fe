/** A person at a terminal, and in a played conversation the shopkeeper beside them: lines in, lines out. Where they come from and go to is given. */
import { randomUUID } from 'node:crypto';
import type { Channel, Choice, Incoming, What } from '../../messages.ts';
import { drawn, readLine, type DrawLadder } from './line.ts';

/** There is one terminal, and whoever sits at it is one person. */
export type Sitter = 'me' | 'shop';

export interface TerminalDeps {
  readonly deviceLanguage: string | null;
  readonly now: () => number;
  readonly drawLadder: DrawLadder;
  readonly show: (lines: readonly string[], who: Sitter) => void;
}

export interface TerminalChannel extends Channel {
  /** Resolves once the line is durable. */
  enter(line: string, who?: Sitter): Promise<void>;
  /** What happens when someone comes in without a word. */
  open(): Promise<void>;
}

export function makeTerminalChannel({ deviceLanguage, now, drawLadder, show }: TerminalDeps): TerminalChannel {
  let record: ((incoming: Incoming) => Promise<unknown>) | null = null;
  const shown = new Map<string, readonly Choice[]>();

  const takeIn = async (what: What, who: Sitter): Promise<void> => {
    await record?.({
      channel: 'terminal',
      from: who,
      chat: who,
      updateId: randomUUID(),
      receivedAt: now(),
      ...(deviceLanguage === null ? {} : { deviceLanguage }),
      what,
    });
  };
  return {
    name: 'terminal',
    start(recordIncoming) {
      record = recordIncoming;
      return Promise.resolve();
    },
    async enter(line, who = 'me') {
      const what = readLine(line, shown.get(who) ?? []);
      shown.delete(who);
      await takeIn(what, who);
    },
    open: () => takeIn({ kind: 'open', payload: '' }, 'me'),
    send(message) {
      // What only closes an earlier message has nothing to say where nothing can be taken back.
      if (message.replaces !== undefined && message.choices.length === 0 && !message.countdown) {
        return Promise.resolve({ outcome: 'sent', ref: message.id });
      }
      if (message.choices.length > 0) shown.set(message.chat, message.choices);
      show(drawn(message, drawLadder), message.chat === 'shop' ? 'shop' : 'me');
      return Promise.resolve({ outcome: 'sent', ref: message.id });
    },
    stop() {
      record = null;
      return Promise.resolve();
    },
  };
}
