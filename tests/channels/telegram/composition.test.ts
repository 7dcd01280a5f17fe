import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { composeCaption, composeTexts } from '../../../src/channels/telegram/composition.ts';
import { keyboardOf, rowsOf } from '../../../src/channels/telegram/keyboard.ts';
import { cleanText, lengthOf, splitText } from '../../../src/channels/telegram/split.ts';
import { pointsIn } from './bot-api/limits.ts';
import { outgoing } from './harness.ts';

const ladder = { title: 'Six', rungs: [{ n: 1, seconds: 20, label: '20 s', length: 1, ink: 1 }] };

describe('splitting', () => {
  it.each([
    ['at a blank line', 'aaaa aaaa\n\nbbbb bbbb', 14, ['aaaa aaaa', 'bbbb bbbb']],
    ['at a line', 'aaaa aaaa\nbbbb bbbb', 14, ['aaaa aaaa', 'bbbb bbbb']],
    ['at a sentence', 'One is. Two is. Three', 17, ['One is. Two is.', 'Three']],
    ['at a Chinese sentence', '先溫杯。再投茶。注水', 9, ['先溫杯。再投茶。', '注水']],
    ['at a space', 'aaaa bbbb cccc', 11, ['aaaa bbbb', 'cccc']],
    ['hard where nothing pauses', 'aaaaaaaaaa', 4, ['aaaa', 'aaaa', 'aa']],
    ['not inside a character', '🍵🍵🍵', 2, ['🍵🍵', '🍵']],
    ['into nothing when there is nothing', ' \n ', 4, []],
  ])('%s', (_how, text, limit, pieces) => {
    expect(splitText(text, limit)).toEqual(pieces);
  });

  it('loses nothing but space and keeps every piece within the limit', () => {
    const text = fc.string({ unit: 'grapheme', maxLength: 300 });
    fc.assert(
      fc.property(text, fc.integer({ min: 1, max: 40 }), (given, limit) => {
        const pieces = splitText(given, limit);
        for (const piece of pieces) expect(pointsIn(piece)).toBeLessThanOrEqual(limit);
        for (const piece of pieces) expect(piece.trim()).toBe(piece);
        expect(pieces.join('').replace(/\s/g, '')).toBe(given.replace(/\s/g, ''));
      }),
    );
  });

  it('counts code points as the server does', () => {
    const point = fc.integer({ min: 0, max: 0x10ffff }).filter((n) => n < 0xd800 || n > 0xdfff);
    const text = fc.array(point).map((points) => String.fromCodePoint(...points));
    fc.assert(fc.property(text, (given) => lengthOf(given) === pointsIn(given)));
  });

  it('cleans what the server would', () => {
    expect(cleanText('a\r\nb\u0007c\td\u202ee\ud83c')).toBe('a\nb c de\ufffd');
  });
});

describe('a message in pieces', () => {
  it('marks the ladder where UTF-16 counts it', () => {
    const [piece] = composeTexts(outgoing(1, { paragraphs: ['🍵 tea'], ladder }));
    const [mark] = piece!.entities;
    expect(piece!.text.slice(mark!.offset, mark!.offset + mark!.length)).toBe('Six\n 1 ██████████████ 20 s');
    expect(mark).toMatchObject({ type: 'pre', offset: 8 });
  });

  it('marks a time where it stands, whatever is cleaned away or cut before it', () => {
    const said = '6 May, 19:00';
    const before = `\r🍵 ${'word '.repeat(1000)}at\r `;
    const paragraph = `${before}${said}.`;
    const at = 1_800_000_000_500;
    const time = { paragraph: 1, offset: before.length, length: said.length, at, shows: 'day-and-time' } as const;
    const pieces = composeTexts(outgoing(1, { paragraphs: ['Come', paragraph], times: [time] }));
    const marks = pieces.flatMap(({ text, entities }) =>
      entities.map((mark) => ({ ...mark, said: text.slice(mark.offset, mark.offset + mark.length) })),
    );
    expect(marks).toEqual([
      expect.objectContaining({ type: 'date_time', unix_time: 1_800_000_000, date_time_format: 'wDt', said }),
    ]);
  });

  it('leaves the countdown to the words, and puts the buttons under the last piece', () => {
    const countdown = { startedAt: 0, endsAt: 1, label: 'Hold 20 s' };
    const choices = [{ key: 'k', label: 'Poured' }];
    const pieces = composeTexts(outgoing(1, { paragraphs: ['x'.repeat(5000)], choices, countdown, ladder }));
    expect(pieces.map(({ text }) => pointsIn(text))).toEqual([4096, 904 + 2 + 26]);
    expect(pieces.map(({ keyboard }) => keyboard !== null)).toEqual([false, true]);
    expect(composeTexts(outgoing(1, { paragraphs: [], countdown })).map(({ text }) => text)).toEqual(['Hold 20 s']);
  });

  it('is nothing when there is nothing to say', () => {
    expect(composeTexts(outgoing(1, { paragraphs: [' '] }))).toEqual([]);
  });

  it('fits under a picture or does not', () => {
    expect(composeCaption(outgoing(1, { paragraphs: ['𠮷'.repeat(1024)] }))).not.toBeNull();
    expect(composeCaption(outgoing(1, { paragraphs: ['𠮷'.repeat(1025)] }))).toBeNull();
    expect(composeCaption(outgoing(1, { paragraphs: [] }))).toMatchObject({ text: '' });
  });

  it('keeps the columns of the ladder, and its lines within a phone', () => {
    const rungs = [1, 12].map((n) => ({ n, seconds: 20, label: '1 分 30 秒', length: n / 12, ink: n / 12 }));
    const [piece] = composeTexts(outgoing(1, { paragraphs: [], ladder: { title: 'Two', rungs } }));
    expect(piece!.text).toBe('Two\n 1 ░ 1 分 30 秒\n12 ██████████████ 1 分 30 秒');
  });
});

const layout = (...labels: readonly string[]): readonly number[] =>
  rowsOf(labels.map((label) => ({ key: label, label }))).map((row) => row.length);

describe('buttons', () => {
  it.each([
    [['Yes', 'No'], [2]],
    [
      ['1', '2', '3', '4', '5'],
      [4, 1],
    ],
    [
      ['Talk to the shop', 'Change something'],
      [1, 1],
    ],
    [['再來一泡', '太苦', '太淡'], [3]],
    [
      ['這一泡已經倒出來了', '暫停'],
      [1, 1],
    ],
    [['Poured', 'Pause', 'Why'], [3]],
  ])('lays %j out as %j', (labels, rows) => {
    expect(layout(...labels)).toEqual(rows);
  });

  it('are none when there is nothing to choose', () => {
    expect(keyboardOf([])).toBeNull();
  });
});
