/** What is asked of a cold infusion. */
import { expect, it } from 'vitest';
import { coldAsked, hoursSaid } from '../../../src/core/talk/cold.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { talkCues } from '../../reading/content.ts';

it.each([
  ['when should I start, the picnic is tomorrow at noon', 'begin-for'],
  ['what time do I have to put it in if I want it at 6', 'begin-for'],
  ['明天中午要野餐 什麼時候開始泡？', 'begin-for'],
  ['聽日兩點去海灘，幾點開始浸好？', 'begin-for'],
  ['and for dinner tonight?', 'begin-for'],
  ['so I start tonight at 9?', 'begun-at'],
  ['那我晚上十點放冰箱可以吧', 'begun-at'],
  ['好的 晚上十点开始', 'begun-at'],
  ["is it ok if it's in there for 14 hours", 'stands'],
  ['泡超過12小時會不會苦', 'stands'],
  ['泡一晚上会太浓吗', 'stands'],
  ['can I leave it in the car?', 'on-the-way'],
  ['可唔可以擺喺車度？', 'on-the-way'],
  ['how do I strain it', 'strain'],
  ['can I have some already?', 'taste-early'],
  ['可以先喝一口嗎', 'taste-early'],
  ['does it need a lid', 'lid'],
  ['can I use ice water', 'ice'],
])('%s', (text, asks) => {
  expect(coldAsked(talkWords(text), talkCues)).toBe(asks);
});

// What has stood already is a question of safety, and answered as one.
it.each([
  'it was left in the car since yesterday, still ok to drink?',
  '放在車上一天了還能喝嗎',
  'cold brew left out over night',
  'stronger please',
  'thanks',
  '茶葉放多少',
])('nothing: %s', (text) => {
  expect(coldAsked(talkWords(text), talkCues)).toBeNull();
});

it.each([
  ['14 hours', 14],
  ['two days', 48],
  ['over night', 10],
  ['泡超過十二個小時', 12],
  ['放一晚', 10],
  ['longer', null],
])('hours: %s', (text, hours) => {
  expect(hoursSaid(talkWords(text), talkCues)).toBe(hours);
});
