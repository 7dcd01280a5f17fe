/** What a store must do with what is handled in the transaction that keeps it. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { AtOnce, Change, Commit, Owed, Room, Store, Turn } from '../../src/store/contract.ts';
import { nameQuote } from '../../src/store/quote.ts';
import { claimAt, commitOf, exchange, incoming, keysOf, loaded, noon, say } from './samples.ts';

const decideAs = (decide: (turn: Turn) => Commit | null, room: Room = 'none'): AtOnce => ({ now: noon, decide, room });
const doing = (...changes: readonly Change[]): AtOnce => decideAs((turn) => commitOf(turn, changes));
const sending = (room: Room, ...changes: readonly Change[]): AtOnce =>
  decideAs((turn) => commitOf(turn, changes), room);

export function atOnceContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} handles what arrives while it keeps it`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
    });
    afterEach(() => store.close());

    test('whole: nothing waits, the answer is owed, the conversation has moved', async () => {
      const { outcome, person, handled } = await store.record(incoming('ann', 'hello'), doing(say('answer')));
      expect([outcome, handled?.outcome]).toEqual(['new', 'handled']);
      expect(await store.load(person ?? 0, noon)).toBeNull();
      expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['answer']);
      await store.record(incoming('ann', 'more'));
      expect(await loaded(store, person ?? 0)).toMatchObject({ version: 1, state: { place: 'somewhere' } });
    });

    test('in the order it came, one seeing what the other left, in one tick', async () => {
      const seen: unknown[] = [];
      const next = decideAs((turn) => {
        seen.push([turn.version, turn.event.kind === 'text' && turn.event.text]);
        return commitOf(turn, []);
      });
      await Promise.all(['one', 'two', 'three'].map((text) => store.record(incoming('ann', text), next)));
      expect(seen).toEqual([
        [0, 'one'],
        [1, 'two'],
        [2, 'three'],
      ]);
    });

    test('once: of a repeat nothing is decided', async () => {
      const one = incoming('ann', 'hello');
      await store.record(one, doing(say('answer')));
      const asked: Turn[] = [];
      const again = await store.record(
        one,
        decideAs((turn) => (asked.push(turn), null)),
      );
      expect([again.outcome, again.handled, asked]).toEqual(['seen', null, []]);
    });

    test('unless it is not decided: then it waits', async () => {
      const { person, handled } = await store.record(
        incoming('ann', 'hello'),
        decideAs(() => null),
      );
      expect(handled).toBeNull();
      expect(await loaded(store, person ?? 0)).toMatchObject({ version: 0, tries: 0, event: { text: 'hello' } });
    });

    test('unless another of the person waits: they are handled in their order', async () => {
      const { person } = await store.record(incoming('ann', 'first'));
      const { handled } = await store.record(incoming('ann', 'second'), doing(say('answer')));
      expect(handled).toBeNull();
      expect(await loaded(store, person ?? 0)).toMatchObject({ event: { text: 'first' } });
    });

    const moved: Change = { do: 'tick-off', booking: 'none', came: true, at: noon };
    const broken: Change = { do: 'wake', name: 'x', at: 'not an instant' as unknown as number };
    test.each([
      ['does not hold', moved],
      ['cannot be written', broken],
    ])(
      'unless what was decided %s: then it waits, nothing is half, and its neighbours are whole',
      async (_, change) => {
        const ben = await exchange(store, 'ben', []);
        const [ann, other] = await Promise.all([
          store.record(incoming('ann', 'hello'), doing(say('half'), change)),
          store.record(incoming('ben', 'hello'), doing(say('whole'))),
        ]);
        expect([ann.outcome, ann.handled, other.handled === null]).toEqual(['new', null, false]);
        expect(await loaded(store, ann.person ?? 0)).toMatchObject({ version: 0, event: { text: 'hello' } });
        expect(await store.load(ben, noon)).toBeNull();
        expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['whole']);
      },
    );

    const told = async (atOnce: AtOnce, from = 'ann'): Promise<Owed | null> =>
      (await store.record(incoming(from, 'hello'), atOnce)).taken;
    const sent = (owed: Owed | null, ref = 'as-sent'): Promise<void> =>
      store.settle(owed?.id ?? '', { kind: 'sent', ref }, noon);
    const claimed = async (): Promise<readonly (string | undefined)[]> => keysOf(await store.claim(claimAt(noon)));

    test('and takes its answer for sending with it, as a claim would have', async () => {
      const straight = await told(sending('any', say('answer')));
      const other = await exchange(store, 'ben', [say('answer')]);
      const [later] = await store.claim(claimAt(noon));
      const { id, person, address, ...same } = later!;
      expect(straight).toMatchObject(same);
      expect([straight?.address.chat, straight?.person === other]).toEqual(['chat-of-ann', false]);
      expect([id === straight?.id, person, address.chat]).toEqual([false, other, 'chat-of-ben']);
      await sent(straight);
      expect(keysOf(await store.history({ channel: 'web', chat: 'chat-of-ann' }, null))).toEqual(['answer']);
    });

    test('with all that was written with it, whatever the order', async () => {
      const { person } = await store.record(incoming('ann', 'hello'));
      const named = say('named', { phrases: [{ key: 'named', values: { name: nameQuote(person ?? 0) } }] });
      const turn = await loaded(store, person ?? 0);
      await store.commit(commitOf(turn, []));
      const straight = await told(sending('any', named, { do: 'remember', name: 'name', value: 'Wren' }));
      expect(straight?.saying.phrases[0]?.values).toEqual({ name: 'Wren' });
    });

    test.each<readonly [string, Room, readonly Change[]]>([
      ['there is no room', 'none', [say('answer')]],
      ['it is said later', 'any', [say('answer', {}, noon + 1_000)]],
      ['nothing is said', 'any', []],
    ])('takes nothing when %s', async (_, room, changes) => {
      expect(await told(sending(room, ...changes))).toBeNull();
      expect((await claimed()).length).toBe(room === 'none' ? 1 : 0);
    });

    test.each<readonly [string, () => Promise<unknown>, readonly string[]]>([
      ['is being sent', () => told(sending('any', say('before'))), []],
      ['waits', () => exchange(store, 'ann', [say('before')]), ['before']],
      [
        'is to be tried again',
        async () => {
          const straight = await told(sending('any', say('before')));
          await store.settle(straight?.id ?? '', { kind: 'retry', at: noon + 1_000, why: 'busy' }, noon);
        },
        // Who writes can be reached again.
        ['before'],
      ],
    ])('takes nothing while another %s in the chat, and lets it go first', async (_, before, next) => {
      await before();
      expect(await told(sending('any', say('answer')))).toBeNull();
      expect(await claimed()).toEqual(next);
    });

    test('what is to come later holds nothing up', async () => {
      await exchange(store, 'ann', [say('tomorrow', {}, noon + 86_400_000)]);
      expect(keysOf([(await told(sending('any', say('answer'))))!])).toEqual(['answer']);
    });

    test('takes the first of several; of several with slots none, for they have an order of their own', async () => {
      const straight = await told(sending('any', say('one'), say('two')));
      expect(keysOf([straight!])).toEqual(['one']);
      expect(await claimed()).toEqual([]);
      await sent(straight);
      expect(await claimed()).toEqual(['two']);
      expect(await told(sending('any', say('one', { slot: 's' }), say('two')), 'ben')).toBeNull();
      expect(await claimed()).toEqual(['one']);
    });

    test('knows what a saying of a slot replaces, and that an edit needs more room', async () => {
      const first = await told(sending('urgent', say('steeping', { slot: 'brew' })));
      expect([first?.replaces, first?.priority]).toEqual([null, 'reply']);
      await sent(first, 'message 1');
      expect(await told(sending('urgent', say('poured', { slot: 'brew' })))).toBeNull();
      expect(await store.claim(claimAt(noon))).toMatchObject([{ replaces: 'message 1', priority: 'edit' }]);
      const other = await told(sending('any', say('steeping', { slot: 'brew' })), 'ben');
      await sent(other, 'message 2');
      const edited = await told(sending('any', say('poured', { slot: 'brew' })), 'ben');
      expect([edited?.replaces, edited?.priority]).toEqual(['message 2', 'edit']);
    });

    test('a sending cut off waits again after a death, as any other', async () => {
      await told(sending('any', say('answer')));
      expect(await store.recover(['web'], ['web'], noon)).toEqual({ doubtful: 1, waiting: 0 });
      expect(await claimed()).toEqual(['answer']);
    });
  });
}
