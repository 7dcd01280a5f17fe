/** What a store promises of tables of bookings: whole or not at all, each row judged after those before it. */
import { beforeEach, describe, expect, test } from 'vitest';
import type { BookingDraft } from '../../src/core/lessons/booking-draft.ts';
import type { Owed, Store } from '../../src/store/contract.ts';
import { act, boardOf, day, denverAt, does, enrols, withLesson } from './lesson-samples.ts';
import { claimAt, exchange } from './samples.ts';

const row = (more: Partial<BookingDraft> = {}): BookingDraft => ({
  booking: null,
  lesson: 'white-evening',
  name: 'Ah Keong',
  mail: null,
  seats: 1,
  standing: 'seated',
  ...more,
});
const put = (store: Store, ...rows: readonly BookingDraft[]) => store.putBookings(rows, 'en', day);
const letters = (store: Store, now = day): Promise<readonly Owed[]> =>
  store.claim(claimAt(now, { channels: ['mail'], limit: 20 }));
const codes = (wrong: Awaited<ReturnType<typeof put>>) =>
  wrong.flatMap(({ n, mistakes }) => mistakes.map(({ code }) => `${n} ${code}`));

export function bookingContract(name: string, open: () => Promise<Store>): void {
  describe(`bookings of a table in ${name}`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await open();
      return () => store.close();
    });
    const list = async () =>
      (await store.bookings(day)).map((one) => [one.name, one.mail, one.seats, one.standing].join(' '));

    test('enrol each in order, and are listed by name', async () => {
      await withLesson(store);
      await enrols(store, 'ann');
      const mei = row({ name: 'Mei', mail: 'mei@example.org', seats: 2 });
      const waits = row({ name: 'Tom', mail: 'tom@example.org', standing: 'waiting' });
      expect(await put(store, mei, waits)).toEqual([]);
      expect(await list()).toEqual(['  1 seated', 'Mei mei@example.org 2 seated', 'Tom tom@example.org 1 waiting']);
      const told = (await letters(store)).map(({ address, saying }) => `${address.chat} ${saying.phrases[0]?.key}`);
      expect(told).toEqual([
        'mei@example.org lesson-told-written-down',
        'tom@example.org lesson-told-written-down-waiting',
      ]);
    });

    test('of two tables at one instant are all kept', async () => {
      await withLesson(store);
      expect(await put(store, row({ name: 'Mei' }), row({ name: 'Tom' }))).toEqual([]);
      const none = row({ name: 'Ona', seats: 0 });
      expect(codes(await put(store, none, row({ name: 'Ida' })))).toEqual(['0 lesson-seats']);
      expect(await put(store, row({ name: 'Ida' }))).toEqual([]);
      expect(await list()).toEqual(['Mei  1 seated', 'Tom  1 seated', 'Ida  1 seated']);
    });

    test.each<[string, BookingDraft[], string[]]>([
      ['no such lesson', [row({ lesson: 'no' })], ['0 lesson-row-no-lesson']],
      ['a row too many', [row({ seats: 3 }), row({ name: 'Tom' })], ['1 lesson-row-full']],
      ['more seats than are left', [row({ seats: 2 }), row({ name: 'Tom', seats: 2 })], ['1 lesson-row-full']],
      ['more seats than there are', [row({ seats: 10_000 })], ['0 lesson-seats']],
      ['no seat', [row({ seats: 0 })], ['0 lesson-seats']],
      ['one name twice', [row(), row()], ['1 lesson-row-there']],
      [
        'waiting without an address',
        [row({ seats: 3 }), row({ name: 'Tom', standing: 'waiting' })],
        ['1 lesson-row-waits-untold'],
      ],
      [
        'a booking nobody made',
        [row({ booking: { id: 'x', revision: 0 } }), row({ lesson: 'no' })],
        ['0 lesson-row-unknown', '1 lesson-row-no-lesson'],
      ],
    ])('are refused for %s, and nothing of them is kept', async (_, rows, expected) => {
      await withLesson(store);
      expect(codes(await put(store, ...rows))).toEqual(expected);
      expect(await list()).toEqual([]);
      expect(await letters(store)).toEqual([]);
    });

    test.each<[string, number, string]>([
      ['a lesson that has begun', denverAt('2026-12-05T19:30'), 'lesson-started'],
      ['a lesson that is over', denverAt('2026-12-06T19:00'), 'lesson-over'],
    ])('are refused for %s', async (_, now, code) => {
      await withLesson(store);
      expect(codes(await store.putBookings([row()], 'en', now))).toEqual([`0 ${code}`]);
    });

    test('are refused for a cancelled lesson', async () => {
      await withLesson(store);
      await keeper(store);
      const cancel = { do: 'cancel-lesson', lesson: 'white-evening', seen: 0, reason: '' } as const;
      await does(store, 'shop', () => cancel);
      expect(codes(await put(store, row()))).toEqual(['0 lesson-cancelled']);
    });

    test('share an address, but not address and name; and taken in again are there already', async () => {
      await withLesson(store);
      const mail = 'two@example.org';
      expect(await put(store, row({ mail }), row({ name: 'Tom', mail }))).toEqual([]);
      expect(codes(await put(store, row({ mail })))).toEqual(['0 lesson-row-there']);
      expect(await list()).toHaveLength(2);
    });

    test('who gave their seat back can be written down again', async () => {
      await withLesson(store);
      const booking = await enrols(store, 'ann');
      await does(store, 'ann', () => act(booking, 'leave'));
      expect(await put(store, row({ name: 'Ann' }))).toEqual([]);
    });

    test('that are known stay as they are; older ones are passed over, edited ones refused', async () => {
      await withLesson(store);
      const booking = await enrols(store, 'ann');
      const known = row({ booking: { id: booking, revision: 0 } });
      expect(await put(store, known)).toEqual([]);
      expect(codes(await put(store, { ...known, seats: 2 }))).toEqual(['0 lesson-row-edited']);
      expect(codes(await put(store, { ...known, lesson: 'other' }))).toEqual(['0 lesson-row-edited']);
      expect(codes(await put(store, { ...known, standing: 'left' }))).toEqual(['0 lesson-row-edited']);
      await does(store, 'ann', () => act(booking, 'leave'));
      expect(await put(store, known)).toEqual([]);
      expect(await store.bookings(day)).toMatchObject([{ standing: 'left' }]);
    });

    test('without an address get no letter and no reminder, and the shop is told to tell them', async () => {
      await withLesson(store);
      await keeper(store);
      await put(store, row());
      const [door] = (await boardOf(store, 'shop')).doors;
      const evening = denverAt('2026-12-04T18:00');
      expect(await store.tend(evening, 64)).toBe(0);
      expect(await letters(store, evening)).toEqual([]);
      const moved = {
        do: 'move-lesson',
        lesson: 'white-evening',
        seen: door?.lesson.revision ?? 0,
        starts: '2026-12-06T19:00',
        minutes: null,
      } as const;
      expect(await does(store, 'shop', () => moved)).toMatchObject({ outcome: 'done' });
      expect(await letters(store)).toEqual([]);
      const { person } = await store.record({
        channel: 'web',
        updateId: 'later',
        from: 'shop',
        chat: 'shop',
        receivedAt: day,
        what: { kind: 'text', text: 'hello' },
      });
      expect((await store.load(person ?? 0, day))?.desk.undelivered).toMatchObject([{ why: 'no address' }]);
    });
  });
}

async function keeper(store: Store): Promise<void> {
  await store.appoint([{ channel: 'web', from: 'shop' }], day);
  await exchange(store, 'shop', []);
}
