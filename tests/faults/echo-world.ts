/** All that the other side of the echo house saw, over all lives of the house. */
import { copyFileSync, existsSync } from 'node:fs';
import { createInterface } from 'node:readline';
import { setTimeout as pause } from 'node:timers/promises';
import type { ChannelName } from '../../src/messages.ts';
import { openDatabase } from '../../src/store/sqlite/database.ts';
import { startService, type Service } from '../app/service.ts';
import { echoHouse, watch } from './programs.ts';

interface Told {
  readonly kept?: string;
  readonly id?: string;
  readonly chat?: string;
  readonly text?: string;
  readonly at?: number;
  readonly memory?: Memory;
}

export interface Memory {
  readonly rss: number;
  readonly heapUsed: number;
}

export interface Said {
  readonly chat: string;
  readonly text: string;
  /** When, by the clock of the house. */
  readonly at: number;
}

export class EchoWorld {
  readonly file: string;
  readonly channel: ChannelName;
  readonly chats: number;
  readonly kept = new Set<string>();
  readonly unkept = new Map<string, string>();
  readonly copies = new Map<string, number>();
  /** As it was said first. */
  readonly said = new Map<string, Said>();
  memory: Memory | null = null;
  private next = 0;
  private lives = 0;

  constructor(file: string, channel: ChannelName, chats: number) {
    this.file = file;
    this.channel = channel;
    this.chats = chats;
  }

  hear({ kept, id, chat = '', text = '', at = 0, memory }: Told): void {
    if (memory) this.memory = memory;
    if (kept !== undefined) {
      this.kept.add(kept);
      this.unkept.delete(kept);
    }
    if (id === undefined) return;
    this.copies.set(id, (this.copies.get(id) ?? 0) + 1);
    if (!this.said.has(id)) this.said.set(id, { chat, text, at });
  }

  /** One more message of the next chat, as a line for the house. */
  write(text = `t${this.next}`): string {
    const n = this.next++;
    const chat = `c${n % this.chats}`;
    const updateId = `u${n}`;
    const what = { kind: 'text', text };
    const line = JSON.stringify({ channel: this.channel, updateId, from: chat, chat, receivedAt: Date.now(), what });
    this.unkept.set(updateId, line);
    return line;
  }

  get written(): number {
    return this.next;
  }

  /** `watched`: may be told to die at a statement. */
  live({ watched = false, node = [] as readonly string[] } = {}): Service {
    // Every second life follows a command that used the file and closed it: then what comes is handled as it is kept.
    if (this.lives++ % 2 === 1) closeProperly(this.file);
    const service = startService({
      script: echoHouse,
      node: [...node, ...(watched ? ['--import', watch] : [])],
      args: [this.file, this.channel],
    });
    createInterface({ input: service.child.stdout }).on('line', (line) => {
      // A line may be cut off by a kill.
      if (line.endsWith('}')) this.hear(JSON.parse(line) as Told);
    });
    service.child.stdin.on('error', () => {});
    return service;
  }

  /** As a channel does: what was not acknowledged is delivered again, and new things come in all the while. */
  async load(service: Service, forMs: number): Promise<void> {
    for (const line of this.unkept.values()) tell(service, line);
    const end = performance.now() + forMs;
    while (performance.now() < end) {
      for (let i = 0; i < 2; i++) tell(service, this.write());
      await pause(3);
    }
  }

  /** Resolves when nothing new is heard for longer than the pace of any channel holds a chat. */
  async settled(quietMs = 1_300): Promise<void> {
    for (let before = -1; before !== this.copies.size + this.kept.size || this.unkept.size > 0;) {
      before = this.copies.size + this.kept.size;
      await pause(quietMs);
    }
  }

  /** Which of a chat's own messages were answered, wakes apart. */
  answersOf(chat: string): readonly number[] {
    const texts = [...this.said.values()]
      .filter((said) => said.chat === chat)
      .map(({ text }) => text.split(' ')[1] ?? '');
    return texts.flatMap((text) => (/^t\d+$/.test(text) ? [Number(text.slice(1))] : [])).toSorted(byNumber);
  }

  textsOf(chat: number): readonly number[] {
    const all = [...this.kept].map((updateId) => Number(updateId.slice(1)));
    return all.filter((n) => n % this.chats === chat).toSorted(byNumber);
  }

  /** Kept, and no answer was seen. */
  missing(): readonly string[] {
    const answered = new Set(Array.from({ length: this.chats }, (_, c) => this.answersOf(`c${c}`)).flat());
    return [...this.kept].filter((updateId) => !answered.has(Number(updateId.slice(1))));
  }
}

/** As any command between two lives does. */
export function closeProperly(file: string): void {
  if (existsSync(file)) openDatabase(file).close();
}

/** A new file, as it is left by a process that died. */
export function leaveOpen(file: string): void {
  const db = openDatabase(`${file}.open`);
  for (const part of ['', '-wal']) copyFileSync(`${file}.open${part}`, `${file}${part}`);
  db.close();
}

const byNumber = (a: number, b: number): number => a - b;

export function tell({ child }: Service, line: string): void {
  child.stdin.write(`${line}\n`);
}

export async function die({ child, ended }: Service): Promise<void> {
  child.kill('SIGKILL');
  await ended;
}

/** Stops in order; how long that took, and how it ended. */
export async function stop({
  child,
  ended,
}: Service): Promise<{ readonly code: number | null; readonly tookMs: number }> {
  const asked = performance.now();
  child.kill('SIGTERM');
  const { code } = await ended;
  return { code, tookMs: performance.now() - asked };
}

export interface Books {
  readonly integrity: string;
  readonly waiting: number;
  readonly open: number;
  readonly givenUp: number;
  readonly tasks: number;
}

/** `channel`: what was given up of this one alone. */
export function booksOf(file: string, channel = '%'): Books {
  const db = openDatabase(file);
  const count = (sql: string): number => db.prepare<[], number>(sql).pluck().get() ?? 0;
  const books = {
    integrity: db.pragma('integrity_check', { simple: true }) as string,
    waiting: count(`SELECT count(*) FROM inbox WHERE status = 'waiting'`),
    open: count(`SELECT count(*) FROM outbox WHERE status NOT IN ('sent', 'gave-up', 'withdrawn', 'overtaken')`),
    givenUp: count(`SELECT count(*) FROM outbox WHERE status = 'gave-up' AND channel LIKE '${channel}'`),
    tasks: count(`SELECT count(*) FROM task WHERE task = 'undelivered'`),
  };
  db.close();
  return books;
}
