/** The few calls that put a piece into a chat, change it there, or take it away. */
import { InputFile } from 'grammy';
import type { Enclosure } from '../../messages.ts';
import type { Answer, BotApi } from './bot-api.ts';
import type { Piece } from './composition.ts';
import { meaningOf, type Fault } from './fault.ts';
import type { SentPiece } from './reference.ts';

/** A piece, the PNG above it or the file it goes with if it has one, and the message it takes the place of. */
export interface Step {
  readonly piece: Piece;
  readonly picture?: Uint8Array;
  readonly file?: Enclosure;
  readonly old?: SentPiece;
}

/** `repeatable`: doing it again changes nothing more, so a doubtful end may be tried again freely. */
export type Done =
  | { readonly ok: true; readonly sent: SentPiece }
  | { readonly ok: false; readonly fault: Fault; readonly repeatable: boolean };

export interface Pieces {
  put(chat: string, step: Step): Promise<Done>;
  /** As far as the server lets us. */
  remove(chat: string, sent: SentPiece): Promise<void>;
}

const quiet = { link_preview_options: { is_disabled: true } };

export function makePieces(api: BotApi, timeoutMs: number): Pieces {
  const limits = { timeoutMs };

  async function put(chat: string, step: Step): Promise<Done> {
    const done = step.old ? await edit(chat, step, step.old) : await send(chat, step);
    if (done.ok || done.fault.kind !== 'answered') return done;
    const { movedTo } = done.fault;
    return movedTo === null || movedTo === chat ? done : put(movedTo, step);
  }

  async function edit(chat: string, { piece, picture }: Step, old: SentPiece): Promise<Done> {
    const answer = old.kind === 'text' ? await editText(chat, piece, old) : await editCaption(chat, piece, old);
    if (answer.ok) return { ok: true, sent: old };
    const { meaning } = meaningOf(answer.fault);
    if (meaning === 'unchanged') return { ok: true, sent: old };
    if (meaning === 'not-editable') return send(chat, picture === undefined ? { piece } : { piece, picture });
    return { ok: false, fault: answer.fault, repeatable: true };
  }

  async function send(chat: string, step: Step): Promise<Done> {
    const answer = await call(chat, step);
    if (!answer.ok) return { ok: false, fault: answer.fault, repeatable: false };
    const kind = step.picture ? 'picture' : step.file ? 'file' : 'text';
    return { ok: true, sent: { kind, messageId: answer.result.message_id } };
  }

  function call(chat: string, { piece, picture, file }: Step): Promise<Answer<{ message_id: number }>> {
    if (picture !== undefined) return sendPicture(chat, piece, picture);
    return file === undefined ? sendText(chat, piece) : sendFile(chat, piece, file);
  }

  function sendText(chat: string, piece: Piece): Promise<Answer<{ message_id: number }>> {
    return api.call('sendMessage', { chat_id: chat, ...textOf(piece), ...quiet, ...markupOf(piece) }, limits);
  }

  function editText(chat: string, piece: Piece, { messageId }: SentPiece): Promise<Answer<unknown>> {
    const payload = { chat_id: chat, message_id: messageId, ...textOf(piece), ...quiet, ...markupOf(piece) };
    return api.call('editMessageText', payload, limits);
  }

  function sendPicture(chat: string, piece: Piece, picture: Uint8Array): Promise<Answer<{ message_id: number }>> {
    const photo = new InputFile(picture, 'ladder.png');
    return api.call('sendPhoto', { chat_id: chat, photo, ...captionOf(piece), ...markupOf(piece) }, limits);
  }

  function sendFile(chat: string, piece: Piece, { name, text }: Enclosure): Promise<Answer<{ message_id: number }>> {
    const document = new InputFile(Buffer.from(text), name);
    return api.call('sendDocument', { chat_id: chat, document, ...captionOf(piece), ...markupOf(piece) }, limits);
  }

  function editCaption(chat: string, piece: Piece, { messageId }: SentPiece): Promise<Answer<unknown>> {
    const payload = { chat_id: chat, message_id: messageId, ...captionOf(piece), ...markupOf(piece) };
    return api.call('editMessageCaption', payload, limits);
  }

  return {
    put,
    async remove(chat, { messageId }) {
      await api.call('deleteMessage', { chat_id: chat, message_id: messageId }, limits);
    },
  };
}

function textOf({ text, entities }: Piece) {
  return { text, ...(entities.length > 0 ? { entities: [...entities] } : {}) };
}

function captionOf({ text, entities }: Piece) {
  return { caption: text, ...(entities.length > 0 ? { caption_entities: [...entities] } : {}) };
}

function markupOf({ keyboard }: Piece) {
  return keyboard === null ? {} : { reply_markup: keyboard };
}
