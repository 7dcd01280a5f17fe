/** What people have at home, buy and bring: told apart from what they brew in, brew and drink. */
import { expect, test } from 'vitest';
import { read } from '../../reading/content.ts';

const nothing = { language: null, asked: null };

test.each([
  ['a quarter pound of the ceylon please', 'shop'],
  ['2 oz of dong ding please', 'shop'],
  ['can I get 50 grams of keemun', 'shop'],
  ['we would like 100g of your best longjing sent to my mum', 'shop'],
  ['6 g of the keemun please', 'brew'],
  ['i have 30 grams of dong ding left, 120 gaiwan', 'brew'],
  ['can I use 30 g of the dong ding in a litre', 'brew'],
])('%s is of the %s', (text, kind) => {
  expect(read(text, nothing).kind).toBe(kind);
});

test.each([
  ['can my 6 year old come', 'lesson'],
  ['can i bring my 8 year old', 'lesson'],
  ['are kids allowed', 'lesson'],
  ['can my 4 year old drink this', 'safety'],
  ['can my 6 year old have some', 'safety'],
  ['can i bring my baby, is the steam safe', 'safety'],
  ['my toddler came out in a rash', 'safety'],
  ['can my son come round, he passed out', 'safety'],
])('of a child in "%s": %s', (text, kind) => {
  expect(read(text, nothing).kind).toBe(kind);
});

test.each([
  ['dong ding in a saucepan', 'saucepan'],
  ['can I use a milk pan', 'saucepan'],
  ['no kettle, only a saucepan. hojicha 300 ml', null],
  ['green tea in a cast iron teapot', 'iron-pot'],
  ['sencha, tetsubin 500 ml', 'iron-pot'],
  ['and with a moka pot', 'coffee-maker'],
  ['keemun in a mug', null],
])('what does for a vessel in "%s": %s', (text, ware) => {
  expect(read(text, nothing)).toMatchObject({ kind: 'brew', ware });
});

test.each([
  ['half full 400ml glass of longjing', 200],
  ['longjing, 400 ml glass filled to about halfway', 200],
  ['my tin of keemun is half full, 300 ml mug', 300],
  ['silver needle grandpa style 350', 350],
  ['yunnan black, 2 cups worth in a pyrex jug', 480],
  ['jasmine, my cafetiere does about 3 mugs', 900],
  ['a teapot of about a pint (uk), assam', 568],
])('how much water in "%s"', (text, ml) => {
  expect(read(text, nothing).volumeMl).toBeCloseTo(ml, 0);
});

test.each([
  ['how long for the second pot', 2],
  ['the third lot of water', 3],
  ['my second pot holds 300', null],
  ['I bought a second pot', null],
])('which infusion in "%s"', (text, infusion) => {
  expect(read(text, nothing).infusion).toBe(infusion);
});

test.each([
  ['left wet leaf in the gaiwan all weekend, its furry now', 'mould'],
  ['my teapot lid is stuck', 'lid-stuck'],
  ['the tin says keemun 2021 is that too old', 'old-tea'],
  ['除垢劑要放多少', null],
])('what is told of "%s"', (text, answer) => {
  expect(read(text, nothing)).toMatchObject({ kind: 'care', answer });
});

test.each([
  ['roughly 2/3 of a mug', 200],
  ["I'm not sure, I'd say a cup", 240],
  ['its a 3 cup one', 720],
  ['half a mug', 150],
])('asked how much it holds: "%s"', (text, ml) => {
  expect(read(text, { language: null, asked: 'volumeMl' }).volumeMl).toBe(ml);
});

test.each([
  ['at 7000 feet so boils at 199f. english breakfast, mug 12oz', null],
  ['my kettle only does 100, gyokuro', null],
  ['my kettle only does 85, sencha', 85],
])('how hot in "%s"', (text, tempC) => {
  expect(read(text, nothing).tempC).toBe(tempC);
});

test('who reacted to a flower asks of safety', () => {
  const text = 'my partner reacted to chamomile last year, is chrysanthemum the same thing';
  expect(read(text, nothing)).toMatchObject({ kind: 'safety', answer: 'allergy-flowers' });
});
