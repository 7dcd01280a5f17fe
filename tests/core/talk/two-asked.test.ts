/** Two things asked in one message are told apart; what only looks like two stays one. */
import { describe, expect, it } from 'vitest';
import { content } from '../../the-content.ts';

const { book } = content;
const around = { nowMs: Date.UTC(2026, 0, 15, 16), language: 'en', memory: {}, house: {} };

function partsOf(text: string, asked: string | null = null, flow = 'front'): unknown {
  const outcome = book.calls['partsOfMessage']!({ text, language: 'en', asked, flow }, around);
  return 'gives' in outcome ? outcome.gives : null;
}

describe('two things', () => {
  it.each([
    ['how much leaf and why is it bitter?', 'how much leaf', 'why is it bitter?'],
    [
      'what temperature for my oolong, and do you have a lesson on Saturday?',
      'what temperature for my oolong',
      'do you have a lesson on Saturday?',
    ],
    ['When do you open? And is sencha ok in pregnancy?', 'When do you open?', 'is sencha ok in pregnancy?'],
    ['My sencha is bitter. Do you have lessons?', 'My sencha is bitter', 'Do you have lessons?'],
    ['how do I store it, and when are you open?', 'how do I store it', 'when are you open?'],
    [
      'tieguanyin in a 110 ml gaiwan, how hot? also do you have classes?',
      'tieguanyin in a 110 ml gaiwan, how hot?',
      'do you have classes?',
    ],
    ['放多少茶葉，為什麼會苦？', '放多少茶葉', '為什麼會苦？'],
    ['烏龍用幾度水，還有星期六有課嗎？', '烏龍用幾度水', '星期六有課嗎？'],
    ['怎麼保存，幾點開門？', '怎麼保存', '幾點開門？'],
    ['乌龙用几度水？星期六有课吗？', '乌龙用几度水？', '星期六有课吗？'],
    ['放多少茶叶，还有为什么会苦', '放多少茶叶', '为什么会苦'],
    ['烏龍用幾度水 星期六有課嗎', '烏龍用幾度水', '星期六有課嗎'],
    ['可以回沖幾次然後隔天還能泡嗎', '可以回沖幾次', '隔天還能泡嗎'],
    ['喂奶期间可以喝吗，水温要低一点吗', '喂奶期间可以喝吗', '水温要低一点吗'],
  ])('%s', (text, first, second) => {
    expect(partsOf(text)).toEqual({ first, second, inOrder: false });
  });
});

describe('a step and what is beside it, in the midst of a brew', () => {
  it.each([
    ['poured, is the brown foam normal?', 'poured', 'is the brown foam normal?'],
    ['done, much better', 'done', 'much better'],
    ['Ready. How hot should the water be?', 'Ready', 'How hot should the water be?'],
    ['好了，好喝多了', '好了', '好喝多了'],
    ['放好了，水要加多满？', '放好了', '水要加多满？'],
  ])('%s', (text, first, second) => {
    expect(partsOf(text, null, 'guide')).toEqual({ first, second, inOrder: true });
    expect(partsOf(text, null, 'front')).toBeNull();
  });

  it.each([
    'poured, lovely',
    "we're done, that was great",
    'done, I burned my hand, what do I do?',
    'poured, what next?',
    'done? how long?',
  ])('%s is one', (text) => {
    expect(partsOf(text, null, 'guide')).toBeNull();
  });
});

describe('one thing', () => {
  it.each([
    'tieguanyin in a 110 ml gaiwan, three guests',
    'what did I do wrong, it is sour',
    '6 g in 110 ml, sour aftertaste',
    'what temperature and how much leaf for oolong?',
    'I have a weak stomach, which one hurts least',
    'can I book for Saturday, and what should I bring?',
    "can't drop off at night, is it the tea",
    'do you have a cafe, can we sit down',
    'it was too bitter, too strong and too hot',
    '白色的點點是不是發霉，還能喝嗎',
    '放了5克，150毫升，苦',
    '放了8克，100毫升盖碗，咬舌',
    'I have 7 g of shou and a 100 ml gaiwan, too much?',
    'how much leaf and why is it bitter? '.repeat(20),
  ])('%s', (text) => {
    expect(partsOf(text)).toBeNull();
  });

  it.each(['reply', 'question', 'name'])('what answers a place that asks for a %s', (asked) => {
    expect(partsOf('how much leaf and why is it bitter?', asked)).toBeNull();
  });
});
