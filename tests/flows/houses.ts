/** What the house tells of a customer and of a shopkeeper, where no house is run. */
import type { Facts } from '../../src/core/flow/flow.ts';
import { bookingWith, lessonWith } from '../core/lessons/lesson-drafts.ts';

/** A lesson with seats, one that is full, and one this customer has booked. */
const lessons = (['2023-11-25', '2023-12-02', '2023-12-09'] as const).map((day, n) => {
  const name = ['White tea', 'Old puer', 'Green morning'][n] ?? '';
  const title = { en: name, 'zh-Hant': name, 'zh-Hans': name };
  const series = n === 1 ? { series: 'lesson-1' } : {};
  const lesson = lessonWith({ id: `lesson-${n}`, title, starts: `${day}T19:00`, ...series });
  return { ...lesson, free: n === 1 ? 0 : 3, waiting: n };
});
const booked = { ...bookingWith({ id: '70', person: '7' }), place: 0, lesson: lessons[2]! };

/** … and the series from which one more comes. */
const weekly = { ...lessonWith({ id: 'lesson-1' }), starts: '2023-12-02T19:00' };

/** … and one that was yesterday. */
const yesterday = lessonWith({ id: 'lesson-over', starts: '2023-11-13T10:00' });
export const over = {
  ...bookingWith({ id: '60', person: '7' }),
  place: 0,
  lesson: { ...yesterday, free: 3, waiting: 0 },
};

/** What the house tells of a customer. */
export const customer = {
  channel: 'terminal',
  staffed: true,
  asked: 0,
  everything: 'all of it',
  standing: [],
  lessons,
  bookings: [booked],
  event: '77',
  tzVersion: '2025c',
} as unknown as Facts;

export const asked = (id: number, text: string): Facts => ({
  id,
  text,
  person: 7,
  language: 'en',
  question: { quoteOf: id, part: 'question', gone: null },
  reply: { quoteOf: id, part: 'answer', gone: null },
});

/** … and of a shopkeeper for whom two questions wait. */
export const keeper = {
  ...customer,
  keeper: true,
  waitingCount: 2,
  waiting: [asked(1, 'may I bring my dog into the shop'), asked(2, 'do you mend kites')],
  answered: [{ ...asked(3, 'can I bring a dog into the shop'), answer: 'Yes.' }],
  standing: [{ id: 1, question: 'do you sell ribbons', answer: 'No.' }],
  kept: [asked(1, 'do you sell ribbons')],
  freshCode: 'QRST-2345',
  mail: true,
  undelivered: [{ id: 1, why: 'unreachable', at: 1_699_900_000_000, name: 'Ann' }],
  tallies: [{ what: 'tea-asked', item: 'longjing', count: 3 }],
  names: [{ booking: '70', name: 'Ann' }],
  series: [{ draft: weekly, repeats: { every: 'week', step: 1 } }],
  past: [{ lesson: yesterday, bookings: [{ ...booked, came: true, name: 'Ann' }] }],
  doors: lessons.map((lesson, n) => ({ lesson, bookings: n === 2 ? [{ ...booked, name: 'Ann' }] : [] })),
} as unknown as Facts;

/** … who has called two of them off. */
export const afterCallingOff = {
  ...keeper,
  doors: lessons.map((lesson, n) => ({
    lesson: n === 2 ? lesson : { ...lesson, status: 'cancelled' },
    bookings: [{ ...booked, id: String(n), name: 'Ann', reach: 'none' }],
  })),
} as unknown as Facts;
