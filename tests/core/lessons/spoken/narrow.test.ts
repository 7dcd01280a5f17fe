/** What makes fewer of the lessons there are, and what does not. */
import { expect, it } from 'vitest';
import { hearNarrowing, narrowed } from '../../../../src/core/lessons/spoken/narrow.ts';
import { lessonWith } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

it.each<[string, object | null]>([
  ["which one's easiest", { end: 'easiest' }],
  ['what should I start with', { end: 'easiest' }],
  ['哪一個比較簡單', { end: 'easiest' }],
  ['which is the most advanced', { end: 'hardest' }],
  ['最难的是哪个', { end: 'hardest' }],
  ['something for a complete novice', { level: 'beginner' }],
  ['第一次上課', { level: 'beginner' }],
  ['anything in the evening?', { part: 'evening' }],
  ['有早上的吗', { part: 'morning' }],
  ['only weekdays for me', { onWorkdays: true }],
  ['周末我没空 工作日有吗', { onWorkdays: true }],
  ['平日晚上有嗎', { part: 'evening', onWorkdays: true }],
  ['how much is it', null],
  ['two seats', null],
])('%s', (sentence, narrowing) => {
  expect(hearNarrowing(listen(sentence))).toEqual(narrowing);
});

const first = lessonWith({ id: 'first', level: 'beginner', starts: '2026-12-05T10:30' });
const thursday = lessonWith({ id: 'thursday', level: 'beginner', starts: '2026-12-10T18:30' });
const later = lessonWith({ id: 'later', level: 'intermediate', starts: '2026-12-12T14:00' });
const all = [first, thursday, later];

it.each<[object, readonly string[]]>([
  [{ end: 'easiest' }, ['first', 'thursday']],
  [{ end: 'hardest' }, ['later']],
  [{ level: 'advanced' }, []],
  [{ part: 'morning' }, ['first']],
  [{ part: 'afternoon' }, ['later']],
  [{ onWorkdays: true }, ['thursday']],
  [{ end: 'easiest', part: 'evening' }, ['thursday']],
])('%o leaves %o', (narrowing, ids) => {
  expect(narrowed(all, narrowing).map(({ id }) => id)).toEqual(ids);
});
