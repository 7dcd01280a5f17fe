import { describe, expect, test } from 'vitest';
import { findNumbers } from '../../../src/core/reading/amounts/numbers.ts';
import type { Reading } from '../../../src/core/reading/reading.ts';
import { plainText } from '../../../src/core/teas/plain-text.ts';
import { read } from '../../reading/content.ts';

const said = (text: string, asked: string | null = null): Reading => read(text, { language: null, asked });

test.each([
  ['2,5', [2.5]],
  ['a flask of .75 l', [0.75]],
  ['warm it. 5 g', [5]],
  ['1,600', [1600]],
  ['1½', [1.5]],
  ['1/2', [0.5]],
  ['one hundred and twenty', [120]],
  ['three fifty', [350]],
  ['twenty-five', [25]],
  ['half a', [0.5]],
  ['a couple of', [2]],
  ['一百二', [120]],
  ['一百二十', [120]],
  ['一百零二', [102]],
  ['兩千三百', [2300]],
  ['兩百五', [250]],
  ['一半', [0.5]],
  ['5-6', [5.5]],
  ['1.5k', [1500]],
  ['one point two', [1.2]],
  ['point four of a', [0.4]],
  ['a third of a', [1 / 3]],
  ['一點二升', [1.2]],
  ['零點三五公升', [0.35]],
  ['下午一點半', [1, 0.5]],
  ['俩人', [2]],
  ['星期六兩個人', [2]],
  ['周三两点', [2]],
  ['一周一次', [1, 1]],
])('%s holds %j', (text, values) => {
  expect(findNumbers(plainText(text).plain).map((number) => number.value)).toEqual(values);
});

describe('volume', () => {
  test.each([
    ['gaiwan 110', 110],
    ['gaiwan 300, two people, sencha', 300],
    ['急須 300 兩個人 煎茶', 300],
    ['十四安士 伯爵茶', 414.03],
    ['a gaiwan that holds 100', 100],
    ['a glass teapot, say 600', 600],
    ['盖碗能装100', 100],
    ['蓋碗怎麼泡，一百二的', 120],
    ['my 12 oz mug', 354.88],
    ['16 fl. oz teapot', 473.18],
    ['50 cl thermos', 500],
    ['1½ l jar', 1500],
    ['half a litre', 500],
    ['半公升', 500],
    ['一百五十毫升', 150],
    ['not 200, 150 ml', 150],
    ['唔係200，係150ml', 150],
    ['kettle is 1.7 l, gaiwan is 110 ml', 110],
    ['two gaiwans', null],
    ['bought 50 g', null],
    ['a cake from 2012', null],
    ['the flask takes a third of a litre', 333.33],
    ['寶特瓶600', 600],
    ['bottle is 750, cold brew', 750],
    ['the 110 one', 110],
    ['用回那個，120嗰隻', 120],
    ['还是90的那个', 90],
    ['three mugs, 300 each', 300],
    ['the 2015 one', null],
    ['盖碗不到100毫升 泡单丛', 100],
    ['杯子没那么大 也就二百', 200],
  ])('%s: %s ml', (text, ml) => {
    expect(said(text).volumeMl).toBe(ml);
  });
});

describe('leaf in hand, not stock', () => {
  test.each([
    ['bought 50 g dong ding', null],
    ['a 100g bag of keemun', null],
    ['買咗四両鐵觀音', null],
    ['have 5 g left', 5],
    ['得返五克', 5],
    ['use 0.2 oz of leaf', 5.67],
    ['50 g in 100 ml gaiwan', 50],
    ['357g cake of sheng', null],
    ['7 grams of tieguanyin', 7],
  ])('%s: %s g', (text, grams) => {
    expect(said(text).leafG).toBe(grams);
  });
});

describe('guests', () => {
  test.each([
    ['we are four for tea', 4],
    ['me plus one', 2],
    ['兩公婆飲 正山小種', 2],
    ['上課幾錢一位', null],
    ['客人走了就剩我一个', 1],
    ['500元一個人嗎', null],
    ['me and two friends', 3],
    ['for my parents and me', 3],
    ['six of us', 6],
    ['tea for two', 2],
    ['for 2 minutes', null],
    ['my wife and I', 2],
    ['my wife likes tieguanyin', null],
    ['我同兩個朋友', 3],
    ['我和太太', 2],
    ['我太太鍾意鐵觀音', null],
    ['一家四口', 4],
    ['一個人飲', 1],
    ['三个人喝', 3],
    ['俩人喝', 2],
    ['来了仨客人加我', 4],
    ['夫妻兩個', 2],
    ['加埋我三個', 3],
    ['I live on my own', 1],
    ['一家三個月喝一罐', null],
    ['if the people are eight', 8],
    ['two kids asleep, tea in a mug', null],
    ['one client says she is coeliac', null],
    ['oolong with my wife and a friend', 3],
    ['tea with mum and dad', 3],
  ])('%s: %s', (text, guests) => {
    expect(said(text).guests).toBe(guests);
  });
});

describe('degrees, feet and metres', () => {
  test.each([
    ['water at 185F', { tempC: 85, elevationM: null }],
    ['185 degrees', { tempC: 85, elevationM: null }],
    ['水溫九十度', { tempC: 90, elevationM: null }],
    ['水烧不到一百度', { tempC: null, elevationM: null }],
    ['水燒到八十', { tempC: 80, elevationM: null }],
    ['the kettle gives up at 96', { tempC: 96, elevationM: null }],
    ['it never gets past 94', { tempC: 94, elevationM: null }],
    ['水溫九十五與一百差在哪', { tempC: null, elevationM: null }],
    ['leave it for fifty', { tempC: null, elevationM: null }],
    ['海拔一千六百米', { tempC: null, elevationM: 1600 }],
    ['I live at 5280 ft', { tempC: null, elevationM: 1609 }],
    ['my gaiwan is 5 m away', { tempC: null, elevationM: null }],
  ])('%s', (text, facts) => {
    expect(said(text)).toMatchObject(facts);
  });
});

describe('vessel', () => {
  test.each([
    ['it goes into clay', 'clay-pot'],
    ['用瓷嗰把', 'porcelain-pot'],
    ['mug with a basket', 'infuser-mug'],
    ['mug', 'mug'],
    ['a cup of tea', null],
    ['teapot', 'porcelain-pot'],
    ['my teapot is glass', 'glass-pot'],
    ['yixing gaiwan', 'gaiwan'],
    ['宜興紅茶，蓋碗', 'gaiwan'],
    ['cast iron teapot', null],
    ['gaiwan or kyusu', null],
    ['no gaiwan, only a mug', 'mug'],
    ['焗盅', 'gaiwan'],
    ['保溫杯', 'thermos'],
    ['公道杯', null],
    ['蓋腕', 'gaiwan'],
    ['葉子塞不進蓋碗 能用玻璃杯嗎', 'tumbler'],
    ['只有一個小茶壺 大概四個小杯的量', 'porcelain-pot'],
    ['我家只有碗公', 'mug'],
  ])('%s: %s', (text, vessel) => {
    expect(said(`tieguanyin, ${text}`).vessel).toBe(vessel);
  });
});

describe('a wrong number is told, never taken', () => {
  test.each([
    ['0 ml', 'volume-out-of-range', 'volumeMl', 0],
    ['-5 ml', 'volume-out-of-range', 'volumeMl', -5],
    ['−5 ml gaiwan', 'volume-out-of-range', 'volumeMl', -5],
    ['9,000 ml', 'volume-out-of-range', 'volumeMl', 9000],
    ['110 °C', 'water-out-of-range', 'tempC', 110],
    ['oolong 9999 g gaiwan', 'leaf-out-of-range', 'leafG', 9999],
    ['tea for 500 people', 'guests-out-of-range', 'guests', 500],
  ])('%s', (text, code, field, value) => {
    const reading = said(text);
    expect(reading.mistakes).toMatchObject([{ code, field, values: { value } }]);
    expect(reading).toMatchObject({ [field]: null });
  });

  test('"big" is no number, but meant beside the sizes that are shown', () => {
    expect(said('big', 'volumeMl')).toMatchObject({ volumeMl: null, sizeWord: 'big', mistakes: [] });
    expect(said('a large amount', 'leafG').mistakes).toMatchObject([{ code: 'number-expected', field: 'leafG' }]);
  });
});

describe('what is done to the conversation', () => {
  test.each([
    ['back', { act: 'back' }],
    ['start over', { act: 'start-over' }],
    ['talk to the shop', { act: 'ask-shop', kind: 'shop' }],
    ['actually 200 ml', { act: 'correct', volumeMl: 200 }],
    ['no, the ripe one', { act: 'correct', tea: 'shou-puer' }],
    ['and the second?', { act: 'follow-up', infusion: 2 }],
    ['第三泡呢', { act: 'follow-up', infusion: 3 }],
    ['and colder again?', { turn: 'cooler' }],
    ['然后呢', { act: 'follow-up', language: 'zh-Hans' }],
    ['然後呢', { language: 'zh-Hant' }],
    ['why?', { act: 'why' }],
    ['點解', { act: 'why' }],
    ['why is it bitter?', { kind: 'taste', act: null }],
    ['點解咁苦', { kind: 'taste', act: null }],
    ['为什么这么苦', { kind: 'taste', act: null }],
    ['請用中文', { act: 'language' }],
    ['in english please', { act: 'language', wants: 'en' }],
    ['forget me', { act: 'forget-me' }],
    ['thanks!', { act: 'thanks', kind: 'greeting' }],
    ['350', { act: null }],
  ])('%s', (text, expected) => {
    expect(said(text)).toMatchObject(expected);
  });

  test.each([
    ['volumeMl', '350', { volumeMl: 350 }],
    ['guests', '4', { guests: 4 }],
    ['volumeMl', 'it serves 4', { volumeMl: null, guests: 4, mistakes: [] }],
    ['volumeMl', 'there are 3 people here, around 200 I guess', { volumeMl: 200, guests: 3 }],
    ['volumeMl', 'I bought it in 2019', { volumeMl: null }],
    ['volumeMl', 'I paid 250 for it', { volumeMl: null }],
    ['volumeMl', '我花了250買的', { volumeMl: null }],
    ['volumeMl', 'the number on the bottom says 120', { volumeMl: 120 }],
    ['tempC', 'my kettle has 6 settings', { tempC: null }],
    ['tempC', 'setting 4', { tempC: null }],
    ['tempC', '6檔', { tempC: null }],
    ['elevationM', 'I live on floor 12', { elevationM: null }],
    ['elevationM', '12樓', { elevationM: null }],
    [null, 'ok me and my husband', { guests: 2, onlyGuests: true }],
    [null, '我和我女儿', { guests: 2, onlyGuests: true }],
    [null, "it's a hundred mil and I have dan cong", { guests: null, volumeMl: 100 }],
    [null, '报两位 我和我爸', { guests: 2 }],
    [null, '客人五個會來喝茶', { guests: 5 }],
    [null, '三錢茶葉', { leafG: 11.25 }],
    [null, '三钱茶叶', { leafG: 15 }],
    [null, '我剩二錢茶葉', { leafG: 7.5, unknownTea: null }],
    [null, '三兩的壺', { volumeMl: 150, leafG: null }],
    [null, '水85来度', { tempC: 85 }],
    [null, '用80的水', { tempC: 80 }],
    [null, '簡單泡就好', { style: 'western' }],
    [null, '想喝冰的 包種', { style: 'cold' }],
    [null, '杯子裡250水', { volumeMl: 250, tempC: null }],
    [null, '平常用馬克杯，這次想試蓋碗', { vessel: 'gaiwan', vessels: [] }],
    [null, '兩個人改成四個人', { guests: 4 }],
    [null, '普洱跟菊花一起泡', { tea: null, family: null }],
    [null, '茉莉跟綠茶', { tea: 'jasmine-green' }],
    [null, 'my two kids are sick', { onlyGuests: false }],
    ['guests', 'maybe 4?', { guests: 4 }],
    ['guests', 'we might be two or three', { guests: 3 }],
    ['guests', '三位，謝謝', { guests: 3 }],
    ['guests', '就我一個', { guests: 1 }],
    ['guests', 'me and 2 friends', { guests: 3 }],
    ['guests', '我和兩個朋友', { guests: 3 }],
    ['guests', '2个大人1个小孩', { guests: 3 }],
    ['guests', '一家四口', { guests: 4 }],
    ['guests', 'does it end before 5?', { guests: null }],
    ['guests', "I can't come on the 12th", { guests: null }],
    ['guests', 'I have to leave by 4', { guests: null }],
    ['guests', '5點前會結束嗎', { guests: null }],
    ['guests', '我星期六不能去了', { guests: null }],
    ['guests', '一個人18美元嗎', { guests: null }],
    ['tempC', '90', { tempC: 90 }],
    ['leafG', '5', { leafG: 5 }],
    ['elevationM', '1640', { elevationM: 1640 }],
  ])('asked for %s, "%s" is that', (asked, text, expected) => {
    expect(said(text, asked)).toMatchObject(expected);
  });
});
