/** What the link of a lesson shows to a stranger. */
import { expect, test } from 'vitest';
import type { Roster, Turn } from '../../src/core/lessons/roster.ts';
import { enrol, leave } from '../../src/core/lessons/seats.ts';
import { labelPage } from '../../src/service/label-page.ts';
import { content } from '../the-content.ts';
import { denverAt, lessonWith } from '../core/lessons/lesson-drafts.ts';

const day = denverAt('2026-11-20T12:00');

const after = (turn: Turn): Roster => {
  if ('mistakes' in turn) throw new Error(turn.mistakes.map(({ code }) => code).join());
  return turn.roster;
};
const withSeat = (roster: Roster, id: string): Roster => after(enrol(roster, { id, person: id, seats: 1 }, day));

/** The one seat was given back, and is kept for ben. */
const offered = ((): Roster => {
  const full = ['ann', 'ben'].reduce(withSeat, { lesson: lessonWith({ seats: 1 }), bookings: [] });
  return after(leave(full, 'ann', day));
})();

test.each([
  ['taken', 'while it is kept for someone', day, /It is full/],
  [
    'free',
    'when the offer has ended, though nobody looked since',
    offered.bookings[1]?.offerUntil ?? 0,
    /One seat is free/,
  ],
])('the last seat shows as %s %s', (_, __, now, words) => {
  const shown = labelPage(content, { payload: 'lesson-white-evening', language: 'en', now, rosters: [offered] });
  expect(shown?.paragraphs.join('\n')).toMatch(words);
});
