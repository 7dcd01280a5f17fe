/** Lessons called off together: which are meant, who is told, and what becomes of the series. Said on Wednesday, December 2, 2026. */
import { describe, expect, test } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts } from '../../../../src/core/flow/flow.ts';
import { deskCallOffCalls } from '../../../../src/core/functions/desk/call-off.ts';
import type { LessonDraft } from '../../../../src/core/lessons/lesson.ts';
import { lessonsOfSeries, type Series } from '../../../../src/core/lessons/series.ts';
import { denver, denverAt, draft, lessonWith } from '../../lessons/lesson-drafts.ts';
import { listen } from '../../lessons/heard-here.ts';

const now = denverAt('2026-12-02T10:00');
const today = { now, tzVersion: '1' };
const seriesOf = (id: string, starts: string, more: Partial<LessonDraft>): Series => ({
  draft: { ...draft, id, starts, ...more },
  repeats: { every: 'week', step: 1 },
});
const series = [
  seriesOf('cup', '2026-12-05T10:30', {
    title: { en: 'The first cup', 'zh-Hant': '第一杯茶', 'zh-Hans': '第一杯茶' },
    level: 'beginner',
  }),
  seriesOf('gaiwan', '2026-12-10T18:30', {
    title: { en: 'An evening with the gaiwan', 'zh-Hant': '蓋碗之夜', 'zh-Hans': '盖碗之夜' },
    level: 'beginner',
  }),
];
const once = lessonWith({
  id: 'old',
  title: { en: 'Old leaves', 'zh-Hant': '老茶', 'zh-Hans': '老茶' },
  starts: '2026-12-12T19:00',
  level: 'advanced',
});
const lessons = [...series.flatMap((one) => lessonsOfSeries(one, '2027-01-10', today).lessons), once];

const booked = (person: string, reach: string) => ({ id: `${person}-1`, person, seats: 1, standing: 'seated', reach });
const doors = lessons.map((lesson) => ({
  lesson,
  bookings: lesson.id === 'cup-2026-12-26' ? [booked('7', 'chat'), booked('8', 'none')] : [],
}));
const around = { nowMs: now, language: 'en', memory: {}, house: { keeper: true, doors, series } } as unknown as Around;
const calls = deskCallOffCalls({ listen, zone: denver });

function called(given: Facts): Facts {
  const outcome = calls.deskCallOff(given, around);
  if (!('gives' in outcome)) return { wrong: outcome.wrong };
  return outcome.gives as Facts;
}
const idsOf = ({ lessons: found }: Facts): readonly string[] =>
  (found as readonly { readonly lesson: string }[]).map(({ lesson }) => lesson).toSorted();

describe('what is meant', () => {
  const cups = ['12-26', '2027-01-02', '2027-01-09'].map((day) => `cup-${day.length > 5 ? day : `2026-${day}`}`);
  const gaiwans = ['2026-12-10', '2026-12-17', '2026-12-24', '2026-12-31', '2027-01-07'].map((day) => `gaiwan-${day}`);
  test.each<[string, readonly string[], readonly string[]]>([
    ['no more first cup lessons after Christmas', cups, ['cup']],
    ['聖誕節後第一杯茶不開了', cups, ['cup']],
    ['圣诞节之后没有第一杯茶了', cups, ['cup']],
    ["call off all of the beginners' evenings", gaiwans, ['gaiwan']],
    ['取消所有初學晚上的課', gaiwans, ['gaiwan']],
    ['取消所有初学晚上的课', gaiwans, ['gaiwan']],
    ['cancel all Thursday lessons', gaiwans, ['gaiwan']],
    ['we are closed from 10 to 12 December', ['cup-2026-12-12', 'gaiwan-2026-12-10', 'old'], ['cup', 'gaiwan']],
    ['12月10日到12日休館', ['cup-2026-12-12', 'gaiwan-2026-12-10', 'old'], ['cup', 'gaiwan']],
    ['12月10号到12号休息', ['cup-2026-12-12', 'gaiwan-2026-12-10', 'old'], ['cup', 'gaiwan']],
    ['no more old leaves lessons', ['old'], []],
    // None of them is on the list yet.
    ['we are closed in April', [], ['cup', 'gaiwan']],
    ['we are closed on 13 December', [], []],
  ])('%s', (text, ids, ended) => {
    const found = called({ text });
    expect(idsOf(found)).toEqual(ids);
    expect(found['series']).toEqual(ended);
    expect(found['isNothing']).toBe(ids.length + ended.length === 0);
  });

  test('which series, when none is named and none is shown', () => {
    const found = called({ text: 'cancel the whole series' });
    expect(found).toMatchObject({ isWhich: true, groups: [{ only: 'cup' }, { only: 'gaiwan' }] });
    expect(idsOf(called({ text: 'cancel the whole series', only: 'gaiwan' }))).toEqual(gaiwans);
  });

  test('the one that is shown', () => {
    expect(called({ text: 'cancel the whole series', lesson: 'gaiwan-2026-12-24' })['series']).toEqual(['gaiwan']);
    expect(called({ text: '整個系列取消', lesson: 'gaiwan-2026-12-24' })['series']).toEqual(['gaiwan']);
  });
});

test('who is told is counted, and who cannot be told as well', () => {
  const found = called({ text: 'no more first cup lessons after Christmas' });
  expect(found).toMatchObject({ count: 3, unreached: 1 });
  expect(found['told']).toContainEqual({
    key: 'desk-told-off-people',
    values: { reached: 1, unreached: 1, people: 0 },
  });
});

test('nothing is called off but what was shown', () => {
  const text = 'no more first cup lessons after Christmas';
  const { seen = null } = called({ text });
  expect(called({ text, seen })).toMatchObject({ seen });
  expect(called({ text: 'cancel all the first cup lessons', seen })).toEqual({ wrong: 'lesson-changed-meanwhile' });
});

test('a reason that is too long is refused', () => {
  expect(called({ text: 'no lessons next week', reason: 'x'.repeat(5_000) })).toEqual({
    wrong: 'lesson-words-too-long',
  });
});
