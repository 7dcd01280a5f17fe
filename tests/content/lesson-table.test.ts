import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable, writeTable } from '../../src/content/csv.ts';
import { lessonColumns, readLessonTable, writeLessons } from '../../src/content/lesson-table.ts';
import type { LessonDraft } from '../../src/core/lessons/lesson.ts';

const draft: LessonDraft = {
  id: 'white-evening',
  title: { en: 'White tea, "slowly"', 'zh-Hant': '白茶；慢慢來', 'zh-Hans': '白茶；慢慢来' },
  level: 'beginner',
  buildsOn: ['first-cup', 'gaiwan-evening'],
  place: { en: 'The long table', 'zh-Hant': '長桌', 'zh-Hans': '长桌' },
  teacher: 'Odalys Wren',
  seats: 8,
  zone: 'America/Denver',
  starts: '2026-12-05T19:00',
  minutes: 90,
  price: { en: '18 dollars', 'zh-Hant': '18 美元', 'zh-Hans': '18 美元' },
  bring: { en: 'A cup\nor two', 'zh-Hant': '', 'zh-Hans': '' },
  teas: ['white-peony'],
  cancelHours: 24,
  offerMinutes: 120,
};

const told = (read: ReturnType<typeof readLessonTable>) =>
  'mistakes' in read ? read.mistakes.map((one) => `${one.line} ${one.field} ${one.code}`) : [];

describe('any table', () => {
  it('comes back as it was, whatever is in its cells', () => {
    const cell = fc.oneof(
      fc.string({ unit: 'grapheme' }),
      fc.constantFrom(
        '=1+1',
        '+1',
        '-1',
        '@x',
        "'=x",
        "''",
        ' =1',
        '"',
        'a,b',
        'a;b',
        'a\nb',
        '\t=1',
        '＝1',
        "'Tis",
        '',
      ),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { maxLength: 8 }), (cells) => {
        const rows = cells.map(([a, b]) => ({ a: `${a}x`, b }));
        const read = readTable(writeTable(['a', 'b'], rows), ['a', 'b']);
        expect('rows' in read && read.rows.map((row) => row.cells)).toEqual(rows);
      }),
    );
  });

  it.each(['=HYPERLINK("http://x")', '+1 555', '-2', '@SUM(1)', '\t=1', ' =1', "'=1", '＝1', '\r=1'])(
    'gives a spreadsheet no formula in %j',
    (cell) => {
      const written = writeTable(['a'], [{ a: cell }]).split('\r\n')[1] ?? '';
      expect(written.replace(/^"/, '')[0]).toBe("'");
    },
  );

  it.each([
    ['a,b\r\n1,2\r\n', ','],
    ['a;b\n1;2\n', ';'],
    ['a\tb\n1\t2', 'tab'],
    ['\uFEFFb,a\n2,1\n\n', 'a mark, another order, an empty line'],
  ])('is read from %j: %s', (text) => {
    expect(readTable(text, ['a', 'b'])).toMatchObject({ rows: [{ line: 2, cells: { a: '1', b: '2' } }] });
  });

  it.each<[string, string[]]>([
    ['', ['1 table lesson-table-empty']],
    ['a,c\n1,2\n', ['1 b lesson-table-column-missing', '1 c lesson-table-column-unknown']],
    ['a,b,a\n1,2,3\n', ['1 a lesson-table-column-twice']],
    ['\uFEFF\r\n', ['1 table lesson-table-empty']],
    ['a,b\n1\n1,2\n1,2,3\n', ['2 table lesson-table-cells', '4 table lesson-table-cells']],
    ['a;b\n1,2\n', ['2 table lesson-table-cells']],
    ['a,b\n1,"2\n3,4\n', ['2 table lesson-table-quote-open']],
    ['a,b\r\n1,2\r\n"1,2\r\n3,4\r\n5,6\r\n', ['3 table lesson-table-quote-open']],
    ['"a,b\n1,2\n', ['1 table lesson-table-quote-open']],
    ['a,b\n1,x"2\n', ['2 table lesson-table-quote']],
    ['a,b\n"1"x,2\n', ['2 table lesson-table-quote']],
    ['\uFFFD\uFFFDa\0,\0b\0', ['1 table lesson-table-encoding']],
  ])('is refused with its lines: %j', (text, expected) => {
    const read = readTable(text, ['a', 'b']);
    expect('mistakes' in read && read.mistakes.map((one) => `${one.line} ${one.field} ${one.code}`)).toEqual(expected);
  });

  it('counts lines as an editor does, behind cells of several lines', () => {
    const read = readTable('a,b\n"1\n2",3\n\n4,"5\n6"\n7,8\n', ['a', 'b']);
    expect('rows' in read && read.rows.map((row) => row.line)).toEqual([2, 5, 7]);
  });
});

describe('lessons as a table', () => {
  const other = { ...draft, id: 'dark-evening', series: 'dark', title: { ...draft.title, en: '=SUM(1)' } };

  it('come back as they were', () => {
    expect(readLessonTable(writeLessons([draft, other]))).toMatchObject({ drafts: [draft, other] });
    expect(readLessonTable(writeLessons([]))).toEqual({ drafts: [], lines: [] });
  });

  it('may have gone through a spreadsheet that adds seconds', () => {
    const text = writeLessons([draft]).replace('2026-12-05 19:00', '2026-12-05 19:00:00');
    expect(readLessonTable(text)).toMatchObject({ drafts: [draft] });
  });

  it.each<[string, Record<string, string>, string[]]>([
    ['a word for a number', { seats: 'many' }, ['3 seats lesson-table-number']],
    ['too many seats', { seats: '10000' }, ['3 seats lesson-seats']],
    ['no title in one language', { 'title zh-Hans': '' }, ['3 title lesson-title-missing']],
    ['no such level', { level: 'expert' }, ['3 level lesson-table-choice']],
    ['no such zone', { zone: 'Mars/Base' }, ['3 zone lesson-zone-unknown']],
    ['no such day', { starts: '2026-02-30 19:00' }, ['3 starts lesson-time-unreadable']],
    ['an hour that does not exist', { starts: '2027-03-14 02:30' }, ['3 starts lesson-hour-never']],
    ['an id with a blank', { id: 'white evening' }, ['3 id lesson-table-id']],
    ['an id of another line', { id: 'white-evening' }, ['3 id lesson-table-twice']],
    ['several at once', { minutes: '-5', level: '' }, ['3 level lesson-table-choice', '3 minutes lesson-minutes']],
  ])('are refused as a whole for %s', (_, cells, expected) => {
    const good = readTable(writeLessons([draft, other]), lessonColumns);
    if (!('rows' in good)) throw new Error('unreadable');
    const rows = good.rows.map((row, n) => (n === 1 ? { ...row.cells, ...cells } : row.cells));
    // The first lesson fills lines 2 and 3, for its cup or two.
    expect(told(readLessonTable(writeTable(lessonColumns, rows)))).toEqual(
      expected.map((one) => one.replace('3', '4')),
    );
  });
});
