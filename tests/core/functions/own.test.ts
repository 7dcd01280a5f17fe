/** What memory keeps by name: vessels that are meant by it, and the name for the door. */
import { expect, it } from 'vitest';
import { ownCalls, withOwnVessel } from '../../../src/core/functions/own.ts';

const memory = {
  vessels: [
    { vessel: 'clay-pot', volumeMl: 120, called: 'red' },
    { vessel: 'gaiwan', volumeMl: 110, called: 'Red Moon' },
    { vessel: 'mug', volumeMl: 300, called: '老朋友' },
    { vessel: 'kyusu', volumeMl: 200, called: null },
  ],
};
const heardIn = (text: string, more = {}) => withOwnVessel({ kind: 'offtopic', ...more }, text, memory);

it.each([
  ['now in red', 120],
  ['RED, please', 120],
  ['in the red moon', 110],
  ['用老朋友泡', 300],
])('%s: the vessel of that name', (text, volumeMl) => {
  expect(heardIn(text)).toMatchObject({ kind: 'brew', volumeMl });
});

it.each(['I am bored', 'redder than before', 'what about football', ''])('%s: none', (text) => {
  expect(heardIn(text)).toEqual({ kind: 'offtopic' });
});

it('a size that was said counts more than the kept one', () => {
  expect(heardIn('red, but 90 ml', { volumeMl: 90 })).toMatchObject({ vessel: 'clay-pot', volumeMl: 90 });
});

const around = { nowMs: 0, language: 'en', memory, house: {} } as const;

it.each([
  ['Mei\u202E\u200B Lin\n', 'Mei Lin'],
  [' 林  美 ', '林 美'],
])('a name for the door holds nothing invisible: %j', (text, name) => {
  expect(ownCalls.nameSaid({ text }, around)).toEqual({ gives: name });
});

it.each([
  ['12', 'name-without-letters'],
  ['a'.repeat(61), 'name-too-long'],
])('%s is none', (text, wrong) => {
  expect(ownCalls.nameSaid({ text }, around)).toMatchObject({ wrong });
});
