/** Reads what the page posts into what the house takes in; anything of another shape is turned away whole. */
import type { Incoming } from '../../messages.ts';
import { isPageLanguage, longestText, type Posted, type PostedWhat } from './page/wire.ts';

/** Null when the body is not of the page's making. */
export function readPosted(body: unknown): Posted | null {
  if (!isRecord(body)) return null;
  const { updateId, language } = body;
  const what = readWhat(body['what']);
  if (typeof updateId !== 'string' || !/^[A-Za-z0-9_-]{16,64}$/.test(updateId)) return null;
  return what !== null && isPageLanguage(language) ? { updateId, language, what } : null;
}

function readWhat(what: unknown): PostedWhat | null {
  if (!isRecord(what)) return null;
  const { kind, text, key, payload } = what;
  if (kind === 'text' && typeof text === 'string' && text.length <= longestText) return { kind, text };
  if (kind === 'tap' && typeof key === 'string' && /^[A-Za-z0-9._-]{1,40}$/.test(key)) return { kind, key };
  if (kind === 'open' && typeof payload === 'string' && isPayload(payload)) return { kind, payload };
  return null;
}

export const isPayload = (payload: string): boolean =>
  payload === '' || /^(tea|lesson)-[A-Za-z0-9-]{1,48}$/.test(payload);

/** What was typed as a code; empty when nothing was. */
export const readCode = (body: unknown): string =>
  isRecord(body) && typeof body['code'] === 'string' ? body['code'] : '';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** What the server knows beside what was posted. */
export interface Around {
  readonly chat: string;
  readonly receivedAt: number;
  readonly deviceLanguage: string;
}

/** The page's ids are unique to its sheet only, so the sheet is part of ours: nobody can use up another's. */
export function incomingOf(posted: Posted, around: Around): Incoming {
  const { chat, receivedAt, deviceLanguage } = around;
  return {
    channel: 'web',
    updateId: `${chat}:${posted.updateId}`,
    from: chat,
    chat,
    receivedAt,
    deviceLanguage,
    what: posted.what,
  };
}
