/** Sends one outgoing message, in as many pieces as it takes, and says what became of it. */
import { setTimeout as sleep } from 'node:timers/promises';
import type { Log } from '../../log.ts';
import type { Channel, Enclosure, Ladder, Outgoing, Sent } from '../../messages.ts';
import { errorFields } from '../../log.ts';
import type { BotApi } from './bot-api.ts';
import { composeCaption, composeTexts } from './composition.ts';
import { meaningOf, outcomeOf, type Fault } from './fault.ts';
import { makeFloodgate } from './floodgate.ts';
import { keyLimitBytes } from './keyboard.ts';
import { makePieces, type Step } from './pieces.ts';
import { makeReference, parseReference, type SentPiece } from './reference.ts';

export interface SenderDeps {
  readonly api: BotApi;
  readonly log: Log;
  now(): number;
  /** The ladder as a PNG, while anybody waits for it; without it, or when it fails, the ladder is drawn in letters. */
  drawPicture?:
    ((ladder: Ladder, language: Outgoing['language'], givenUp: AbortSignal) => Promise<Uint8Array>) | undefined;
  readonly timeoutMs: number;
}

/** Nobody waits longer than this for a picture; the ladder then comes in letters. */
const longestDrawingMs = 2000;
/** How many messages that broke off half-way are remembered, so that their first pieces are not said again. */
const unfinishedLimit = 1000;

type Begins = Parameters<Channel['send']>[1];

export function makeSender(deps: SenderDeps): Channel['send'] {
  const gate = makeFloodgate();
  const pieces = makePieces(deps.api, deps.timeoutMs);
  const unfinished = new Map<string, readonly SentPiece[]>();

  async function send(message: Outgoing, begins: Begins): Promise<Sent> {
    if (!message.choices.every(({ key }) => isKey(key))) return { outcome: 'refused', why: 'choice-key-wrong' };
    const now = deps.now();
    const { at, goes } = gate.enter(message.chat, now);
    if (!goes) return { outcome: 'retry', notBefore: at, why: 'too-many' };
    if (at > now) await sleep(at - now);
    if (message.file !== undefined) return put(message, filed(message, message.file), begins);
    const old = message.replaces === undefined ? [] : parseReference(message.replaces);
    return (await underPicture(message, old, begins)) ?? put(message, lettered(message, old), begins);
  }

  /** As a picture with the words under it; null where it cannot be one, or the server takes none. */
  async function underPicture(message: Outgoing, old: readonly SentPiece[], begins: Begins): Promise<Sent | null> {
    const piece = composeCaption(message);
    if (piece === null) return null;
    if (old.length === 1 && old[0]!.kind !== 'text') return put(message, [{ piece, old: old[0]! }], begins);
    if (message.ladder === undefined || old.length > 0 || unfinished.has(message.id)) return null;
    const picture = await drawn(message.ladder, message.language);
    if (picture === null) return null;
    const sent = await put(message, [{ piece, picture }], begins);
    return sent.outcome === 'refused' ? null : sent;
  }

  async function drawn(ladder: Ladder, language: Outgoing['language']): Promise<Uint8Array | null> {
    const waiting = new AbortController();
    try {
      const soon = sleep(longestDrawingMs, null, { ref: false });
      return (await Promise.race([deps.drawPicture?.(ladder, language, waiting.signal), soon])) ?? null;
    } catch (error) {
      deps.log.error('a ladder could not be drawn', errorFields(error));
      return null;
    } finally {
      waiting.abort();
    }
  }

  async function put(message: Outgoing, steps: readonly Step[], begins: Begins): Promise<Sent> {
    if (steps.length === 0) return { outcome: 'refused', why: 'text-empty' };
    await begins?.();
    const sent = [...(unfinished.get(message.id) ?? [])];
    for (const step of steps.slice(sent.length)) {
      const done = await pieces.put(message.chat, step);
      if (!done.ok) return broken(message, sent, done);
      sent.push(done.sent);
    }
    unfinished.delete(message.id);
    await removeSurplus(message, sent);
    return { outcome: 'sent', ref: makeReference(sent) };
  }

  function broken(message: Outgoing, sent: readonly SentPiece[], at: { fault: Fault; repeatable: boolean }): Sent {
    const now = deps.now();
    const outcome = outcomeOf(at.fault, now, at.repeatable);
    if (outcome.outcome === 'retry' && meaningOf(at.fault).meaning === 'wait') {
      gate.refused(message.chat, outcome.notBefore ?? now, now);
    }
    if (outcome.outcome === 'retry' || outcome.outcome === 'unknown') keep(message.id, sent);
    else unfinished.delete(message.id);
    return outcome;
  }

  function keep(id: string, sent: readonly SentPiece[]): void {
    if (sent.length === 0) return;
    unfinished.set(id, sent);
    const [oldest] = unfinished.keys();
    if (unfinished.size > unfinishedLimit && oldest !== undefined) unfinished.delete(oldest);
  }

  /** A shorter message takes fewer pieces than the one it replaces, and one with a file takes none of them. */
  async function removeSurplus(message: Outgoing, sent: readonly SentPiece[]): Promise<void> {
    const kept = new Set(sent.map(({ messageId }) => messageId));
    const isNew = message.file !== undefined;
    const before = parseReference(message.replaces ?? '').filter(({ kind }) => isNew || kind === 'text');
    for (const piece of before) {
      if ((isNew || sent.length < before.length) && !kept.has(piece.messageId))
        await pieces.remove(message.chat, piece);
    }
  }

  return send;
}

function isKey(key: string): boolean {
  return key !== '' && Buffer.byteLength(key) <= keyLimitBytes;
}

/** A file that changed is news, so it comes anew instead of in the old one's place; its words stand under it where they fit. */
function filed(message: Outgoing, file: Enclosure): readonly Step[] {
  const piece = composeCaption(message);
  if (piece !== null) return [{ piece, file }];
  const texts = composeTexts(message).map((text) => ({ piece: text }));
  return [...texts, { piece: { text: '', entities: [], keyboard: null }, file }];
}

/** All in letters: each piece takes the place of an old text as far as there are any. */
function lettered(message: Outgoing, old: readonly SentPiece[]): readonly Step[] {
  const texts = old.filter(({ kind }) => kind === 'text');
  return composeTexts(message).map((piece, i) => (texts[i] === undefined ? { piece } : { piece, old: texts[i] }));
}
