/** A usual of one's own: one for each tea, the last kept first; and the words that ask for it. */
import { describe, expect, it } from 'vitest';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { ownUsualCalls } from '../../../src/core/functions/own-usual.ts';
import { inTalk } from '../../../src/core/talk/at-hand.ts';
import { talkCues } from '../../reading/content.ts';

const plan = { vessel: 'gaiwan', leafG: 6, waterC: 95, style: 'gongfu' };
const around = (usuals: unknown): { nowMs: number; language: string; memory: Facts } => ({
  nowMs: 0,
  language: 'en',
  memory: { usuals } as Facts,
});
const gives = (name: keyof typeof ownUsualCalls, given: Facts, usuals: unknown): unknown => {
  const outcome = ownUsualCalls[name](given, around(usuals));
  return 'gives' in outcome ? outcome.gives : outcome;
};
const one = (tea: string | null, family = 'oolong') => ({ tea, family, vessel: 'gaiwan', volumeMl: 110 });

describe('keeping', () => {
  it('one for a tea: the new one takes the place of the old', () => {
    const kept = gives('keepUsual', { tea: 'a', family: 'oolong', volumeMl: 110, plan }, [one('b'), one('a')]);
    expect(kept).toMatchObject([{ tea: 'a', leafG: 6, tempC: 95, style: 'gongfu' }, { tea: 'b' }]);
  });

  it('a tea and its family are two', () => {
    const all = [one('a'), one(null)];
    expect(gives('usualFor', { tea: 'a', family: 'oolong' }, all)).toBe(all[0]);
    expect(gives('usualFor', { family: 'oolong' }, all)).toBe(all[1]);
    expect(gives('usualFor', { tea: 'c', family: 'oolong' }, all)).toBeNull();
    expect(gives('usualFor', { family: 'green' }, all)).toBeNull();
    expect(gives('dropUsual', { tea: 'a', family: 'oolong' }, all)).toEqual([all[1]]);
  });

  it('no more than thirty', () => {
    const many = Array.from({ length: 30 }, (_, n) => one(`t${n}`));
    expect(gives('keepUsual', { tea: 'new', family: 'oolong', volumeMl: 110, plan }, many)).toHaveLength(30);
  });
});

const heard: Facts = { kind: 'offtopic', act: null, taste: null, answer: null, tea: null, teas: null };

describe('what is asked in the talk at hand', () => {
  it.each([
    ['undo', { act: null, undoes: true }],
    ['撤銷', { act: null, undoes: true }],
    ['how many cups does that make', { asksYield: true, kind: 'brew' }],
    ['可以泡幾杯', { asksYield: true }],
    ['能泡几杯', { asksYield: true }],
    ['第一泡出汤后每人分多少', { asksYield: true }],
    ['how much does each of us get', { asksYield: true, kind: 'brew' }],
  ])('%s', (text, told) => {
    expect(inTalk(heard, text, { house: {}, flow: 'brew' }, talkCues)).toMatchObject(told);
  });

  it.each([
    ['two more people came', 2],
    ['2 more are coming', 2],
    ['又来了两位', 2],
    // Beside a plan it may be how many there are.
    ['多了兩個人', null],
  ])('%s: on top of who drinks already', (text, besidePlan) => {
    expect(inTalk({ ...heard, guests: 2 }, text, { house: {}, flow: 'guide' }, talkCues)).toMatchObject({
      guestsMore: 2,
    });
    expect(inTalk({ ...heard, guests: 2 }, text, { house: {}, flow: 'brew' }, talkCues)).toMatchObject({
      guestsMore: besidePlan,
      guests: besidePlan === null ? 2 : null,
    });
  });

  it('whether it is ready is of this pot, and only where one draws', () => {
    const danger: Facts = { ...heard, kind: 'safety', answer: 'safety-general' };
    for (const text of ['is it ready?', 'can I drink it now', '可以喝了嗎', '可以喝了吗', '喝了'])
      expect(inTalk(danger, text, { house: {}, flow: 'guide' }, talkCues), text).toMatchObject({ kind: 'brew' });
    for (const text of ['可以喝了嗎', 'is it ready?'])
      expect(inTalk(danger, text, { house: {}, flow: 'front' }, talkCues), text).toMatchObject({ kind: 'safety' });
    for (const text of ['it smells odd, can I drink it', '發霉了可以喝嗎', 'can my baby drink it now'])
      expect(inTalk(danger, text, { house: {}, flow: 'guide' }, talkCues), text).toMatchObject({ kind: 'safety' });
  });
});

describe('asking for it', () => {
  it.each([
    'save this',
    'can I save that?',
    'Please save it for next time',
    'keep this as my usual',
    'remember this brew',
    'save',
    '記下來',
    '幫我存起來',
    '把這個記住',
    '記下這個泡法',
    '记下来',
    '帮我保存一下',
    '保存这个泡法',
    '记住这样',
  ])('%s', (text) => {
    expect(inTalk(heard, text, { house: {}, flow: 'brew' }, talkCues)).toMatchObject({ saves: true, kind: 'brew' });
  });

  it.each([
    'save me a seat',
    'keep it cold',
    'how do I keep it fresh',
    'remember me',
    '怎麼保存茶葉',
    '记得提醒我',
    '存茶',
  ])('not: %s', (text) => {
    expect(inTalk(heard, text, { house: {}, flow: 'brew' }, talkCues)['saves']).toBeUndefined();
  });
});
