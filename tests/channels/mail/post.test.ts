/** How long the post waits for the mail server, and when it hangs up. */
import { createServer, type AddressInfo, type Socket } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { makePost, type MailServer, type Post, type PostLimits } from '../../../src/channels/mail/post.ts';
import { openPostOffice } from './post-office.ts';

const limits: PostLimits = { connectMs: 1_000, letterMs: 20_000, queueMs: 20_000, idleMs: 60_000 };
const opened: { close(): Promise<void> }[] = [];
const kept = <T extends { close(): Promise<void> }>(one: T): T => {
  opened.push(one);
  return one;
};
const postTo = (server: Pick<MailServer, 'port'> & Partial<MailServer>, more: Partial<PostLimits> = {}): Post =>
  kept(
    makePost({ host: '127.0.0.1', secure: false, login: null, ...server }, () => Date.now(), { ...limits, ...more }),
  );
const send = (post: Post) =>
  post.send({ from: 'tea@quillfern.example', to: 'mei@student.example' }, () =>
    Promise.resolve(Buffer.from('Subject: tea\r\n\r\nIt is ready.\r\n')),
  );
afterEach(async () => {
  for (const one of opened.splice(0).toReversed()) await one.close();
});

describe('a slow server', () => {
  it('that takes a letter only after longer than connecting may last gets it once', async () => {
    const office = kept(await openPostOffice());
    office.next({ at: 'letter', delayMs: 1_500 });
    expect(await send(postTo(office))).toMatchObject({ outcome: 'sent' });
    expect([office.kept.length, office.calls()]).toEqual([1, 1]);
  });

  it('is given up when greeting and login together last too long, though neither does', async () => {
    const office = kept(
      await openPostOffice({
        authOptional: false,
        allowInsecureAuth: true,
        onAuth: (_login, _session, answer) => void setTimeout(answer, 700, null, { user: 'shop' }),
      }),
    );
    office.next({ at: 'greeting', delayMs: 700 });
    const post = postTo({ port: office.port, login: { user: 'shop', pass: 'any' } });
    expect(await send(post)).toEqual({ outcome: 'retry', why: 'ETIMEDOUT' });
    expect(office.kept).toHaveLength(0);
  });

  it('that will not agree anew after a refused letter is called up again for the next', async () => {
    const server = kept(await openBluntServer({ 'RCPT TO': '550 nobody', RSET: null }));
    // Without a limit of its own the wait would be as long as a letter's, and the test end before it.
    const post = postTo(server, { letterMs: 600_000 });
    expect(await send(post)).toMatchObject({ outcome: 'refused' });
    expect(await post.check()).toBeNull();
    expect(server.heard().match(/EHLO/g)).toHaveLength(2);
  });
});

describe('an idle line', () => {
  it.each<[string, (post: Post) => Promise<unknown>]>([
    ['a letter', send],
    ['a look at the server', (post) => post.check()],
  ])('ends with a good-bye after %s', async (_case, use) => {
    const server = kept(await openBluntServer());
    await use(postTo(server, { idleMs: 1_400 }));
    await expect.poll(() => server.heard(), { timeout: 20_000 }).toMatch(/QUIT\r\n$/);
  });
});

/** Says yes to everything but what it is told to answer; null: says nothing. Keeps what it hears. */
async function openBluntServer(answers: { readonly [command: string]: string | null } = {}) {
  let heard = '';
  const sockets = new Set<Socket>();
  const server = createServer((socket) => {
    sockets.add(socket);
    socket.write('220 here\r\n');
    socket.on('error', () => undefined);
    socket.on('data', (data) => {
      heard += data.toString();
      const usual = heard.endsWith('DATA\r\n') ? '354 go on' : heard.endsWith('\r\n') ? '250 yes' : null;
      const told = Object.entries(answers).find(([command]) => data.toString().startsWith(command));
      const answer = told === undefined ? usual : told[1];
      if (answer !== null) socket.write(`${answer}\r\n`);
    });
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  return {
    port: (server.address() as AddressInfo).port,
    heard: () => heard,
    async close() {
      for (const socket of sockets) socket.destroy();
      await new Promise((done) => server.close(done));
    },
  };
}
