/** What a fact takes along when it is told: what hung on the one before, and of the first answer only its rivals. */
import { expect, test } from 'vitest';
import { learned } from '../../../src/core/flow/learning.ts';

const listens = {
  tea: { clears: ['teas', 'leafG'] },
  teas: { clears: ['tea', 'family'] },
  family: { clears: ['tea', 'teas', 'leafG'] },
  vessel: { clears: ['volumeMl', 'leafG'] },
  volumeMl: { clears: [] },
  leafG: { clears: [] },
};

test.each([
  [
    'a size told before the vessel is that vessel’s',
    { volumeMl: 300 },
    { vessel: 'mug' },
    'vessel',
    { volumeMl: 300, vessel: 'mug' },
  ],
  [
    'of a tea among several, the several fall',
    { teas: ['a', 'b'], leafG: 5 },
    { tea: 'a' },
    'tea',
    { leafG: 5, tea: 'a' },
  ],
  [
    'so does not what is told with it',
    { leafG: 5 },
    { tea: 'a', family: 'f' },
    'tea',
    { leafG: 5, tea: 'a', family: 'f' },
  ],
  ['told unasked, it takes what hung on none', { leafG: 5 }, { tea: 'a' }, null, { tea: 'a' }],
  [
    'another vessel takes the old one’s size',
    { vessel: 'mug', volumeMl: 300 },
    { vessel: 'gaiwan' },
    'vessel',
    { vessel: 'gaiwan' },
  ],
  [
    'told in the same breath, nothing falls',
    { vessel: 'mug', volumeMl: 300 },
    { vessel: 'gaiwan', volumeMl: 110 },
    'vessel',
    { vessel: 'gaiwan', volumeMl: 110 },
  ],
  [
    'the same again changes nothing',
    { vessel: 'mug', volumeMl: 300 },
    { vessel: 'mug' },
    'vessel',
    { vessel: 'mug', volumeMl: 300 },
  ],
])('%s', (_, facts, told, asked, after) => {
  expect(learned(facts, told, { listens, asked })).toEqual(after);
});
