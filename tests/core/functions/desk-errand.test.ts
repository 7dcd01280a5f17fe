import { expect, it } from 'vitest';
import type { Around } from '../../../src/core/flow/book.ts';
import type { Facts } from '../../../src/core/flow/flow.ts';
import { errandOf } from '../../../src/core/functions/desk-errand.ts';
import { denver, denverAt, lessonWith } from '../lessons/lesson-drafts.ts';
import { listen } from '../lessons/heard-here.ts';

const title = { en: 'Old leaves', 'zh-Hant': '老茶之夜', 'zh-Hans': '老茶之夜' };
const doors = [{ lesson: lessonWith({ id: 'old', title, starts: '2026-12-05T19:00' }), bookings: [] }];
const around = (keeper: boolean): Around => ({
  nowMs: denverAt('2026-12-02T10:00'),
  language: 'en',
  memory: {},
  house: { keeper, doors } as unknown as Facts,
});

it.each<[string, string | null, string | null]>([
  ['who is coming to old leaves?', 'people', 'old'],
  ['who is coming on Saturday?', 'people', 'old'],
  ['move old leaves to Sunday 6 pm', 'move', 'old'],
  ['please cancel old leaves', 'cancel', 'old'],
  ['write to everyone in old leaves', 'write', 'old'],
  ['老茶之夜誰會來', 'people', 'old'],
  ['老茶之夜改到星期日晚上六点', 'move', 'old'],
  ['取消老茶之夜', 'cancel', 'old'],
  ['通知老茶之夜的学员', 'write', 'old'],
  ['who is coming?', 'people', null],
  ['anyone signed up for Saturday?', 'show', 'old'],
  ['周六有人报名吗', 'show', 'old'],
  ['现在几个人了', 'show', null],
  ['is there anything for me to do', 'questions', null],
  ['有什么问题没回', 'questions', null],
  ["what's waiting for me?", 'questions', null],
  ['answer the first one', 'questions', null],
  ['有咩要回？', 'questions', null],
  ['先回第一个', 'questions', null],
  ["any messages that didn't go through?", 'undelivered', null],
  ['有沒有沒送到的訊息？', 'undelivered', null],
  ['note: Tessa is allergic to nuts', 'note', null],
  ['记一下：泰莎对坚果过敏', 'note', null],
  ['old leaves on Saturday has to be cancelled', 'cancel', 'old'],
  ['星期六的老茶之夜要取消', 'cancel', 'old'],
  ['cancel all Saturday lessons', 'call-off', 'old'],
  ['the Saturday lessons stop after Christmas', 'call-off', 'old'],
  ["call off all of the beginners' evenings", 'call-off', null],
  ['old leaves stops after Christmas', 'call-off', 'old'],
  ['no more old leaves lessons after January', 'call-off', 'old'],
  ['the last old leaves lesson is on 19 December', 'call-off', 'old'],
  ['we are closed from 24 to 27 December', 'call-off', null],
  ['no lessons next week', 'call-off', null],
  ['cancel all my lessons next week', 'call-off', null],
  ['整個系列取消', 'call-off', null],
  ['聖誕節後星期六的課都不開了', 'call-off', 'old'],
  ['圣诞节后周六的课都不开了', 'call-off', 'old'],
  ['聖誕節後老茶之夜不開了', 'call-off', 'old'],
  ['最後一堂老茶之夜是12月19日', 'call-off', 'old'],
  ['下週沒有課', 'call-off', null],
  ['12月24日到26日休館', 'call-off', null],
  ['逢星期四的課唔開喇', 'call-off', null],
  // One lesson, a question, a wish of theirs, a letter, a lesson to plan.
  ['cancel the lesson on Saturday', 'cancel', 'old'],
  ['取消星期六的課', 'cancel', 'old'],
  ['are we closed on Saturday?', null, null],
  ['is there no lesson next week?', null, null],
  ['下週沒有課嗎', null, null],
  ['cancel all bookings', 'cancel', null],
  ['tell everyone in old leaves: no lessons next week', 'write', 'old'],
  ['the last lesson was lovely', null, null],
  ['the sale ends on Friday', null, null],
  ['white tea on Saturdays until Christmas, 7 pm, 8 seats', null, null],
  ['push old leaves to 7:30', 'move', 'old'],
  ['push old leaves back half an hour', 'move', 'old'],
  ['correct my last answer', 'correct', null],
  ['剛才答錯了', 'correct', null],
  ['repeat it every month', 'repeat', null],
  ['每月重複一次', 'repeat', null],
  ['repeat old leaves on the first Saturday of each month', 'repeat', 'old'],
  ['how many people are coming this week', 'show', null],
  ['我想排一堂課', 'add', null],
  ['plan a kids class', 'add', null],
  ['開一堂親子泡茶課', 'add', null],
  ['add two seats', 'seats', null],
  ['make it 10 seats', 'seats', null],
  ['這堂改成12位', 'seats', null],
  ['帮王阿姨加两个位子到周六', 'guest', 'old'],
  ['change the price to 20 dollars', 'alter', null],
  ['let Bram teach it', 'alter', null],
  ['Let Bram teach it', 'alter', null],
  ['Put Rosa down for old leaves', 'guest', 'old'],
  ['put me down for old leaves', null, null],
  ['费用改成20美元', 'alter', null],
  ["Pauline called, she can't come", 'people', null],
  ['羅莎打電話說不來', 'people', null],
  ['誰來教', null, null],
  ["what's happening today", 'people', null],
  ['可以，最多20人，提前一周说', null, null],
  ['cancel my seat in old leaves', null, null],
  ['how do I brew old leaves?', null, null],
])('%s', (text, act, lesson) => {
  const errand = errandOf(listen(text), around(true), denver);
  expect([errand?.['act'] ?? null, errand?.['lesson'] ?? null]).toEqual([act, lesson]);
  expect(errandOf(listen(text), around(false), denver)).toBeNull();
});

it.each<[string, object]>([
  ['make it 10 seats', { field: 'seats', value: '10' }],
  ['change the price to 20 dollars.', { field: 'price', value: '20 dollars' }],
  ['let Bram do it', { field: 'teacher', value: 'Bram' }],
  ['费用改成20美元', { field: 'price', value: '20美元' }],
  ['can you tell them to bring a cup', { words: 'bring a cup' }],
  ['tell everyone on Friday to bring a cup', { words: 'bring a cup' }],
  ['tell everyone that we begin at eleven', { words: 'we begin at eleven' }],
  ['write to everyone in old leaves', { words: null }],
  ['write to everyone in old leaves: please come early', { words: 'please come early' }],
  ['answer the first one', { value: 'first' }],
  ['correct my last answer: we close at nine', { words: 'we close at nine' }],
  ['put Ben Ito ben@mail.example on the list for Saturday', { act: 'guest', who: 'Ben Ito ben@mail.example' }],
  ['给大家发个消息说带自己的杯子', { words: '带自己的杯子' }],
  ['通知大家 請自備杯子', { words: '請自備杯子' }],
  ['帮王阿姨加两个位子到周六', { who: '王阿姨两位' }],
])('%s tells what', (text, told) => {
  expect(errandOf(listen(text), around(true), denver)).toMatchObject(told);
});
