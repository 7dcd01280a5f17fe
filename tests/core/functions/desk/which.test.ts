import { expect, it } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts } from '../../../../src/core/flow/flow.ts';
import { deskBoardCalls } from '../../../../src/core/functions/desk/board.ts';
import { errandOf } from '../../../../src/core/functions/desk/errand.ts';
import { listen } from '../../lessons/heard-here.ts';
import { denver, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';

const lessonAt = (id: string, en: string, han: string, starts: string): Facts =>
  ({
    lesson: lessonWith({ id, title: { en, 'zh-Hant': han, 'zh-Hans': han }, starts }),
    bookings: [],
  }) as unknown as Facts;
const doors = [
  lessonAt('cup', 'The first cup', '第一杯茶', '2026-12-12T10:30'),
  lessonAt('rock', 'Roast and rock', '火与岩', '2026-12-12T14:00'),
  lessonAt('later', 'The first cup', '第一杯茶', '2026-12-19T10:30'),
];
const around: Around = {
  nowMs: denverAt('2026-12-02T10:00'),
  language: 'en',
  memory: {},
  house: { keeper: true, doors },
};
const { deskWhich } = deskBoardCalls({ listen, zone: denver });

it.each<[string, readonly string[]]>([
  ['cancel the lesson on the 12th', ['cup', 'rock']],
  ['幫王小明報名12號', ['cup', 'rock']],
  ['12号的改到11点', ['cup', 'rock']],
  ['12号下午的课改到三点', ['rock']],
  ['how many people are coming next week', ['cup', 'rock']],
  ['move it to 11', []],
])('"%s" may be of these lessons', (text, among) => {
  expect(errandOf(listen(text), around, denver)).toMatchObject({ among });
});

it.each<[string, string | null]>([
  ['the afternoon one', 'rock'],
  ['下午那堂', 'rock'],
  ['早上那节', 'cup'],
  ['第一杯茶', 'cup'],
  ['the first cup', 'cup'],
  ['火与岩', 'rock'],
  ['the 12th', null],
  ['whichever', null],
])('of two on one day "%s" means %s', (text, lesson) => {
  expect(deskWhich({ text, among: ['cup', 'rock'] }, around)).toEqual({ gives: lesson });
});
