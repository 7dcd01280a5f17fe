import { describe, expect, it } from 'vitest';
import type { Facts, Json } from '../../../src/core/flow/flow.ts';
import { byItsLook } from '../../../src/core/talk/looks.ts';
import { talkWords } from '../../../src/core/talk/talk-cues.ts';
import { talkCues } from '../../reading/content.ts';

const looked = (text: string, heard: Facts = { kind: 'offtopic' }, asked: Json = 'tea'): Facts =>
  byItsLook({ house: undefined, flow: 'brew', asked, heard, words: talkWords(text), cues: talkCues });

// What the families look like is common practice, no source.
it.each([
  ['tight little balls, dark green', 'oolong'],
  ['it was greenish, rolled up in little balls, smelled of flowers', 'oolong'],
  ['long dark twisted leaves', 'oolong'],
  ["it's a pressed cake, quite hard", 'dark'],
  ['stuffed inside a dried tangerine', 'dark'],
  ['silvery hairy buds', 'white'],
  ['flat green leaves', 'green'],
  ['looks like pine needles', 'green'],
  ['small black bits', 'black'],
  ['dried flowers and berries', 'herbal'],
  ['一顆顆捲起來的', 'oolong'],
  ['一条条深色的', 'oolong'],
  ['壓成餅的，很硬', 'dark'],
  ['有白毫', 'white'],
  ['扁扁的，翠绿', 'green'],
  ['黑黑碎碎的', 'black'],
  ['晒干的花瓣', 'herbal'],
])('%s looks like %s', (text, family) => {
  expect(looked(text)).toMatchObject({ kind: 'brew', look: family });
});

describe('a tea without a name', () => {
  it.each([
    'I lost the label',
    'the sticker has come off',
    "no idea what it's called",
    "I can't remember which one it is",
    'there is no label on the tin',
    'a bag with no label, in a gaiwan',
    '標籤掉了',
    '不知道是啥茶',
    '忘記是哪一款了',
    '袋子扔了',
  ])('%s', (text) => {
    expect(looked(text, { kind: 'shop' }, null)).toMatchObject({ kind: 'brew', isNameless: true, answer: null });
  });

  it.each<[string, Facts, Json]>([
    ['is not told by words that ask for advice', { kind: 'shop' }, null],
    ['is not one that is named', { kind: 'brew', tea: 'sencha' }, 'tea'],
    ['is no matter of health', { kind: 'safety' }, 'tea'],
    ['is not asked for elsewhere', { kind: 'offtopic' }, 'vessel'],
  ])('%s', (about, heard, asked) => {
    const text = about.includes('advice') ? 'no idea which one it is best to get' : 'little green balls';
    const { isNameless = false, look = null } = looked(text, heard, asked);
    expect([isNameless, look]).toEqual([false, null]);
  });

  it('keeps a name nobody knows, unless it begins as a description does', () => {
    expect(looked('Golden Tips of Wuliang', { kind: 'brew', unknownTea: 'Golden Tips of Wuliang' })).toEqual({});
    expect(looked('有金毫', { kind: 'brew', unknownTea: '有金毫' })).toMatchObject({ look: 'black', unknownTea: null });
  });
});
