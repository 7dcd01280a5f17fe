/** What every store must do for the shopkeeper's own side; called, like the rest of the contract, with a way to make an empty one. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Owed, Store, Turn } from '../../src/store/contract.ts';
import {
  act,
  bookingOf,
  boardOf,
  day,
  denverAt,
  does,
  enrols,
  sent,
  starts,
  tendAll,
  told as toldTo,
  turnOf,
  withLesson,
} from './lesson-samples.ts';
import { claimAt, commitOf, exchange, incoming, say } from './samples.ts';

const guest = (turn: Turn, more: { seats?: number; to?: 'seated' | 'waiting'; mail?: null } = {}): Change => ({
  do: 'enrol-guest',
  booking: bookingOf(turn),
  lesson: 'white-evening',
  seats: 1,
  to: 'seated',
  name: 'Ah Keong',
  mail: 'keong@example.org',
  language: 'zh-Hans',
  at: day,
  ...more,
});
const putBack =
  (booking: string, to: 'seated' | 'waiting' = 'seated') =>
  (turn: Turn): Change => ({ do: 'put-back-guest', booking, id: bookingOf(turn), to, at: day });
const reseat = (booking: string, seats: number, was: number) => (): Change => ({
  do: 'reseat-guest',
  booking,
  seats,
  was,
  at: day,
});
const word = (booking: string) => (): Change => ({ do: 'write-to-guest', booking, text: 'The door is open.' });
const moving = (seen: number): Change => ({
  do: 'move-lesson',
  lesson: 'white-evening',
  seen,
  starts: '2026-12-06T19:00',
  minutes: null,
});
const annIs = (store: Store, reachable: boolean) => store.record(incoming('ann', { kind: 'reach', reachable }));
const reachIn = async (store: Store) => (await boardOf(store, 'mei')).doors[0]?.bookings[0]?.reach;
const code: Change = { do: 'offer-code', code: 'QRST-2345', until: day + 600_000 };
const letters = (store: Store, now = day): Promise<readonly Owed[]> =>
  store.claim(claimAt(now, { channels: ['mail'] }));

const counts = (what: 'tea-asked' | 'too-bitter', item: string): Change => ({ do: 'count', what, item });

/** Someone writes the code; what it was found to be. */
async function tries(store: Store, from: string, now = day): Promise<Turn['desk']['code']> {
  const { person } = await store.record(incoming(from, 'qrst 2345', { receivedAt: now }));
  const turn = await store.load(person ?? 0, now);
  const judged = turn?.desk.code ?? null;
  const used: Change[] = judged?.right ? [{ do: 'use-code', right: true, tries: judged.tries ?? 0 }] : [];
  if (turn) await store.commit(commitOf(turn, used, { now }));
  return judged;
}

export function deskContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} keeps the contract of a store behind the counter`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
      await store.appoint([{ channel: 'web', from: 'mei' }], day);
      await exchange(store, 'mei', []);
    });
    afterEach(() => store.close());

    describe('someone without a chat', () => {
      test('is put on the list, and told by mail in their language', async () => {
        await withLesson(store);
        expect(await does(store, 'mei', (turn) => guest(turn, { seats: 2 }))).toMatchObject({ outcome: 'done' });
        expect((await boardOf(store, 'mei')).doors).toMatchObject([{ bookings: [{ seats: 2, standing: 'seated' }] }]);
        expect(await letters(store)).toMatchObject([
          {
            address: { channel: 'mail', chat: 'keong@example.org' },
            language: 'zh-Hans',
            saying: { phrases: [{ key: 'lesson-told-written-down' }], show: { kind: 'calendar' } },
          },
        ]);
      });

      test('is reminded, and told when the lesson moves, there as well', async () => {
        await withLesson(store);
        const { booking } = await does(store, 'mei', guest);
        for (const { id } of await letters(store)) await store.settle(id, { kind: 'sent', ref: id }, day);
        const [door] = (await boardOf(store, 'mei')).doors;
        await does(store, 'mei', () => moving(door?.lesson.revision ?? 0));
        const [moved] = await letters(store);
        expect(moved?.saying.phrases).toMatchObject([{ key: 'lesson-told-moved' }]);
        await store.settle(moved?.id ?? '', { kind: 'sent', ref: '' }, day);
        await store.tend(denverAt('2026-12-05T18:00'), 64);
        const [reminder] = await letters(store, denverAt('2026-12-05T18:00'));
        expect(reminder?.saying.later?.name).toContain(booking);
      });

      test('is written down by a shopkeeper only, and gets no seat that is not there', async () => {
        await withLesson(store);
        expect((await does(store, 'ann', guest)).outcome).toBe('moved');
        await enrols(store, 'ann', { seats: 3 });
        expect((await does(store, 'mei', guest)).outcome).toBe('moved');
        expect(await letters(store)).toEqual([]);
        expect((await does(store, 'mei', (turn) => guest(turn, { to: 'waiting' }))).outcome).toBe('done');
        expect(await letters(store)).toMatchObject([
          { saying: { phrases: [{ key: 'lesson-told-written-down-waiting' }] } },
        ]);
      });

      test('who left no address has a seat, and the shop a task for each thing they should be told', async () => {
        await withLesson(store);
        await does(store, 'mei', (turn) => guest(turn, { mail: null }));
        const [door] = (await boardOf(store, 'mei')).doors;
        expect(door?.bookings).toMatchObject([{ standing: 'seated', reach: 'none' }]);
        await does(store, 'mei', () => moving(door?.lesson.revision ?? 0));
        await store.tend(denverAt('2026-12-05T18:00'), 64);
        expect(await letters(store, denverAt('2026-12-05T18:00'))).toEqual([]);
        const { undelivered } = (await turnOf(store, 'mei', day)).desk;
        expect(undelivered).toMatchObject([{ why: 'no address', about: { key: 'lesson-subject' } }]);
      });

      test('who left no address cannot wait', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 3 });
        const outcome = await does(store, 'mei', (turn) => guest(turn, { mail: null, to: 'waiting' }));
        expect(outcome.outcome).toBe('moved');
      });

      test('gives back by way of the shop, is told where they can be, and the next is offered the seat', async () => {
        await withLesson(store);
        const { booking } = await does(store, 'mei', (turn) => guest(turn, { seats: 3 }));
        for (const { id } of await letters(store)) await store.settle(id, { kind: 'sent', ref: id }, day);
        await enrols(store, 'ann', { to: 'waiting' });
        const release = { do: 'release-guest', booking: booking ?? '', at: day } as const;
        expect((await does(store, 'ann', () => release)).outcome).toBe('moved');
        expect((await does(store, 'mei', () => release)).outcome).toBe('done');
        expect((await letters(store)).map(({ saying }) => saying.phrases[0]?.key)).toEqual(['lesson-told-did-leave']);
        const [door] = (await boardOf(store, 'mei')).doors;
        expect(door?.bookings.map(({ standing }) => standing)).toEqual(['left', 'offered']);
        // What is gone is gone once.
        expect((await does(store, 'mei', () => release)).outcome).toBe('moved');
        const own = { ...release, booking: door?.bookings[1]?.id ?? '' };
        expect((await does(store, 'mei', () => own)).outcome).toBe('done');
      });

      test('takes someone with a chat off: told once, who waits is offered the seat, and it is not put back then', async () => {
        await withLesson(store, { seats: 1 });
        const ann = await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        const release = { do: 'release-guest', booking: ann, at: day } as const;
        expect((await does(store, 'ben', () => release)).outcome).toBe('moved');
        expect((await does(store, 'mei', () => release)).outcome).toBe('done');
        expect((await does(store, 'mei', () => release)).outcome).toBe('moved');
        expect(toldTo(await sent(store, day)).toSorted()).toEqual(['ann taken-off', 'ben offer']);
        expect((await does(store, 'mei', putBack(ann))).outcome).toBe('moved');
        await tendAll(store, denverAt('2026-12-04T18:00'));
        expect(toldTo(await sent(store, denverAt('2026-12-04T18:00')))).not.toContain('ann evening-before');
      });

      test('puts them back while nobody else has the seat: told once, and reminded as before', async () => {
        await withLesson(store, { seats: 1 });
        const ann = await enrols(store, 'ann');
        await does(store, 'mei', () => ({ do: 'release-guest', booking: ann, at: day }));
        expect((await does(store, 'ann', putBack(ann))).outcome).toBe('moved');
        expect((await does(store, 'mei', putBack(ann))).outcome).toBe('done');
        expect((await does(store, 'mei', putBack(ann))).outcome).toBe('moved');
        expect(toldTo(await sent(store, day))).toEqual(['ann taken-off', 'ann put-back']);
        const [door] = (await boardOf(store, 'mei')).doors;
        expect(door?.bookings.map(({ standing }) => standing)).toEqual(['left', 'seated']);
        await tendAll(store, denverAt('2026-12-04T18:00'));
        expect(toldTo(await sent(store, denverAt('2026-12-04T18:00')))).toEqual(['ann evening-before']);
      });

      test('changes their seats, after the time for giving back too: told once, by a shopkeeper only, and who waits gets the rest', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann', { seats: 3 });
        await enrols(store, 'ben', { to: 'waiting' });
        expect((await does(store, 'ben', reseat(ann, 1, 3))).outcome).toBe('moved');
        const late = denverAt('2026-12-05T12:00');
        const change = (): Change => ({ do: 'reseat-guest', booking: ann, seats: 2, was: 3, at: late });
        expect((await does(store, 'mei', change, late)).outcome).toBe('done');
        // As it was shown it is no more.
        expect((await does(store, 'mei', change, late)).outcome).toBe('moved');
        expect(toldTo(await sent(store, late)).toSorted()).toEqual(['ann reseated-by-shop', 'ben offer']);
        const [door] = (await boardOf(store, 'mei', late)).doors;
        expect(door?.bookings.map(({ seats, standing }) => [seats, standing])).toEqual([
          [2, 'seated'],
          [1, 'offered'],
        ]);
      });

      test('gives nobody more seats than there are', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann', { seats: 2 });
        await enrols(store, 'ben');
        expect((await does(store, 'mei', reseat(ann, 3, 2))).outcome).toBe('moved');
        expect(toldTo(await sent(store, day))).toEqual([]);
      });

      test('puts them into another lesson, both at once: told once, reminded of that one alone', async () => {
        await withLesson(store, { seats: 1 });
        await withLesson(store, { id: 'later', starts: '2026-12-12T19:00', seats: 1 });
        const ann = await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        const transfer = (turn: Turn): Change => ({
          do: 'transfer-guest',
          booking: ann,
          lesson: 'later',
          id: bookingOf(turn),
          at: day,
        });
        expect((await does(store, 'ben', transfer)).outcome).toBe('moved');
        expect((await does(store, 'mei', transfer)).outcome).toBe('done');
        expect((await does(store, 'mei', transfer)).outcome).toBe('moved');
        expect(toldTo(await sent(store, day)).toSorted()).toEqual(['ann transferred', 'ben offer']);
        const doors = (await boardOf(store, 'mei')).doors;
        expect(doors.map(({ bookings }) => bookings.map(({ standing }) => standing))).toEqual([
          ['left', 'offered'],
          ['seated'],
        ]);
        const eve = denverAt('2026-12-04T18:00');
        await tendAll(store, eve);
        expect(toldTo(await sent(store, eve))).not.toContain('ann evening-before');
        const eveThen = denverAt('2026-12-11T18:00');
        await tendAll(store, eveThen);
        expect(toldTo(await sent(store, eveThen))).toContain('ann evening-before');
      });

      test('leaves them where they are when there is no room', async () => {
        await withLesson(store);
        await withLesson(store, { id: 'later', starts: '2026-12-12T19:00', seats: 1 });
        const ann = await enrols(store, 'ann', { seats: 1 });
        await enrols(store, 'ben', { lesson: 'later' });
        const outcome = await does(store, 'mei', (turn) => ({
          do: 'transfer-guest',
          booking: ann,
          lesson: 'later',
          id: bookingOf(turn),
          at: day,
        }));
        expect(outcome.outcome).toBe('moved');
        const doors = (await boardOf(store, 'mei')).doors;
        expect(doors.map(({ bookings }) => bookings.length)).toEqual([1, 1]);
        expect(doors[0]?.bookings[0]?.standing).toBe('seated');
      });

      test('writes to one of them and nobody else; whom nothing reaches is a task', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann');
        await enrols(store, 'ben');
        expect((await does(store, 'ben', word(ann))).outcome).toBe('moved');
        expect((await does(store, 'mei', word(ann))).outcome).toBe('done');
        expect(toldTo(await sent(store, day))).toEqual(['ann written-to-one']);
        const { booking } = await does(store, 'mei', (turn) => guest(turn, { mail: null }));
        await does(store, 'mei', word(booking));
        const turn = await turnOf(store, 'mei');
        expect(turn.desk.undelivered).toMatchObject([{ why: 'no address' }]);
      });

      test('puts who waited back in the place they had', async () => {
        await withLesson(store, { seats: 1 });
        const ann = await enrols(store, 'ann');
        const ben = await enrols(store, 'ben', { to: 'waiting' });
        await enrols(store, 'cho', { to: 'waiting' });
        await does(store, 'mei', () => ({ do: 'release-guest', booking: ben, at: day }));
        expect((await does(store, 'mei', putBack(ben, 'waiting'))).outcome).toBe('done');
        expect(toldTo(await sent(store, day))).toEqual(['ben taken-off', 'ben put-back']);
        await does(store, 'ann', () => act(ann, 'leave'));
        expect(toldTo(await sent(store, day))).toEqual(['ben offer']);
      });

      test('may share an address with another', async () => {
        await withLesson(store);
        await does(store, 'mei', guest);
        expect((await does(store, 'mei', guest)).outcome).toBe('done');
        expect((await boardOf(store, 'mei')).upcoming).toMatchObject([{ free: 1 }]);
      });
    });

    describe('who turned the house away', () => {
      test('is listed so until they are back', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 1 });
        expect(await reachIn(store)).toBe('chat');
        await annIs(store, false);
        expect(await reachIn(store)).toBe('none');
        await annIs(store, true);
        expect(await reachIn(store)).toBe('chat');
      });

      test('while word of a move was under way, is for the shop to tell as well', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 1 });
        for (const { id } of await store.claim(claimAt(day))) await store.settle(id, { kind: 'sent', ref: id }, day);
        await does(store, 'mei', () => moving(0));
        for (const { id } of await store.claim(claimAt(day))) {
          await store.settle(id, { kind: 'unreachable', why: 'blocked' }, day);
        }
        const { undelivered } = (await turnOf(store, 'mei', day)).desk;
        expect(undelivered).toMatchObject([{ why: 'could not be reached', about: { key: 'lesson-subject' } }]);
      });

      test('gets word of a move when they are back; until then it is for the shop to tell them', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 1 });
        await annIs(store, false);
        await does(store, 'mei', () => moving(0));
        const { undelivered } = (await turnOf(store, 'mei', day)).desk;
        expect(undelivered).toMatchObject([{ why: 'could not be reached', about: { key: 'lesson-subject' } }]);
        await annIs(store, true);
        const told = await store.claim(claimAt(day));
        expect(told.some(({ saying }) => saying.phrases[0]?.key === 'lesson-told-moved')).toBe(true);
      });
    });

    describe('a code for a colleague', () => {
      test('makes one shopkeeper, once', async () => {
        expect((await does(store, 'mei', () => code)).outcome).toBe('done');
        expect((await tries(store, 'tom'))?.right).toBe(true);
        expect((await turnOf(store, 'tom')).desk.keeper).toBe(true);
        expect((await tries(store, 'eve'))?.right).toBe(false);
      });

      test('is worth nothing after its time, and is given by a shopkeeper only', async () => {
        expect((await does(store, 'eve', () => code)).outcome).toBe('moved');
        expect((await tries(store, 'eve'))?.right).toBe(false);
        await does(store, 'mei', () => code);
        expect((await tries(store, 'tom', day + 600_000))?.right).toBe(false);
      });
    });

    test('counts by tea and never by person, shown to a shopkeeper, of the last 30 days', async () => {
      const monthMs = 30 * 86_400_000;
      await does(store, 'ann', () => counts('tea-asked', 'keemun'), day - monthMs - 86_400_000);
      await does(store, 'ann', () => counts('tea-asked', 'longjing'));
      await does(store, 'ben', () => counts('tea-asked', 'longjing'));
      await does(store, 'ben', () => counts('tea-asked', 'sencha'));
      await does(store, 'ben', () => counts('too-bitter', 'sencha'));
      expect((await turnOf(store, 'mei')).desk.tallies).toEqual([
        { what: 'tea-asked', item: 'longjing', count: 2 },
        { what: 'tea-asked', item: 'sencha', count: 1 },
        { what: 'too-bitter', item: 'sencha', count: 1 },
      ]);
      expect((await turnOf(store, 'ann')).desk.tallies).toEqual([]);
    });

    test('tells a shopkeeper what could not be brought, until they have seen it', async () => {
      const ann = await exchange(store, 'ann', [say('hello')]);
      const [owed] = await store.claim(claimAt(day));
      await store.settle(owed?.id ?? '', { kind: 'give-up', why: 'no-such-address 550' }, day);
      const turn = await turnOf(store, 'mei');
      expect(turn.desk.undelivered).toMatchObject([{ person: ann, why: 'no-such-address 550', at: day }]);
      expect((await turnOf(store, 'ann')).desk.undelivered).toEqual([]);
      const seen: Change = { do: 'seen-undelivered', upTo: turn.desk.undelivered[0]?.id ?? 0 };
      await store.commit(commitOf(turn, [seen], { now: day }));
      expect((await turnOf(store, 'mei')).desk.undelivered).toEqual([]);
    });

    describe('the morning', () => {
      const morning = denverAt('2026-12-05T07:30');

      test('is told once a day, with who comes', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 2 });
        expect(await store.tellMorning('2026-12-05', true, morning)).toBe(true);
        expect(await store.tellMorning('2026-12-05', true, morning + 1)).toBe(false);
        const [told] = await store.claim(claimAt(morning));
        expect(told?.address.chat).toBe('chat-of-mei');
        expect(told?.saying.phrases.map(({ key }) => key)).toEqual([
          'desk-told-morning',
          'desk-told-day',
          'desk-told-person',
        ]);
        expect(await store.tellMorning('2026-12-06', true, starts + 86_400_000)).toBe(false);
      });

      test.each([
        { mail: true, key: 'desk-told-person' },
        { mail: false, key: 'desk-told-person-untold' },
      ])('knows whom it reaches with mail: $mail', async ({ mail, key }) => {
        await withLesson(store);
        await does(store, 'mei', guest);
        await store.tellMorning('2026-12-05', mail, morning);
        const told = (await store.claim(claimAt(morning))).filter(({ address }) => address.chat === 'chat-of-mei');
        const [person] = told
          .flatMap(({ saying }) => saying.phrases)
          .filter((one) => one.key.startsWith('desk-told-person'));
        expect(person?.key).toBe(key);
      });

      test('is not told when it brings nothing', async () => {
        expect(await store.tellMorning('2026-12-05', true, morning)).toBe(false);
        expect(await store.claim(claimAt(morning))).toEqual([]);
      });
    });
  });
}
