/** What puts a planned lesson right, and what says nothing of it. */
import { expect, it } from 'vitest';
import { corrected, inItsHalf } from '../../../../src/core/lessons/spoken/correction.ts';
import { denver, denverAt } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

const now = denverAt('2026-12-02T10:00');
const planned = { title: 'puer for beginners', starts: '2026-12-11T19:00', seats: 8, minutes: 90 };

it.each<[string, object]>([
  ['actually make it 7:30', { starts: '2026-12-11T19:30' }],
  ['7:30 in the morning', { starts: '2026-12-11T07:30' }],
  ['at 5 pm', { starts: '2026-12-11T17:00' }],
  ['Saturday instead', { starts: '2026-12-05T19:00' }],
  ['the 12th at 6 pm', { starts: '2026-12-12T18:00' }],
  ['改成七點半', { starts: '2026-12-11T19:30' }],
  ['改到12號', { starts: '2026-12-12T19:00' }],
  ['10 seats', { seats: 10 }],
  ['10個位子', { seats: 10 }],
  ['two hours', { minutes: 120 }],
  ['half an hour later', { starts: '2026-12-11T19:30' }],
  ['make it half an hour longer', { minutes: 120 }],
  ['15 minutes shorter please', { minutes: 75 }],
  ['延長半小時', { minutes: 120 }],
  ['and 30 dollars', { price: '30 dollars' }],
  ['call it Raw and ripe', { title: 'Raw and ripe' }],
  ['名稱改成「生與熟」', { title: '生與熟' }],
])('%s', (sentence, news) => {
  expect(corrected(planned, listen(sentence), now, denver)).toEqual({ ...planned, ...news });
});

it('puts who comes for nothing beside the price, and lets the other days go with the day', () => {
  const priced = { ...planned, price: '30 dollars', also: ['2026-12-18'] };
  const correctedBy = (sentence: string) => corrected(priced, listen(sentence), now, denver);
  expect(correctedBy('free for students')?.price).toBe('30 dollars, free for students');
  expect(correctedBy('free')?.price).toBe('free');
  expect(correctedBy('at 5 pm')).toMatchObject({ starts: '2026-12-11T17:00', also: ['2026-12-18'] });
  expect(correctedBy('Saturday instead')?.also).toBeUndefined();
});

const weekly = { every: 'week', step: 1 };
const fortnightly = { every: 'week', step: 2 };
const onWeekday = { every: 'month', step: 1, keep: 'weekday' };

it.each<[string, object]>([
  ['repeat it every month', { repeats: { every: 'month', step: 1 } }],
  ['every other week, six times', { repeats: { ...fortnightly, times: 6 } }],
  ['first Saturday of each month', { starts: '2027-01-02T19:00', repeats: onWeekday }],
  ['the first Saturday of each month at 3 pm', { starts: '2027-01-02T15:00', repeats: onWeekday }],
  [
    'every Saturday until the end of January',
    { starts: '2026-12-05T19:00', repeats: { ...weekly, until: '2027-01-31' } },
  ],
  ['每月重複一次', { repeats: { every: 'month', step: 1 } }],
  ['隔週一次，共六次', { repeats: { ...fortnightly, times: 6 } }],
  ['每月第一个周六', { starts: '2027-01-02T19:00', repeats: onWeekday }],
])('has it repeat: %s', (sentence, news) => {
  expect(corrected(planned, listen(sentence), now, denver)).toEqual({ ...planned, ...news });
});

it.each<[string, object | undefined]>([
  ['four times', { ...fortnightly, times: 4 }],
  ['until 15 March', { ...fortnightly, until: '2027-03-15' }],
  ['except 25 December and 8 January', { ...fortnightly, times: 6, except: ['2026-12-25', '2027-01-08'] }],
  ['without an end', fortnightly],
  ['only once', undefined],
  ["don't repeat it", undefined],
  ['改成四次', { ...fortnightly, times: 4 }],
  ['到三月底', { ...fortnightly, until: '2027-03-31' }],
  ['12月25日停一次', { ...fortnightly, times: 6, except: ['2026-12-25'] }],
  ['不要重複', undefined],
])('of what repeats, puts right: %s', (sentence, repeats) => {
  const before = { ...planned, repeats: { ...fortnightly, times: 6 } as const } as Parameters<typeof corrected>[0];
  const after = corrected(before, listen(sentence), now, denver);
  expect(after).toEqual({ ...planned, ...(repeats === undefined ? {} : { repeats }) });
});

it.each(['the weather', 'how do I brew white tea', '謝謝', 'not yet'])('%s says nothing of it', (sentence) => {
  expect(corrected(planned, listen(sentence), now, denver)).toBe(null);
});

it.each([
  ['7:30', '2026-12-11T19:00', '7:30 pm'],
  ['7:30', '2026-12-11T10:00', '7:30 am'],
  ['7:30 am', '2026-12-11T19:00', '7:30 am'],
  // In the night nobody comes.
  ['改到两点', '2026-12-11T10:30', '改到下午两点'],
  ['at 3:30', '2026-12-11T10:30', 'at 3:30 pm'],
])('%s, where it began at %s, is %s', (text, before, told) => {
  expect(inItsHalf(listen(text), before, now, denver)).toBe(told);
});
