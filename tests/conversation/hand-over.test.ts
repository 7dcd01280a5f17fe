/** A question's way to the shop and its answer's way back, with the real flows. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { incoming } from '../store/samples.ts';
import { ShopHouse } from './shop-house.ts';

let house: ShopHouse;
beforeEach(async () => {
  house = await new ShopHouse('mei', 'tom').open();
});
afterEach(() => house.end());

const meet = (...who: string[]): Promise<unknown> => Promise.all(who.map((one) => house.does(one, 'hello')));
const dog = 'May I bring my dog into the shop?';

describe('a question', () => {
  test('reaches every shopkeeper, and the answer the one who asked, in their own language', async () => {
    await meet('mei', 'tom');
    await house.does('ann', '你好');
    await house.does('ann', '找店家');
    expect(await house.does('ann', '可以帶狗進店裡嗎？')).toMatch(/已轉給店家/);
    for (const who of ['mei', 'tom']) expect(house.told(who)).toMatch(/A customer asks: 可以帶狗進店裡嗎？/);
    await house.does('ben', 'hello');
    expect(await house.tap('mei', 'Questions for the shop')).toMatch(/in Traditional Chinese: 可以帶狗進店裡嗎？/);
    expect(await house.does('mei', '可以，歡迎 <b>牠</b>')).toMatch(/Sent to the customer, in answer to: 可以帶狗/);
    expect(house.told('ann')).toMatch(/您問：可以帶狗進店裡嗎？\n店家回覆：可以，歡迎 <b>牠<\/b>$/);
    expect(house.told('ben')).not.toContain('狗');
  });

  test('waits visibly while nobody of the shop is here, and for days', async () => {
    expect(await house.asks('ann', dog)).toMatch(/Nobody from the shop is here/);
    await house.clock.pass(9 * 86_400_000);
    await house.app.settled();
    await house.does('mei', 'hello');
    expect(await house.does('mei', 'questions')).toContain(dog);
    await house.does('mei', 'Yes, on a lead.');
    expect(house.told('ann')).toMatch(/The shop writes: Yes, on a lead\.$/);
  });

  test('is passed on when the house has no answer, with one tap', async () => {
    await meet('mei');
    await house.does('ann', 'do you have a loyalty card for regulars?');
    if (
      house
        .messages('ann')
        .at(-1)
        ?.choices.some(({ label }) => label === 'Pass it to the shop')
    ) {
      await house.tap('ann', 'Pass it to the shop');
    } else await house.asks('ann', 'do you have a loyalty card for regulars?');
    expect(house.told('mei')).toMatch(/A customer asks: do you have a loyalty card for regulars\?/);
  });

  test('of one person is the sixth that waits only when one of the five is answered', async () => {
    await meet('mei');
    for (let i = 1; i <= 5; i++) await house.asks('ann', `question number ${i}, please`);
    expect(await house.does('ann', 'talk to the shop')).toMatch(/Five of your questions are waiting/);
    await house.does('mei', 'questions');
    await house.does('mei', 'answer 1');
    await house.does('mei', 'Here you are.');
    expect(await house.does('ann', 'talk to the shop')).toMatch(/What shall I pass on/);
  });
});

describe('an answer', () => {
  beforeEach(async () => {
    await meet('mei', 'tom');
    await house.asks('ann', dog);
    await house.does('mei', 'questions');
    await house.does('tom', 'questions');
  });

  test('that is a bare number goes out only when that is meant, for mostly it chooses a question', async () => {
    const before = house.told('ann');
    expect(await house.does('mei', '1')).toMatch(/Shall it go to the customer/);
    expect(house.told('ann')).toBe(before);
    await house.does('mei', 'Yes, on a lead.');
    expect(house.told('ann')).toMatch(/The shop writes: Yes, on a lead\.$/);
  });

  test('by the first is sent; the second is told that someone has answered', async () => {
    await house.does('mei', 'Yes.');
    expect(await house.does('tom', 'No.')).toMatch(/no longer open: someone from the shop has answered it/);
    expect(house.told('ann').match(/The shop writes/g)).toHaveLength(1);
    expect(house.told('ann')).toMatch(/The shop writes: Yes\.$/);
  });

  test('by two in the same instant is one, whoever wins', async () => {
    await Promise.all([house.web.take(incoming('mei', 'Yes.')), house.web.take(incoming('tom', 'No.'))]);
    await house.app.settled();
    expect(house.told('ann').match(/The shop writes/g)).toHaveLength(1);
    const both = [house.told('mei'), house.told('tom')].map((told) => /someone from the shop has answered/.test(told));
    expect(both.filter(Boolean)).toHaveLength(1);
  });

  test('written when another question has come in between is sent only when it is said for whom', async () => {
    await house.asks('ben', 'Do you sell honey?');
    expect(await house.does('mei', 'Yes, on a lead.')).toMatch(
      /Is this meant for “May I bring my dog into the shop\?”/,
    );
    expect(house.told('ann')).not.toContain('on a lead');
    await house.tap('mei', 'Yes, send it there');
    expect(house.told('ann')).toMatch(/The shop writes: Yes, on a lead\.$/);
    expect(house.told('ben')).not.toContain('on a lead');
  });

  test('meant for the other is not sent to the first', async () => {
    await house.asks('ben', 'Do you sell honey?');
    await house.does('mei', 'Yes, from the hive behind the house.');
    expect(await house.tap('mei', 'No, show the questions')).toMatch(/Do you sell honey/);
    await house.does('mei', 'answer 2');
    await house.does('mei', 'Yes, from the hive behind the house.');
    expect(house.told('ben')).toMatch(/The shop writes: Yes, from the hive/);
    expect(house.told('ann')).not.toContain('hive');
  });

  test('may be any text: what means something elsewhere is sent as it is', async () => {
    const words = 'In English please: forget me not, talk to the shop, start over at 2,000 m with 90 °F, my data, 1';
    await house.does('mei', words);
    expect(house.told('ann')).toContain(`The shop writes: ${words}`);
    const person = (await house.store.find('web', 'mei')) ?? 0;
    expect(await house.store.exportOf(person)).toMatchObject({ memory: [] });
  });

  test('is given again with one tap when the same was asked before', async () => {
    await house.does('mei', 'Yes, on a lead.');
    await house.asks('ben', 'may I bring a dog to the shop please');
    await house.does('tom', 'questions');
    await house.tap('tom', 'Send that answer again');
    expect(house.told('ben')).toMatch(/The shop writes: Yes, on a lead\.$/);
  });

  test('waits for whoever cannot be reached, and comes when they are back', async () => {
    await house.web.take(incoming('ann', { kind: 'reach', reachable: false }));
    await house.does('mei', 'Yes, on a lead.');
    expect(house.told('ann')).not.toContain('on a lead');
    await house.web.take(
      incoming('ann', { kind: 'reach', reachable: true }, { receivedAt: house.clock.now() + 5_000 }),
    );
    await house.clock.pass(60_000);
    await house.app.settled();
    expect(house.told('ann')).toContain('on a lead');
  });
});

describe('a standing answer', () => {
  beforeEach(async () => {
    await meet('mei');
    await house.asks('ann', dog);
    await house.does('mei', 'questions');
    await house.does('mei', 'Yes, on a lead.');
    await house.tap('mei', 'Keep it as a standing answer');
  });

  test.each([
    'is it allowed to bring a dog into the shop?',
    'Can I bring my dog in the shop',
    'may i bring dogs into your shop',
  ])('serves who asks: %s', async (question) => {
    await house.does('mei', 'Can I bring a dog into the shop?');
    expect(await house.does('ben', question)).toMatch(/The shop says: Yes, on a lead\./);
  });

  test.each([
    'is it safe to give tea to my dog?',
    'may I bring my own cup into the shop?',
    'how do I brew longjing in a 350 ml glass',
    'when do you open?',
    'dog',
  ])('does not serve who asks something else: %s', async (question) => {
    await house.does('mei', 'Can I bring a dog into the shop?');
    expect(await house.does('ben', question)).not.toContain('on a lead');
  });

  test.each([
    ['可以帶鸚鵡進店裡嗎？', '我能帶鸚鵡進店嗎', true],
    ['店裡能不能拍照', '店里可以拍照吗', true],
    ['可以帶鸚鵡進店裡嗎？', '可以帶自己的杯子進店裡嗎？', false],
    ['可以帶鸚鵡進店裡嗎？', '怎麼泡鐵觀音', false],
    ['店裡能不能拍照', '請問可以在店裡拍照嗎', true],
    ['店裡能不能拍照', '店裡幾點開門', false],
  ])('kept for %s, asked %s: %s', async (kept, question, serves) => {
    await house.does('mei', kept);
    expect((await house.does('ben', question)).includes('Yes, on a lead.')).toBe(serves);
  });

  test('serves until it is dropped', async () => {
    await house.tap('mei', 'As it was asked');
    expect(await house.does('ben', dog)).toMatch(/The shop says: Yes, on a lead\./);
    await house.does('mei', 'questions');
    await house.tap('mei', 'Answers that are kept');
    expect(await house.tap('mei', 'Drop 1')).toMatch(/Dropped/);
    expect(await house.does('ben', dog)).not.toContain('on a lead');
  });

  test('goes with the person whose words its question is in', async () => {
    await house.tap('mei', 'As it was asked');
    await house.does('ann', 'forget me');
    await house.tap('ann', 'Forget everything');
    expect(await house.does('ben', dog)).not.toContain('on a lead');
  });
});
