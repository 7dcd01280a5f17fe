/** Who came to lessons that are over, as a shopkeeper asks for it. Said on Wednesday, December 9, 2026. */
import { describe, expect, it, test } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts, Json } from '../../../../src/core/flow/flow.ts';
import { deskAttendedCalls } from '../../../../src/core/functions/desk/attended.ts';
import { bookingWith, denver, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';
import { listen } from '../../lessons/heard-here.ts';

const names = ['Keong', 'Mei', 'Tessa'];
const title = (name: string) => ({ en: name, 'zh-Hant': name, 'zh-Hans': name });
const came = [true, null, false];
const bookings = names.map((name, n) => ({
  ...bookingWith({ id: String(n), person: String(n), seats: n + 1, came: came[n] ?? null }),
  reach: 'chat',
  name,
}));
const cup = { lesson: lessonWith({ id: 'cup', title: title('The first cup'), starts: '2026-12-05T10:30' }), bookings };
const old = { lesson: lessonWith({ id: 'old', title: title('Old leaves'), starts: '2026-12-03T19:00' }), bookings: [] };
const today = { lesson: lessonWith({ id: 'today', title: title('Green'), starts: '2026-12-09T19:00' }), bookings: [] };
const house = (more: Facts = {}): Facts =>
  ({
    keeper: true,
    doors: [today],
    past: [cup, old],
    names: names.map((name, n) => ({ booking: String(n), name })),
    ...more,
  }) as unknown as Facts;
const at = (facts = house()): Around => ({
  nowMs: denverAt('2026-12-09T10:00'),
  language: 'en',
  memory: {},
  house: facts,
});
const { deskAttended } = deskAttendedCalls({ listen, zone: denver });

function told(text: string, around = at()): Facts {
  const outcome = deskAttended({ text }, around);
  if (!('gives' in outcome)) throw new Error(outcome.wrong);
  return outcome.gives as Facts;
}
const lines = ({ told: phrases }: Facts): readonly string[] =>
  (phrases as readonly { key: string; values: { name?: string; state?: string; title: { en: string } } }[]).map(
    ({ key, values }) =>
      [key.replace('desk-told-attended', ''), values.name ?? values.title.en, values.state]
        .filter((one) => one !== undefined && one !== '')
        .join(' '),
  );

describe('who came', () => {
  it.each<[string, readonly string[]]>([
    ['who came on Saturday?', ['The first cup', '-line Keong here', '-line Mei unsaid']],
    ['who was missing on Saturday?', ['The first cup', '-line Tessa away', '-line Mei unsaid']],
    ['星期六誰沒來', ['The first cup', '-line Tessa away', '-line Mei unsaid']],
    ['周六来了哪些人', ['The first cup', '-line Keong here', '-line Mei unsaid']],
    ['how was the attendance', ['The first cup', '-line Keong here', '-line Tessa away', '-line Mei unsaid']],
    ['how many came to old leaves', ['Old leaves']],
    ['did Tessa come on Saturday', ['-one Tessa away']],
    ['Mei星期六有來嗎', ['-one Mei unsaid']],
    ['who came last week', ['Old leaves', 'The first cup', '-line Keong here', '-line Mei unsaid']],
  ])('%s', (text, expected) => {
    expect(lines(told(text))).toEqual(expected);
  });

  test('is counted in seats', () => {
    const [head] = told('who came on Saturday?')['told'] as readonly { values: Facts }[];
    expect(head?.values).toMatchObject({ booked: 3, here: 1, away: 3, unsaid: 2 });
  });

  test('is ticked off afterwards only where the lesson is still on the list', () => {
    expect(told('who came on Saturday?')['lesson']).toBeNull();
    const around = at(house({ doors: [cup, today] as unknown as Json, past: [] }));
    expect(told('who came on Saturday?', around)['lesson']).toBe('cup');
  });

  test('a day without a lesson, and a house without any', () => {
    expect(told('who came on Sunday?')).toMatchObject({ isNothing: true, isNever: false });
    expect(told('who came?', at(house({ past: [] })))).toMatchObject({ isNothing: true, isNever: true });
  });
});
