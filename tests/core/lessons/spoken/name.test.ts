/** Names told beside something else, and what is no name. */
import { expect, it } from 'vitest';
import { isAsking, nameAlone, nameGiven } from '../../../../src/core/lessons/spoken/name.ts';
import { listen } from '../heard-here.ts';

it.each<[string, string | null]>([
  ['two of us, under Wren', 'Wren'],
  ['book two seats for the first cup under Odalys Finch', 'Odalys Finch'],
  ['my name is Tam O’Dell', "Tam O'Dell"],
  ['一個人，叫李雷', '李雷'],
  ['兩位，名字寫陳小明', '陳小明'],
  ['我叫小美', '小美'],
  ["I'm Wren", 'Wren'],
  ['Under Finch, please', 'Finch'],
  ['two of us', null],
  ["it's Saturday", null],
  ['我是新手', null],
  ['我想叫两杯', null],
  ["I'm late", null],
  ['it is under the table', null],
  ['我是想问几点开始', null],
])('%s: %s', (sentence, name) => {
  expect(nameGiven(sentence)).toBe(name);
});

it.each<[string, string | null]>([
  ['my name is wren', 'wren'],
  ['我叫小美', '小美'],
  ['my name is on the list, is it?', null],
  ['two of us, under Wren', null],
])('nothing but the name: %s: %s', (sentence, name) => {
  expect(nameAlone(sentence)).toBe(name);
});

it.each<[string, boolean]>([
  ['能不能退钱', true],
  ['can I bring my dog', true],
  ['what should I bring', true],
  ['可以帶小孩嗎', true],
  ['Will Turner', false],
  ['May', false],
  ['王小明', false],
])('%s asks something: %s', (sentence, asks) => {
  expect(isAsking(listen(sentence))).toBe(asks);
});
