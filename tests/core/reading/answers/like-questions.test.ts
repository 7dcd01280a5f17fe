import { describe, expect, test } from 'vitest';
import { makeQuestionFinder } from '../../../../src/core/reading/answers/like-questions.ts';

const kept = [
  'Can I bring a dog into the shop?',
  'Do you sell gift boxes with a ribbon?',
  'Which day is the tea market?',
  '可以帶鸚鵡進店裡嗎？',
  '店裡能不能拍照',
];
const find = makeQuestionFinder(kept);

describe('a question is clearly the same as', () => {
  test.each([
    ['may i bring dogs into your shop', 0],
    ['Hi! Can I please bring my dog into the shop? Thanks', 0],
    ['do you have gift boxes with ribbons to sell', 1],
    ['which day is the market for tea', 2],
    ['我能帶鸚鵡進店嗎', 3],
    ['你哋舖頭可唔可以帶鸚鵡進店', 3],
    ['請問可以在店裡拍照嗎', 4],
    ['店里可以拍照吗', 4],
  ])('%s → %i', (asked, at) => {
    expect(find(asked)).toBe(at);
  });

  test.each([
    'may I bring my own cup into the shop?',
    'do you sell tea in the shop',
    'is there a ribbon on the gaiwan',
    'the market is on which street',
    'dog',
    'shop',
    '',
    '可以帶自己的杯子進店裡嗎？',
    '店裡幾點開門',
    '怎麼泡鐵觀音',
    '🍵',
  ])('none: %s', (asked) => {
    expect(find(asked)).toBeNull();
  });

  test('nothing when nothing is kept', () => {
    expect(makeQuestionFinder([])('may I bring a dog?')).toBeNull();
  });
});

test('a thousand kept questions that all share words are looked through without delay', () => {
  const many = makeQuestionFinder(Array.from({ length: 1_000 }, (_, i) => `question about thing ${i} and ${i * 7}`));
  const took = Array.from({ length: 30 }, (_, i) => {
    const began = performance.now();
    many(`a question about thing ${i}`);
    return performance.now() - began;
  });
  // The least of them: what neighbours on the machine take is not ours.
  expect(Math.min(...took)).toBeLessThan(100);
});
