import { describe, expect, test } from 'vitest';
import { makeReader, type Reading } from '../../src/core/reading/reading.ts';
import { makeWithoutCourtesies } from '../../src/core/reading/typed/courtesies.ts';
import { makeTeaFinder } from '../../src/core/teas/find.ts';
import { readSentences, type Sentence } from './accuracy.ts';
import { answers, names, teas, words } from './content.ts';

const read = makeReader({ finder: makeTeaFinder(teas, names), words, ordinary: names.ordinary, answers });
const nothingAsked = { language: null, asked: null };
const heard = (text: string): Partial<Reading> =>
  Object.assign(read(text, nothingAsked), { language: null, languageSure: null });
// A greeting is made of courtesies.
const said = ['night-market.txt', 'front-counter.txt'].flatMap(readSentences).filter(({ kind }) => kind !== 'greeting');
const isEnglish = ({ language }: Sentence): boolean => language === 'en';
const isOfTaiwan = ({ language }: Sentence): boolean => language === 'zh-Hant';
const isOfTheMainland = ({ language }: Sentence): boolean => language === 'zh-Hans';
const alone = new Map(said.map(({ text }) => [text, JSON.stringify(heard(text))]));
const unended = (text: string): string => text.replace(/[.。!！]*$/, '');

const frames: readonly (readonly [name: string, isFor: (one: Sentence) => boolean, frame: (text: string) => string])[] =
  [
    ['hello', isEnglish, (text) => `Hi there, ${text}`],
    ['a letter', isEnglish, (text) => `Dear shop,\n${unended(text)}\nKind regards, Ilse`],
    ['an apology', isEnglish, (text) => `sorry to bother you again but ${text}`],
    ['a quick question', isEnglish, (text) => `Good evening! Quick question - ${text}`],
    ['um', isEnglish, (text) => `um so ${text}`],
    ['thanks', isEnglish, (text) => `${unended(text)} Thanks so much!`],
    ['what came before', isEnglish, (text) => `I bought this from you last week. My name is Greta. ${text}`],
    ['a beginner', isEnglish, (text) => `I have a question about this: ${text}`],
    ['someone else', isEnglish, (text) => `my wife wants to know, ${text}`],
    ['a picture', () => true, (text) => `🍵 ${text} 🙏`],
    ['你好', isOfTaiwan, (text) => `老闆你好，不好意思請問一下，${text}`],
    ['谢谢', isOfTheMainland, (text) => `${unended(text)}，谢谢老板`],
    ['急', isOfTaiwan, (text) => `想請教一下 ${unended(text)} 在線等，先謝謝了～`],
  ];

describe('courtesies around a message change nothing of what is heard', () => {
  test.each(frames)('%s', (_, isFor, frame) => {
    const framed = said.filter(isFor).map(({ text }) => ({ text, frame: frame(text) }));
    expect(framed.length).toBeGreaterThan(80);
    const changed = framed.filter(({ text, frame: whole }) => JSON.stringify(heard(whole)) !== alone.get(text));
    expect(changed.map(({ frame: whole }) => whole)).toEqual([]);
  });
});

test.each([
  ['the shop is not open today?', "the shop isn't open today?"],
  ['I cannot taste anything', "I can't taste anything"],
  ['my kettle does not show the temperature', "my kettle doesn't show the temperature"],
  ['it will not sink', "it won't sink"],
])('%s is heard as %s', (whole, short) => {
  expect(heard(whole)).toEqual(heard(short));
});

describe('what is left of a message', () => {
  const without = makeWithoutCourtesies(words.courtesies);
  test.each([
    ['Hi! How much sencha for a 300 ml pot, please?', 'How much sencha for a 300 ml pot?'],
    ['Good morning tea for two', 'Good morning tea for two'],
    ['hello', 'hello'],
    ['Hi, thanks!', 'thanks!'],
    ['great, thanks', 'great, thanks'],
    ['no thanks', 'no thanks'],
    ['thanks but it is still bitter', 'it is still bitter'],
    ['thank you for the tea', 'thank you for the tea'],
    ['Sorry, 180 ml, not 200', 'Sorry, 180 ml, not 200'],
    ['so bitter!', 'so bitter!'],
    ['你好像沒聽懂', '你好像沒聽懂'],
    ['老闆在嗎', '老闆在嗎'],
    ['老闆，蓋碗120，鐵觀音，謝謝', '蓋碗120,鐵觀音'],
    ['唔該晒，拜拜', '唔該晒，拜拜'],
    ['唔使喇', '唔使喇'],
    ['換蓋碗，謝謝', '換蓋碗'],
    ['I bought some sencha from you', 'I bought some sencha from you'],
    ['I am new to tea', 'I am new to tea'],
    ['I like your tea but get headaches, why', 'I like your tea but get headaches, why'],
    ['I was at your shop and felt sick. Is it the tea?', 'I was at your shop and felt sick. Is it the tea?'],
    ['我叫救護車了，他沒醒', '我叫救護車了，他沒醒'],
    ['我叫救護車，他沒醒', '我叫救護車，他沒醒'],
    ['我是孕婦，可以喝嗎', '我是孕婦，可以喝嗎'],
  ])('%s', (text, left) => {
    expect(without(text)).toBe(left);
  });
});
