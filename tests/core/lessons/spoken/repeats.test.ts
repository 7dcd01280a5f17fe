/** How often a lesson comes again, as shopkeepers say it, in three languages. Said on Wednesday, December 2, 2026. */
import { describe, expect, test } from 'vitest';
import { instantOf } from '../../../../src/core/lessons/calendar.ts';
import { occurrences } from '../../../../src/core/lessons/recurrence.ts';
import { hearLesson } from '../../../../src/core/lessons/spoken/spoken.ts';
import { listen } from '../heard-here.ts';

const zone = 'America/Denver';
const now = instantOf('2026-12-02T10:00', zone);
const hear = (text: string): ReturnType<typeof hearLesson> => hearLesson(listen(text), now, zone);
const weekly = { every: 'week', step: 1 };
const fortnightly = { every: 'week', step: 2 };
const monthly = { every: 'month', step: 1 };
const byWeekday = { ...monthly, keep: 'weekday' };

describe('a lesson that repeats', () => {
  test.each([
    ['puer on the first Saturday of each month at 3pm, 8 seats', 'puer', '2026-12-05T15:00', byWeekday],
    ['every first Saturday, 3pm, puer, 8 seats', 'puer', '2026-12-05T15:00', byWeekday],
    ['white tea, every second Thursday of the month at 18:30', 'white tea', '2026-12-10T18:30', byWeekday],
    ['white tea every second Thursday 18:30', 'white tea', '2026-12-03T18:30', fortnightly],
    ['last Sunday of every month, 2pm, cold brew', 'cold brew', '2026-12-27T14:00', { ...monthly, keep: 'last' }],
    ['the first Wednesday of every month at 9am, dawn tea', 'dawn tea', '2027-01-06T09:00', byWeekday],
    ['green tea on the 15th of every month, 5pm', 'green tea', '2026-12-15T17:00', { ...monthly, keep: 'date' }],
    ['tea and cake monthly from 15 December 3pm', 'tea and cake', '2026-12-15T15:00', monthly],
    ['first Saturday of each month from February, 10am, oolong', 'oolong', '2027-02-06T10:00', byWeekday],
    [
      'matcha workshop every other Friday 6pm, six times',
      'matcha workshop',
      '2026-12-04T18:00',
      { ...fortnightly, times: 6 },
    ],
    [
      'gaiwan basics, 4 Sundays in a row from 13 December, 11am',
      'gaiwan basics',
      '2026-12-13T11:00',
      { ...weekly, times: 4 },
    ],
    ['Saturdays at 10 am, tasting', 'tasting', '2026-12-05T10:00', weekly],
    [
      'every Tuesday 7pm until the end of January, oolong evening',
      'oolong evening',
      '2026-12-08T19:00',
      { ...weekly, until: '2027-01-31' },
    ],
    [
      'each Monday at 19:00 until 15 March, clay pots',
      'clay pots',
      '2026-12-07T19:00',
      { ...weekly, until: '2027-03-15' },
    ],
    [
      'every Saturday 2pm for six weeks except 26 December, tasting',
      'tasting',
      '2026-12-05T14:00',
      { ...weekly, times: 6, except: ['2026-12-26'] },
    ],
    [
      'every three weeks from Friday 11 December at 18:00, sencha',
      'sencha',
      '2026-12-11T18:00',
      { every: 'week', step: 3 },
    ],
    ['fortnightly, Friday 11 December 7 pm, sencha', 'sencha', '2026-12-11T19:00', fortnightly],
    ['每個月第一個星期六下午三點，普洱入門', '普洱入門', '2026-12-05T15:00', byWeekday],
    ['每月第二个周四晚上六点半，白茶', '白茶', '2026-12-10T18:30', byWeekday],
    ['每月最後一個星期日下午兩點，冷泡', '冷泡', '2026-12-27T14:00', { ...monthly, keep: 'last' }],
    ['每月15號下午五點，綠茶', '綠茶', '2026-12-15T17:00', { ...monthly, keep: 'date' }],
    ['tea basics, Wednesdays 7pm till Christmas', 'tea basics', '2026-12-02T19:00', { ...weekly, until: '2026-12-24' }],
    [
      'tea basics every Wednesday 7pm before Chinese New Year',
      'tea basics',
      '2026-12-02T19:00',
      { ...weekly, until: '2027-02-05' },
    ],
    [
      'tea basics every Wednesday in January at 7 pm',
      'tea basics',
      '2027-01-06T19:00',
      { ...weekly, until: '2027-01-31' },
    ],
    ['in January and February, Fridays 6pm, sencha', 'sencha', '2027-01-01T18:00', { ...weekly, until: '2027-02-28' }],
    [
      'sencha every other Friday next month, 6pm',
      'sencha',
      '2027-01-01T18:00',
      { ...fortnightly, until: '2027-01-31' },
    ],
    [
      'sencha every Friday 6pm from January until Easter',
      'sencha',
      '2027-01-01T18:00',
      { ...weekly, until: '2027-03-27' },
    ],
    [
      'sencha every Friday 6pm until the end of the month',
      'sencha',
      '2026-12-04T18:00',
      { ...weekly, until: '2026-12-31' },
    ],
    ['announce a sencha night every Friday 6pm', 'sencha night', '2026-12-04T18:00', weekly],
    ['sencha every Friday 6pm for two months', 'sencha', '2026-12-04T18:00', { ...weekly, until: '2027-02-03' }],
    [
      'sencha every other Friday 6pm for six weeks',
      'sencha',
      '2026-12-04T18:00',
      { ...fortnightly, until: '2027-01-14' },
    ],
    ['茶藝入門，每週三晚上七點，到過年為止', '茶藝入門', '2026-12-02T19:00', { ...weekly, until: '2027-02-05' }],
    ['茶艺入门，每周三晚上七点，到春节前', '茶艺入门', '2026-12-02T19:00', { ...weekly, until: '2027-02-05' }],
    ['茶藝入門，一月每個星期三晚上7點', '茶藝入門', '2027-01-06T19:00', { ...weekly, until: '2027-01-31' }],
    ['下個月逢星期五晚上六點，煎茶', '煎茶', '2027-01-01T18:00', { ...weekly, until: '2027-01-31' }],
    ['一月到三月每週五晚上六點，煎茶', '煎茶', '2027-01-01T18:00', { ...weekly, until: '2027-03-31' }],
    ['煎茶，每周五晚上六点，圣诞节前', '煎茶', '2026-12-04T18:00', { ...weekly, until: '2026-12-24' }],
    ['煎茶，逢星期五晚上六點，開到月底', '煎茶', '2026-12-04T18:00', { ...weekly, until: '2026-12-31' }],
    ['煎茶，每週五晚上六點，連開兩個月', '煎茶', '2026-12-04T18:00', { ...weekly, until: '2027-02-03' }],
    ['從一月起每週五晚上六點，煎茶', '煎茶', '2027-01-01T18:00', weekly],
    ['從二月起每個月第一個星期六早上十點，烏龍', '烏龍', '2027-02-06T10:00', byWeekday],
    ['每隔一周的周五晚上七点，抹茶，共六次', '抹茶', '2026-12-04T19:00', { ...fortnightly, times: 6 }],
    ['隔週五晚上七點，抹茶', '抹茶', '2026-12-04T19:00', fortnightly],
    ['每两周周五晚上七点，抹茶', '抹茶', '2026-12-04T19:00', fortnightly],
    ['逢星期六早上十點，試茶', '試茶', '2026-12-05T10:00', weekly],
    ['每週二晚上七點到一月底，烏龍之夜', '烏龍之夜', '2026-12-08T19:00', { ...weekly, until: '2027-01-31' }],
    [
      '每周六下午两点，共六堂，除了12月26日，品茶',
      '品茶',
      '2026-12-05T14:00',
      { ...weekly, times: 6, except: ['2026-12-26'] },
    ],
    ['Wuyi rocks, once a month on a Saturday, 2pm, starting 9 January', 'Wuyi rocks', '2027-01-09T14:00', monthly],
    ['一月起每個月第一個星期六下午兩點，紫砂壺', '紫砂壺', '2027-01-02T14:00', byWeekday],
    ['逢每月第二個禮拜日下午四點，茶同鬆餅', '茶同鬆餅', '2026-12-13T16:00', byWeekday],
    ['12月11日晚上七點，每月一次，生熟普洱', '生熟普洱', '2026-12-11T19:00', monthly],
  ])('%s', (text, title, starts, repeats) => {
    expect(hear(text)).toMatchObject({ said: { title, starts, repeats }, mistakes: [] });
    expect(hear(text).said.repeats).toEqual(repeats);
  });

  test.each([
    'Saturday 7 pm, first steps with a gaiwan, 8 seats',
    'Friday 11 December, 7 to 9 pm, tea of the month, 6 seats',
    'Saturday 10 am, the second flush, 5 seats',
    'white tea tomorrow from 7 until 9 pm, 6 seats',
    '週六晚上七點到九點，第一杯茶，八個位子',
    '12月11日晚上七點，三月的茶，6人',
    '周日下午两点，月光白，六个座位',
  ])('is not what is heard in "%s"', (text) => {
    expect(hear(text).said.repeats).toBeUndefined();
    expect(hear(text).said.starts).toBeDefined();
  });
});

test('the last Sunday stays the last, in months of four and of five', () => {
  const dates = occurrences('2026-11-29T14:00', { every: 'month', step: 1, keep: 'last', times: 5 }, '2028-01-01');
  expect(dates.map((one) => one.slice(0, 10))).toEqual([
    '2026-11-29',
    '2026-12-27',
    '2027-01-31',
    '2027-02-28',
    '2027-03-28',
  ]);
});
