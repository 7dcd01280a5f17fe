import { describe, expect, it } from 'vitest';
import { instantOf } from '../../../../src/core/lessons/calendar.ts';
import { hearLesson } from '../../../../src/core/lessons/spoken/spoken.ts';
import { listen } from '../heard-here.ts';

const zone = 'America/Denver';
/** A Wednesday. */
const now = instantOf('2026-12-02T10:00', zone);
const hear = (sentence: string) => hearLesson(listen(sentence), now, zone);
const codes = (sentence: string) => hear(sentence).mistakes.map((one) => one.code);

describe('more days than one', () => {
  it.each<[string, string, string[]]>([
    ['first cup on the 20th and the 27th at 10 am, 8 seats', '2026-12-20T10:00', ['2026-12-27']],
    ['white tea on the 20th, 27th and 30th at 10 am', '2026-12-20T10:00', ['2026-12-27', '2026-12-30']],
    ['white tea on Saturday and Sunday at 7 pm', '2026-12-05T19:00', ['2026-12-06']],
    ['白茶，20號和27號早上十點', '2026-12-20T10:00', ['2026-12-27']],
  ])('%s', (sentence, starts, also) => {
    const { said } = hear(sentence);
    expect(said).toMatchObject({ starts, also });
    expect(said.title ?? '').not.toMatch(/\d|and|和/);
  });

  it.each(['Saturday 7 pm, white tea and cake', 'every Saturday at 7 pm, white tea'])('not: %s', (sentence) => {
    expect(hear(sentence).said.also).toBeUndefined();
  });
});

describe('a sentence that says everything', () => {
  it.each([
    ['Saturday 7 pm, white tea, 8 seats', '2026-12-05T19:00', undefined, 8, 'white tea'],
    ['the 9th at 7 pm, white tea, 8 seats', '2026-12-09T19:00', undefined, 8, 'white tea'],
    ['white tea on the 1st, 7 pm', '2027-01-01T19:00', undefined, undefined, 'white tea'],
    ['9號晚上七點，白茶，八個座位', '2026-12-09T19:00', undefined, 8, '白茶'],
    ['the 2nd infusion, Saturday 7 pm', '2026-12-05T19:00', undefined, undefined, '2nd infusion'],
    ['Saturday 7:30 pm, white tea', '2026-12-05T19:30', undefined, undefined, 'white tea'],
    ['Saturday half past seven pm, white tea', '2026-12-05T19:30', undefined, undefined, 'white tea'],
    ['Saturday at a quarter to 8 pm, white tea', '2026-12-05T19:45', undefined, undefined, 'white tea'],
    ['Saturday, quarter past 7 in the evening, white tea', '2026-12-05T19:15', undefined, undefined, 'white tea'],
    ['Half a white tea, Saturday 7 pm', '2026-12-05T19:00', undefined, undefined, 'Half a white tea'],
    ['White tea, Saturday 7 pm, max 6 people', '2026-12-05T19:00', undefined, 6, 'White tea'],
    ['周六晚上七点 白茶 限8人', '2026-12-05T19:00', undefined, 8, '白茶'],
    ['Saturday 2:30-4 pm, white tea', '2026-12-05T14:30', 90, undefined, 'white tea'],
    ['Saturday 7:30 - 9:00 pm, white tea', '2026-12-05T19:30', 90, undefined, 'white tea'],
    ['周六晚上7:30，白茶', '2026-12-05T19:30', undefined, undefined, '白茶'],
    ['周六晚上7:30-9:00，白茶', '2026-12-05T19:30', 90, undefined, '白茶'],
    ['周六 19:30-21:00 白茶', '2026-12-05T19:30', 90, undefined, '白茶'],
    ['saturday 7pm white tea 8 seats', '2026-12-05T19:00', undefined, 8, 'white tea'],
    ['White tea on Saturday at 7 pm for 8 people', '2026-12-05T19:00', undefined, 8, 'White tea'],
    ['Sat 19:00, white tea, 8 seats', '2026-12-05T19:00', undefined, 8, 'white tea'],
    ['Sun-dried white tea, Sat 7 pm, 8 seats', '2026-12-05T19:00', undefined, 8, 'Sun-dried white tea'],
    ['Gongfu basics, Saturday 7 to 9 pm, eight seats', '2026-12-05T19:00', 120, 8, 'Gongfu basics'],
    ['Gongfu basics, Saturday 19:00-20:30, 8 places', '2026-12-05T19:00', 90, 8, 'Gongfu basics'],
    ['Saturday 11 to 1 pm, white tea, 8 seats', '2026-12-05T11:00', 120, 8, 'white tea'],
    ['Saturday 10-noon, white tea', '2026-12-05T10:00', 120, undefined, 'white tea'],
    ['Saturday from 11 am until 1, white tea', '2026-12-05T11:00', 120, undefined, 'white tea'],
    ['Saturday 10:00 to 1:00, white tea', '2026-12-05T10:00', 180, undefined, 'white tea'],
    ['tomorrow at 7.30 p.m., oolong', '2026-12-03T19:30', undefined, undefined, 'oolong'],
    ['oolong, the day after tomorrow, noon', '2026-12-04T12:00', undefined, undefined, 'oolong'],
    ['oolong tonight at 7, 6 seats, 2 hours', '2026-12-02T19:00', 120, 6, 'oolong'],
    ['oolong, Saturday evening at 7', '2026-12-05T19:00', undefined, undefined, 'oolong'],
    ['oolong, Saturday, 7 in the evening', '2026-12-05T19:00', undefined, undefined, 'oolong'],
    ['oolong, Saturday, seven pm', '2026-12-05T19:00', undefined, undefined, 'oolong'],
    ['oolong, Saturday at 10', '2026-12-05T10:00', undefined, undefined, 'oolong'],
    ["oolong, Saturday 10 o'clock", '2026-12-05T10:00', undefined, undefined, 'oolong'],
    // Past days are understood as well, so that they can be refused.
    ['oolong, yesterday 7 pm', '2026-12-01T19:00', undefined, undefined, 'oolong'],
    ['oolong, the day before yesterday at 10', '2026-11-30T10:00', undefined, undefined, 'oolong'],
    ['last Friday 7 pm, oolong', '2026-11-27T19:00', undefined, undefined, 'oolong'],
    ['last Tuesday 7 pm, oolong', '2026-12-01T19:00', undefined, undefined, 'oolong'],
    ['昨天晚上七点，白茶', '2026-12-01T19:00', undefined, undefined, '白茶'],
    ['前天晚上七點，白茶', '2026-11-30T19:00', undefined, undefined, '白茶'],
    ['上週五晚上七點，白茶', '2026-11-27T19:00', undefined, undefined, '白茶'],
    ['周六晚上七点，白茶，一万二千位', '2026-12-05T19:00', undefined, 12_000, '白茶'],
    ['oolong, today 07:30', '2026-12-02T07:30', undefined, undefined, 'oolong'],
    ['5 December 7 pm, oolong, 12 guests', '2026-12-05T19:00', undefined, 12, 'oolong'],
    ['oolong, December 5th, 2026, 7 pm, 12 guests', '2026-12-05T19:00', undefined, 12, 'oolong'],
    ['oolong, 2026-12-05 19:00, 12 guests', '2026-12-05T19:00', undefined, 12, 'oolong'],
    ['oolong 2026-12-05T19:00', '2026-12-05T19:00', undefined, undefined, 'oolong'],
    ['oolong, 5.12.2026, 19.00', '2026-12-05T19:00', undefined, undefined, 'oolong'],
    ['oolong, 12/13, 7 pm', '2026-12-13T19:00', undefined, undefined, 'oolong'],
    ['oolong, 3 January, 7 pm', '2027-01-03T19:00', undefined, undefined, 'oolong'],
    ['oolong, 29 February, 7 pm', '2028-02-29T19:00', undefined, undefined, 'oolong'],
    ['oolong, next Saturday, 7 pm', '2026-12-12T19:00', undefined, undefined, 'oolong'],
    ['oolong, Wednesday, 9 am', '2026-12-09T09:00', undefined, undefined, 'oolong'],
    ['oolong, Wednesday, 11 am', '2026-12-02T11:00', undefined, undefined, 'oolong'],
    ['oolong, Saturday 7 pm, an hour and a half, 8 seats', '2026-12-05T19:00', 90, 8, 'oolong'],
    ['oolong, Saturday 7 pm, 1.5 hours, 8 seats', '2026-12-05T19:00', 90, 8, 'oolong'],
    ['oolong, Saturday 7 pm for 1 hour 15 minutes, 8 seats', '2026-12-05T19:00', 75, 8, 'oolong'],
    ['oolong, Saturday 7 pm for 75 min', '2026-12-05T19:00', 75, undefined, 'oolong'],
    ['Add a lesson on white tea, Saturday 7 pm, 8 seats', '2026-12-05T19:00', undefined, 8, 'white tea'],
    [
      'Green/White tea side by side, Saturday 7 pm',
      '2026-12-05T19:00',
      undefined,
      undefined,
      'Green/White tea side by side',
    ],
    ['星期六晚上七點，白茶，8個座位', '2026-12-05T19:00', undefined, 8, '白茶'],
    ['周六晚上七点，白茶，八个座位', '2026-12-05T19:00', undefined, 8, '白茶'],
    ['週六晚七點半，白茶，八位', '2026-12-05T19:30', undefined, 8, '白茶'],
    ['周六晚上7点到9点，功夫茶入门，十二人', '2026-12-05T19:00', 120, 12, '功夫茶入门'],
    ['周六下午两点半到四点，功夫茶入门', '2026-12-05T14:30', 90, undefined, '功夫茶入门'],
    ['周六上午十一点到下午一点，功夫茶入门', '2026-12-05T11:00', 120, undefined, '功夫茶入门'],
    ['周六１９：００，白茶，８人', '2026-12-05T19:00', undefined, 8, '白茶'],
    ['下週六晚上七點，白茶，8位', '2026-12-12T19:00', undefined, 8, '白茶'],
    ['明天下午三點一刻 烏龍茶 6人 一個半小時', '2026-12-03T15:15', 90, 6, '烏龍茶'],
    ['后天十九点，乌龙茶，两小时', '2026-12-04T19:00', 120, undefined, '乌龙茶'],
    ['今晚七点乌龙茶', '2026-12-02T19:00', undefined, undefined, '乌龙茶'],
    ['12月5日晚上7点，白茶，8个名额，90分钟', '2026-12-05T19:00', 90, 8, '白茶'],
    ['十二月五號晚上七點，白茶', '2026-12-05T19:00', undefined, undefined, '白茶'],
    ['2026年12月5日19:00 白茶', '2026-12-05T19:00', undefined, undefined, '白茶'],
    ['12/5 晚上7点 白茶', '2026-12-05T19:00', undefined, undefined, '白茶'],
    ['加课：白茶，周六中午十二点', '2026-12-05T12:00', undefined, undefined, '白茶'],
  ])('%s', (sentence, starts, minutes, seats, title) => {
    const heard = hear(sentence);
    expect(heard.mistakes).toEqual([]);
    expect(heard.said).toEqual(
      JSON.parse(JSON.stringify({ title, starts, minutes, seats, zone: undefined })) as object,
    );
  });

  it.each([
    ['every Saturday 7 pm, white tea, 8 seats, 6 times', { every: 'week', step: 1, times: 6 }],
    ['every other Saturday 7 pm, white tea, 8 seats', { every: 'week', step: 2 }],
    ['每周六晚上七点，白茶，八人，共六次', { every: 'week', step: 1, times: 6 }],
    ['隔週六晚上七點，白茶，八人', { every: 'week', step: 2 }],
  ])('repeats: %s', (sentence, repeats) => {
    expect(hear(sentence)).toMatchObject({ said: { starts: '2026-12-05T19:00', seats: 8, repeats }, mistakes: [] });
  });

  it.each([
    ['8 people, next Friday evening at half past six, oolong, 90 minutes, 25 euro', 'oolong', '25 euro'],
    ['next Friday 6:30 pm oolong for €25 8 seats', 'oolong', '€25'],
    ['next Friday 6:30 pm: puer, 8 places, $30 a person', 'puer', '$30 a person'],
    ['max 8, dark tea, next Friday 6:30 pm, 20 dollars each', 'dark tea', '20 dollars each'],
    ['下周五晚上六点半，乌龙，八个人，九十分钟，二十五欧元', '乌龙', '二十五欧元'],
    ['八個人，下週五晚上六點半，烏龍，每位300元', '烏龍', '每位300元'],
    ['八个人 下周五晚上六点半 乌龙 每位30', '乌龙', '每位30'],
    ['下週五晚上六點半，烏龍，8位，NT$300', '烏龍', 'NT$300'],
  ])('keeps the price out of the title: %s', (sentence, title, price) => {
    const { said } = hear(sentence);
    expect({ ...said, price: said.price }).toMatchObject({ title, price, seats: 8, starts: '2026-12-11T18:30' });
  });

  it.each([
    ['Saturday 7 pm, advanced, puer, 8 seats', 'puer', 'advanced'],
    ['Saturday 7 pm, puer, for beginners, 8 seats', 'puer', 'beginner'],
    ['周六晚上七点，进阶，普洱，八人', '普洱', 'advanced'],
    ['週六晚上七點，普洱，八人，入門', '普洱', 'beginner'],
    ['Saturday 7 pm, advanced puer, 8 seats', 'advanced puer', undefined],
  ])('keeps for whom it is out of the title: %s', (sentence, title, level) => {
    const { said } = hear(sentence);
    expect([said.title, said.level, said.seats]).toEqual([title, level, 8]);
  });

  it.each<[string, string, { teacher?: string; price?: string; seats?: number; minutes?: number }]>([
    [
      'gongfu evening with Mei Lin, Saturday 7 pm, free, for 8',
      'gongfu evening',
      { teacher: 'Mei Lin', price: 'free', seats: 8 },
    ],
    ['Saturday 7 pm, white tea, with Odalys, for eight', 'white tea', { teacher: 'Odalys', seats: 8 }],
    ['white tea Saturday 7 pm for 6', 'white tea', { seats: 6 }],
    ['white tea, Saturday 7 pm for 2 hours, for 6', 'white tea', { seats: 6, minutes: 120 }],
    ['oolong with Green Tea Cake, Saturday 7 pm', 'oolong with Green Tea Cake', {}],
    ['oolong with milk, Saturday 7 pm, 3 free seats', 'oolong with milk', { seats: 3 }],
    ['free pouring, Saturday 7 pm', 'free pouring', {}],
    [
      '週六晚上七點，功夫茶之夜，林美老師帶，免費，八位',
      '功夫茶之夜',
      { teacher: '林美老師', price: '免費', seats: 8 },
    ],
    ['周六晚上七点，白茶，由王芳授课，不收费，八人', '白茶', { teacher: '王芳', price: '不收费', seats: 8 }],
  ])('keeps who teaches, and that it is free, out of the title: %s', (sentence, title, others) => {
    expect(hear(sentence).said).toEqual({ title, starts: '2026-12-05T19:00', ...others });
  });

  it('reads a zone, and the day as it is there', () => {
    const late = instantOf('2026-12-02T23:00', zone);
    const heard = hearLesson(listen('tomorrow 7 pm in Asia/Taipei, oolong'), late, zone);
    expect(heard).toEqual({ said: { title: 'oolong', starts: '2026-12-04T19:00', zone: 'Asia/Taipei' }, mistakes: [] });
  });
});

describe('a sentence that is wrong or unclear', () => {
  it.each([
    ['Saturday at 7, white tea, 8 seats', ['lesson-hour-unclear']],
    ['Saturday at half past seven, white tea, 8 seats', ['lesson-hour-unclear']],
    ['周六七点，白茶', ['lesson-hour-unclear']],
    ['white tea, 8 seats', ['lesson-day-missing', 'lesson-time-missing']],
    ['Saturday, white tea, 8 seats', ['lesson-time-missing']],
    ['7 pm, white tea', ['lesson-day-missing']],
    ['Saturday 9 pm to 7 pm, white tea', ['lesson-ends-before-start']],
    ['Saturday 19:00-18:00, white tea', ['lesson-ends-before-start']],
    ['Saturday 10-12 am, white tea', ['lesson-ends-before-start']],
    ['Saturday 7 pm to 7 pm, white tea', ['lesson-ends-before-start']],
    ['周六晚上九点到下午七点，白茶', ['lesson-ends-before-start']],
    ['30 February 7 pm, white tea', ['lesson-date-unreadable']],
    ['2月30日晚上七点，白茶', ['lesson-date-unreadable']],
    ['2026-13-01 19:00, white tea', ['lesson-date-unreadable']],
    ['5/12, 7 pm, white tea', ['lesson-date-unclear']],
    ['Saturday 6 December 7 pm, white tea', ['lesson-weekday-differs']],
    ['Saturday 25:00, white tea', ['lesson-time-unreadable']],
    ['Saturday 19:75, white tea', ['lesson-time-unreadable']],
    ['Saturday 7 pm in Mars/Base, white tea', ['lesson-zone-unknown']],
    ['', ['lesson-day-missing', 'lesson-time-missing']],
  ])('%s', (sentence, expected) => {
    expect(codes(sentence)).toEqual(expected);
  });

  it('reads as much of anything as it takes without delay, and refuses more', () => {
    for (const piece of [
      '7 pm ',
      '7',
      '十',
      '一月',
      'Saturday ',
      ' ',
      '1,000',
      '19:',
      'a b ',
      '2026-',
      '周',
      'an hour and ',
      'A/',
    ]) {
      const started = performance.now();
      hear(piece.repeat(Math.floor(400 / piece.length)));
      expect(performance.now() - started, piece).toBeLessThan(1000);
    }
    expect(codes('7 pm '.repeat(1000))).toEqual(['lesson-sentence-too-long']);
  });

  it('never throws, whatever is said', () => {
    const pieces = [
      'Saturday',
      '7',
      'pm',
      ':',
      '/',
      '-',
      'to',
      '八',
      '点',
      '半',
      '.',
      ',',
      '99999999999',
      '周',
      '月',
      '31',
      '0',
      'seats',
      '人',
      'Asia/',
      '\u241F',
      '🍵',
    ];
    for (let seed = 0; seed < 3000; seed++) {
      const sentence = Array.from(
        { length: 1 + (seed % 9) },
        (_, n) => pieces[(seed * 7 + n * n * 13 + n * seed) % pieces.length],
      ).join(seed % 2 ? ' ' : '');
      expect(() => hear(sentence), sentence).not.toThrow();
    }
  });
});
