import { expect, it } from 'vitest';
import type { Around } from '../../../src/core/flow/book.ts';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { errandOf } from '../../../src/core/functions/desk-errand.ts';
import { denver, denverAt, lessonWith } from '../lessons/lesson-drafts.ts';

const title = { en: 'Old leaves', 'zh-Hant': '老茶之夜', 'zh-Hans': '老茶之夜' };
const doors = [{ lesson: lessonWith({ id: 'old', title, starts: '2026-12-05T19:00' }), bookings: [] }];
const around = (keeper: boolean): Around => ({
  nowMs: denverAt('2026-12-02T10:00'),
  language: 'en',
  memory: {},
  house: { keeper, doors } as unknown as Facts,
});

it.each<[string, string | null, string | null]>([
  ['who is coming to old leaves?', 'people', 'old'],
  ['who is coming on Saturday?', 'people', 'old'],
  ['move old leaves to Sunday 6 pm', 'move', 'old'],
  ['please cancel old leaves', 'cancel', 'old'],
  ['write to everyone in old leaves', 'write', 'old'],
  ['老茶之夜誰會來', 'people', 'old'],
  ['老茶之夜改到星期日晚上六点', 'move', 'old'],
  ['取消老茶之夜', 'cancel', 'old'],
  ['通知老茶之夜的学员', 'write', 'old'],
  ['who is coming?', 'people', null],
  ['cancel my seat in old leaves', null, null],
  ['how do I brew old leaves?', null, null],
])('%s', (text, act, lesson) => {
  const errand = errandOf(text, around(true), denver);
  expect([errand?.['act'] ?? null, errand?.['lesson'] ?? null]).toEqual([act, lesson]);
  expect(errandOf(text, around(false), denver)).toBeNull();
});
