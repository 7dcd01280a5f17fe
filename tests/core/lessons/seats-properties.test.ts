/** Whatever people do in whatever order, these hold after each step. */
import { isDeepStrictEqual } from 'node:util';
import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { isQuiet, tellableAt } from '../../../src/core/lessons/quiet.ts';
import {
  isUnheard,
  seatsFree,
  seatsTaken,
  waitingList,
  type Roster,
  type Booking,
  type Turn,
  type Turned,
} from '../../../src/core/lessons/roster.ts';
import {
  acceptOffer,
  answerReminder,
  beginOffer,
  changeSeats,
  declineOffer,
  enrol,
  lapseOffers,
  leave,
  resizeLesson,
} from '../../../src/core/lessons/seats.ts';
import { denver, denverAt, lessonWith } from './lesson-drafts.ts';

const idAt = (roster: Roster, n: number) => roster.bookings[n % (roster.bookings.length || 1)]?.id ?? 'nobody';
const offeredAt = (roster: Roster, n: number) => {
  const offered = roster.bookings.filter((one) => one.standing === 'offered');
  return offered[n % (offered.length || 1)]?.id ?? 'nobody';
};

const acts = {
  enrol: (r, { n, seats, id }, now) => enrol(r, { id, person: `p${n}`, seats }, now),
  leave: (r, { n }, now) => leave(r, idAt(r, n), now),
  accept: (r, { n }, now) => acceptOffer(r, offeredAt(r, n), now),
  decline: (r, { n }, now) => declineOffer(r, offeredAt(r, n), now),
  coming: (r, { n }, now) => answerReminder(r, idAt(r, n), 'coming', now),
  absent: (r, { n }, now) => answerReminder(r, idAt(r, n), 'absent', now),
  change: (r, { n, seats }, now) => changeSeats(r, { id: idAt(r, n), seats }, now),
  resize: (r, { seats }, now) => resizeLesson(r, seats * 2, now),
  lapse: (r, _, now) => lapseOffers(r, now),
} satisfies { [name: string]: (roster: Roster, with_: { n: number; seats: number; id: string }, now: number) => Turn };

const names = Object.keys(acts) as (keyof typeof acts)[];
const steps = fc.array(
  fc.record({
    act: fc.constantFrom('enrol' as const, 'enrol' as const, ...names),
    n: fc.nat({ max: 12 }),
    seats: fc.integer({ min: 1, max: 4 }),
    wait: fc.oneof(fc.nat({ max: 20 }), fc.nat({ max: 300 })),
  }),
  { maxLength: 80, size: 'max' },
);

/** Whoever was offered a seat at night is told in the morning. */
function heard({ lesson, bookings }: Roster, now: number): Roster {
  if (isQuiet(now, denver)) return { lesson, bookings };
  return { lesson, bookings: bookings.map((one) => (isUnheard(one) ? beginOffer(lesson, one, now) : one)) };
}

/** What is wrong with one step, in words; nothing when all is well. */
function faults(before: Roster, { roster, changes }: Turned, now: number): string[] {
  const found: string[] = [];
  const demand = (holds: boolean, what: string) => holds || found.push(what);
  demand(seatsTaken(roster) <= roster.lesson.seats, 'more seats taken than there are');
  demand(isDeepStrictEqual(JSON.parse(JSON.stringify(roster)), roster), 'no JSON round trip');

  const ids = roster.bookings.map((one) => one.id);
  demand(
    before.bookings.every((one, n) => one.id === ids[n]),
    'the order changed',
  );
  const live = roster.bookings.filter((one) => one.standing !== 'left').map((one) => one.person);
  demand(new Set(live).size === live.length, 'a person is there twice');

  const earlier = new Map(before.bookings.map((one) => [one.id, one] as const));
  for (const booking of roster.bookings) {
    const was = earlier.get(booking.id)?.standing;
    const told = changes.filter((one) => one.booking === booking.id).at(-1)?.to;
    demand(was === booking.standing || told === booking.standing, `${booking.id} changed untold`);
    demand(was !== 'left' || booking.standing === 'left', `${booking.id} came back`);
    const isOpen = booking.standing === 'offered' && !isUnheard(booking);
    demand((booking.offerUntil !== null) === isOpen, `${booking.id} has a stray offer`);
  }
  if (now >= roster.lesson.startsAt) return found;
  demand(!waitingList(roster).some((one) => one.seats <= seatsFree(roster)), 'somebody waits who would fit');

  for (const { booking: id } of changes.filter((one) => one.why === 'freed')) {
    const offered = roster.bookings.find((one) => one.id === id);
    if (offered?.standing !== 'offered') continue;
    // Who has only now asked for fewer seats was too large a party when the offer was made.
    const wanted = (one: Booking) => Math.max(one.seats, earlier.get(one.id)?.seats ?? 0);
    const passed = roster.bookings.slice(0, ids.indexOf(id)).filter((one) => one.standing === 'waiting');
    demand(!passed.some((one) => wanted(one) <= offered.seats), `${id} was preferred`);
    const isAwake = changes.some(({ booking, why }) => booking === id && why === 'reseated');
    const waits = tellableAt(roster.lesson.startsAt, now, denver) > now && !isAwake;
    demand(waits === isUnheard(offered), `${id} is told ${waits ? 'at night' : 'too late'}`);
    if (offered.offerUntil === null) continue;
    demand(offered.offerUntil > now && offered.offerUntil <= roster.lesson.startsAt, `${id} has no time`);
    demand(!isQuiet(offered.offerUntil - 1, denver), `${id} has until the night`);
  }
  return found;
}

it('never more seats than there are, the order of waiting kept, every change told', () => {
  let turns = 0;
  const offers = { made: 0, accepted: 0, lapsed: 0 };
  fc.assert(
    fc.property(steps, fc.constantFrom('2026-12-01T10:00', '2026-12-05T12:00'), (taken, start) => {
      let roster: Roster = { lesson: lessonWith({ seats: 6 }), bookings: [] };
      let now = denverAt(start);
      taken.forEach(({ act, n, seats, wait }, step) => {
        now += wait * 60_000;
        roster = heard(roster, now);
        const turn: Turn = acts[act](roster, { n, seats, id: `b${step}` }, now);
        if ('mistakes' in turn) return;
        expect(faults(roster, turn, now)).toEqual([]);
        turns++;
        for (const { why } of turn.changes) {
          if (why === 'freed') offers.made++;
          else if (why === 'accepted' || why === 'lapsed') offers[why]++;
        }
        roster = turn.roster;
      });
    }),
    { numRuns: 150 },
  );
  // The walk must come through the parts it is about.
  expect(turns).toBeGreaterThan(1000);
  expect(Math.min(...Object.values(offers))).toBeGreaterThan(2);
});

it('one winner of the last seat, in whatever order a hundred commit against the version they saw', () => {
  fc.assert(
    fc.property(
      fc.shuffledSubarray(
        Array.from({ length: 100 }, (_, n) => n),
        { minLength: 100 },
      ),
      (order) => {
        const start = enrol(
          { lesson: lessonWith({ seats: 8 }), bookings: [] },
          { id: 'seven', person: 'seven', seats: 7 },
          denverAt('2026-12-01T10:00'),
        );
        if ('mistakes' in start) throw new Error('not enrolled');
        const stale = start.roster;
        let stored = { roster: stale, version: 1 };
        let refused = 0;
        for (const n of order) {
          const wish = { id: `c${n}`, person: `c${n}`, seats: 1 };
          const commit = (seen: typeof stored): boolean => {
            const turn = enrol(seen.roster, wish, denverAt('2026-12-01T10:00'));
            if (seen.version !== stored.version || 'mistakes' in turn) return false;
            stored = { roster: turn.roster, version: stored.version + 1 };
            return true;
          };
          if (!commit({ roster: stale, version: 1 })) {
            refused++;
            expect(commit(stored)).toBe(true);
          }
        }
        expect(refused).toBe(99);
        const seated = stored.roster.bookings.filter((one) => one.standing === 'seated').map((one) => one.id);
        expect(seated).toEqual(['seven', `c${order[0]}`]);
        expect(waitingList(stored.roster).map((one) => one.id)).toEqual(order.slice(1).map((n) => `c${n}`));
      },
    ),
    { numRuns: 10 },
  );
});
