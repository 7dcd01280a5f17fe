import { describe, expect, it } from 'vitest';
import {
  nextOfferEnd,
  seatsFree,
  toBeTold,
  waitingList,
  type Roster,
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
  tickOff,
} from '../../../src/core/lessons/seats.ts';
import { denverAt, lessonWith } from './lesson-drafts.ts';

const now = denverAt('2026-12-01T10:00');
const minutes = (n: number) => n * 60_000;

const done = (turn: Turn): Turned => {
  if ('mistakes' in turn) throw new Error(turn.mistakes.map((one) => one.code).join());
  return turn;
};
const codes = (turn: Turn) => ('mistakes' in turn ? turn.mistakes.map((one) => one.code) : []);
const standings = (roster: Roster) => roster.bookings.map((one) => `${one.id} ${one.standing}`);
const changed = (turn: Turn) => done(turn).changes.map((one) => `${one.booking} ${one.why} → ${one.to}`);

/** Bookings "a", "b" … of so many seats each, enrolled in turn. */
const rosterOf = (seats: number, ...parties: number[]): Roster =>
  parties.reduce<Roster>(
    (roster, party, n) => {
      const id = String.fromCodePoint(97 + n);
      return done(enrol(roster, { id, person: `person-${id}`, seats: party }, now)).roster;
    },
    { lesson: lessonWith({ seats }), bookings: [] },
  );

describe('enrolling', () => {
  it('seats who fits and lets the others wait in order', () => {
    const roster = rosterOf(4, 2, 3, 2, 1);
    expect(standings(roster)).toEqual(['a seated', 'b waiting', 'c seated', 'd waiting']);
    expect(seatsFree(roster)).toBe(0);
    expect(waitingList(roster).map((one) => one.id)).toEqual(['b', 'd']);
  });

  it.each([
    ['no seats', { seats: 0 }, ['lesson-seats']],
    ['more seats than there are', { seats: 5 }, ['lesson-seats']],
    ['half a seat', { seats: 0.5 }, ['lesson-seats']],
    ['a second booking', { person: 'person-a' }, ['lesson-already-booked']],
  ])('refuses %s', (_, differences, expected) => {
    const wish = { id: 'z', person: 'person-z', seats: 1, ...differences };
    expect(codes(enrol(rosterOf(4, 1), wish, now))).toEqual(expected);
  });

  it.each([
    ['started', {}, '2026-12-05T19:00', ['lesson-started']],
    ['over', {}, '2026-12-05T20:30', ['lesson-over']],
    ['cancelled', { status: 'cancelled' as const }, '2026-12-01T10:00', ['lesson-cancelled']],
  ])('refuses a lesson that is %s', (_, differences, wall, expected) => {
    const roster = { lesson: { ...lessonWith(), ...differences }, bookings: [] };
    expect(codes(enrol(roster, { id: 'z', person: 'z', seats: 1 }, denverAt(wall)))).toEqual(expected);
  });

  it('gives the last seat to one of a hundred', () => {
    const full = rosterOf(8, 7);
    const crowd = Array.from({ length: 100 }, (_, n) => ({ id: `c${n}`, person: `c${n}`, seats: 1 }));
    const after = crowd.reduce((roster, wish) => done(enrol(roster, wish, now)).roster, full);
    expect(after.bookings.filter((one) => one.standing === 'seated')).toHaveLength(2);
    expect(waitingList(after).map((one) => one.id)).toEqual(crowd.slice(1).map((one) => one.id));
  });
});

describe('a freed seat', () => {
  const full = rosterOf(4, 2, 2, 3, 1, 2);

  it('is offered to the first whose party fits, then to the next', () => {
    const turn = leave(full, 'a', now);
    expect(changed(turn)).toEqual(['a left → left', 'd freed → offered']);
    const { roster } = done(turn);
    expect(nextOfferEnd(roster)).toBe(now + minutes(120));
    const lapsed = lapseOffers(roster, now + minutes(120));
    expect(changed(lapsed)).toEqual(['d lapsed → left', 'e freed → offered']);
    expect(standings(lapsed.roster)).toEqual(['a left', 'b seated', 'c waiting', 'd left', 'e offered']);
  });

  it('is kept until the stated time and not a moment longer', () => {
    const { roster } = done(leave(full, 'a', now));
    expect(changed(acceptOffer(roster, 'd', now + minutes(120) - 1))).toEqual(['d accepted → seated']);
    expect(codes(acceptOffer(roster, 'd', now + minutes(120)))).toEqual(['lesson-offer-gone']);
    expect(lapseOffers(roster, now + minutes(120) - 1)).toEqual({ roster, changes: [] });
  });

  it('goes on when it is declined', () => {
    const { roster } = done(leave(full, 'a', now));
    expect(changed(declineOffer(roster, 'd', now))).toEqual(['d declined → left', 'e freed → offered']);
  });

  it('is not offered for the night, nor past the start', () => {
    const evening = denverAt('2026-12-03T20:30');
    expect(nextOfferEnd(done(leave(full, 'a', evening)).roster)).toBe(denverAt('2026-12-04T09:30'));
    const last = denverAt('2026-12-05T18:30');
    expect(nextOfferEnd(done(answerReminder(full, 'a', 'absent', last)).roster)).toBe(denverAt('2026-12-05T19:00'));
  });

  describe('at night', () => {
    const night = denverAt('2026-12-03T22:00');
    const [, , , unheard] = done(leave(full, 'a', night)).roster.bookings;

    it('has no end until its person is told of it', () => {
      expect(unheard).toMatchObject({ id: 'd', standing: 'offered', offerUntil: null });
      const { roster } = done(leave(full, 'a', night));
      expect(lapseOffers(roster, denverAt('2026-12-04T12:00')).changes).toEqual([]);
      expect(changed(acceptOffer(roster, 'd', night + minutes(1)))).toEqual(['d accepted → seated']);
    });

    it.each([
      ['2026-12-04T08:00', '2026-12-04T10:00'],
      ['2026-12-04T14:00', '2026-12-04T16:00'],
      ['2026-12-05T18:00', '2026-12-05T19:00'],
    ])('told of at %s it is kept until %s', (told, until) => {
      expect(beginOffer(full.lesson, unheard!, denverAt(told)).offerUntil).toBe(denverAt(until));
    });

    it('nobody could be told of ends with the beginning of the lesson, and goes to nobody', () => {
      const { roster } = done(leave(full, 'a', night));
      expect(nextOfferEnd(roster)).toBe(roster.lesson.startsAt);
      expect(changed(lapseOffers(roster, roster.lesson.startsAt))).toEqual(['d lapsed → left']);
    });

    it('is told at once to who wants fewer seats just then', () => {
      const roster = rosterOf(4, 3, 2);
      const { bookings } = done(changeSeats(roster, { id: 'b', seats: 1 }, night)).roster;
      expect(bookings[1]).toMatchObject({ standing: 'offered', offerUntil: denverAt('2026-12-04T10:00') });
    });
  });

  it('cannot be taken by who was offered none', () => {
    expect(codes(acceptOffer(full, 'c', now))).toEqual(['lesson-offer-gone']);
    expect(codes(declineOffer(full, 'b', now))).toEqual(['lesson-offer-gone']);
  });
});

describe('leaving', () => {
  const roster = rosterOf(4, 2, 2, 1);
  const closing = denverAt('2026-12-04T19:00');

  it('is free until the stated time', () => {
    expect(changed(leave(roster, 'a', closing - 1))).toContain('a left → left');
    const late = leave(roster, 'a', closing);
    expect(late).toEqual({
      mistakes: [{ code: 'lesson-leave-closed', field: 'booking', values: { until: '2026-12-04T19:00' } }],
    });
  });

  it('is free at any time for who waits, or whose lesson was moved', () => {
    expect(changed(leave(roster, 'c', closing))).toEqual(['c left → left']);
    const moved = { ...roster, lesson: { ...roster.lesson, moves: 1 } };
    expect(changed(leave(moved, 'a', closing))).toContain('a left → left');
  });

  it('happens once', () => {
    const { roster: after } = done(leave(roster, 'a', now));
    expect(codes(leave(after, 'a', now))).toEqual(['lesson-booking-left']);
    expect(codes(leave(after, 'nobody', now))).toEqual(['lesson-booking-unknown']);
  });

  it('lets one enrol again, behind those who wait', () => {
    const { roster: after } = done(leave(roster, 'a', now));
    const again = done(enrol(after, { id: 'a2', person: 'person-a', seats: 2 }, now)).roster;
    expect(standings(again)).toEqual(['a left', 'b seated', 'c offered', 'a2 waiting']);
  });

  it('is what "can\'t come" means, until the start', () => {
    const turn = answerReminder(roster, 'a', 'absent', closing);
    expect(changed(turn)).toEqual(['a absent → left', 'c freed → offered']);
    expect(done(turn).roster.bookings[0]).toMatchObject({ answer: 'absent', revision: 1 });
    expect(codes(answerReminder(roster, 'a', 'absent', denverAt('2026-12-05T19:00')))).toEqual(['lesson-started']);
  });

  it('is not what "coming" means', () => {
    const { roster: after, changes } = done(answerReminder(roster, 'a', 'coming', closing));
    expect(changes).toEqual([]);
    expect(after.bookings[0]).toMatchObject({ standing: 'seated', answer: 'coming', revision: 0 });
    expect(codes(answerReminder(roster, 'c', 'coming', closing))).toEqual(['lesson-booking-not-seated']);
  });
});

describe('other changes', () => {
  it('more seats only when they are free, fewer at any time', () => {
    const roster = rosterOf(4, 2, 1, 2);
    expect(changeSeats(roster, { id: 'a', seats: 4 }, now)).toEqual({
      mistakes: [{ code: 'lesson-full', field: 'seats', values: { free: 1 } }],
    });
    expect(changed(changeSeats(roster, { id: 'a', seats: 3 }, now))).toEqual(['a reseated → seated']);
    expect(changed(changeSeats(roster, { id: 'a', seats: 1 }, now))).toEqual([
      'a reseated → seated',
      'c freed → offered',
    ]);
    expect(changed(changeSeats(roster, { id: 'c', seats: 1 }, now))).toEqual([
      'c reseated → waiting',
      'c freed → offered',
    ]);
    expect(codes(changeSeats(roster, { id: 'c', seats: 9 }, now))).toEqual(['lesson-seats']);
    const offered = done(leave(roster, 'a', now)).roster;
    expect(codes(changeSeats(offered, { id: 'c', seats: 1 }, now))).toEqual(['lesson-offer-open']);
  });

  it('a larger room lets the next in, a smaller one turns nobody out', () => {
    const roster = rosterOf(4, 2, 2, 3);
    expect(changed(resizeLesson(roster, 7, now))).toEqual(['c freed → offered']);
    expect(codes(resizeLesson(roster, 3, now))).toEqual(['lesson-seats-below-taken']);
    expect(codes(resizeLesson({ ...roster, bookings: [] }, 0, now))).toEqual(['lesson-seats']);
  });

  it('the door is open from an hour before', () => {
    const roster = rosterOf(2, 1, 1, 1);
    const door = denverAt('2026-12-05T18:00');
    expect(done(tickOff(roster, 'a', true, door)).roster.bookings[0]?.came).toBe(true);
    expect(done(tickOff(roster, 'a', false, door + minutes(300))).roster.bookings[0]?.came).toBe(false);
    expect(codes(tickOff(roster, 'a', true, door - 1))).toEqual(['lesson-door-closed']);
    expect(codes(tickOff(roster, 'c', true, door))).toEqual(['lesson-booking-not-seated']);
  });

  it('a cancelled lesson offers nothing and tells everyone', () => {
    const roster = done(leave(rosterOf(4, 2, 2, 1, 1), 'a', now)).roster;
    const gone = { ...roster, lesson: { ...roster.lesson, status: 'cancelled' as const } };
    expect(nextOfferEnd(gone)).toBeNull();
    expect(lapseOffers(gone, now + minutes(500))).toEqual({ roster: gone, changes: [] });
    expect(toBeTold(gone).map((one) => one.id)).toEqual(['b', 'c', 'd']);
    expect(codes(leave(gone, 'b', now))).toEqual(['lesson-cancelled']);
  });
});
