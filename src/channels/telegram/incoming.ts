/** One update of the Bot API → what a person did, or null when nobody did anything we serve. Takes any JSON, however malformed. */
import type { Incoming, What } from '../../messages.ts';

/** What is asked of the server; groups, channels, payments and the rest never arrive. */
export const allowedUpdates = ['message', 'edited_message', 'callback_query', 'my_chat_member'] as const;

/** An edit within this time of the first writing is a correction; a later one tidies up an old talk. */
const correctionSeconds = 120;

/** Messages that say something without words: answered like a text with nothing in it. */
const wordless = [
  'animation',
  'audio',
  'checklist',
  'contact',
  'dice',
  'document',
  'game',
  'location',
  'paid_media',
  'photo',
  'poll',
  'story',
  'venue',
  'video',
  'video_note',
  'voice',
];

export interface Surroundings {
  readonly now: number;
  /** What a command of the menu stands for in the person's language; null for one we do not know. */
  says(command: string, deviceLanguage: string | undefined): string | null;
}

export function incomingOf(update: unknown, around: Surroundings): Incoming | null {
  const updateId = field(update, 'update_id');
  if (!Number.isSafeInteger(updateId)) return null;
  const message = field(update, 'message');
  if (message !== undefined) return build(updateId, message, around, (language) => heard(message, around, language));
  const edited = field(update, 'edited_message');
  if (edited !== undefined) return build(updateId, edited, around, () => corrected(edited));
  const tap = field(update, 'callback_query');
  if (tap !== undefined) {
    const at = { from: field(tap, 'from'), chat: field(tap, 'message', 'chat') };
    return build(updateId, at, around, () => tapped(tap));
  }
  const member = field(update, 'my_chat_member');
  return member === undefined ? null : build(updateId, member, around, () => reached(member));
}

/** The id of a tap, to be answered whether or not we serve it. */
export function tapIdOf(update: unknown): string | null {
  return stringOf(field(update, 'callback_query', 'id'));
}

/** `at` names who and where; only a person in a private chat is served. */
function build(
  updateId: unknown,
  at: unknown,
  around: Surroundings,
  read: (deviceLanguage: string | undefined) => What | null,
): Incoming | null {
  const from = field(at, 'from', 'id');
  const chat = field(at, 'chat', 'id');
  const isPerson = Number.isSafeInteger(from) && field(at, 'from', 'is_bot') !== true;
  if (!isPerson || !Number.isSafeInteger(chat) || field(at, 'chat', 'type') !== 'private') return null;
  const deviceLanguage = stringOf(field(at, 'from', 'language_code'))?.slice(0, 35);
  const what = read(deviceLanguage);
  if (what === null) return null;
  return {
    channel: 'telegram',
    updateId: String(updateId),
    from: String(from),
    chat: String(chat),
    receivedAt: around.now,
    ...(deviceLanguage === undefined ? {} : { deviceLanguage }),
    what,
  };
}

function heard(message: unknown, around: Surroundings, deviceLanguage: string | undefined): What | null {
  const text = stringOf(field(message, 'text'));
  if (text !== null) return commanded(text, around, deviceLanguage) ?? { kind: 'text', text };
  const beside = stringOf(field(message, 'caption')) ?? stringOf(field(message, 'sticker', 'emoji'));
  if (beside !== null) return { kind: 'text', text: beside };
  const said = field(message, 'sticker') !== undefined || wordless.some((name) => field(message, name) !== undefined);
  return said ? { kind: 'text', text: '' } : null;
}

/** "/start tea-sencha" opens; any other command is the sentence it stands for, with what was written after it. */
function commanded(text: string, around: Surroundings, deviceLanguage: string | undefined): What | null {
  const match = /^\/([A-Za-z0-9_]{1,32})(?:@[A-Za-z0-9_]+)?(?:\s+(\S[^]*))?$/.exec(text.trim());
  if (match === null) return null;
  const [, command = '', rest = ''] = match;
  if (command === 'start') return { kind: 'open', payload: /^[A-Za-z0-9_-]{0,64}$/.test(rest) ? rest : '' };
  const says = around.says(command.toLowerCase(), deviceLanguage) ?? command.replaceAll('_', ' ');
  return { kind: 'text', text: rest === '' ? says : `${says} ${rest}` };
}

function corrected(message: unknown): What | null {
  const text = stringOf(field(message, 'text'));
  const seconds = Number(field(message, 'edit_date')) - Number(field(message, 'date'));
  return text !== null && seconds <= correctionSeconds ? { kind: 'text', text } : null;
}

function tapped(tap: unknown): What | null {
  const key = stringOf(field(tap, 'data'));
  return key === null ? null : { kind: 'tap', key };
}

function reached(member: unknown): What | null {
  const status = field(member, 'new_chat_member', 'status');
  if (status === 'kicked') return { kind: 'reach', reachable: false };
  return status === 'member' ? { kind: 'reach', reachable: true } : null;
}

function field(value: unknown, ...path: readonly string[]): unknown {
  let at = value;
  for (const name of path) {
    if (typeof at !== 'object' || at === null || !Object.hasOwn(at, name)) return undefined;
    at = (at as Record<string, unknown>)[name];
  }
  return at;
}

function stringOf(value: unknown): string | null {
  return typeof value === 'string' && value !== '' ? value : null;
}
