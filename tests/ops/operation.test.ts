/** What a running service tells of itself, and that what it is told to watch for names only what it tells. */
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readConfig } from '../../src/config.ts';
import type { Log } from '../../src/log.ts';
import { makeOperation, type Operation } from '../../src/operation.ts';
import { makeMetricsDoor } from '../../src/operation/metrics-door.ts';
import { openSqliteStore } from '../../src/store/sqlite/store.ts';
import { fakeClock } from '../delivery/fake-clock.ts';
import { claimAt, exchange, incoming, noon, say } from '../store/samples.ts';

const folder = mkdtempSync(join(tmpdir(), 'tea-operation-'));
afterAll(() => rmSync(folder, { recursive: true }));
const quiet: Log = { debug() {}, info() {}, warn() {}, error() {} };

async function freePort(): Promise<number> {
  const server = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => server.once('listening', resolve));
  const { port } = server.address() as { port: number };
  await new Promise((resolve) => server.close(resolve));
  return port;
}

let port = 0;
let operation: Operation;
const clock = fakeClock(noon + 90_000);

beforeAll(async () => {
  port = await freePort();
  const config = readConfig({ NINTHPOUR_FOLDER: folder, NINTHPOUR_METRICS: `127.0.0.1:${port}` });
  const store = openSqliteStore(join(folder, 'ninthpour.sqlite'));
  operation = makeOperation({
    config,
    store,
    clock,
    log: quiet,
    channels: () => ['web'],
    polls: () => ({ telegram: noon + 60_000 }),
  });
  await operation.start();
});
afterAll(async () => {
  await operation.stop();
  await operation.store.close();
});

const measured = async (): Promise<string> => (await fetch(`http://127.0.0.1:${port}/metrics`)).text();

describe('the measures', () => {
  test('count what passes through, and tell how late it was', async () => {
    const { store } = operation;
    await exchange(store, 'ann', [say('hello'), say('and more')]);
    const seen = incoming('ben', 'secret words');
    await store.record(seen);
    await store.record(seen);
    await store.record(incoming('cem', 'elsewhere', { channel: 'telegram' }));
    const [first] = await store.claim(claimAt(noon + 70_000));
    await store.settle(first?.id ?? '', { kind: 'sent', ref: 'r' }, noon + 70_000);
    const lines = (await measured()).split('\n');
    for (const line of [
      'ninthpour_incoming_total{channel="web",outcome="new"} 2',
      'ninthpour_incoming_total{channel="web",outcome="seen"} 1',
      'ninthpour_turns_total{outcome="handled"} 1',
      'ninthpour_sendings_total{channel="web",outcome="sent"} 1',
      'ninthpour_delivery_lateness_seconds_sum{priority="reply"} 70',
      'ninthpour_ready 1',
      'ninthpour_undelivered 1',
      'ninthpour_unhandled 1',
      'ninthpour_oldest_undelivered_seconds 90',
      'ninthpour_last_poll_age_seconds{channel="telegram"} 30',
      'ninthpour_questions_waiting 0',
    ]) {
      expect(lines).toContain(line);
    }
    expect(lines.join()).not.toMatch(/secret|chat-of|\bann\b|\bben\b/);
  });

  test('keep to the format line by line', async () => {
    const line = /^(# (HELP|TYPE) \w+ .+|[a-z_]+(\{\w+="[^"]*"(,\w+="[^"]*")*\})? (-?\d+(\.\d+)?(e-?\d+)?|\+Inf))$/;
    expect(
      (await measured())
        .trimEnd()
        .split('\n')
        .filter((one) => !line.test(one)),
    ).toEqual([]);
  });

  test('are given out for what is asked, and nothing else', async () => {
    const answers = ['/', '/metrics?x=1', '/healthz'].map((path) => fetch(`http://127.0.0.1:${port}${path}`));
    expect((await Promise.all(answers)).map(({ status }) => status)).toEqual([404, 404, 404]);
    expect((await fetch(`http://127.0.0.1:${port}/metrics`, { method: 'POST' })).status).toBe(404);
  });

  test('that cannot be had are told by a status', async () => {
    const door = makeMetricsDoor({ host: '127.0.0.1', port: 0 }, () => Promise.reject(new Error('secret')));
    const answer = await fetch(`http://127.0.0.1:${await door.start()}/metrics`);
    expect({ status: answer.status, body: await answer.text() }).toEqual({ status: 503, body: '' });
    await door.stop();
  });
});

describe('the health', () => {
  test('tells ages, and that there is no backup', async () => {
    const { ready, backupAgeS, lastPollAgeS, oldestUndeliveredS } = await operation.health();
    expect({ ready, backupAgeS, lastPollAgeS, oldestUndeliveredS }).toEqual({
      ready: true,
      backupAgeS: null,
      lastPollAgeS: { telegram: 30 },
      oldestUndeliveredS: 90,
    });
  });

  test('is not ready when the store does not answer', async () => {
    const store = openSqliteStore(join(folder, 'other', 'ninthpour.sqlite'));
    const config = readConfig({ NINTHPOUR_FOLDER: join(folder, 'other') });
    const other = makeOperation({ config, store, clock, log: quiet, channels: () => ['web'], polls: () => ({}) });
    await store.close();
    expect(await other.health()).toMatchObject({ ready: false, vitals: null });
    await other.stop();
  });
});

test('a place for the measures that is taken stops the start in plain words', async () => {
  const config = readConfig({ NINTHPOUR_FOLDER: folder, NINTHPOUR_METRICS: `127.0.0.1:${port}` });
  const parts = { config, store: operation.store, clock, log: quiet, channels: () => [], polls: () => ({}) };
  await expect(makeOperation(parts).start()).rejects.toThrow(/^NINTHPOUR_METRICS cannot be listened on \(EADDRINUSE\)/);
});
