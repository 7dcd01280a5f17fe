/** Sends what the person did, in order, one at a time, until the house has it. */
import type { Act } from './sheet-state.ts';
import type { Posted } from './wire.ts';

export interface Postbox {
  add(act: Act): void;
  /** Tries at once what is waiting. */
  wake(): void;
}

export interface Sender {
  /** `line`: the house's name of it; null when it was refused. */
  settled(updateId: string, state: Act['state'], line: string | null): void;
  /** The sheet's number is no longer known: only a new page helps. */
  expired(): void;
}

const longestWaitMs = 30_000;
/** An answer takes this long at most; then it is asked again with the same id, which changes nothing. */
const answerMs = 10_000;

export function makePostbox(waiting: readonly Act[], sender: Sender): Postbox {
  const queue = [...waiting];
  let busy = false;
  let failures = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const run = async (): Promise<void> => {
    const act = queue[0];
    if (busy || act === undefined) return;
    busy = true;
    clearTimeout(timer);
    const { status, line } = await post(act);
    busy = false;
    // Where no cookie is allowed, a new page is as little known.
    if (status === 401 && navigator.cookieEnabled) return sender.expired();
    if (isLater(status)) {
      timer = setTimeout(() => void run(), Math.min(longestWaitMs, 1000 * 2 ** failures++));
      return;
    }
    failures = 0;
    queue.shift();
    sender.settled(act.updateId, status === 202 ? 'gone-out' : 'refused', line);
    return run();
  };
  void run();
  return {
    add(act) {
      queue.push(act);
      void run();
    },
    wake: () => void run(),
  };
}

/** 0 stands for no answer at all. */
const isLater = (status: number): boolean => status === 0 || status === 429 || status >= 500;

interface Posting {
  readonly status: number;
  readonly line: string | null;
}

async function post(act: Act): Promise<Posting> {
  const posted: Posted = { updateId: act.updateId, language: act.language, what: act.what };
  try {
    const answer = await fetch('/sheet', {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(posted),
      keepalive: true,
      signal: AbortSignal.timeout(answerMs),
    });
    // Read to its end, so that the connection is free for the next.
    const text = await answer.text();
    const line = answer.status === 202 ? (JSON.parse(text) as { readonly line: string }).line : null;
    return { status: answer.status, line };
  } catch {
    return { status: 0, line: null };
  }
}

/** 128 random bits; crypto.randomUUID is missing on plain connections. */
export function newUpdateId(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
