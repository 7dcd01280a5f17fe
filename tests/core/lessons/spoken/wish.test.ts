import { describe, expect, it, test } from 'vitest';
import { callsAnother } from '../../../../src/core/lessons/spoken/titles.ts';
import { hearWish, isAboutLessons, meantLessons, type Wanted } from '../../../../src/core/lessons/spoken/wish.ts';
import { denver, denverAt, lessonWith } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

/** A Friday. */
const friday = denverAt('2026-12-04T12:00');
const hear = (sentence: string) => hearWish(listen(sentence), friday, denver);

const titled = (id: string, en: string, han: string, starts: string) =>
  lessonWith({ id, title: { en, 'zh-Hant': han, 'zh-Hans': han }, starts });
const lessons = [
  { ...titled('cup-1', 'The first cup', '第一杯茶', '2026-12-05T10:30'), series: 'cup' },
  titled('gaiwan', 'An evening with the gaiwan', '盖碗之夜', '2026-12-10T18:30'),
  { ...titled('cup-2', 'The first cup', '第一杯茶', '2026-12-12T10:30'), series: 'cup' },
  titled('old', 'Old leaves: raw and ripe', '老茶：生普与熟普', '2026-12-12T15:00'),
];
const idsOf = (sentence: string): readonly string[] => meantLessons(lessons, hear(sentence)).map(({ id }) => id);

it.each<[string, Wanted, number | undefined]>([
  ["I'd like two seats on Saturday", 'enrol', 2],
  ['can I come on the 12th?', 'enrol', undefined],
  ['can my husband and I come to the first cup', 'enrol', undefined],
  ['put us on the list', 'enrol', undefined],
  ['12號可以來嗎？', 'enrol', undefined],
  ['我想來一杯烏龍', 'question', undefined],
  ['book a seat for the first cup', 'enrol', 1],
  ['sign me up for the gaiwan evening', 'enrol', undefined],
  ['put us down for 3 places', 'enrol', 3],
  ['我想報名第一杯茶，兩個人', 'enrol', 2],
  ['盖碗之夜我要订两个座位', 'enrol', 2],
  ['星期六那个我报一个', 'enrol', 1],
  ['蓋碗之夜我和我先生一起', 'enrol', undefined],
  ['which lessons are there?', 'list', undefined],
  ['do you have classes for beginners?', 'list', undefined],
  ['when is the next lesson', 'list', undefined],
  ['lessons', 'list', undefined],
  ['有哪些課？', 'list', undefined],
  ['星期六有什么课', 'list', undefined],
  ['when is my next lesson', 'own', undefined],
  ['my bookings', 'own', undefined],
  ['what have I booked?', 'own', undefined],
  ['what happened to my seats', 'own', undefined],
  ['is my seat still there', 'own', undefined],
  ['我的座位還在嗎', 'own', undefined],
  ['我报了什么课', 'own', undefined],
  ["I won't be able to make it on Saturday", 'leave', undefined],
  ["sorry, I can't join the first cup after all", 'leave', undefined],
  ['I am unable to attend', 'leave', undefined],
  ['我不能參加星期六的課', 'leave', undefined],
  ['週六參加唔到', 'leave', undefined],
  ['cancel my lesson', 'leave', undefined],
  ['I can’t make it on Saturday', 'leave', undefined],
  ['取消報名', 'leave', undefined],
  ['我来不了了', 'leave', undefined],
  ['我不去了', 'leave', undefined],
  ['报三个人', 'enrol', 3],
  ['is there anything for beginners on Saturday?', 'list', undefined],
  ['我想学泡茶', 'list', undefined],
  ['when does it begin?', 'detail', undefined],
  ['what should I bring', 'detail', undefined],
  ['who teaches it?', 'detail', undefined],
  ['幾點開始', 'detail', undefined],
  ['要带什么', 'detail', undefined],
  ['誰教', 'detail', undefined],
  ['when does the first cup start', 'detail', undefined],
  ['what does it cost', 'detail', undefined],
  ['昨天的课还能报吗', 'enrol', undefined],
  ['hi do you do tea classes', 'list', undefined],
  ["what's on in December", 'list', undefined],
  ["when's the next one", 'list', undefined],
  ['這週末有嗎', 'list', undefined],
  ['how late can I cancel?', 'detail', undefined],
  ['最晚什麼時候可以取消', 'detail', undefined],
  ['remind me the day before', 'remind', undefined],
  ['到时提醒我', 'remind', undefined],
  ["I'd like to come with my sister", 'enrol', undefined],
  ['星期六嗰堂我同我太太嚟', 'enrol', undefined],
  ['有咩堂上', 'list', undefined],
  ['仲有冇其他堂', 'list', undefined],
  ['我唔嚟得啦', 'leave', undefined],
  ['下一堂課', 'list', undefined],
  ['下一节课', 'list', undefined],
  ['can I bring my dog?', 'question', undefined],
  ['do you teach children?', 'question', undefined],
  ['is it warm upstairs?', 'question', undefined],
])('%s → %s', (sentence, want, seats) => {
  expect(hear(sentence)).toMatchObject({ want, ...(seats === undefined ? {} : { seats }) });
  expect(hear(sentence).seats).toBe(seats);
});

describe('which lesson is meant', () => {
  test.each<[string, readonly string[]]>([
    ['a seat in the first cup', ['cup-1']],
    ['the first cup on 12 December', ['cup-2']],
    ['two seats on Saturday', ['cup-1']],
    ['Saturday 12 December', ['cup-2', 'old']],
    ['old leaves', ['old']],
    ['the gaiwan one', ['gaiwan']],
    ['a class about gaiwans', ['gaiwan']],
    ['有沒有教盖碗的課', ['gaiwan']],
    ['the matcha one', ['cup-1', 'gaiwan', 'cup-2', 'old']],
    ['老茶', ['old']],
    ['盖碗之夜', ['gaiwan']],
    ['next Sunday', []],
    ['anything at all', lessons.map(({ id }) => id)],
  ])('%s → %j', (sentence, ids) => {
    expect(idsOf(sentence)).toEqual(ids);
  });
});

it.each<[string, boolean]>([
  ['4 seats for old leaves', true],
  ["I'd like two seats on Saturday", true],
  ['how long do old leaves keep?', false],
  ['can I steep old leaves again?', false],
  ['a table for two people', false],
  ['book a table for two people', false],
  ['可以预订老茶吗', false],
  ['cancel', false],
  ['me and my daughter for old leaves, 12 december', true],
  ['old leaves taste bitter since december', false],
  ['what about my bookings?', true],
  ['what lessons do you have?', true],
  ['盖碗之夜要带什么', true],
  ['what should I bring for the tea?', false],
  ['a tea for my evening', false],
])('%s: %s', (sentence, expected) => {
  expect(isAboutLessons(listen(sentence), lessons, friday)).toBe(expected);
});

it.each([
  ['book 2 seats on 30 February', 'lesson-date-unreadable'],
  ['book a seat on 12/5', 'lesson-date-unclear'],
  ['2月30號報名兩位', 'lesson-date-unreadable'],
  ['book a seat on Saturday', undefined],
])('%s: a day that cannot be is told', (sentence, code) => {
  expect(hear(sentence).dayWrong?.code).toBe(code);
});

it.each([
  ['is there anything for beginners?', 'beginner'],
  ['do you have advanced lessons', 'advanced'],
  ['有沒有進階的課', 'advanced'],
  ['有初学的课吗', 'beginner'],
  ['show me all lessons', undefined],
])('%s is for %s', (sentence, level) => {
  expect(hear(sentence).level).toBe(level);
});

it.each([
  ['book me into the gongfu workshop', true],
  ['put me down for the gaiwan night', false],
  ['sign me up for the next class', false],
  ["I'd like to join your beginners class", false],
  ['幫我報紫砂班', true],
  ['我想報名盖碗之夜', false],
  ['報個名，下一堂課', false],
  ['我想上初級班', false],
])('%s calls for a lesson that is none of these: %s', (sentence, isOther) => {
  expect(callsAnother(lessons, hear(sentence))).toBe(isOther);
});

describe('which weekday is asked for', () => {
  test.each<[string, number | undefined]>([
    ['which lessons on Sundays', 7],
    ['any classes on Thursdays in January?', 4],
    ['any lessons on Saturday afternoons?', 6],
    ['週日有課嗎', 7],
    ['星期六有什么课', 6],
    ['禮拜日有冇堂上', 7],
    // A single day.
    ['is there a lesson on Saturday?', undefined],
    ['下週六有課嗎', undefined],
    ['這個星期六有課嗎', undefined],
    ['two seats for Saturdays', undefined],
    ['星期六報兩個人', undefined],
  ])('%s', (text, weekday) => {
    const { weekday: heard, date } = hear(text);
    expect(heard).toBe(weekday);
    if (weekday !== undefined) expect(date).toBeUndefined();
  });
});
