/** Which Saturday is meant on a Saturday. */
import { describe, expect, it } from 'vitest';
import { dateOf, wallAt } from '../../../../src/core/lessons/calendar.ts';
import { hearSaid } from '../../../../src/core/lessons/spoken/said.ts';
import { onMeantDay } from '../../../../src/core/lessons/spoken/meant-day.ts';
import { hearSwap } from '../../../../src/core/lessons/spoken/swap.ts';
import { hearWish } from '../../../../src/core/lessons/spoken/wish.ts';
import { denver, denverAt, lessonWith } from '../lesson-drafts.ts';

/** The fifth of December 2026 is a Saturday; this one ends at noon. */
const today = lessonWith({ id: 'today', starts: '2026-12-05T10:00', minutes: 120 });
const nextWeek = lessonWith({ id: 'next-week', starts: '2026-12-12T10:00', minutes: 120 });
const lessons = [today, nextWeek];

describe.each([
  ['before it', '09:00', '2026-12-05'],
  ['while it lasts', '11:00', '2026-12-05'],
  ['in the evening', '20:00', '2026-12-12'],
])('%s', (_, hour, meant) => {
  const now = denverAt(`2026-12-05T${hour}`);
  it.each([
    'Is there a lesson on Saturday?',
    'a seat on Saturday please',
    "I can't come on Saturday",
    '星期六有什么课',
  ])('%s', (sentence) => {
    expect(onMeantDay(hearWish(sentence, now, denver), lessons, now).date).toBe(meant);
  });
  it('where lessons are shown', () => {
    const lesson = meant === dateOf(today.starts) ? 'today' : 'next-week';
    expect(hearSaid('Saturday', { lessons, now, zone: denver })).toMatchObject({ lesson });
  });
});

it.each([
  ['is there a lesson today?', '2026-12-05'],
  ['is there a lesson on 5 December', '2026-12-05'],
  ['is there a lesson on Sunday', '2026-12-06'],
  ['is there a lesson next Saturday', '2026-12-12'],
])('%s stays, whatever the hour', (sentence, date) => {
  const now = denverAt('2026-12-05T20:00');
  expect(dateOf(wallAt(now, denver))).toBe('2026-12-05');
  expect(onMeantDay(hearWish(sentence, now, denver), lessons, now).date).toBe(date);
});

it('a seat moved from today to Saturday is moved by a week', () => {
  const now = denverAt('2026-12-05T08:00');
  const swap = hearSwap('can I move from today to Saturday?', now, denver);
  expect(swap).toEqual({ from: '2026-12-05', to: '2026-12-05', mayBeNextWeek: true });
  expect(onMeantDay({ ...swap, date: swap?.to ?? '' }, [nextWeek], now).date).toBe('2026-12-12');
});
