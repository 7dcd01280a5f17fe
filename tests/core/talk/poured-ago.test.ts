/** What was poured, told in people's own words, and how long ago. */
import { expect, it } from 'vitest';
import { pouredAgoS } from '../../../src/core/talk/steps.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { talkCues } from '../../reading/content.ts';

it.each([
  ['sorry, poured it 10 seconds ago', 10],
  ["I've already poured it", 0],
  ['just strained it', 0],
  ['poured off a minute ago', 60],
  ['poured it half a minute ago', 30],
  ['我已經倒出來了', 0],
  ['剛剛出湯了', 0],
  ['30秒前就倒出來了', 30],
  ['一分钟前倒掉了', 60],
  ['早就出汤了', 0],
])('%s', (text, ago) => {
  expect(pouredAgoS(talkWords(text), talkCues)).toBe(ago);
});

it.each([
  'not poured yet',
  'when should it be poured?',
  "I haven't poured it",
  'I poured the water in',
  'poured hot water over it',
  'if I poured it now',
  '還沒倒出來',
  '什么时候倒出来',
  '倒水了',
  '要不要倒掉',
  'poured '.repeat(20),
])('no: %s', (text) => {
  expect(pouredAgoS(talkWords(text), talkCues)).toBeNull();
});
