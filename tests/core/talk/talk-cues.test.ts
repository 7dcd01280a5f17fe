/** Where in a message a phrase must stand, and what its signs mean. */
import { describe, expect, it } from 'vitest';
import { readCount, secondsSaid, longTimes, shortTimes } from '../../../src/core/talk/count.ts';
import { makeTalkCues, talkWords, type TalkPhrases } from '../../../src/core/talk/talk-cues.ts';
import { talkCueFiles } from '../../../src/core/talk/talk-cue-names.ts';
import { talkCues } from '../../reading/content.ts';

type Phrases = TalkPhrases['undo'];
const small = { 'said-ahead': { anywhere: ['ok', '好'] }, 'said-after': { anywhere: ['please', '吧'] } };
const cuesOf = (phrases: Phrases): ReturnType<typeof makeTalkCues> =>
  makeTalkCues({ ...small, undo: phrases } as unknown as TalkPhrases);
const says = (phrases: Phrases, text: string): boolean => cuesOf(phrases).says('undo', talkWords(text));

describe('where it must stand', () => {
  it.each<[Phrases, string, boolean]>([
    [{ anywhere: ['top it up'] }, 'so I top it up now', true],
    [{ anywhere: ['top it up'] }, 'stop it up', false],
    [{ opening: ['top it up'] }, 'Top it up, you said', true],
    [{ opening: ['top it up'] }, 'you said top it up', false],
    [{ ending: ['top it up'] }, 'you said top it up?', true],
    [{ ending: ['top it up'] }, 'top it up, you said', false],
    [{ alone: ['top it up'] }, 'Top it up!', true],
    [{ alone: ['top it up'] }, 'ok top it up', false],
    [{ mainly: ['top it up'] }, 'ok, ok: top it up please', true],
    [{ mainly: ['top it up'] }, 'then top it up', false],
    [{ mainly: ['加水'] }, '好，加水吧', true],
    [{ only: ['(top|it|up)'] }, 'it: top, up', true],
    [{ only: ['(top|it|up)'] }, 'top it up, then', false],
    [{ anywhere: ['top it up'], unless: ['petrol'] }, 'top it up with petrol', false],
    [{ alone: ['加水'], ending: ['top it up'] }, 'you may top it up', true],
  ])('%j in %s: %s', (phrases, text, is) => {
    expect(says(phrases, text)).toBe(is);
  });
});

describe('how it is written', () => {
  it.each<[string, string, boolean]>([
    ["let's go", 'lets go', true],
    ['pre-heat', 'PRE HEAT', true],
    ['幾點開門', '几点开门', true],
    ['什麼時候喝', '幾時飲', true],
    ['仲有幾多', '还有多少', true],
    ['tea( leaves)?', 'tea', true],
    ['(a |b )*end', 'a a b end', true],
    ['temp*', 'temperature', true],
    ['how ~ hot', 'how very very hot', true],
    ['how ~ hot', 'how is it. Hot', false],
    ['in {n} cups', 'in twelve cups', true],
    ['in {n} cups', 'in some cups', false],
    ['第{n}泡', '第十二泡', true],
  ])('%s is said by %s: %s', (phrase, text, is) => {
    expect(says({ alone: [phrase] }, text)).toBe(is);
  });

  it('tells the number it names', () => {
    const cues = cuesOf({ anywhere: ['not this', 'to {n}'] });
    expect(cues.numberIn('undo', 'up to 5')).toBe(5);
    expect(cues.numberIn('undo', 'up to the end')).toBeNull();
  });

  it('tells where it stands', () => {
    expect(cuesOf({ anywhere: ['and', '還有'] }).spans('undo', 'salt and sand 还有')).toEqual([
      { start: 5, end: 8 },
      { start: 14, end: 16 },
    ]);
  });
});

it.each([
  ['seventh', 7],
  ['twenty', 20],
  ['十二', 12],
  ['half a', 0.5],
  ['many', null],
])('%s is %s', (told, count) => {
  expect(readCount(told)).toBe(count);
});

it.each([
  ['a minute and 10 seconds', shortTimes, 70],
  ['半分钟', shortTimes, 30],
  ['two hours', shortTimes, null],
  ['two hours', longTimes, 7200],
  ['an hour longer', longTimes, null],
])('%s', (text, units, seconds) => {
  expect(secondsSaid(text, units)).toBe(seconds);
});

it('no cue takes long, whatever is written', () => {
  const texts = [
    'ok so i just want to save it for me please ',
    '好的那就我都已經把茶水放好',
    'how long 1 2 3 , and ',
    'a',
  ].map((text) => talkWords(`${text.repeat(200).slice(0, 200)}§x`));
  for (const cue of Object.values(talkCueFiles).flat()) {
    talkCues.says(cue, 'warm');
    // Of the processor's time: others may be at it.
    const started = process.cpuUsage();
    for (const text of texts) talkCues.says(cue, text);
    expect(process.cpuUsage(started).user / 1000, cue).toBeLessThan(50);
  }
});
