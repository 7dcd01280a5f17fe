/** What every store must do of lessons; called, like the rest of the contract, with a way to make an empty one. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Store } from '../../src/store/contract.ts';
import {
  act,
  boardOf,
  day,
  denverAt,
  does,
  enrolment,
  enrols,
  lessonOf,
  sent,
  starts,
  tendAll,
  told,
  turnOf,
  withLesson,
} from './lesson-samples.ts';
import { commitOf, exchange } from './samples.ts';

const minute = 60_000;
const hour = 60 * minute;

async function appointed(store: Store): Promise<void> {
  await store.appoint([{ channel: 'web', from: 'mei' }], day);
  await exchange(store, 'mei', []);
}

const reseat = (booking: string, seats: number): Change => ({ do: 'reseat', booking, seats, at: day });

const reminders = (value: string) => (): Change => ({ do: 'remember', name: 'reminders', value });

export function lessonContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} keeps the contract of a store of lessons`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
    });
    afterEach(() => store.close());

    describe('the board', () => {
      test('shows what is to come, and the same list until something changes', async () => {
        await withLesson(store);
        const first = await boardOf(store, 'ann');
        expect(first.upcoming).toMatchObject([{ id: 'white-evening', free: 3, waiting: 0, startsAt: starts }]);
        expect((await boardOf(store, 'ben', day + 1)).upcoming).toBe(first.upcoming);
        await enrols(store, 'ann', { seats: 2 });
        const after = await boardOf(store, 'ben');
        expect(after.upcoming).toMatchObject([{ free: 1 }]);
        expect(after).toMatchObject({ own: [], doors: [], names: [] });
      });

      test('takes a lesson off when it begins', async () => {
        await withLesson(store);
        expect((await boardOf(store, 'ann', starts - 1)).upcoming).toHaveLength(1);
        expect((await boardOf(store, 'ann', starts)).upcoming).toHaveLength(0);
      });

      test('shows a person their own, and a shopkeeper everybody', async () => {
        await appointed(store);
        await withLesson(store);
        const booking = await enrols(store, 'ann', { seats: 2 });
        expect((await boardOf(store, 'ann')).own).toMatchObject([
          { id: booking, seats: 2, standing: 'seated', lesson: { id: 'white-evening', free: 1 } },
        ]);
        const { doors } = await boardOf(store, 'mei');
        expect(doors).toMatchObject([{ lesson: { id: 'white-evening' }, bookings: [{ id: booking, seats: 2 }] }]);
      });
    });

    describe('a seat', () => {
      test('who wants no reminders gets none; wanted again, they come', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await enrols(store, 'ben');
        await does(store, 'ann', reminders('off'));
        const [week, eve, soon] = ['2026-11-28T19:00', '2026-12-04T18:00', '2026-12-05T17:00'].map((at) =>
          denverAt(at),
        );
        await tendAll(store, week ?? 0);
        await tendAll(store, eve ?? 0);
        expect(told(await sent(store, eve ?? 0))).not.toContain('ann evening-before');
        await does(store, 'ann', reminders('on'), eve);
        await tendAll(store, soon ?? 0);
        expect(told(await sent(store, soon ?? 0))).toContain('ann two-hours-before');
      });

      test('one kind of reminder can be unwanted, and the others come', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await does(store, 'ann', reminders('two-hours-before'));
        const [eve, soon] = ['2026-12-04T18:00', '2026-12-05T17:00'].map((at) => denverAt(at));
        await tendAll(store, eve ?? 0);
        expect(told(await sent(store, eve ?? 0))).toContain('ann evening-before');
        await tendAll(store, soon ?? 0);
        expect(told(await sent(store, soon ?? 0))).not.toContain('ann two-hours-before');
      });

      test('is given while there are seats, and a place in the list after that', async () => {
        await withLesson(store);
        await enrols(store, 'ann', { seats: 2 });
        const tooMany = await does(store, 'ben', (turn) => enrolment(turn, { seats: 2 }));
        expect(tooMany.outcome).toBe('moved');
        const needless = await does(store, 'ben', (turn) => enrolment(turn, { seats: 1, to: 'waiting' }));
        expect(needless.outcome).toBe('moved');
        await enrols(store, 'ben', { seats: 2, to: 'waiting' });
        expect((await boardOf(store, 'cho')).upcoming).toMatchObject([{ free: 1, waiting: 1 }]);
      });

      test('the last one, tried for by a hundred at once, has one winner', async () => {
        await withLesson(store, { seats: 1 });
        const turns = await Promise.all(Array.from({ length: 100 }, (_, n) => turnOf(store, `p${n}`)));
        const outcomes = await Promise.all(
          turns.map((turn) => store.commit(commitOf(turn, [enrolment(turn)], { now: day }))),
        );
        expect(outcomes.filter((outcome) => outcome === 'done')).toHaveLength(1);
        const waits = await Promise.all(
          turns
            .filter((_, n) => outcomes[n] === 'moved')
            .map((turn) => store.commit(commitOf(turn, [enrolment(turn, { to: 'waiting' })], { now: day }))),
        );
        expect(waits.every((outcome) => outcome === 'done')).toBe(true);
        const [roster] = await store.rosters(day);
        expect(roster?.bookings.filter(({ standing }) => standing === 'seated')).toHaveLength(1);
        expect(roster?.bookings).toHaveLength(100);
      });

      test.each<readonly [string, (booking: string) => Change]>([
        ['gives back', (booking) => act(booking, 'leave')],
        ['answers for', (booking) => act(booking, 'absent')],
      ])('is its person’s: nobody else %s it', async (_, change) => {
        await withLesson(store);
        const booking = await enrols(store, 'ann', { seats: 2 });
        expect((await does(store, 'eve', () => change(booking))).outcome).toBe('moved');
        expect((await does(store, 'ann', () => change(booking))).outcome).toBe('done');
      });

      test('is not given twice to one person, nor back twice, nor in a lesson that is full, cancelled or begun', async () => {
        await appointed(store);
        await withLesson(store);
        const booking = await enrols(store, 'ann', { seats: 3 });
        expect((await does(store, 'ann', (turn) => enrolment(turn))).outcome).toBe('moved');
        expect((await does(store, 'ben', (turn) => enrolment(turn))).outcome).toBe('moved');
        expect((await does(store, 'ann', () => act(booking, 'leave'))).outcome).toBe('done');
        expect((await does(store, 'ann', () => act(booking, 'leave'))).outcome).toBe('moved');
        const late = await does(store, 'ben', (turn) => enrolment(turn, { now: starts }), starts);
        expect(late.outcome).toBe('moved');
        await does(store, 'mei', () => ({ do: 'cancel-lesson', lesson: 'white-evening', seen: 0, reason: '' }));
        expect((await does(store, 'ben', (turn) => enrolment(turn))).outcome).toBe('moved');
      });

      test('given back goes to the first who fits, and on when its time is up', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann', { seats: 2 });
        await enrols(store, 'ben');
        const big = await enrols(store, 'cho', { seats: 3, to: 'waiting' });
        await enrols(store, 'dan', { to: 'waiting' });
        await enrols(store, 'eva', { to: 'waiting' });
        await enrols(store, 'fay', { to: 'waiting' });
        await does(store, 'ann', () => act(ann, 'leave'));
        expect(told(await sent(store, day))).toEqual(['dan offer', 'eva offer']);
        expect(await store.nextDue(['web'], day)).toBe(day + 2 * hour);
        await tendAll(store, day + 2 * hour);
        expect(told(await sent(store, day + 2 * hour))).toEqual(['dan lapsed', 'eva lapsed', 'fay offer']);
        const [roster] = await store.rosters(day);
        expect(roster?.bookings.find(({ id }) => id === big)?.standing).toBe('waiting');
        const { own } = await boardOf(store, 'fay', day + 2 * hour);
        const id = own[0]?.id ?? '';
        expect(own).toMatchObject([{ standing: 'offered' }]);
        expect((await does(store, 'fay', () => act(id, 'accept', day + 3 * hour), day + 3 * hour)).outcome).toBe(
          'done',
        );
        expect((await does(store, 'fay', () => act(id, 'accept', day + 3 * hour), day + 3 * hour)).outcome).toBe(
          'moved',
        );
      });

      test('an offer taken after its time has moved, though nobody looked meanwhile', async () => {
        await withLesson(store, { seats: 1 });
        const ann = await enrols(store, 'ann');
        const ben = await enrols(store, 'ben', { to: 'waiting' });
        await does(store, 'ann', () => act(ann, 'leave'));
        const late = day + 2 * hour;
        expect((await does(store, 'ben', () => act(ben, 'accept', late), late)).outcome).toBe('moved');
        expect((await boardOf(store, 'cho', late)).upcoming).toMatchObject([{ free: 1, waiting: 0 }]);
        await enrols(store, 'cho', { now: late });
      });
    });

    describe('reminders', () => {
      test('come a week before, the evening before, two hours before, and thanks after', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        const dues = ['2026-11-28T19:00', '2026-12-04T18:00', '2026-12-05T17:00', '2026-12-05T20:45'].map(denverAt);
        let now = day;
        for (const [n, key] of ['week-before', 'evening-before', 'two-hours-before', 'thanks'].entries()) {
          expect(await store.nextDue(['web'], now)).toBe(dues[n]);
          now = dues[n] ?? 0;
          await tendAll(store, now - 1);
          expect(await sent(store, now - 1)).toEqual([]);
          await tendAll(store, now);
          await tendAll(store, now);
          expect(told(await sent(store, now))).toEqual([`ann ${key}`]);
        }
        expect(await store.nextDue(['web'], now)).toBeNull();
      });

      test('that are past when someone enrols are not sent', async () => {
        await withLesson(store);
        const late = denverAt('2026-12-05T12:00');
        await enrols(store, 'ann', { now: late });
        await tendAll(store, late);
        expect(await sent(store, late)).toEqual([]);
        expect(await store.nextDue(['web'], late)).toBe(denverAt('2026-12-05T17:00'));
      });

      test('of one booking come once after a standstill, and never when the lesson has begun', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await enrols(store, 'ben');
        const after = denverAt('2026-12-05T17:30');
        await tendAll(store, after);
        expect(told(await sent(store, after))).toEqual(['ann two-hours-before', 'ben two-hours-before']);
      });

      test('whose lesson has begun are written down as too late', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await tendAll(store, starts);
        expect(await sent(store, starts)).toEqual([]);
        const kept = await store.exportOf((await store.find('web', 'ann')) ?? 0);
        expect(kept).toMatchObject({
          reminder: [
            { purpose: 'evening-before', became: 'too-late' },
            { purpose: 'thanks', became: 'planned' },
            { purpose: 'two-hours-before', became: 'too-late' },
            { purpose: 'week-before', became: 'too-late' },
          ],
        });
      });

      test('handed over and not sent in time are given up, and a later one takes the place of an earlier', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await tendAll(store, denverAt('2026-12-04T18:00'));
        await tendAll(store, denverAt('2026-12-05T17:00'));
        expect(told(await sent(store, starts - minute))).toEqual(['ann two-hours-before']);
        await enrols(store, 'ben', { now: denverAt('2026-12-05T16:00') });
        await tendAll(store, denverAt('2026-12-05T17:00'));
        expect(await sent(store, starts)).toEqual([]);
        await tendAll(store, starts);
        const kept = await store.exportOf((await store.find('web', 'ben')) ?? 0);
        expect(kept).toMatchObject({
          reminder: [{ purpose: 'thanks' }, { purpose: 'two-hours-before', became: 'too-late' }],
        });
      });

      test('wait for the morning when they are late at night', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        const night = denverAt('2026-12-04T23:00');
        await tendAll(store, night);
        expect(await sent(store, night)).toEqual([]);
        const morning = denverAt('2026-12-05T08:00');
        expect(await store.nextDue(['web'], night)).toBe(morning);
        await tendAll(store, morning);
        expect(told(await sent(store, morning))).toEqual(['ann evening-before']);
      });

      test('end with the booking', async () => {
        await withLesson(store);
        const booking = await enrols(store, 'ann');
        await tendAll(store, denverAt('2026-11-28T19:00'));
        await does(store, 'ann', () => act(booking, 'leave'));
        expect(await sent(store, denverAt('2026-12-04T18:00'))).toEqual([]);
        await tendAll(store, denverAt('2026-12-05T17:00'));
        expect(await sent(store, denverAt('2026-12-05T17:00'))).toEqual([]);
      });
    });

    describe('a shopkeeper', () => {
      beforeEach(() => appointed(store));
      const keeperChanges: readonly Change[] = [
        { do: 'move-lesson', lesson: 'white-evening', seen: 0, starts: '2026-12-06T19:00', minutes: null },
        { do: 'cancel-lesson', lesson: 'white-evening', seen: 0, reason: 'snow' },
        { do: 'change-lesson', lesson: 'white-evening', seen: 0, retold: { teacher: 'Bram' }, seats: 4 },
        { do: 'write-to-lesson', lesson: 'white-evening', text: 'bring a coat' },
        {
          do: 'cancel-lessons',
          lessons: [{ lesson: 'white-evening', seen: 0 }],
          series: [],
          days: { from: '2026-12-01', to: null, weekday: null, only: null },
          reason: '',
        },
        { do: 'write-to-lessons', lessons: ['white-evening'], text: 'bring a coat' },
        { do: 'add-lessons', drafts: [lessonOf({ id: 'another' })], series: null },
      ];

      test.each(keeperChanges.map((change) => [change.do, change] as const))('alone may %s', async (_, change) => {
        await withLesson(store);
        expect((await does(store, 'eve', () => change)).outcome).toBe('moved');
        expect((await does(store, 'mei', () => change)).outcome).toBe('done');
      });

      test('moves a lesson: everybody is told, and reminded anew', async () => {
        await withLesson(store, { seats: 1 });
        await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        await tendAll(store, denverAt('2026-12-04T18:00'));
        const now = denverAt('2026-12-04T18:01');
        const to = { starts: '2026-12-12T19:00', minutes: 60 };
        const change = { do: 'move-lesson', lesson: 'white-evening', seen: 0, ...to } as const;
        expect((await does(store, 'mei', () => change, now)).outcome).toBe('done');
        expect((await does(store, 'mei', () => change, now)).outcome).toBe('moved');
        expect(told(await sent(store, now))).toEqual(['ann moved', 'ben moved']);
        expect(await store.nextDue(['web'], now)).toBe(denverAt('2026-12-05T19:00'));
        await tendAll(store, denverAt('2026-12-05T19:00'));
        expect(told(await sent(store, denverAt('2026-12-05T19:00')))).toEqual(['ann week-before']);
      });

      test('cancels one: everybody is told, nobody reminded', async () => {
        await withLesson(store, { seats: 1 });
        await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        const cancel = { do: 'cancel-lesson', lesson: 'white-evening', seen: 0, reason: 'snow' } as const;
        await does(store, 'mei', () => cancel);
        expect(told(await sent(store, day))).toEqual(['ann cancelled-because', 'ben cancelled-because']);
        await tendAll(store, starts);
        expect(await sent(store, starts + 5 * hour)).toEqual([]);
        expect(await store.nextDue(['web'], day)).toBeNull();
      });

      test('calls off what is left of a series: each is told once of each lesson, and none comes after', async () => {
        const series = { draft: lessonOf({ id: 'weekly' }), repeats: { every: 'week', step: 1 } } as const;
        await does(store, 'mei', () => ({ do: 'add-lessons', drafts: [], series }));
        for (const lesson of ['weekly-2026-12-05', 'weekly-2026-12-12', 'weekly-2026-12-19'])
          await enrols(store, 'ann', { lesson });
        await enrols(store, 'ben', { lesson: 'weekly-2026-12-19' });
        const rest = (await boardOf(store, 'mei')).doors.map(({ lesson: { id } }) => id).slice(1);
        const days = { from: '2026-12-06', to: null, weekday: null, only: null };
        const lessons = rest.map((lesson) => ({ lesson, seen: 0 }));
        const change = { do: 'cancel-lessons', lessons, series: ['weekly'], days, reason: 'snow' } as const;
        // One of them is not as it was shown: none is called off, and nobody told.
        const stale = { ...change, lessons: [...lessons.slice(0, -1), { lesson: rest.at(-1) ?? '', seen: 1 }] };
        expect((await does(store, 'mei', () => stale)).outcome).toBe('moved');
        expect(await sent(store, day)).toEqual([]);
        expect((await boardOf(store, 'ann')).upcoming).toHaveLength(8);
        expect((await does(store, 'mei', () => change)).outcome).toBe('done');
        expect((await does(store, 'mei', () => change)).outcome).toBe('moved');
        const because = 'cancelled-because';
        expect(told(await sent(store, day)).toSorted()).toEqual([`ann ${because}`, `ann ${because}`, `ben ${because}`]);
        const later = day + 28 * 24 * hour;
        await store.planLessons({ lessons: [], series: [series] }, later);
        expect((await boardOf(store, 'mei')).series[0]?.repeats).toMatchObject({ until: '2026-12-05' });
        expect((await boardOf(store, 'ann')).upcoming.map(({ id }) => id)).toEqual(['weekly-2026-12-05']);
        await tendAll(store, denverAt('2026-12-18T18:00'));
        expect(told(await sent(store, denverAt('2026-12-18T18:00')))).not.toContain('ben evening-before');
      });

      test('ticks off, and who stayed away is not thanked', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann');
        await enrols(store, 'ben');
        const tick = { do: 'tick-off', booking: ann, came: false, at: starts } as const;
        expect((await does(store, 'mei', () => ({ ...tick, at: day }))).outcome).toBe('moved');
        expect((await does(store, 'mei', () => tick, starts)).outcome).toBe('done');
        const evening = starts + 2 * hour - 15 * minute;
        await tendAll(store, evening);
        expect(told(await sent(store, evening))).toEqual(['ben thanks']);
      });

      test('adds a series, which goes on by itself', async () => {
        const series = { draft: lessonOf({ id: 'weekly' }), repeats: { every: 'week', step: 1 } } as const;
        await does(store, 'mei', () => ({ do: 'add-lessons', drafts: [], series }));
        const before = (await boardOf(store, 'ann')).upcoming;
        expect(before).toHaveLength(8);
        expect(before[0]).toMatchObject({ id: 'weekly-2026-12-05', series: 'weekly' });
        const later = day + 14 * 24 * hour;
        await store.planLessons({ lessons: [], series: [] }, later);
        const after = (await boardOf(store, 'ann', later)).upcoming;
        expect(after.at(-1)?.id).toBe('weekly-2027-02-06');
        expect(new Set(after.map(({ starts: wall }) => wall.slice(11)))).toEqual(new Set(['19:00']));
      });
    });

    describe('another number of seats', () => {
      test('is kept as long as there are so many; what is given back is offered on', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann');
        await enrols(store, 'ben');
        expect((await does(store, 'ann', () => reseat(ann, 3))).outcome).toBe('moved');
        expect((await does(store, 'ann', () => reseat(ann, 2))).outcome).toBe('done');
        await enrols(store, 'cho', { to: 'waiting' });
        expect((await does(store, 'ann', () => reseat(ann, 1))).outcome).toBe('done');
        expect(told(await sent(store, day))).toEqual(['cho offer']);
      });

      test('is for nobody else to ask', async () => {
        await withLesson(store);
        const ann = await enrols(store, 'ann');
        expect((await does(store, 'ben', () => reseat(ann, 2))).outcome).toBe('moved');
      });
    });

    test('everything that stands in a lesson to come is shown, however much it is', async () => {
      const ids = Array.from({ length: 45 }, (_, n) => `l${n}`);
      await store.planLessons({ lessons: ids.map((id) => lessonOf({ id })), series: [] }, day);
      for (const lesson of ids) await enrols(store, 'ann', { lesson });
      expect((await boardOf(store, 'ann')).own).toHaveLength(45);
      expect((await boardOf(store, 'ann', starts + 30 * 24 * hour)).own).toHaveLength(30);
    });

    describe('a table of lessons', () => {
      test('is taken whole or not at all', async () => {
        await withLesson(store);
        const good = lessonOf({ id: 'second', starts: '2026-12-19T19:00' });
        const wrong = await store.putLessons([good, lessonOf({ seats: 0 })], day);
        expect(wrong).toMatchObject([{ n: 1, mistakes: [{ code: 'lesson-seats' }] }]);
        expect((await boardOf(store, 'ann')).upcoming).toHaveLength(1);
        expect(await store.putLessons([good, lessonOf({ seats: 9 })], day)).toEqual([]);
        expect((await boardOf(store, 'ann')).upcoming).toMatchObject([{ seats: 9 }, { id: 'second' }]);
      });

      test('tells who booked when it moves a lesson, and nobody when nothing changes', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await store.putLessons([lessonOf()], day);
        expect(await sent(store, day)).toEqual([]);
        await store.putLessons([lessonOf({ starts: '2026-12-05T18:00' })], day);
        expect(told(await sent(store, day))).toEqual(['ann moved']);
      });
    });

    test('a person who is forgotten gives their seats to others, and leaves no byte of a booking', async () => {
      await withLesson(store, { seats: 1 });
      await enrols(store, 'ann');
      await enrols(store, 'ben', { to: 'waiting' });
      await store.forget((await store.find('web', 'ann')) ?? 0, day);
      expect(told(await sent(store, day))).toEqual(['ben offer']);
      const [roster] = await store.rosters(day);
      expect(roster?.bookings).toMatchObject([{ standing: 'offered' }]);
    });

    test('an offer of theirs that ended, though nobody looked meanwhile, goes to others as well', async () => {
      await withLesson(store, { seats: 1 });
      const ann = await enrols(store, 'ann');
      await enrols(store, 'ben', { to: 'waiting' });
      await enrols(store, 'cho', { to: 'waiting' });
      await does(store, 'ann', () => act(ann, 'leave'));
      expect(told(await sent(store, day))).toEqual(['ben offer']);
      const late = day + 2 * hour;
      await store.forget((await store.find('web', 'ben')) ?? 0, late);
      expect(told(await sent(store, late))).toEqual(['cho offer']);
    });

    describe('of someone who booked and gave back more than thirty times since', () => {
      beforeEach(async () => {
        await withLesson(store, { seats: 1 });
        await withLesson(store, { id: 'green-evening' });
        await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        for (let n = 0; n < 31; n += 1) {
          const booking = await enrols(store, 'ann', { lesson: 'green-evening' });
          await does(store, 'ann', () => act(booking, 'leave'));
        }
      });

      test('the seat that still stands is on the board, after the newer ones', async () => {
        const { own } = await boardOf(store, 'ann');
        expect(own).toHaveLength(31);
        expect(own.at(-1)).toMatchObject({ standing: 'seated', lesson: { id: 'white-evening' } });
      });

      test('it is offered on when they are forgotten', async () => {
        await store.forget((await store.find('web', 'ann')) ?? 0, day);
        expect(told(await sent(store, day))).toEqual(['ben offer']);
      });
    });
  });
}
