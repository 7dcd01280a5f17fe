/** What is said of a lesson that is over, and to the reminder of one to come. */
import { expect, it } from 'vitest';
import { hearAfterwards, type Afterwards } from '../../../../src/core/lessons/spoken/afterwards.ts';
import { saysComing, saysYesTo } from '../../../../src/core/lessons/spoken/coming.ts';
import { listen } from '../heard-here.ts';

it.each<[string, Afterwards | null]>([
  ['what was that tea called', 'which-tea'],
  ['which tea did we drink first', 'which-tea'],
  ["what's the name of the white tea we had", 'which-tea'],
  ['昨天喝的那個茶叫什麼', 'which-tea'],
  ['课上第二支茶是什么', 'which-tea'],
  ['sorry I missed it yesterday', 'missed'],
  ["so sorry, I couldn't make it", 'missed'],
  ['對不起昨天沒去', 'missed'],
  ['睡过头了不好意思', 'missed'],
  ['thanks, it was lovely', 'lovely'],
  ['we learnt so much', 'lovely'],
  ['昨天的課很好玩，謝謝老師', 'lovely'],
  ['can I take it again', 'once-more'],
  ['我想再上一次', 'once-more'],
  ['还有下一次吗', 'once-more'],
  ['when does it begin', null],
  ['how do I brew white tea', null],
  ['第二泡', null],
])('%s: %s', (sentence, act) => {
  expect(hearAfterwards(listen(sentence))).toBe(act);
});

it.each<[string, boolean, boolean]>([
  ["I'll be there", true, false],
  ["yes, we're both coming", true, true],
  ['see you tomorrow', true, false],
  ['會，我會去', true, false],
  ['准时到', true, false],
  ['明天見', true, false],
  ['oh great, yes please', false, true],
  ["I'll take it", false, true],
  ['太好了我要', false, true],
  ["I can't come", false, false],
  ['不去了', false, false],
  ['yes, what should I bring?', false, false],
])('%s: comes %s, takes it %s', (sentence, comes, takes) => {
  expect([saysComing(listen(sentence)), saysYesTo(listen(sentence))]).toEqual([comes, takes]);
});
