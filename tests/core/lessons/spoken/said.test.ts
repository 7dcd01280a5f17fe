import { describe, expect, it } from 'vitest';
import { hearSaid, seatsAlone } from '../../../../src/core/lessons/spoken/said.ts';
import { makeSeatChange } from '../../../../src/core/lessons/spoken/seat-change.ts';
import { denver, denverAt, lessonWith } from '../lesson-drafts.ts';
import { listen } from '../heard-here.ts';

const titled = (en: string, hant: string, hans: string) => ({ en, 'zh-Hant': hant, 'zh-Hans': hans });
const white = lessonWith({ id: 'white', title: titled('White tea', '白茶', '白茶'), starts: '2026-12-05T19:00' });
const leaves = lessonWith({
  id: 'leaves',
  title: titled('Old leaves: raw and ripe', '老葉：生與熟', '老叶：生与熟'),
  starts: '2026-12-12T19:00',
});
const gaiwan = lessonWith({
  id: 'gaiwan',
  title: titled('An evening with the gaiwan', '蓋碗之夜', '盖碗之夜'),
  starts: '2026-12-12T14:00',
});
const seatChange = makeSeatChange({ one: ['sister'], two: [], many: ['friends'] });
const hear = (text: string) =>
  hearSaid(listen(text), {
    lessons: [white, leaves, gaiwan],
    now: denverAt('2026-12-02T10:00'),
    zone: denver,
    change: seatChange(listen(text)),
  });

describe('where lessons are shown', () => {
  it.each<[string, object]>([
    ['three', { seats: 3, named: false }],
    ['two for the 12th in the evening', { seats: 2, named: true }],
    ['那就12号的吧 我一个人', { seats: 1, named: true }],
    ["which one's easiest", { narrows: true, named: false }],
    ['哪一個比較簡單', { narrows: true, named: false }],
    ['can I bring my sister', { along: 1, seats: null }],
    ['a seat on 12/5 please', { unclear: true }],
    ['just two please', { seats: 2 }],
    ['two of us, under Odalys Finch', { seats: 2 }],
    ['一個人，叫李雷', { seats: 1 }],
    ['can we be three?', { seats: 3 }],
    ['we are four', { seats: 4 }],
    ['two seats', { seats: 2 }],
    ['三位', { seats: 3 }],
    ['只要兩個', { seats: 2 }],
    ['我们三个人', { seats: 3 }],
    ['two more', { more: 2, seats: null }],
    ['one more seat please', { more: 1, seats: null }],
    ['再加兩位', { more: 2, seats: null }],
    ['再多一个人', { more: 1 }],
    ['3', { figure: 3, seats: null }],
    ['put me on the list', { want: 'enrol', named: false }],
    ['幫我排進名單', { want: 'enrol' }],
    ['can I come on the 5th', { want: 'enrol', named: true, lesson: 'white' }],
    ['5號可以來嗎', { want: 'enrol', lesson: 'white' }],
    ['Saturday', { named: true, lesson: 'white', titled: false }],
    ['on the 12th', { named: true, lesson: null }],
    ['the one on the 5th is fine', { named: true, lesson: 'white' }],
    ['5號那堂可以嗎', { named: true, lesson: 'white' }],
    ['on the 6th', { named: true, lesson: null }],
    ['white tea', { named: true, titled: true, lesson: 'white' }],
    ['the white tea one', { titled: true, lesson: 'white' }],
    ['old leaves please', { titled: true, lesson: 'leaves' }],
    ['蓋碗那堂', { titled: true, lesson: 'gaiwan' }],
    ['白茶', { lesson: 'white' }],
  ])('%s', (text, expected) => {
    expect(hear(text)).toMatchObject(expected);
  });

  it.each([
    'how do I brew white tea',
    'gaiwan 110 ml',
    'white tea in a 100 ml gaiwan',
    'are you open on Sunday?',
    'cancel my booking',
    'my lessons',
    'thank you',
    'is there parking',
    '白茶怎麼泡',
    '你們星期天開門嗎',
  ])('%s is about something else', (text) => {
    expect(hear(text)).toBe(null);
  });
});

it.each([
  ['just one seat', 1],
  ["my sister can't come, just me", 1],
  ['我妹妹不来了，改成一位', 1],
  ['我想改成三位', 3],
  ['just three seats please', 3],
  ['two seats, and who teaches it?', null],
  ['改到12號', null],
])('%s: %s seats and nothing else', (text, seats) => {
  expect(seatsAlone(listen(text))).toBe(seats);
});
