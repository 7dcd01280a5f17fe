/** What failures on the wire become, each as the client library reports it. */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import nock from 'nock';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { makeBotApi } from '../../../src/channels/telegram/bot-api.ts';
import { startStandIn } from './bot-api/server.ts';

const root = 'http://wire.example';
const token = '123456789:AAcanary-token-of-thirty-five-letters';
const path = `/bot${token}/sendMessage`;
const limits = { timeoutMs: 2000 };
const hello = { chat_id: 1, text: 'canary text' };

beforeAll(() => nock.disableNetConnect());
afterEach(() => nock.cleanAll());
afterAll(() => nock.restore());

const failing = (message: string, code?: string): Error =>
  Object.assign(new Error(message), code === undefined ? {} : { code });

describe('a failure before anything is written', () => {
  it.each([
    ['refused', failing('connect ECONNREFUSED 127.0.0.1:443', 'ECONNREFUSED')],
    ['refused at every address', failing('', 'ECONNREFUSED')],
    ['no route', failing('connect EHOSTUNREACH 10.0.0.1:443', 'EHOSTUNREACH')],
    ['too slow to connect', failing('connect ETIMEDOUT 10.0.0.1:443', 'ETIMEDOUT')],
    ['a name not found', failing('getaddrinfo ENOTFOUND wire.example', 'ENOTFOUND')],
    ['a name server that fails', failing('getaddrinfo EAI_AGAIN wire.example', 'EAI_AGAIN')],
    [
      'an end before TLS',
      failing('Client network socket disconnected before secure TLS connection was established', 'ECONNRESET'),
    ],
    ['a certificate run out', failing('certificate has expired', 'CERT_HAS_EXPIRED')],
    ['a certificate of nobody', failing('self-signed certificate', 'DEPTH_ZERO_SELF_SIGNED_CERT')],
    [
      'a certificate for another',
      failing("Hostname/IP does not match certificate's altnames", 'ERR_TLS_CERT_ALTNAME_INVALID'),
    ],
  ])('%s: surely not sent', async (_case, error) => {
    nock(root).post(path).replyWithError(error);
    const answer = await makeBotApi({ token, apiRoot: root }).call('sendMessage', hello, limits);
    expect(answer).toMatchObject({ ok: false, fault: { kind: 'unreached' } });
    expect(JSON.stringify(answer)).not.toMatch(/canary|wire\.example/);
  });
});

describe('a failure after bytes may have been written', () => {
  it.each([
    ['reset', failing('read ECONNRESET', 'ECONNRESET')],
    ['hung up', failing('socket hang up', 'ECONNRESET')],
    ['a write that failed', failing('write EPIPE', 'EPIPE')],
    ['silence', failing('read ETIMEDOUT', 'ETIMEDOUT')],
    ['something unheard of', failing('tea spilled')],
  ])('%s: in doubt', async (_case, error) => {
    nock(root).post(path).replyWithError(error);
    const answer = await makeBotApi({ token, apiRoot: root }).call('sendMessage', hello, limits);
    expect(answer).toMatchObject({ ok: false, fault: { kind: 'lost' } });
    expect(JSON.stringify(answer)).not.toMatch(/canary|wire\.example|spilled/);
  });

  it.each<[string, number, string]>([
    ['no JSON', 200, '<html>'],
    ['null', 200, 'null'],
    ['a list', 200, '[]'],
    ['no without a code', 400, '{"ok":false}'],
  ])('an answer that is %s: in doubt', async (_case, status, body) => {
    nock(root).replyContentLength().post(path).reply(status, body);
    const answer = await makeBotApi({ token, apiRoot: root }).call('sendMessage', hello, limits);
    expect(answer).toMatchObject({ ok: false, fault: { kind: 'lost' } });
  });
});

describe('an answer', () => {
  it('is the result', async () => {
    nock(root)
      .replyContentLength()
      .post(path, { chat_id: 1, text: 'canary text' })
      .reply(200, { ok: true, result: { message_id: 5 } });
    const answer = await makeBotApi({ token, apiRoot: `${root}/` }).call('sendMessage', hello, limits);
    expect(answer).toEqual({ ok: true, result: { message_id: 5 } });
  });

  it('that is no carries what it asks for', async () => {
    const parameters = { retry_after: 9, migrate_to_chat_id: -100 };
    nock(root)
      .replyContentLength()
      .post(path)
      .reply(429, { ok: false, error_code: 429, description: 'Too Many Requests: retry after 9', parameters });
    const answer = await makeBotApi({ token, apiRoot: root }).call('sendMessage', hello, limits);
    expect(answer).toMatchObject({
      ok: false,
      fault: { kind: 'answered', code: 429, retryAfterS: 9, movedTo: '-100' },
    });
  });
});

describe('a call', () => {
  it('ends when its time is up, or when we stop', async () => {
    nock.enableNetConnect('127.0.0.1');
    const server = await startStandIn({ token });
    const api = makeBotApi({ token, apiRoot: server.root });
    server.faults.add({ times: 9, trouble: { kind: 'hang', processed: false } });
    expect(await api.call('getMe', {}, { timeoutMs: 100 })).toEqual({
      ok: false,
      fault: { kind: 'lost', why: 'timeout' },
    });
    const stop = new AbortController();
    setTimeout(() => stop.abort(), 20);
    expect(await api.call('getMe', {}, { timeoutMs: 5000, signal: stop.signal })).toEqual({
      ok: false,
      fault: { kind: 'stopped' },
    });
    server.faults.clear();
    expect(await api.call('getMe', {}, { timeoutMs: 10_000 })).toMatchObject({
      ok: true,
      result: { username: 'stand_in_bot' },
    });
    await server.close();
  });
});

describe('a call that is never answered', () => {
  it('ends in time, whatever memory is cleared meanwhile', async () => {
    nock.enableNetConnect('127.0.0.1');
    const server = await startStandIn();
    const api = makeBotApi({ token: server.token, apiRoot: server.root });
    // Until it is compiled a function keeps more alive than it needs.
    for (let i = 0; i < 3_000; i++) await api.call('getMe', {}, { timeoutMs: 10_000 });
    server.faults.add({ method: 'sendMessage', times: 20, trouble: { kind: 'hang', processed: false } });
    const calls = Array.from({ length: 20 }, () => api.call('sendMessage', hello, { timeoutMs: 400 }));
    // Sent and listened for; from here on nothing but the call itself holds its end.
    await new Promise((resolve) => setTimeout(resolve, 150));
    clearMemory();
    const lost = { ok: false, fault: { kind: 'lost', why: 'timeout' } };
    expect(await Promise.all(calls)).toEqual(calls.map(() => lost));
    await server.close();
    nock.disableNetConnect();
  }, 30_000);
});

function clearMemory(): void {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
}
