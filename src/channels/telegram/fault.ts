/** What can go wrong between us and the Bot API, as data: what each answer means, and what becomes of a sending. */
import type { Sent } from '../../messages.ts';

type Instant = number;

export type Fault =
  /** The server said no. */
  | {
      readonly kind: 'answered';
      readonly code: number;
      readonly description: string;
      readonly retryAfterS: number | null;
      readonly movedTo: string | null;
    }
  /** Not one byte of the request left this machine. */
  | { readonly kind: 'unreached'; readonly why: string }
  /** The request may have arrived; its answer did not. */
  | { readonly kind: 'lost'; readonly why: string }
  /** We ended it ourselves. */
  | { readonly kind: 'stopped' };

export type Meaning =
  | 'unreachable'
  | 'moved'
  | 'unchanged'
  | 'not-editable'
  | 'stale-tap'
  | 'refused'
  | 'wait'
  | 'doubtful'
  | 'token'
  | 'conflict'
  | 'unreached'
  | 'stopped';

interface Row {
  readonly code: number;
  /** How the description goes on after "Bad Request: " and its like, in lower case; '' holds for every one. */
  readonly starts: string;
  readonly meaning: Meaning;
  readonly why: string;
}

/**
 * Read from above; the first row that fits holds. Strings from the source of the Bot API server (tdlib/telegram-bot-api,
 * May 2026, Client.cpp and ClientManager.cpp) and from the Bot API reference. A code alone decides where strings may change.
 * 500 is in doubt, not undone: a server that restarts answers so to messages it has already passed on.
 */
const rows: readonly Row[] = [
  { code: 403, starts: 'bot was blocked by the user', meaning: 'unreachable', why: 'blocked' },
  { code: 403, starts: 'user is deactivated', meaning: 'unreachable', why: 'deactivated' },
  { code: 403, starts: 'bot was kicked', meaning: 'unreachable', why: 'removed' },
  { code: 403, starts: 'bot is not a member', meaning: 'unreachable', why: 'removed' },
  { code: 403, starts: "bot can't", meaning: 'unreachable', why: 'never-started' },
  { code: 403, starts: '', meaning: 'unreachable', why: 'forbidden' },
  { code: 400, starts: 'chat not found', meaning: 'unreachable', why: 'no-such-chat' },
  { code: 400, starts: 'private chat not found', meaning: 'unreachable', why: 'no-such-chat' },
  { code: 400, starts: 'peer_id_invalid', meaning: 'unreachable', why: 'no-such-chat' },
  { code: 400, starts: 'group chat was upgraded to a supergroup chat', meaning: 'moved', why: 'moved' },
  { code: 400, starts: 'message is not modified', meaning: 'unchanged', why: 'unchanged' },
  { code: 400, starts: 'message to edit not found', meaning: 'not-editable', why: 'edit-target-gone' },
  { code: 400, starts: "message can't be edited", meaning: 'not-editable', why: 'edit-not-allowed' },
  { code: 400, starts: 'message_id_invalid', meaning: 'not-editable', why: 'edit-target-gone' },
  { code: 400, starts: 'there is no text in the message to edit', meaning: 'not-editable', why: 'edit-other-kind' },
  { code: 400, starts: 'there is no caption in the message to edit', meaning: 'not-editable', why: 'edit-other-kind' },
  { code: 400, starts: 'message to delete not found', meaning: 'unchanged', why: 'gone' },
  { code: 400, starts: "message can't be deleted", meaning: 'unchanged', why: 'delete-not-allowed' },
  { code: 400, starts: 'query is too old', meaning: 'stale-tap', why: 'stale-tap' },
  { code: 400, starts: 'message text is empty', meaning: 'refused', why: 'text-empty' },
  { code: 400, starts: 'message is too long', meaning: 'refused', why: 'text-too-long' },
  { code: 400, starts: 'text is too long', meaning: 'refused', why: 'text-too-long' },
  { code: 400, starts: 'message caption is too long', meaning: 'refused', why: 'text-too-long' },
  { code: 400, starts: "can't parse entities", meaning: 'refused', why: 'marks-wrong' },
  { code: 400, starts: 'button_data_invalid', meaning: 'refused', why: 'choice-key-wrong' },
  { code: 400, starts: 'reply markup is too long', meaning: 'refused', why: 'too-many-choices' },
  { code: 400, starts: '', meaning: 'refused', why: 'bad-request' },
  { code: 413, starts: '', meaning: 'refused', why: 'too-large' },
  { code: 401, starts: '', meaning: 'token', why: 'token-refused' },
  { code: 404, starts: '', meaning: 'token', why: 'token-refused' },
  { code: 421, starts: '', meaning: 'token', why: 'token-refused' },
  { code: 409, starts: '', meaning: 'conflict', why: 'second-copy' },
  { code: 429, starts: '', meaning: 'wait', why: 'too-many' },
];

export interface Reading {
  readonly meaning: Meaning;
  /** One of our own words, or a code of the server in capitals: never text of the server, which may quote a message. */
  readonly why: string;
}

export function meaningOf(fault: Fault): Reading {
  if (fault.kind === 'stopped') return { meaning: 'stopped', why: 'stopped' };
  if (fault.kind === 'unreached') return { meaning: 'unreached', why: fault.why };
  if (fault.kind === 'lost') return { meaning: 'doubtful', why: fault.why };
  const said = fault.description.replace(/^[A-Z][A-Za-z ]*: /, '');
  const row = rows.find(({ code, starts }) => code === fault.code && said.toLowerCase().startsWith(starts));
  if (row === undefined) return { meaning: 'doubtful', why: `answer-${fault.code}` };
  const serverCode = row.starts === '' && /^[A-Z][A-Z0-9_]{2,40}$/.test(said) ? ` ${said}` : '';
  return { meaning: row.meaning, why: row.why + serverCode };
}

/** A token that is refused now may be right again after a look by the shopkeeper. */
const tokenWaitMs = 60_000;

type NotSent = Exclude<Sent, { outcome: 'sent' }>;

const outcomes: { readonly [meaning in Meaning]: NotSent['outcome'] } = {
  wait: 'retry',
  token: 'retry',
  unreached: 'retry',
  conflict: 'retry',
  doubtful: 'unknown',
  stopped: 'unknown',
  unreachable: 'unreachable',
  moved: 'refused',
  unchanged: 'refused',
  'not-editable': 'refused',
  'stale-tap': 'refused',
  refused: 'refused',
};

/** `repeatable`: doing it twice is the same as once, as with an edit, so doubt is no reason to hold back. */
export function outcomeOf(fault: Fault, now: Instant, repeatable: boolean): NotSent {
  const { meaning, why } = meaningOf(fault);
  const outcome = outcomes[meaning];
  if (outcome !== 'retry') return repeatable && outcome === 'unknown' ? { outcome: 'retry', why } : { outcome, why };
  const waitMs = meaning === 'wait' ? 1000 * waitSecondsOf(fault) : meaning === 'token' ? tokenWaitMs : 0;
  return waitMs === 0 ? { outcome, why } : { outcome, notBefore: now + waitMs, why };
}

/** Seconds a 429 asks for; 1 where it does not say. */
export function waitSecondsOf(fault: Fault): number {
  return fault.kind === 'answered' ? Math.max(1, fault.retryAfterS ?? 1) : 1;
}
