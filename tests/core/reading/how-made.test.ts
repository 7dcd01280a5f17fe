import { describe, expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const nothing = { language: null, asked: null };

describe('how a cup was made, and what is amiss with it', () => {
  test.each([
    "I steeped 5g longjing in a 110 ml gaiwan at 95 for 3 min and it's bitter, why?",
    'sencha bitter. I used boiling water, 2 tsp, 250 ml mug, 4 minutes',
    'my white peony is weak, 2 g in a 200 ml mug, 1 minute',
    'why is my tieguanyin weak? 3 g in a 110 gaiwan, 10 seconds',
    'oolong came out bitter, I left it 5 min in the teapot',
    'assam too strong, 3 spoons in one mug, 5 min',
    'tasteless! 1 tsp silver needle, 300 ml mug, 70 degrees, 2 min',
    'the second infusion of my dancong was bitter, 20 seconds, 7g 100ml',
    '4g bi luo chun, 90 degrees, 2 minutes, really astringent',
    'bitter tea again. gyokuro, 80C, kyusu 200 ml, 5 g, 2 min',
    'Da hong pao 8g in 100ml for 30 seconds is way too strong',
    'I did 1 teaspoon of jasmine in a 350 ml mug for 2 min and it was like water',
    'used 3 g keemun, 200 ml, 8 minutes, sour',
    'made ripe puer with 5g in 500ml teapot 1 min, tastes of nothing',
    'earl grey in a thermos 500ml with 2 tsp since this morning, horribly bitter now',
    'darjeeling 2.5g 250ml 100 degrees 5 min: bitter. what did I do wrong?',
    'why so bitter? green tea, 100ml gaiwan, 5g, 1 minute, boiling',
    'my matcha is bitter, 4 g in 60 ml boiling water',
    "it's bitter. i put 10g in a 300ml pot for 3 min",
    'white tea 4g 300ml 80C 3 min came out flat',
    'cold brew sencha 10 g per litre 12 hours came out bitter',
    'tie guan yin 7 g, 110 ml, 95 degrees, first infusion 20 s and it has no taste',
    'bitter - genmaicha 2 tsp 300ml 95C 3min',
    'Lapsang, 1 heaped teaspoon, big mug, 3 minutes. Weak!',
    '龙井很苦，盖碗110毫升放了5克，95度泡了3分钟',
    '铁观音没味道，3克，110盖碗，泡10秒',
    '茶太淡了，水仙，盖碗110毫升5克，泡了10秒',
    '碧螺春4克，90度水泡两分钟，很涩',
    '大红袍8克100毫升泡了半分钟，浓得喝不下',
    '正山小种泡了5分钟，又苦又酸',
    '保温杯500毫升放了5克红茶，闷了一上午，苦死了',
    '熟普10克，200毫升紫砂壶，第一泡30秒，太浓',
    '茉莉花茶3克300毫升马克杯泡2分钟，没什么味',
    '白毫银针，5克，盖碗，85度，20秒，淡得像水',
    '为什么我泡的六安瓜片这么苦？3克200毫升开水泡5分钟',
    '单丛7克110毫升第二泡20秒就苦了',
    '用100度的水泡安吉白茶，苦涩',
    '冷泡煎茶，1升10克泡了12小时，发苦',
    '高山茶泡出來好澀，我用大壺泡了五分鐘',
    '紅茶好苦，馬克杯放兩匙泡十分鐘',
    '凍頂8克150cc，95度泡一分鐘，太苦了',
    '東方美人3克，350cc馬克杯，3分鐘，沒味道',
    '玉露用80度泡兩分鐘，好苦',
    '阿里山茶7公克，110ml蓋碗，第一泡10秒，淡淡的',
    '普洱浸咗五分鐘，濃到飲唔落',
    '包種茶 4克 200ml 90度 1分鐘 澀',
    '我用滾水沖龍井，3克，200ml，浸3分鐘，好苦',
    '抹茶好苦，4克配60ml滾水',
    'did 6 grams of alishan in my 120 ml pot for a minute, mouth puckering',
    "brewed silver needle 3 minutes at 75 and it's got no flavour at all",
    'put 2 teaspoons ceylon in a 400ml teapot for 6 mins and it came out really tannic',
    '100ml gaiwan 4g rougui 10 sec and its watery',
    'just made sencha w 90C water 1 min. so astringent',
    'shou mei boiled for 20 min, tastes like dishwater',
    '4 min steep on my dragonwell = grassy bitter mess',
    'my tung ting was sour, left in the flask 3 hours',
    "used one spoon of rooibos in half a litre and it's tasteless",
    'what went wrong? 5g dancong, 100ml, 40 seconds, super bitter',
    '8g sheng puer in 100 ml, boiling, first steep 20s - brutally bitter',
    'oriental beauty 3g/300ml/2min is thin',
    '信阳毛尖放多了吗，5克200毫升，又苦又涩',
    '昨天泡的滇红5克500毫升三分钟，淡而无味',
    '盖碗110，老白茶5克，出汤10秒，没滋味',
    '水仙坐杯一分钟，8克，苦得皱眉',
    '泡了十分钟的祁红发酸',
    '用95度水泡的碧螺春涩口',
    '飘逸杯500ml，铁观音4克，2分钟，味道寡淡',
    '冷泡四季春8克600cc放了一夜，有點苦',
    '我的文山包種5克150ml浸了兩分鐘，超澀',
    '鹿谷烏龍6公克沖200cc，第二泡30秒，變很淡',
    '水滾直接沖玉露，1分鐘，苦到不行',
    '英式早餐茶浸咗8分鐘，澀到爆',
    '紅玉3克200ml 90度 2分鐘 沒什麼味道',
  ])('%s', (text) => {
    const { kind, taste, leafG, leafSpoons, tempC, drawnS } = read(text, nothing);
    expect(kind).toBe('taste');
    expect(taste).not.toBe('right');
    expect(taste).not.toBeNull();
    expect([leafG, leafSpoons, tempC, drawnS].some((told) => told !== null)).toBe(true);
  });

  test.each([
    ['sencha bitter. I used boiling water, 2 tsp, 250 ml mug, 4 minutes', { tempC: 100, leafSpoons: 2, drawnS: 240 }],
    ['did 6 grams of alishan in my 120 ml pot for a minute, mouth puckering', { leafG: 6, drawnS: 60, volumeMl: 120 }],
    ['为什么我泡的六安瓜片这么苦？3克200毫升开水泡5分钟', { tempC: 100, leafG: 3, drawnS: 300 }],
    ['水滾直接沖玉露，1分鐘，苦到不行', { tempC: 100, drawnS: 60 }],
    ['2克配300ml，像白開水', { tempC: null, leafG: 2 }],
    ['white peony 3 g, not quite boiling, 2 min, weak', { tempC: 95, leafG: 3 }],
  ])('%s tells how', (text, told) => {
    expect(read(text, nothing)).toMatchObject(told);
  });

  test.each([
    "5g longjing 110 ml gaiwan, how long so it isn't bitter",
    '3 min at 95 for longjing, will it be bitter?',
    'is 8 g in 100 ml too strong for da hong pao',
    'assam 2 tsp mug 4 min, I like it strong',
    '白茶5克盖碗泡20秒会不会太淡',
    '怎么泡才不苦，5克龙井，盖碗110',
    '淡一点，3克就好',
    'not too bitter please, 4 g sencha, 200 ml',
    'weak tea for my gran, 2 g of assam in 300 ml, 2 min',
    '煎茶5克200cc怎樣泡才不會澀',
    '7克高山茶泡一分鐘會太濃嗎',
    'flat-bottomed pot 300 ml, 5 g of keemun',
    'is 2 minutes too weak for ceylon, 250 ml mug',
    '酸梅汤和红茶一起泡，5克红茶500毫升',
    'my nan takes it weak. english breakfast, 2 g, 300 ml',
    '想喝浓一点，熟普8克120毫升',
    '3g jasmine, 200ml, 80 degrees, is that strong enough?',
    'strong black tea for breakfast, 5 g in 400 ml',
    '不要太苦，玉露4克，急須150ml',
  ])('%s asks how it is to be', (text) => {
    expect(read(text, nothing).kind).toBe('brew');
  });
});
