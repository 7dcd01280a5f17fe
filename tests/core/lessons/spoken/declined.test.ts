/** No, with why not; and what wants something else instead. */
import { expect, it } from 'vitest';
import { declines } from '../../../../src/core/lessons/spoken/declined.ts';
import { listen } from '../heard-here.ts';

it.each([
  'no thanks, I have to be home by three',
  'no thank you',
  "not this time, we're away",
  "I'll think about it",
  'maybe another time',
  '不用了，3點我有事',
  '唔使喇,三點要接仔放學',
  '还是算了 太远了',
  '下次吧，謝謝',
  '我再想想',
  '算了不用了',
])('%s declines', (sentence) => {
  expect(declines(listen(sentence))).toBe(true);
});

it.each([
  'no, two seats',
  'no, I want the gaiwan evening',
  'no, the 12th instead',
  'not sure, is it easy?',
  '不是，改三位',
  '不用了，幫我報下週的',
  '不要太苦',
  '再想上一次',
  'no idea what to bring',
])('%s does not', (sentence) => {
  expect(declines(listen(sentence))).toBe(false);
});
