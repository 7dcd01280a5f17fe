/** What a store must do of lessons that are called off and take place after all, of letters to all, and of who came. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Change, Store } from '../../src/store/contract.ts';
import {
  act,
  boardOf,
  day,
  denverAt,
  does,
  enrols,
  lessonOf,
  sent,
  starts,
  tendAll,
  told,
  turnOf,
  withLesson,
} from './lesson-samples.ts';
import { exchange } from './samples.ts';

const hour = 3_600_000;
const white = 'white-evening';
const cancel: Change = { do: 'cancel-lesson', lesson: white, seen: 0, reason: 'snow' };
const resume: Change = { do: 'resume-lessons', lessons: [{ lesson: white, seen: 1 }], series: [], days: null };

export function resumedContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} keeps the contract of a store of lessons that are written to and come back`, () => {
    let store: Store;
    beforeEach(async () => {
      store = await make();
      await store.appoint([{ channel: 'web', from: 'mei' }], day);
      await exchange(store, 'mei', []);
    });
    afterEach(() => store.close());

    describe('what was called off takes place after all', () => {
      test('everybody on the list is told once and reminded anew; a shopkeeper alone may', async () => {
        await withLesson(store, { seats: 1 });
        await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        await does(store, 'mei', () => cancel);
        await sent(store, day);
        expect((await does(store, 'ann', () => resume)).outcome).toBe('moved');
        expect((await does(store, 'mei', () => resume)).outcome).toBe('done');
        expect((await does(store, 'mei', () => resume)).outcome).toBe('moved');
        expect(told(await sent(store, day))).toEqual(['ann resumed', 'ben resumed']);
        expect((await boardOf(store, 'ann')).upcoming).toMatchObject([{ status: 'planned', reason: '', free: 0 }]);
        const evening = denverAt('2026-12-04T18:00');
        await tendAll(store, evening);
        expect(told(await sent(store, evening))).toEqual(['ann evening-before']);
        const after = denverAt('2026-12-05T20:45');
        await tendAll(store, after);
        expect(told(await sent(store, after))).toEqual(['ann thanks']);
      });

      test('the file for the calendar says so, under the same name and a higher number', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await does(store, 'mei', () => cancel);
        const [off] = await sent(store, day);
        await does(store, 'mei', () => resume);
        const [back] = await sent(store, day);
        expect(off?.saying.show).toMatchObject({ entry: { cancelled: true, sequence: 1 } });
        expect(back?.saying.show).toMatchObject({ entry: { cancelled: false, sequence: 2 } });
        expect(back?.saying.choices).toHaveLength(2);
      });

      test('a seat that was being offered is offered anew, and its time begins then', async () => {
        await withLesson(store, { seats: 1 });
        const ann = await enrols(store, 'ann');
        const ben = await enrols(store, 'ben', { to: 'waiting' });
        await does(store, 'ann', () => act(ann, 'leave'));
        await does(store, 'mei', () => cancel);
        await sent(store, day);
        // Long after the offer would have ended.
        const later = day + 24 * hour;
        await tendAll(store, later);
        expect((await does(store, 'mei', () => resume, later)).outcome).toBe('done');
        expect(told(await sent(store, later))).toEqual(['ben offer']);
        expect((await does(store, 'ben', () => act(ben, 'accept', later + hour), later + hour)).outcome).toBe('done');
      });

      test('who was forgotten meanwhile leaves a seat free, and hears nothing', async () => {
        await withLesson(store, { seats: 1 });
        await enrols(store, 'ann');
        await enrols(store, 'ben', { to: 'waiting' });
        await does(store, 'mei', () => cancel);
        await sent(store, day);
        await store.forget((await store.find('web', 'ann')) ?? 0, day);
        expect((await does(store, 'mei', () => resume)).outcome).toBe('done');
        expect(told(await sent(store, day))).toEqual(['ben offer']);
      });

      test('of a series all or none, and it goes on as before', async () => {
        const series = { draft: lessonOf({ id: 'weekly' }), repeats: { every: 'week', step: 1 } } as const;
        await does(store, 'mei', () => ({ do: 'add-lessons', drafts: [], series }));
        await enrols(store, 'ann', { lesson: 'weekly-2026-12-12' });
        const ids = (await boardOf(store, 'mei')).doors.map(({ lesson: { id } }) => id).slice(1);
        const days = { from: '2026-12-06', to: null, weekday: null, only: null };
        const off = ids.map((lesson) => ({ lesson, seen: 0 }));
        await does(store, 'mei', () => ({ do: 'cancel-lessons', lessons: off, series: ['weekly'], days, reason: '' }));
        await sent(store, day);
        const back = ids.map((lesson) => ({ lesson, seen: 1 }));
        const change = { do: 'resume-lessons', lessons: back, series: [series], days } as const;
        const stale = { ...change, lessons: [...back.slice(1), { lesson: ids[0] ?? '', seen: 7 }] };
        expect((await does(store, 'mei', () => stale)).outcome).toBe('moved');
        // The series is not as this was shown: it was another that was called off.
        const other = { ...change, days: { ...days, from: '2026-12-20' } };
        expect((await does(store, 'mei', () => other)).outcome).toBe('moved');
        expect(await sent(store, day)).toEqual([]);
        expect((await boardOf(store, 'ann')).upcoming).toHaveLength(1);
        expect((await does(store, 'mei', () => change)).outcome).toBe('done');
        expect(told(await sent(store, day))).toEqual(['ann resumed']);
        expect((await boardOf(store, 'mei')).series).toEqual([series]);
        expect((await boardOf(store, 'ann')).upcoming).toHaveLength(1 + ids.length);
        const later = day + 14 * 24 * hour;
        await store.planLessons({ lessons: [], series: [] }, later);
        expect((await boardOf(store, 'ann', later)).upcoming.at(-1)?.id).toBe('weekly-2027-02-06');
      });
    });

    describe('a letter to all', () => {
      test('reaches each once, whichever lessons they come to, and nobody who waits; whom none reaches is a task', async () => {
        await withLesson(store, { seats: 2 });
        await withLesson(store, { id: 'green-evening', starts: '2026-12-06T19:00' });
        await enrols(store, 'ann');
        await enrols(store, 'ann', { lesson: 'green-evening' });
        await enrols(store, 'ben', { lesson: 'green-evening' });
        await does(store, 'mei', (turn) => ({
          do: 'enrol-guest',
          booking: String(turn.event.kind === 'wake' ? '' : turn.event.seq),
          lesson: white,
          seats: 1,
          to: 'seated',
          name: 'Ah Keong',
          mail: null,
          language: 'en',
          at: day,
        }));
        await enrols(store, 'cho', { to: 'waiting' });
        await sent(store, day);
        const lessons = [white, 'green-evening'];
        const letter: Change = { do: 'write-to-lessons', lessons, text: 'The shop moves.' };
        expect((await does(store, 'mei', () => letter)).outcome).toBe('done');
        const owed = await sent(store, day);
        expect(told(owed)).toEqual(['ann written-to-all', 'ben written-to-all']);
        expect(owed[0]?.saying.phrases[0]?.values).toEqual({ text: 'The shop moves.' });
        const { desk } = await turnOf(store, 'mei');
        expect(desk.undelivered).toMatchObject([{ why: 'no address', about: { key: 'lesson-subject-all' } }]);
      });

      test('of a single lesson names it', async () => {
        await withLesson(store);
        await enrols(store, 'ann');
        await does(store, 'mei', () => ({ do: 'write-to-lessons', lessons: [white], text: 'bring a coat' }));
        expect(told(await sent(store, day))).toEqual(['ann written']);
      });

      test('goes to nobody when one of the lessons is called off meanwhile', async () => {
        await withLesson(store);
        await withLesson(store, { id: 'green-evening', starts: '2026-12-06T19:00' });
        await enrols(store, 'ann');
        await does(store, 'mei', () => cancel);
        await sent(store, day);
        const letter: Change = { do: 'write-to-lessons', lessons: [white, 'green-evening'], text: 'coats' };
        expect((await does(store, 'mei', () => letter)).outcome).toBe('moved');
        expect(await sent(store, day)).toEqual([]);
      });
    });

    test('who came to what is over is shown to a shopkeeper alone, the latest first, and called-off ones are not', async () => {
      await withLesson(store);
      await withLesson(store, { id: 'green-evening', starts: '2026-12-06T19:00' });
      await withLesson(store, { id: 'red-evening', starts: '2026-12-07T19:00' });
      const ann = await enrols(store, 'ann');
      await does(store, 'mei', () => ({ do: 'cancel-lesson', lesson: 'green-evening', seen: 0, reason: '' }));
      await does(store, 'mei', () => ({ do: 'tick-off', booking: ann, came: true, at: starts }), starts);
      const later = starts + 5 * 24 * hour;
      const { past, doors } = await boardOf(store, 'mei', later);
      expect(doors).toEqual([]);
      expect(past.map(({ lesson: { id } }) => id)).toEqual(['red-evening', white]);
      expect(past[1]?.bookings).toMatchObject([{ id: ann, came: true }]);
      expect((await boardOf(store, 'ann', later)).past).toEqual([]);
      expect((await boardOf(store, 'mei', starts + 60 * 24 * hour)).past).toEqual([]);
    });
  });
}
