import { describe, expect, it } from 'vitest';
import {
  bookingColumns,
  readBookingTable,
  readBookingYaml,
  writeBookings,
  writeBookingYaml,
} from '../../src/content/booking-table.ts';
import type { NamedBooking } from '../../src/core/lessons/booking-draft.ts';

const booking: NamedBooking = {
  id: 'b1',
  lesson: 'white-evening',
  name: '=cmd|Ah Keong',
  mail: 'keong@example.org',
  person: '17',
  seats: 2,
  standing: 'seated',
  enrolledAt: Date.UTC(2026, 11, 1, 17, 0, 0, 123),
  offerUntil: null,
  answer: 'coming',
  came: true,
  moves: 1,
  revision: 3,
};
const offered: NamedBooking = {
  ...booking,
  id: 'b2',
  name: '@美 "Mei", +1 555',
  mail: null,
  standing: 'offered',
  offerUntil: Date.UTC(2026, 11, 1, 19),
  answer: null,
  came: null,
};
const nameless: NamedBooking = { ...booking, id: '12', name: null, mail: null, came: false, standing: 'left' };
const all = [booking, offered, nameless];

const draftOf = ({ id, revision, lesson, name, mail, seats, standing }: NamedBooking) => ({
  booking: { id, revision },
  lesson,
  name: name ?? '',
  mail,
  seats,
  standing,
});

const ways = [
  ['CSV', writeBookings, readBookingTable],
  ['YAML', writeBookingYaml, readBookingYaml],
] as const;

describe.each(ways)('bookings as %s', (_, write, read) => {
  it('come back as they were', () => {
    expect(read(write(all))).toMatchObject({ drafts: all.map(draftOf) });
    expect(read(write([]))).toEqual({ drafts: [], lines: [] });
  });
});

it('gives a spreadsheet no formula in a name', () => {
  const cells = writeBookings(all).split('\r\n');
  expect(cells[1]).toContain(",'=cmd|Ah Keong,");
  expect(cells[2]).toContain(`,"'@美 ""Mei"", +1 555",`);
});

const told = (read: ReturnType<typeof readBookingTable>): readonly string[] =>
  'mistakes' in read ? read.mistakes.map((one) => `${one.line} ${one.field} ${one.code}`) : [];

describe('someone new', () => {
  it.each([
    ['the needed columns are enough', 'lesson,name,mail,seats\nwhite,Mei,Mei@Example.ORG,2\n', 'Mei@example.org'],
    ['as a spreadsheet of another country writes it', '\uFEFFname;seats;mail;lesson\r\nMei;2;;white\r\n', null],
    ['by tabs', 'lesson\tname\tmail\tseats\tstanding\nwhite\tMei\t\t2\tseated\n', null],
  ])('is read: %s', (_, text, mail) => {
    const draft = { booking: null, lesson: 'white', name: 'Mei', mail, seats: 2, standing: 'seated' };
    expect(readBookingTable(text)).toEqual({ drafts: [draft], lines: [2] });
  });

  it('is read from YAML, where a number is what is written', () => {
    const text =
      '# phoned\n- lesson: white\n  name: 王\n  seats: 1\n\n- { lesson: 2026-12, name: 007, seats: 1, standing: waiting }\n';
    expect(readBookingYaml(text)).toMatchObject({
      drafts: [
        { booking: null, name: '王', mail: null },
        { lesson: '2026-12', name: '007', standing: 'waiting' },
      ],
      lines: [2, 6],
    });
  });

  it.each<[string, string, string[]]>([
    ['no name', 'white,,,1,', ['2 name lesson-row-nameless']],
    ['a long name', `white,${'x'.repeat(61)},,1,`, ['2 name lesson-guest-name-long']],
    ['no address', 'white,Mei,mei at home,1,', ['2 mail lesson-row-mail']],
    ['two addresses', 'white,Mei,a@b.org c@d.org,1,', ['2 mail lesson-row-mail']],
    ['an address that hides a header', 'white,Mei,"a@b.org\nBcc: x@y.org",1,', ['2 mail lesson-row-mail']],
    ['seats in words', 'white,Mei,,two,', ['2 seats lesson-table-number']],
    ['no seats', 'white,Mei,,,', ['2 seats lesson-table-number']],
    ['an offer', 'white,Mei,,1,offered', ['2 standing lesson-table-choice']],
    ['no lesson', ',Mei,,1,', ['2 lesson lesson-table-id']],
    [
      'several at once',
      ',,,x,',
      ['2 lesson lesson-table-id', '2 seats lesson-table-number', '2 name lesson-row-nameless'],
    ],
  ])('is refused with its line for %s', (_, line, expected) => {
    expect(told(readBookingTable(`lesson,name,mail,seats,standing\n${line}\n`))).toEqual(expected);
  });

  it('cannot have come already', () => {
    const text = 'lesson,name,mail,seats,came,answer\nwhite,Mei,,1,yes,coming\n';
    expect(told(readBookingTable(text))).toEqual(['2 answer lesson-row-new', '2 came lesson-row-new']);
  });
});

describe('a known booking', () => {
  it.each<[string, string, string, string[]]>([
    ['a standing there is not', ',seated,', ',standing,', ['2 standing lesson-table-choice']],
    ['no revision', ',1,3\r\n', ',1,\r\n', ['2 revision lesson-table-number']],
  ])('is refused for %s', (_, from, to, expected) => {
    expect(told(readBookingTable(writeBookings([booking]).replace(from, to)))).toEqual(expected);
  });
});

describe('YAML that is none of bookings', () => {
  it.each<[string, string[]]>([
    ['- lesson: white\n  name: "Mei\n', ['3 table lesson-table-no-yaml']],
    ['- lesson: white\n  lesson: black\n', ['2 table lesson-table-no-yaml']],
    ['lesson: white\n', ['1 table lesson-table-no-list']],
    ['- white\n- 2\n', ['1 table lesson-table-no-item', '2 table lesson-table-no-item']],
    ['- lesson: white\n  name: Mei\n  seat: 2\n', ['3 seat lesson-table-column-unknown']],
    ['- lesson: white\n  name: [Mei, Tom]\n  seats: 2\n', ['2 name lesson-table-no-text']],
    ['- lesson: white\n  name: Mei\n  seats: 1.5\n', ['3 seats lesson-table-number']],
    ['- name: Mei\n', ['1 lesson lesson-table-id', '1 seats lesson-table-number']],
  ])('%j is refused with its lines', (text, expected) => {
    expect(told(readBookingYaml(text))).toEqual(expected);
  });
});

it('has a column for each cell it writes', () => {
  expect(writeBookings([]).trim().replace('\uFEFF', '').split(',')).toEqual(bookingColumns);
});
