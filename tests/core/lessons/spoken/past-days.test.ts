/** Which days that are over a sentence names. Said on Wednesday, December 9, 2026. */
import { expect, it } from 'vitest';
import { readPastDays } from '../../../../src/core/lessons/spoken/past-days.ts';

const held = ['2026-11-28', '2026-12-02', '2026-12-05', '2026-12-08'];

it.each<[string, string | null, string?]>([
  ['who was missing yesterday?', '2026-12-08'],
  ['昨天誰沒來', '2026-12-08'],
  ['前天来了几个人', '2026-12-07'],
  ['who came on Saturday?', '2026-12-05'],
  ['星期六來了哪些人', '2026-12-05'],
  ['周六来了哪些人', '2026-12-05'],
  ['who came last Saturday', '2026-12-05'],
  // Nothing was held on a Sunday: the one before today is meant.
  ['who came on Sunday', '2026-12-06'],
  // It is Wednesday, and today nothing has begun: the one a week ago.
  ['who was here on Wednesday', '2026-12-02'],
  ['who came on the 28th', '2026-11-28'],
  ['who was there on 5 December', '2026-12-05'],
  ['12月5日誰來了', '2026-12-05'],
  ['28号谁来了', '2026-11-28'],
  ['how many came last week', '2026-11-30', '2026-12-06'],
  ['上週來了幾個人', '2026-11-30', '2026-12-06'],
  ['how many did we have this week', '2026-12-07', '2026-12-09'],
  ['last weekend', '2026-12-05', '2026-12-06'],
  ['last month', '2026-11-01', '2026-11-30'],
  ['这个月来了多少人', '2026-12-01', '2026-12-09'],
  ['who was at the last lesson?', null],
])('%s', (sentence, from, to = from ?? '') => {
  const days = readPastDays(sentence, '2026-12-09', held);
  expect(days).toEqual(from === null ? undefined : { from, to });
});
