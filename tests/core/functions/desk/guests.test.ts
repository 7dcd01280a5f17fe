/** Who is meant by a name, and what a shopkeeper wants done with them. */
import { describe, expect, it, test } from 'vitest';
import type { Around } from '../../../../src/core/flow/book.ts';
import type { Facts } from '../../../../src/core/flow/flow.ts';
import { errandOf } from '../../../../src/core/functions/desk/errand.ts';
import { deskGuestCalls } from '../../../../src/core/functions/desk/guests.ts';
import { namedBy } from '../../../../src/core/functions/desk/guest-names.ts';
import { denver, denverAt, lessonWith } from '../../lessons/lesson-drafts.ts';
import { listen } from '../../lessons/heard-here.ts';

const names = ['Mei Lin and a friend', 'Mei Wong', 'Ah Keung', 'Rosa', '陳大文', '李大文', '王小明', 'Helen'];
const known = names.map((name, n) => ({ booking: String(n), name }));

test.each<[string, readonly string[]]>([
  ['is Mei on the list?', ['Mei Lin and a friend', 'Mei Wong']],
  ['is mei lin on the list', ['Mei Lin and a friend']],
  ['take Ah Keung off Saturday', ['Ah Keung']],
  ["Rosa's not coming", ['Rosa']],
  ['a friend of hers', []],
  ['大文有沒有報名', ['陳大文', '李大文']],
  ['陈大文在名单上吗', ['陳大文']],
  ['小明', ['王小明']],
  ['is Pauline coming', []],
])('%s', (sentence, fits) => {
  expect(namedBy(sentence, known).map(({ name }) => name)).toEqual(fits);
});

const old = lessonWith({ id: 'old', starts: '2026-12-05T19:00' });
const young = lessonWith({ id: 'young', starts: '2026-12-06T19:00' });
const booking = (id: string, more: object = {}): object => ({
  id,
  person: id,
  seats: 1,
  standing: 'seated',
  answer: null,
  came: null,
  reach: 'none',
  name: { quoteOf: Number(id), part: 'name', gone: '' },
  ...more,
});
const house = (keeper = true): Facts =>
  ({
    keeper,
    names: known,
    doors: [
      { lesson: old, bookings: [booking('0'), booking('1'), booking('4'), booking('7')] },
      { lesson: young, bookings: [booking('2'), booking('3', { reach: 'chat' }), booking('6', { standing: 'left' })] },
    ],
  }) as unknown as Facts;
const at = (wall: string, keeper = true): Around => ({
  nowMs: denverAt(wall),
  language: 'en',
  memory: {},
  house: house(keeper),
});
const early = at('2026-12-02T10:00');

const acts = ['find', 'release', 'tick', 'people', 'reseat', 'transfer', 'write-one', 'guest', 'move', 'write'];

describe('an errand with someone who is on a list', () => {
  it.each<[string, string | null, string | null]>([
    ['is Mei on the list?', 'find', null],
    ['is Helen signed up for Saturday', 'find', 'old'],
    ['has Pauline booked', 'find', null],
    ['阿強在名單上嗎？', 'find', null],
    ['大文有沒有報名', 'find', null],
    ['take Ah Keung off Sunday', 'release', 'young'],
    ['Rosa called, she is ill', 'release', null],
    ["Mei can't come on Saturday", 'release', 'old'],
    ['陳大文星期六不能來了', 'release', 'old'],
    ['把陈大文从周六划掉', 'release', 'old'],
    ['帮我把陈大文从名单上删掉', 'release', null],
    ['Rosa cancelled', 'release', null],
    ['取消陈大文', 'release', null],
    ['把陳大文取消掉', 'release', null],
    ['do we have a Rosa on Sunday?', 'find', 'young'],
    ['do we have a lesson on Sunday?', null, null],
    ['Mei Wong is bringing a friend', 'reseat', null],
    ["Helen rang, they're three now", 'reseat', null],
    ['陳大文加一位', 'reseat', null],
    ['move Mei Wong to the week after', 'transfer', null],
    ['Helen would like to come on Sunday instead', 'transfer', null],
    ['把陈大文改到下周六', 'transfer', null],
    ['write to Helen: the door has moved', 'write-one', null],
    ['告訴陳大文從側門進', 'write-one', null],
    // Written down anew, to everybody, or of a lesson.
    ['put Rosa Meyer down for Saturday, 2 seats', 'guest', 'old'],
    ['move Saturday to Sunday', 'move', 'old'],
    ['tell everyone that Helen is ill', 'write', null],
    // Nobody of that name: as before.
    ["Pauline called, she can't come", 'people', null],
    ['is anyone on the list', null, null],
    ['is there a list', null, null],
    // Nobody is at the door yet.
    ['Mei is here', null, null],
  ])('%s', (text, act, lesson) => {
    const errand = errandOf(listen(text), early, denver);
    const ours = acts.find((one) => one === errand?.['act']) ?? null;
    expect([ours, errand?.['lesson'] ?? null]).toEqual([act, lesson]);
    expect(errandOf(listen(text), at('2026-12-02T10:00', false), denver)).toBeNull();
  });

  it.each<[string, string, string]>([
    ['Mei Lin is here', 'tick', 'here'],
    ["Mei Wong didn't show up", 'tick', 'away'],
    ['陳大文到了', 'tick', 'here'],
    ['陈大文没来', 'tick', 'away'],
  ])('at the door: %s', (text, act, value) => {
    expect(errandOf(listen(text), at('2026-12-05T18:50'), denver)).toMatchObject({ act, value });
  });
});

const found = (text: string, act: string, around = early): Facts => {
  const outcome = deskGuestCalls.deskGuests({ text, act, lesson: null }, around);
  return (outcome as { gives: Facts }).gives;
};

test('where two fit, both are shown and none is chosen', () => {
  expect(found('is Mei on the list', 'find')).toMatchObject({ count: 2, free: [{ n: 1 }, { n: 2 }] });
  expect(found('is Ah Keung on the list', 'find')).toMatchObject({
    count: 1,
    first: { booking: '2', lesson: 'young' },
  });
});

test('who has a chat can be taken off as well, and who has given back is on no list', () => {
  expect(found('take Rosa off', 'release')).toMatchObject({ count: 1, free: [{ n: 1 }] });
  expect(found('take 小明 off', 'release')).toMatchObject({ count: 0, first: null });
});

test('what is shown and kept holds no name, only where it stands', () => {
  expect(JSON.stringify(found('is Mei on the list', 'find'))).not.toContain('Mei');
});
