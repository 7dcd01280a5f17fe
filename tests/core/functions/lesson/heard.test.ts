/** What is said of one's only booking, with nothing else spoken of. */
import { expect, it } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import { isOfOwnLesson } from '../../../../src/core/functions/lesson/heard.ts';
import { bookingWith, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';
import { listen } from '../../lessons/heard-here.ts';

const lesson = { ...lessonWith({ starts: '2026-12-12T19:00' }) };
const bookings = [{ ...bookingWith({}), lesson }];
const around: Around = {
  nowMs: denverAt('2026-12-02T10:00'),
  language: 'en',
  memory: {},
  house: { bookings, lessons: [] },
};
const change = { more: null, fewer: null, along: null };

it.each([
  ["I can't come", true],
  ["I won't be able to make it", true],
  ["sorry, I won't be able to make it", true],
  ["I can't come to the shop before six", false],
  ['my kettle is broken, the green tea will not make it today', false],
  ['how hot for sencha?', false],
])('%s: %s', (text, isOfIt) => {
  expect(isOfOwnLesson({ sentence: listen(text), heard: {}, flow: 'front', change }, around)).toBe(isOfIt);
  expect(isOfOwnLesson({ sentence: listen(text), heard: {}, flow: 'guide', change }, around)).toBe(false);
});
