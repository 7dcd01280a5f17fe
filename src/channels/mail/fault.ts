/** What can go wrong between us and the mail server, and what becomes of a letter then. */
import type { Sent } from '../../messages.ts';

/** What the client tells of a failure. Its sentences may quote a letter or a password, so they go no further than here. */
export interface MailError extends Error {
  readonly code?: string | undefined;
  readonly command?: string | undefined;
  readonly responseCode?: number | undefined;
}

export interface Failure {
  readonly error: MailError;
  /** A byte of the letter may have left: without an answer nobody knows whether it arrived. */
  readonly begun: boolean;
}

type NotSent = Exclude<Sent, { readonly outcome: 'sent' }>;

/** What is wrong with our own login or sender is wrong for every letter, until the shopkeeper looks after it. */
const settingsWaitMs = 60_000;

/** RFC 5321 §4.2.1: 4yz may go well later, 5yz never; 503 says that the two lost track of each other. */
export function outcomeOf({ error, begun }: Failure, now: number): NotSent {
  const { responseCode: answer, command = '' } = error;
  if (isOurOwn(error)) return { outcome: 'retry', notBefore: now + settingsWaitMs, why: whyOf(error) };
  if (answer === undefined) return { outcome: begun ? 'unknown' : 'retry', why: whyOf(error) };
  if (answer < 500 || answer === 503) return { outcome: 'retry', why: `answer-${answer}` };
  return { outcome: 'refused', why: command === 'RCPT TO' ? `no-such-address ${answer}` : `answer-${answer}` };
}

function isOurOwn({ code, command = '', responseCode = 0 }: MailError): boolean {
  if (code === 'EAUTH' || code === 'ETLS') return true;
  return responseCode >= 500 && responseCode !== 503 && !['RCPT TO', 'DATA'].includes(command);
}

/** A code in capitals: never the client's sentences. */
function whyOf({ code = '', responseCode }: MailError): string {
  const word = /^[A-Z][A-Z0-9_]+$/.test(code) ? code : 'broken';
  return responseCode === undefined ? word : `${word} ${responseCode}`;
}
