/** What happens at the same moment: one wins and the other is told, or the second changes nothing. */
import { afterEach, describe, expect, test } from 'vitest';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';
import { addDays } from '../../src/core/lessons/calendar.ts';
import { denverAt, does, enrolment, lessonOf } from '../store/lesson-samples.ts';
import { LessonHouse } from './lesson-house.ts';

let house: LessonHouse;
const opened = async (more: Partial<LessonDraft> = {}): Promise<LessonHouse> =>
  (house = await LessonHouse.with(more, 'mei', 'tom'));
afterEach(() => house.end());

const keepers = ['mei', 'tom'];

const titled = (n: number) => ({ en: `Lesson no ${n + 1}`, 'zh-Hant': '課', 'zh-Hans': '课' });

const called = (en: string) => ({ en, 'zh-Hant': en, 'zh-Hans': en });

/** Both are one tap away from it, and tap at once; what each is told. */
async function atOnce(steps: (who: string) => readonly string[], label: string): Promise<readonly string[]> {
  for (const who of keepers) for (const line of steps(who)) await house.does(who, line);
  const before = house.sent.length;
  await Promise.all(keepers.map((who) => house.tap(who, label)));
  return keepers.map((who) => house.told(who, before));
}

const lesson = ['Lessons, behind the counter', 'white tea'];
const changed = /^Somebody has just changed this lesson/m;

describe('two shopkeepers at once', () => {
  test('move a lesson once: one wins, the other is told, and who booked is told once', async () => {
    await opened();
    await house.books('ann');
    const before = house.sent.length;
    const told = await atOnce((who) => [...lesson, 'Move it', who === 'mei' ? '8 pm' : '6 pm'], 'Yes, move it');
    expect(told.filter((one) => changed.test(one))).toHaveLength(1);
    expect(told.filter((one) => /^Moved/m.test(one))).toHaveLength(1);
    expect(house.told('ann', before).match(/has been moved/g)).toHaveLength(1);
    const [roster] = await house.store.rosters(0);
    expect(roster?.lesson).toMatchObject({ moves: 1, revision: 1 });
  });

  test('move and cancel it: only one of both is done', async () => {
    await opened();
    await house.books('ann');
    for (const line of [...lesson, 'Move it', '8 pm']) await house.does('mei', line);
    for (const line of [...lesson, 'Cancel it', 'Without a reason']) await house.does('tom', line);
    const before = house.sent.length;
    await Promise.all([house.tap('mei', 'Yes, move it'), house.tap('tom', 'Yes, cancel it')]);
    const [roster] = await house.store.rosters(0);
    expect(roster?.lesson.revision).toBe(1);
    expect(house.told('ann', before).split('\n')).toHaveLength(1);
  });

  test('cancel it once, and the other is told that it is', async () => {
    await opened();
    await house.books('ann');
    const told = await atOnce(() => [...lesson, 'Cancel it', 'Without a reason'], 'Yes, cancel it');
    expect(told.filter((one) => /^Cancelled/m.test(one))).toHaveLength(1);
    expect(told.filter((one) => /^This lesson has been cancelled/m.test(one))).toHaveLength(1);
  });

  test('call off all that are to come: once, and who booked is told once of each', async () => {
    house = await LessonHouse.with({}, 'mei', 'tom');
    const more = ['2026-12-06T19:00', '2026-12-12T19:00'];
    const names = ['Roasting at home', 'Cups and bowls'];
    const drafts = names.map((name, n) => lessonOf({ id: `more-${n}`, starts: more[n] ?? '', title: called(name) }));
    await house.store.putLessons(drafts, house.clock.now());
    for (const name of ['white tea', ...names]) await house.does('ann', `book a seat in ${name}`);
    await house.does('ben', 'book a seat in white tea');
    const before = house.sent.length;
    const told = await atOnce(() => ['cancel all lessons'], 'Yes, call them off');
    expect(told.filter((one) => /^Called off/m.test(one))).toHaveLength(1);
    expect(told.filter((one) => /^One of them has changed/m.test(one))).toHaveLength(1);
    expect(house.told('ann', before).match(/take place/g)).toHaveLength(3);
    expect(house.told('ben', before).match(/take place/g)).toHaveLength(1);
    await house.crash();
    expect(house.told('ann', before).match(/take place/g)).toHaveLength(3);
    expect((await house.store.rosters(0)).every(({ lesson: { status } }) => status === 'cancelled')).toBe(true);
  });

  test('tick the same person off: they are here, whoever was first', async () => {
    await opened();
    await house.books('ann');
    await house.at(denverAt('2026-12-05T18:30'));
    await atOnce(() => [...lesson, 'Who is coming'], 'Here: 1');
    expect((await house.store.rosters(0))[0]?.bookings).toMatchObject([{ came: true }]);
  });
});

test('two quick taps at the door are one, and a tap on the new button takes it back', async () => {
  await opened();
  await house.books('ann');
  await house.at(denverAt('2026-12-05T18:30'));
  for (const line of [...lesson, 'Who is coming']) await house.does('mei', line);
  const key = house.key('mei', 'Here: 1');
  const came = async () => (await house.store.rosters(0))[0]?.bookings[0]?.came;
  await Promise.all([house.does('mei', { kind: 'tap', key }), house.does('mei', { kind: 'tap', key })]);
  expect(await came()).toBe(true);
  await house.tap('mei', 'Stayed away: 1');
  expect(await came()).toBe(false);
  await house.tap('mei', 'Take back: 1');
  expect(await came()).toBe(null);
});

test('two quick taps on a seat book one, on giving back give back one', async () => {
  await opened();
  const before = house.sent.length;
  for (const line of ['lessons', 'white tea', 'Book seats']) await house.does('ann', line);
  const key = house.key('ann', '1');
  await Promise.all([house.does('ann', { kind: 'tap', key }), house.does('ann', { kind: 'tap', key })]);
  const bookings = async () => (await house.store.rosters(0))[0]?.bookings;
  expect(await bookings()).toMatchObject([{ seats: 1, standing: 'seated' }]);
  await house.does('ann', 'cancel my white tea booking');
  const back = house.key('ann', 'Yes, give it back');
  await Promise.all([house.does('ann', { kind: 'tap', key: back }), house.does('ann', { kind: 'tap', key: back })]);
  expect(await bookings()).toMatchObject([{ standing: 'left' }]);
  expect(house.told('ann', before).match(/^Given back/gm)).toHaveLength(1);
});

test('more seats are asked for once, and never more than there are', async () => {
  await opened({ seats: 3 });
  await house.books('ann');
  for (const line of ['my lessons', '1']) await house.does('ann', line);
  expect(await house.does('ann', 'two more')).toMatch(/3 seats instead of 1/);
  await house.books('ben');
  const key = house.key('ann', 'Yes, change it');
  const told = await house.does('ann', { kind: 'tap', key });
  expect(told).toMatch(/one seat left/);
  const [roster] = await house.store.rosters(0);
  expect(roster?.bookings.map(({ seats }) => seats)).toEqual([1, 1]);
  await house.does('ann', 'one more');
  await house.tap('ann', 'Yes, change it');
  expect((await house.store.rosters(0))[0]?.bookings.map(({ seats }) => seats)).toEqual([2, 1]);
});

test('who has booked more lessons than fit a screen sees and can give back each', async () => {
  house = new LessonHouse();
  const days = Array.from({ length: 40 }, (_, n) => addDays('2026-11-22', n));
  const lessons = days.map((date, n) => lessonOf({ id: `l${n}`, starts: `${date}T19:00`, title: titled(n) }));
  house.lessons = { lessons, series: [] };
  await house.open();
  const now = house.clock.now();
  for (const { id } of lessons) {
    const made = await does(house.store, 'ann', (turn) => enrolment(turn, { lesson: id, now }), now);
    expect(made.outcome).toBe('done');
  }
  let told = await house.does('ann', 'my lessons');
  const seen = new Set<string>();
  for (let page = 0; page < 5; page += 1) {
    for (const [line] of told.matchAll(/Lesson no \d+/g)) seen.add(line);
    if (page < 4) told = await house.tap('ann', 'Later ones');
  }
  expect(seen.size).toBe(40);
  await house.tap('ann', 'Lesson no 31, Dec 22, 7:00 pm');
  await house.tap('ann', 'Give it back');
  expect(await house.tap('ann', 'Yes, give it back')).toMatch(/^Given back: .*Lesson no 31/m);
});

const standings = async () =>
  (await house.store.rosters(0)).map(({ lesson: { id }, bookings }) => [id, bookings.map((one) => one.standing)]);

describe('a seat changed for one on another day', () => {
  const days = ['2026-12-05', '2026-12-12'] as const;
  const twoLessons = async (): Promise<void> => {
    house = new LessonHouse();
    const lessons = days.map((date, n) =>
      lessonOf({ id: `l${n}`, starts: `${date}T19:00`, seats: 1, title: titled(n) }),
    );
    house.lessons = { lessons, series: [] };
    await house.open();
    for (const line of ['book 1 seat on December 5', 'Ann']) await house.does('ann', line);
  };

  test('two quick taps change it once', async () => {
    await twoLessons();
    await house.does('ann', 'can I move from the 5th to the 12th?');
    const key = house.key('ann', 'Yes, change it');
    const before = house.sent.length;
    await Promise.all([house.does('ann', { kind: 'tap', key }), house.does('ann', { kind: 'tap', key })]);
    expect(await standings()).toEqual([
      ['l0', ['left']],
      ['l1', ['seated']],
    ]);
    expect(house.told('ann', before).match(/^Changed/gm)).toHaveLength(1);
  });

  test('the other seat taken meanwhile: the old one stays, and they are told', async () => {
    await twoLessons();
    await house.does('ann', 'can I move from the 5th to the 12th?');
    await house.does('ben', 'book 1 seat on December 12');
    expect(await house.tap('ann', 'Yes, change it')).toMatch(/no room for you there, so your seat stays/);
    expect(await standings()).toEqual([
      ['l0', ['seated']],
      ['l1', ['seated']],
    ]);
  });

  test('both tap at the same moment: one has it, and nobody loses a seat', async () => {
    await twoLessons();
    await house.does('ann', 'can I move from the 5th to the 12th?');
    for (const line of ['lessons', 'December 12', 'yes']) await house.does('ben', line);
    await Promise.all([house.tap('ann', 'Yes, change it'), house.tap('ben', '1')]);
    const seated = (await house.store.rosters(0)).map(({ bookings }) =>
      bookings.filter((b) => b.standing === 'seated'),
    );
    expect(seated[1]).toHaveLength(1);
    expect(seated.flat().filter(({ person }) => person === seated[0]?.[0]?.person).length).toBeLessThanOrEqual(1);
    expect(seated.flat().length).toBe(seated[0]?.length === 1 ? 2 : 1);
  });
});
