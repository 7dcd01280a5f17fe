/** Which Thursday is meant by "Thursday". */
import { describe, expect, it } from 'vitest';
import { dateOf } from '../../../../src/core/lessons/calendar.ts';
import { hearSaid } from '../../../../src/core/lessons/spoken/said.ts';
import { onMeantDay } from '../../../../src/core/lessons/spoken/meant-day.ts';
import { hearSwap } from '../../../../src/core/lessons/spoken/swap.ts';
import { hearWish, isSureOf } from '../../../../src/core/lessons/spoken/wish.ts';
import { denver, denverAt, lessonWith } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

/** The fifth of December 2026 is a Saturday; this one ends at noon. */
const today = lessonWith({ id: 'today', starts: '2026-12-05T10:00', minutes: 120 });
const nextWeek = lessonWith({ id: 'next-week', starts: '2026-12-12T10:00', minutes: 120 });
const thursday = lessonWith({ id: 'thursday', starts: '2026-12-17T18:30', minutes: 90 });
const lessons = [today, nextWeek, thursday];

describe.each([
  ['before it', '09:00', '2026-12-05'],
  ['while it lasts', '11:00', '2026-12-05'],
  ['in the evening', '20:00', '2026-12-12'],
])('on the day itself, %s', (_, hour, meant) => {
  const now = denverAt(`2026-12-05T${hour}`);
  it.each([
    'Is there a lesson on Saturday?',
    'a seat on Saturday please',
    "I can't come on Saturday",
    '星期六报两个人',
  ])('%s', (sentence) => {
    expect(onMeantDay(hearWish(listen(sentence), now, denver), lessons, now).date).toBe(meant);
  });
  it('where lessons are shown', () => {
    const lesson = meant === dateOf(today.starts) ? 'today' : 'next-week';
    expect(
      hearSaid(listen('Saturday'), { lessons, now, zone: denver, change: { more: null, fewer: null, along: null } }),
    ).toMatchObject({ lesson });
  });
});

it.each([
  ['is there a lesson today?', '2026-12-05'],
  ['is there a lesson on 5 December', '2026-12-05'],
  ['is there a lesson on Sunday', '2026-12-06'],
  ['is there a lesson next Saturday', '2026-12-12'],
  ['is there a lesson on Thursday', '2026-12-17'],
  ['is there a lesson this coming week on Thursday', '2026-12-17'],
  ['is there a lesson on Thursday the 10th', '2026-12-10'],
  ['本周四有课吗', '2026-12-10'],
])('%s means %s', (sentence, date) => {
  const now = denverAt('2026-12-05T20:00');
  expect(onMeantDay(hearWish(listen(sentence), now, denver), lessons, now).date).toBe(date);
});

it('a seat on a Thursday that is not the nearest is not taken without asking', () => {
  const now = denverAt('2026-12-05T20:00');
  const morning = denverAt('2026-12-05T09:00');
  const near = onMeantDay(hearWish(listen('a seat on Saturday'), morning, denver), lessons, morning);
  const later = onMeantDay(hearWish(listen('a seat on Thursday'), now, denver), lessons, now);
  expect(later).toMatchObject({ date: '2026-12-17', isLater: true });
  expect(isSureOf(thursday, later)).toBe(false);
  expect(isSureOf(today, near)).toBe(true);
});

it('a seat moved from today to Saturday is moved by a week', () => {
  const now = denverAt('2026-12-05T08:00');
  const swap = hearSwap(listen('can I move from today to Saturday?'), now, denver);
  expect(swap).toEqual({ from: '2026-12-05', to: '2026-12-05', byWeekday: true });
  expect(onMeantDay({ ...swap, date: swap?.to ?? '' }, [nextWeek], now).date).toBe('2026-12-12');
});
