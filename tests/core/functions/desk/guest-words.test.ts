/** The words for one person in a shopkeeper's sentence; empty where they are still to be asked for. */
import { expect, test } from 'vitest';
import { withoutName, wordsTo } from '../../../../src/core/functions/desk/guest-words.ts';

test.each<[string, string, string]>([
  ['write to Petra: the door has moved', 'Petra', 'the door has moved'],
  ['tell Petra that we begin at 11', 'Petra', 'we begin at 11'],
  ['let petra know the kettle is new', 'Petra', 'the kettle is new'],
  ['send Mei a message: bring a cup', 'Mei Lin and a friend', 'bring a cup'],
  ['can you send Ines a message', 'Ines', ''],
  ['write to Ines about the door', 'Ines', ''],
  ['Ines only needs to pay 20, tell her please', 'Ines', ''],
  ['Ines is early, tell her we open at ten', 'Ines', 'we open at ten'],
  ['跟佳蓉說：請從側門進來', '佳蓉', '請從側門進來'],
  ['告诉思雨从侧门进', '思雨', '从侧门进'],
  ['给小周发个消息：记得带盖碗', '小周', '记得带盖碗'],
  ['給大文傳一則訊息', '陳大文', ''],
  ['通知陳大文一聲，明天不開', '陳大文', '明天不開'],
])('%s', (sentence, name, words) => {
  expect(wordsTo(sentence, name)).toBe(words);
});

test('what is left has nothing of the name', () => {
  expect(withoutName('move Mei Lin to Sunday', 'Mei Lin')).toBe('move   to Sunday');
  expect(withoutName('大文換到週日', '陳大文')).toBe(' 換到週日');
});

test('of no name nothing is taken away', () => {
  expect(withoutName('they need 3 seats', '')).toBe('they need 3 seats');
  expect(wordsTo('the door has moved', '')).toBe('');
});
