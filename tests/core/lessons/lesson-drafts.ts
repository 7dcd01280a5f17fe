/** Lessons to test with. */
import { instantOf } from '../../../src/core/lessons/calendar.ts';
import { freshLesson, type Lesson, type LessonDraft } from '../../../src/core/lessons/lesson.ts';
import type { Booking } from '../../../src/core/lessons/roster.ts';

export const denver = 'America/Denver';
export const denverAt = (wall: string): number => instantOf(wall, denver);

const nothing = { en: '', 'zh-Hant': '', 'zh-Hans': '' };

export const draft: LessonDraft = {
  id: 'white-evening',
  title: { en: 'White tea', 'zh-Hant': '白茶', 'zh-Hans': '白茶' },
  level: 'beginner',
  buildsOn: [],
  place: nothing,
  teacher: 'Odalys Wren',
  seats: 8,
  zone: denver,
  starts: '2026-12-05T19:00',
  minutes: 90,
  price: nothing,
  bring: nothing,
  teas: ['white-peony'],
  cancelHours: 24,
  offerMinutes: 120,
};

export const lessonWith = (differences: Partial<LessonDraft> = {}): Lesson =>
  freshLesson({ ...draft, ...differences }, '2025c');

export const bookingWith = (differences: Partial<Booking> = {}): Booking => ({
  id: 'b1',
  person: 'p1',
  seats: 1,
  standing: 'seated',
  enrolledAt: 0,
  offerUntil: null,
  answer: null,
  came: null,
  moves: 0,
  revision: 0,
  ...differences,
});
