import { describe, expect, it } from 'vitest';
import { readWordsSource } from '../../../src/core/words/source-check.ts';
import { makeWords, wordFunctions, type WordsSources } from '../../../src/core/words/words.ts';

const source = `
# a comment
hello = Hello, { $name }.
water = { DEGREES($waterC, $unit) }
times = { DURATIONS($list) } and { LIST($reasons) }
why = Because { $inner }.
inner = of { GRAMS($g) }
count = { $n ->
    [one] one cup
   *[other] { $n } cups
}
state = { $on ->
    [true] on
    [none] unknown
   *[other] off
}
tea = { TEA($id) } in { VESSEL($vessel) }
vessel-mug = a mug
yes = Yes
    .typed = yes / sure / of course
both = { hello } { inner }
`;
const names = (kind: string, id: string): string | null => (kind === 'tea' ? `the ${id}` : null);
const inEvery = (text: string): WordsSources => {
  const read = readWordsSource(text, wordFunctions);
  return { en: read, 'zh-Hant': read, 'zh-Hans': read };
};
const words = makeWords(inEvery(source), names);
const say = (key: string, values = {}): string => words.say('en', { key, values });

describe('saying', () => {
  it.each([
    ['hello', { name: 'Ada' }, 'Hello, Ada.'],
    ['water', { waterC: 90, unit: 'F' }, '194 °F'],
    ['water', { waterC: 90, unit: null }, '90 °C'],
    ['times', { list: [6, 5], reasons: ['a', { key: 'inner', values: { g: 2 } }] }, '6, 5 s and a and of 2 g'],
    ['why', { inner: { key: 'inner', values: { g: 5 } } }, 'Because of 5 g.'],
    ['count', { n: 1 }, 'one cup'],
    ['count', { n: 3 }, '3 cups'],
    ['state', { on: true }, 'on'],
    ['state', { on: null }, 'unknown'],
    ['state', { on: false }, 'off'],
    ['tea', { id: 'keemun', vessel: 'mug' }, 'the keemun in a mug'],
    ['hello', { name: '{ $x } <b>' }, 'Hello, { $x } <b>.'],
  ])('%s %j', (key, values, sentence) => {
    expect(say(key, values)).toBe(sentence);
  });

  it.each([
    ['an unknown key', 'nothing', {}],
    ['a missing value', 'hello', {}],
    ['a number that is text', 'inner', { g: 'five' }],
    ['a list that is none', 'times', { list: 5, reasons: [] }],
    ['a vessel nobody named', 'tea', { id: 'keemun', vessel: 'bucket' }],
    ['a list where text belongs', 'hello', { name: ['a'] }],
  ])('throws on %s', (_, key, values) => {
    expect(() => say(key, values)).toThrow(key);
  });

  it('adds no invisible characters', () => {
    expect(say('hello', { name: 'Ada' })).not.toMatch(/[\u2066-\u2069]/u);
  });
});

describe('asking about sentences', () => {
  it('knows the values a sentence needs, also through others', () => {
    expect(words.variables('both')).toEqual(['name', 'g']);
    expect(words.variables('nothing')).toEqual([]);
  });

  it('knows what else may be typed for one', () => {
    expect([words.typed('en', 'yes'), words.typed('en', 'hello')]).toEqual([['yes', 'sure', 'of course'], []]);
  });

  it('knows its keys', () => {
    expect([words.has('yes'), words.has('no'), words.keys().length]).toEqual([true, false, 11]);
  });
});

describe('what the parser leaves out in silence is a problem with its place', () => {
  it.each([
    ['an open brace', 'a = Hello { $name', '1:2'],
    ['a brace too many', 'b = fine\na = Hello } there', '2:11'],
    ['no default', 'a = { $n ->\n    [one] x\n}', '1:2'],
    ['no value', 'b = fine\na =', '2:2'],
    ['a line that belongs to nothing', 'a = fine\nand more', '2:1'],
    ['a key twice', 'a = one\na = two', '2:1'],
    ['an unknown function', 'a = { GRAMMES($g) }', '1:2'],
    ['an unknown sentence', 'a = { b }', '1:2'],
    ['an unknown term', 'a = { -b }', '1:2'],
    ['an open quote', 'a = { "x }', '1:2'],
    ['a typo in a key', 'a! = x', '1:1'],
  ])('%s', (_, text, place) => {
    const [problem] = readWordsSource(text, wordFunctions).problems;
    expect(`${problem?.line}:${problem?.column}`).toBe(place);
    expect(() => makeWords(inEvery(text), names)).toThrow('expected');
  });

  it('and what is right is none', () => {
    expect(readWordsSource(source, wordFunctions).problems).toEqual([]);
    expect(readWordsSource('a = a { "}" } brace', wordFunctions).problems).toEqual([]);
  });
});
