/** `npm run labels` as it is called: what it writes, and what it says when something is wrong. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { labels } from '../../src/commands/labels.ts';
import { projectRoot } from '../../src/project-root.ts';
import { readShelf } from '../../src/content/shelf.ts';
import { readTeas } from '../../src/content/tea-data.ts';

const folder = mkdtempSync(join(tmpdir(), 'labels-'));
afterAll(() => rmSync(folder, { recursive: true }));
const out = join(folder, 'labels.pdf');
const origin = 'https://tea.example.org';

describe('npm run labels', () => {
  it('writes a sheet in the size asked for and says so', async () => {
    const answer = await labels(
      ['--size', '99.1x38.1', '--out', out, '--bot', '@quillfern_bot'],
      { NINTHPOUR_ORIGIN: origin },
      0,
    );
    expect(answer).toMatchObject({ error: [], code: 0 });
    expect(answer.out[0]).toMatch(/^\d+ labels on 2 pages: /);
    const pdf = readFileSync(out);
    expect(pdf.subarray(0, 5).toString()).toBe('%PDF-');
    expect(pdf.toString('latin1')).toContain('[0 0 595.275591 841.889764]');
  });

  it('makes the same sheet twice', async () => {
    const again = join(folder, 'again.pdf');
    for (const file of [out, again])
      await labels(['--paper', 'letter', '--out', file, '--origin', `${origin}/`], {}, 0);
    expect(readFileSync(again).equals(readFileSync(out))).toBe(true);
  });

  it.each([
    [[], 'The code on each label opens the page: say where it stands'],
    [['--origin', 'tea.example.org'], '“tea.example.org” is no address to print'],
    [['--origin', `${origin}/somewhere`], 'without a path'],
    [['--origin', origin, '--paper', 'a5'], 'There is no paper “a5”; there is a4, letter'],
    [['--origin', origin, '--paper', 'letter', '--size', '70x37'], 'There is no size “70x37” on letter; there is 4x2'],
    [['--origin', origin, '--bot', 'a b'], '“a b” is no name of a Telegram bot'],
    [['--origin', origin, '--lang', 'fr'], 'en, zh-Hant, zh-Hans'],
    [['--origin', origin, '--colour', 'red'], '--size --paper'],
    [['--lang', 'zh-Hans'], '标签上的码会打开网页'],
    [['--origin', origin, '--out', join(folder, 'nowhere', 'a.pdf')], 'cannot be written'],
  ])('tells what is wrong with %j', async (args, sentence) => {
    const { error, code, out: told } = await labels(args, {}, 0);
    expect(error.join('\n')).toContain(sentence);
    expect([code, told]).toEqual([2, []]);
  });
});

describe('the shelf', () => {
  it.each([
    ['- longjing\n- nonesuch\n', /shelf\.yaml:2:3 expected the id of a tea, not "nonesuch"/],
    ['- longjing\n- longjing\n', /shelf\.yaml:2:3 "longjing" is there twice/],
    ['[]\n', /expected a tea at least/],
  ])('refuses %j with its place', (yaml, message) => {
    writeFileSync(join(folder, 'shelf.yaml'), yaml);
    expect(() => readShelf(folder, readTeas(join(projectRoot, 'data')))).toThrow(message);
  });
});
