/** The hand-over with the power lost at every step: after a message was kept, after it was handled, after it was answered. */
import { afterEach, describe, expect, test } from 'vitest';
import { ShopHouse } from '../conversation/shop-house.ts';
import { incoming } from '../store/samples.ts';

let house: ShopHouse;
afterEach(() => house.end());

const dog = 'May I bring my dog into the shop?';

/** The way of one question, from the first word to a standing answer. */
const way: readonly (readonly [who: string, text: string])[] = [
  ['mei', 'hello'],
  ['ann', 'talk to the shop'],
  ['ann', dog],
  ['mei', 'questions'],
  ['mei', 'Yes, on a lead.'],
  ['mei', 'keep it'],
  ['mei', 'Can I bring a dog into the shop?'],
];

type Loss = (who: string, text: string) => Promise<void>;

const losses: { readonly [when: string]: Loss } = {
  'kept, not handled': async (who, text) => {
    await house.store.record(incoming(who, text, { receivedAt: house.clock.now() }));
    await house.crash();
  },
  'handled, not sent': async (who, text) => {
    for (let i = 0; i < 3; i++) house.hang();
    await house.web.take(incoming(who, text, { receivedAt: house.clock.now() }));
    await new Promise((resolve) => setTimeout(resolve, 20));
    await house.crash();
  },
  sent: async (who, text) => {
    await house.does(who, text);
    await house.crash();
  },
};

describe('the power is lost when a message is', () => {
  test.each(Object.keys(losses).flatMap((when) => way.map(([who, text], at) => ({ when, who, text, at }))))(
    '$when: $who, "$text"',
    async ({ when, at }) => {
      house = await new ShopHouse('mei').open();
      for (const [i, [who, text]] of way.entries()) {
        if (i === at) await losses[when]?.(who, text);
        else await house.does(who, text);
      }
      // The page may be told twice what it was being told when the power went, and shows it once.
      const answers = house.messages('ann').filter(({ paragraphs }) => paragraphs.join().includes('The shop writes'));
      expect(new Set(answers.map(({ id }) => id)).size).toBe(1);
      expect(answers.at(-1)?.paragraphs.join('\n')).toContain('Yes, on a lead.');
      expect(await house.does('ben', 'may I bring dogs into the shop')).toMatch(/The shop says: Yes, on a lead\./);
      expect(await house.does('mei', 'questions')).toMatch(/No question is waiting/);
    },
  );
});
