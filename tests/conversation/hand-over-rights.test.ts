/** Who may act for the shop: looked up when something is done, whatever was shown before. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { codeIn, makeShopCode } from '../../src/store/shop-code.ts';
import { incoming } from '../store/samples.ts';
import { ShopHouse } from './shop-house.ts';
import { randomBytes } from 'node:crypto';

let house: ShopHouse;
const dog = 'May I bring my dog into the shop?';
afterEach(() => house.end());

describe('whoever is no shopkeeper', () => {
  beforeEach(async () => {
    house = await new ShopHouse('mei', 'tom').open();
    await house.does('mei', 'hello');
    await house.asks('ann', dog);
  });

  test('is shown no question, and told of none', async () => {
    for (const text of ['questions', 'Questions for the shop', 'answer 1', 'Send that answer again', 'drop 1']) {
      expect(await house.does('eve', text)).not.toContain('dog');
    }
    const words = JSON.stringify(await house.store.exportOf((await house.store.find('web', 'eve')) ?? 0));
    expect(words).not.toContain('dog');
  });

  test('does nothing with a key shown to a shopkeeper, forwarded or guessed', async () => {
    const key = house.key('mei', 'Questions for the shop');
    for (const forged of [key, key.replace(/\d+$/, '0'), key.replace(/^\d+/, '1'), `${key}.0`, 'x']) {
      expect(await house.does('eve', { kind: 'tap', key: forged })).not.toContain('dog');
    }
    expect(house.told('ann')).not.toContain('The shop writes');
  });

  test.each([
    ['answers', ['questions'], (): Promise<string> => house.does('mei', 'Yes.'), 'The shop writes'],
    [
      'keeps an answer',
      ['questions', 'Yes.', 'keep'],
      (): Promise<string> => house.tap('mei', 'As it was asked'),
      'The shop says',
    ],
  ])('any more %s no more, however far they had come', async (_, before, act, effect) => {
    for (const text of before) await house.does('mei', text);
    house.shopkeepers.splice(0, 1);
    await house.crash();
    const told = house.sent.length;
    expect(await act()).toMatch(/for shopkeepers only/);
    await house.does('ann', dog);
    expect(house.told('ann', told)).not.toContain(effect);
    expect(await house.does('mei', 'questions')).not.toContain('dog');
  });

  test('any more cannot use an old tap', async () => {
    const key = house.key('mei', 'Questions for the shop');
    house.shopkeepers.splice(0, 1);
    await house.crash();
    expect(await house.does('mei', { kind: 'tap', key })).toMatch(/for shopkeepers only/);
  });
});

describe('the one-time code', () => {
  const minute = 60_000;
  let code: string;
  beforeEach(async () => {
    house = await new ShopHouse().open();
    code = makeShopCode(randomBytes);
    expect(await house.store.offerCode(code, house.clock.now() + 10 * minute)).toBe(true);
  });

  test.each([
    ['as printed', (text: string) => text],
    ['in small letters', (text: string) => ` ${text.toLowerCase()} `],
    ['without its dash', (text: string) => text.replace('-', '')],
    ['with a space', (text: string) => text.replace('-', ' ')],
  ])('makes a shopkeeper, typed %s, once', async (_, typed) => {
    await house.asks('ann', dog);
    expect(await house.does('mei', typed(code))).toMatch(/You are a shopkeeper now/);
    expect(await house.does('eve', typed(code))).toMatch(/opens nothing/);
    expect(await house.tap('mei', 'Questions for the shop')).toContain(dog);
    expect(await house.does('eve', 'questions')).not.toContain('dog');
    expect(await house.store.offerCode(code, house.clock.now() + minute)).toBe(false);
  });

  test('has one winner of a hundred at once', async () => {
    const people = Array.from({ length: 100 }, (_, i) => `person-${i}`);
    await Promise.all(people.map((from) => house.web.take(incoming(from, code))));
    await house.app.settled();
    const winners = people.filter((from) => house.told(from).includes('You are a shopkeeper now'));
    expect(winners).toHaveLength(1);
    expect(people.filter((from) => house.told(from).includes('opens nothing'))).toHaveLength(99);
  });

  test('is worth nothing after ten minutes', async () => {
    await house.clock.pass(10 * minute);
    expect(await house.does('mei', code)).toMatch(/opens nothing/);
  });

  test('is worth nothing after ten wrong ones, from however many people', async () => {
    for (let i = 0; i < 10; i++) {
      expect(await house.does(`eve-${i % 3}`, 'BCDF-GHJK')).toMatch(/opens nothing/);
    }
    expect(await house.does('mei', code)).toMatch(/opens nothing/);
  });

  test('survives nine wrong ones and a loss of power', async () => {
    for (let i = 0; i < 9; i++) await house.does('eve', 'BCDF-GHJK');
    await house.crash();
    expect(await house.does('mei', code)).toMatch(/You are a shopkeeper now/);
    await house.crash();
    expect(await house.does('mei', 'questions')).toMatch(/No question is waiting/);
  });

  test('is nowhere on the disk', () => {
    expect(house.bytes()).not.toContain(code);
    expect(house.bytes()).not.toContain(code.replace('-', ''));
  });

  test.each(['teapots!', 'oolong gaiwan', '2345-6789', '12345678', 'good-tea', 'BCDF-GHJ', 'BCDF-GHJKL', '鐵觀音'])(
    'is no ordinary text: %s',
    (text) => {
      expect(codeIn(text)).toBeNull();
    },
  );

  test('is made of all its letters, about equally often', () => {
    const counts = new Map<string, number>();
    for (let i = 0; i < 2_000; i++) {
      for (const letter of makeShopCode(randomBytes).replace('-', '')) {
        counts.set(letter, (counts.get(letter) ?? 0) + 1);
      }
    }
    expect(counts.size).toBe(28);
    // 16,000 letters, 571 of each expected, σ ≈ 23.
    for (const count of counts.values()) expect(Math.abs(count - 571)).toBeLessThan(140);
  });
});
