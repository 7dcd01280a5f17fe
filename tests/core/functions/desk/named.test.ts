/** Lessons that are called off and come back, and letters to all: which are meant, and whom it reaches. Said on Wednesday, December 2, 2026. */
import { expect, it, test } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts, Json } from '../../../../src/core/flow/flow.ts';
import { errandOf } from '../../../../src/core/functions/desk/errand.ts';
import { deskResumeCalls } from '../../../../src/core/functions/desk/resume.ts';
import { deskWriteAllCalls } from '../../../../src/core/functions/desk/write-all.ts';
import type { Lesson } from '../../../../src/core/lessons/lesson.ts';
import { bookingWith, denver, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';
import { listen } from '../../lessons/heard-here.ts';

const title = (name: string) => ({ en: name, 'zh-Hant': name, 'zh-Hans': name });
const one = (id: string, name: string, starts: string): Lesson => lessonWith({ id, title: title(name), starts });
const off = (lesson: Lesson): Lesson => ({ ...lesson, status: 'cancelled', revision: 1 });
const booked = (person: string, reach: string, standing = 'seated'): object => ({
  ...bookingWith({ id: `b${person}`, person }),
  standing,
  reach,
  name: person,
});
const doors = [
  { lesson: off(one('sat', 'First cup', '2026-12-05T10:30')), bookings: [booked('1', 'chat'), booked('2', 'none')] },
  { lesson: one('thu', 'Old leaves', '2026-12-10T19:00'), bookings: [booked('1', 'chat'), booked('3', 'mail')] },
  { lesson: off(one('sun', 'Red', '2026-12-13T15:00')), bookings: [] },
  { lesson: one('next', 'First cup', '2026-12-12T10:30'), bookings: [booked('1', 'chat'), booked('4', 'none')] },
  { lesson: one('empty', 'Green', '2026-12-19T10:30'), bookings: [booked('5', 'chat', 'waiting')] },
];
const around = (more: object = {}): Around => ({
  nowMs: denverAt('2026-12-02T10:00'),
  language: 'en',
  memory: {},
  house: { keeper: true, doors, ...more } as unknown as Facts,
});
const { deskResume } = deskResumeCalls({ listen, zone: denver });
const { deskWriteAll } = deskWriteAllCalls({ listen, zone: denver });
const gives = (outcome: ReturnType<typeof deskResume>): Facts => {
  if (!('gives' in outcome)) throw new Error(outcome.wrong);
  return outcome.gives as Facts;
};
const resumed = (given: Facts): readonly string[] =>
  (gives(deskResume(given, around()))['lessons'] as readonly { lesson: string }[]).map(({ lesson }) => lesson);

it.each<[string | null, readonly string[]]>([
  ['Saturday is on after all', ['sat']],
  ['星期六照常上課', ['sat']],
  ['the red one takes place after all', ['sun']],
  ['next Thursday is on after all', []],
  ['I cancelled the wrong one', ['sat', 'sun']],
  [null, ['sat', 'sun']],
])('called off, and back: %s', (text, lessons) => {
  expect(resumed({ text })).toEqual(lessons);
});

test('what was called off a moment ago is meant first, with its series; one alone without', () => {
  const series = [{ draft: lessonWith({ id: 'weekly' }), repeats: { every: 'week', step: 1 } }] as unknown as Json;
  const last = { lessons: ['sun'], series, days: { from: '2026-12-10' } };
  const back = gives(deskResume({ text: 'undo that', off: last }, around()));
  expect(back).toMatchObject({ lessons: [{ lesson: 'sun', seen: 1 }], series, days: last.days, booked: 0 });
  expect(gives(deskResume({ text: null, off: last, only: 'sat' }, around()))).toMatchObject({
    lessons: [{ lesson: 'sat', seen: 1 }],
    series: [],
    booked: 2,
    unreached: 1,
  });
});

it.each<[string, readonly string[], number, number]>([
  ['write to all my students', ['thu', 'next'], 2, 1],
  ['tell everyone next week', ['thu', 'next'], 2, 1],
  ['write to everyone coming on the 10th', ['thu'], 2, 0],
  ['通知所有學生', ['thu', 'next'], 2, 1],
  ['write to everyone on the 19th', [], 0, 0],
])('%s: each person once', (text, lessons, reached, unreached) => {
  const letter = gives(deskWriteAll({ text }, around()));
  expect(letter).toMatchObject({ lessons, reached, unreached, isNothing: lessons.length === 0 });
});

test('whom no letter reaches is named; one of the lessons can be chosen', () => {
  const letter = gives(deskWriteAll({ text: 'write to all', only: 'next' }, around()));
  expect(letter).toMatchObject({
    lessons: ['next'],
    reached: 1,
    unreached: 1,
    untold: [{ key: 'desk-told-name', values: { name: '4' } }],
  });
});

it.each<[string, Facts | null]>([
  [
    'message all my students: the shop moves in January',
    { act: 'write', isAll: true, words: 'the shop moves in January' },
  ],
  ['tell everyone next week that we begin with soup', { act: 'write', isDated: true, words: 'we begin with soup' }],
  [
    'write to everyone who has booked: closed from 24 December',
    { act: 'write', isAll: true, isDated: false, lesson: null },
  ],
  ['通知所有报了名的人，12月24号到1月2号休息', { act: 'write', isAll: true, words: '12月24号到1月2号休息' }],
  ["tell Thursday's people to bring a towel", { act: 'write', lesson: 'thu', words: 'bring a towel' }],
  ['告诉周四的人带条毛巾', { act: 'write', lesson: 'thu', words: '带条毛巾' }],
  ['Saturday is on after all', { act: 'resume' }],
  ['undo that', { act: 'resume' }],
  ['搞错了，周六照常上课', { act: 'resume' }],
  ['what did I cancel?', { act: 'off-listed' }],
  ['哪些課取消了', { act: 'off-listed' }],
  ['who was missing yesterday?', { act: 'attended' }],
  ['昨天谁没来', { act: 'attended' }],
  ['any no-shows?', { act: 'attended' }],
  // At the door, and of what is to come.
  ['who is missing?', { act: 'people' }],
  ['who is coming on Thursday?', { act: 'people', lesson: 'thu' }],
])('%s', (text, errand) => {
  expect(errandOf(listen(text), around(), denver)).toMatchObject(errand ?? {});
});

test('with nothing called off, nothing is undone', () => {
  const none = around({ doors: doors.slice(1, 2) });
  // Another change may be meant: the desk tells whether there is one.
  expect(errandOf(listen('undo that'), none, denver)).toMatchObject({ act: 'undo', lesson: null });
});
