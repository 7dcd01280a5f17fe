/** A line about someone without a chat: what is taken from it, and what is asked for again. */
import { expect, test } from 'vitest';
import { hearGuest, type MailGuest } from '../../../src/core/lessons/mail-guest.ts';

const guest = (name: string, more: Partial<MailGuest> = {}): { guest: MailGuest } => ({
  guest: { name, mail: null, seats: 1, hasPhone: false, ...more },
});
const wrong = (code: string) => ({ mistakes: [{ code: `lesson-${code}` }] });

test.each<[string, object]>([
  ['Mei Lin, mei@example.org, 2', guest('Mei Lin', { mail: 'mei@example.org', seats: 2 })],
  ['Ann Lee Ann.Lee@MAIL.example 1 seat', guest('Ann Lee', { mail: 'Ann.Lee@mail.example' })],
  ['阿強，keong@example.org，一位', guest('阿強', { mail: 'keong@example.org' })],
  ['Old Chen', guest('Old Chen')],
  ['Old Chen, 2', guest('Old Chen', { seats: 2 })],
  ['Tom 2', guest('Tom', { seats: 2 })],
  ['Tom, three', guest('Tom', { seats: 3 })],
  ['林美兩位', guest('林美', { seats: 2 })],
  ['Tom and Ann, 2', guest('Tom and Ann', { seats: 2 })],
  ['Ann, 10,000 seats', guest('Ann', { seats: 10_000 })],
  // A telephone number is neither a name nor a number of seats.
  ['Mei Lin, 0912 345 678, 2', guest('Mei Lin', { seats: 2, hasPhone: true })],
  ['老陈，电话13800138000，2位', guest('老陈', { seats: 2, hasPhone: true })],
  ['陳先生 手機：0912-345-678', guest('陳先生', { hasPhone: true })],
  ['Ann (303) 555-0100 2 seats', guest('Ann', { seats: 2, hasPhone: true })],
  ['+49 170 1234567 Tom', guest('Tom', { hasPhone: true })],
  ['Ann tel. 0912345678 ann@mail.example', guest('Ann', { mail: 'ann@mail.example', hasPhone: true })],
  // Nor is a sentence.
  ['Mrs Lee paid', wrong('guest-no-name')],
  ["what's on next week", wrong('guest-no-name')],
  // An address that cannot be one is not taken for a name.
  ['Ann ann@mail', wrong('guest-mail')],
  ['Ann @', wrong('guest-mail')],
  ['ann@mail.example', wrong('guest-no-name')],
  ['tel. 0912345678', wrong('guest-no-name')],
  ['2', wrong('guest-no-name')],
  ['x'.repeat(61), wrong('guest-name-long')],
])('%s', (line, expected) => {
  expect(hearGuest(line)).toMatchObject(expected);
});
