/** Where somebody wants a brew to go, in their own words. */
import { describe, expect, it } from 'vitest';
import { asks, skippedTo, steered } from '../../../src/core/talk/steering.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { talkCues } from '../../reading/content.ts';

describe('where it shall go', () => {
  it.each([
    ['ok show me', 'begin'],
    ['show me how', 'begin'],
    ["alright let's go", 'begin'],
    ["I'm ready", 'begin'],
    ['could you walk me through it please', 'begin'],
    ['好喔 帶我泡', 'begin'],
    ['来 带我泡吧', 'begin'],
    ['帮我泡', 'begin'],
    ['咁開始啦', 'begin'],
    ['skip this one', 'skip'],
    ['can I skip to number 5', 'skip'],
    ['這泡跳過', 'skip'],
    ['唔飲住呢泡，跳過佢', 'skip'],
    ['hang on a sec', 'pause'],
    ['等我一陣', 'pause'],
    ['接个电话', 'pause'],
    ['孩子哭了我等会儿再来', 'pause'],
    ['我先等一下再泡', 'pause'],
    ['上班没空看时间咋整', 'remind'],
    ["we're done", 'end'],
    ["let's stop here", 'end'],
    ['算了 結束吧', 'end'],
    ['今天就到這裡吧', 'end'],
    ['喝不下了', 'end'],
    ['set me a reminder', 'remind'],
    ['can you remind me to take it out?', 'remind'],
    ['幫我設個提醒', 'remind'],
    ['到時提我攞出嚟呀', 'remind'],
    ['到时候提醒我一下', 'remind'],
  ])('%s', (text, steer) => {
    expect(steered(talkWords(text), talkCues)).toBe(steer);
  });

  it.each([
    'remind me the evening before the lesson',
    '上課前提醒我',
    'show me the lessons',
    'sencha in a 250 ml kyusu',
    'is it ready yet',
    '帶我去你們店',
    'start over',
    'ready-made tea bags?',
  ])('nowhere: %s', (text) => {
    expect(steered(talkWords(text), talkCues)).toBeNull();
  });

  it('up to which infusion', () => {
    expect(skippedTo(talkWords('can I skip to number 5'), talkCues)).toBe(5);
    expect(skippedTo(talkWords('skip to the fourth'), talkCues)).toBe(4);
    expect(skippedTo(talkWords('直接跳到第五泡'), talkCues)).toBe(5);
    expect(skippedTo(talkWords('skip this one'), talkCues)).toBeNull();
  });

  it('takes no time over a long run of small words', () => {
    const started = performance.now();
    for (const text of ['ok so '.repeat(13), '好的'.repeat(40), 'well now then '.repeat(6)])
      steered(talkWords(text) + 'x', talkCues);
    expect(performance.now() - started).toBeLessThan(200);
  });
});

describe('where it stands', () => {
  it.each([
    'how much longer',
    "what's the temp again?",
    'is it ready?',
    'how many left?',
    'where were we',
    '可以喝了嗎',
    '仲有幾多泡？',
    '好了没',
    '第几泡了',
  ])('%s', (text) => {
    expect(asks('where-it-stands', talkWords(text), talkCues)).toBe(true);
  });

  it.each(['how much goes in each cup', 'smells like seaweed, is that normal', '茶葉浮在上面怎麼喝'])(
    'not: %s',
    (text) => {
      expect(asks('where-it-stands', talkWords(text), talkCues)).toBe(false);
    },
  );
});

describe('whether it is for drinking', () => {
  it.each([
    'do i drink this one?',
    'do we throw the first one away?',
    'is this the rinse',
    'drink it or throw it?',
    '這泡是喝的嗎',
  ])('%s', (text) => {
    expect(asks('asks-drink', talkWords(text), talkCues)).toBe(true);
  });

  it.each(['can i drink tea in the evening', 'do i pour it off now', 'throw it away'])('not: %s', (text) => {
    expect(asks('asks-drink', talkWords(text), talkCues)).toBe(false);
  });
});
