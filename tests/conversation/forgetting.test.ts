/** What is kept of a person told to them, and all of it gone when they wish, through the whole house. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Sent } from '../../src/messages.ts';
import { incoming } from '../store/samples.ts';
import { ShopHouse } from './shop-house.ts';

let house: ShopHouse;
beforeEach(async () => {
  house = await new ShopHouse('mei').open();
  await house.does('mei', 'hello');
});
afterEach(() => house.end());

/** In everything this person says, and in what the channel knows them by. */
const canary = 'canary4711';
const inLatin = Buffer.from(canary).toString('latin1');
const question = `May I bring my dog called ${canary} into the shop?`;

/** Writes, asks twice, is answered once, and is quoted to the shopkeeper everywhere a question can be. */
async function live(): Promise<void> {
  await house.does(canary, 'tieguanyin in a 110 ml gaiwan');
  await house.asks(canary, question);
  await house.does('mei', 'questions');
  await house.does('mei', 'Yes, on a lead.');
  await house.tap('mei', 'Keep it as a standing answer');
  await house.tap('mei', 'As it was asked');
  await house.asks(canary, `And a parrot called ${canary}?`);
  await house.asks(canary, `And a pony called ${canary}?`);
  await house.does('mei', 'questions');
  await house.does('mei', 'answer 1');
  await house.does('mei', 'back');
  await house.does('mei', 'questions');
  await house.does('mei', 'answers that are kept');
}

const forget = async (): Promise<string> => {
  await house.does(canary, 'forget me');
  return house.tap(canary, 'Forget everything');
};

describe('forget me', () => {
  test('asks once, then leaves no byte of the person, and one last sentence', async () => {
    await live();
    expect(house.bytes()).toContain(inLatin);
    expect(await house.does(canary, 'forget me')).toMatch(/Shall I forget everything about you/);
    expect(house.bytes()).toContain(inLatin);
    expect(await house.tap(canary, 'Forget everything')).toMatch(/Everything about you is gone from here/);
    expect(house.bytes()).not.toContain(inLatin);
    expect(await house.does('mei', 'questions')).toMatch(/No question is waiting/);
    expect(house.bytes()).not.toContain(inLatin);
    await house.crash();
    expect(house.bytes()).not.toContain(inLatin);
  });

  test('keeps everything when it was not meant', async () => {
    await live();
    await house.does(canary, 'forget me');
    expect(await house.tap(canary, 'Keep it')).toMatch(/All is kept/);
    expect(house.bytes()).toContain(inLatin);
  });

  test('is a beginning: whoever writes again is met anew', async () => {
    await live();
    await forget();
    await house.does(canary, 'hello');
    const kept = await house.store.exportOf((await house.store.find('web', canary)) ?? 0);
    expect(kept).toMatchObject({ question: [], standing_answer: [], memory: [], task: [] });
    expect(kept).toMatchObject({ inbox: [{ what: { kind: 'text', text: 'hello' } }] });
  });

  test('forgets nobody else', async () => {
    await house.does('ben', 'I have a 200 ml gaiwan');
    await live();
    const before = await house.store.exportOf((await house.store.find('web', 'ben')) ?? 0);
    await forget();
    expect(await house.store.exportOf((await house.store.find('web', 'ben')) ?? 0)).toEqual(before);
    expect(await house.does('mei', 'questions')).not.toContain('for shopkeepers only');
  });

  test('withdraws a shopkeeper, whose answers stay with who asked', async () => {
    await house.asks('ben', 'may I bring my dog?');
    await house.does('mei', 'questions');
    await house.does('mei', 'Yes, on a lead.');
    await house.does('mei', 'forget me');
    await house.tap('mei', 'Forget everything');
    expect(await house.does('mei', 'questions')).not.toMatch(/waiting/);
    const kept = await house.store.exportOf((await house.store.find('web', 'ben')) ?? 0);
    expect(kept).toMatchObject({ question: [{ answer: 'Yes, on a lead.' }] });
  });

  test.each([
    ['cannot be sent', { outcome: 'refused', why: 'test' }],
    ['reaches nobody', { outcome: 'unreachable', why: 'test' }],
  ] satisfies readonly (readonly [string, Sent])[])(
    'leaves nothing even when the last sentence %s',
    async (_, outcome) => {
      await live();
      await house.does(canary, 'forget me');
      const key = house.key(canary, 'Forget everything');
      house.web.outcomes.push(outcome);
      await house.web.take(incoming(canary, { kind: 'tap', key }));
      await house.app.settled();
      expect(house.bytes()).not.toContain(inLatin);
    },
  );

  test('keeps only the address of a last sentence that is still to be sent, and says it after a loss of power', async () => {
    await live();
    await house.does(canary, 'forget me');
    const key = house.key(canary, 'Forget everything');
    const told = house.sent.length;
    house.hang();
    await house.web.take(incoming(canary, { kind: 'tap', key }));
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(house.bytes()).toContain(`chat-of-${canary}`);
    expect(house.bytes().replaceAll(`chat-of-${canary}`, '')).not.toContain(inLatin);
    await house.crash();
    expect(house.told(canary, told)).toMatch(/Everything about you is gone from here/);
    expect(house.bytes()).not.toContain(inLatin);
  });
});

describe('my data', () => {
  test('is all of it, as JSON, and nobody else in it', async () => {
    await house.does('ben', 'my own secret teapot');
    await live();
    const told = await house.store.exportOf((await house.store.find('web', canary)) ?? 0);
    const words = JSON.stringify(told);
    for (const word of [question, 'Yes, on a lead.', 'tieguanyin', `chat-of-${canary}`]) expect(words).toContain(word);
    expect(words).not.toContain('secret teapot');
    expect(await house.does(canary, 'what do you know about me?')).toMatch(/at the foot of this page/);
  });

  test('of a shopkeeper holds no words of those who asked', async () => {
    await live();
    expect(JSON.stringify(await house.store.exportOf((await house.store.find('web', 'mei')) ?? 0))).not.toContain(
      canary,
    );
  });
});
