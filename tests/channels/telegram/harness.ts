/** A channel wired to a stand-in, with a memory that counts and a log that is kept. */
import type { Log, LogFields } from '../../../src/log.ts';
import type { Incoming, Outgoing } from '../../../src/messages.ts';
import type { Profiles, ProfileWords } from '../../../src/channels/telegram/profile.ts';
import {
  makeTelegramChannel,
  type TelegramChannel,
  type TelegramDeps,
} from '../../../src/channels/telegram/telegram.ts';
import type { StandIn } from './bot-api/server.ts';

export interface KeptLog extends Log {
  readonly lines: string[];
}

export function keepLog(): KeptLog {
  const lines: string[] = [];
  const at = (level: string) => (event: string, fields?: LogFields) =>
    void lines.push(`${level} ${event} ${JSON.stringify(fields ?? {})}`);
  return { lines, debug: at('debug'), info: at('info'), warn: at('warn'), error: at('error') };
}

/** Keeps each update once, as the store does. */
export class Memory {
  readonly kept: Incoming[] = [];
  readonly repeats: string[] = [];

  readonly record = async (incoming: Incoming): Promise<'new' | 'seen'> => {
    await Promise.resolve();
    if (this.kept.some(({ updateId }) => updateId === incoming.updateId)) {
      this.repeats.push(incoming.updateId);
      return 'seen';
    }
    this.kept.push(incoming);
    return 'new';
  };

  get ids(): readonly number[] {
    return this.kept.map(({ updateId }) => Number(updateId));
  }

  get sortedIds(): readonly number[] {
    return this.ids.toSorted((a, b) => a - b);
  }
}

const words = (name: string, says: string): ProfileWords => ({
  name,
  description: `${name}: what it does`,
  about: `${name}: about`,
  commands: [
    { command: 'brew', description: `${name}: brew`, says },
    { command: 'start_over', description: 'x', says: `${says} again` },
  ],
});

export const testProfiles: Profiles = {
  en: words('Tea Room', 'brew tea'),
  'zh-Hant': words('茶室', '沖茶'),
  'zh-Hans': words('茶室', '冲茶'),
};

export const quickWaits = { firstMs: 10, longestMs: 40, conflictMs: 40, tokenMs: 40, farewellMs: 50 };

export function channelAt(
  server: Pick<StandIn, 'root' | 'token'>,
  more: Partial<TelegramDeps> = {},
): { readonly channel: TelegramChannel; readonly log: KeptLog } {
  const log = keepLog();
  const channel = makeTelegramChannel({
    token: server.token,
    apiRoot: server.root,
    mode: { kind: 'polling' },
    log,
    now: () => Date.now(),
    profiles: testProfiles,
    waits: quickWaits,
    sendTimeoutMs: 10_000,
    ...more,
  });
  return { channel, log };
}

let rows = 0;

export function outgoing(chat: number, more: Partial<Outgoing> = {}): Outgoing {
  return {
    id: `row-${++rows}`,
    channel: 'telegram',
    chat: String(chat),
    language: 'en',
    paragraphs: ['Hello'],
    choices: [],
    ...more,
  };
}

export async function until(holds: () => boolean, withinMs = 15_000): Promise<void> {
  for (const end = Date.now() + withinMs; !holds();) {
    if (Date.now() > end) throw new Error('waited in vain');
    await new Promise((resolve) => setTimeout(resolve, 2));
  }
}
