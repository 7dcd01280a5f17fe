/** Two servers for the page's measurement, each run as a process of its own: `house` is ours, `bare` is hono with the same commit and nothing else. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { getRequestListener } from '@hono/node-server';
import { Hono } from 'hono';
import { streamSSE, type SSEStreamingApi } from 'hono/streaming';
import { makeApp } from '../../src/app.ts';
import { muteWeb } from '../channels/web/mute-web.ts';
import { systemClock } from '../../src/clock.ts';
import { step } from '../../src/core/flow/step.ts';
import { makeLog } from '../../src/log.ts';
import type { Outgoing } from '../../src/messages.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { book, say } from './six-questions/flow.ts';
import { openFloor } from './six-questions/floor.ts';

interface Served {
  readonly port: number;
  /** One message to each open stream. */
  fanOut(): void;
  stop(): Promise<void>;
}

const free = { burst: 1e9, perSecond: 1e9 };
const open = {
  postsPerSheet: free,
  postsPerAddress: free,
  pagesPerAddress: free,
  streams: 1e4,
  streamsPerAddress: 1e4,
};
const paragraphs = ['Pour off now.', 'The next one takes twenty seconds.'];

async function house(folder: string): Promise<Served> {
  const log = makeLog('warn');
  const web = muteWeb({
    log,
    limits: open,
    pageFolder: fileURLToPath(new URL('../../../page', import.meta.url)),
  });
  const app = makeApp({
    store: openSqliteStore(join(folder, 'house.sqlite')),
    step: (state, event, around) => step(book, state, event, around),
    say,
    channels: [web],
    clock: systemClock,
    log,
    keepDays: 90,
  });
  await app.start();
  let sent = 0;
  const message = (chat: string): Outgoing => {
    const about = { channel: 'web', chat, language: 'en', choices: [] } as const;
    return { ...about, id: `${sent++}-fan`, paragraphs };
  };
  return {
    port: Number(new URL(web.address()).port),
    fanOut() {
      for (const chat of chats) void web.send(message(chat));
    },
    stop: () => app.stop(),
  };
}

/** Told by the other side: the chats of the streams it has opened. */
let chats: readonly string[] = [];

async function bare(folder: string): Promise<Served> {
  const talk = await openFloor(folder);
  const app = new Hono();
  const streams = new Set<SSEStreamingApi>();
  app.post('/sheet', async (c) => {
    const { updateId, what } = await c.req.json<{ updateId: string; what: { text: string } }>();
    await talk.tell(Number(/\d+/.exec(c.req.header('cookie') ?? '')?.[0]), what.text);
    return c.json({ updateId }, 202);
  });
  app.get('/stream', (c) =>
    streamSSE(c, async (stream) => {
      streams.add(stream);
      await stream.writeSSE({ event: 'caught-up', data: '' });
      await new Promise<void>((resolve) => stream.onAbort(resolve));
      streams.delete(stream);
    }),
  );
  const listener = getRequestListener(app.fetch);
  const server = createServer((asked, answer) => void listener(asked, answer));
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  let sent = 0;
  return {
    port: (server.address() as AddressInfo).port,
    fanOut() {
      for (const stream of streams) {
        const said = { id: `${sent++}-fan`, language: 'en', paragraphs, choices: [] };
        void stream.writeSSE({ id: said.id, event: 'said', data: JSON.stringify(said) });
      }
    },
    stop: () => closed(server, talk),
  };
}

async function closed(server: Server, talk: { close(): Promise<void> }): Promise<void> {
  server.closeAllConnections();
  server.close();
  await talk.close();
}

const folder = mkdtempSync(join(tmpdir(), 'ninthpour-bench-'));
const served = await (process.argv[2] === 'house' ? house(folder) : bare(folder));
function stop(): void {
  void served.stop().finally(() => {
    rmSync(folder, { recursive: true });
    process.exit(0);
  });
}

process.on('message', (told: { readonly chats?: readonly string[]; readonly do?: 'fan-out' | 'stop' }) => {
  if (told.chats) chats = told.chats;
  if (told.do === 'fan-out') served.fanOut();
  if (told.do === 'stop') stop();
});
// Whoever measured is gone.
process.once('disconnect', stop);
process.send?.({ port: served.port });
