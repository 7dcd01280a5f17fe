/** What to do better is asked before anything is said of the cup; and what is not as usual may be liked. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const nothing = { language: null, asked: null };

test.each([
  'what should I change',
  'what should I do differently next time?',
  'so what am I doing wrong',
  'how can I improve it',
  'how do I make it taste better',
  '我哪里做错了',
  '下次要怎么改进',
  '點樣先會好飲啲',
])('%s', (text) => {
  expect(read(text, nothing)).toMatchObject({ kind: 'taste', taste: null, act: null, answer: null });
});

test.each([
  ['bit bitter but I like that', 'right'],
  ['it is strong but in a good way', 'right'],
  ['有點苦不過我喜歡', 'right'],
  ['太淡了，但我就喜歡這樣', 'right'],
  ['I like it, but it is too bitter', 'bitter'],
  ['too bitter, but I like it when it is cold', 'bitter'],
  ['有點苦，我不喜歡', 'bitter'],
  ['有點苦，但我喜歡淡的', 'bitter'],
])('%s is %s', (text, taste) => {
  expect(read(text, nothing)).toMatchObject({ kind: 'taste', taste });
});

test.each([
  ['what should I change if I feel sick from it', 'safety'],
  ['how do I make a better cup of tieguanyin in a gaiwan', 'brew'],
  ['鐵觀音怎麼泡才好喝', 'brew'],
  ['我想改上課的時間，要怎麼改', 'lesson'],
])('%s is of the %s', (text, kind) => {
  expect(read(text, nothing).kind).toBe(kind);
});

test.each([
  ['哪一泡最好喝啊', null],
  ['這茶好喝嗎', null],
  ['會不會很香', null],
  ['這種味道正常嗎', null],
  ['怎麼這麼香', 'right'],
  ['這泡好喝', 'right'],
  ['味道正', 'right'],
  ['越泡越淡', 'weak'],
])('%s praises as much as %s', (text, taste) => {
  expect(read(text, nothing).taste).toBe(taste);
});

/** Whoever is not well comes before what was asked. */
test.each(['她說肚子有點怪怪的', '喝了會怎樣', '上面有白白的一點一點的', '胃有点不舒服'])(
  '%s, said to a question',
  (text) => {
    expect(read(text, { language: null, asked: 'tea' }).kind).toBe('safety');
  },
);

test.each([
  ['水溫會不會太高 我朋友說85', 85],
  ['那照他說的85', 85],
  ['照他说的，120', null],
  ['听说85后都爱喝茶', null],
  ['大概八十幾度可以嗎', 85],
])('how hot in "%s"', (text, tempC) => {
  expect(read(text, nothing).tempC).toBe(tempC);
});

test.each([
  ['半壺就夠了 我一個人', 'half-pot'],
  ['要不要提高水温', 'hotter'],
  ['想换别的茶', 'other-tea'],
  ['买错了想换别的茶', null],
  ['想换货', null],
])('%s: %s', (text, turn) => {
  expect(read(text, nothing).turn).toBe(turn);
});

/** 蓋碗太小了 有個壺: the pot is meant. */
test.each([
  ['盖碗太小了 有个壶 400左右', { vessel: 'porcelain-pot', volumeMl: 400 }],
  ['蓋碗破了 用馬克杯', { vessel: 'mug' }],
  ['蓋碗太小了', { vessel: 'gaiwan' }],
])('%s', (text, told) => {
  expect(read(text, nothing)).toMatchObject(told);
});

test.each([
  ['8克一泡的小袋', 8],
  ['一泡8克', 8],
  ['买了500克', null],
])('so much leaf in "%s"', (text, leafG) => {
  expect(read(text, nothing).leafG).toBe(leafG);
});

test.each([
  ['鐵觀音放兩年了 還可以喝嗎', 'care', 'shelf-life'],
  ['有沒有比較溫和的', 'shop', 'mild-teas'],
  ['碧螺春跟龍井差在哪', 'shop', 'compare-teas'],
  ['你们店在哪', 'shop', 'address'],
  ['老板 有铁观音没', 'shop', 'stock'],
])('%s', (text, kind, answer) => {
  expect(read(text, nothing)).toMatchObject({ kind, answer });
});
