/** A stretch of text with the marks on it, cleaned and cut as the server wants it without a mark losing its place. */
import type { MessageEntity } from 'grammy/types';
import { cleanText, splitText } from './split.ts';

export interface Block {
  readonly text: string;
  /** Places count in this text, in UTF-16 units. */
  readonly marks: readonly MessageEntity[];
}

/** Pieces of at most `limit` code points. A mark across a cut is kept only if its parts mean what the whole did. */
export function cutBlock({ text, marks }: Block, limit: number): readonly Block[] {
  const cleaned = cleanText(text);
  const moved = marks.map((mark) => cleanedMark(mark, text));
  let from = 0;
  return splitText(cleaned, limit).map((piece) => {
    const start = cleaned.indexOf(piece, from);
    from = start + piece.length;
    return { text: piece, marks: moved.flatMap((mark) => markWithin(mark, start, from)) };
  });
}

function cleanedMark(mark: MessageEntity, text: string): MessageEntity {
  const place = (index: number): number => cleanText(text.slice(0, index)).length;
  const offset = place(mark.offset);
  return { ...mark, offset, length: place(mark.offset + mark.length) - offset };
}

function markWithin(mark: MessageEntity, start: number, end: number): readonly MessageEntity[] {
  const first = Math.max(mark.offset, start);
  const last = Math.min(mark.offset + mark.length, end);
  const whole = last - first === mark.length;
  return first < last && (whole || mark.type === 'pre')
    ? [{ ...mark, offset: first - start, length: last - first }]
    : [];
}
