/** Sentences kept apart, said again with a slip of the thumb: the same must be heard, and what needs care above all. */
import { describe, expect, test } from 'vitest';
import { rightHan } from '../../src/core/reading/typed/han-slips.ts';
import { slipWordsOf } from '../../src/core/reading/typed/slip-words.ts';
import { makeSlipMender } from '../../src/core/reading/typed/slips.ts';
import { plainText } from '../../src/core/teas/plain-text.ts';
import { readSentences, type Sentence } from './accuracy.ts';
import { answers, finder, names, read, words } from './content.ts';

const nothing = { language: null, asked: null };
const mend = makeSlipMender(slipWordsOf({ words, names: finder.words(), ordinary: new Set(names.ordinary), answers }));
const mended = (text: string): string => mend(plainText(text)).plain;

test.each([
  ['how lomg do i steeep teh sencha', 'how long do i steep the sencha'],
  ['hwo much leaf for a litrre', 'how much leaf for a litre'],
  ['my hart races', 'my heart races'],
  ['howlong for assan in a gaiwwan', 'how long for assam in a gaiwan'],
  ['sooooo bittter', 'so bitter'],
  ['tiguanyin, ihbiscus', 'tieguanyin, hibiscus'],
  ['preganant and on warfrin', 'pregnant and on warfarin'],
])('%s is read as %s', (written, meant) => {
  expect(mended(written)).toBe(meant);
});

test.each([
  'the throat threat',
  'a case of a male babe by the coast',
  'my purse and a bullet',
  'a bathrobe, a fireman and a handsome template',
  'kena some lah, 20mg',
  "he doesn't, isn't and won't",
  'Ninthpour Holyhead Mugicha',
])('%s stays as it is', (written) => {
  expect(mended(written)).toBe(plainText(written).plain);
});

test('what is shown stays beside what is plain', () => {
  const { shown, plain } = mend(plainText('My Lapsnag, howmuch for the TEAPTO?'));
  expect(plain).toBe('my lapsang, how much for the teapot?');
  expect(shown).toHaveLength(plain.length);
});

test.each([
  ['sencha - 250 ml mug', 'sencha, 250 ml mug'],
  ['keemun for twelve; two-litre pot', 'keemun for twelve, two-litre pot'],
  ['a litre & a half of assam in a flask', 'a litre and a half of assam in a flask'],
  ['*sencha* in a _250 ml_ mug', 'sencha in a 250 ml mug'],
  ['sencha 😅 in a 250 ml 🍵 mug', 'sencha in a 250 ml mug'],
  ['sencha at 75 ºC', 'sencha at 75 °C'],
  ['longjing, 25oml glass', 'longjing, 250ml glass'],
  ['longjing, 250mlglass', 'longjing, 250 ml glass'],
  ['鐵觀音怎麼跑，蓋碗110豪升', '鐵觀音怎麼泡，蓋碗110毫升'],
  ['茶葉還能在泡嗎', '茶葉還能再泡嗎'],
  ['第二炮要久一點嘛', '第二泡要久一點嘛'],
  ['那個我想問一下鐵觀音怎麼泡', '鐵觀音怎麼泡'],
  ['就是鐵觀音怎麼泡 哈哈哈', '鐵觀音怎麼泡'],
  ['鐵觀音，100毫升gaiwan', '鐵觀音，100毫升蓋碗'],
])('%s says what %s says', (written, meant) => {
  expect(heard(written)).toBe(heard(meant));
});

test.each([
  '茶葉的香味跑掉了',
  '要在泡茶前洗手',
  '西湖龍井',
  '睡覺的時候喝',
  '咖啡機多少錢',
  '好渴',
  '舌頭麻',
  '已經以經濟為主',
  '七點三刻',
  '什麼時候再來',
])('%s has no slip in it', (written) => {
  const { plain } = plainText(written);
  expect(rightHan(plain)).toBe(plain);
});

test('a thermos is no warmed cup', () => {
  expect(read('改用保溫杯', nothing).warmed).toBeNull();
});

const keys = ['qwertyuiop', 'asdfghjkl', 'zxcvbnm'];
const besideKey = (key: string): string => {
  const row = keys.find((one) => one.includes(key)) ?? '';
  return row.charAt(row.indexOf(key) + 1) || row.charAt(row.indexOf(key) - 1);
};
const slips: { readonly [slip: string]: (word: string, at: number) => string } = {
  doubled: (word, at) => word.slice(0, at) + word.slice(at - 1),
  dropped: (word, at) => word.slice(0, at) + word.slice(at + 1),
  swapped: (word, at) => word.slice(0, at - 1) + word.charAt(at) + word.charAt(at - 1) + word.slice(at + 1),
  beside: (word, at) => word.slice(0, at) + besideKey(word.charAt(at)) + word.slice(at + 1),
};

/** One slip in one long word, which word and where as the sentence's length has it; null where it has none. */
function slipped(text: string, slip: (word: string, at: number) => string): string | null {
  const long = [...text.toLowerCase().matchAll(/(?<![a-z0-9'’])[a-z]{5,}(?![a-z0-9'’])/g)];
  const { 0: word = '', index = 0 } = long[text.length % Math.max(1, long.length)] ?? {};
  if (word === '') return null;
  const at = 2 + (text.length % (word.length - 3));
  return text.slice(0, index) + slip(word, at) + text.slice(index + word.length);
}

const files = ['fresh.txt', 'customers-apart.txt', 'customers-last.txt', 'stranger.txt', 'front-counter.txt'];
const english = files.flatMap(readSentences).filter(({ language }) => language === 'en');
const mishaps = ['at-the-table.txt', 'at-the-door.txt']
  .flatMap(readSentences)
  .filter(({ kind, language }) => kind === 'safety' && language === 'en');

const shareOf = (
  sentences: readonly Sentence[],
  slip: (word: string, at: number) => string,
  same: (a: string, b: string) => boolean,
): number => {
  const pairs = sentences.flatMap(({ text }) => {
    const other = slipped(text, slip);
    return other === null ? [] : [[text, other] as const];
  });
  return pairs.filter(([text, other]) => same(text, other)).length / pairs.length;
};

/** What a plan is made of, and what is answered. */
const heard = (text: string): string => {
  const { kind, tea, family, vessel, volumeMl, leafG, guests, tempC, style, answer } = read(text, nothing);
  return JSON.stringify({ kind, tea, family, vessel, volumeMl, leafG, guests, tempC, style, answer });
};

describe.each(Object.entries(slips))('a letter %s', (_, slip) => {
  test('changes little of what is heard', () => {
    expect(english.length).toBeGreaterThan(250);
    const share = shareOf(english, slip, (text, other) => heard(text) === heard(other));
    if (process.env['REPORT'] !== undefined) console.log(share);
    expect(share).toBeGreaterThanOrEqual(0.93);
  });

  test('keeps mishaps and worries what they are', () => {
    expect(mishaps.length).toBeGreaterThan(30);
    const share = shareOf(mishaps, slip, (text, other) => {
      const before = read(text, nothing).kind;
      return before !== 'safety' || read(other, nothing).kind === 'safety';
    });
    if (process.env['REPORT'] !== undefined) console.log('mishaps', share);
    expect(share).toBeGreaterThanOrEqual(0.95);
  });
});
