/** Every channel there is, at its real other end, held to the contract of all. */
import { describe } from 'vitest';
import { makeMailChannel } from '../../src/channels/mail/mail-channel.ts';
import { makeTerminalChannel } from '../../src/channels/terminal/terminal-channel.ts';
import { makeLog } from '../../src/log.ts';
import type { ChannelName } from '../../src/messages.ts';
import { holdsTheContract, type Ends } from './contract.ts';
import { openPostOffice } from './mail/post-office.ts';
import { startStandIn } from './telegram/bot-api/server.ts';
import { channelAt, keepLog } from './telegram/harness.ts';
import { aboutPost, emptyPage, follow, isCaughtUp, knock, posted, visit, type OpenStream } from './web/knock.ts';
import { muteWeb } from './web/mute-web.ts';

const drawPicture = () => Promise.resolve(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
const ladder = { title: 'plan', rungs: [{ n: 1, seconds: 9, label: '9 s', length: 1, ink: 1 }] };

function terminal(): Promise<Ends> {
  const shown: string[] = [];
  const show = (lines: readonly string[]): void => void shown.push(lines.join('\n'));
  const channel = makeTerminalChannel({ deviceLanguage: null, now: () => Date.now(), drawLadder: () => [], show });
  const write = (text: string): Promise<unknown> => channel.enter(text);
  return Promise.resolve({ channel, chat: 'me', write, seen: () => shown, end: () => Promise.resolve() });
}

async function web(): Promise<Ends> {
  const channel = muteWeb({ log: makeLog('silent'), pageFolder: emptyPage() });
  let stream: OpenStream | null = null;
  let cookie = '';
  const write = async (text: string): Promise<unknown> => {
    const url = channel.address().replace(/\/$/, '');
    if (stream === null) {
      cookie = await visit(url);
      stream = await follow(url, { cookie });
      await stream.until(isCaughtUp);
    }
    return knock(url, '/sheet', {
      method: 'POST',
      headers: aboutPost(url, cookie),
      body: posted({ kind: 'text', text }),
    });
  };
  const seen = (): readonly string[] =>
    (stream?.events ?? []).filter(({ event }) => event === 'said').map(({ data }) => data);
  const end = (): Promise<unknown> => Promise.resolve(stream?.close());
  return Promise.resolve({ channel, chat: '', write, seen, end });
}

async function telegram(): Promise<Ends> {
  const server = await startStandIn({});
  const { channel } = channelAt(server, { drawPicture });
  const seen = (): readonly string[] =>
    ['sendMessage', 'sendPhoto']
      .flatMap((method) => server.record.of(method))
      .map(({ values }) => {
        const { text, caption } = values as { readonly text?: string; readonly caption?: string };
        return text ?? caption ?? '';
      });
  const write = (text: string): Promise<unknown> => Promise.resolve(server.people.say(1, text));
  return { channel, chat: '1', write, seen, end: () => server.close() };
}

async function mail(): Promise<Ends> {
  const office = await openPostOffice();
  const head = { from: 'tea@quillfern.example', nameIn: () => 'Quillfern', footIn: () => 'foot' };
  const server = { host: '127.0.0.1', port: office.port, secure: false, login: null };
  const channel = makeMailChannel({ server, head, log: keepLog(), now: () => Date.now() });
  const seen = (): readonly string[] => office.kept.map(({ raw }) => plainOf(raw));
  return { channel, chat: 'mei@student.example', write: null, seen, end: () => office.close() };
}

/** A letter's parts as a reader has them: base64 or quoted-printable undone. */
function plainOf(raw: string): string {
  const bytes = raw
    .replaceAll(/=\r?\n/g, '')
    .replaceAll(/=([\dA-F]{2})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
  const parts = raw.split(/\r?\n\r?\n/).map((part) => Buffer.from(part, 'base64').toString('utf8'));
  return [Buffer.from(bytes, 'latin1').toString('utf8'), ...parts].join('\n');
}

const all: { readonly [name in ChannelName]: () => Promise<Ends> } = { terminal, web, telegram, mail };

describe.each(Object.entries(all) as [ChannelName, () => Promise<Ends>][])('%s', holdsTheContract);
describe('telegram, with a picture', () => holdsTheContract('telegram', telegram, { ladder }));
