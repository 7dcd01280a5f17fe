/** How many seats someone is to have, as a shopkeeper is told it; null where it must be asked. */
import { expect, test } from 'vitest';
import { seatsTold } from '../../../../src/core/lessons/spoken/seats-told.ts';

test.each<[string, ReturnType<typeof seatsTold>]>([
  ["rang, they're three now", { seats: 3 }],
  ['make it 4', { seats: 4 }],
  ['wants 3 seats instead of 2', { seats: 3 }],
  ['only needs one seat', { seats: 1 }],
  ['is coming alone', { seats: 1 }],
  ['no, 3', { seats: 3 }],
  ['two', { seats: 2 }],
  ['needs two more seats', { more: 2 }],
  ['is bringing his wife', { more: 1 }],
  ['brings two friends along', { more: 2 }],
  ['is bringing her sister and a friend', { more: 2 }],
  ['is bringing his parents', { more: 2 }],
  ['plus one', { more: 1 }],
  ['one seat less', { more: -1 }],
  ['is bringing friends', null],
  ['is coming with her children', null],
  ['rang', null],
  ['要三位', { seats: 3 }],
  ['改成两个人', { seats: 2 }],
  ['一個人來', { seats: 1 }],
  ['要多帶一個人', { more: 1 }],
  ['再加兩位', { more: 2 }],
  ['帶她妹妹一起來', { more: 1 }],
  ['带两个朋友', { more: 2 }],
  ['少一位', { more: -1 }],
  ['打電話來了', null],
])('%s', (sentence, told) => {
  expect(seatsTold(sentence)).toEqual(told);
});
