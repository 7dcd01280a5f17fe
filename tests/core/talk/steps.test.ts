/** What hands have done, and which infusion went late, in people's own words. */
import { describe, expect, it } from 'vitest';
import { boiledAgoS, lateBy, stepDone } from '../../../src/core/talk/steps.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { talkCues } from '../../reading/content.ts';

describe('a step that hands have done', () => {
  it.each([
    ['warmed it', 'warmed'],
    ['ok the pot is warm', 'warmed'],
    ['溫咗', 'warmed'],
    ['烫过杯了', 'warmed'],
    ["leaf's in", 'leaf-in'],
    ['the leaves are in', 'leaf-in'],
    ['in it goes', 'leaf-in'],
    ['I put the tea in, what next?', 'leaf-in'],
    ['落咗茶', 'leaf-in'],
    ['投茶了', 'leaf-in'],
    ['茶叶加好了', 'leaf-in'],
    ['茶葉放進去了', 'leaf-in'],
    ['rinsed', 'rinsed'],
    ['洗过了', 'rinsed'],
    ['已經沖過一次了', 'rinsed'],
    ['我洗了兩次', 'rinsed'],
    ['洗两遍了', 'rinsed'],
    ['filled', 'filled'],
    ['water is in', 'filled'],
    ['I poured the hot water in', 'filled'],
    ['put it in the fridge', 'filled'],
    ['倒水了', 'filled'],
    ['加咗滾水', 'filled'],
    ['放冰箱了', 'filled'],
    ['poured it all off', 'poured'],
    ['took the leaves out', 'poured'],
    ['倒咗喇', 'poured'],
    ['出汤了', 'poured'],
    ['出汤 好香', 'poured'],
    ['沖了水馬上倒掉了', 'poured'],
    ['第二泡沖了', 'filled'],
    ['drank it', 'drunk'],
    ['喝完了', 'drunk'],
  ])('%s', (text, step) => {
    expect(stepDone(talkWords(text), talkCues)).toBe(step);
  });

  it.each([
    '不喝了，收工',
    'should I have rinsed it?',
    'when do I refill',
    "I haven't poured it yet",
    'how do I know it is warm',
    'the leaves are in my mouth',
    '啥時候續水',
    '什麼時候加水',
    '還沒倒',
    '可以倒水了嗎',
    '要不要洗茶',
    '那就洗兩次',
    '洗一遍好了',
    '茶葉漂在上面',
    'longjing in a 300 ml glass',
  ])('none: %s', (text) => {
    expect(stepDone(talkWords(text), talkCues)).toBeNull();
  });
});

describe('an infusion that went late', () => {
  it.each([
    ['wait I poured late', 'unsaid'],
    ['oops, a bit too long', 'unsaid'],
    ['sorry it stood for ages, poured far too late', 'unsaid'],
    ['I forgot to pour it', 'unsaid'],
    ['poured about 10 seconds late', 10],
    ['啊我倒太慢了 大概多了十秒', 10],
    ['哎呀出汤晚了 大概晚了15秒', 15],
    ['出湯晚了半分鐘', 30],
    ['忘了倒，闷太久了', 'unsaid'],
    ['浸得太耐咗', 'unsaid'],
  ])('%s', (text, by) => {
    expect(lateBy(talkWords(text), talkCues)).toBe(by);
  });

  it.each([
    'is it too late to book?',
    'can I make the next one longer?',
    '下一泡可以久一點嗎',
    'how long is too long?',
    '要泡多久',
    'pour slowly',
  ])('not: %s', (text) => {
    expect(lateBy(talkWords(text), talkCues)).toBeNull();
  });
});

describe('how long a kettle has stood since it boiled', () => {
  it.each([
    ['my kettle boiled 3 min ago', 180],
    ['the water boiled about five minutes ago, is it still ok?', 300],
    ['boiled a minute ago', 60],
    ['how hot is it if I let it stand 2 minutes after boiling?', 120],
    ["it's been off the boil for 4 minutes", 240],
    ['the kettle has been standing for ten minutes', 600],
    ['水開了之後放了五分鐘', 300],
    ['水滾了三分鐘了', 180],
    ['烧开后晾了两分钟', 120],
    ['水烧开5分钟后多少度', 300],
    ['十分鐘前燒開的', 600],
  ])('%s', (text, seconds) => expect(boiledAgoS(talkWords(text), talkCues)).toBe(seconds));

  it.each([
    'the tea has been standing for ten minutes',
    'I poured it 3 minutes ago',
    'boil it for 5 minutes',
    'let it steep 3 minutes',
    'the water is boiling',
    '茶放了十分鐘',
    '泡三分鐘',
    '水開了',
    '煮五分鐘',
  ])('%s tells nothing of it', (text) => expect(boiledAgoS(talkWords(text), talkCues)).toBeNull());
});
