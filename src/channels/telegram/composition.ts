/** One outgoing message as the pieces Telegram will take: texts with their marks, buttons under the last. */
import type { InlineKeyboardMarkup, MessageEntity } from 'grammy/types';
import type { Outgoing } from '../../messages.ts';
import { cutBlock, type Block } from './block.ts';
import { keyboardOf } from './keyboard.ts';
import { ladderLetters } from './ladder-letters.ts';
import { lengthOf } from './split.ts';
import { timeMarks } from './time-marks.ts';

/** In code points, after the server has read the marks. */
export const textLimit = 4096;
export const captionLimit = 1024;

export interface Piece {
  readonly text: string;
  readonly entities: readonly MessageEntity[];
  readonly keyboard: InlineKeyboardMarkup | null;
}

/** Empty when the message has nothing to say. */
export function composeTexts(message: Outgoing): readonly Piece[] {
  return withKeyboard(pack([...written(message), ...drawn(message), ...counting(message)], textLimit), message);
}

/** The words of a message whose ladder is a picture; null when they do not fit under one. */
export function composeCaption(message: Outgoing): Piece | null {
  const pieces = pack([...written(message), ...counting(message)], captionLimit);
  if (pieces.length > 1) return null;
  const [words = { text: '', entities: [] }] = pieces;
  return { ...words, keyboard: keyboardOf(message.choices) };
}

function written({ paragraphs, times = [] }: Outgoing): readonly Block[] {
  return paragraphs.map((text, i) => ({ text, marks: timeMarks(times.filter(({ paragraph }) => paragraph === i)) }));
}

/** With letters of one width, as the ladder needs. */
function drawn({ ladder }: Outgoing): readonly Block[] {
  if (ladder === undefined) return [];
  const text = ladderLetters(ladder);
  return [{ text, marks: [{ type: 'pre', offset: 0, length: text.length }] }];
}

/** Telegram counts nothing down by itself, and the words say how long; the call at the end is a message of its own. */
function counting({ countdown, paragraphs }: Outgoing): readonly Block[] {
  return countdown === undefined || paragraphs.length > 0 ? [] : [{ text: countdown.label, marks: [] }];
}

function withKeyboard(pieces: readonly Omit<Piece, 'keyboard'>[], message: Outgoing): readonly Piece[] {
  const last = pieces.length - 1;
  return pieces.map((piece, i) => ({ ...piece, keyboard: i === last ? keyboardOf(message.choices) : null }));
}

const gap = '\n\n';

/** Blocks in as few pieces as hold them, a blank line between; marks count UTF-16 units, as the Bot API does. */
function pack(blocks: readonly Block[], limit: number): readonly Omit<Piece, 'keyboard'>[] {
  const pieces: { text: string; entities: MessageEntity[] }[] = [];
  for (const block of blocks.flatMap((whole) => cutBlock(whole, limit))) {
    const open = pieces.at(-1);
    const joins = open !== undefined && lengthOf(open.text) + gap.length + lengthOf(block.text) <= limit;
    const piece = joins ? open : { text: '', entities: [] };
    if (!joins) pieces.push(piece);
    const start = joins ? piece.text.length + gap.length : 0;
    piece.text += (joins ? gap : '') + block.text;
    piece.entities.push(...block.marks.map((mark) => ({ ...mark, offset: start + mark.offset })));
  }
  return pieces;
}
