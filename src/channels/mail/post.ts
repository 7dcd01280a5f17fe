/** The way to the mail server: one connection, kept open while there is something to send, one letter after the other. */
import { Readable } from 'node:stream';
import SMTPConnection from 'nodemailer/lib/smtp-connection';
import { makeInTurn } from '../../in-turn.ts';
import type { Sent } from '../../messages.ts';
import { outcomeOf, type MailError } from './fault.ts';
import type { Envelope } from './letter.ts';

export interface MailServer {
  readonly host: string;
  readonly port: number;
  /** TLS from the first byte; else it is begun as soon as the server can (STARTTLS). */
  readonly secure: boolean;
  readonly login: { readonly user: string; readonly pass: string } | null;
}

export interface PostLimits {
  /** For finding, reaching and greeting the server, and for the login. */
  readonly connectMs: number;
  /** For one letter, however slowly the server answers. */
  readonly letterMs: number;
  /** A letter that has waited so long for those before it is handed back. */
  readonly queueMs: number;
  /** An idle connection is given up after this. */
  readonly idleMs: number;
}

/** Waiting, connecting and sending stay under the minute after which delivery takes a letter for lost, agreeing anew included. */
export const usualLimits: PostLimits = { connectMs: 10_000, letterMs: 25_000, queueMs: 20_000, idleMs: 20_000 };

/** For agreeing anew after a refused letter; a new line costs no more. */
const resetMs = 2_000;

export interface Post {
  send(envelope: Envelope, letter: () => Promise<Buffer>): Promise<Sent>;
  /** Whether a letter could go; null when it could. */
  check(): Promise<MailError | null>;
  /** Lets the letter under way finish, sends no other, and says good-bye. */
  close(): Promise<void>;
}

type Attempt = { readonly error: MailError; readonly begun: boolean } | null;

export function makePost(server: MailServer, now: () => number, limits: PostLimits = usualLimits): Post {
  let line: SMTPConnection | null = null;
  let idle: NodeJS.Timeout | undefined;
  const inTurn = makeInTurn();
  let closed = false;

  const hangUp = (): void => {
    line?.close();
    line = null;
  };
  const sayGoodBye = (): void => {
    line?.quit();
    line = null;
  };
  const rest = (): void => {
    idle = setTimeout(sayGoodBye, limits.idleMs).unref();
  };
  const connected = async (): Promise<SMTPConnection> => {
    clearTimeout(idle);
    if (line !== null) return line;
    const opened = await connect(server, limits);
    opened.once('end', () => {
      if (line === opened) line = null;
    });
    line = opened;
    return opened;
  };
  const deliver = async (envelope: Envelope, letter: Buffer): Promise<Sent> => {
    const failed = await connected().then(
      (connection) => attempt(connection, { envelope, letter, letterMs: limits.letterMs }),
      (error: MailError): Attempt => ({ error, begun: false }),
    );
    if (failed !== null && !(await isReset(failed.error, line))) hangUp();
    rest();
    return failed === null ? { outcome: 'sent', ref: '' } : outcomeOf(failed, now());
  };
  return {
    send(envelope, letter) {
      const askedAt = now();
      return inTurn(async () => {
        if (closed) return { outcome: 'retry', why: 'stopped' };
        if (now() - askedAt > limits.queueMs) return { outcome: 'retry', why: 'queue-too-long' };
        return deliver(envelope, await letter());
      });
    },
    check: () =>
      inTurn(() =>
        connected()
          .then(
            () => null,
            (error: MailError) => error,
          )
          .finally(rest),
      ),
    async close() {
      closed = true;
      await inTurn(() => Promise.resolve());
      clearTimeout(idle);
      sayGoodBye();
    },
  };
}

const tooSlow = (): MailError => Object.assign(new Error('the server is too slow'), { code: 'ETIMEDOUT' });

function connect({ host, port, secure, login }: MailServer, limits: PostLimits): Promise<SMTPConnection> {
  const isHere = ['localhost', '127.0.0.1', '::1'].includes(host);
  const connection = new SMTPConnection({
    host,
    port,
    secure,
    // A password is never sent in the clear, except to this very machine.
    ...(isHere ? { ignoreTLS: true } : { requireTLS: !secure && login !== null }),
    connectionTimeout: limits.connectMs,
    // A silence ends the line only when it is longer than any of ours: the answer to a letter may take long.
    socketTimeout: Math.max(limits.letterMs, limits.idleMs) + 1_000,
    allowInternalNetworkInterfaces: true,
  });
  return new Promise((resolve, reject) => {
    const done = (error?: MailError | null): void => {
      clearTimeout(patience);
      if (!error) return resolve(connection);
      connection.close();
      reject(error);
    };
    // The client's own limit ends with the greeting.
    const patience = setTimeout(() => done(tooSlow()), limits.connectMs);
    // Later ones end the connection, and the letter under way is told by itself.
    connection.on('error', done);
    connection.connect((error?: MailError | null) => {
      if (error || login === null) return done(error);
      if (!connection.allowsAuth)
        return done(Object.assign(new Error('the server asks for no login'), { code: 'EAUTH' }));
      connection.login({ user: login.user, pass: login.pass }, done);
    });
  });
}

interface Errand {
  readonly envelope: Envelope;
  readonly letter: Buffer;
  readonly letterMs: number;
}

function attempt(connection: SMTPConnection, { envelope, letter, letterMs }: Errand): Promise<Attempt> {
  let begun = false;
  const source = new Readable({
    read() {
      begun = true;
      this.push(letter);
      this.push(null);
    },
  });
  return new Promise((resolve) => {
    const give = (error: MailError | null): void => {
      clearTimeout(patience);
      resolve(error && { error, begun });
    };
    const patience = setTimeout(() => {
      give(tooSlow());
      connection.close();
    }, letterMs);
    connection.send({ from: envelope.from, to: [envelope.to] }, source, give);
  });
}

/** A letter refused leaves the connection as good as new, once both agree on it; any other failure ends it. */
function isReset({ code = '', responseCode = 421 }: MailError, line: SMTPConnection | null): Promise<boolean> {
  if (line === null || responseCode === 421 || !['EENVELOPE', 'EMESSAGE'].includes(code)) return Promise.resolve(false);
  return new Promise((resolve) => {
    const give = (isAgreed: boolean): void => {
      clearTimeout(patience);
      resolve(isAgreed);
    };
    const patience = setTimeout(() => give(false), resetMs);
    line.once('end', () => give(false));
    line.reset((error) => give(!error));
  });
}
