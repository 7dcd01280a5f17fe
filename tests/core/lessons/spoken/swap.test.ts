/** From which day to which, and what is no such wish. */
import { expect, it } from 'vitest';
import { hearChange, hearSwap } from '../../../../src/core/lessons/spoken/swap.ts';
import { denver, denverAt } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

/** A Friday. */
const friday = denverAt('2026-12-04T12:00');

it.each([
  ['can I move from Saturday to the 12th?', '2026-12-05', '2026-12-12'],
  ['move my booking to the 12th', undefined, '2026-12-12'],
  ['Could you change my lesson from the 12th to December 19, please', '2026-12-12', '2026-12-19'],
  ['can I come on Sunday instead of Saturday?', '2026-12-05', '2026-12-06'],
  ['switch me to Thursday', undefined, '2026-12-10'],
  ['reschedule to Dec 24', undefined, '2026-12-24'],
  ["I can't come on Saturday, can I come on the 12th instead", '2026-12-05', '2026-12-12'],
  ['星期六的課可以改到12號嗎', '2026-12-05', '2026-12-12'],
  ['我想從星期六改到下星期三', '2026-12-05', '2026-12-09'],
  ['可以換到12月19日嗎', undefined, '2026-12-19'],
  ['把我的预约改到12号', undefined, '2026-12-12'],
  ['周六的课能换成周四吗', '2026-12-05', '2026-12-10'],
  ['改上12号的课', undefined, '2026-12-12'],
])('%s', (sentence, from, to) => {
  const { byWeekday: _, ...swap } = hearSwap(listen(sentence), friday, denver) ?? {};
  expect(swap).toEqual({ to, ...(from === undefined ? {} : { from }) });
});

it.each([
  "I can't come on Saturday",
  'can I come on Saturday',
  'change it to three seats',
  'move the kettle to the table',
  'what about the second infusion',
  'from Saturday to Saturday, can I move',
  '改成三位',
  '星期六可以來嗎',
  '换成绿茶',
])('no: %s', (sentence) => {
  expect(hearSwap(listen(sentence), friday, denver)).toBeNull();
});

it.each<[string, object | null]>([
  ['can I move it a week later', { weeksLater: 1 }],
  ['move me to the week after', { weeksLater: 1 }],
  ['可以延後一週嗎', { weeksLater: 1 }],
  ['actually can i push it back two weeks', { weeksLater: 2 }],
  ['可以延後兩週嗎', { weeksLater: 2 }],
  ['能提前一周吗', { weeksLater: -1 }],
  ['能不能往后推一周', { weeksLater: 1 }],
  ['改到下一週可以嗎', { span: { from: '2026-12-07', to: '2026-12-13' } }],
  ['换成下周的第一杯茶', { span: { from: '2026-12-07', to: '2026-12-13' } }],
  ['switch to the first cup', {}],
  ['the week after I am away', null],
  ['下周有什么课', null],
])('a change without a day: %s', (sentence, change) => {
  expect(hearChange(listen(sentence), friday, denver)).toEqual(change);
});
