/** What every store must do, whatever it is made of: called with a way to make an empty one. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { chatKey, choiceKey, type Store, type Turn } from '../../src/store/contract.ts';
import { lineOf } from '../../src/store/line-name.ts';
import { claimAt, commitOf, exchange, incoming, keysOf, loaded, noon, refOf, say, stateAt } from './samples.ts';

export function storeContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} keeps the contract of a store`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
    });
    afterEach(() => store.close());

    describe('what arrives', () => {
      test('is kept once, however often it comes', async () => {
        const once = incoming('ann', 'hello');
        const results = await Promise.all([once, once, once].map((one) => store.record(one)));
        expect(results.map((r) => r.outcome)).toEqual(['new', 'seen', 'seen']);
        const turn = await loaded(store, results[0]?.person ?? 0);
        await store.commit(commitOf(turn, []));
        expect((await store.record(once)).outcome).toBe('seen');
        expect(await store.load(turn.person, noon)).toBeNull();
      });

      test('is told apart by channel', async () => {
        const one = incoming('ann', 'hello');
        await store.record(one);
        expect((await store.record({ ...one, channel: 'terminal' })).outcome).toBe('new');
      });

      test('is handled in the order it came, with who and where', async () => {
        const { person } = await store.record(incoming('ann', 'first', { deviceLanguage: 'zh-HK' }));
        await store.record(incoming('ann', 'second'));
        const first = await loaded(store, person ?? 0);
        expect(first).toMatchObject({
          version: 0,
          state: null,
          memory: {},
          language: null,
          deviceLanguage: 'zh-HK',
          address: { channel: 'web', chat: 'chat-of-ann' },
          event: { kind: 'text', text: 'first' },
          receivedAt: noon,
          tries: 0,
        });
        await store.commit(commitOf(first, [], { language: 'zh-Hant', state: stateAt('kettle') }));
        const second = await loaded(store, person ?? 0);
        expect(second).toMatchObject({ version: 1, language: 'zh-Hant', event: { kind: 'text', text: 'second' } });
        expect(second.state).toEqual(stateAt('kettle'));
      });

      test('waits until handled, for the channels asked about', async () => {
        const { person } = await store.record(incoming('ann', 'hello'));
        expect(await store.awaiting(['web'], noon, 10)).toEqual([person]);
        expect(await store.awaiting(['terminal'], noon, 10)).toEqual([]);
        await store.commit(commitOf(await loaded(store, person ?? 0), []));
        expect(await store.awaiting(['web'], noon, 10)).toEqual([]);
      });

      test('counts its tries, and is suspected after a restart', async () => {
        const { person } = await store.record(incoming('ann', 'hello'));
        const turn = await loaded(store, person ?? 0);
        await store.recover(['web'], [], noon);
        expect((await loaded(store, turn.person)).tries).toBe(1);
        await store.tried(turn.person, refOf(turn));
        await store.recover(['web'], [], noon);
        expect((await loaded(store, turn.person)).tries).toBe(2);
      });

      test('a failed event is over, and the state stays', async () => {
        const person = await exchange(store, 'ann', []);
        await store.record(incoming('ann', 'trouble'));
        const turn = await loaded(store, person);
        await store.commit(commitOf(turn, [say('sorry')], { outcome: 'failed', state: turn.state }));
        expect(await store.load(person, noon)).toBeNull();
      });

      test('finds a person by handle, and no stranger', async () => {
        const person = await exchange(store, 'ann', []);
        expect(await store.find('web', 'ann')).toBe(person);
        expect(await store.find('terminal', 'ann')).toBeNull();
      });
    });

    describe('a commit', () => {
      test('of an old version changes nothing', async () => {
        const { person } = await store.record(incoming('ann', 'hello'));
        const turn = await loaded(store, person ?? 0);
        const outcomes = await Promise.all(
          Array.from({ length: 20 }, (_, i) => store.commit(commitOf(turn, [say(`answer-${i}`)]))),
        );
        expect(outcomes.filter((outcome) => outcome === 'done')).toHaveLength(1);
        expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['answer-0']);
      });

      test('of an event already handled changes nothing', async () => {
        const { person } = await store.record(incoming('ann', 'hello'));
        const turn = await loaded(store, person ?? 0);
        await store.commit(commitOf(turn, []));
        expect(await store.commit(commitOf({ ...turn, version: 1 }, [say('again')]))).toBe('moved');
        expect(await store.claim(claimAt(noon))).toEqual([]);
      });

      test('that fails half-way leaves nothing, and its neighbours of the same tick whole', async () => {
        const people = await Promise.all(['ann', 'ben', 'cho'].map((from) => store.record(incoming(from, 'hello'))));
        const turns = await Promise.all(people.map(({ person }) => loaded(store, person ?? 0)));
        const broken = { do: 'wake', name: 'x', at: 'not an instant' as unknown as number } as const;
        const commits = turns.map((turn, i) => commitOf(turn, i === 1 ? [say('half'), broken] : [say(`whole-${i}`)]));
        const results = await Promise.allSettled(commits.map((commit) => store.commit(commit)));
        expect(results.map((r) => r.status)).toEqual(['fulfilled', 'rejected', 'fulfilled']);
        expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['whole-0', 'whole-2']);
        expect((await loaded(store, people[1]?.person ?? 0)).version).toBe(0);
      });

      test('remembers, changes and forgets facts', async () => {
        const person = await exchange(store, 'ann', [
          { do: 'remember', name: 'vessel', value: { id: 'gaiwan', ml: 110 } },
          { do: 'remember', name: 'taste', value: 1.1 },
          { do: 'remember', name: 'taste', value: null },
        ]);
        await store.record(incoming('ann', 'again'));
        expect((await loaded(store, person)).memory).toEqual({ vessel: { id: 'gaiwan', ml: 110 } });
      });
    });

    describe('wakes', () => {
      test('come when due, before what arrived later, once', async () => {
        const person = await exchange(store, 'ann', [{ do: 'wake', name: 'pour', at: noon + 6_000 }]);
        expect(await store.nextDue(['web'], noon)).toBe(noon + 6_000);
        expect(await store.load(person, noon + 5_999)).toBeNull();
        await store.record(incoming('ann', 'late', { receivedAt: noon + 7_000 }));
        const turn = await loaded(store, person, noon + 8_000);
        expect(turn.event).toEqual({ kind: 'wake', name: 'pour', at: noon + 6_000 });
        expect(turn.address.chat).toBe('chat-of-ann');
        await store.commit(commitOf(turn, []));
        expect((await loaded(store, person, noon + 8_000)).event).toMatchObject({ kind: 'text', text: 'late' });
      });

      test('of the same name replace each other, and are withdrawn by name', async () => {
        const person = await exchange(store, 'ann', [
          { do: 'wake', name: 'pour', at: noon + 6_000 },
          { do: 'wake', name: 'pour', at: noon + 9_000 },
          { do: 'wake', name: 'sip', at: noon + 7_000 },
          { do: 'withdraw', name: 'sip' },
        ]);
        expect(await store.load(person, noon + 8_999)).toBeNull();
        expect(await store.awaiting(['web'], noon + 9_000, 10)).toEqual([person]);
      });

      test('may be set again by their own handling', async () => {
        const person = await exchange(store, 'ann', [{ do: 'wake', name: 'pour', at: noon }]);
        await store.commit(commitOf(await loaded(store, person), [{ do: 'wake', name: 'pour', at: noon + 1 }]));
        expect(await store.load(person, noon)).toBeNull();
        expect(await store.nextDue(['web'], noon)).toBe(noon + 1);
      });
    });

    describe('what is owed', () => {
      test('is taken when due, one a chat, and not again while under way', async () => {
        await exchange(store, 'ann', [say('one'), say('two')]);
        await exchange(store, 'ben', [say('other'), say('tomorrow', {}, noon + 86_400_000)]);
        const first = await store.claim(claimAt(noon));
        expect(keysOf(first)).toEqual(['one', 'other']);
        expect(first[0]).toMatchObject({ language: 'en', claimedAt: noon, due: noon, attempts: 0, replaces: null });
        expect(await store.claim(claimAt(noon))).toEqual([]);
        await store.settle(first[0]?.id ?? '', { kind: 'sent', ref: 'r1' }, noon);
        expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['two']);
        expect(await store.nextDue(['web'], noon)).toBe(noon + 86_400_000);
      });

      test('goes timers first, and waits for held chats, channels not at hand and bulk', async () => {
        await exchange(store, 'ann', [
          { ...say('edit'), priority: 'edit' } as ReturnType<typeof say>,
          { ...say('reply'), priority: 'reply' } as ReturnType<typeof say>,
          { ...say('timer'), priority: 'timer' } as ReturnType<typeof say>,
          { ...say('reminder'), priority: 'reminder' } as ReturnType<typeof say>,
        ]);
        const chat = chatKey({ channel: 'web', chat: 'chat-of-ann' });
        expect(await store.claim(claimAt(noon, { held: new Set([chat]) }))).toEqual([]);
        expect(await store.claim(claimAt(noon, { channels: ['terminal'] }))).toEqual([]);
        const order: (string | undefined)[] = [];
        for (const room of [0, 0, 0, 1, 1]) {
          const [owed] = await store.claim(claimAt(noon, { bulkRoom: new Map([['web', room]]) }));
          order.push(owed?.saying.phrases[0]?.key);
          if (owed) await store.settle(owed.id, { kind: 'sent', ref: 'r' }, noon);
        }
        expect(order).toEqual(['timer', 'reply', undefined, 'reminder', 'edit']);
      });

      test('takes of reminders what a channel has room for, and of other channels and of replies all the same', async () => {
        const reminder = { ...say('reminder'), priority: 'reminder' } as ReturnType<typeof say>;
        for (let n = 0; n < 8; n++) await exchange(store, `page-${n}`, [n < 6 ? reminder : say('reply')]);
        for (let n = 0; n < 3; n++) {
          const { person } = await store.record({ ...incoming(`desk-${n}`, 'x'), channel: 'terminal' });
          const turn = await store.load(person ?? 0, noon);
          if (turn) await store.commit(commitOf(turn, [reminder]));
        }
        const bulkRoom = new Map([['web', 2]] as const);
        const taken = await store.claim(claimAt(noon, { bulkRoom }));
        const count = (channel: string, key: string): number =>
          taken.filter(({ address, saying }) => address.channel === channel && saying.phrases[0]?.key === key).length;
        expect([count('web', 'reminder'), count('web', 'reply'), count('terminal', 'reminder')]).toEqual([2, 2, 3]);
      });

      test('never lets one chat keep the others waiting', async () => {
        await exchange(
          store,
          'flood',
          Array.from({ length: 300 }, (_, i) => say(`flood-${i}`)),
        );
        await exchange(store, 'ann', [say('mine')]);
        expect(keysOf(await store.claim(claimAt(noon, { limit: 2 })))).toEqual(['flood-0', 'mine']);
      });

      test('is withdrawn by name, even while it is being sent', async () => {
        const later = { later: { name: 'pour', atMs: noon } };
        const person = await exchange(store, 'ann', [say('call', later)]);
        const [owed] = await store.claim(claimAt(noon));
        await store.record(incoming('ann', 'poured already'));
        await store.commit(commitOf(await loaded(store, person), [{ do: 'withdraw', name: 'pour' }]));
        await store.settle(owed?.id ?? '', { kind: 'retry', at: noon, why: 'busy' }, noon);
        expect(await store.claim(claimAt(noon + 1))).toEqual([]);
      });

      test('replaces the last message of its slot; of several due only the latest is shown', async () => {
        const slot = { slot: 'board' };
        const person = await exchange(store, 'ann', [say('first', slot)]);
        const [first] = await store.claim(claimAt(noon));
        await store.settle(first?.id ?? '', { kind: 'sent', ref: 'ref-1' }, noon);
        await store.record(incoming('ann', 'go on'));
        const sayings = [say('half', slot), say('done', slot), say('much later', slot, noon + 60_000)];
        await store.commit(commitOf(await loaded(store, person), sayings));
        const [edit] = await store.claim(claimAt(noon));
        expect(keysOf(edit ? [edit] : [])).toEqual(['done']);
        expect(edit).toMatchObject({ replaces: 'ref-1', priority: 'edit' });
        await store.settle(edit?.id ?? '', { kind: 'sent', ref: 'ref-1' }, noon);
        expect(await store.claim(claimAt(noon))).toEqual([]);
        expect(keysOf(await store.claim(claimAt(noon + 60_000)))).toEqual(['much later']);
      });

      test('is said in the language spoken when it is sent', async () => {
        const person = await exchange(store, 'ann', [say('later', {}, noon + 1)]);
        await store.record(incoming('ann', '中文'));
        await store.commit(commitOf(await loaded(store, person), [], { language: 'zh-Hans' }));
        expect((await store.claim(claimAt(noon + 1)))[0]?.language).toBe('zh-Hans');
      });

      test('is tried again no sooner than told, its promise unforgotten', async () => {
        await exchange(store, 'ann', [say('one')]);
        const [owed] = await store.claim(claimAt(noon));
        await store.settle(owed?.id ?? '', { kind: 'retry', at: noon + 5_000, why: 'busy' }, noon);
        expect(await store.claim(claimAt(noon + 4_999))).toEqual([]);
        expect(await store.nextDue(['web'], noon)).toBe(noon + 5_000);
        expect(await store.claim(claimAt(noon + 5_000))).toMatchObject([{ attempts: 1, due: noon, id: owed?.id }]);
      });

      test('keeps its order while one is tried again; only a timer goes past', async () => {
        const timer = { ...say('timer'), priority: 'timer' } as ReturnType<typeof say>;
        await exchange(store, 'ann', [say('one'), say('two')]);
        const [one] = await store.claim(claimAt(noon));
        await store.settle(one?.id ?? '', { kind: 'retry', at: noon + 5_000, why: 'busy' }, noon);
        expect(await store.claim(claimAt(noon + 1_000))).toEqual([]);
        await exchange(store, 'ann', [timer]);
        const [call] = await store.claim(claimAt(noon + 1_000));
        expect(keysOf(call ? [call] : [])).toEqual(['timer']);
        await store.settle(call?.id ?? '', { kind: 'sent', ref: 'r' }, noon + 1_000);
        const [first] = await store.claim(claimAt(noon + 5_000));
        await store.settle(first?.id ?? '', { kind: 'sent', ref: 'r' }, noon + 5_000);
        const [second] = await store.claim(claimAt(noon + 5_000));
        expect(keysOf([first, second].flatMap((owed) => owed ?? []))).toEqual(['one', 'two']);
      });

      test.each<[string, 'timer' | 'reply' | 'reminder' | 'edit', readonly string[]]>([
        // Who writes can be reached: what failed is tried now, and before what is no more urgent.
        ['a call to pour', 'timer', ['failed']],
        ['another answer', 'reply', ['failed']],
        ['a reminder', 'reminder', ['answer']],
        ['an edit', 'edit', ['answer']],
      ])('an answer after %s that is tried again', async (_, priority, expected) => {
        await exchange(store, 'ann', [{ ...say('failed'), priority } as ReturnType<typeof say>]);
        const [failed] = await store.claim(claimAt(noon));
        await store.settle(failed?.id ?? '', { kind: 'retry', at: noon + 900_000, why: 'busy' }, noon);
        await exchange(store, 'ann', [say('answer')]);
        expect(keysOf(await store.claim(claimAt(noon + 1_000)))).toEqual(expected);
      });

      test('in doubt twice is given up, and the shop is told', async () => {
        const person = await exchange(store, 'ann', [say('one')]);
        const [first] = await store.claim(claimAt(noon));
        await store.settle(first?.id ?? '', { kind: 'doubt', at: noon, why: 'no answer' }, noon);
        expect(await store.claim(claimAt(noon))).toHaveLength(1);
        await store.begin(first?.id ?? '');
        expect(await store.recover(['web'], [], noon)).toMatchObject({ doubtful: 1 });
        expect(await store.claim(claimAt(noon + 1e9))).toEqual([]);
        expect(await store.exportOf(person)).toMatchObject({ task: [{ task: 'undelivered' }] });
      });

      test('cut off once is sent once more, but only by those who have its channel', async () => {
        await exchange(store, 'ann', [say('one')]);
        const [one] = await store.claim(claimAt(noon));
        await store.begin(one?.id ?? '');
        expect(await store.recover(['terminal'], [], noon)).toEqual({ doubtful: 0, waiting: 0 });
        expect(await store.recover(['web'], [], noon)).toEqual({ doubtful: 1, waiting: 0 });
        expect(keysOf(await store.claim(claimAt(noon)))).toEqual(['one']);
      });

      test.each([
        ['where a repeat does no harm', true, ['web', 'terminal'] as const],
        ['where it had not begun', false, [] as const],
      ])('cut off again and again still waits %s', async (_, begins, harmless) => {
        await exchange(store, 'ann', [say('one')]);
        for (let i = 0; i < 4; i++) {
          const owed = await store.claim(claimAt(noon));
          expect(keysOf(owed)).toEqual(['one']);
          if (begins) await store.begin(owed[0]?.id ?? '');
          expect(await store.recover(['terminal'], [], noon)).toEqual({ doubtful: 0, waiting: 0 });
          expect(await store.recover(['web'], harmless, noon)).toEqual({ doubtful: 1, waiting: 0 });
        }
      });

      test('is settled once: a late word changes nothing', async () => {
        await exchange(store, 'ann', [say('one')]);
        const [owed] = await store.claim(claimAt(noon));
        await store.settle(owed?.id ?? '', { kind: 'sent', ref: 'r' }, noon);
        await store.settle(owed?.id ?? '', { kind: 'retry', at: noon, why: 'late word' }, noon);
        expect(await store.claim(claimAt(noon))).toEqual([]);
      });

      test('is held for who cannot be reached; what was due meanwhile is not sent when they come back', async () => {
        const soon = say('reminder', { later: { name: 'lesson', atMs: noon + 1_000 } });
        const far = say('next reminder', { later: { name: 'lesson-2', atMs: noon + 9_000 } });
        await exchange(store, 'ann', [say('one'), soon, far]);
        const [owed] = await store.claim(claimAt(noon));
        await store.settle(owed?.id ?? '', { kind: 'unreachable', why: 'blocked' }, noon);
        expect(await store.claim(claimAt(noon + 1e6))).toEqual([]);
        expect(await store.nextDue(['web'], noon)).toBeNull();
        await store.record(incoming('ann', { kind: 'reach', reachable: true }, { receivedAt: noon + 5_000 }));
        expect(await store.claim(claimAt(noon + 5_000))).toEqual([]);
        expect(keysOf(await store.claim(claimAt(noon + 9_000)))).toEqual(['next reminder']);
      });

      test('is held too when the person themselves said they are gone', async () => {
        const person = await exchange(store, 'ann', [say('later', {}, noon + 1_000)]);
        await store.record(incoming('ann', { kind: 'reach', reachable: false }));
        expect(await store.load(person, noon)).toBeNull();
        expect(await store.claim(claimAt(noon + 1_000))).toEqual([]);
      });
    });

    describe('choices', () => {
      const choice = {
        id: 'yes',
        label: { key: 'yes', values: {} },
        gives: { a: 1 },
        from: { flow: 'tea', place: 'p' },
      };

      test.each([
        ['the person it was shown to', 'ann', (key: string) => key, choice],
        ['someone else', 'ben', (key: string) => key, null],
        ['a place that is not there', 'ann', (key: string) => key.replace(/\d+$/, '7'), null],
        ['a guessed tag', 'ann', (key: string) => key.replace(/-.*\./, '-AAAAAAAA.'), null],
        ['nonsense', 'ann', () => "1'; DROP TABLE outbox;--", null],
      ])('pressed by %s', async (_, from, change, chosen) => {
        await exchange(store, 'ann', [say('question', { choices: [choice] })]);
        await exchange(store, 'ben', []);
        const [owed] = await store.claim(claimAt(noon));
        const key = change(choiceKey(owed?.id ?? '', 0));
        expect(key.length).toBeLessThanOrEqual(40);
        const { person } = await store.record(incoming(from, { kind: 'tap', key }));
        expect((await loaded(store, person ?? 0)).event).toMatchObject({ kind: 'tap', chosen });
      });
    });

    describe('history', () => {
      test('is what a chat was sent, in the order it was sent, after the message named', async () => {
        await exchange(store, 'ann', [say('early'), say('scheduled', {}, noon + 5_000)]);
        await exchange(store, 'ben', [say('not mine')]);
        await exchange(store, 'ann', [say('between')]);
        const ids: string[] = [];
        for (const now of [noon, noon, noon + 5_000]) {
          for (const owed of await store.claim(claimAt(now))) {
            await store.settle(owed.id, { kind: 'sent', ref: owed.id }, now);
            if (owed.address.chat === 'chat-of-ann') ids.push(owed.id);
          }
        }
        const address = { channel: 'web', chat: 'chat-of-ann' } as const;
        expect(keysOf(await store.history(address, null))).toEqual(['early', 'between', 'scheduled']);
        expect(keysOf(await store.history(address, ids[0] ?? ''))).toEqual(['between', 'scheduled']);
        expect(await store.history(address, ids[2] ?? '')).toEqual([]);
        expect(keysOf(await store.history(address, 'unknown'))).toEqual(['early', 'between', 'scheduled']);
      });

      test('is also what the person wrote and chose there, by the name each had when it arrived', async () => {
        const person = await exchange(store, 'ann', [say('answer')]);
        await exchange(store, 'ben', []);
        const [answer] = await store.claim(claimAt(noon + 1_000));
        const later = incoming('ann', 'later', { receivedAt: noon + 2_000 });
        await store.record(later);
        await store.record({ ...later, channel: 'terminal' });
        const heard = async (after: string | null) =>
          (await store.heard('web', 'ann', after)).map(({ what }) => what.kind === 'text' && what.text);
        expect(await heard(null)).toEqual(['hello', 'later']);
        expect(await heard(answer?.id ?? '')).toEqual(['later']);
        expect(await heard('unknown')).toEqual(['hello', 'later']);
        expect(await store.heard('web', 'stranger', null)).toEqual([]);
        expect((await store.heard('web', 'ann', answer?.id ?? ''))[0]).toEqual({
          line: lineOf(later),
          receivedAt: noon + 2_000,
          what: later.what,
        });
        await store.forget(person, noon);
        expect(await heard(null)).toEqual([]);
      });
    });

    describe('privacy', () => {
      test('gives a person all that is kept of them, and nothing of others', async () => {
        const person = await exchange(store, 'ann', [say('mine'), { do: 'remember', name: 'taste', value: 1.2 }]);
        await exchange(store, 'ben', [say('not mine')]);
        const told = JSON.stringify(await store.exportOf(person));
        for (const word of ['hello', 'mine', 'taste', 'chat-of-ann']) expect(told).toContain(word);
        expect(told).not.toContain('ben');
      });

      test('forgets a person, sees a repeat of theirs, and gives their number to nobody', async () => {
        const once = incoming('ann', 'hello');
        const { person } = await store.record(once);
        await store.commit(
          commitOf(await loaded(store, person ?? 0), [
            say('mine'),
            { do: 'remember', name: 'taste', value: 1.2 },
            { do: 'wake', name: 'pour', at: noon },
            { do: 'task', task: 'question', values: {} },
          ]),
        );
        await store.forget(person ?? 0, noon);
        expect(await store.find('web', 'ann')).toBeNull();
        expect(await store.claim(claimAt(noon))).toEqual([]);
        expect(await store.awaiting(['web'], noon, 10)).toEqual([]);
        expect((await store.record(once)).outcome).toBe('seen');
        const again = await exchange(store, 'ann', []);
        expect(again).toBeGreaterThan(person ?? 0);
        expect((await store.record(once)).outcome).toBe('seen');
        const gone = await store.exportOf(person ?? 0);
        expect(Object.values(gone as object).flat()).toEqual([]);
      });

      test('a commit for someone forgotten meanwhile changes nothing', async () => {
        const { person } = await store.record(incoming('ann', 'hello'));
        const turn = await loaded(store, person ?? 0);
        await store.forget(turn.person, noon);
        expect(await store.commit(commitOf(turn, [say('ghost')]))).toBe('moved');
      });
    });

    test('prunes what is settled and old, and nothing that is owed', async () => {
      await exchange(store, 'ann', [say('sent'), say('next week', {}, noon + 7 * 86_400_000)]);
      const [owed] = await store.claim(claimAt(noon));
      await store.settle(owed?.id ?? '', { kind: 'sent', ref: 'r' }, noon);
      await store.record(incoming('ann', 'not handled yet'));
      expect(await store.prune(noon)).toBe(0);
      expect(await store.prune(noon + 1)).toBe(2);
      expect(keysOf(await store.claim(claimAt(noon + 7 * 86_400_000)))).toEqual(['next week']);
      expect(await store.awaiting(['web'], noon, 10)).toHaveLength(1);
    });

    test('gives no number of what arrived twice, though all of it is pruned', async () => {
      await exchange(store, 'ann', []);
      const { person } = await store.record(incoming('ann', 'the last before a long quiet'));
      const last = await loaded(store, person ?? 0);
      await store.commit(commitOf(last, []));
      await store.prune(noon + 1);
      await store.record(incoming('ann', 'years later'));
      const next = await loaded(store, person ?? 0);
      expect(numberOf(next)).toBeGreaterThan(numberOf(last));
    });
  });
}

const numberOf = ({ event }: Turn): number => (event.kind === 'wake' ? NaN : event.seq);
