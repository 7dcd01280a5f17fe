/** How much later or earlier, and how many seats more: told beside what there is. */
import { expect, it } from 'vitest';
import { readLengthening, readShift } from '../../../../src/core/lessons/spoken/shift.ts';
import { seatsWanted } from '../../../../src/core/lessons/spoken/seats-wanted.ts';
import { bookingWith, lessonWith } from '../lesson-drafts.ts';

it.each<[string, number | undefined]>([
  ['start half an hour later on saturday', 30],
  ['push old leaves back 20 minutes', 20],
  ['begin an hour earlier', -60],
  ['bring it forward by 15 minutes', -15],
  ['禮拜六延後半小時', 30],
  ['周六推迟半个小时', 30],
  ['提早一個小時', -60],
  ['move it to 11', undefined],
  ['it lasts two hours', undefined],
  ['later', undefined],
])('%s', (text, minutes) => {
  expect(readShift(text)).toBe(minutes);
});

it.each<[string, number | undefined]>([
  ['half an hour longer', 30],
  ['20 minutes shorter', -20],
  ['加長半小時', 30],
  ['half an hour later', undefined],
  ['longer', undefined],
])('how much longer: %s', (text, minutes) => {
  expect(readLengthening(text)).toBe(minutes);
});

const roster = { lesson: lessonWith({ seats: 8 }), bookings: [bookingWith({ seats: 3 })] };
it.each<[string, number | undefined]>([
  ['two more seats on saturday please', 10],
  ['周六加两个位子', 10],
  ['星期六多開兩個位子', 10],
  ['no more bookings for saturday', 3],
  ['星期六不收人了', 3],
  ['周六别再收人了', 3],
  ['12 seats', undefined],
])('%s', (text, seats) => {
  expect(seatsWanted(text, roster)).toBe(seats);
});

it('keeps one seat where nobody has booked', () => {
  expect(seatsWanted('no more bookings', { ...roster, bookings: [] })).toBe(1);
});
