/** A sheet on a second device: the code is good once, for five minutes, and not to be guessed (ASVS 5.0.0 6.5.1, 6.5.2, 6.5.4, 6.5.5, 6.6.3). */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { makePasses } from '../../../src/channels/web/passes.ts';
import { openHouse, type FakeHouse } from '../../page/fake-house.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, visit, type Answered } from './knock.ts';

let now = 1_000_000;
const passes = () => makePasses(() => now);
let sheets = 0;
const aSheet = (): string => `sheet ${++sheets}`;

describe('a code', () => {
  it('is eight digits in two groups, each time others, and all digits come about alike often (6.5.4)', () => {
    const made = passes();
    const codes = Array.from({ length: 2_000 }, () => made.offer(aSheet()).code);
    expect(codes.filter((code) => !/^\d{4} \d{4}$/.test(code))).toEqual([]);
    // Of those good at once none is another's; over time one may come again, one pair in a hundred million.
    expect(new Set(codes.slice(-500)).size).toBe(500);
    expect(new Set(codes).size).toBeGreaterThan(1_990);
    const counts = Array.from({ length: 10 }, (_, digit) => codes.join('').split(String(digit)).length - 1);
    // 16,000 digits: 1,600 of each, 38 the standard deviation; six of those either way.
    expect(Math.min(...counts)).toBeGreaterThan(1_370);
    expect(Math.max(...counts)).toBeLessThan(1_830);
  });

  it.each([
    ['as it is shown', (code: string) => code],
    ['without its gap', (code: string) => code.replace(' ', '')],
    ['with other gaps', (code: string) => ` ${code.replace(' ', '').replaceAll(/(?<=.)(?=.)/g, '-')} `],
    ['in wide digits', (code: string) => code.replaceAll(/\d/g, (d) => String.fromCharCode(0xff10 + Number(d)))],
  ])('is read %s', (_, typed) => {
    const made = passes();
    const sheet = aSheet();
    expect(made.redeem(typed(made.offer(sheet).code))).toBe(sheet);
  });

  it('is good once (6.5.1)', () => {
    const made = passes();
    const { code } = made.offer(aSheet());
    expect(made.redeem(code)).not.toBeNull();
    expect(made.redeem(code)).toBeNull();
  });

  it('is good for five minutes and not a moment longer (6.5.5)', () => {
    const made = passes();
    const [first, second] = [made.offer(aSheet()), made.offer(aSheet())];
    expect(first.until - now).toBe(300_000);
    now += 299_999;
    expect(made.redeem(first.code)).not.toBeNull();
    now += 1;
    expect(made.redeem(second.code)).toBeNull();
  });

  it('gives way to the next of its sheet, and to those of others when there are too many', () => {
    const made = passes();
    const sheet = aSheet();
    const first = made.offer(sheet);
    const second = made.offer(sheet);
    expect(made.redeem(first.code)).toBeNull();
    const others = Array.from({ length: 500 }, () => made.offer(aSheet()));
    expect(made.redeem(second.code)).toBeNull();
    expect(made.redeem(others.at(-1)?.code ?? '')).not.toBeNull();
  });

  it('is worth nothing once its sheet was put away', () => {
    const made = passes();
    const [sheet, other] = [aSheet(), aSheet()];
    const [gone, good] = [made.offer(sheet), made.offer(other)];
    made.withdraw(sheet);
    expect([made.redeem(gone.code), made.redeem(good.code)]).toEqual([null, other]);
  });

  it.each([[''], ['1234567'], ['123456789'], ['abcdefgh'], ['1'.repeat(5_000)], ['१२३४५६७८'], ['0000 0000\0']])(
    'is not %j',
    (typed) => expect(passes().redeem(typed)).toBeNull(),
  );
});

describe('joining', () => {
  let house: FakeHouse;
  let cookie: string;
  beforeAll(async () => {
    const limits = { joinsPerAddress: { burst: 200, perSecond: 0.001 }, joins: { burst: 10_000, perSecond: 1 } };
    house = await openHouse({ pageFolder: emptyPage(), answer: () => Promise.resolve(), limits });
    cookie = await visit(house.url);
  });
  afterAll(() => house.stop());

  const post = (path: string, own: string, body?: string, of = house): Promise<Answered> =>
    knock(of.url, path, { method: 'POST', headers: aboutPost(of.url, own), ...(body === undefined ? {} : { body }) });
  const offered = async (): Promise<string> =>
    (JSON.parse((await post('/pass', cookie)).body) as { code: string }).code;
  const join = (code: string, own: string) => post('/join', own, JSON.stringify({ code }));

  it('puts the second device on the first one’s sheet, where it hears what is said', async () => {
    const other = await visit(house.url);
    const answer = await join(await offered(), other);
    expect(answer.status).toBe(204);
    const [set = ''] = answer.headers['set-cookie'] ?? [];
    expect(set).toMatch(/; Path=\/; Max-Age=15552000; HttpOnly; SameSite=Lax; Secure$/);
    // The first device's own number is handed to nobody.
    expect(set).not.toContain(cookie.split('=')[1]);
    await post(
      '/sheet',
      cookie,
      JSON.stringify({ updateId: 'a'.repeat(32), language: 'en', what: { kind: 'text', text: 'hi' } }),
    );
    const joined = await follow(house.url, { cookie: set.split(';')[0] ?? '' });
    await joined.until(isCaughtUp);
    const id = await house.say({ paragraphs: ['to both'] });
    await joined.until((events) => events.some((one) => one.id === id));
    joined.close();
  });

  it('is won once by a hundred at the same time', async () => {
    const code = await offered();
    const answers = await Promise.all(Array.from({ length: 100 }, () => join(code, cookie)));
    expect(answers.filter(({ status }) => status === 204)).toHaveLength(1);
    expect(answers.filter(({ status }) => status === 404)).toHaveLength(99);
  });

  it('with a wrong code changes nothing and says nothing', async () => {
    const { status, body, headers } = await join('0000 0000', cookie);
    expect({ status, body, cookies: headers['set-cookie'] }).toEqual({ status: 404, body: '', cookies: undefined });
  });

  it.each([
    ['not JSON', '{'],
    ['no code', '{}'],
    ['a number', '{"code":12345678}'],
    ['a list', '["12345678"]'],
  ])('with %s is a wrong code', async (_, body) => expect((await post('/join', cookie, body)).status).toBe(404));

  it('needs a sheet to offer a code for, and a small body', async () => {
    expect((await post('/pass', '')).status).toBe(401);
    expect((await join('1'.repeat(300), cookie)).status).toBe(413);
  });

  it.each([
    ['one address', { joinsPerAddress: { burst: 3, perSecond: 0.001 }, joins: { burst: 100, perSecond: 1 } }],
    ['everybody together', { joinsPerAddress: { burst: 100, perSecond: 1 }, joins: { burst: 3, perSecond: 0.001 } }],
  ])(
    'cannot be guessed at by %s: after three tries the right code is not tried any more (6.6.3)',
    async (_, limits) => {
      const strict = await openHouse({ pageFolder: emptyPage(), limits });
      const own = await visit(strict.url);
      const { code } = JSON.parse((await post('/pass', own, undefined, strict)).body) as { code: string };
      const tried: number[] = [];
      for (let n = 0; n < 3; n++) tried.push((await post('/join', own, `{"code":"0000000${n}"}`, strict)).status);
      const right = await post('/join', own, JSON.stringify({ code }), strict);
      expect([...tried, right.status, right.headers['retry-after']]).toEqual([404, 404, 404, 429, '60']);
      await strict.stop();
    },
  );
});
