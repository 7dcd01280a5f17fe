/** Lessons in the whole house: its real flows, a real store, and a clock that does as it is told. */
import { afterEach, describe, expect, test } from 'vitest';
import type { Instant } from '../../src/core/units.ts';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import { denverAt, starts } from '../store/lesson-samples.ts';
import { incoming } from '../store/samples.ts';
import { kindsOf, LessonHouse } from './lesson-house.ts';

const second = 1_000;
const minute = 60 * second;
const hour = 60 * minute;

let house: LessonHouse;
const opened = async (more: Partial<LessonDraft> = {}, ...keepers: string[]): Promise<LessonHouse> =>
  (house = await LessonHouse.with(more, ...keepers));
afterEach(() => house.end());

describe('after a standstill that ends', () => {
  const evening = denverAt('2026-12-04T18:00');

  test.each<[string, number, readonly string[]]>([
    ['1 s later', second, ['evening-before']],
    ['1 min later', minute, ['evening-before']],
    ['an hour later', hour, ['evening-before']],
    ['at night: in the morning', 4 * hour, []],
    ['in the morning', 14 * hour + minute, ['evening-before']],
    ['when a later one is due as well', 23.5 * hour, ['two-hours-before']],
    ['in the last minute', 25 * hour - minute, ['two-hours-before']],
    ['when the lesson has begun', 25 * hour + minute, []],
    ['when it is over', 26 * hour + 50 * minute, ['thanks']],
    ['2 days later', 48 * hour, ['thanks']],
    ['8 days later, when thanks would read like a mistake', 192 * hour, []],
  ])('%s, each is reminded once, and of nothing stale', async (_, downMs, expected) => {
    await opened();
    await house.books('ann');
    await house.at(evening - second);
    const told = await house.sleep(downMs);
    expect(kindsOf(told)).toEqual(expected);
    // No second one follows for what came, or was too late.
    expect(await house.sleep(second)).toEqual([]);
  });

  test('at night, the morning brings it', async () => {
    await opened();
    await house.books('ann');
    await house.at(evening - second);
    expect(await house.sleep(4 * hour)).toEqual([]);
    const morning = denverAt('2026-12-05T08:00');
    await house.clock.pass(morning - house.clock.now() - 1);
    expect(kindsOf(house.messages('ann').slice(-1))).not.toEqual(['evening-before']);
    await house.clock.pass(1);
    await house.app.settled();
    expect(kindsOf(house.messages('ann').slice(-1))).toEqual(['evening-before']);
  });
});

describe('who enrols late is not told what is past', () => {
  test.each<[string, readonly string[]]>([
    ['2026-12-04T17:59', ['evening-before', 'two-hours-before', 'thanks']],
    ['2026-12-04T18:00', ['two-hours-before', 'thanks']],
    ['2026-12-05T16:59', ['two-hours-before', 'thanks']],
    ['2026-12-05T17:00', ['thanks']],
    ['2026-12-05T18:59', ['thanks']],
  ])('at %s', async (wall, expected) => {
    await opened();
    await house.at(denverAt(wall));
    await house.books('ann');
    const kinds: string[] = [];
    for (const due of ['2026-12-04T18:00', '2026-12-05T17:00', '2026-12-05T20:45'].map(denverAt)) {
      if (due > house.clock.now()) kinds.push(...kindsOf(await house.at(due)));
    }
    expect(kinds).toEqual(expected);
  });
});

describe('where the clocks change', () => {
  test.each<[string, string, string, Instant]>([
    // 18:00 of the day before is by the wall; two hours are two hours.
    ['forward', '2027-03-14T15:00', '2027-03-13T18:00', Date.UTC(2027, 2, 14, 19)],
    ['back', '2026-11-29T15:00', '2026-11-28T18:00', Date.UTC(2026, 10, 29, 20)],
  ])('%s, reminders keep the wall time', async (_, lessonStarts, evening, twoHours) => {
    await opened({ starts: lessonStarts });
    await house.books('ann');
    expect(kindsOf(await house.at(denverAt(evening) - minute))).not.toContain('evening-before');
    expect(kindsOf(await house.sleep(minute))).toEqual(['evening-before']);
    expect(await house.at(twoHours - minute)).toEqual([]);
    expect(kindsOf(await house.sleep(minute))).toEqual(['two-hours-before']);
  });
});

describe('in the same instant', () => {
  test('a hundred want the last seat: one has it, all others are told so', async () => {
    await opened({ seats: 1 });
    const people = Array.from({ length: 100 }, (_, n) => `p${n}`);
    const now = house.clock.now();
    await Promise.all(
      people.map((who) => house.web.take(incoming(who, 'book 1 seat in white tea', { receivedAt: now }))),
    );
    await house.app.settled();
    const told = people.map((who) => house.told(who));
    expect(told.filter((words) => words.includes('You have a seat'))).toHaveLength(1);
    expect(told.filter((words) => words.includes('is full'))).toHaveLength(99);
    const [roster] = await house.store.rosters(now);
    expect(roster?.bookings).toHaveLength(1);
    expect(house.log.lines).toEqual([]);
  });

  test('a seat is given back twice: it goes once, and the second time is told that it is gone', async () => {
    await opened({ seats: 1 });
    await house.books('ann');
    await house.does('ben', 'book 1 seat in white tea');
    await house.does('ben', 'put me on the waiting list');
    await house.does('ann', 'cancel my booking for white tea');
    const key = house.key('ann', 'Yes, give it back');
    const taps = [1, 2].map(() =>
      house.web.take(incoming('ann', { kind: 'tap', key }, { receivedAt: house.clock.now() })),
    );
    await Promise.all(taps);
    await house.app.settled();
    expect(house.told('ann').match(/Given back/g)).toHaveLength(1);
    expect(house.told('ben').match(/come free/g)).toHaveLength(1);
    const [roster] = await house.store.rosters(house.clock.now());
    expect(roster?.bookings.map(({ standing }) => standing)).toEqual(['left', 'offered']);
  });

  test('an offer is taken and declined: the first counts', async () => {
    await opened({ seats: 1 });
    await house.books('ann');
    await house.does('ben', 'book 1 seat in white tea');
    await house.does('ben', 'put me on the waiting list');
    await house.does('ann', "I can't come");
    const keys = ['Take it', 'Leave it to others'].map((label) => house.key('ben', label));
    const now = house.clock.now();
    await Promise.all(keys.map((key) => house.web.take(incoming('ben', { kind: 'tap', key }, { receivedAt: now }))));
    await house.app.settled();
    expect(house.told('ben')).toContain('The seat is yours');
    const [roster] = await house.store.rosters(now);
    expect(roster?.bookings.map(({ standing }) => standing)).toEqual(['left', 'seated']);
  });
});

describe('an offer', () => {
  test('lapses when its time is up, though nobody writes, and goes to the next', async () => {
    await opened({ seats: 1 });
    await house.books('ann');
    for (const who of ['ben', 'cho']) {
      await house.does(who, 'book 1 seat in white tea');
      await house.does(who, 'put me on the waiting list');
    }
    await house.does('ann', "I can't come");
    const before = house.sent.length;
    await house.clock.pass(2 * hour);
    await house.app.settled();
    const told = house.sent.slice(before);
    expect(kindsOf(told)).toEqual(['lapsed', 'offer']);
    expect(told.map(({ chat }) => chat)).toEqual(['chat-of-ben', 'chat-of-cho']);
    expect(await house.tap('ben', 'Take it')).toContain('This offer has ended');
    expect(await house.tap('cho', 'Take it')).toContain('The seat is yours');
  });
});

describe('what a person gets wrong is told in a sentence', () => {
  test.each<[string, string, string]>([
    ['seats there are not', 'book 10000 seats in white tea', '10,000 seats cannot be'],
    ['a lesson on another day', 'book 2 seats on Sunday 6 December', 'There is no lesson on that day'],
  ])('%s', async (_, sentence, expected) => {
    await opened();
    expect(await house.does('ann', sentence)).toContain(expected);
  });

  test('a link to a lesson that is there, and to one that is not', async () => {
    await opened();
    expect(await house.does('ann', { kind: 'open', payload: 'lesson-white-evening' })).toContain('3 seats are free');
    expect(await house.does('ben', { kind: 'open', payload: 'lesson-nowhere' })).toContain('not on the list any more');
  });

  test('a seat for a lesson that has begun meanwhile', async () => {
    await opened();
    await house.does('ann', 'book a seat in white tea');
    await house.does('ben', { kind: 'open', payload: 'lesson-white-evening' });
    const key = house.key('ben', 'Book seats');
    await house.does('cho', { kind: 'open', payload: 'lesson-white-evening' });
    expect(await house.tap('cho', 'Book seats')).toContain('For how many');
    await house.at(starts);
    expect(await house.does('ben', { kind: 'tap', key })).toContain('has begun already');
    expect(await house.does('cho', '1')).toContain('has begun already');
    expect(await house.does('ann', 'cancel my booking for white tea')).toContain('has begun already');
  });
});

describe('when the power goes', () => {
  test('a reminder under way comes again, and no third time', async () => {
    await opened();
    await house.books('ann');
    await house.at(denverAt('2026-12-05T17:00') - second);
    house.hang();
    await house.clock.pass(second);
    await house.clock.pass(second);
    await house.crash();
    await house.clock.pass(2 * second);
    await house.app.settled();
    const reminders = kindsOf(house.messages('ann')).filter((kind) => kind === 'two-hours-before');
    expect(reminders.length).toBeGreaterThanOrEqual(1);
    expect(reminders.length).toBeLessThanOrEqual(2);
    await house.crash();
    expect(kindsOf(house.messages('ann')).filter((kind) => kind === 'two-hours-before')).toHaveLength(reminders.length);
  });

  test('after every step, seats and reminders are whole', async () => {
    await opened({ seats: 1 });
    await house.books('ann');
    await house.crash();
    await house.does('ben', 'book 1 seat in white tea');
    await house.does('ben', 'put me on the waiting list');
    await house.crash();
    await house.does('ann', "I can't come");
    await house.crash();
    expect(await house.does('ben', 'Take it')).toContain('The seat is yours');
    await house.crash();
    const [roster] = await house.store.rosters(house.clock.now());
    expect(roster?.bookings.map(({ standing }) => standing)).toEqual(['left', 'seated']);
    expect(kindsOf(await house.at(denverAt('2026-11-28T19:00')))).toEqual(['week-before']);
  });
});
