/** A house for the page to talk to: keeps what was recorded, answers from a small script in three languages. */
import { createHash } from 'node:crypto';
import { existsSync, mkdtempSync, readdirSync, readFileSync, statSync } from 'node:fs';
import { createServer, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { makeWebChannel, type WebChannelDeps } from '../../src/channels/web/web-channel.ts';
import type { Incoming, Ladder, Outgoing } from '../../src/messages.ts';

const root = fileURLToPath(new URL('../../', import.meta.url));
export type Language = Outgoing['language'];

const newest = (folder: string): number =>
  Math.max(0, ...readdirSync(folder).map((name) => statSync(join(folder, name)).mtimeMs));

/** The page as the build left it; built anew, into a folder of its own, when its source has changed since. */
export async function builtPage(): Promise<string> {
  const [source, built] = [join(root, 'src/channels/web/page'), join(root, 'dist/page')];
  if (existsSync(built) && newest(built) > newest(source)) return built;
  const outDir = mkdtempSync(join(tmpdir(), 'ninthpour-page-'));
  const { build } = await import('vite');
  await build({ configFile: join(source, 'vite.config.ts'), logLevel: 'error', build: { outDir } });
  return outDir;
}

/** The page's words as the shop's files have them; they take no values, so a line is a word. */
export function pageWords(language: Language): Record<string, string> {
  const text = readFileSync(join(root, `flows/words/${language}.ftl`), 'utf8');
  return Object.fromEntries([...text.matchAll(/^(page-[a-z-]+) = (.+)$/gm)].map(([, key, word]) => [key, word]));
}

const quiet = { debug: () => {}, info: () => {}, warn: () => {}, error: () => {} };

export interface FakeHouse {
  readonly url: string;
  /** Where it listens, whatever its public name. */
  readonly address: string;
  readonly recorded: Incoming[];
  say(message: Partial<Outgoing>): Promise<string>;
  /** The chat of the last thing recorded. */
  chat(): string;
  /** While false, the house refuses to record: as if its disk were full. */
  willing: boolean;
  forget(): void;
  stop(): Promise<void>;
}

type Passed =
  | { readonly said: Outgoing }
  | { readonly heard: { readonly line: string; readonly what: Incoming['what'] }; readonly chat: string };

/** As the store does: the update id cannot be read out of it. */
export const lineOf = (updateId: string): string =>
  createHash('sha256').update(updateId).digest('base64url').slice(0, 22);

type Answer = (incoming: Incoming, house: FakeHouse) => Promise<void>;

export async function openHouse(
  given: Partial<WebChannelDeps> & { answer?: Answer; pastTakesMs?: number } = {},
): Promise<FakeHouse> {
  const { answer = answerFromScript, pastTakesMs = 0, ...deps } = given;
  const passed: Passed[] = [];
  let messages = 0;
  const seen = new Set<string>();
  // A house under a public name does not tell its port: it must be known beforehand.
  const port = deps.publicOrigin ? await freePort() : 0;
  const channel = makeWebChannel({
    host: '127.0.0.1',
    port,
    clock: { now: () => Date.now() },
    log: quiet,
    passed: (chat, afterId) => {
      const of = passed.filter((one) => ('said' in one ? one.said.chat : one.chat) === chat);
      const since = of.slice(of.findIndex((one) => 'said' in one && one.said.id === afterId) + 1);
      return pastTakesMs === 0 ? Promise.resolve(since) : new Promise((give) => setTimeout(give, pastTakesMs, since));
    },
    lineOf,
    label: (payload, language) =>
      Promise.resolve(labels[payload] ? outgoing(labels[payload][language], language) : null),
    pageWords,
    marks: makeMarks(),
    secureCookies: true,
    publicOrigin: null,
    ...deps,
  });
  const house: FakeHouse = {
    url: '',
    address: '',
    recorded: [],
    willing: true,
    chat: () => house.recorded.at(-1)?.chat ?? '',
    async say(message) {
      const whole: Outgoing = { ...outgoing({}, 'en'), id: `m${++messages}`, chat: house.chat(), ...message };
      passed.push({ said: whole });
      await channel.send(whole);
      return whole.id;
    },
    forget: () => void passed.splice(0),
    stop: () => channel.stop(),
  };
  await channel.start(async (incoming) => {
    if (!house.willing) throw new Error('the disk is full');
    if (seen.has(incoming.updateId)) return 'seen';
    seen.add(incoming.updateId);
    house.recorded.push(incoming);
    passed.push({ heard: { line: lineOf(incoming.updateId), what: incoming.what }, chat: incoming.chat });
    // Who is answered is who wrote, however many do at once.
    const say: FakeHouse['say'] = (message) => house.say({ chat: incoming.chat, ...message });
    setTimeout(() => void answer(incoming, { ...house, say }), 5);
    return 'new';
  });
  const url = channel.address().replace(/\/$/, '');
  return Object.assign(house, { url, address: port === 0 ? url : `http://127.0.0.1:${port}` });
}

/** Kept as long as they are asked for. */
export function makeMarks(): WebChannelDeps['marks'] {
  const kept = new Set<string>();
  return { add: (name) => Promise.resolve(void kept.add(name)), has: (name) => Promise.resolve(kept.has(name)) };
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

function outgoing(part: Partial<Outgoing>, language: Language): Outgoing {
  return { id: 'm0', channel: 'web', chat: '', language, paragraphs: [], choices: [], ...part };
}

const languageOf = (text: string, before: string): Language => {
  if (/繁|鐵|蓋|幾/.test(text)) return 'zh-Hant';
  if (/简|铁|盖|几/.test(text)) return 'zh-Hans';
  return /English|[a-z]{4}/.test(text) ? 'en' : (before as Language);
};

/** Greets what is opened, asks back once, answers with a plan, and holds an infusion when guided. */
export const answerFromScript: Answer = async ({ what, deviceLanguage: device = 'en' }, house) => {
  const deviceLanguage = /TW|Hant/.test(device) ? 'zh-Hant' : /zh/.test(device) ? 'zh-Hans' : 'en';
  const language = what.kind === 'text' ? languageOf(what.text, deviceLanguage) : deviceLanguage;
  if (what.kind === 'open' && what.payload === '') await house.say({ language, ...greeting[language] });
  else if (what.kind === 'open') await house.say({ language, ...plan[language] });
  else if (what.kind === 'text') {
    await house.say({ language, ...(/\d/.test(what.text) ? plan[language] : question[language]) });
  } else if (what.kind === 'tap' && what.key.startsWith('guide'))
    await house.say({ language, ...hold(language, 6_000) });
  else await house.say({ language, ...plan[language] });
};

export const greeting: Record<Language, Partial<Outgoing>> = {
  en: { paragraphs: ['Good day. Which tea would you like to brew, and in what?'] },
  'zh-Hant': { paragraphs: ['你好。今天想泡哪款茶，用什麼器皿？'] },
  'zh-Hans': { paragraphs: ['你好。今天想泡哪款茶，用什么器皿？'] },
};

export const question: Record<Language, Partial<Outgoing>> = {
  en: {
    paragraphs: ['Tieguanyin – and how large is your gaiwan, filled to the rim?'],
    choices: ['90 ml', '110 ml', '150 ml', 'I don’t know'].map((label, n) => ({ key: `size.${n}`, label })),
  },
  'zh-Hant': {
    paragraphs: ['鐵觀音，好。你的蓋碗斟滿是多少毫升？'],
    choices: ['90 毫升', '110 毫升', '150 毫升', '不清楚'].map((label, n) => ({ key: `size.${n}`, label })),
  },
  'zh-Hans': {
    paragraphs: ['铁观音，好。你的盖碗斟满是多少毫升？'],
    choices: ['90 毫升', '110 毫升', '150 毫升', '不清楚'].map((label, n) => ({ key: `size.${n}`, label })),
  },
};

const times = [6, 5, 7, 10, 15, 25, 40, 65];
const inks = [0.82, 1, 0.97, 0.9, 0.8, 0.66, 0.5, 0.36];

export function ladder(title: string, label: (seconds: number) => string): Ladder {
  const rungs = times.map((seconds, row) => ({
    n: row + 1,
    seconds,
    label: label(seconds),
    length: seconds / 65,
    ink: inks[row] ?? 0,
  }));
  return { title, rungs };
}

const chineseTime = (seconds: number): string => (seconds < 60 ? `${seconds} 秒` : `1 分 ${seconds - 60} 秒`);

export const plan: Record<Language, Partial<Outgoing>> = {
  en: {
    paragraphs: [
      'Tieguanyin in a gaiwan of 110 ml: 6.5 g of leaf, about three level teaspoons; it covers a quarter of the bowl.',
      'Water at 95 °C. Where you live it boils at 94.6 °C, so pour straight off the boil. Rinse for 5 seconds and pour the rinse away.',
      'Eight infusions. The lid of the bowl grows hot: hold it by the rim.',
    ],
    ladder: ladder('The infusions', (seconds) => (seconds < 60 ? `${seconds} s` : `1 min ${seconds - 60} s`)),
    choices: ['Guide me', 'Why these numbers', 'Change something', 'Ask the shop'].map((label, n) => ({
      key: n === 0 ? 'guide' : `more.${n}`,
      label,
    })),
  },
  'zh-Hant': {
    paragraphs: [
      '110 毫升蓋碗泡鐵觀音：茶葉 6.5 克，約三平茶匙，鋪滿碗的四分之一。',
      '水溫 95 °C。你那裡水在 94.6 °C 就滾，滾了直接沖。先用 5 秒洗茶，洗茶水倒掉。',
      '可以泡八道。蓋碗燙手，拿碗沿就好。',
    ],
    ladder: ladder('各道時間', chineseTime),
    choices: ['帶我泡', '為什麼這樣', '改一改', '問店家'].map((label, n) => ({
      key: n === 0 ? 'guide' : `more.${n}`,
      label,
    })),
  },
  'zh-Hans': {
    paragraphs: [
      '110 毫升盖碗泡铁观音：茶叶 6.5 克，约三平茶匙，铺满碗的四分之一。',
      '水温 95 °C。你那里水在 94.6 °C 就开，开了直接冲。先用 5 秒洗茶，洗茶水倒掉。',
      '可以泡八道。盖碗烫手，拿碗沿就好。',
    ],
    ladder: ladder('各道时间', chineseTime),
    choices: ['带我泡', '为什么这样', '改一改', '问店家'].map((label, n) => ({
      key: n === 0 ? 'guide' : `more.${n}`,
      label,
    })),
  },
};

const holdWords: Record<Language, readonly [string, string, string]> = {
  en: ['Third infusion. Fill from high, then put the lid on.', 'Third infusion', 'Poured'],
  'zh-Hant': ['第三道。高沖注水，蓋上蓋。', '第三道', '已出湯'],
  'zh-Hans': ['第三道。高冲注水，盖上盖。', '第三道', '已出汤'],
};

/** The third infusion, held for so long from now. */
export function hold(language: Language, forMs: number): Partial<Outgoing> {
  const [text, label, poured] = holdWords[language];
  const startedAt = Date.now();
  return {
    language,
    paragraphs: [text],
    countdown: { startedAt, endsAt: startedAt + forMs, label },
    choices: [{ key: 'poured', label: poured }],
  };
}

const lesson: Record<Language, Partial<Outgoing>> = {
  en: { paragraphs: ['The first cup', 'Saturday at 10:30, at the long table. Three seats are free.'] },
  'zh-Hant': { paragraphs: ['第一杯茶', '星期六 10:30，在長桌。還有三個位子。'] },
  'zh-Hans': { paragraphs: ['第一杯茶', '星期六 10:30，在长桌。还有三个位子。'] },
};

const labels: Readonly<Record<string, Record<Language, Partial<Outgoing>>>> = {
  'tea-tieguanyin': plan,
  'lesson-12': lesson,
};
