import { expect, it } from 'vitest';
import { asksDetail, asksDetailAlone } from '../../../../src/core/lessons/spoken/detail.ts';
import { listen } from '../heard-here.ts';

/** Asks for what is told of a lesson; and so barely that it can only be of the one spoken of. */
it.each<[string, boolean, boolean]>([
  ['when does it begin?', true, true],
  ['how much is it', true, true],
  ['and who teaches it?', true, true],
  ['what should I bring for the gaiwan evening tomorrow then?', true, false],
  ['do I have to know anything?', true, false],
  ['can I bring my own gaiwan', true, false],
  ['會不會很難', true, false],
  ['what tea do we drink', true, true],
  ['how much are they', true, true],
  ['does it end before 5?', true, false],
  ['is it 18 dollars each?', true, false],
  ['5點前會結束嗎', true, false],
  ['一個人18美元嗎', true, false],
  ['幾點開始？', true, true],
  ['多少钱', true, true],
  ['要帶什麼呢', true, true],
  ['is there still room on the 10th?', true, false],
  ['10号的盖碗之夜满了吗', true, false],
  ['how likely is it that I get a seat', true, false],
  ['I have to leave by 4', true, false],
  ['3點我有事', true, false],
  ['how big are the groups', true, false],
  ['適合第一次泡茶的人嗎', true, false],
  ['when do I have to be there', true, true],
  ['最後嗰堂要準備啲咩', true, false],
  ['龍井多少錢', true, false],
  ['how long do old leaves keep?', false, false],
  ['can I bring my dog', false, false],
  ['帶我泡', false, false],
])('%s', (sentence, asks, alone) => {
  expect([asksDetail(listen(sentence)), asksDetailAlone(listen(sentence))]).toEqual([asks, alone]);
});
