import { expect, it } from 'vitest';
import { readLevel } from '../../../../src/core/lessons/spoken/level.ts';
import { listen } from '../heard-here.ts';

it.each([
  ['beginners', 'beginner'],
  ['Everyone is welcome', 'beginner'],
  ['nothing need be known', 'beginner'],
  ['初學', 'beginner'],
  ['不需要基础', 'beginner'],
  ['谁都可以', 'beginner'],
  ['those who have begun', 'intermediate'],
  ['not for beginners', 'intermediate'],
  ['有些基礎的人', 'intermediate'],
  ['有基础', 'intermediate'],
  ['Advanced', 'advanced'],
  ['進階', 'advanced'],
  ['老茶客', 'advanced'],
  ['blue', undefined],
  ['八个座位', undefined],
] as const)('%s', (words, level) => {
  expect(readLevel(listen(words))).toBe(level);
});
