/** A turn of phrase a shop adds to its data is heard, in either script and however it is written; what is left out of it is not. */
import { expect, it } from 'vitest';
import { readLessonCues } from '../../../src/content/cue-file.ts';
import { makeListen } from '../../../src/core/functions/listen.ts';
import { hearWish } from '../../../src/core/lessons/spoken/wish.ts';
import { denver, denverAt } from '../lessons/lesson-drafts.ts';

const cues = readLessonCues('data');
const here = makeListen(cues);
const there = makeListen({ ...cues, leave: ['(im|were) washed out', '要看店'] });

it.each([
  ['Sorry, I’m washed out on Saturday!', 'question', 'leave'],
  ["WE'RE  WASHED-OUT", 'question', 'leave'],
  ['星期六要看店', 'question', 'leave'],
  ['要看店，改天', 'question', 'leave'],
  ["I can't come on Saturday", 'leave', 'question'],
])('%s: here %s, there %s', (text, ...wants) => {
  expect([here, there].map((listen) => hearWish(listen(text), denverAt('2026-12-04T12:00'), denver).want)).toEqual(
    wants,
  );
});

it('hears a part of a sentence, and what is left of it', () => {
  const sentence = here("no thanks, I can't come");
  expect(sentence.without('declines').says('declines')).toBe(false);
  expect(sentence.without('declines').says('leave')).toBe(true);
  expect(sentence.part('no thanks').says('leave')).toBe(false);
});
