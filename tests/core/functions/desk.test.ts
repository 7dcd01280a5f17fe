/** What a shopkeeper does with lessons, as far as it is judged before anything is done. */
import { expect, it } from 'vitest';
import { deskBoardCalls } from '../../../src/core/functions/desk-board.ts';
import { deskLessonCalls } from '../../../src/core/functions/desk-lesson.ts';
import { deskPlanCalls } from '../../../src/core/functions/desk-plan.ts';
import type { Around } from '../../../src/core/flow/book.ts';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { bookingWith, denver, denverAt, lessonWith } from '../lessons/lesson-drafts.ts';

const lesson = { ...lessonWith({ id: 'white-tea-77' }), revision: 3 };
const booked = { ...bookingWith({ seats: 2 }), name: 'Ann' };

function aroundWith(...doors: readonly object[]): Around {
  const house = { doors, tzVersion: '2025c', event: '99', mail: true } as unknown as Facts;
  return { nowMs: denverAt('2026-12-01T12:00'), language: 'en', memory: {}, house };
}
const around = aroundWith({ lesson, bookings: [booked] });
const call = (name: string, given: Facts, where = around) =>
  deskLessonCalls[name]?.({ lesson: lesson.id, ...given }, where);

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

it('two lessons of the same name have series of their own', () => {
  const ids = ['an-evening-of-old-leaves-of-yunnan-71', 'an-evening-of-old-leaves-of-yunnan-77'].map((id) => {
    const where = aroundWith({ lesson: { ...lesson, id }, bookings: [] });
    const made = call('deskRepeat', { lesson: id, every: 'week', step: 1 }, where);
    return (made as { gives: { series: { draft: { id: string } } } }).gives.series.draft.id;
  });
  expect(new Set(ids).size).toBe(2);
  for (const id of ids) expect(`${id}-2026-12-12`).toMatch(/^[a-z][a-z0-9-]{0,39}$/);
});

const { planning } = deskPlanCalls(denver);

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
  const { gives } = deskBoardCalls(denver).deskPeople({ lesson: lesson.id }, big) as { gives: Facts };
  const told = gives['told'] as readonly { key: string; values: Facts }[];
  expect(told).toHaveLength(91);
  expect(told.at(-1)).toEqual({ key: 'desk-told-more', values: { count: 5 } });
});
