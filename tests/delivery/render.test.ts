import { expect, test } from 'vitest';
import { render } from '../../src/delivery/render.ts';
import type { Owed } from '../../src/store/contract.ts';
import { plainSay } from '../app/kettle.ts';
import { noon } from '../store/samples.ts';

const owed = (saying: Owed['saying'], more: Partial<Owed> = {}): Owed => ({
  id: '7-tag',
  person: 1,
  address: { channel: 'web', chat: 'c' },
  language: 'zh-Hans',
  saying,
  priority: 'reply',
  due: noon,
  claimedAt: noon,
  attempts: 0,
  replaces: null,
  ...more,
});

test('words, choices with keys, and how late it comes', () => {
  const from = { flow: 'f', place: 'p' };
  const saying = {
    phrases: [{ key: 'a', values: { ml: 110 } }],
    choices: [{ id: 'why', label: { key: 'why', values: {} }, gives: {}, from }],
  };
  expect(render(plainSay, owed(saying, { claimedAt: noon + 8_400, replaces: 'r' }))).toEqual({
    id: '7-tag',
    channel: 'web',
    chat: 'c',
    language: 'zh-Hans',
    paragraphs: ['zh-Hans a lateS=8 ml=110'],
    choices: [{ key: '7-tag.0', label: 'zh-Hans why lateS=8' }],
    replaces: 'r',
  });
});

test('a ladder: the longest and the strongest are one', () => {
  const rungs = [
    { n: 1, seconds: 6, strengthMgPerMl: 4 },
    { n: 2, seconds: 24, strengthMgPerMl: 2 },
  ];
  const show = { kind: 'ladder', title: { key: 'title', values: {} }, rungs };
  expect(render(plainSay, owed({ phrases: [], choices: [], show })).ladder).toEqual({
    title: 'zh-Hans title',
    rungs: [
      { n: 1, seconds: 6, label: 'zh-Hans house-rung seconds=6', length: 0.25, ink: 1 },
      { n: 2, seconds: 24, label: 'zh-Hans house-rung seconds=24', length: 1, ink: 0.5 },
    ],
  });
});

test('a countdown: the device counts by itself', () => {
  const label = { key: 'hold', values: {} };
  const show = { kind: 'countdown', startedAtMs: noon, endsAtMs: noon + 6_000, label };
  expect(render(plainSay, owed({ phrases: [], choices: [], show })).countdown).toEqual({
    startedAt: noon,
    endsAt: noon + 6_000,
    label: 'zh-Hans hold',
  });
});

test('a file, and what it is about', () => {
  const label = { key: 'calendar', values: {} };
  const show = { kind: 'file', name: 'a.ics', mediaType: 'text/calendar; method=PUBLISH', text: 'BEGIN', label };
  const { file, subject } = render(
    plainSay,
    owed({ phrases: [], choices: [], show, subject: { key: 'tea', values: {} } }),
  );
  expect(file).toEqual({ name: 'a.ics', mediaType: show.mediaType, text: 'BEGIN', label: 'zh-Hans calendar' });
  expect(subject).toBe('zh-Hans tea');
});

const when = (instantMs: number, shows: string | null, clock: string) => ({
  key: 'when',
  values: { instantMs, clock, ...(shows === null ? {} : { shows }) },
});
/** Says its phrases one after the other, and of one its clock. */
const sayWhen: typeof plainSay = (_language, { key, values }) => {
  if (key === 'when') return values['clock'] as string;
  const phrases = Object.values(values).filter((value) => typeof value === 'object') as ReturnType<typeof when>[];
  return phrases.map((phrase) => `🍵 at ${phrase.values.clock}`).join('');
};

test.each([
  [
    'a whole instant, where UTF-16 counts it',
    { starts: when(noon, null, '6 May, 19:00') },
    [[6, '6 May, 19:00', noon, 'day-and-time']],
  ],
  ['a time of day', { starts: when(noon, 'time', '19:00') }, [[6, '19:00', noon, 'time']]],
  [
    'a time of day that stands within a date is not marked twice',
    { starts: when(noon, null, '6 May, 19:00'), ends: when(noon + 60_000, 'time', '19:00') },
    [
      [6, '6 May, 19:00', noon, 'day-and-time'],
      [24, '19:00', noon + 60_000, 'time'],
    ],
  ],
  [
    'the same words for two instants stay words',
    { one: when(noon, null, '19:00'), other: when(noon + 1, null, '19:00') },
    undefined,
  ],
  ['a number is no instant', { ml: 120 }, undefined],
])('times: %s', (_what, values, wanted) => {
  const { times, paragraphs } = render(sayWhen, owed({ phrases: [{ key: 'lesson', values }], choices: [] }));
  const read = times?.map(({ offset, length, at, shows }) => {
    return [offset, paragraphs[0]!.slice(offset, offset + length), at, shows];
  });
  expect(read).toEqual(wanted);
});
