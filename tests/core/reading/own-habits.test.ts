/** How people do it at home, told beside what they ask. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const hint = { language: null, asked: null };

test.each([
  ['my gaiwan holds 150 but I fill it just 2/3, how much leaf of tieguanyin', 100],
  ['I fill my 600 ml teapot only two thirds, how much assam', 400],
  ['gaiwan 120, usually fill it three quarters. shui xian, grams?', 90],
  ['french press 1 litre but I only make it half full, ceylon', 500],
  ['蓋碗150只裝七分滿，鐵觀音放幾克', 105],
  ['茶壶500毫升我一般只装一半，放多少正山小种', 250],
  ['蓋碗120裝八分滿，水仙幾克', 120],
  ['I fill my kettle two thirds, the gaiwan holds 120, shui xian', 120],
])('%s: of %i ml', (text, ml) => {
  expect(read(text, hint).volumeMl).toBe(ml);
});

test.each([
  ['2 heaped teaspoons of keemun for a 1 litre pot', 3.4],
  ['2 level teaspoons of keemun for a 1 litre pot', 2],
  ['a heaped tablespoon of assam in 500 ml', 5.1],
])('%s: %d level ones', (text, spoons) => {
  expect(read(text, hint).leafSpoons).toBe(spoons);
});

test.each([
  [
    'My mother in law uses 2 teaspoons of keemun for a 1 litre pot and lets it stand for 10 minutes. Is that right?',
    600,
  ],
  ['白牡丹5分鐘是不是太久了 杯子300ml', 300],
  ['蓋碗150只裝七分滿，鐵觀音放幾克', null],
])('%s: drawn %s s', (text, seconds) => {
  expect(read(text, hint).drawnS).toBe(seconds);
});

test.each([
  ['sencha is bitter, kyusu 250 ml, 5 g, water just under boiling', 95],
  ['bitter again! ceylon, 350 ml mug, water almost boiling, 4 minutes', 95],
  ['快开的水泡碧螺春，盖碗100，3克，1分钟，涩得不行', 95],
  ['bitter: sencha 3 g, boiling, 3 min', 100],
  ["My kettle doesn't show temperature. how can I get 80 for green tea", 80],
])('%s: at %i', (text, tempC) => {
  expect(read(text, hint).tempC).toBe(tempC);
});

test("a kettle that doesn't show it is no thermometer", () => {
  expect(read("My kettle doesn't show temperature. how can I get 80 for green tea", hint).noThermometer).toBe(true);
});

test.each([
  ['the oolong was great for three infusions and then nothing', 'taste', 'leaf-spent'],
  ['the first two steeps are lovely then it is watery, sheng puer', null, 'leaf-spent'],
  ['烏龍前三泡很好喝後面就沒味道了，我哪裡做錯', 'taste', 'leaf-spent'],
  ['Tea tastes like paper, is the water to blame?', 'taste', 'water-kind'],
  ['茶喝起來有紙味，是水的問題嗎', 'taste', 'water-kind'],
  ['could I put the second infusion in the fridge and drink it later?', 'care', 'make-ahead'],
  ['第二泡可以放冰箱晚點再喝嗎', 'care', 'make-ahead'],
  ['爬山帶保溫瓶適合哪一種茶', 'care', 'thermos-which'],
  ['忘了倒，泡了二十分钟还能喝吗', 'care', 'drawn-too-long'],
  ['8岁孩子能喝点焙茶吗', 'safety', 'children'],
  ['what tea would you give to someone who gets headaches from caffeine', 'safety', 'no-caffeine'],
  ['咖啡因會讓我頭痛，喝什麼茶好', 'safety', 'no-caffeine'],
  ['感冒呢', 'safety', 'health-claims'],
  ['可以加蜂蜜枸杞嗎', null, 'additions'],
  ['可以加蜂蜜嗎', null, 'milk-sugar'],
  ['my tea has little white hairs floating, mould?', 'care', 'tea-dust'],
  ["there's white fuzz on my puer cake, is it mould", 'safety', 'mould'],
  ['tea came out salty?? gyokuro', 'taste', 'savoury'],
  ['玉露怎麼鹹鹹的', null, 'savoury'],
  ['my matcha clumps', 'care', 'matcha-foam'],
  ['抹茶打不散一直結團', 'care', 'matcha-foam'],
  ['办公室没有盖碗就一个保温杯500ml泡什么好', 'care', 'thermos-which'],
  ['洗茶的水可以浇花吗', 'care', 'spent-leaves'],
  ['綠茶開封後能放幾個月', 'care', 'shelf-life'],
  ['茶能和咖啡一起喝嗎', 'safety', 'caffeine-limit'],
  ['my oolong tastes burnt', 'taste', 'burnt-taste'],
  ['烏龍有焦味', 'taste', 'burnt-taste'],
  ['7 grams of sheng puer is how much of a cake?', 'care', 'cake-piece'],
  ['茶餅5克大概多大塊', 'care', 'cake-piece'],
])('%s: %s, %s', (text, kind, answer) => {
  const heard = read(text, hint);
  expect(heard.answer).toBe(answer);
  if (kind !== null) expect(heard.kind).toBe(kind);
});

test.each([
  '爱喝酽茶，大红袍盖碗110',
  '我喝茶都喝很濃，大紅袍蓋碗110',
  'I drink my tea very strong. da hong pao gaiwan 110',
])('%s: stronger than most', (text) => {
  expect(read(text, hint).strength).toBeGreaterThan(1);
});
