/** F19: a customer's question on its way to the shop and back, whatever becomes of either. */
import { Tally, type Fault } from './fault.ts';
import { keeper, ShopHouse } from '../conversation/shop-house.ts';
import { incoming } from '../store/samples.ts';

const day = 86_400_000;
const question = 'May I bring my dog into the shop?';
const answer = 'Yes, on a lead.';

interface Way {
  readonly name: string;
  /** Each is done in its order, and the power may be lost after any. */
  readonly steps: readonly ((house: ShopHouse) => Promise<unknown>)[];
  /** What the customer has been told by the shop in the end. */
  readonly answered: 'once' | 'never';
  /** Whether the question still waits for the shop. */
  readonly waits: boolean;
}

const asks = (house: ShopHouse): Promise<unknown> => house.asks('ann', question);
const looks = (house: ShopHouse): Promise<unknown> => house.does('mei', 'questions');
const answers = (house: ShopHouse): Promise<unknown> => house.does('mei', answer);
const passes = (days: number) => async (house: ShopHouse) => {
  await house.clock.pass(days * day);
  await house.app.settled();
};
const reaches = (who: string, reachable: boolean) => async (house: ShopHouse) => {
  await house.web.take(incoming(who, { kind: 'reach', reachable }, { receivedAt: house.clock.now() }));
  await house.app.settled();
};
const forgets = async (house: ShopHouse): Promise<void> => {
  await house.does('ann', 'forget me');
  await house.tap('ann', 'Forget everything');
};

const ways: readonly Way[] = [
  { name: 'at once', steps: [asks, looks, answers], answered: 'once', waits: false },
  { name: 'the shop is away for three days', steps: [asks, passes(3), looks, answers], answered: 'once', waits: false },
  { name: 'nobody answers', steps: [asks, passes(1), looks], answered: 'never', waits: true },
  {
    name: 'two answer at once',
    steps: [
      asks,
      looks,
      (house) => house.does('tom', 'questions'),
      async (house) => {
        await Promise.all([house.web.take(incoming('mei', answer)), house.web.take(incoming('tom', 'No.'))]);
        await house.app.settled();
      },
    ],
    answered: 'once',
    waits: false,
  },
  { name: 'the customer takes all back', steps: [asks, looks, forgets, answers], answered: 'never', waits: false },
  {
    name: 'the shopkeeper has blocked the bot, and is back',
    steps: [reaches('mei', false), asks, passes(1), reaches('mei', true), looks, answers],
    answered: 'once',
    waits: false,
  },
  {
    name: 'the customer has blocked the bot, and is back',
    steps: [asks, looks, reaches('ann', false), answers, passes(1), reaches('ann', true), passes(0.01)],
    answered: 'once',
    waits: false,
  },
  {
    name: 'the shopkeeper is one no more',
    steps: [
      asks,
      looks,
      async (house) => {
        house.shopkeepers.splice(0, 1);
        await house.crash();
      },
      answers,
    ],
    answered: 'never',
    waits: true,
  },
];

export const handOvers: Fault = {
  id: 'F19',
  title: `${ways.length} ways of a question, the power lost after any step`,
  unit: 'questions',
  counts: { few: ways.length, usual: ways.length * 25, long: ways.length * 250 },
  seconds: 75,
  async run({ count, dice }) {
    const tally = new Tally();
    for (let i = 0; i < count; i++) {
      const way = ways[i % ways.length]!;
      tally.add(await goWay(way, dice.below(way.steps.length + 1)));
    }
    return tally.found({ ways: ways.length });
  },
};

/** `lossAfter` beyond the last step: no loss. */
async function goWay({ name, steps, answered, waits }: Way, lossAfter: number): Promise<string | null> {
  const house = await new ShopHouse('mei', 'tom').open();
  try {
    for (const who of ['mei', 'tom', 'ann']) await house.does(who, 'hello');
    for (const [n, step] of steps.entries()) {
      await step(house);
      if (n === lossAfter) await house.crash();
    }
    // The page may be told again what it was being told when the power went, and shows it once.
    const told = house.messages('ann').filter(({ paragraphs }) => paragraphs.join().includes('The shop writes'));
    const times = new Set(told.map(({ id }) => id)).size;
    house.shopkeepers.splice(0, 9, keeper('mei'));
    await house.crash();
    const desk = await house.does('mei', 'questions');
    const open = desk.includes(question);
    const right = answered === 'once' ? times === 1 : times === 0;
    if (right && open === waits) return null;
    return `${name}, power lost after step ${lossAfter}: answered ${times} times, ${open ? 'waits' : 'does not wait'}`;
  } finally {
    await house.end();
  }
}
