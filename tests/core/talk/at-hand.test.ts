import { describe, expect, it } from 'vitest';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { inTalk } from '../../../src/core/talk/at-hand.ts';
import { talkCues } from '../../reading/content.ts';

const names = 'answer act tea teas family vessel volumeMl leafG tempC taste turn style unknownTea'.split(' ');
const nothing: Facts = { ...Object.fromEntries(names.map((name) => [name, null])), kind: 'offtopic' };
const marks = { waits: null, grumbles: null };

/** What the reader heard, the text, how many questions wait, and what becomes of it. */
it.each<[string, Facts, number, Facts]>([
  ['it says Dong Ding on the bag', { kind: 'care', tea: 'dong-ding' }, 0, { kind: 'brew', tea: 'dong-ding' }],
  [
    "it's called Blue Pea Magic",
    { kind: 'taste', family: 'oolong' },
    0,
    { kind: 'brew', family: null, unknownTea: 'Blue Pea Magic' },
  ],
  ['叫做藍蝶花語', {}, 0, { kind: 'brew', unknownTea: '藍蝶花語' }],
  ['gongfu', { kind: 'safety', answer: 'safety-general', style: 'gongfu' }, 0, { kind: 'brew', answer: null }],
  [
    'cold brew over night',
    { kind: 'safety', answer: 'cold-brew-left-out', style: 'cold' },
    0,
    { kind: 'brew', answer: null },
  ],
  [
    'cold brew left out over night',
    { kind: 'safety', answer: 'cold-brew-left-out', style: 'cold' },
    0,
    { kind: 'safety', answer: 'cold-brew-left-out' },
  ],
  ['can I die of it', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'safety', answer: 'safety-general' }],
  ['in it goes', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'brew', answer: null }],
  ['放了', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'brew', answer: null }],
  ['冷泡喝了肚子痛', { kind: 'safety', answer: 'safety-general', style: 'cold' }, 0, { kind: 'safety' }],
  ['gongfu poisoning', { kind: 'safety', answer: 'safety-general', style: 'gongfu' }, 0, { kind: 'safety' }],
  ['功夫泡法', { kind: 'safety', answer: 'safety-general', style: 'gongfu' }, 0, { kind: 'brew' }],
  ['水倒進去了', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'brew', answer: null }],
  ...[
    'lips feel numb',
    'fever now',
    'poured on my arm',
    '喘不過氣',
    '喉咙痒',
    '發燒了',
    '手麻',
    '倒在手上',
    '打翻了',
  ].map((text): [string, Facts, number, Facts] => [
    text,
    { kind: 'safety', answer: 'safety-general' },
    0,
    { kind: 'safety', answer: 'safety-general' },
  ]),
  ['會不會燙到', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'safety' }],
  ["that's a ripe puer", { kind: 'taste', tea: 'shou-puer' }, 0, { kind: 'brew' }],
  ['never mind', { kind: 'greeting' }, 0, { kind: 'greeting', act: 'no' }],
  ['算了', { kind: 'greeting' }, 0, { kind: 'greeting', act: 'no' }],
  ['stop', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'greeting', act: 'goodbye', answer: null }],
  ['不喝了', { kind: 'safety', answer: 'safety-general' }, 0, { kind: 'greeting', act: 'goodbye', answer: null }],
  ['how long until they answer?', { kind: 'brew' }, 1, { waits: true }],
  ['how long until they answer?', { kind: 'brew' }, 0, { waits: null }],
  ['多久會回我', { kind: 'brew' }, 2, { waits: true }],
  ['this is useless', {}, 0, { grumbles: true }],
  ['沒用的東西', { kind: 'brew' }, 0, { grumbles: true }],
  ['my tea is useless at 80 degrees', { kind: 'brew', tempC: 80 }, 0, { grumbles: null }],
  ['how do I brew it', { kind: 'brew' }, 0, { kind: 'brew', ...marks }],
])('%s', (text, heard, asked, expected) => {
  expect(inTalk({ ...nothing, ...heard }, text, { house: { asked }, flow: 'guide' }, talkCues)).toMatchObject(expected);
});

describe('boiling water', () => {
  const asks = [
    'what if I use boiling water',
    'Can I use boiling water instead?',
    'so can i just pour on boiling water?',
    "I'll use boiling water then",
    '可以用滾水嗎',
    '那用開水泡呢？',
    '可不可以用沸水',
    '如果用开水会怎样？',
    '直接用剛燒開水沖可以嗎',
  ];
  it.each(asks)('beside a plan is a wish for it: %s', (text) => {
    const heard = inTalk(
      { ...nothing, kind: 'care', answer: 'water-heat' },
      text,
      { house: {}, flow: 'brew' },
      talkCues,
    );
    expect(heard).toMatchObject({ kind: 'brew', answer: null, tempC: 100 });
  });

  it.each([
    ['what if I use boiling water', 'front', null],
    ['what if I use boiling water', 'brew', 'volumeMl'],
    ['I spilled boiling water on my hand', 'brew', null],
    ['can boiling water burn my child', 'brew', null],
    ['is it ok to use boiling water for baby formula', 'brew', null],
    ['被開水燙到了', 'brew', null],
    ['開水可以喝嗎', 'brew', null],
  ])('%s: elsewhere, or said of something else, it is none', (text, flow, asked) => {
    const heard = inTalk({ ...nothing, kind: 'safety', answer: 'burn' }, text, { house: {}, flow, asked }, talkCues);
    expect(heard).toMatchObject({ kind: 'safety', answer: 'burn', tempC: null });
  });
});
