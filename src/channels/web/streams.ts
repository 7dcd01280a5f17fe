/** The open event streams: who listens, what they missed, and what goes out to them now. */
import { once } from 'node:events';
import type { ServerResponse } from 'node:http';
import type { Told } from './page/wire.ts';
import type { WebLimits } from './limits.ts';

export interface Listener {
  readonly chat: string;
  readonly device: string;
  readonly address: string;
  readonly response: ServerResponse;
}

export interface Past {
  readonly told: readonly Told[];
  /** More was said before it than is told. */
  readonly isCut: boolean;
}

export interface Streams {
  /** Null when this listener may be let in; otherwise which cap is reached. */
  full(chat: string, address: string): 'sheet' | 'address' | 'all' | null;
  /** Lets in, tells what was missed, then keeps the stream open. Resolves once caught up or gone. */
  follow(listener: Listener, afterId: string | null, past: () => Promise<Past>): Promise<void>;
  push(chat: string, told: Told): void;
  /** No more is told to this device. */
  end(device: string): void;
  count(): number;
  close(): void;
}

interface Stream extends Listener {
  /** What arrives while the past is still being told; null once caught up. */
  held: Told[] | null;
}

/** How long, and how much, of what was pushed is kept for a stream that opens just then, before their rows say "sent". */
const justNowMs = 10_000;
const justNowCount = 4_096;

export function makeStreams(limits: WebLimits, now: () => number): Streams {
  const streams = new Set<Stream>();
  const byChat = new Map<string, Set<Stream>>();
  const justNow: { readonly chat: string; readonly told: Told; readonly at: number }[] = [];

  const add = (stream: Stream): void => {
    streams.add(stream);
    byChat.set(stream.chat, (byChat.get(stream.chat) ?? new Set()).add(stream));
  };
  const remove = (stream: Stream): void => {
    streams.delete(stream);
    const ofChat = byChat.get(stream.chat);
    ofChat?.delete(stream);
    if (ofChat?.size === 0) byChat.delete(stream.chat);
  };
  const drop = (stream: Stream): void => {
    remove(stream);
    stream.response.destroy();
  };
  const keepJustNow = (chat: string, told: Told): void => {
    const at = now();
    justNow.push({ chat, told, at });
    while (justNow.length > justNowCount || (justNow[0]?.at ?? at) <= at - justNowMs) justNow.shift();
  };
  const writeNow = (stream: Stream, text: string): void => {
    stream.response.write(text);
    if (stream.response.writableLength > limits.backlogBytes) drop(stream);
  };
  const countFrom = (address: string): number => {
    let count = 0;
    for (const stream of streams) if (stream.address === address) count++;
    return count;
  };

  const tell = async (stream: Stream, all: readonly Told[]): Promise<void> => {
    for (const told of all) {
      if (!streams.has(stream)) return;
      if (!stream.response.write(asEvent(told))) await drained(stream.response);
    }
  };

  const beat = setInterval(() => {
    for (const stream of streams) writeNow(stream, 'event: beat\ndata:\n\n');
  }, limits.beatMs);
  beat.unref();

  return {
    full(chat, address) {
      if (streams.size >= limits.streams) return 'all';
      if ((byChat.get(chat)?.size ?? 0) >= limits.streamsPerSheet) return 'sheet';
      return countFrom(address) >= limits.streamsPerAddress ? 'address' : null;
    },
    async follow(listener, afterId, past) {
      const stream: Stream = { ...listener, held: [] };
      add(stream);
      stream.response.on('close', () => remove(stream));
      // Taken in the same moment as the stream is added: whatever is pushed later is held for it.
      const recent = justNow.filter((entry) => entry.chat === stream.chat).map((entry) => entry.told);
      const seen = recent.findIndex((told) => nameOf(told) === afterId) + 1;
      const unseen = recent.slice(seen);
      const { told: missed, isCut } = await past();
      const known = new Set(missed.map(nameOf));
      await tell(stream, missed);
      while (streams.has(stream)) {
        const waiting = [...unseen.splice(0), ...(stream.held ?? [])].filter((told) => !known.has(nameOf(told)));
        stream.held = [];
        for (const told of waiting) known.add(nameOf(told));
        if (waiting.length === 0) break;
        await tell(stream, waiting);
      }
      stream.held = null;
      if (streams.has(stream)) writeNow(stream, `event: caught-up\ndata:${isCut ? ' cut' : ''}\n\n`);
    },
    push(chat, told) {
      keepJustNow(chat, told);
      const event = asEvent(told);
      for (const stream of byChat.get(chat) ?? []) {
        if (stream.held === null) writeNow(stream, event);
        else if (stream.held.push(told) > justNowCount) drop(stream);
      }
    },
    end(device) {
      for (const stream of streams) {
        if (stream.device !== device) continue;
        remove(stream);
        stream.response.end();
      }
    },
    count: () => streams.size,
    close() {
      clearInterval(beat);
      for (const stream of streams) stream.response.end();
      streams.clear();
      byChat.clear();
    },
  };
}

const nameOf = (told: Told): string => ('said' in told ? told.said.id : told.wrote.line);

/** JSON has no raw line break, so one data line holds it. Only messages are places to go on from. */
function asEvent(told: Told): string {
  if ('wrote' in told) return `event: wrote\ndata: ${JSON.stringify(told.wrote)}\n\n`;
  const { said } = told;
  if (!/^[\x21-\x7e]{1,200}$/.test(said.id)) throw new Error('an outgoing id must be printable ASCII');
  return `id: ${said.id}\nevent: said\ndata: ${JSON.stringify(said)}\n\n`;
}

async function drained(response: ServerResponse): Promise<void> {
  const gone = new AbortController();
  const onClose = (): void => gone.abort();
  response.once('close', onClose);
  await once(response, 'drain', { signal: gone.signal }).catch(() => undefined);
  response.off('close', onClose);
}
