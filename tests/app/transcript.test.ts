import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { drawn, readLine } from '../../src/channels/terminal/line.ts';
import { firstDifference, readTranscript } from '../../src/commands/transcript.ts';
import { play } from '../../src/commands/play.ts';
import { readConfig } from '../../src/config.ts';
import { content } from '../the-content.ts';

describe('a transcript', () => {
  test('is read into what was written and what is expected, with lines', () => {
    const text =
      'language: zh-Hant\n# a comment\n> hi\nHello.\n\n  [1] Brew  \n>\nEmpty?\n> # not a comment\n#1 neither\n';
    expect(readTranscript(text)).toEqual({
      deviceLanguage: 'zh-Hant',
      exchanges: [
        {
          wrote: 'hi',
          line: 3,
          expected: [
            { line: 4, text: 'Hello.' },
            { line: 6, text: '  [1] Brew' },
          ],
        },
        { wrote: '', line: 7, expected: [{ line: 8, text: 'Empty?' }] },
        { wrote: '# not a comment', line: 9, expected: [{ line: 10, text: '#1 neither' }] },
      ],
    });
  });

  const exchange = {
    wrote: 'hi',
    line: 3,
    expected: [
      { line: 4, text: 'a' },
      { line: 5, text: 'b' },
    ],
  };
  test.each([
    ['nothing differs', ['a', '', 'b '], null],
    ['a line differs', ['a', 'c'], { line: 5, expected: 'b', got: 'c' }],
    ['a line is missing', ['a'], { line: 5, expected: 'b', got: '(nothing more)' }],
    ['a line is too many', ['a', 'b', 'c'], { line: 5, expected: '(nothing more)', got: 'c' }],
    ['nothing came', [], { line: 4, expected: 'a', got: '(nothing more)' }],
  ])('when %s', (_, answered, difference) => {
    expect(firstDifference(exchange, answered)).toEqual(difference);
  });
});

describe('a line at the terminal', () => {
  const shown = [
    { key: 'k1', label: 'Why' },
    { key: 'k2', label: 'Another tea' },
  ];
  test.each([
    ['2', { kind: 'tap', key: 'k2' }],
    [' why ', { kind: 'tap', key: 'k1' }],
    ['3', { kind: 'text', text: '3' }],
    ['0', { kind: 'text', text: '0' }],
    ['', { kind: 'text', text: '' }],
    ['110 ml', { kind: 'text', text: '110 ml' }],
  ])('"%s" is read', (line, what) => {
    expect(readLine(line, shown)).toEqual(what);
  });

  test('is drawn: paragraphs, ladder, countdown, numbered choices', () => {
    const message = {
      ...({ id: '1', channel: 'terminal', chat: 'me', language: 'en' } as const),
      paragraphs: ['one\ntwo'],
      choices: shown,
      ladder: { title: 'Infusions', rungs: [] },
      countdown: { startedAt: 0, endsAt: 1, label: 'Hold' },
    };
    const lines = drawn(message, ({ title }) => [title]);
    expect(lines).toEqual(['one', 'two', 'Infusions', 'Hold', '  [1] Why', '  [2] Another tea']);
  });
});

describe('playing', () => {
  const config = { ...readConfig({}), log: 'silent' } as const;
  const played = async (text: string): Promise<string | null> => {
    const folder = mkdtempSync(join(tmpdir(), 'tea-play-'));
    const file = join(folder, 'x.transcript');
    writeFileSync(file, text);
    try {
      return await play(file, content, config);
    } finally {
      rmSync(folder, { recursive: true });
    }
  };

  test('tells the first difference with file, line, expected and got', async () => {
    const told = await played('> hi\nSurely nobody answers this.\n');
    expect(told).toMatch(/x\.transcript:2\n {2}expected: Surely nobody answers this\.\n {2}got: {6}\S/);
  });

  test('refuses a transcript in which nobody writes', async () => {
    expect(await played('# nothing\n')).toMatch(/expected: a line that begins/);
  });
});
