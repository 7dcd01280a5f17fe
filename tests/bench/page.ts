/** The page's server beside bare hono with the same commit: posts a second, and how soon 2,000 open streams are told something. */
import { fork, type ChildProcess } from 'node:child_process';
import { createHash } from 'node:crypto';
import { once } from 'node:events';
import { Agent, request, type IncomingMessage } from 'node:http';
import { fileURLToPath } from 'node:url';
import { less, more, type Figure, type Row, type Size } from './figure.ts';
import { inTurns, median, Times } from './rounds.ts';
import { messages } from './six-questions/questions.ts';

interface Server {
  readonly child: ChildProcess;
  readonly port: number;
}

async function serve(name: 'house' | 'bare'): Promise<Server> {
  const child = fork(fileURLToPath(new URL('page-servers.js', import.meta.url)), [name]);
  const [{ port }] = (await once(child, 'message')) as [{ port: number }];
  return { child, port };
}

async function stop({ child }: Server): Promise<void> {
  child.send({ do: 'stop' });
  await once(child, 'exit');
}

/** A cookie of the right shape, with the person's number in it. */
const sheetOf = (person: number): string => `${person}`.padEnd(43, 'x');
const chatOf = (person: number): string =>
  createHash('sha256')
    .update(`sheet ${sheetOf(person)}`)
    .digest('base64url');

const connections = 32;

interface Load {
  readonly perSecond: number;
  readonly times: readonly number[];
}

async function postMany({ port }: Server, posts: number): Promise<Load> {
  const agent = new Agent({ keepAlive: true, maxSockets: connections });
  const times: number[] = [];
  let next = 0;
  const began = performance.now();
  await Promise.all(
    Array.from({ length: connections }, async () => {
      while (next < posts) {
        const n = next++;
        const at = performance.now();
        await post(agent, port, n);
        times.push(performance.now() - at);
      }
    }),
  );
  const seconds = (performance.now() - began) / 1000;
  agent.destroy();
  return { perSecond: posts / seconds, times };
}

let posted = 0;

async function post(agent: Agent, port: number, n: number): Promise<void> {
  const person = Math.floor(n / messages.length);
  const what = { kind: 'text', text: messages[n % messages.length] };
  const body = JSON.stringify({ updateId: `measured-${posted++}`.padEnd(20, '-'), language: 'en', what });
  const headers = {
    origin: `http://127.0.0.1:${port}`,
    'content-type': 'application/json',
    'content-length': body.length,
    cookie: `sheet=${sheetOf(person)}`,
  };
  const sending = request({ port, host: '127.0.0.1', path: '/sheet', method: 'POST', agent, headers });
  sending.end(body);
  const [response] = (await once(sending, 'response')) as [IncomingMessage];
  response.resume();
  if (response.statusCode !== 202) throw new Error(`a post was answered with ${response.statusCode}`);
  await once(response, 'end');
}

interface Streams {
  /** Resolves when every stream has been told once more. */
  told(): Promise<void>;
  close(): void;
}

async function openStreams({ port }: Server, count: number): Promise<Streams> {
  const agent = new Agent({ maxSockets: Infinity });
  let due = 0;
  let arrived: (() => void) | null = null;
  const opened = async (person: number): Promise<void> => {
    const headers = { cookie: `sheet=${sheetOf(person)}` };
    const asking = request({ port, host: '127.0.0.1', path: '/stream', agent, headers });
    asking.end();
    const [response] = (await once(asking, 'response')) as [IncomingMessage];
    await new Promise<void>((caughtUp) => {
      response.on('data', (chunk: Buffer) => {
        const text = chunk.toString();
        if (text.includes('caught-up')) caughtUp();
        if (text.includes('event: said') && --due === 0) arrived?.();
      });
    });
    response.on('error', () => undefined);
  };
  for (let from = 0; from < count; from += 100) {
    await Promise.all(Array.from({ length: Math.min(100, count - from) }, (_, i) => opened(from + i)));
  }
  return {
    told() {
      due = count;
      return new Promise((resolve) => (arrived = resolve));
    },
    close: () => agent.destroy(),
  };
}

/** Milliseconds until the last of so many streams was told. */
async function fanOut(server: Server, count: number, times: number): Promise<readonly number[]> {
  const streams = await openStreams(server, count);
  server.child.send({ chats: Array.from({ length: count }, (_, person) => chatOf(person)) });
  const took: number[] = [];
  for (let n = 0; n <= times; n++) {
    const told = streams.told();
    const began = performance.now();
    server.child.send({ do: 'fan-out' });
    await told;
    if (n > 0) took.push(performance.now() - began);
  }
  streams.close();
  return took;
}

const perSecond = (loads: readonly Load[]): number => median(loads.map((one) => one.perSecond));
const p99 = (loads: readonly Load[]): number => new Times(loads.flatMap((one) => one.times)).p99;

async function measure({ quick }: Size): Promise<readonly Figure[]> {
  const [rounds, posts, streams, tellings] = quick ? [1, 14, 5, 1] : [5, 2_100, 2_000, 7];
  const servers = { house: await serve('house'), bare: await serve('bare') };
  const load = await inTurns(rounds, {
    house: () => postMany(servers.house, posts),
    bare: () => postMany(servers.bare, posts),
  });
  const told = {
    house: await fanOut(servers.house, streams, tellings),
    bare: await fanOut(servers.bare, streams, tellings),
  };
  await Promise.all(Object.values(servers).map(stop));
  const who = 'bare hono, same commit';
  const what = `posts, ${connections} connections`;
  return [
    more({ what, unit: 'posts/s', ours: perSecond(load.house), who, theirs: perSecond(load.bare), atLeast: 0.8 }),
    less({ what: `${what}, p99`, unit: 'ms', ours: p99(load.house), who, theirs: p99(load.bare) }),
    less({
      what: `${streams.toLocaleString('en')} open streams told`,
      unit: 'ms',
      ours: median(told.house),
      who,
      theirs: median(told.bare),
      atLeast: 0.8,
    }),
  ];
}

export const page: Row = { name: 'page', about: "the page's server", measure };
