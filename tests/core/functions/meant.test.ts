/** Sizes without a number beside the vessels somebody has, and the family of teas that nobody can tell apart. */
import { expect, test } from 'vitest';
import { meantCalls } from '../../../src/core/functions/meant.ts';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { teas } from '../../reading/content.ts';

const calls = meantCalls(teas);
const around = (vessels: readonly Facts[]) => ({ nowMs: 0, language: 'en', memory: { vessels } }) as never;
const own = [
  { vessel: 'gaiwan', volumeMl: 110, called: null },
  { vessel: 'gaiwan', volumeMl: 180, called: null },
  { vessel: 'mug', volumeMl: 350, called: null },
];
const sizes = [100, 120, 150, 200];

test.each([
  ['big', 'gaiwan', null, own, { vessel: 'gaiwan', volumeMl: 180, isOwn: true }],
  ['small', 'gaiwan', null, own, { vessel: 'gaiwan', volumeMl: 110, isOwn: true }],
  ['big', null, null, own, { vessel: 'mug', volumeMl: 350, isOwn: true }],
  ['other', 'gaiwan', 110, own, { vessel: 'gaiwan', volumeMl: 180, isOwn: true }],
  // The big one is in hand already, or there is but one: then of those shown.
  ['big', 'gaiwan', 180, own, { vessel: 'gaiwan', volumeMl: 200, isOwn: false }],
  ['big', 'gaiwan', null, own.slice(1), { vessel: 'gaiwan', volumeMl: 200, isOwn: false }],
  ['small', 'gaiwan', null, [], { vessel: 'gaiwan', volumeMl: 100, isOwn: false }],
  ['middle', 'gaiwan', null, own, { vessel: 'gaiwan', volumeMl: 120, isOwn: false }],
  ['other', 'gaiwan', 110, own.slice(0, 1), { vessel: 'gaiwan', volumeMl: null, isOwn: false }],
])('the %s one, of a %s of %s ml', (word, vessel, volumeMl, vessels, meant) => {
  expect(calls.sizeMeant({ word, vessel, volumeMl, sizes }, around(vessels))).toEqual({ gives: meant });
});

test.each([
  [['shou-puer', 'sheng-puer'], 'dark'],
  [['longjing', 'assam'], null],
  [[], null],
])('the family of %j is %s', (ids, family) => {
  expect(calls.familyOfAll({ teas: ids }, around([]))).toEqual({ gives: family });
});
