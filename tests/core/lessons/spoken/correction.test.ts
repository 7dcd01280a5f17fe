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
  ['and 30 dollars', { price: '30 dollars' }],
  ['call it Raw and ripe', { title: 'Raw and ripe' }],
  ['名稱改成「生與熟」', { title: '生與熟' }],
])('%s', (sentence, news) => {
  expect(corrected(planned, listen(sentence), now, denver)).toEqual({ ...planned, ...news });
});

it.each(['the weather', 'how do I brew white tea', '謝謝', 'not yet'])('%s says nothing of it', (sentence) => {
  expect(corrected(planned, listen(sentence), now, denver)).toBe(null);
});

it.each([
  ['7:30', '2026-12-11T19:00', '7:30 pm'],
  ['7:30', '2026-12-11T10:00', '7:30 am'],
  ['7:30 am', '2026-12-11T19:00', '7:30 am'],
])('%s, where it began at %s, is %s', (text, before, told) => {
  expect(inItsHalf(listen(text), before, now, denver)).toBe(told);
});
