/** A real mail server on this machine that keeps what it accepts, and fails where it is told to. */
import { once } from 'node:events';
import type { AddressInfo, Socket } from 'node:net';
import PostalMime, { type Email } from 'postal-mime';
import { SMTPServer, type SMTPServerOptions, type SMTPServerSession } from 'smtp-server';

/** Where in a letter's way something goes wrong. */
export type Stage = 'greeting' | 'sender' | 'recipient' | 'letter';

export interface Trouble {
  readonly at: Stage;
  /** What the server answers. */
  readonly answer?: number;
  /** The line goes dead; of a letter, after it was kept. */
  readonly drop?: true;
  readonly delayMs?: number;
  /** Once unless told. */
  readonly times?: number;
}

export interface Kept {
  readonly to: readonly string[];
  readonly raw: string;
}

export interface PostOffice {
  readonly port: number;
  readonly kept: readonly Kept[];
  /** How often it was called up. */
  calls(): number;
  /** Lines open now. */
  open(): number;
  next(trouble: Trouble): void;
  read(n: number): Promise<Email>;
  /** Ends every line, as a server does that is started anew. */
  hangUp(): void;
  close(): Promise<void>;
}

type Answer = (error?: Error | null) => void;

export async function openPostOffice(options: SMTPServerOptions = {}): Promise<PostOffice> {
  const kept: Kept[] = [];
  const troubles: { trouble: Trouble; left: number }[] = [];
  let calls = 0;

  const due = (at: Stage): Trouble | null => {
    const found = troubles.find((one) => one.trouble.at === at && one.left > 0);
    if (found) found.left--;
    return found?.trouble ?? null;
  };
  const pass = (at: Stage, session: SMTPServerSession, answer: Answer): void => {
    const trouble = due(at);
    const say = (): void => {
      if (trouble?.drop) socketOf(session)?.destroy();
      else answer(trouble?.answer === undefined ? null : asAnswer(trouble.answer));
    };
    if (trouble?.delayMs === undefined) say();
    else setTimeout(say, trouble.delayMs);
  };
  const lines = new Map<string, Socket>();
  const socketOf = ({ id }: SMTPServerSession): Socket | undefined => lines.get(id);
  const server = new SMTPServer({
    authOptional: true,
    disabledCommands: ['STARTTLS'],
    logger: false,
    onConnect(session, answer) {
      calls++;
      pass('greeting', session, answer);
    },
    onMailFrom: (_address, session, answer) => pass('sender', session, answer),
    onRcptTo: (_address, session, answer) => pass('recipient', session, answer),
    onData(stream, session, answer) {
      const parts: Buffer[] = [];
      stream.on('data', (part: Buffer) => parts.push(part));
      stream.on('end', () => {
        const to = session.envelope.rcptTo.map(({ address }) => address);
        // Refused means not kept; a line that goes dead says nothing of it.
        if (
          troubles.every((one) => one.trouble.at !== 'letter' || one.left === 0 || one.trouble.answer === undefined)
        ) {
          kept.push({ to, raw: Buffer.concat(parts).toString() });
        }
        pass('letter', session, answer);
      });
    },
    ...options,
  });
  // The session knows no socket: the connection that made it does.
  const { connections } = server as unknown as { connections: Set<{ id: string; _socket: Socket }> };
  server.server.on('connection', () =>
    setImmediate(() => {
      for (const { id, _socket: socket } of connections) lines.set(id, socket);
    }),
  );
  server.on('error', () => undefined);
  server.listen(0, '127.0.0.1');
  await once(server.server, 'listening');
  return {
    port: (server.server.address() as AddressInfo).port,
    kept,
    calls: () => calls,
    open: () => connections.size,
    next: (trouble) => void troubles.push({ trouble, left: trouble.times ?? 1 }),
    read: (n) => PostalMime.parse(kept[n]?.raw ?? ''),
    hangUp() {
      for (const { _socket: socket } of connections) socket.end();
    },
    async close() {
      for (const socket of lines.values()) socket.destroy();
      await new Promise<void>((done) => server.close(done));
    },
  };
}

function asAnswer(code: number): Error {
  return Object.assign(new Error('so it is'), { responseCode: code });
}
