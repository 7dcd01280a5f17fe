/** What every answer says to the browser, and the cookies it sets; ids of OWASP ASVS 5.0.0 beside each. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import { aboutPost, emptyPage, follow, knock, posted, visit } from './knock.ts';

const pageFolder = emptyPage();
let house: FakeHouse;
let cookie: string;
beforeAll(async () => {
  house = await openHouse({ pageFolder, answer: () => Promise.resolve() });
  cookie = await visit(house.url);
});
afterAll(() => house.stop());

const text = posted({ kind: 'text', text: 'tieguanyin' });
const post = (headers: Record<string, string>, body = text, path = '/sheet') =>
  knock(house.url, path, { method: 'POST', headers, body });

describe('headers (3.4.3–3.4.6, 3.4.8)', () => {
  const expected = {
    'content-security-policy':
      "default-src 'none'; script-src 'self'; worker-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; " +
      "base-uri 'none'; object-src 'none'; frame-ancestors 'none'; require-trusted-types-for 'script'; trusted-types own-workers",
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'cross-origin-opener-policy': 'same-origin',
    'cross-origin-resource-policy': 'same-origin',
    'x-frame-options': 'DENY',
  };
  it.each([
    ['/', 200],
    ['/tea/tieguanyin', 200],
    ['/tea/unknown', 404],
    ['/tea/%2e%2e%2fetc', 404],
    ['/lesson/12', 200],
    ['/lesson/over', 404],
    ['/healthz', 200],
    ['/clock', 200],
    ['/words/en', 200],
    ['/words/fr', 404],
    ['/assets/main-0.js', 200],
    ['/assets/manifest.json', 404],
    ['/assets/..%2f..%2fpackage.json', 404],
    ['/mark.svg', 200],
    ['/no/such/place', 404],
    ['/stream', 401],
  ])('are whole on %s (%i)', async (path, status) => {
    const answer = await knock(house.url, path);
    expect(answer.status).toBe(status);
    expect(answer.headers).toMatchObject(expected);
  });

  it('are whole on an open stream', async () => {
    const stream = await follow(house.url, { cookie });
    expect(stream.headers).toMatchObject({ ...expected, 'cache-control': 'no-store' });
    stream.close();
  });

  it('are whole when the server itself fails, and the answer says nothing of why', async () => {
    const failing = await openHouse({ pageFolder, label: () => Promise.reject(new Error('SECRET-CANARY')) });
    const answer = await knock(failing.url, '/tea/tieguanyin');
    expect(answer.status).toBe(500);
    expect(answer.headers).toMatchObject(expected);
    expect(answer.body).not.toMatch(/CANARY|Error|\.ts|\.js:/);
    await failing.stop();
  });

  it('ask for safe transport only under a safe public name (3.4.1)', async () => {
    expect((await knock(house.url, '/')).headers['strict-transport-security']).toBeUndefined();
    const open = await openHouse({ pageFolder, publicOrigin: 'https://tea.example' });
    const answer = await knock(open.address, '/', { headers: { host: 'tea.example' } });
    expect(answer.headers['strict-transport-security']).toBe('max-age=31536000');
    await open.stop();
  });

  it('leave nothing inline in the page (3.2.2)', async () => {
    const { body } = await knock(house.url, '/tea/tieguanyin', { headers: { cookie } });
    const scripts = [...body.matchAll(/<script[^>]*>/g)].map(([tag]) => tag);
    expect(scripts).toEqual([
      '<script type="module" src="/assets/main-0.js">',
      '<script type="application/json" id="boot">',
    ]);
    expect(body).not.toMatch(/<style|\sstyle=|\son[a-z]+=/);
  });

  it('what a shop writes into a plan stays text (1.2.1)', async () => {
    const paragraphs = ['<img src=x onerror=alert(1)>', '</script><script>alert(1)</script>'];
    const label: NonNullable<Parameters<typeof openHouse>[0]>['label'] = (id, language) =>
      Promise.resolve({ id, channel: 'web', chat: '', language, paragraphs, choices: [] });
    const evil = await openHouse({ pageFolder, label });
    const { body } = await knock(evil.url, '/tea/x');
    expect(body).not.toMatch(/<img|<\/script><script>/);
    expect(body).toContain('&lt;img src=x');
    await evil.stop();
  });
});

describe('cookies (3.3.1–3.3.4, 7.2.3)', () => {
  it('carry every attribute', async () => {
    const [set = ''] = (await knock(house.url, '/')).headers['set-cookie'] ?? [];
    expect(set).toMatch(/^__Host-sheet=[A-Za-z0-9_-]{43}; Path=\/; Max-Age=15552000; HttpOnly; SameSite=Lax; Secure$/);
  });

  it('drop the prefix and Secure only when told so', async () => {
    const plain = await openHouse({ pageFolder, secureCookies: false });
    const [set = ''] = (await knock(plain.url, '/')).headers['set-cookie'] ?? [];
    expect(set).toMatch(/^sheet=[A-Za-z0-9_-]{43}; Path=\/; Max-Age=15552000; HttpOnly; SameSite=Lax$/);
    await plain.stop();
  });

  it('are different each time, and kept on the next visit', async () => {
    const made = await Promise.all(Array.from({ length: 50 }, () => visit(house.url)));
    expect(new Set(made).size).toBe(50);
    expect(await visit(house.url, { cookie })).toBe(cookie);
  });

  it.each([
    ['of another shape', '__Host-sheet=short'],
    ['given twice', `__Host-sheet=${'a'.repeat(43)}; __Host-sheet=${'b'.repeat(43)}`],
    ['without the prefix', `sheet=${'a'.repeat(43)}`],
  ])('%s are not taken for a session', async (_, given) => {
    expect((await post(aboutPost(house.url, given))).status).toBe(401);
    expect(await visit(house.url, { cookie: given })).not.toContain(given);
  });

  it('never reach the house: it knows a hash', async () => {
    await post(aboutPost(house.url, cookie), posted({ kind: 'text', text: 'who am I' }));
    const value = cookie.split('=')[1] ?? '';
    expect(house.recorded.at(-1)?.chat).toMatch(/^[A-Za-z0-9_-]{43}$/);
    expect(JSON.stringify(house.recorded)).not.toContain(value);
  });

  it('a fresh sheet is another session (7.2.4)', async () => {
    const answer = await post(aboutPost(house.url, cookie), '', '/fresh');
    expect(answer.status).toBe(204);
    expect(answer.headers['set-cookie']?.[0]).toMatch(/^__Host-sheet=/);
    expect(answer.headers['set-cookie']?.[0]).not.toContain(cookie);
  });
});
