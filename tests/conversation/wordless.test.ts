/** A sentence that is broken: who waits for it is told so in their language, once and in its place, and the shop gets a task. */
import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test } from 'vitest';
import { languages, type Language } from '../../src/core/units.ts';
import { readWordsSource } from '../../src/core/words/source-check.ts';
import { makeWords, type WordsSources } from '../../src/core/words/words.ts';
import type { Say } from '../../src/delivery/render.ts';
import { ShopHouse } from './shop-house.ts';

/** As the files have it, but that this sentence asks for a value nobody gives. */
function wordsWith(broken: string): Say {
  const sources = languages.map((language) => {
    const text = readFileSync(`flows/words/${language}.ftl`, 'utf8');
    // Of two of one name the first counts.
    return [language, readWordsSource(`${broken} = { $nowhere }\n${text}`, null)];
  });
  const words = makeWords(Object.fromEntries(sources) as WordsSources, () => null);
  return (language, phrase) => words.say(language, phrase);
}

class BrokenHouse extends ShopHouse {
  broken: readonly string[] = [];
  readonly #spoilt = new Map<string, Say>();
  protected override says(): Say {
    const whole = super.says();
    return (language, phrase) =>
      (this.broken.includes(phrase.key) ? this.#spoiltBy(phrase.key) : whole)(language, phrase);
  }
  #spoiltBy(key: string): Say {
    const say = this.#spoilt.get(key) ?? wordsWith(key);
    this.#spoilt.set(key, say);
    return say;
  }
}

let house: BrokenHouse;
const open = async (...broken: readonly string[]): Promise<void> => {
  house = await new BrokenHouse('mei').open();
  for (const who of ['mei', 'ann']) await house.does(who, 'hello');
  house.broken = broken;
};
afterEach(() => house.end());

const plain: { readonly [language in Language]: RegExp } = {
  en: /^I had something to tell you here and could not put it into words, sorry\./,
  'zh-Hant': /^這裡本來有話要告訴您，但沒能說出來/,
  'zh-Hans': /^这里本来有话要告诉您，但没能说出来/,
};
const greetings: { readonly [language in Language]: string } = {
  en: 'hello',
  'zh-Hant': '請用繁體中文',
  'zh-Hans': '请用简体中文',
};

const dogs: { readonly [language in Language]: string } = {
  en: 'May I bring my dog?',
  'zh-Hant': '可以帶狗進店裡嗎？',
  'zh-Hans': '可以带狗进店里吗？',
};

describe('a sentence that is broken', () => {
  test.each(languages)('is told as such in %s, with the choices that can be said, once', async (language) => {
    await open();
    await house.does('ann', greetings[language]);
    await house.does('ann', language === 'en' ? 'talk to the shop' : '找店家');
    house.broken = ['passed-on', 'choice-shop'];
    const before = house.messages('ann').length;
    expect(await house.does('ann', dogs[language])).toMatch(plain[language]);
    await house.clock.pass(3_600_000);
    await house.app.settled();
    const [told, ...others] = house.messages('ann').slice(before);
    expect(others).toEqual([]);
    expect(told?.choices).toHaveLength(1);
    const asked = await house.does('ann', { kind: 'tap', key: told?.choices[0]?.key ?? '' });
    expect(asked).toMatch(/Which tea|什麼茶|什么茶/);
  });

  test('keeps its place before what comes after it', async () => {
    await open('ask-question');
    await house.does('ann', 'talk to the shop');
    expect(await house.does('ann', 'May I bring my dog?')).toMatch(/Passed to the shop/);
    const [first, second] = house.messages('ann').slice(-2);
    expect([first?.paragraphs[0], second?.paragraphs[0]]).toEqual([
      expect.stringMatching(plain.en),
      expect.stringMatching(/^Passed to the shop/),
    ]);
  });

  test('is a task for the shop, with who it was and when', async () => {
    await open('shop-told-answer');
    await house.asks('ann', 'May I bring my dog?');
    await house.does('mei', 'questions');
    await house.does('mei', 'Yes.');
    expect(house.told('ann')).toMatch(/could not put it into words/);
    await house.does('mei', 'lessons, behind the counter');
    expect(await house.tap('mei', 'What could not be delivered')).toMatch(/its words failed/);
    expect(await house.tap('mei', 'I have seen it')).not.toMatch(/its words failed/);
  });

  test('of which not even that can be said is given up, and the chat goes on', async () => {
    await open('ask-question', 'house-wordless');
    expect(await house.does('ann', 'talk to the shop')).toBe('');
    expect(await house.does('ann', 'May I bring my dog?')).toMatch(/Passed to the shop/);
    await house.does('mei', 'lessons, behind the counter');
    expect(await house.tap('mei', 'What could not be delivered')).toMatch(/its words failed/);
  });

  test('in the shopkeeper’s own list of what failed does not go round', async () => {
    await open('ask-question', 'desk-told-undelivered');
    await house.does('ann', 'talk to the shop');
    await house.does('mei', 'lessons, behind the counter');
    const before = house.messages('mei').length;
    expect(await house.tap('mei', 'What could not be delivered')).toMatch(plain.en);
    await house.clock.pass(3_600_000);
    await house.app.settled();
    expect(house.messages('mei').length - before).toBe(1);
  });
});
