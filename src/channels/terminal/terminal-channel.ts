/** One person at a terminal: lines in, lines out. Where they come from and go to is given. */
import { randomUUID } from 'node:crypto';
import type { Channel, Choice, Incoming, What } from '../../messages.ts';
import { drawn, readLine, type DrawLadder } from './line.ts';

export interface TerminalDeps {
  readonly deviceLanguage: string | null;
  readonly now: () => number;
  readonly drawLadder: DrawLadder;
  readonly show: (lines: readonly string[]) => void;
}

export interface TerminalChannel extends Channel {
  /** Resolves once the line is durable. */
  enter(line: string): Promise<void>;
  /** What happens when someone comes in without a word. */
  open(): Promise<void>;
}

/** There is one terminal, and whoever sits at it is one person. */
const me = { channel: 'terminal', from: 'me', chat: 'me' } as const;

export function makeTerminalChannel({ deviceLanguage, now, drawLadder, show }: TerminalDeps): TerminalChannel {
  let record: ((incoming: Incoming) => Promise<unknown>) | null = null;
  let shown: readonly Choice[] = [];

  const takeIn = async (what: What): Promise<void> => {
    await record?.({
      ...me,
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
    async enter(line) {
      const what = readLine(line, shown);
      shown = [];
      await takeIn(what);
    },
    open: () => takeIn({ kind: 'open', payload: '' }),
    send(message) {
      if (message.choices.length > 0) shown = message.choices;
      show(drawn(message, drawLadder));
      return Promise.resolve({ outcome: 'sent', ref: message.id });
    },
    stop() {
      record = null;
      return Promise.resolve();
    },
  };
}
