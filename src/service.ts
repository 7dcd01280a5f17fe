/** The shop's service: the house with its page and its distant channels, watched and backed up. Knows every part. */
import { randomBytes } from 'node:crypto';
import { makeApp, type App } from './app.ts';
import type { Content } from './content.ts';
import { contentOf, sayIn, stepIn } from './own-content.ts';
import { makeWebChannel } from './channels/web/web-channel.ts';
import type { Clock } from './clock.ts';
import { databaseFile, type Config } from './config.ts';
import { morningOf } from './content/shop-data.ts';
import { codeMinutes } from './conversation/desk-work.ts';
import { languageOfDevice } from './core/language-tag.ts';
import type { Instant, Language } from './core/units.ts';
import { signOf } from './delivery/calendar.ts';
import { makeHistory } from './delivery/history.ts';
import type { Say } from './delivery/render.ts';
import { makeDistantChannels } from './service/distant-channels.ts';
import { labelPage } from './service/label-page.ts';
import type { Log } from './log.ts';
import { makeOperation } from './operation.ts';
import { PlainMistake } from './start.ts';
import type { Address, Store } from './store/contract.ts';
import { lineOf } from './store/line-name.ts';
import { marksIn } from './store/sheet-marks.ts';
import { makeShopCode } from './store/shop-code.ts';
import { openSqliteStore } from './store/sqlite/store.ts';

export interface Service extends App {
  address(): string;
  /** A sentence with a one-time code for whoever is to be shopkeeper; null when there is one. */
  shopCode(): Promise<string | null>;
}

/** The shop's service, with the page. Throws ContentMistake or StoreMistake, in words made to be read. */
export function makeService(config: Config, clock: Clock, log: Log): Service {
  const content = contentOf(config);
  const distant = makeDistantChannels({ config, content, clock, log });
  const operation = makeOperation({
    config,
    store: openSqliteStore(databaseFile(config)),
    clock,
    log,
    channels: () => channels.map(({ name }) => name),
    polls: () => distant.polls(),
  });
  const { store } = operation;
  const say = sayIn(content);
  const sign = signOf(content.shop.name, config.mail?.from ?? null);
  const history = makeHistory({ store, say, log, sign });
  const web = makeWebChannel({
    host: config.host,
    port: config.port,
    clock,
    log,
    passed: (chat, after) => history({ channel: 'web', chat }, after),
    lineOf: (updateId) => lineOf({ channel: 'web', updateId }),
    myData: (chat) => keptOf(store, { channel: 'web', chat }),
    async label(payload, language) {
      const now = clock.now();
      const rosters = payload.startsWith('lesson-') ? await store.rosters(now) : [];
      return labelPage(content, { payload, language, now, rosters });
    },
    marks: marksIn(store, () => clock.now()),
    telegramName: () => distant.telegramName(),
    pageWords: (language) => pageWords(content, language),
    health: async () => ({ ...(await operation.health()), vitals: undefined }),
    secureCookies: config.origin?.startsWith('https:') ?? false,
    publicOrigin: config.origin,
  });
  const { keepDays, forgetDays, shopkeepers } = config;
  const channels = [web, ...distant.channels];
  const { lessons } = content;
  const app = makeApp({
    store,
    step: stepIn(content),
    say,
    sign,
    channels,
    clock,
    log,
    keepDays,
    forgetDays,
    shopkeepers,
    lessons,
    morning: morningOf(content.shop),
    warmUp: () => warmUp(content, clock.now()),
  });
  const language = languageOfDevice(config.deviceLanguage);
  return {
    ...app,
    async start() {
      for (const trouble of await distant.troubles()) {
        const told = say(language, { key: trouble, values: {} });
        if (trouble === 'telegram-token-refused') throw new PlainMistake(told);
        log.warn(told);
      }
      await operation.start();
      await app.start();
      // Later: what fell due while we were away comes first.
      setTimeout(() => void distant.warmUp().catch(() => undefined), 5_000).unref();
    },
    async stop() {
      await operation.stop();
      await app.stop();
    },
    address: () => web.address(),
    shopCode: () => offeredCode({ store, say, clock, language }),
  };
}

/**
 * The reader makes its indexes and patterns at the first message that needs them; those messages are ours, so that no customer
 * waits for them. Between two of them whoever writes is answered.
 */
async function warmUp(content: Content, nowMs: Instant): Promise<void> {
  const [tea] = content.teas;
  const said: readonly (readonly [Language, string])[] = [
    ['en', `${tea?.names.en} 100 ml gaiwan`],
    ['zh-Hant', `${tea?.names['zh-Hant']}用蓋碗怎麼泡`],
    ['zh-Hans', '茶太苦了怎么办'],
    ['en', 'how do I store it'],
    ['en', 'is there a lesson on Saturday'],
  ];
  for (const [language, text] of said) {
    stepIn(content)(null, { kind: 'text', text, language }, { nowMs, language, memory: {} });
    await new Promise(setImmediate);
  }
}

/** On the page a chat and the one who writes in it are known by the same name. */
async function keptOf(store: Store, { channel, chat }: Address): Promise<string | null> {
  const person = await store.find(channel, chat);
  return person === null ? null : JSON.stringify(await store.exportOf(person), null, 1);
}

interface CodeOffer {
  readonly store: Store;
  readonly say: Say;
  readonly clock: Clock;
  readonly language: Language;
}

async function offeredCode({ store, say, clock, language }: CodeOffer): Promise<string | null> {
  const code = makeShopCode(randomBytes);
  const offered = await store.offerCode(code, clock.now() + codeMinutes * 60_000);
  return offered ? say(language, { key: 'shop-told-code', values: { code, minutes: codeMinutes } }) : null;
}

/** What the page shows before a word is said: its words, by their keys. */
function pageWords({ words }: Content, language: Language): Readonly<Record<string, string>> {
  const keys = words.keys().filter((key) => key.startsWith('page-'));
  return Object.fromEntries(keys.map((key) => [key, words.say(language, { key, values: {} })]));
}
