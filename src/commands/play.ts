/** A conversation at a terminal with all the house behind it, and the playing of transcripts in it. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative } from 'node:path';
import { makeApp, type App } from '../app.ts';
import type { Content } from '../content.ts';
import { sayIn, stepIn } from '../own-content.ts';
import { makeTerminalChannel, type Sitter, type TerminalChannel } from '../channels/terminal/terminal-channel.ts';
import { systemClock, type Clock } from '../clock.ts';
import { databaseFile, type Config } from '../config.ts';
import { morningOf } from '../content/shop-data.ts';
import { instantOf } from '../core/lessons/calendar.ts';
import { signOf } from '../delivery/calendar.ts';
import { makeLog } from '../log.ts';
import type { Ladder } from '../messages.ts';
import { ladderText } from '../pictures/ladder.ts';
import { openSqliteStore } from '../store/sqlite/store.ts';
import { makeLetterbox } from './letterbox.ts';
import { makeToldClock, type ToldClock } from './told-clock.ts';
import { firstDifference, readTranscript, type Exchange } from './transcript.ts';

export interface Chat extends App {
  readonly terminal: TerminalChannel;
}

export interface Room {
  readonly config: Config;
  readonly content: Content;
  readonly deviceLanguage: string | null;
  readonly show: (lines: readonly string[], who: Sitter) => void;
  /** The world's own unless told. */
  readonly clock?: Clock;
  /** Shown instead of sent; without it nothing goes out by mail. */
  readonly letters?: (lines: readonly string[]) => void;
  readonly freshCode?: () => string;
}

/** When every transcript begins. */
export const transcriptStart = Date.UTC(2026, 0, 15, 16);

const drawLadder = (ladder: Ladder): readonly string[] => [ladder.title, ...ladderText(ladder).split('\n')];

export function makeChat(room: Room): Chat {
  const { config, content, deviceLanguage, show, letters, clock = systemClock, freshCode } = room;
  const terminal = makeTerminalChannel({ deviceLanguage, now: () => clock.now(), drawLadder, show });
  const app = makeApp({
    store: openSqliteStore(databaseFile(config)),
    step: stepIn(content),
    say: sayIn(content),
    sign: signOf(content.shop.name, config.mail?.from ?? null),
    channels: letters ? [terminal, makeLetterbox({ show: letters, drawLadder })] : [terminal],
    clock,
    log: makeLog(config.log),
    keepDays: config.keepDays,
    shopkeepers: config.shopkeepers,
    lessons: content.lessons,
    morning: morningOf(content.shop),
    ...(freshCode ? { freshCode } : {}),
  });
  return { ...app, terminal };
}

/** In a played conversation the shopkeeper sits at the same terminal. */
export const played = (config: Config, folder: string): Config => ({
  ...config,
  folder,
  shopkeepers: [{ channel: 'terminal', from: 'shop' }],
});

const marked = (lines: readonly string[], mark: string): readonly string[] => lines.map((line) => mark + line);

/** What is told of a played conversation, line by line; what the shopkeeper is told, and letters, are marked. In it nothing is left to chance. */
export function tellingOf(tell: (...lines: readonly string[]) => void): Pick<Room, 'show' | 'letters' | 'freshCode'> {
  return {
    show: (lines, who) => tell(...(who === 'me' ? lines : marked(lines, 'shop: '))),
    letters: (lines) => tell(...marked(lines, 'letter: ')),
    freshCode: () => 'QRST-2345',
  };
}

export interface Passing {
  readonly zone: string;
  readonly settled: () => Promise<void>;
}

/** Lets the time pass that a transcript's line says. */
export function goOn(
  clock: ToldClock,
  { passesMs = 0, leapsTo }: Pick<Exchange, 'passesMs' | 'leapsTo'>,
  { zone, settled }: Passing,
): Promise<void> {
  if (leapsTo === undefined) return clock.pass(passesMs, settled);
  return clock.leap(instantOf(leapsTo, zone), settled);
}

/** Plays one transcript in a database of its own; null when all was as written. */
export async function play(file: string, content: Content, config: Config): Promise<string | null> {
  const { deviceLanguage, exchanges } = readTranscript(readFileSync(file, 'utf8'));
  const folder = mkdtempSync(join(tmpdir(), 'ninthpour-chat-'));
  const answered: string[] = [];
  const telling = tellingOf((...lines) => void answered.push(...lines));
  const clock = makeToldClock(transcriptStart);
  const chat = makeChat({ config: played(config, folder), content, deviceLanguage, clock, ...telling });
  try {
    await chat.start();
    for (const exchange of exchanges) {
      if (exchange.wrote !== null) await chat.terminal.enter(exchange.wrote, exchange.by);
      else await goOn(clock, exchange, { zone: content.shop.zone, settled: () => chat.settled() });
      await chat.settled();
      const difference = firstDifference(exchange, answered.splice(0));
      if (!difference) continue;
      const { line, expected, got } = difference;
      return `${relative(process.cwd(), file)}:${line}\n  expected: ${expected}\n  got:      ${got}`;
    }
    return exchanges.length === 0 ? `${file}:1\n  expected: a line that begins with "> "` : null;
  } finally {
    await chat.stop();
    rmSync(folder, { recursive: true });
  }
}
