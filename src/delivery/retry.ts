/** What becomes of a message after one sending: a table of outcomes, and how long to wait before the next try. Pure. */
import type { Instant } from '../core/units.ts';
import type { ChannelName, Sent } from '../messages.ts';
import type { Owed, Settlement } from '../store/contract.ts';

/** Whether a second copy is not seen: the page knows messages by their ids, the terminal is one pair of eyes. */
export const repeatsDoNoHarm: { readonly [name in ChannelName]: boolean } = {
  terminal: true,
  web: true,
  telegram: false,
  mail: false,
};

const firstWaitMs = 1_000;
const longestWaitMs = 15 * 60_000;
/** A call to pour is of no use an hour late; a reply is, even the next day. */
const worthMs = { timer: 60 * 60_000, reply: 24 * 60 * 60_000, reminder: 24 * 60 * 60_000, edit: 60 * 60_000 } as const;
/** Time for the other side to settle before what may have arrived is sent once more. */
const doubtWaitMs = 2_000;

export function settlementOf(owed: Owed, sent: Sent, now: Instant): Settlement {
  switch (sent.outcome) {
    case 'sent':
      return { kind: 'sent', ref: sent.ref };
    case 'retry':
      return retried(owed, sent.notBefore ?? now + backoffMs(owed.attempts), sent.why);
    case 'unknown':
      return repeatsDoNoHarm[owed.address.channel]
        ? retried(owed, now + backoffMs(owed.attempts), sent.why)
        : { kind: 'doubt', at: now + doubtWaitMs, why: sent.why };
    case 'unreachable':
      return { kind: 'unreachable', why: sent.why };
    case 'refused':
      return { kind: 'give-up', why: sent.why };
    default:
      return sent satisfies never;
  }
}

function retried({ due, priority }: Owed, at: Instant, why: string): Settlement {
  return at - due > worthMs[priority] ? { kind: 'give-up', why } : { kind: 'retry', at, why };
}

export function backoffMs(attempts: number): number {
  return Math.min(firstWaitMs * 2 ** attempts, longestWaitMs);
}
