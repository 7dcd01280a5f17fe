/** Letters through a real mail server on this machine, and what becomes of them when it fails. */
import { createServer, type AddressInfo } from 'node:net';
import * as fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { makeMailChannel, type MailChannel, type MailDeps } from '../../../src/channels/mail/mail-channel.ts';
import type { Outgoing, Sent } from '../../../src/messages.ts';
import { keepLog } from '../telegram/harness.ts';
import { openPostOffice, type PostOffice, type Trouble } from './post-office.ts';

const head: MailDeps['head'] = {
  from: 'tea@quillfern.example',
  nameIn: (language) => (language === 'en' ? 'Quillfern Tea Room' : '羽蕨茶室'),
  footIn: (language) => `foot ${language}`,
};
const limits = { connectMs: 2_000, letterMs: 2_000, queueMs: 2_000, idleMs: 60_000 };
const file = { name: 'first-cup.ics', mediaType: 'text/calendar; method=CANCEL', text: 'BEGIN:茶', label: 'Calendar' };

let office: PostOffice;
let mail: MailChannel;
let log: ReturnType<typeof keepLog>;
const used: MailChannel[] = [];
const use = (server: Partial<MailDeps['server']> = {}, more: Partial<MailDeps['limits']> = {}): void => {
  log = keepLog();
  mail = makeMailChannel({
    server: { host: '127.0.0.1', port: office.port, secure: false, login: null, ...server },
    head,
    log,
    now: () => Date.now(),
    limits: { ...limits, ...more },
  });
  used.push(mail);
};
beforeEach(async () => {
  office = await openPostOffice();
  use();
});
afterEach(async () => {
  await Promise.all(used.splice(0).map((one) => one.stop()));
  await office.close();
});

const message = (more: Partial<Outgoing> = {}): Outgoing => ({
  id: '7-tag',
  channel: 'mail',
  chat: 'mei@student.example',
  language: 'en',
  paragraphs: ['You are coming to The first cup.', 'Bring a cup.'],
  choices: [{ key: 'k', label: 'Can’t come' }],
  ...more,
});

describe('a letter', () => {
  it('comes from the shop, in the language of who reads it, with its file under its method', async () => {
    const sent = await mail.send(
      message({ language: 'zh-Hant', subject: '第一杯茶', paragraphs: ['您來上課。'], file }),
    );
    expect(sent).toEqual({ outcome: 'sent', ref: '7-tag' });
    expect(office.kept[0]?.to).toEqual(['mei@student.example']);
    const letter = await office.read(0);
    expect(letter).toMatchObject({
      from: { name: '羽蕨茶室', address: head.from },
      to: [{ address: 'mei@student.example' }],
      subject: '第一杯茶',
      messageId: '<7-tag@quillfern.example>',
    });
    expect(letter.text?.trim()).toBe('您來上課。\n\n-- \nfoot zh-Hant');
    expect(letter.attachments).toMatchObject([{ filename: file.name, mimeType: 'text/calendar', method: 'CANCEL' }]);
    expect(office.kept[0]?.raw).toContain(Buffer.from(file.text).toString('base64'));
    const headers = Object.fromEntries(letter.headers.map(({ key, value }) => [key, value]));
    expect(headers).toMatchObject({ 'content-language': 'zh-Hant', 'auto-submitted': 'auto-generated' });
  });

  it('says what it is about, or how it begins, and a second copy bears the same name', async () => {
    await mail.send(message());
    await mail.send(message({ paragraphs: [`${'x'.repeat(120)}\nmore`] }));
    const letters = [await office.read(0), await office.read(1)];
    expect(letters.map(({ subject }) => subject)).toEqual([message().paragraphs[0], `${'x'.repeat(99)}…`]);
    expect(letters[1]?.messageId).toBe(letters[0]?.messageId);
  });

  it('cannot be made to carry another header, another recipient or another file, whatever it says', async () => {
    const nasty = fc
      .string({ unit: 'binary', maxLength: 60 })
      .map((text) => `a\r\nBcc: evil@example.org\r\n\r\n${text}\n.\r\n`);
    await fc.assert(
      fc.asyncProperty(nasty, async (text) => {
        const before = office.kept.length;
        await mail.send(
          message({ subject: text, paragraphs: [text], file: { ...file, name: text.slice(0, 80), text } }),
        );
        expect(office.kept).toHaveLength(before + 1);
        expect(office.kept[before]?.to).toEqual(['mei@student.example']);
        const letter = await office.read(before);
        expect(letter.bcc).toBeUndefined();
        expect(letter.attachments).toHaveLength(1);
        expect(letter.from?.address).toBe(head.from);
      }),
      { numRuns: 12 },
    );
  });

  it.each([
    'mei@student.example\r\nRCPT TO:<evil@example.org>',
    'mei@student.example>, <evil@example.org',
    'mei@student.example,evil@example.org',
    'Mei <mei@student.example>',
    'no address',
    '',
  ])('never goes to %j', async (chat) => {
    expect(await mail.send(message({ chat }))).toEqual({ outcome: 'refused', why: 'address-wrong' });
    expect(office.calls()).toBe(0);
  });

  it('goes one after the other over one line, however many are sent at once', async () => {
    const sent = await Promise.all(Array.from({ length: 40 }, (_, i) => mail.send(message({ id: `${i}-tag` }))));
    expect(new Set(sent.map(({ outcome }) => outcome))).toEqual(new Set(['sent']));
    expect(office.kept).toHaveLength(40);
    expect(office.calls()).toBe(1);
  });
});

describe('what becomes of it', () => {
  it.each<[string, Trouble, Sent['outcome'], string, number]>([
    ['greylisted', { at: 'recipient', answer: 451 }, 'retry', 'answer-451', 0],
    ['no such mailbox', { at: 'recipient', answer: 550 }, 'refused', 'no-such-address 550', 0],
    [
      'a sender that is not liked is a matter of the settings',
      { at: 'sender', answer: 553 },
      'retry',
      'EENVELOPE 553',
      0,
    ],
    ['too busy', { at: 'sender', answer: 421 }, 'retry', 'answer-421', 0],
    ['not served at all', { at: 'greeting', answer: 554 }, 'retry', 'EPROTOCOL 554', 0],
    ['the letter put off', { at: 'letter', answer: 452 }, 'retry', 'answer-452', 0],
    ['the letter refused', { at: 'letter', answer: 554 }, 'refused', 'answer-554', 0],
    ['cut off before the letter', { at: 'recipient', drop: true }, 'retry', 'ECONNECTION', 0],
    ['cut off after the letter', { at: 'letter', drop: true }, 'unknown', 'ECONNECTION', 1],
    ['slow before the letter', { at: 'sender', delayMs: 3_000 }, 'retry', 'ETIMEDOUT', 0],
    ['slow after the letter', { at: 'letter', delayMs: 3_000 }, 'unknown', 'ETIMEDOUT', 1],
  ])('%s', async (_case, trouble, outcome, why, kept) => {
    if (trouble.delayMs !== undefined) use({}, { letterMs: 300 });
    office.next(trouble);
    expect(await mail.send(message())).toMatchObject({ outcome, why });
    expect(office.kept).toHaveLength(kept);
    if (trouble.delayMs !== undefined) use();
    expect(await mail.send(message({ id: '8-tag' }))).toMatchObject({ outcome: 'sent' });
  });

  it('a refused letter costs no new line', async () => {
    office.next({ at: 'recipient', answer: 550 });
    for (const id of ['7-tag', '8-tag']) await mail.send(message({ id }));
    expect([office.kept.length, office.calls()]).toEqual([1, 1]);
  });

  it('a server that starts anew between two letters costs a try at most', async () => {
    await mail.send(message());
    office.hangUp();
    await expect.poll(() => office.open()).toBe(0);
    const outcomes = [await mail.send(message()), await mail.send(message())].map(({ outcome }) => outcome);
    expect(outcomes.at(-1)).toBe('sent');
    expect(outcomes).not.toContain('unknown');
  });

  it('nobody there: nothing is lost', async () => {
    const silent = createServer();
    await new Promise<void>((done) => silent.listen(0, '127.0.0.1', done));
    const { port } = silent.address() as AddressInfo;
    await new Promise((done) => silent.close(done));
    use({ port });
    expect(await mail.send(message())).toMatchObject({ outcome: 'retry', why: 'ESOCKET' });
    expect(await mail.check()).toBe('mail-unreachable');
    use({ host: 'mail.invalid' });
    expect(await mail.send(message())).toMatchObject({ outcome: 'retry', why: 'EDNS' });
  });

  it('what would wait too long behind a slow one is handed back untouched', async () => {
    use({}, { queueMs: 100 });
    office.next({ at: 'sender', delayMs: 400 });
    const [first, second] = await Promise.all([mail.send(message()), mail.send(message({ id: '8-tag' }))]);
    expect(first).toMatchObject({ outcome: 'sent' });
    expect(second).toEqual({ outcome: 'retry', why: 'queue-too-long' });
    expect(office.kept).toHaveLength(1);
  });
});

describe('the login', () => {
  const secret = 'open sesame';
  const withLogin = async (pass: string): Promise<void> => {
    await office.close();
    office = await openPostOffice({
      authOptional: false,
      allowInsecureAuth: true,
      onAuth: ({ username, password }, _session, answer) =>
        username === 'shop' && password === pass ? answer(null, { user: 'shop' }) : answer(new Error('no')),
    });
    use({ login: { user: 'shop', pass: secret } });
  };

  it('lets us in', async () => {
    await withLogin(secret);
    expect(await mail.check()).toBeNull();
    expect(await mail.send(message())).toMatchObject({ outcome: 'sent' });
  });

  it('refused is a matter of the settings, and its password is told nowhere', async () => {
    await withLogin('another');
    expect(await mail.check()).toBe('mail-login-refused');
    const sent = await mail.send(message());
    expect(sent).toMatchObject({ outcome: 'retry', why: 'EAUTH 535' });
    expect(sent.outcome === 'retry' && (sent.notBefore ?? 0) > Date.now() + 50_000).toBe(true);
    expect(JSON.stringify([sent, log.lines])).not.toMatch(/open sesame|b3BlbiBzZXNhbWU|mei@/);
  });

  it('is never told to a distant server in the clear', async () => {
    await withLogin(secret);
    use({ host: '127.0.0.2', login: { user: 'shop', pass: secret } });
    await office.close();
    let heard = '';
    const listener = createServer((socket) => {
      socket.write('220 here\r\n');
      socket.on('error', () => undefined);
      socket.on('data', (data) => {
        heard += data.toString();
        socket.write(data.toString().startsWith('EHLO') ? '250-here\r\n250 AUTH PLAIN LOGIN\r\n' : '500 what\r\n');
      });
    });
    await new Promise<void>((done) => listener.listen(office.port, '127.0.0.2', done));
    expect(await mail.send(message())).toMatchObject({ outcome: 'retry' });
    expect(heard).toContain('STARTTLS');
    expect(heard).not.toContain('AUTH');
    await new Promise((done) => listener.close(done));
  });
});

describe('at the end', () => {
  it('the letter under way is finished, no other begun, and good-bye said', async () => {
    office.next({ at: 'letter', delayMs: 200 });
    const under = mail.send(message());
    await expect.poll(() => office.kept.length).toBe(1);
    const waiting = mail.send(message({ id: '8-tag' }));
    await mail.stop();
    expect(await under).toMatchObject({ outcome: 'sent' });
    expect(await waiting).toEqual({ outcome: 'retry', why: 'stopped' });
    await expect.poll(() => office.open()).toBe(0);
  });
});
