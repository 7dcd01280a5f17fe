/** What a store must do with what is handled in the transaction that keeps it. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { AtOnce, Change, Commit, Store, Turn } from '../../src/store/contract.ts';
import { claimAt, commitOf, exchange, incoming, keysOf, loaded, noon, say } from './samples.ts';

const decideAs = (decide: (turn: Turn) => Commit | null): AtOnce => ({ now: noon, decide });
const doing = (...changes: readonly Change[]): AtOnce => decideAs((turn) => commitOf(turn, changes));

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
  });
}
