/** More seats and fewer, who comes along, and what says none of it. */
import { expect, it } from 'vitest';
import { makeSeatChange } from '../../../../src/core/lessons/spoken/seat-change.ts';
import { listen } from '../heard-here.ts';

const seatChange = makeSeatChange({
  one: ['sister', 'husband', 'friend', 'mom', '女儿', '妹妹', '老公', '朋友'],
  two: ['parents', '父母'],
  many: ['friends', '朋友', '同事'],
});

it.each<[string, number | null, number | null]>([
  ['two more', 2, null],
  ['can I have two more', 2, null],
  ['one more seat please', 1, null],
  ['再加兩位', 2, null],
  ['可以再多一个人吗', 1, null],
  ['drop 2 people', null, 2],
  ['please remove one seat', null, 1],
  ['sorry, two fewer', null, 2],
  ["one of us can't come", null, 1],
  ['two of us are sick', null, 2],
  ["my husband can't make it", null, 1],
  ['sorry, my sister is ill', null, 1],
  ['我們有一個人不能來', null, 1],
  ['我女儿不去了', null, 1],
  ['取消一位', null, 1],
  ['可以少兩位嗎', null, 2],
  ['退一个座位', null, 1],
  ['取消一下', null, null],
  ["I can't come", null, null],
  ['all of us are sick', null, null],
  ['one of us is vegetarian', null, null],
  ['my friend said one more infusion', null, null],
  ["my parents can't come", null, 2],
  ['三位', null, null],
])('%s: %s more, %s fewer', (sentence, more, fewer) => {
  expect(seatChange(listen(sentence))).toMatchObject({ more, fewer, along: null });
});

it.each<[string, number | null]>([
  ['can I bring my sister', 1],
  ['hi, could I bring a friend along?', 1],
  ['is it ok if I bring two friends', 2],
  ['may I bring my parents too', 2],
  ["I'd like to bring my husband", 1],
  ['can my mom come too?', 1],
  ['我能带我妹妹一起吗', 1],
  ['可以帶我老公一起來嗎', 1],
  ['想帶兩個朋友', 2],
  ['可以帶父母來嗎', 2],
  ['can I bring friends', null],
  ['can I bring my dog', null],
  ['can I bring my gaiwan', null],
  ['可以帶小狗嗎', null],
])('%s: %s along', (sentence, along) => {
  expect(seatChange(listen(sentence))).toEqual({ more: null, fewer: null, along });
});
