/** Mail as a channel: letters go out to those who gave an address; what people answer goes to the shop's own box, not to us. */
import type { Log } from '../../log.ts';
import type { Channel, Sent } from '../../messages.ts';
import { isPlainAddress, letterOf, type Letterhead } from './letter.ts';
import { makePost, type MailServer, type PostLimits } from './post.ts';

export interface MailDeps {
  readonly server: MailServer;
  readonly head: Letterhead;
  readonly log: Log;
  readonly now: () => number;
  readonly limits?: PostLimits;
}

/** Why no letter could go as it is set up; each is a key of flows/words. */
export type MailTrouble = 'mail-login-refused' | 'mail-unreachable';

export interface MailChannel extends Channel {
  /** Reaches for the server; null when all is well. */
  check(): Promise<MailTrouble | null>;
}

export function makeMailChannel({ server, head, log, now, limits }: MailDeps): MailChannel {
  const post = makePost(server, now, limits);
  return {
    name: 'mail',
    start: () => Promise.resolve(),
    async send(message, begins): Promise<Sent> {
      if (!isPlainAddress(message.chat)) return { outcome: 'refused', why: 'address-wrong' };
      const envelope = { from: head.from, to: message.chat };
      const sent = await post.send(envelope, async () => {
        const letter = await letterOf(message, head);
        await begins?.();
        return letter;
      });
      return sent.outcome === 'sent' ? { ...sent, ref: message.id } : sent;
    },
    async check() {
      const error = await post.check();
      if (error === null) return null;
      log.warn('the mail server cannot be used', { code: error.code ?? 'none', answer: error.responseCode ?? null });
      return error.code === 'EAUTH' ? 'mail-login-refused' : 'mail-unreachable';
    },
    stop: () => post.close(),
  };
}
