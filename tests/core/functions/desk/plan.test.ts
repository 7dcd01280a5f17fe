import { describe, expect, it } from 'vitest';
import { instantOf } from '../../../../src/core/lessons/calendar.ts';
import { planned } from '../../lessons/heard-here.ts';

const zone = 'America/Denver';
const at = (wall: string) => instantOf(wall, zone);

describe('a sentence becomes a lesson', () => {
  it('of the usual length, in every language alike', () => {
    expect(planned('Saturday 7 pm, white tea, 8 seats', zone, at('2026-12-02T10:00'))).toMatchObject({
      problem: null,
      drafts: [
        {
          title: { en: 'white tea', 'zh-Hant': 'white tea', 'zh-Hans': 'white tea' },
          seats: 8,
          starts: '2026-12-05T19:00',
          minutes: 90,
          zone,
        },
      ],
    });
  });

  it.each([
    ['today 9 am, white tea, 8 seats', 'lesson-past', '2026-12-02T10:00'],
    ['2020-12-05 19:00, white tea, 8 seats', 'lesson-past', '2026-12-02T10:00'],
    ['Saturday 9 pm to 7 pm, white tea, 8 seats', 'lesson-ends-before-start', '2026-12-02T10:00'],
    ['14 March 2:30 am, white tea, 8 seats', 'lesson-hour-never', '2027-03-01T10:00'],
    ['7 November 1:30 am, white tea, 8 seats', 'lesson-hour-twice', '2027-11-01T10:00'],
    ['Saturday 7 pm, white tea, 0 seats', 'lesson-seats', '2026-12-02T10:00'],
    ['Saturday 7 pm, white tea, 10,000 seats', 'lesson-seats', '2026-12-02T10:00'],
    ['Saturday 7 pm, white tea, 2.5 seats', 'lesson-seats', '2026-12-02T10:00'],
    ['Saturday 7 pm, white tea, -8 seats', 'lesson-seats', '2026-12-02T10:00'],
    ['Saturday 7 pm in Mars/Base, white tea, 8 seats', 'lesson-zone-unknown', '2026-12-02T10:00'],
    ['Saturday 7 pm for 13 hours, white tea, 8 seats', 'lesson-minutes', '2026-12-02T10:00'],
    ['Saturday 7 pm for 0 minutes, white tea, 8 seats', 'lesson-minutes', '2026-12-02T10:00'],
    ['Saturday 7 pm, white tea', 'lesson-seats-missing', '2026-12-02T10:00'],
    ['Saturday 7 pm, 8 seats', 'lesson-title-missing', '2026-12-02T10:00'],
    ['Saturday, 0 seats', 'lesson-time-missing', '2026-12-02T10:00'],
    ['周六晚上七点，白茶，零个座位', 'lesson-seats', '2026-12-02T10:00'],
    ['週六晚上七點，白茶，一萬個座位', 'lesson-seats', '2026-12-02T10:00'],
    ['3月14日凌晨两点半，白茶，八人', 'lesson-hour-never', '2027-03-01T10:00'],
  ])('or tells what is wrong first: %s', (sentence, code, now) => {
    expect(planned(sentence, zone, at(now))).toMatchObject({ problem: { key: `mistake-${code}` } });
  });
});
