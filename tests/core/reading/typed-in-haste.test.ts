/** Chinese as it is typed and dictated in a hurry. */
import { expect, test } from 'vitest';
import { countedTo } from '../../../src/core/talk/steps.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { read, talkCues } from '../../reading/content.ts';

const alone = (text: string) => read(text, { language: null, asked: null });

test.each([
  ['大概一碗饭那么大', 250],
  ['看起來跟可樂罐差不多', 330],
  ['like a coke can', 330],
  ['拳頭那麼大', 200],
  ['比可樂罐大一點', null],
  ['換成飯碗', null],
])('%s is a size of %s ml, and only likened', (text, ml) => {
  const heard = read(text, { language: null, asked: 'volumeMl' });
  expect(heard.volumeMl).toBe(ml);
  expect(heard.sizeLikened).toBe(ml !== null);
});

test.each([
  ['三百五的保溫辦公杯泡鐵觀音', 350],
  ['三百五的茶用蓋碗泡', null],
  ['得個玻璃壺 成升水咁大', 1000],
  ['冷萃茉莉 750的瓶子 放一晚上', 750],
  ['500的 她都泡熟普', 500],
])('%s: %s ml', (text, ml) => {
  expect(alone(text).volumeMl).toBe(ml);
});

test.each([
  ['还有没有铁观音 给我留二两', 'shop'],
  ['幫我訂兩罐東方美人', 'shop'],
  ['鐵觀音放二兩要多少水', 'brew'],
  ['我有一饼生普，朋友送的，怎么撬开', 'care'],
  ['生普撬好了，怎麼泡', 'brew'],
  ['茶包泡幾分鐘', 'brew'],
  ['紅茶茶包泡幾分鐘', 'brew'],
  ['太濃了喝得心悸', 'safety'],
  ['啱啱買咗個紫砂壺 150ml 用嚟沖水仙 點開壺', 'care'],
  ['剛剛泡那個鐵觀音第一泡就苦到不行我用滾水燜了兩分鐘', 'taste'],
  ['银针老是泡不出味儿是咋回事 我85度 3克 泡1分钟', 'taste'],
  ['有疙瘩', 'care'],
  ['汤好黑', 'care'],
])('%s is of %s', (text, kind) => {
  expect(alone(text).kind).toBe(kind);
});

test.each([
  ['要用冷水還是熱水先溫杯', null],
  ['為什麼要溫杯', null],
  ['溫過杯了', true],
  ['不用溫壺', false],
])('whether the vessel is warm in "%s"', (text, warmed) => {
  expect(alone(text).warmed).toBe(warmed);
});

test.each([
  ['蓋杯泡龍井', 'mug', null],
  ['大碗公泡紅茶', 'mug', 'bowl'],
  ['我只有一個鍋子', null, 'saucepan'],
  ['沒有熱水壺 用鍋子燒水', null, null],
  ['火鍋吃完喝什麼茶', null, null],
])('what %s is brewed in', (text, vessel, ware) => {
  expect(alone(text)).toMatchObject({ vessel, ware });
});

test('what a tea bag holds is brewed with it', () => {
  expect(alone('茶包一包3克').leafG).toBe(3);
});

test('a stewed taste is mended as a sour one, and no hotter water', () => {
  expect(alone('有一股悶味').taste).toBe('sour');
  expect(alone('味道很悶 沒有層次').taste).toBe('flat');
});

test('more plainly is asked in no other script', () => {
  expect(alone('可以讲白话一点吗')).toMatchObject({ wants: null, asks: 'unclear' });
  expect(alone('可以用白話嗎').wants).toBe('zh-Hant');
});

test.each([
  ['我刚数到十才倒', 10],
  ['數到15才想起來', 15],
  ['I counted to ten before I poured', 10],
  ['要數到十再倒嗎', null],
])('how long it stood in "%s"', (text, seconds) => {
  expect(countedTo(talkWords(text), talkCues)).toBe(seconds);
});

test.each([
  ['凍🍵頂烏龍，蓋🙂碗 120ml', 'dong-ding', 'gaiwan'],
  ['大 紅 袍 蓋 碗 110毫升', 'da-hong-pao', 'gaiwan'],
  ['龙 井 茶 玻璃杯 300ml', 'longjing', 'tumbler'],
  ['我想喝大红 袍 盖 碗 100毫升', 'da-hong-pao', 'gaiwan'],
  ['大紅袍 蓋碗', 'da-hong-pao', 'gaiwan'],
])('%s is %s in %s, whatever stands within a word', (text, tea, vessel) => {
  const heard = alone(text);
  expect([heard.tea, heard.vessel]).toEqual([tea, vessel]);
});

test('a space between two words stays', () => {
  expect(alone('红茶 壶 400ml').family).toBe('black');
});

test.each([
  ['阿姨我剛從南投回來朋友送我半斤凍頂', null],
  ['朋友來家裡喝凍頂，我和他兩個人', 2],
])('%s: %s drink', (text, guests) => {
  expect(alone(text).guests).toBe(guests);
});
