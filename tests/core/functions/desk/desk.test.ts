/** What a shopkeeper does with lessons, as far as it is judged before anything is done. */
import { expect, it } from 'vitest';
import { deskBoardCalls } from '../../../../src/core/functions/desk/board.ts';
import { deskLessonCalls } from '../../../../src/core/functions/desk/lesson.ts';
import { deskPlanCalls } from '../../../../src/core/functions/desk/plan.ts';
import { plansLesson } from '../../../../src/core/functions/lesson/heard.ts';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts } from '../../../../src/core/flow/flow.ts';
import { listen } from '../../lessons/heard-here.ts';
import { bookingWith, denver, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';

const lesson = { ...lessonWith({ id: 'white-tea-77' }), revision: 3 };
const booked = { ...bookingWith({ seats: 2 }), name: 'Ann' };

function aroundWith(...doors: readonly object[]): Around {
  const house = { doors, tzVersion: '2025c', event: '99', mail: true } as unknown as Facts;
  return { nowMs: denverAt('2026-12-01T12:00'), language: 'en', memory: {}, house };
}
const around = aroundWith({ lesson, bookings: [booked] });
const lessonCalls = deskLessonCalls({ listen });
const call = (name: keyof typeof lessonCalls, given: Facts, where = around) =>
  lessonCalls[name]({ lesson: lesson.id, ...given }, where);

it.each([
  ['seats', '10'],
  ['teacher', 'Odalys'],
])('%s are not changed where a colleague was faster', (field, text) => {
  expect(call('deskChange', { seen: 2, field, text })).toMatchObject({ wrong: 'lesson-changed-meanwhile' });
  expect(call('deskChange', { seen: 3, field, text })).toHaveProperty('gives');
});

it('for whom it is, is changed by a word for it, or asked again', () => {
  const changed = call('deskChange', { seen: 3, field: 'level', text: 'for advanced people' });
  expect(changed).toMatchObject({ gives: { retold: { level: 'advanced' }, seats: null } });
  expect(call('deskChange', { seen: 3, field: 'level', text: 'blue' })).toMatchObject({
    wrong: 'lesson-level-unclear',
  });
});

it.each([
  // The lesson is on Saturday, the 5th, and it is the 1st: a bare weekday is one of the lesson's own week.
  ['Sunday', '2026-12-06T19:00'],
  ['8 pm', '2026-12-05T20:00'],
  ['週日下午三點', '2026-12-06T15:00'],
  ['周三晚上八点', '2026-12-02T20:00'],
  ['next Wednesday 6 pm', '2026-12-09T18:00'],
  ['下週三晚上六點', '2026-12-09T18:00'],
  ['tomorrow', '2026-12-02T19:00'],
])('moved to “%s” it begins at %s', (text, starts) => {
  expect(call('deskMove', { seen: 3, text })).toMatchObject({ gives: { starts } });
});

it.each([
  ['yesterday 7 pm', 'lesson-past'],
  ['last Friday', 'lesson-past'],
  ['上週五晚上七點', 'lesson-past'],
  ['Saturday 7 pm', 'lesson-there-already'],
  ['7 pm', 'lesson-there-already'],
])('it is not moved to “%s”', (text, wrong) => {
  expect(call('deskMove', { seen: 3, text })).toMatchObject({ wrong });
});

it.each<[string, boolean]>([
  ['Saturday 7 pm, green tea, 8 seats', true],
  ['週六晚上七點，綠茶，8 位', true],
  ['30 February 7 pm, green tea, 8 seats', true],
  ['book 2 seats in green tea on Saturday at 7 pm', false],
  ['green tea in a 200 ml gaiwan for 2 people', false],
  ['is the shop open on Saturday at 7 pm?', false],
])('a shopkeeper plans with “%s”: %s', (text, plans) => {
  const house = { ...around.house, keeper: true };
  expect(plansLesson(listen(text), { ...around, house }, denver)).toBe(plans);
  expect(plansLesson(listen(text), around, denver)).toBe(false);
});

it.each([
  [[], { reached: 0, unreached: 0 }],
  [['chat', 'mail', 'none'], { reached: 2, unreached: 1 }],
])('before %j are told of a change, the shop hears how many are reached', (reaches, counts) => {
  const bookings = reaches.map((reach, n) => ({ ...booked, id: `b${n}`, reach }));
  const where = aroundWith({ lesson, bookings: [...bookings, { ...booked, id: 'left', standing: 'left' }] });
  const { unreached } = counts;
  const moved = call('deskMove', { seen: 3, text: '8 pm' }, where);
  expect(moved).toMatchObject({ gives: { unreached, told: { values: counts } } });
  const cancelled = call('deskCancel', { seen: 3, reason: 'snow' }, where);
  const reason = { key: 'desk-told-off-reason', values: { reason: 'snow' } };
  expect(cancelled).toMatchObject({ gives: { unreached, told: [{ values: counts }, reason] } });
});

it.each<[string, boolean, object]>([
  ['Tom, tom@example.org', true, { gives: { mail: 'tom@example.org', to: 'seated' } }],
  ['Tom, tom@example.org', false, { wrong: 'lesson-guest-no-mail' }],
  ['Tom, 2', false, { gives: { name: 'Tom', mail: null, seats: 2, to: 'seated' } }],
  ['Tom, 7', true, { wrong: 'lesson-guest-waits-untold', values: { free: 6 } }],
  ['Tom, 10000', true, { wrong: 'lesson-seats' }],
])('a guest as “%s”, where letters go out: %s', (text, mail, expected) => {
  const house = { ...around.house, mail };
  expect(call('deskGuest', { text }, { ...around, house })).toMatchObject(expected);
});

it('never fewer seats than are taken', () => {
  expect(call('deskChange', { seen: 3, field: 'seats', text: '1' })).toMatchObject({
    wrong: 'lesson-seats-below-taken',
  });
});

it('is repeated once, by whatever step', () => {
  const first = call('deskRepeat', { every: 'week', step: 1 });
  const series = (first as { gives: { series: { draft: { id: string } } } }).gives.series.draft.id;
  const child = lessonWith({ id: `${series}-2026-12-12`, series, starts: '2026-12-12T19:00' });
  const again = aroundWith({ lesson, bookings: [] }, { lesson: child, bookings: [] });
  for (const every of ['week', 'month'])
    expect(call('deskRepeat', { every, step: 1 }, again)).toMatchObject({ wrong: 'lesson-repeats-already' });
});

it.each([
  ['every other week, three times', { every: 'week', step: 2, times: 3 }, '2026-12-19T19:00'],
  ['every week, 4 times in all', { every: 'week', step: 1, times: 3 }, '2026-12-12T19:00'],
  ['on the first Saturday of each month', { every: 'month', step: 1, keep: 'weekday' }, '2027-01-02T19:00'],
  ['on the last Sunday of each month', { every: 'month', step: 1, keep: 'last' }, '2026-12-27T19:00'],
  ['每月一次，到三月底', { every: 'month', step: 1, until: '2027-03-31' }, '2027-01-02T19:00'],
])('is repeated as told: %s', (text, repeats, starts) => {
  expect(call('deskRepeat', { text })).toMatchObject({ gives: { series: { repeats, draft: { starts } } } });
});

it('is not repeated by what tells nothing of how often', () => {
  expect(call('deskRepeat', { text: 'hm let me see' })).toMatchObject({ wrong: 'lesson-repeats-unclear' });
});

it('two lessons of the same name have series of their own', () => {
  const ids = ['an-evening-of-old-leaves-of-yunnan-71', 'an-evening-of-old-leaves-of-yunnan-77'].map((id) => {
    const where = aroundWith({ lesson: { ...lesson, id }, bookings: [] });
    const made = call('deskRepeat', { lesson: id, every: 'week', step: 1 }, where);
    return (made as { gives: { series: { draft: { id: string } } } }).gives.series.draft.id;
  });
  expect(new Set(ids).size).toBe(2);
  for (const id of ids) expect(`${id}-2026-12-12`).toMatch(/^[a-z][a-z0-9-]{0,39}$/);
});

const { planning } = deskPlanCalls({ zone: denver, listen });

it('the tea of the sentence is brewed; a tea in what to bring is not', () => {
  const text = 'Saturday 7 pm, tieguanyin, 8 seats';
  const told = planning({ text, tea: 'tieguanyin' }, around) as { gives: Facts };
  expect(told.gives).toMatchObject({ ask: null, drafts: [{ teas: ['tieguanyin'] }] });
  const bring = planning(
    { said: told.gives['said'] ?? null, field: 'bring', text: 'a bag of longjing', tea: 'longjing' },
    around,
  );
  expect(bring).toMatchObject({ gives: { drafts: [{ teas: ['tieguanyin'], bring: { en: 'a bag of longjing' } }] } });
});

it('words that are too long are told so, not cut', () => {
  const said = { title: 'White tea', starts: '2026-12-12T19:00', seats: 8 };
  const told = planning({ said, field: 'bring', text: 'x'.repeat(1_001) }, around);
  expect(told).toMatchObject({ gives: { ask: 'bring', problem: { key: 'mistake-lesson-words-too-long' } } });
});

it('a list that is too long for a screen says how many more there are', () => {
  const many = Array.from({ length: 95 }, (_, i) => ({ ...booked, id: `b${i}`, seats: 1 }));
  const big = aroundWith({ lesson: { ...lesson, seats: 100 }, bookings: many });
  const { gives } = deskBoardCalls({ listen, zone: denver }).deskPeople({ lesson: lesson.id }, big) as { gives: Facts };
  const told = gives['told'] as readonly { key: string; values: Facts }[];
  expect(told).toHaveLength(91);
  expect(told.at(-1)).toEqual({ key: 'desk-told-more', values: { count: 5 } });
});

it.each([
  ['I want to plan a lesson', 'lesson-title-missing'],
  ['我想排一堂課', 'lesson-title-missing'],
  ['我想开一节课', 'lesson-title-missing'],
])('"%s" is no name of a lesson: that is asked first', (text, key) => {
  const { gives } = planning({ text }, around) as { gives: Facts };
  expect(gives).toMatchObject({ ask: 'title', problem: { key: `mistake-${key}` } });
});

it('a lesson told by and by keeps its pieces', () => {
  const told = ['I want to plan a lesson', 'oolong tasting', 'thursday', '6:30 in the evening', '6 people'];
  let [said, field]: [Facts | null, string | null] = [null, null];
  for (const text of told) {
    const { gives } = planning({ said, field, text }, around) as { gives: Facts };
    [said, field] = [gives['said'] as Facts, gives['ask'] as string | null];
  }
  expect([said, field]).toMatchObject([{ title: 'oolong tasting', starts: '2026-12-03T18:30', seats: 6 }, null]);
});

it.each<[string, object]>([
  ['bring: a notebook', { bring: 'a notebook' }],
  ['帶：筆記本', { bring: '筆記本' }],
  ['place: upstairs', { place: 'upstairs' }],
])('a piece is named with its words: %s', (text, news) => {
  const said = { title: 'oolong', starts: '2026-12-03T18:30', seats: 6 };
  const outcome = deskPlanCalls({ zone: denver, listen }).correctedPlan({ said, text }, around);
  expect(outcome).toEqual({ gives: { ...said, ...news } });
});
