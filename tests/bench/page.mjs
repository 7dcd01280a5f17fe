// The page's server under load, with every line synced to the disk: so many connections, each with its sheet and its open
// stream, post lines one after another. Times are from the post to its 202. Usage: node tests/bench/page.mjs [connections] [seconds]
import { mkdtempSync, rmSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { fork } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

if (process.argv[2] === 'serve') await serve(process.argv[3]);
else await load(Number(process.argv[2] ?? 32), Number(process.argv[3] ?? 10));

/** In a process of its own, so that the load does not share its event loop. */
async function serve(folder) {
  const { makeApp } = await import('../../dist/app.js');
  const { contentOf, sayIn, stepIn } = await import('../../dist/own-content.js');
  const { makeWebChannel } = await import('../../dist/channels/web/web-channel.js');
  const { systemClock } = await import('../../dist/clock.js');
  const { readConfig } = await import('../../dist/config.js');
  const { makeHistory } = await import('../../dist/delivery/history.js');
  const { makeLog } = await import('../../dist/log.js');
  const { lineOf } = await import('../../dist/store/line-name.js');
  const { openSqliteStore } = await import('../../dist/store/sqlite/store.js');
  const content = contentOf(readConfig({}));
  const store = openSqliteStore(join(folder, 'shop.sqlite'));
  const [say, log] = [sayIn(content), makeLog('silent')];
  const history = makeHistory({ store, say, log });
  const pageWords = (language) =>
    Object.fromEntries(
      content.words
        .keys()
        .filter((key) => key.startsWith('page-'))
        .map((key) => [key, say(language, { key, values: {} })]),
    );
  // One machine stands for all the people: the limits of one address and one sheet would end it at once.
  const free = { burst: 1e9, perSecond: 1e9 };
  const web = makeWebChannel({
    host: '127.0.0.1',
    port: 0,
    clock: systemClock,
    log,
    passed: (chat, after) => history({ channel: 'web', chat }, after),
    lineOf: (updateId) => lineOf({ channel: 'web', updateId }),
    label: () => Promise.resolve(null),
    pageWords,
    marks: { add: async () => {}, has: async () => false },
    secureCookies: false,
    publicOrigin: null,
    limits: { postsPerSheet: free, postsPerAddress: free, pagesPerAddress: free, streamsPerAddress: 4_000 },
  });
  const app = makeApp({ store, step: stepIn(content), say, channels: [web], clock: systemClock, log, keepDays: 1 });
  await app.start();
  process.send({ address: web.address() });
  let before = process.cpuUsage();
  const tell = (part) => process.send({ ...part, cpuMs: sumMs(process.cpuUsage(before)) });
  process.on('message', (word) => {
    if (word === 'begin') before = process.cpuUsage();
    if (word === 'end') tell({});
    if (word === 'stop') {
      const rssMb = Math.round(process.memoryUsage().rss / 1e6);
      void app.stop().then(() => {
        tell({ rssMb });
        process.disconnect();
      });
    }
  });
}

const sumMs = ({ user, system }) => (user + system) / 1000;

async function load(connections, seconds) {
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-page-load-'));
  const server = fork(fileURLToPath(import.meta.url), ['serve', folder]);
  const { address } = await told(server);
  const agent = new Agent({ keepAlive: true, maxSockets: connections });
  const ask = (path, { method = 'GET', headers = {}, body } = {}) =>
    new Promise((resolve, reject) => {
      const asking = request(new URL(path, address), { method, headers, agent }, (answer) => {
        answer.resume();
        answer.on('end', () => resolve(answer));
      });
      asking.on('error', reject);
      asking.end(body);
    });
  const people = await Promise.all(Array.from({ length: connections }, () => visitor(ask, address)));
  const texts = [
    'tieguanyin in a 110 ml gaiwan',
    'why?',
    'actually 200 ml',
    '蓋碗 120 ml 東方美人',
    '碧螺春，250毫升玻璃壺',
  ];
  const tookMs = [];
  const wrong = new Map();
  server.send('begin');
  const until = performance.now() + seconds * 1000;
  const post = async (cookie, n) => {
    const what = { kind: 'text', text: texts[n % texts.length] };
    const body = JSON.stringify({ updateId: randomBytes(16).toString('hex'), language: 'en', what });
    const headers = { cookie, origin: address.replace(/\/$/, ''), 'content-type': 'application/json' };
    const begun = performance.now();
    const { statusCode } = await ask('/sheet', { method: 'POST', headers, body });
    tookMs.push(performance.now() - begun);
    if (statusCode !== 202) wrong.set(statusCode, (wrong.get(statusCode) ?? 0) + 1);
  };
  await Promise.all(
    people.map(async ({ cookie }) => {
      for (let n = 0; performance.now() < until; n++) await post(cookie, n);
    }),
  );
  server.send('end');
  const { cpuMs } = await told(server);
  const sorted = tookMs.toSorted((a, b) => a - b);
  const at = (share) => sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))].toFixed(1);
  console.log(
    `${connections} connections, ${seconds} s: ${Math.round(sorted.length / seconds)} posts/s; ms p50 ${at(0.5)}, p99 ${at(0.99)}, max ${at(1)}; not 202: ${JSON.stringify([...wrong])}; ${(cpuMs / sorted.length).toFixed(2)} ms of CPU a post, its answer included`,
  );
  for (const { stream } of people) stream.destroy();
  agent.destroy();
  const heard = people.reduce((sum, { heard: count }) => sum + count(), 0);
  server.send('stop');
  const { rssMb } = await told(server);
  console.log(`heard on the open streams: ${heard} events; the server's memory: ${rssMb} MB`);
  rmSync(folder, { recursive: true, force: true });
}

/** A sheet of one's own, with its stream open. */
async function visitor(ask, address) {
  const page = await ask('/');
  const cookie = page.headers['set-cookie'][0].split(';')[0];
  let events = 0;
  const stream = request(new URL('/stream', address), { headers: { cookie }, agent: false }, (answer) => {
    answer.on('data', (chunk) => (events += chunk.toString().split('event: ').length - 1));
  });
  stream.on('error', () => {});
  stream.end();
  return { cookie, stream, heard: () => events };
}

function told(child) {
  return new Promise((resolve) => child.once('message', resolve));
}
