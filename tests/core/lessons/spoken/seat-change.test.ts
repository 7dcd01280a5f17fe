/** More seats and fewer, and what says neither. */
import { expect, it } from 'vitest';
import { seatsFewer, seatsMore } from '../../../../src/core/lessons/spoken/seat-change.ts';

it.each<[string, number | null, number | null]>([
  ['two more', 2, null],
  ['can I have two more', 2, null],
  ['one more seat please', 1, null],
  ['再加兩位', 2, null],
  ['可以再多一个人吗', 1, null],
  ["one of us can't come", null, 1],
  ['two of us are sick', null, 2],
  ["my husband can't make it", null, 1],
  ['sorry, my sister is ill', null, 1],
  ['我們有一個人不能來', null, 1],
  ['我女儿不去了', null, 1],
  ["I can't come", null, null],
  ['all of us are sick', null, null],
  ['one of us is vegetarian', null, null],
  ['my friend said one more infusion', null, null],
  ['三位', null, null],
])('%s: %s more, %s fewer', (sentence, more, fewer) => {
  expect([seatsMore(sentence), seatsFewer(sentence)]).toEqual([more, fewer]);
});
