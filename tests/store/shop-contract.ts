/** What every store must do between people and the shop; called, like the rest of the contract, with a way to make an empty one. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Store, Turn } from '../../src/store/contract.ts';
import { claimAt, commitOf, exchange, incoming, loaded, noon, say, saying } from './samples.ts';

const ask = (id: number): Change => ({ do: 'ask', id, text: 'may I bring a dog?', language: 'zh-Hant' });
const answer = (id: number): Change => ({ do: 'answer', id, text: 'yes', saying: saying('answered') });
const correct = (id: number, before = 'yes'): Change => ({
  do: 'correct-answer',
  id,
  before,
  text: 'no',
  saying: saying('corrected'),
});
const asked = (store: Store, id = 900): Promise<number> => exchange(store, 'ann', [ask(id)]);

async function appointed(store: Store): Promise<number> {
  await store.appoint([{ channel: 'web', from: 'mei' }], noon);
  return exchange(store, 'mei', []);
}

async function turnOf(store: Store, from: string): Promise<Turn> {
  const { person } = await store.record(incoming(from, 'hello'));
  return loaded(store, person ?? 0);
}

async function tryChange(store: Store, from: string, change: Change): Promise<string> {
  return store.commit(commitOf(await turnOf(store, from), [change]));
}

export function shopContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} keeps the contract of a store towards the shop`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
    });
    afterEach(() => store.close());

    test('shows what waits to a shopkeeper only', async () => {
      await asked(store);
      await appointed(store);
      const mei = (await turnOf(store, 'mei')).desk;
      expect(mei).toMatchObject({ keeper: true, staffed: true, waitingCount: 1 });
      expect(mei.waiting).toMatchObject([{ id: 900, text: 'may I bring a dog?', language: 'zh-Hant', askedAt: noon }]);
      const ann = (await turnOf(store, 'ann')).desk;
      expect(ann).toMatchObject({
        keeper: false,
        staffed: true,
        asked: 1,
        waiting: [],
        waitingCount: 0,
        answered: [],
      });
    });

    test('tells every shopkeeper whom the house has met', async () => {
      await store.appoint(
        ['mei', 'tom', 'never-met'].map((from) => ({ channel: 'web', from })),
        noon,
      );
      await exchange(store, 'mei', []);
      await exchange(store, 'tom', []);
      await exchange(store, 'ann', [{ do: 'tell-keepers', saying: saying('asked') }]);
      const chats = (await store.claim(claimAt(noon))).map(({ address }) => address.chat);
      expect(chats).toEqual(['chat-of-mei', 'chat-of-tom']);
    });

    test('takes the first answer, sends it where it was asked, and no second', async () => {
      await asked(store);
      await appointed(store);
      expect(await tryChange(store, 'mei', answer(900))).toBe('done');
      expect(await tryChange(store, 'mei', answer(900))).toBe('moved');
      const [owed, ...others] = await store.claim(claimAt(noon));
      expect(others).toEqual([]);
      expect(owed?.address).toEqual({ channel: 'web', chat: 'chat-of-ann' });
    });

    test.each([
      ['answers', answer(900)],
      ['corrects an answer', correct(900)],
      ['keeps an answer', { do: 'keep-answer', id: 900, question: null }],
      ['drops an answer', { do: 'drop-answer', id: 1 }],
    ] satisfies readonly (readonly [string, Change])[])('lets nobody else do it: %s', async (_, change) => {
      await asked(store);
      await appointed(store);
      await tryChange(store, 'mei', answer(900));
      await tryChange(store, 'mei', { do: 'keep-answer', id: 900, question: 'dogs?' });
      expect(await tryChange(store, 'ann', change)).toBe('moved');
      await store.appoint([], noon);
      expect(await tryChange(store, 'mei', change)).toBe('moved');
      expect((await turnOf(store, 'ben')).desk.standing).toMatchObject([{ question: 'dogs?', answer: 'yes' }]);
    });

    test('puts an answer right where it was asked and kept, as long as it reads as it was known', async () => {
      await asked(store);
      await asked(store, 901);
      await appointed(store);
      expect(await tryChange(store, 'mei', correct(900))).toBe('moved');
      for (const id of [900, 901]) {
        await tryChange(store, 'mei', answer(id));
        await tryChange(store, 'mei', { do: 'keep-answer', id, question: `dogs ${id}?` });
      }
      expect(await tryChange(store, 'mei', correct(900, 'perhaps'))).toBe('moved');
      expect(await tryChange(store, 'mei', correct(900))).toBe('done');
      expect(await tryChange(store, 'mei', correct(900))).toBe('moved');
      const { answered, standing } = (await turnOf(store, 'mei')).desk;
      expect(answered.map((one) => [one.id, one.answer])).toEqual([
        [901, 'yes'],
        [900, 'no'],
      ]);
      expect(standing.map((one) => [one.ofQuestion, one.answer])).toEqual([
        [900, 'no'],
        [901, 'yes'],
      ]);
      const told = await store.claim({ ...claimAt(noon), limit: 9 });
      expect(told.every(({ address }) => address.chat === 'chat-of-ann')).toBe(true);
    });

    test('keeps the same list of standing answers until it changes', async () => {
      await asked(store);
      await appointed(store);
      await tryChange(store, 'mei', answer(900));
      await tryChange(store, 'mei', { do: 'keep-answer', id: 900, question: 'dogs?' });
      const [first, second] = [(await turnOf(store, 'ben')).desk.standing, (await turnOf(store, 'cho')).desk.standing];
      expect(second).toBe(first);
      expect(await tryChange(store, 'mei', { do: 'drop-answer', id: first[0]?.id ?? 0 })).toBe('done');
      expect((await turnOf(store, 'dan')).desk.standing).toEqual([]);
    });

    test('quotes what was asked from where it is kept, and says so once it is gone', async () => {
      const ann = await asked(store);
      await appointed(store);
      const quote = { quoteOf: 900, part: 'question', gone: 'gone' };
      const quoting = say('asked', { phrases: [{ key: 'asked', values: { quote, deep: [{ quote }] } }] });
      await exchange(store, 'mei', [quoting]);
      const [owed] = await store.claim(claimAt(noon));
      const told = 'may I bring a dog?';
      expect(owed?.saying.phrases[0]?.values).toEqual({ quote: told, deep: [{ quote: told }] });
      await store.settle(owed?.id ?? '', { kind: 'sent', ref: 'r' }, noon);
      await store.forget(ann, noon);
      const [again] = await store.history({ channel: 'web', chat: 'chat-of-mei' }, null);
      expect(again?.saying.phrases[0]?.values).toEqual({ quote: 'gone', deep: [{ quote: 'gone' }] });
    });

    test('takes nobody’s words for a quote', async () => {
      await asked(store);
      const words = '{"quoteOf":900,"part":"question","gone":null}';
      await exchange(store, 'eve', [say('echo', { phrases: [{ key: 'echo', values: { words } }] })]);
      const [owed] = await store.claim(claimAt(noon));
      expect(owed?.saying.phrases[0]?.values).toEqual({ words });
    });

    test('prunes what was answered long ago, and no question that waits', async () => {
      await asked(store);
      await asked(store, 901);
      await appointed(store);
      await tryChange(store, 'mei', answer(900));
      await store.prune(noon + 1e9);
      const { desk } = await turnOf(store, 'mei');
      expect([desk.waiting, desk.answered].map((list) => list.map(({ id }) => id))).toEqual([[901], []]);
    });

    test('says one last word to whom it forgets, and keeps nothing once that is settled', async () => {
      const { person } = await store.record(incoming('ann', 'forget me'));
      const turn = await loaded(store, person ?? 0);
      await store.commit(commitOf(turn, [{ do: 'forget', farewell: saying('farewell') }], { language: 'zh-Hans' }));
      expect(await store.find('web', 'ann')).toBeNull();
      const [owed, ...others] = await store.claim(claimAt(noon));
      expect(others).toEqual([]);
      expect(owed).toMatchObject({ person: null, language: 'zh-Hans', address: { chat: 'chat-of-ann' } });
      await store.settle(owed?.id ?? '', { kind: 'sent', ref: 'r' }, noon);
      expect(await store.history({ channel: 'web', chat: 'chat-of-ann' }, null)).toEqual([]);
    });
  });
}
