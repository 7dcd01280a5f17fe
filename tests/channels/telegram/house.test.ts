/** From a person's phone and back: the conversation of the house, through Telegram. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { startStandIn, type StandIn } from './bot-api/server.ts';
import { until } from './harness.ts';
import { openHouse, type House } from './house.ts';
import { measureReminders, measureTurnover } from './throughput.ts';

let server: StandIn;
let house: House;
beforeEach(async () => {
  server = await startStandIn();
  house = await openHouse(server);
});
afterEach(async () => {
  await house.close();
  await server.close();
});

const lastOf = (person: number): string => server.seenBy(person).at(-1)?.text ?? '';
const answered = async (person: number, messages: number): Promise<string> => {
  await until(() => server.seenBy(person).length >= messages);
  await house.app.settled();
  return lastOf(person);
};

describe('a customer on Telegram', () => {
  it('gets a plan for one sentence, and its reasons for a tap', async () => {
    server.people.say(7, 'tieguanyin in a 110 ml gaiwan', 'en');
    expect(await answered(7, 1)).toMatch(/110 ml/);
    const [plan] = server.seenBy(7);
    expect(plan?.entities.some(({ type }) => type === 'pre')).toBe(true);
    const why = plan!.markup!.inline_keyboard[0]![0]!;
    server.people.tap(7, why.text);
    expect(await answered(7, 2)).not.toBe(plan!.text);
    expect([...server.world.taps.values()].every(({ answeredAt }) => answeredAt !== null)).toBe(true);
  });

  it('is spoken to in the language of their app, and by label', async () => {
    server.people.say(7, '/start tea-tieguanyin', 'zh-hant');
    expect(await answered(7, 1)).toMatch(/\p{Script=Han}/u);
  });

  it.each([
    ['en', 'longjing in a 110 ml gaiwan', /Tieguanyin .*110 ml/],
    ['zh-hant', '龍井，110 毫升蓋碗', /鐵觀音.*110/],
    ['zh-hans', '龙井，110毫升盖碗', /铁观音.*110/],
  ])('of whom the vessel is known scans a label and has its plan, with no question (%s)', async (app, first, plan) => {
    server.people.say(7, first, app);
    await answered(7, 1);
    const before = server.seenBy(7).length;
    server.people.say(7, '/start tea-tieguanyin', app);
    expect(await answered(7, before + 1)).toMatch(plan);
    const told = server.seenBy(7).slice(before);
    expect(told.map(({ text }) => text).join('')).not.toMatch(/[?？]/);
    expect(told.some(({ entities }) => entities.some(({ type }) => type === 'pre'))).toBe(true);
  });

  it("taps another's button, and gets one gentle sentence", async () => {
    server.people.say(7, 'longjing', 'en');
    await answered(7, 1);
    const key = server.seenBy(7)[0]!.markup!.inline_keyboard[0]![0] as { callback_data: string };
    server.people.say(8, 'hello', 'en');
    await answered(8, 1);
    server.people.forge(8, key.callback_data, server.seenBy(8)[0]);
    expect(await answered(8, 2)).toMatch(/no longer open/);
  });

  it('who blocked us is left alone until they come back', async () => {
    server.people.say(7, 'hello', 'en');
    await answered(7, 1);
    server.people.block(7);
    server.people.say(7, 'longjing', 'en');
    await until(() => server.queue.pending.length === 0);
    await house.app.settled();
    expect(server.seenBy(7)).toHaveLength(1);
    server.people.unblock(7);
    server.people.say(7, 'gaiwan', 'en');
    await until(() => server.seenBy(7).length > 1);
  });

  it('finds their conversation after a restart, and nothing is said twice', async () => {
    server.people.say(7, 'how do I brew longjing', 'en');
    const question = await answered(7, 1);
    house = await house.restart();
    server.people.say(7, 'a glass, 350 ml', 'en');
    expect(await answered(7, 2)).toMatch(/350 ml/);
    expect(server.seenBy(7).filter(({ text }) => text === question)).toHaveLength(1);
    await until(() => server.queue.pending.length === 0);
  });
});

it(
  'reminds eighty people at once, each once, near the published rate even when it was too fast at first',
  { timeout: 60_000 },
  async () => {
    const { mostCopies, perSecond } = await measureReminders(80);
    expect(mostCopies).toBe(1);
    expect(perSecond).toBeGreaterThan(8);
  },
);

it('answers sixty people who write at once, taken in by few polls', { timeout: 60_000 }, async () => {
  const { updates, polls } = await measureTurnover(60);
  expect(updates).toBe(60);
  expect(polls).toBeLessThan(20);
});
