import { expect, test } from 'vitest';
import type { Reading } from '../../../src/core/reading/reading.ts';
import { read } from '../../reading/content.ts';

const said = (text: string, asked: string | null = null): Reading => read(text, { language: null, asked });

test.each([
  ['一斤水放幾克普洱', 500],
  ['半斤水', 250],
  ['一公斤水', 1000],
  ['一台斤水', 600],
  ['兩杯水泡紅茶', 480],
  ['三杯熱水', 720],
  ['我喝了三杯水', null],
  ['每天喝八杯水', null],
  ['three cup pot', 720],
  ['my pot is four cups', 960],
  ['it holds about two cups', 480],
  ['is it four cups a day', null],
])('the water of %s is %s ml', (text, volumeMl) => {
  expect(said(text).volumeMl).toBe(volumeMl);
});

test('the cup of a three cup pot is no vessel', () => {
  for (const asked of [null, 'vessel', 'volumeMl'])
    expect(said('three cup pot', asked)).toMatchObject({ vessel: 'porcelain-pot', vessels: [], volumeMl: 720 });
});

test.each([
  ['about a cup and a half', 360],
  ['dunno, maybe 2 mugs worth', 600],
  ["i think it's like three cups", 720],
  ['it holds one mug', 300],
  ['a mug and a half', 450],
  ['half a cup', 120],
  ['大概兩杯', 480],
  ['两个马克杯吧', 600],
  ['不知道，差不多三杯左右', 720],
])('asked how much it holds, %s is %s ml, and no vessel', (text, volumeMl) => {
  expect(said(text, 'volumeMl')).toMatchObject({ volumeMl, vessel: null, vessels: [] });
});

test.each([
  ['a mug', 'mug'],
  ['a mug with a basket', 'infuser-mug'],
  ['其實是馬克杯', 'mug'],
])('asked how much it holds, %s is another vessel', (text, vessel) => {
  expect(said(text, 'volumeMl')).toMatchObject({ volumeMl: null, vessel });
});

test.each([
  ['碧螺春 兩百五', null, null],
  ['碧螺春 兩百五', 'volumeMl', 250],
  ['兩百五', 'vessel', 250],
  ['about 300', 'vessel', 300],
  ['2', 'vessel', null],
  ['兩百五', 'tea', null],
])('%s, asked %s, is a size of %s ml', (text, asked, volumeMl) => {
  expect(said(text, asked)).toMatchObject({ volumeMl, unknownTea: null });
});

test.each([
  ['I used boiling water', null, 100],
  ['我用滾水泡的', null, 100],
  ['直接用的开水', null, 100],
  ['can I use boiling water for sencha', null, null],
  ['可以用開水泡綠茶嗎', null, null],
  ['boiling', 'tempC', 100],
  ['滾水', 'tempC', 100],
  ['I used boiling water, 90 degrees by the time it was in', null, 90],
])('%s, asked %s, is water of %s °C', (text, asked, tempC) => {
  expect(said(text, asked).tempC).toBe(tempC);
});

test.each([
  ['I live in Denver', 1610],
  ["we're in La Paz, assam in a mug", 3640],
  ['我住昆明', 1890],
  ['住喺拉薩', 3650],
  ['人在西宁', 2260],
  ['can you ship to Denver', null],
  ['昆明的茶好嗎', null],
  ['a cake from Lijiang', null],
])('%s: %s m', (text, elevationM) => {
  expect(said(text).elevationM).toBe(elevationM);
});

test.each([
  'compare dong ding and alishan',
  'which is stronger, assam or keemun',
  '鐵觀音跟大紅袍比一比',
  '锡兰和大吉岭哪个浓',
])('%s sets two teas side by side and orders neither', (text) => {
  expect(said(text)).toMatchObject({ kind: 'shop', tea: null, strength: null, answer: 'compare-teas' });
});

test.each(['再來一次', '再来一次', 'again', 'same again', '再泡一次'])(
  '%s is another brew, nothing forgotten',
  (text) => {
    const { kind, act } = said(text);
    expect(kind).toBe('brew');
    expect(act).not.toBe('start-over');
  },
);
