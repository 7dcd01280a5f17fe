/** The sides from which people reach the whole house; each knows what it sent, and what came back. Mail is in mail-side.ts. */
import { spawn, type ChildProcess } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { join } from 'node:path';
import { projectRoot } from '../../src/project-root.ts';
import { ask } from '../channels/telegram/bot-api/control.ts';
import { aboutPost, knock, newId } from '../channels/web/knock.ts';
import { sideBySide } from './fault.ts';

export interface Side {
  readonly name: string;
  /** What the house must be told to be reached from here. */
  readonly env: Readonly<Record<string, string>>;
  /** People write, to the house at this address; what fails is the side's own to deliver again. */
  write(address: string, people: number): Promise<void>;
  /** Delivers again what was not acknowledged, as the other side does by itself. */
  again(address: string): Promise<void>;
  /** Who asked and has no answer. */
  unanswered(address: string): Promise<readonly string[]>;
  /** Who wrote. */
  count(): number;
  /** The most copies one person saw of their answer, and how many saw more than one. */
  copies(address: string): Promise<{ readonly most: number; readonly doubled: number }>;
  end(): void;
}

/** Every answer names the size that was asked for. */
const sizeOf = (n: number): string => `${60 + (n % 140)} ml`;
const questionOf = (n: number): string => `tieguanyin in a ${sizeOf(n)} gaiwan`;

const standIn = join(projectRoot, 'tests/channels/telegram/bot-api/serve.mjs');

export async function telegramSide(): Promise<Side> {
  const child: ChildProcess = spawn(process.execPath, [standIn], { stdio: ['ignore', 'pipe', 'inherit'] });
  const line = await new Promise<string>((resolve) => child.stdout?.once('data', (chunk) => resolve(String(chunk))));
  const { root, token } = JSON.parse(line) as { readonly root: string; readonly token: string };
  const asked = new Map<number, string>();
  const answers = async (person: number): Promise<number> => {
    const seen = (await ask(root, 'seen', person)) as readonly { readonly text: string }[];
    return seen.filter(({ text }) => text.includes(asked.get(person) ?? '')).length;
  };
  return {
    name: 'telegram',
    env: { TELEGRAM_TOKEN: token, TELEGRAM_API_ROOT: root },
    async write(_, people) {
      for (let i = 0; i < people; i++) {
        const person = 1000 + asked.size;
        asked.set(person, sizeOf(asked.size));
        await ask(root, 'say', person, questionOf(asked.size - 1), 'en');
      }
    },
    // Its queue keeps what was not confirmed.
    again: () => Promise.resolve(),
    async unanswered() {
      const open: string[] = [];
      for (const person of asked.keys()) if ((await answers(person)) === 0) open.push(String(person));
      return open;
    },
    count: () => asked.size,
    async copies() {
      const all: number[] = [];
      for (const person of asked.keys()) all.push(await answers(person));
      return { most: Math.max(0, ...all), doubled: all.filter((n) => n > 1).length };
    },
    end: () => void child.kill('SIGTERM'),
  };
}

interface Sheet {
  readonly cookie: string;
  /** In their order; a guided brew is six. */
  readonly texts: { readonly text: string; readonly updateId: string; kept: boolean }[];
  /** What must be read in the end. */
  readonly awaited: readonly string[];
}

/** A guided brew: each message rests on the one before, and the last answer on them all. */
const guided = ['dong ding oolong in a 120 ml gaiwan', 'guide me', 'ready', 'done', 'the leaf is in', 'rinsed'];

export function pageSide(): Side {
  const sheets: Sheet[] = [];
  const post = async (address: string, { cookie, texts }: Sheet): Promise<void> => {
    for (const one of texts.filter(({ kept }) => !kept)) {
      const headers = aboutPost(address.replace(/\/$/, ''), cookie);
      const body = JSON.stringify({ updateId: one.updateId, language: 'en', what: { kind: 'text', text: one.text } });
      const status = await knock(address, '/sheet', { method: 'POST', headers, body }).then(
        (answer) => answer.status,
        () => 0,
      );
      one.kept = status === 202;
      // The next would overtake it.
      if (!one.kept) return;
    }
  };
  const told = async (address: string, { cookie }: Sheet): Promise<string> => {
    const reading = await fetch(new URL('stream', address), { headers: { cookie } }).catch(() => null);
    if (!reading?.ok || !reading.body) return '';
    let text = '';
    const stop = setTimeout(() => void reading.body?.cancel().catch(() => {}), 2_000);
    try {
      for await (const chunk of reading.body) {
        text += new TextDecoder().decode(chunk);
        if (text.includes('event: caught-up') || text.includes('event: beat')) break;
      }
    } catch {
      // Ended by ourselves.
    }
    clearTimeout(stop);
    return text;
  };
  return {
    name: 'page',
    env: {},
    async write(address, people) {
      await sideBySide(people, people, async () => {
        const n = sheets.length;
        const texts = n % 4 === 3 ? guided : [questionOf(n)];
        const awaited = n % 4 === 3 ? ['Infusion 1, '] : [sizeOf(n)];
        // As a page has one that has been open since yesterday.
        const cookie = `sheet=${randomBytes(32).toString('base64url')}`;
        const sheet = { cookie, texts: texts.map((text) => ({ text, updateId: newId(), kept: false })), awaited };
        sheets.push(sheet);
        await post(address, sheet);
      });
    },
    async again(address) {
      const waiting = sheets.filter(({ texts }) => texts.some(({ kept }) => !kept));
      await sideBySide(waiting.length, 8, (n) => post(address, waiting[n]!));
    },
    async unanswered(address) {
      const open: string[] = [];
      for (const sheet of sheets) {
        const text = await told(address, sheet);
        if (!sheet.awaited.every((one) => text.includes(one))) open.push(sheet.texts[0]?.text ?? '');
      }
      return open;
    },
    count: () => sheets.reduce((sum, { texts }) => sum + texts.length, 0),
    // The page knows a message by its id, and shows it once.
    copies: () => Promise.resolve({ most: 1, doubled: 0 }),
    end: () => {},
  };
}
