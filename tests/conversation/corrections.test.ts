/** An answer that was sent and is put right: told once, plainly, where it was asked, and wherever it was kept. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { incoming } from '../store/samples.ts';
import { ShopHouse } from './shop-house.ts';

let house: ShopHouse;
beforeEach(async () => {
  house = await new ShopHouse('mei', 'tom').open();
  for (const who of ['mei', 'tom', 'ann', 'ben']) await house.does(who, 'hello');
  await house.asks('ann', dog);
  await house.does('mei', 'questions');
  await house.does('mei', 'Yes, on a lead.');
});
afterEach(() => house.end());

const dog = 'May I bring my dog into the shop?';
const correction = /Correction: the shop puts its earlier answer right\. Please go by this one: No dogs, sorry\.$/;
const count = (text: string, what: RegExp): number => text.match(new RegExp(what, 'g'))?.length ?? 0;

async function corrects(who: string, text = 'No dogs, sorry.'): Promise<string> {
  await house.does(who, 'correct my last answer');
  await house.does(who, text);
  return house.does(who, 'yes');
}

describe('a correction', () => {
  test.each([
    'correct my last answer',
    'Oops, the answer I sent was wrong',
    'I gave them the wrong answer',
    'please change what I answered',
    '改一下剛才的回答',
    '我頭先答錯咗',
    '上一个回复有误',
    '请更正我刚才的回复',
  ])('is begun by "%s", and shows what was answered', async (words) => {
    await house.does('mei', 'that is all');
    expect(await house.does('mei', words)).toMatch(/May I bring my dog into the shop\?.*Yes, on a lead\./);
    expect(house.told('ann')).toMatch(/The shop writes: Yes, on a lead\.$/);
  });

  test.each(['correct my last answer', '改一下剛才的回答'])('is nobody else’s: "%s"', async (words) => {
    expect(await house.does('ben', words)).not.toContain('on a lead');
  });

  test('reaches whoever asked, once, and takes the place of the answer', async () => {
    expect(await corrects('mei')).toMatch(/Sent to the customer as a correction\.$/m);
    expect(house.told('ann')).toMatch(correction);
    expect(count(house.told('ann'), /Correction:/)).toBe(1);
    expect(house.told('ben')).not.toContain('No dogs');
    expect(await house.does('mei', 'correct my last answer')).toMatch(/You answered: No dogs, sorry\./);
  });

  test('puts right what was kept of it, and nothing else that reads the same', async () => {
    await house.tap('mei', 'Keep it as a standing answer');
    await house.does('mei', 'Can I bring a dog into the shop?');
    await house.asks('ben', 'Is there a place for umbrellas by the door?');
    await house.does('mei', 'questions');
    await house.does('mei', 'Yes, on a lead.');
    await house.does('mei', 'keep');
    await house.does('mei', 'Is there a place for umbrellas by the door?');
    await house.does('mei', 'correct my last answer');
    await house.tap('mei', 'Another answer');
    await house.does('mei', 'Correct 2');
    await house.does('mei', 'No dogs, sorry.');
    expect(await house.does('mei', 'yes')).toMatch(/The answer that is kept of it is put right too/);
    expect(house.told('ann')).toMatch(correction);
    expect(await house.does('cho', 'can I bring a dog into the shop?')).toMatch(/The shop says: No dogs, sorry\./);
    expect(await house.does('cho', 'is there a place for umbrellas by the door')).toMatch(
      /The shop says: Yes, on a lead/,
    );
  });

  test('goes out only when it was said that it shall', async () => {
    await house.does('mei', 'correct my last answer');
    await house.does('mei', 'No dgos');
    await house.does('mei', 'No dogs, sorry.');
    expect(house.told('ann')).not.toContain('No d');
    expect(await house.does('mei', 'leave it')).toMatch(/stays as it was sent/);
    expect(house.told('ann')).not.toContain('No d');
    await house.does('mei', 'correct the answer: No dogs, sorry.');
    await house.does('mei', 'send it');
    expect(house.told('ann')).toMatch(correction);
  });

  test('by two in the same instant is one, and the second is shown what it reads now', async () => {
    await house.does('mei', 'correct my last answer');
    await house.does('mei', 'No dogs, sorry.');
    await house.does('tom', 'correct the answer');
    await house.does('tom', 'Cats only.');
    await Promise.all([house.web.take(incoming('mei', 'yes')), house.web.take(incoming('tom', 'yes'))]);
    await house.app.settled();
    expect(count(house.told('ann'), /Correction:/)).toBe(1);
    const both = [house.told('mei'), house.told('tom')].map((told) => /has put it right meanwhile/.test(told));
    expect(both.filter(Boolean)).toHaveLength(1);
  });

  test('outlives the power, and is told once', async () => {
    await house.does('mei', 'correct my last answer');
    await house.does('mei', 'No dogs, sorry.');
    await house.web.take(incoming('mei', 'yes', { receivedAt: house.clock.now() }));
    await house.crash();
    const told = house.messages('ann').filter(({ paragraphs }) => /Correction:/.test(paragraphs.join()));
    expect(new Set(told.map(({ id }) => id)).size).toBe(1);
    expect(await house.does('mei', 'correct my last answer')).toMatch(/You answered: No dogs, sorry\./);
  });

  test('of whoever has turned the house away waits for them, and the shop is told so', async () => {
    await house.web.take(incoming('ann', { kind: 'reach', reachable: false }));
    await house.app.settled();
    expect(await corrects('mei')).toMatch(/They cannot be reached at the moment: the correction waits here/);
    expect(house.told('ann')).not.toContain('Correction');
    await house.does('mei', 'lessons, behind the counter');
    expect(await house.tap('mei', 'What could not be delivered')).toMatch(
      /could not be reached.*the corrected answer to: May I bring my dog/,
    );
    await house.web.take(
      incoming('ann', { kind: 'reach', reachable: true }, { receivedAt: house.clock.now() + 5_000 }),
    );
    await house.app.settled();
    expect(house.told('ann')).toMatch(correction);
  });

  test('of whoever was forgotten meanwhile goes nowhere, and says so', async () => {
    await house.does('mei', 'correct my last answer');
    await house.does('mei', 'No dogs, sorry.');
    await house.does('ann', 'forget me');
    await house.tap('ann', 'Forget everything');
    expect(await house.does('mei', 'yes')).toMatch(/no longer kept/);
    expect(await house.does('mei', 'correct my last answer')).toMatch(/there is none to correct/);
  });
});

describe('what a shopkeeper means for the house', () => {
  test.each(['who is coming today?', '今天誰會來？', '取消星期六的課', 'cancel the lesson on saturday'])(
    'is not sent to a customer unasked: "%s"',
    async (words) => {
      await house.asks('ben', 'Do you sell honey?');
      await house.does('mei', 'questions');
      await house.does('mei', words);
      expect(house.told('ben')).not.toContain(words);
      await house.tap('mei', 'Yes, send it there');
      expect(house.told('ben')).toContain(words);
    },
  );
});
