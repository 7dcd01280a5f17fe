/** Takes updates that the server brings: a door that opens to the secret only, and says 200 once they are durable. */
import { createHash, timingSafeEqual } from 'node:crypto';
import type { Log } from '../../log.ts';
import { errorFields } from '../../log.ts';
import type { Incoming } from '../../messages.ts';

/** Updates are a few kB; the server's own queue takes none above 512 kB. */
export const webhookLimitBytes = 512 * 1024;

export interface WebhookDeps {
  readonly secret: string;
  readonly log: Log;
  greet(update: unknown): void;
  read(update: unknown): Incoming | null;
  record(incoming: Incoming): Promise<unknown>;
}

/** Answers with an HTTP status. */
export type WebhookHandler = (body: string, secretHeader: string | undefined) => Promise<200 | 400 | 401 | 413 | 500>;

/** What the Bot API takes for a secret, and long enough not to be guessed. */
export function isWebhookSecret(secret: string): boolean {
  return /^[A-Za-z0-9_-]{16,256}$/.test(secret);
}

/** Throws without a proper secret: a door that anyone may open is worse than none. */
export function makeWebhookHandler(deps: WebhookDeps): WebhookHandler {
  if (!isWebhookSecret(deps.secret)) {
    throw new Error('the webhook needs a secret of 16 to 256 letters, digits, _ or -');
  }
  return async (body, secretHeader) => {
    if (!same(secretHeader ?? '', deps.secret)) return 401;
    if (Buffer.byteLength(body) > webhookLimitBytes) return 413;
    const update = parsed(body);
    if (update === undefined) return 400;
    deps.greet(update);
    const incoming = deps.read(update);
    if (incoming === null) return 200;
    try {
      await deps.record(incoming);
      return 200;
    } catch (error) {
      deps.log.error('an update could not be recorded', errorFields(error));
      return 500;
    }
  };
}

/** Digests have one length, and their comparison takes one time. */
function same(given: string, wanted: string): boolean {
  return timingSafeEqual(digest(given), digest(wanted));
}

function digest(text: string): Buffer {
  return createHash('sha256').update(text).digest();
}

function parsed(body: string): unknown {
  try {
    return JSON.parse(body);
  } catch {
    return undefined;
  }
}
