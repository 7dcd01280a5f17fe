import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { projectRoot } from '../../src/project-root.ts';
import { headOf, readShelfTable, writeShelf, writeShelfYaml } from '../../src/content/shelf-table.ts';
import { readTeas } from '../../src/content/tea-data.ts';

const teas = readTeas(join(projectRoot, 'data'));
const shelf = teas.slice(0, 3).toReversed();
const [first] = shelf;
const id = first?.id ?? '';
const other = shelf[1]?.id ?? '';

describe('the shelf as a table', () => {
  it('comes back in its order', () => {
    expect(readShelfTable(writeShelf(shelf), teas)).toEqual({ shelf });
    expect(readShelfTable(`tea\r\n${id}\r\n`, teas)).toEqual({ shelf: [first] });
  });

  it.each<[string, string, string[]]>([
    ['no such tea', `tea\n${id}\nlongjink\n`, ['3 tea lesson-table-tea']],
    ['one twice', `tea\n${id}\n${other}\n${id}\n`, ['4 tea lesson-table-twice']],
    ['another name', `tea;name en\n${id};Jade\n`, ['2 name en lesson-table-tea-name']],
    ['no tea', 'tea\n', ['1 tea lesson-table-no-tea']],
    ['no column', `${id}\n${other}\n`, ['1 tea lesson-table-column-missing', `1 ${id} lesson-table-column-unknown`]],
    ['an open quotation mark', `tea,name en\n"${id},x\n`, ['2 table lesson-table-quote-open']],
  ])('is refused for %s', (_, text, expected) => {
    const read = readShelfTable(text, teas);
    expect('mistakes' in read && read.mistakes.map((one) => `${one.line} ${one.field} ${one.code}`)).toEqual(expected);
  });

  it('keeps the comment above the list', () => {
    const kept = `# Our shelf.\n\n# By family.\n- ${id}\n# last\n`;
    expect(writeShelfYaml(shelf, headOf(kept))).toMatch(/^# Our shelf\.\n\n# By family\.\n- /);
    expect(headOf('- x\n')).toBe('');
  });
});
