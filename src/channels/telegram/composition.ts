/** One outgoing message as the pieces Telegram will take: texts with their marks, buttons under the last. */
import type { InlineKeyboardMarkup, MessageEntity } from 'grammy/types';
import type { Outgoing } from '../../messages.ts';
import { keyboardOf } from './keyboard.ts';
import { ladderLetters } from './ladder-letters.ts';
import { cleanText, lengthOf, splitText } from './split.ts';

/** In code points, after the server has read the marks. */
export const textLimit = 4096;
export const captionLimit = 1024;

export interface Piece {
  readonly text: string;
  readonly entities: readonly MessageEntity[];
  readonly keyboard: InlineKeyboardMarkup | null;
}

interface Block {
  readonly text: string;
  /** Drawn with letters of one width, as the ladder needs. */
  readonly drawn: boolean;
}

/** Empty when the message has nothing to say. */
export function composeTexts(message: Outgoing): readonly Piece[] {
  const drawing = message.ladder === undefined ? [] : [{ text: ladderLetters(message.ladder), drawn: true }];
  return withKeyboard(pack([...written(message.paragraphs), ...drawing, ...counting(message)], textLimit), message);
}

/** The words of a message whose ladder is a picture; null when they do not fit under one. */
export function composeCaption(message: Outgoing): Piece | null {
  const pieces = pack([...written(message.paragraphs), ...counting(message)], captionLimit);
  if (pieces.length > 1) return null;
  const [words = { text: '', entities: [] }] = pieces;
  return { ...words, keyboard: keyboardOf(message.choices) };
}

function written(paragraphs: readonly string[]): readonly Block[] {
  return paragraphs.map((text) => ({ text, drawn: false }));
}

/** Telegram counts nothing down by itself; the call at the end is a message of its own. */
function counting({ countdown }: Outgoing): readonly Block[] {
  return countdown === undefined ? [] : written([countdown.label]);
}

function withKeyboard(pieces: readonly Omit<Piece, 'keyboard'>[], message: Outgoing): readonly Piece[] {
  const last = pieces.length - 1;
  return pieces.map((piece, i) => ({ ...piece, keyboard: i === last ? keyboardOf(message.choices) : null }));
}

const gap = '\n\n';

/** Blocks in as few pieces as hold them, a blank line between; marks count UTF-16 units, as the Bot API does. */
function pack(blocks: readonly Block[], limit: number): readonly Omit<Piece, 'keyboard'>[] {
  const pieces: { text: string; entities: MessageEntity[] }[] = [];
  for (const block of blocks.flatMap((whole) => cut(whole, limit))) {
    const open = pieces.at(-1);
    const joins = open !== undefined && lengthOf(open.text) + gap.length + lengthOf(block.text) <= limit;
    const piece = joins ? open : { text: '', entities: [] };
    if (!joins) pieces.push(piece);
    const offset = joins ? piece.text.length + gap.length : 0;
    piece.text += (joins ? gap : '') + block.text;
    if (block.drawn) piece.entities.push({ type: 'pre', offset, length: block.text.length });
  }
  return pieces;
}

function cut({ text, drawn }: Block, limit: number): readonly Block[] {
  return splitText(cleanText(text), limit).map((piece) => ({ text: piece, drawn }));
}
