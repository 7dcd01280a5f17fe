/** What a message may hold. Refuses all the server refuses, and some it mends in silence: we want to see those. */
import type { InlineKeyboardMarkup, MessageEntity } from 'grammy/types';
import type { CallArguments } from './call-arguments.ts';
import { pointsIn } from './limits.ts';
import { badRequest, type Refusal } from './refusal.ts';

export interface CheckedText {
  readonly text: string;
  readonly entities: readonly MessageEntity[];
}

const rawLimitBytes = 1 << 15;
const markupLimitBytes = 10_000;
const markupLimitButtons = 100;

export function checkedText(
  args: CallArguments,
  names: { text: string; entities: string },
  limit: number,
): CheckedText {
  const raw = args.text(names.text);
  if (Buffer.byteLength(raw) > rawLimitBytes) throw badRequest('Text is too long');
  // The server reads marks in the text; we never send any, and so take none.
  if (args.text('parse_mode') !== '') throw badRequest('Unsupported parse_mode');
  const entities = checkedEntities(args.json(names.entities, "Can't parse entities JSON object"), raw);
  const text = raw.trim();
  if (/\p{Surrogate}/u.test(text)) throw badRequest('strings must be encoded in UTF-8');
  const isCaption = names.text === 'caption';
  if (text === '' && !isCaption) throw badRequest('message text is empty');
  if (pointsIn(text) > limit) throw badRequest(isCaption ? 'message caption is too long' : 'message is too long');
  // Stricter than the server, which moves the marks along with what it cuts off.
  if (text !== raw && entities.length > 0) throw badRequest('stand-in: space around a text with marks');
  return { text, entities };
}

function checkedEntities(value: unknown, text: string): readonly MessageEntity[] {
  if (value === undefined) return [];
  if (!Array.isArray(value)) throw badRequest("Can't parse entities: expected an Array");
  const entities = value as readonly MessageEntity[];
  for (const entity of entities) {
    const { type, offset, length } = entity;
    if (typeof type !== 'string') throw badRequest('Can\'t parse MessageEntity: Can\'t find field "type"');
    if (!Number.isInteger(offset) || offset < 0) throw badRequest(`Receive an entity with incorrect offset ${offset}`);
    if (!Number.isInteger(length) || length <= 0) throw badRequest(`Receive an entity with incorrect length ${length}`);
    const end = offset + length;
    checkTime(entity);
    if (end > text.length)
      throw badRequest(
        `Entity beginning at UTF-16 offset ${offset} ends after the end of the text at UTF-16 offset ${end}`,
      );
    if (splitsCharacter(text, offset)) throw badRequest('Entity begins in a middle of a UTF-16 symbol');
    if (splitsCharacter(text, end))
      throw badRequest(`Entity beginning at UTF-16 offset ${offset} ends in a middle of a UTF-16 symbol`);
  }
  const overlapping = entities.some((a) => entities.some((b) => cross(a, b)));
  // Stricter than the server, which cuts such marks into pieces.
  if (overlapping) throw badRequest('stand-in: marks overlap in part');
  return entities;
}

/** From the documentation of Bot API 9.5; the server's own words for a refusal are not known to us. */
function checkTime(entity: MessageEntity): void {
  if (entity.type !== 'date_time') return;
  const { unix_time: time, date_time_format: format } = entity;
  if (!Number.isInteger(time) || time <= 0) throw badRequest('stand-in: a time that is none');
  if (!/^(r|w?[dD]?[tT]?)$/.test(format)) throw badRequest('stand-in: a time format that is none');
}

function cross(a: MessageEntity, b: MessageEntity): boolean {
  return a.offset < b.offset && b.offset < a.offset + a.length && a.offset + a.length < b.offset + b.length;
}

function splitsCharacter(text: string, index: number): boolean {
  return index > 0 && /^[\ud800-\udbff][\udc00-\udfff]$/.test(text.slice(index - 1, index + 1));
}

export function checkedMarkup(args: CallArguments): InlineKeyboardMarkup | null {
  if (!args.has('reply_markup')) return null;
  const value = args.json('reply_markup', "Can't parse reply keyboard markup JSON object");
  if (typeof value !== 'object' || value === null || Array.isArray(value))
    throw badRequest('Object expected as reply markup');
  const rows = (value as { inline_keyboard?: unknown }).inline_keyboard;
  if (rows === undefined) throw badRequest('stand-in: only buttons under a message are used here');
  if (!Array.isArray(rows) || !rows.every(Array.isArray)) {
    throw badRequest('Field "inline_keyboard" of the InlineKeyboardMarkup must be an Array of Arrays');
  }
  const buttons = (rows as unknown[][]).flat();
  for (const button of buttons) checkButton(button);
  if (buttons.length > markupLimitButtons || Buffer.byteLength(JSON.stringify(value)) > markupLimitBytes) {
    throw badRequest('reply markup is too long');
  }
  return value as InlineKeyboardMarkup;
}

function checkButton(button: unknown): void {
  if (typeof button !== 'object' || button === null) throw inButton('InlineKeyboardButton must be an Object');
  const { text, callback_data: data, url } = button as Record<string, unknown>;
  if (typeof text !== 'string') throw inButton('Can\'t find field "text"');
  if (text.trim() === '') throw badRequest('stand-in: a button without words');
  if (typeof url === 'string' && url !== '') return;
  if (typeof data !== 'string' || data === '') throw inButton('Text buttons are unallowed in the inline keyboard');
  if (Buffer.byteLength(data) > 64) throw badRequest('BUTTON_DATA_INVALID');
}

function inButton(words: string): Refusal {
  return badRequest(`Can't parse inline keyboard button: ${words}`);
}
