/** What is told and asked in a first message: sizes by width or likeness, questions beside the brew, and what is none of the shop. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const heard = (text: string): ReturnType<typeof read> => read(text, { language: 'en', asked: null });

test.each([
  ['my gaiwan is 3.5 inches wide, its the biluochun', 130],
  ['puer gaiwan, 8.5 cm across', 110],
  ['sencha in my mug, its about 8cm wide and 10cm tall', 380],
  ['sencha in a mug, 10 cm tall and 8 cm across', 380],
  ['gongfu tieguanyin, pot the size of an orange', 200],
  ['shou puer in a clay pot as big as my fist', 200],
])('%s is a guess of %d ml', (text, volumeMl) => {
  expect(heard(text)).toMatchObject({ volumeMl, sizeLikened: true });
});

test.each([
  // The width of a pot tells little, and so does that of a mug alone.
  ['liu bao, clay teapot maybe 8 cm across', null],
  ['keemun, mug 8 cm wide', null],
  // Told in millilitres, it is no guess.
  ['keemun in a 110 ml gaiwan, 9 cm wide', 110],
  ['assam, 3-cup french press', 360],
  ['longjing, 8 cup cafetiere', 960],
  ['alishan and a french press (the 3 cup one)', 360],
  ['keemun in a 4 cup teapot', 960],
])('%s holds %s ml, and no guess', (text, volumeMl) => {
  expect(heard(text)).toMatchObject({ volumeMl, sizeLikened: false });
});

test.each([
  ['can I leave the peppermint in the pot or should I take it out? its a 1.2 litre pot', ['leaf-out']],
  ['will longjing get bitter if I leave it in a 300 ml glass', ['leaf-out', 'bitter-ahead']],
  ['dong ding, 120 ml gaiwan, how full do I fill it', ['fill']],
  ['rou gui 110ml gaiwan, will it be strong', ['strength']],
  ['keemun in a 300 ml mug, I leave the leaves in', []],
  ['sencha in a 200 ml kyusu please', []],
])('%s asks %j beside the brew', (text, besides) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', strength: null, besides });
});

test.each([
  ['2 tsp of assam in a 10 oz cup too much?', true],
  ['白牡丹5克110ml盖碗够不够', true],
  ['滇紅 紫砂壺200cc 7克會不會太濃', true],
  ['水仙岩茶用110蓋碗 5克 出水時間怎麼抓', false],
  ['assam in a 10 oz cup, is that too much?', false],
])('%s asks of the leaf that is told: %j', (text, asksDose) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', asksDose });
});

test.each([
  ['我用120cc的紫砂壺泡鐵觀音，第一泡總是太苦，是泡太久了嗎', 'bitter'],
  ['大紅袍 蓋碗100 怎麼泡才不會太苦', null],
  ['正山小種會不會很苦，馬克杯350', null],
])('%s complains of %j beside a brew', (text, complains) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', complains });
});

test.each([
  ['dancong - gaiwan 120ml - 7g - keeps coming out bitter', 'bitter'],
  ['alishan in a 150 ml pot, 5 g, always ends up a bit weak', 'weak'],
  ['my keemun in the 350 mug tastes watery', 'weak'],
  ['安吉白茶泡出来没味道，玻璃杯250ml放了2克，是不是放少了', 'weak'],
])('%s is a word on cups that were drunk', (text, taste) => {
  expect(heard(text)).toMatchObject({ kind: 'taste', taste });
});

test('what should not come out bitter has not done so yet', () => {
  expect(heard('dancong in a 120 ml gaiwan so it is not bitter').kind).toBe('brew');
});

test.each([
  ['can i brew silver needle with boiling water, 250 ml glass', ['boiling']],
  ['should I use boiling water on shou puer, 100 ml gaiwan', ['boiling']],
  ['what do I do with the leaves after the first pot of oriental beauty, 400ml porcelain pot', ['leaf-out']],
  ['water for silver needle, boiling or not? 300 ml mug', ['boiling']],
  ['how do you brew oriental beauty without making it bitter, 200ml pot', ['bitter-ahead']],
  ['i only want one big mug of dancong, 400ml, no resteeping', ['once']],
])('%s asks %j', (text, besides) => {
  expect(heard(text).besides).toEqual(besides);
});

test.each([
  ['alishan 6g 120ml times please', ['time']],
  ['how much longjing for 2 cups', ['leaf']],
  ['whats a good time for baozhong western style 350ml', ['time']],
  ['sheng puer, gaiwan 110, times and temp please', ['heat', 'time']],
  ['sencha 3 times', []],
])('%s asks %j of a plan to come', (text, lines) => {
  expect(heard(text).askedLines).toEqual(lines);
});

test.each([
  ['how do you make masala chai with your assam', 'masala-chai'],
  ['peppermint, fresh not dried, mug 350', 'fresh-herbs'],
  ['the oolong i got says 3g per cup on the bag, your app says 7?', 'label-differs'],
  ['how strong is da hong pao compared to black tea', 'compare-teas'],
  ['what do I need to start with gongfu? I only have a mug and a kettle', 'things-needed'],
  ['what is a good amount of leaf per person', 'leaf-in-general'],
  ['what about tea bags, do i steep them as long', 'bags-or-leaf'],
  // Beside a brew of which all is told.
  ['can you use tap water for sencha, 200ml kyusu', 'water-kind'],
  ['how long for keemun in a 400ml mug?', null],
  ['how do i hold a 120 ml gaiwan, its dancong', null],
])('%s is answered by %s', (text, answer) => {
  expect(heard(text).answer).toBe(answer);
});

test.each([
  ['should the lid be on when i brew da hong pao in my 110 gaiwan', 'lid-on'],
  ['my teapot has no lid anymore, can I still brew keemun in it, 500ml', 'lid-on'],
  ['菊花茶一次放几朵 玻璃壶500', 'by-the-piece'],
  ['紅茶和陳皮一起泡 500毫升燜燒杯 各放多少', 'additions'],
])('%s is a brew, and answered by %s beside it', (text, answer) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', besideAnswer: answer });
});

test.each([
  ['茉莉龙珠一次放几颗', 'by-the-piece'],
  ['碎银子一粒够泡多大的壶', 'by-the-piece'],
  ['小青柑放一顆夠嗎', 'stuffed-mandarin'],
  ['烏龍茶加決明子怎麼泡', 'additions'],
  ['飯後馬上喝茶好不好', 'iron'],
  ['飯後喝什麼茶好', 'recommend-tea'],
  ['兩泡之間要等多久', 'between-infusions'],
  ['泡茶的水滾了幾次還能用嗎', 'water-reboil'],
])('%s is asked of %s', (text, answer) => {
  expect(heard(text).answer).toBe(answer);
});

test.each([
  ['hi im new to this. got a sample of alishan', 'brew'],
  ['I opened a sample of your rou gui', 'brew'],
  ['do you have samples of alishan', 'shop'],
  ['can I get a sample of alishan', 'shop'],
])('%s is of %s', (text, kind) => {
  expect(heard(text).kind).toBe(kind);
});

test('of two tastes neither is wished for the pot', () => {
  expect(heard('he likes it strong i like it weak')).toMatchObject({ turn: null, strength: null });
});

test('a heat set against another is the one that is asked of', () => {
  expect(heard("what's the difference if i use 90 instead of 80 for biluochun").tempC).toBe(90);
});

test.each([
  ['東方美人，水溫90，蓋碗120，5克', { volumeMl: 120, leafG: 5, tempC: 90 }],
  ['蓋碗110,鐵觀音6克', { volumeMl: 110, leafG: 6, tempC: null }],
  ['1,000毫升的壺泡紅茶', { volumeMl: 1000, leafG: null, tempC: null }],
  ['茉莉綠茶 一壺400cc放6克', { vessel: 'porcelain-pot', volumeMl: 400, leafG: 6 }],
  ['蜜香紅茶用玻璃壺泡，一壺600', { vessel: 'glass-pot', volumeMl: 600 }],
])('%s tells %j', (text, told) => {
  expect(heard(text)).toMatchObject(told);
});

test.each([
  ['正山小種可以加奶嗎？馬克杯400', 'milk-sugar'],
  ['does the biluochun go in before or after the water, glass 300', 'leaf-or-water-first'],
  ['does it matter if i pour from high, tieguanyin 110 gaiwan', 'pour-high'],
  ['太平猴魁 350玻璃杯 上投還是下投', 'leaf-or-water-first'],
  ['蓋碗燙手怎麼辦 泡鐵觀音用110的', 'gaiwan-hot'],
  ['白牡丹泡多久，保溫杯500', null],
  ['公司只有飲水機 90來度 泡得開鐵觀音不', null],
])('%s asks %j beside a brew', (text, besideAnswer) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', besideAnswer });
});

test('what the water is poured from is no vessel to brew in', () => {
  expect(heard('can I use water from a thermos thats an hour old for oolong')).toMatchObject({
    vessel: null,
    askedLines: ['heat'],
  });
  expect(heard('oolong in a thermos')).toMatchObject({ vessel: 'thermos' });
});

test('fewer and longer infusions are the western way', () => {
  expect(heard('alishan 100ml gaiwan, want fewer but longer steeps').style).toBe('western');
});

test.each([
  ['i have a thermometer. sencha, 300 ml mug', true],
  ["sencha, 300 ml mug, and i've got a thermometer", true],
  ['do i need to have a thermometer for sencha, 300 mug', false],
  ['should i have a thermometer, sencha in a 300 mug', false],
  ['i have a kitchen scale but no thermometer, baozhong in a 110 gaiwan', false],
])('%s tells of a thermometer: %j', (text, hasThermometer) => {
  expect(heard(text).hasThermometer).toBe(hasThermometer);
});

test.each([
  ['what is the best tea for a thermos', 'thermos-which'],
  ['need something to brew in a 1L thermos for a hike, which tea', 'thermos-which'],
  ['what about boiling it', 'boil-leaf'],
  ['my gaiwan is cold, matter?', 'not-warmed'],
  ['something light', 'recommend-tea'],
  ['how do I get the smell out of my thermos', 'clean-thermos'],
  ['do I crack the stuffed mandarin or put it in whole', 'stuffed-mandarin'],
  ['小青柑一顆要打洞嗎', 'stuffed-mandarin'],
])('%s is a question that %s answers', (text, answer) => {
  expect(heard(text).answer).toBe(answer);
});

test('so many minutes are told how long it takes in all', () => {
  expect(heard('I have 15 minutes for a cup of tieguanyin, 110 gaiwan').besides).toEqual(['in-all']);
});

test.each([
  ['1 heaped teaspoon of keemun per cup right?', 'leaf'],
  ['is one teaspoon enough for oolong?', 'leaf'],
  ['祁門紅茶一茶匙夠嗎', 'leaf'],
  ['龙井两勺够不够', 'leaf'],
  ['i live at 1800m, does water get hot enough for puerh?', 'heat'],
  ['2100m here. does the water even get hot enough for assam?', 'heat'],
])('%s asks, before a vessel is told: %s', (text, asks) => {
  expect(heard(text)).toMatchObject({ kind: 'brew', askedLines: [asks] });
});

test('water that has cooled is warmed again, where no height is told', () => {
  expect(heard("what if my water isn't hot enough").answer).toBe('water-cooled');
});
