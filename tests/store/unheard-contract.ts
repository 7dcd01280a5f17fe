/** What a store must do with an offer, and with its end, that come about at night: the morning tells them as things stand. */
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import type { Change, Store } from '../../src/store/contract.ts';
import {
  act,
  boardOf,
  day,
  denverAt,
  does,
  enrols,
  sent,
  starts,
  tendAll,
  told,
  withLesson,
} from './lesson-samples.ts';
import { claimAt, exchange } from './samples.ts';

const minute = 60_000;
const hour = 60 * minute;
const night = denverAt('2026-12-01T22:00');
const morning = denverAt('2026-12-02T08:00');
const move = (to: string): Change => ({ do: 'move-lesson', ...lesson, starts: to, minutes: null });
const lesson = { lesson: 'white-evening', seen: 0 } as const;

/** Everything that is due is tried, in vain. */
async function fails(store: Store, now: number): Promise<void> {
  await tendAll(store, now);
  const owed = await store.claim(claimAt(now));
  for (const { id } of owed) await store.settle(id, { kind: 'retry', at: now + minute, why: 'busy' }, now);
}

export function unheardContract(name: string, make: () => Promise<Store>): void {
  describe(`${name} lets nobody be woken by the waiting list`, () => {
    let store: Store;
    let ann = '';
    let ben = '';
    const opened = async (more: Partial<LessonDraft> = {}): Promise<void> => {
      await withLesson(store, { seats: 1, ...more });
      ann = await enrols(store, 'ann');
      ben = await enrols(store, 'ben', { to: 'waiting' });
      await enrols(store, 'cho', { to: 'waiting' });
    };
    beforeEach(async () => {
      store = await make();
      await store.appoint([{ channel: 'web', from: 'mei' }], day);
      await exchange(store, 'mei', []);
    });
    afterEach(() => store.close());

    const leaves = (now: number): Promise<unknown> => does(store, 'ann', () => act(ann, 'absent', now), now);
    const heardAt = async (now: number): Promise<readonly string[]> => {
      await tendAll(store, now);
      return told(await sent(store, now));
    };
    const offerOf = async (who: string, now: number): Promise<unknown> => (await boardOf(store, who, now)).own[0];

    test.each<[string, string, string, readonly string[]]>([
      ['by day: at once', '2026-12-01T20:59', '2026-12-01T20:59', ['ben offer']],
      ['at night: in the morning', '2026-12-01T21:00', '2026-12-02T08:00', ['ben offer']],
      ['the night before the lesson: in the morning', '2026-12-05T03:00', '2026-12-05T08:00', ['ben offer']],
    ])('a seat given back %s', async (_, back, at, expected) => {
      await opened();
      await leaves(denverAt(back));
      const later = denverAt(at) > denverAt(back);
      if (later) expect(await heardAt(denverAt(back))).toEqual([]);
      if (later) expect(await store.nextDue(['web'], denverAt(back))).toBe(denverAt(at));
      if (later) expect(await heardAt(denverAt(at) - 1)).toEqual([]);
      expect(await heardAt(denverAt(at))).toEqual(expected);
      expect(await heardAt(denverAt(at) + 1)).toEqual([]);
    });

    test('a seat given back at night is offered at once when the lesson comes before the morning', async () => {
      await opened({ starts: '2026-12-02T07:00' });
      await leaves(night);
      expect(await heardAt(night)).toEqual(['ben offer']);
    });

    test.each<[string, number, readonly string[], number]>([
      ['in the morning', morning, ['ben offer'], morning + 2 * hour],
      ['after a standstill, for the whole of its time', morning + 6 * hour, ['ben offer'], morning + 8 * hour],
      ['not at all once the lesson has begun', starts, [], 0],
    ])('an offer of the night is told %s', async (_, now, expected, until) => {
      await opened();
      await leaves(night);
      expect(await heardAt(now)).toEqual(expected);
      if (until > 0) expect(await offerOf('ben', now)).toMatchObject({ standing: 'offered', offerUntil: until });
      expect(await heardAt(starts + 1)).toEqual([]);
    });

    test('an offer of the night waits for one morning more when the house stood still until the next night', async () => {
      await opened();
      await leaves(night);
      expect(await heardAt(night + 24 * hour)).toEqual([]);
      expect(await heardAt(morning + 24 * hour)).toEqual(['ben offer']);
    });

    test.each<[string, () => Change, string, readonly string[], readonly string[]]>([
      ['taken', () => act(ben, 'accept', night), 'ben', [], []],
      ['declined', () => act(ben, 'decline', night), 'ben', [], ['cho offer']],
      ['of a lesson that is moved', () => move('2026-12-12T19:00'), 'mei', ['cho moved'], ['ben offer']],
      ['of a lesson moved to dawn', () => move('2026-12-02T07:00'), 'mei', ['ben offer', 'cho moved', 'ben moved'], []],
      [
        'of a lesson that is told anew',
        () => ({ do: 'change-lesson', ...lesson, retold: { teacher: 'Bram' }, seats: null }),
        'mei',
        ['cho changed'],
        ['ben offer'],
      ],
      [
        'of a lesson that is cancelled',
        () => ({ do: 'cancel-lesson', ...lesson, reason: 'snow' }),
        'mei',
        ['ben cancelled-because', 'cho cancelled-because'],
        [],
      ],
    ])('an offer not yet told and %s', async (_, change, who, atNight, inTheMorning) => {
      await opened();
      await leaves(night);
      expect((await does(store, who, change, night)).outcome).toBe('done');
      expect(await heardAt(night)).toEqual(atNight);
      expect(await heardAt(morning)).toEqual(inTheMorning);
    });

    test('an offer is told as the lesson stands then', async () => {
      await opened();
      await leaves(night);
      await does(store, 'mei', () => move('2026-12-12T18:00'), night);
      await tendAll(store, morning);
      const [offer] = (await sent(store, morning)).filter(({ address }) => address.chat === 'chat-of-ben');
      expect(offer?.saying.phrases[0]?.values).toMatchObject({ starts: '2026-12-12T18:00', until: '2026-12-02T10:00' });
    });

    test('whoever is offered a seat by what they just did themselves hears it at once', async () => {
      await withLesson(store, { seats: 2 });
      await enrols(store, 'ann');
      const eva = await enrols(store, 'eva', { seats: 2, to: 'waiting' });
      await does(store, 'eva', () => ({ do: 'reseat', booking: eva, seats: 1, at: night }), night);
      expect(await heardAt(night)).toEqual(['eva offer']);
      expect(await heardAt(morning)).not.toContain('eva offer');
    });

    describe('whose time is up at night', () => {
      beforeEach(async () => {
        await opened();
        const evening = denverAt('2026-12-01T19:00');
        await leaves(evening);
        expect(await heardAt(evening)).toEqual(['ben offer']);
      });

      test('they hear it in the morning, and the next of their offer', async () => {
        expect(await heardAt(night)).toEqual([]);
        expect(await heardAt(morning)).toEqual(['ben lapsed', 'cho offer']);
        expect(await heardAt(morning + 1)).toEqual([]);
      });

      test.each<[string, string, () => Promise<unknown>, readonly string[], readonly string[]]>([
        ['back on the list', 'ben', () => enrols(store, 'ben', { to: 'waiting', now: night }), [], ['cho offer']],
        [
          'with the lesson cancelled',
          'mei',
          () => does(store, 'mei', () => ({ do: 'cancel-lesson', ...lesson, reason: 'snow' }), night),
          ['cho cancelled-because', 'ben cancelled-because'],
          [],
        ],
        [
          'with the lesson moved',
          'mei',
          () => does(store, 'mei', () => move('2026-12-12T19:00'), night),
          [],
          ['ben lapsed', 'cho offer'],
        ],
      ])('%s they hear what is true then', async (_, __, happens, atNight, inTheMorning) => {
        await tendAll(store, night);
        await happens();
        expect(await heardAt(night)).toEqual(atNight);
        expect(await heardAt(morning)).toEqual(inTheMorning);
      });
    });

    test('nobody hears that their time was up once the lesson has begun', async () => {
      await opened();
      const last = starts - hour;
      await leaves(last);
      expect(await heardAt(last)).toEqual(['ben offer']);
      expect(await heardAt(starts)).toEqual([]);
      expect(await store.rosters(starts)).toMatchObject([{ bookings: [{}, { standing: 'left' }, {}] }]);
    });

    describe('and by an offer handed over by day that was not sent', () => {
      const evening = denverAt('2026-12-01T20:30');
      beforeEach(async () => {
        await opened();
        await leaves(evening);
        await fails(store, evening);
      });

      test('it waits for the morning, and its time with it', async () => {
        expect(await heardAt(denverAt('2026-12-01T21:00'))).toEqual([]);
        expect(await heardAt(morning - 1)).toEqual([]);
        expect(await heardAt(morning)).toEqual(['ben offer']);
        expect(await offerOf('ben', morning)).toMatchObject({ offerUntil: morning + 2 * hour });
      });

      test('it is worded anew when the lesson is moved, once', async () => {
        const now = evening + minute;
        await does(store, 'mei', () => move('2026-12-12T18:00'), now);
        const heard = await sent(store, now);
        expect(told(heard)).toEqual(['ben offer', 'cho moved', 'ben moved']);
        expect(heard[0]?.saying.phrases[0]?.values).toMatchObject({ starts: '2026-12-12T18:00' });
        expect(await heardAt(morning)).toEqual([]);
      });

      test('it is not told when it was given back meanwhile', async () => {
        const now = evening + minute;
        await does(store, 'ben', () => act(ben, 'decline', now), now);
        expect(await heardAt(now)).toEqual(['cho offer']);
      });
    });
  });
}
