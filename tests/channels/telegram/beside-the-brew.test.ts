/** All of the house that is no guided brew, on a phone: the menu, labels, questions for the shop, and who comes and goes. */
import { afterEach, describe, expect, it } from 'vitest';
import { languages, type Language } from '../../../src/core/units.ts';
import { menuCommands } from '../../../src/channels/telegram/menu.ts';
import { customer, labels, pickUp, wordsIn, type Phone, type Seen } from './phone.ts';

let phone: Phone;
afterEach(() => phone.close());

const devices: { readonly [language in Language]: string } = { en: 'en', 'zh-Hant': 'zh-hk', 'zh-Hans': 'zh-hans' };
const asked: { readonly [language in Language]: string } = {
  en: 'tieguanyin in a 110 ml gaiwan',
  'zh-Hant': '鐵觀音，110毫升蓋碗',
  'zh-Hans': '铁观音，110毫升盖碗',
};
const en = wordsIn('en');
const answer = ({ fresh }: Seen): string => fresh.map(({ text }) => text).join('\n\n');
const shopkeeper = 99;
const keepers = [{ channel: 'telegram', from: String(shopkeeper) }] as const;

describe.each(languages)('the menu, in %s', { timeout: 60_000 }, (language) => {
  it('leads where its words say, from anywhere', async () => {
    const say = wordsIn(language);
    phone = await pickUp({ language: devices[language] });
    const told: Record<string, string> = {};
    for (const command of menuCommands) {
      if (command !== 'brew') await phone.say(asked[language]);
      told[command] = answer(await phone.say(`/${command}`));
    }
    expect(told).toMatchObject({
      brew: expect.stringContaining(say('ask-tea')) as string,
      my_tea: expect.stringContaining(say('my-vessels-are', { count: 1 })) as string,
      shop: expect.stringContaining(say('ask-question')) as string,
      language: expect.stringContaining(say('ask-language')) as string,
      start_over: expect.stringContaining(say('hello')) as string,
    });
    for (const command of menuCommands) expect(told[command], command).not.toBe('');
    expect(phone.log.lines.filter((line) => !line.startsWith('info'))).toEqual([]);
  });
});

describe('buttons of long ago', { timeout: 60_000 }, () => {
  it('of the greeting still change the language in the middle of something else', async () => {
    phone = await pickUp({ language: 'en' });
    const { fresh } = await phone.say('/start');
    await phone.say('tieguanyin in a 110 ml gaiwan');
    const offered = await phone.tapOn(fresh[0]!, en('choice-language'));
    expect(answer(offered)).toContain(en('ask-language'));
    expect(answer(await phone.tap(en('choice-traditional')))).toMatch(/\p{Script=Han}/u);
  });
});

describe('a label', { timeout: 60_000 }, () => {
  it('gives who comes back the plan, and no question', async () => {
    phone = await pickUp({ language: 'en' });
    await phone.say('dong ding in a 120 ml gaiwan');
    await phone.say('start over');
    const { fresh } = await phone.say('/start tea-tieguanyin');
    expect(fresh).toHaveLength(1);
    expect(fresh[0]!.text).toMatch(/^Tieguanyin · Gaiwan · 120 ml/);
    expect(labels(fresh[0]!)).toContain(en('choice-guide'));
  });

  it('of a tea that is no more does nothing worse than a greeting', async () => {
    phone = await pickUp({ language: 'en' });
    expect(answer(await phone.say('/start tea-none'))).toContain(en('hello'));
  });
});

describe('a question for the shop', { timeout: 60_000 }, () => {
  const question = 'May I bring my dog to the tasting?';

  it('goes to the shopkeeper, and the answer comes back', async () => {
    phone = await pickUp({ language: 'zh-hant', keepers });
    phone.server.people.say(shopkeeper, 'hello', 'en');
    await phone.say('找店家');
    await phone.say(question);
    const told = phone.messages(shopkeeper).at(-1)!;
    expect(told.text).toContain(question);
    await phone.tap(labels(told)[0]!, shopkeeper);
    const before = phone.messages().length;
    await phone.say('Yes, on the terrace.', shopkeeper);
    const [reply] = phone.messages().slice(before);
    expect(reply!.text).toContain('Yes, on the terrace.');
  });

  it('of who has blocked us since ends with the shop knowing, and reaches them once they come back', async () => {
    phone = await pickUp({ language: 'en', keepers });
    phone.server.people.say(shopkeeper, 'hello', 'en');
    await phone.say('talk to the shop');
    await phone.say(question);
    await phone.does(() => void phone.server.people.block(customer));
    const sendings = (): number =>
      phone.server.record.of('sendMessage').filter(({ chat }) => chat === String(customer)).length;
    const before = sendings();
    await phone.tap(labels(phone.messages(shopkeeper).at(-1)!)[0]!, shopkeeper);
    await phone.say('Yes, on the terrace.', shopkeeper);
    await phone.pass(3600);
    expect(sendings() - before).toBeLessThanOrEqual(1);
    await phone.does(() => void phone.server.people.unblock(customer));
    await phone.pass(60);
    expect(phone.messages().some(({ text }) => text.includes('Yes, on the terrace.'))).toBe(true);
  });
});

describe('forged buttons', { timeout: 60_000 }, () => {
  it.each([
    ['of somebody else', null],
    ['of a row that is none', '999999-AAAAAAAA.0'],
    ['longer than Telegram lets through', `1-${'A'.repeat(62)}.0`],
    ['of no bytes that could be ours', '1-\u0000\u202e"; DROP TABLE people; --.0'],
    ['of nothing', '.'],
    ['of a prototype', '__proto__.constructor'],
  ])('%s do nothing, and are answered kindly', async (_what, data) => {
    phone = await pickUp({ language: 'en' });
    const own = await phone.say('tieguanyin in a 110 ml gaiwan');
    const other = await phone.say('longjing in a 350 ml glass', 8);
    const button = other.fresh[0]!.markup!.inline_keyboard[0]![0] as { callback_data: string };
    const seen = await phone.does(() => void phone.server.people.forge(customer, data ?? button.callback_data));
    expect(answer(seen)).toContain(en('house-unknown-tap'));
    expect(phone.messages().find(({ id }) => id === own.fresh[0]!.id)!.edits).toBe(0);
    expect([...phone.server.world.taps.values()].every(({ answeredAt }) => answeredAt !== null)).toBe(true);
    // The owner's button is as good as before.
    expect(answer(await phone.tap(en('choice-guide'), 8))).not.toBe('');
  });
});
