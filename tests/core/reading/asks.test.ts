/** What a few words ask of a plan, and sizes told without a number. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const nothing = { language: null, asked: null };

test.each([
  ['how hot should it be', 'heat'],
  ['水溫幾多度', 'heat'],
  ['那几秒', 'time'],
  ['要放多久', 'time'],
  ['咁要幾耐', 'time'],
  ['how much leaf', 'leaf'],
  ['放多少茶葉', 'leaf'],
  ['咁即係幾多匙', 'leaf'],
  ['等於多少茶匙', 'leaf'],
  ['how many more can I do', 'count'],
  ['可以泡幾次', 'count'],
  ['仲沖得幾多次', 'count'],
  ['do I take the leaves out', 'leaf-out'],
  ['茶葉要不要拿出來', 'leaf-out'],
  ['叶子要一直泡着吗', 'leaf-out'],
  ['will it be bitter', 'bitter-ahead'],
  ['會不會太苦', 'bitter-ahead'],
  ["isn't that too much", 'too-much'],
  ['克数太多了吧', 'too-much'],
  ['is that enough for three', 'enough'],
  ['三个人喝够不够', 'enough'],
  ['how do I make it then', 'whole'],
  ['how hot and how long', 'whole'],
  ['要洗茶嗎 然後可以泡幾次', 'whole'],
  ['7.1克是乾的還是濕的', 'dry'],
  ['茶湯要一次倒光嗎 還是留一點', 'leaf-out'],
  ['有没有更简单的法子', 'unclear'],
  ['水要滾的嗎還是放一下', 'heat'],
  ['没秤大概一把是多少', 'leaf'],
  ['泡完一直泡在里面行吗', 'leaf-out'],
  ['sorry, say that again slower', 'whole'],
  ['guide me, longjing in a glass', 'guide'],
  ['帶我泡 大紅袍 蓋碗100', 'guide'],
  ['大红袍怎么泡', 'whole'],
  ['what do you mean, level tsp?', 'meaning'],
  ['什麼是平匙？', 'meaning'],
  ["what's a gaiwan?", 'meaning'],
  ['盖碗是什么', 'meaning'],
  ["what's dancong anyway", 'what-tea'],
  ['碧螺春是绿茶吗', 'what-tea'],
  ['凍頂係咩茶', 'what-tea'],
  ['什麼意思', 'unclear'],
  ["I don't understand", 'unclear'],
])('%s asks: %s', (text, asks) => {
  expect(read(text, nothing).asks).toBe(asks);
});

// How long something keeps, or how often in a day, is no line of the plan; what names a tea or an amount wants a plan of its own.
test.each([
  'how long does it keep',
  '能放多久',
  'how many cups a day',
  '一天可以喝幾次',
  'when is the lesson and how long is the class',
  'what is the capital of France',
  'how much leaf for sencha in 300 ml',
  '今天有什麼課',
])('%s asks nothing of the plan', (text) => {
  expect(read(text, nothing).asks).toBe(null);
});

test.each([
  ['what do you mean, level tsp?', 'word-level-spoon'],
  ['hang on, what is a rinse', 'word-rinse'],
  ['what do you mean cold jar', 'word-cold-jar'],
  ['焗盅係咩嚟㗎', 'word-gaiwan'],
  ['什么叫出汤', 'word-pour-off'],
  ['公道杯係乜', 'word-pitcher'],
  ['生普熟普是什麼意思', 'word-ripe-raw'],
])('%s is told what the word means, whatever was asked', (text, answer) => {
  for (const asked of [null, 'tea', 'vessel', 'volumeMl'])
    expect(read(text, { language: null, asked })).toMatchObject({ kind: 'care', answer, vessel: null, turn: null });
});

test('a word that is explained leads nobody else there', () => {
  for (const text of ['should I rinse it', '要不要洗茶', 'gaiwan or pot?', 'level the leaf?'])
    expect(read(text, nothing).answer ?? '').not.toMatch(/^word-/);
});

test.each([
  ['no, the big one', 'big'],
  ['大的那個', 'big'],
  ['换那个大的', 'big'],
  ['the small one please', 'small'],
  ['細嗰個', 'small'],
  ['just an ordinary one', 'middle'],
  ['the usual size', 'middle'],
  ['普通那種', 'middle'],
  ['whatever size', 'middle'],
  ['a normal mug', 'middle'],
  ['就普通玻璃杯', 'middle'],
  ['换成小一点的', 'small'],
  ['多大合适', 'middle'],
  ['多大来着 普通那种', 'middle'],
  ['the other one', 'other'],
  ['另一個', 'other'],
])('%s is a size: %s', (text, word) => {
  expect(read(text, { language: null, asked: 'volumeMl' })).toMatchObject({ sizeWord: word, mistakes: [] });
});

test.each([
  'a big pot of assam',
  '大紅袍',
  '小心',
  '普通話',
  '第二泡',
  'the usual tea',
  '大概三百',
  'big family coming on Sunday',
])('%s is no size', (text) => {
  expect(read(text, { language: null, asked: 'volumeMl' }).sizeWord).toBe(null);
});

test('what it is compared with is no other vessel', () => {
  const asked = { language: null, asked: 'volumeMl' };
  expect(read('like a small teacup', asked)).toMatchObject({ vessel: null, mistakes: [{ code: 'size-unknown' }] });
  expect(read('like a small teacup', { language: null, asked: 'vessel' }).vessel).toBe('mug');
});

test.each([
  ['第二十泡', 20],
  ['第十一泡呢', 11],
  ['第兩泡', 2],
  ['the twelfth', 12],
  ['and the 3rd?', 3],
  ['milk in first?', null],
  ['water first or leaf', null],
])('%s is infusion %d', (text, n) => {
  expect(read(text, nothing).infusion).toBe(n);
});

test.each([
  ['少放点', 'less-leaf'],
  ['落少啲', 'less-leaf'],
  ['再多放一點', 'more-leaf'],
  ['ok weak then', 'lighter'],
  ['make it weak please', 'lighter'],
  ['so weak', null],
  ['那少泡一会儿', 'shorter'],
])('%s is a turn: %s', (text, turn) => {
  expect(read(text, nothing).turn).toBe(turn);
});

test('a number after "no," is the one meant, and one after "not" is not', () => {
  expect(read('不是 八百', nothing).volumeMl).toBe(800);
  expect(read('不是800，是500', nothing).volumeMl).toBe(500);
  expect(read('水溫我家飲水機只有90', nothing).tempC).toBe(90);
});

// More of it, or the time, is the name of no tea; this once ended a talk with an error.
test.each([
  ['係咪太多茶葉', null],
  ['咁應該幾耐', 'tea'],
  ['幾點開始', 'tea'],
  ['再放多啲茶', null],
])('%s names no tea', (text, asked) => {
  expect(read(text, { language: null, asked })).toMatchObject({ tea: null, unknownTea: null });
});

test.each([
  ['milk in first?', 'milk-sugar'],
  ['水要先倒還是茶葉先', 'leaf-or-water-first'],
  ['那個秒數是泡在裡面的時間嗎', 'what-the-times-are'],
  ['用打奶器行吗', 'no-whisk'],
])('%s is of brewing, and answered', (text, answer) => {
  expect(read(text, nothing)).toMatchObject({ kind: 'brew', answer });
});

test('what tells something for a plan is planned, not answered', () => {
  expect(read('assam with milk in a 300 ml mug, how long', nothing)).toMatchObject({ kind: 'brew', answer: null });
});

test.each([
  ['My sister is ill, just me', 'lesson'],
  ['朋友病咗，淨係我一個嚟', 'lesson'],
  ['my sister is ill, can she drink this', 'safety'],
  ['可以帶鸚鵡來嗎', 'shop'],
  ['倒了', 'brew'],
  ['my tea is horrible', 'taste'],
])('%s is of kind %s', (text, kind) => {
  expect(read(text, nothing).kind).toBe(kind);
});

test.each(["what's that in spoons", 'how much is that in teaspoons', 'and in grams?'])(
  '%s asks for the leaf',
  (text) => {
    expect(read(text, nothing).asks).toBe('leaf');
  },
);
